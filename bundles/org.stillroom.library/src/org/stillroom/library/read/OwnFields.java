package org.stillroom.library.read;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a file's own metadata says of the edition, by the names of our fields. */
final class OwnFields {

    /**
     * A date of this year or later is that of the file, not of the book: no file of these formats
     * is older, and clocks that were never set say 1970 or 1980.
     */
    private static final int FIRST_FILES = 1960;

    private static final int FIRST_BOOKS = 1450;
    private static final Pattern YEAR = Pattern.compile("\\s*(\\d{4})(?!\\d).*", Pattern.DOTALL);
    private static final Pattern NO_TITLE =
            Pattern.compile(
                    "(?i)(?:microsoft word - .*|untitled.*|unknown|.*\\.(?:docx?|odt|rtf|pdf|indd"
                            + "|qxd|tex|txt|html?))");

    private final String file;
    private final Map<String, FrontMatter.Field> fields = new LinkedHashMap<>();
    private String maker = "";

    OwnFields(String file) {
        this.file = file;
    }

    /** Takes words for a field, unless they are blank or the field has some already. */
    void say(String name, String words) {
        String said = words.strip().replaceAll("\\s+", " ");
        if (!said.isEmpty()) {
            fields.putIfAbsent(name, new FrontMatter.Field(said, file, 1));
        }
    }

    /** Takes a title, unless a program made it out of a file's name. */
    void title(String words) {
        if (!NO_TITLE.matcher(words.strip()).matches()) {
            say("title", words);
        }
    }

    /**
     * Takes the name that a program put down as the author. Whoever gave the file a title named the
     * author beside it; otherwise it is the name of the person who typed.
     */
    void maker(String words) {
        maker = maker.isEmpty() ? words : maker;
    }

    /** Takes a language tag, unless it says that the language is not known. */
    void language(String tag) {
        String plain = tag.strip().toLowerCase(Locale.ROOT);
        if (!plain.equals("und") && !plain.startsWith("x-")) {
            say("language", tag);
        }
    }

    /** Takes the year of a date as an uncertain one, unless it can only be that of the file. */
    void date(String words) {
        Matcher year = YEAR.matcher(words);
        if (year.matches()) {
            int number = Integer.parseInt(year.group(1));
            if (number >= FIRST_BOOKS && number < FIRST_FILES) {
                say("text-date", number + "?");
            }
        }
    }

    /** Takes a field that the file names as we do, such as “place”. */
    void named(String name, String words) {
        String plain = name.strip().toLowerCase(Locale.ROOT).replaceAll("[ _]+", "-");
        if (BibliographyFields.NAMES.contains(plain)) {
            say(plain, words);
        }
    }

    /** Returns the fields. */
    Map<String, FrontMatter.Field> fields() {
        say(fields.containsKey("title") ? "author" : "transcriber", maker);
        return fields;
    }
}
