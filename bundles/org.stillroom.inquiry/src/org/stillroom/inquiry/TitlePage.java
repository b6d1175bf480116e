package org.stillroom.inquiry;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.measures.place.Gazetteer;
import org.stillroom.measures.place.Locality;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Source;
import org.stillroom.reading.grammar.LanguageGuess;

/**
 * Takes date and place of a source that says neither from its title page or its file's name, and its
 * language from its words.
 *
 * <p>What it finds is marked as uncertain ({@code ?}), and a front matter outranks it.
 */
final class TitlePage {

    private static final int LINES = 120;
    private static final int OLDEST = 1450;

    private static final Pattern YEAR = Pattern.compile("(?<!\\d)(1[4-9]\\d\\d|20\\d\\d)(?!\\d)");
    private static final Pattern ROMAN =
            Pattern.compile("\\bM(?:D|DC{1,3}|CM|CD|C{1,3})?[DCLXVI]{1,12}\\b\\.?");
    private static final Pattern WORD = Pattern.compile("\\p{L}[\\p{L}.'’]*");

    private TitlePage() {}

    /**
     * Returns the source with date, place and language completed where they were missing.
     *
     * @param told what the user said of it, which outranks the title page
     */
    static Source complete(Source source, Circumstances told, Knowledge knowledge) {
        Bibliography b = source.bibliography();
        if (b.date().isPresent() && b.place().isPresent() && b.language().isPresent()) {
            return source;
        }
        Optional<UncertainDate> date =
                b.date().isPresent() ? b.textDate() : told.date().or(() -> date(source));
        Optional<Place> place = b.place().or(() -> place(source, knowledge.measures().places()));
        Optional<String> language =
                b.language()
                        .or(told::language)
                        .or(() -> LanguageGuess.ofBook(source.text().toString()));
        Bibliography fuller =
                new Bibliography(
                        b.title(),
                        b.author(),
                        b.edition(),
                        place,
                        date,
                        b.printingDate(),
                        language,
                        b.trade(),
                        b.rights(),
                        b.scan(),
                        b.transcriber(),
                        b.notes(),
                        b.measures());
        return new Source(source.id(), fuller, source.text(), source.marks(), source.digest());
    }

    private static Optional<UncertainDate> date(Source source) {
        return year(source.id(), false)
                .or(() -> imprint(source))
                .flatMap(y -> UncertainDate.parse(y + "?"));
    }

    /** Returns the year of the first line that speaks of printing, or stands alone on its line. */
    private static Optional<Integer> imprint(Source source) {
        int last = Math.min(LINES, source.text().lineCount());
        for (int n = 1; n <= last; n++) {
            String line = source.text().slice(source.text().line(n)).strip();
            String lower = line.toLowerCase(Locale.ROOT);
            boolean speaks =
                    lower.contains("copyright")
                            || lower.contains("printed")
                            || lower.contains("published")
                            || lower.contains("edition")
                            || lower.contains("act of congress");
            boolean alone = YEAR.matcher(line).replaceAll("").strip().length() < 4;
            Optional<Integer> year = year(line, true);
            if (year.isPresent() && (speaks || alone || ROMAN.matcher(line).matches())) {
                return year;
            }
        }
        return Optional.empty();
    }

    private static Optional<Integer> year(String words, boolean roman) {
        Matcher m = YEAR.matcher(words);
        Optional<Integer> found = Optional.empty();
        while (m.find()) {
            found = Optional.of(Integer.parseInt(m.group(1)));
        }
        if (found.isEmpty() && roman) {
            Matcher r = ROMAN.matcher(words);
            if (r.find()) {
                found = Optional.of(roman(r.group().replace(".", "")));
            }
        }
        return found.filter(y -> y >= OLDEST && y < 2100);
    }

    private static int roman(String digits) {
        String letters = "IVXLCDM";
        int[] values = {1, 5, 10, 50, 100, 500, 1000};
        int total = 0;
        for (int i = 0; i < digits.length(); i++) {
            int value = values[letters.indexOf(digits.charAt(i))];
            boolean less =
                    i + 1 < digits.length()
                            && value < values[letters.indexOf(digits.charAt(i + 1))];
            total += less ? -value : value;
        }
        return total;
    }

    /** Returns the town that the file's name ends in, else one that a title-page line starts with. */
    private static Optional<Place> place(Source source, Gazetteer places) {
        String name = source.id().replaceAll("\\.[^.]*$", "").replaceAll("[-_/0-9]+", " ");
        String[] words = name.strip().split(" +");
        for (int from = Math.max(0, words.length - 3); from < words.length; from++) {
            String tail = String.join(" ", java.util.Arrays.copyOfRange(words, from, words.length));
            Optional<Place> town = town(tail, places);
            if (town.isPresent()) {
                return town;
            }
        }
        int last = Math.min(LINES, source.text().lineCount());
        for (int n = 1; n <= last; n++) {
            Matcher m = WORD.matcher(source.text().slice(source.text().line(n)));
            String head = m.find() ? m.group() : "";
            String next = m.find() ? head + " " + m.group() : head;
            Optional<Place> town =
                    capital(next)
                            ? town(next, places).or(() -> town(head, places))
                            : Optional.empty();
            if (town.isPresent()) {
                return town;
            }
        }
        return Optional.empty();
    }

    private static boolean capital(String words) {
        return words.length() > 3 && words.equals(words.toUpperCase(Locale.ROOT));
    }

    private static Optional<Place> town(String words, Gazetteer places) {
        return places.find(Place.of(words))
                .filter(l -> words.length() > 3)
                .map(Locality::name)
                .map(n -> new Place(n, places.find(Place.of(words)).flatMap(Locality::country)));
    }
}
