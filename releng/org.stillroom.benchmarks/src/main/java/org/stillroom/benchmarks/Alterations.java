package org.stillroom.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Spells a name as a careless writer, an old printer or a scanner might have.
 *
 * <p>The alterations are common practice, no source; each has a name, so that figures can be told
 * apart by them.
 */
final class Alterations {

    private static final String[][] LETTERS = {
        {"ie and ei", "ie", "ei"},
        {"ie and ei", "ei", "ie"},
        {"y and i", "y", "i"},
        {"y and i", "i", "y"},
        {"y and i", "y$", "ie"},
        {"y and i", "ie$", "y"},
        {"c, k, s, z", "c", "k"},
        {"c, k, s, z", "k", "c"},
        {"c, k, s, z", "ck", "k"},
        {"c, k, s, z", "ce", "se"},
        {"c, k, s, z", "ci", "si"},
        {"c, k, s, z", "s", "z"},
        {"c, k, s, z", "z", "s"},
        {"c, k, s, z", "qu", "k"},
        {"c, k, s, z", "ch", "c"},
        {"endings", "our", "or"},
        {"endings", "or$", "our"},
        {"endings", "re$", "er"},
        {"endings", "er$", "re"},
        {"endings", "e$", ""},
        {"endings", "$", "e"},
        {"endings", "ough", "o"},
        {"endings", "que$", "k"},
        {"endings", "eau", "o"},
        {"endings", "oise$", "oys"},
        {"endings", "ette$", "et"},
        {"ph, f, h", "ph", "f"},
        {"ph, f, h", "f", "ph"},
        {"ph, f, h", "th", "t"},
        {"ph, f, h", "rh", "r"},
        {"ph, f, h", "gh", "g"},
        {"ph, f, h", "wh", "w"},
        {"type and scan", "rn", "m"},
        {"type and scan", "m", "rn"},
        {"type and scan", "li", "h"},
        {"type and scan", "cl", "d"},
        {"type and scan", "e", "c"},
        {"type and scan", "c", "e"},
        {"type and scan", "u", "n"},
        {"type and scan", "n", "u"},
        {"type and scan", "h", "b"},
        {"type and scan", "s", "f"},
        {"type and scan", "l", "1"},
        {"type and scan", "o", "0"},
        {"type and scan", "in", "m"},
        {"type and scan", "w", "vv"},
        {"vowels", "a", "e"},
        {"vowels", "e", "a"},
        {"vowels", "e", "i"},
        {"vowels", "i", "e"},
        {"vowels", "o", "u"},
        {"vowels", "u", "o"},
        {"vowels", "o", "a"},
        {"vowels", "a", "o"},
        {"vowels", "ea", "ee"},
        {"vowels", "ee", "ea"},
        {"vowels", "ai", "a"},
        {"vowels", "oo", "ou"},
        {"old letters", "v", "u"},
        {"old letters", "j", "i"},
        {"old letters", "ae", "e"},
    };

    private static final Pattern LETTER = Pattern.compile("(?<=\\p{L})\\p{L}(?=\\p{L})");
    private static final Pattern TWIN = Pattern.compile("(\\p{L})\\1");

    private final Random random;

    Alterations(long seed) {
        this.random = new Random(seed);
    }

    /** A name as altered, and by what. */
    record Altered(String text, String by) {}

    /** Returns the name with one alteration, another than it was. */
    Altered once(String name) {
        for (int attempt = 0; attempt < 60; attempt++) {
            Altered altered = attempt(name);
            if (!altered.text().equals(name) && altered.text().length() > 2) {
                return altered;
            }
        }
        return new Altered(name + "e", "endings");
    }

    private Altered attempt(String name) {
        return switch (random.nextInt(10)) {
            case 0 -> new Altered(doubled(name), "double letters");
            case 1 -> new Altered(TWIN.matcher(name).replaceFirst("$1"), "double letters");
            case 2 -> new Altered(swapped(name), "letters exchanged");
            case 3 ->
                    new Altered(random.nextBoolean() ? left(name) : inserted(name), "a letter off");
            case 4 -> new Altered(spaced(name), "blank and hyphen");
            case 5 ->
                    new Altered(
                            random.nextBoolean() ? many(name) : inverted(name), "form and order");
            default -> anyLetters(name);
        };
    }

    private Altered anyLetters(String name) {
        Altered altered = letters(name);
        for (int i = 0; i < 20 && altered.text().equals(name); i++) {
            altered = letters(name);
        }
        return altered;
    }

    private Altered letters(String name) {
        String[] rule = LETTERS[random.nextInt(LETTERS.length)];
        Matcher m =
                Pattern.compile(rule[1].replace("$", "(?=\\s|$)"), Pattern.CASE_INSENSITIVE)
                        .matcher(name);
        List<int[]> places = new ArrayList<>();
        while (m.find()) {
            if (m.start() > 0 || !rule[0].equals("vowels")) {
                places.add(new int[] {m.start(), m.end()});
            }
        }
        if (places.isEmpty()) {
            return new Altered(name, rule[0]);
        }
        int[] at = places.get(random.nextInt(places.size()));
        return new Altered(name.substring(0, at[0]) + rule[2] + name.substring(at[1]), rule[0]);
    }

    /** Returns the place of a letter inside a word, or −1. */
    private int inside(String name) {
        Matcher m = LETTER.matcher(name);
        List<Integer> places = new ArrayList<>();
        while (m.find()) {
            places.add(m.start());
        }
        return places.isEmpty() ? -1 : places.get(random.nextInt(places.size()));
    }

    private String doubled(String name) {
        int at = inside(name);
        boolean fit = at > 0 && "lmnrstfpcgdb".indexOf(name.charAt(at)) >= 0;
        return fit ? name.substring(0, at) + name.charAt(at) + name.substring(at) : name;
    }

    private String swapped(String name) {
        int at = inside(name);
        return at < 0
                ? name
                : name.substring(0, at)
                        + name.charAt(at + 1)
                        + name.charAt(at)
                        + name.substring(at + 2);
    }

    private String left(String name) {
        int at = inside(name);
        return at < 0 || name.length() < 6 ? name : name.substring(0, at) + name.substring(at + 1);
    }

    private String inserted(String name) {
        int at = inside(name);
        char more = "aeiorlnst".charAt(random.nextInt(9));
        return at < 0 || name.length() < 5
                ? name
                : name.substring(0, at) + more + name.substring(at);
    }

    private String spaced(String name) {
        int blank = name.indexOf(' ');
        if (blank > 0) {
            return name.substring(0, blank)
                    + (random.nextBoolean() ? "-" : "")
                    + name.substring(blank + 1);
        }
        return name.length() > 7
                ? name.substring(0, name.length() / 2) + " " + name.substring(name.length() / 2)
                : name;
    }

    private static String many(String name) {
        return name.endsWith("s") ? name + "es" : name + "s";
    }

    private static String inverted(String name) {
        int blank = name.lastIndexOf(' ');
        return blank < 0 || name.contains(" of ") || name.contains(",")
                ? name
                : name.substring(blank + 1) + ", " + name.substring(0, blank);
    }
}
