package org.stillroom.reading.table;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tells how the words between two amounts join them. */
final class Joins {

    /** What the words between two amounts say. */
    enum Join {
        /** They are the same, said so that it can stand anywhere. */
        EQUAL,
        /** They are the same, said in a common word. */
        IS,
        /** So many of the first are in one of the second. */
        IN,
        /** A number and what it is counted to follow. */
        COUNT,
        /** The second tells of the first, which was just told of. */
        CHAIN,
        /** Only a blank, dots, a rule or a comma. */
        GAP,
        /** Another pair follows. */
        NEXT,
        /** Another way to say the second one follows. */
        OR,
        /** They have nothing to do with one another. */
        NONE
    }

    private static final String MIDDLE =
            "(?:,? ?(?:of|in|at|for|with|used in|as used in|used at|in use in|behind) "
                    + "(?:this|the|our|my|these|us) ?(?:[a-z-]+)?,? )?";

    private static final String ABOUT_SIGN =
            "(?:about|nearly|environ|etwa|ungefahr|ca\\.?|circa|rund|unos|unas|casi|c\\.|≈|~)";

    /** One to three words that name a stuff. */
    private static final Pattern STUFF =
            Pattern.compile(
                    "(?!.*\\b(?:or|and|to|in|with|for|enough|each|which|it|that|this|who|ou|et|oder|und"
                            + "|o|y|e|pour|dans|fur|zu|para|en|que|qui|die|welche)\\b)(?:the )?[a-z-]+(?: [a-z-]+){0,2}");

    /** “… is a measure used in mixing; it holds …”. */
    private static final Pattern IT = Pattern.compile("[^.|]{0,90}[;,] ?(?:and )?(it .*)");

    private static final Pattern NO_LETTERS = Pattern.compile("[^\\p{L}]+");

    private static final Pattern OF = Pattern.compile("^ (?:of |de |du |d'|von |del )?(?=[a-z])");

    private final Map<Join, Pattern> patterns = new EnumMap<>(Join.class);
    private final Set<String> equal;

    /** Reads the joins that the program ships. */
    Joins() {
        Map<String, List<String>> words =
                rows().collect(
                                Collectors.groupingBy(
                                        r -> r[0],
                                        Collectors.mapping(r -> r[1], Collectors.toList())));
        String always = "(?:(?:" + any(words.remove("always")) + ") )?";
        String sort = "(?:(?:" + any(words.remove("sort")) + "),? )?";
        String about = "(?: (?:" + any(words.remove("about")) + ")){0,2}";
        String mark = "[,;:]? ?(?:" + any(words.remove("next")) + ")";
        String or = ",? ?(?:" + any(words.remove("or")) + "),?" + about;
        equal = longest(words.get("equal"));
        patterns.put(Join.NEXT, Pattern.compile(mark));
        patterns.put(Join.OR, Pattern.compile(or));
        words.forEach(
                (join, list) ->
                        patterns.put(
                                Join.valueOf(join.toUpperCase(Locale.ROOT)),
                                Pattern.compile(
                                        " ?" + sort + MIDDLE + always + "(?:" + any(list) + ")"
                                                + about + " ?")));
    }

    private static String any(List<String> words) {
        return words.stream()
                .sorted(Comparator.comparing(String::length).reversed())
                .map(Pattern::quote)
                .collect(Collectors.joining("|"));
    }

    private static Set<String> longest(List<String> phrases) {
        return phrases.stream()
                .map(p -> Stream.of(p.split("[ ']")).max(Comparator.comparing(String::length)))
                .flatMap(Optional::stream)
                .collect(Collectors.toSet());
    }

    /**
     * Tells whether folded words may say that two amounts are the same; a quick look, which passes
     * over nothing that {@link #between} would find.
     */
    boolean mayBeEqual(String folded) {
        return folded.indexOf('=') >= 0
                || Stream.of(NO_LETTERS.split(folded)).anyMatch(equal::contains);
    }

    /** A join, and the stuff that was named before it. */
    record Joined(Join join, String stuff) {}

    /** Returns what the words between two amounts say. */
    Joined between(String words) {
        Join whole = join(words);
        if (whole != Join.NONE) {
            return new Joined(whole, "");
        }
        Matcher of = OF.matcher(words);
        if (of.find()) {
            String rest = words.substring(of.end());
            for (int blank = rest.indexOf(' '); blank > 0; blank = rest.indexOf(' ', blank + 1)) {
                String stuff = rest.substring(0, blank);
                Join join = join(rest.substring(blank));
                boolean tells = join != Join.NONE && join != Join.NEXT && join != Join.OR;
                boolean said = of.end() > 1 || join == Join.EQUAL || join == Join.IS;
                if (tells && said && STUFF.matcher(stuff).matches()) {
                    return new Joined(join, stuff);
                }
            }
        }
        return new Joined(Join.NONE, "");
    }

    private Join join(String words) {
        String bare = words.strip();
        if (bare.equals("=") || bare.matches("=,? ?" + ABOUT_SIGN)) {
            return Join.EQUAL;
        }
        if (patterns.get(Join.OR).matcher(bare).matches()) {
            return Join.OR;
        }
        if (bare.equals(";") || patterns.get(Join.NEXT).matcher(bare).matches()) {
            return Join.NEXT;
        }
        if (bare.isEmpty() || bare.matches("[|,:.…·–—_ -]+")) {
            return Join.GAP;
        }
        for (Join join : List.of(Join.EQUAL, Join.COUNT, Join.IN, Join.IS, Join.CHAIN)) {
            Matcher m = patterns.get(join).matcher(" " + bare.replaceFirst("^[,:] ?", "") + " ");
            if (m.matches()) {
                return join;
            }
        }
        Matcher it = IT.matcher(bare);
        boolean held =
                it.matches()
                        && patterns.get(Join.EQUAL)
                                .matcher(it.group(1).substring(2) + " ")
                                .matches();
        return held ? Join.EQUAL : Join.NONE;
    }

    private static Stream<String[]> rows() {
        try (InputStream in = Joins.class.getResourceAsStream("joins.tsv");
                BufferedReader reader =
                        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return reader
                    .lines()
                    .filter(l -> !l.isBlank() && !l.startsWith("#") && !l.startsWith("join\t"))
                    .map(l -> l.split("\t"))
                    .toList()
                    .stream();
        } catch (IOException e) {
            throw new UncheckedIOException("The data file joins.tsv cannot be read", e);
        }
    }
}
