package org.stillroom.reading.cut;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.stillroom.model.source.Section;
import org.stillroom.model.text.Folding;

/**
 * The tables of contents and indexes of a book: which lines they take up, and which titles and
 * pages they state.
 *
 * <p>A line of a listing ends in a page number after leaders, a gap or a comma, or says “see”. Five
 * of them close together, with few other lines between, make a listing.
 */
final class Listing {

    private static final int FEWEST = 5;
    private static final int MISSES = 3;
    private static final int LONGEST_ENTRY = 62;
    private static final Pattern ENTRY =
            Pattern.compile(
                    ".*\\p{L}.*?[\\s.,]+(?:pages?|pp?\\.?)?\\s*"
                            + "(?:\\d{1,3}|[ivxl]{1,6}|ib(?:id)?)[.;,]?");

    private final Lines lines;
    private final BitSet inside = new BitSet();
    private final Map<TitleKey, List<String>> pages = new HashMap<>();
    private final Set<String> runningHeads = new HashSet<>();
    private String above = "";

    Listing(Lines lines, int lineCount) {
        this.lines = lines;
        findRunningHeads(lineCount);
        findRegions(lineCount);
        findHeaded(lineCount);
        for (int i = inside.nextSetBit(0); i >= 0; i = inside.nextSetBit(i + 1)) {
            collect(i);
        }
    }

    /** Tells whether a line, from 0, belongs to a listing. */
    boolean contains(int line) {
        return inside.get(line);
    }

    /** Tells whether a title is listed. */
    boolean lists(TitleKey key) {
        return pages.containsKey(key);
    }

    /** Returns the pages that a title is listed at, in the order of the listing. */
    List<String> pages(TitleKey key) {
        return pages.getOrDefault(key, List.of());
    }

    /** Returns how many titles are listed. */
    int size() {
        return pages.size();
    }

    Set<String> runningHeads() {
        return runningHeads;
    }

    private void findRunningHeads(int lineCount) {
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < lineCount; i++) {
            int length = lines.last(i) - lines.first(i);
            if (length > 3 && length < 90) {
                PageMarks.numberedCapitals(lines.words(i))
                        .ifPresent(w -> seen.merge(w, 1, Integer::sum));
            }
        }
        seen.forEach(
                (words, times) -> {
                    if (times >= 3) {
                        runningHeads.add(words);
                    }
                });
    }

    private void findRegions(int lineCount) {
        int first = -1;
        int last = -1;
        int listed = 0;
        int others = 0;
        int misses = 0;
        for (int i = 0; i < lineCount; i++) {
            if (lines.isEmpty(i)) {
                continue;
            }
            String words = lines.words(i);
            if (isListed(words) && !isRunningHead(words)) {
                first = first < 0 ? i : first;
                last = i;
                listed++;
                others += misses;
                misses = 0;
            } else if (first >= 0 && words.length() > 2 && !isRunningHead(words)) {
                misses += words.length() > LONGEST_ENTRY ? 2 : 1;
                if (misses > MISSES) {
                    keep(first, last, listed, others);
                    first = -1;
                    listed = 0;
                    others = 0;
                    misses = 0;
                }
            }
        }
        keep(first, last, listed, others);
    }

    private boolean isRunningHead(String words) {
        return PageMarks.numberedCapitals(words)
                .filter(w -> runningHeads.contains(w) || PageMarks.isSetOff(words))
                .isPresent();
    }

    /** Finds the lists under “Contents” and “Index”, whose lines need no page numbers. */
    private void findHeaded(int lineCount) {
        for (int i = 0; i < lineCount; i++) {
            if (!inside.get(i) && isHeading(lines.words(i))) {
                i = headed(i + 1, lineCount);
            }
        }
    }

    private static boolean isHeading(String words) {
        return words.length() < 40
                && words.length() > 4
                && Cues.house()
                        .heading(Folding.foldWord(words.replaceAll("[_*=+~.:#]", "").strip()))
                        .filter(k -> k == Section.Kind.CONTENTS || k == Section.Kind.INDEX)
                        .isPresent();
    }

    /** Marks the short lines after a heading as listed, up to the first that cannot be. */
    private int headed(int from, int lineCount) {
        Set<TitleKey> seen = new HashSet<>();
        int stop = from;
        int entries = 0;
        int numbered = 0;
        for (; stop < lineCount; stop++) {
            if (lines.isEmpty(stop) || inside.get(stop)) {
                continue;
            }
            String words = lines.words(stop);
            boolean paged = ENTRY.matcher(words).matches();
            TitleText title = TitleText.of(words, 0, words.length());
            boolean again = !paged && !seen.add(TitleKey.of(title.words()));
            if (again || !paged && !isEntry(words, title.words())) {
                break;
            }
            entries++;
            numbered += paged ? 1 : 0;
        }
        int end = stop < lineCount ? blockBefore(from, stop) : stop;
        if (entries >= FEWEST || numbered >= 2) {
            for (int i = from; i < end; i++) {
                inside.set(i, inside.get(i) || !lines.isEmpty(i));
            }
        }
        return Math.max(from, end - 1);
    }

    private static boolean isEntry(String words, String title) {
        Cues cues = Cues.house();
        return words.length() <= LONGEST_ENTRY
                && !title.isEmpty()
                && !TitleWords.isLine(title, cues)
                && Splitter.count(title) <= 9
                && cues.heading(Folding.foldWord(title))
                        .filter(k -> k != Section.Kind.HEADING)
                        .isEmpty();
    }

    /** Returns where the block before a place starts: the title of the words that are no entry. */
    private int blockBefore(int from, int stop) {
        int at = stop;
        while (at > from && !lines.isEmpty(at - 1)) {
            at--;
        }
        if (at < stop) {
            return at;
        }
        while (at > from && lines.isEmpty(at - 1)) {
            at--;
        }
        int last = at;
        while (at > from && !lines.isEmpty(at - 1)) {
            at--;
        }
        boolean title = last - at == 1 && !ENTRY.matcher(lines.words(at)).matches();
        return title ? at : last;
    }

    private void keep(int first, int last, int listed, int others) {
        if (first >= 0 && listed >= FEWEST && listed >= others) {
            inside.set(first, last + 1);
        }
    }

    /** Tells whether a line ends as a line of contents or an index does. */
    static boolean isListed(String line) {
        int end = line.length();
        while (end > 0 && " ;.,_".indexOf(line.charAt(end - 1)) >= 0) {
            end--;
        }
        int number = beforePage(line, numberStart(line, end), end);
        if (number == end) {
            int see = Math.max(line.indexOf("see "), line.indexOf("_see_"));
            return see > 2 && line.lastIndexOf(',', see) >= see - 3;
        }
        if (number == 0 || end - number > 24) {
            return false;
        }
        String before = line.substring(0, number);
        String bare = before.stripTrailing();
        boolean leaders =
                bare.endsWith("..")
                        || bare.endsWith(". .")
                        || bare.endsWith("…")
                        || bare.endsWith("--")
                        || bare.endsWith("__")
                        || bare.endsWith("· ·");
        boolean gap = before.length() - bare.length() >= 3 || before.endsWith("\t");
        boolean comma = bare.endsWith(",") && bare.length() < 60;
        boolean cell = bare.endsWith("|") && bare.indexOf('|') < bare.length() - 1;
        return (leaders || gap || comma || cell)
                && bare.chars().anyMatch(Character::isLetter)
                && !before.contains("½")
                && (leaders || !isAmount(line, bare));
    }

    /** A line such as “Whiskey,   2” in a list of parts begins with or holds a measure instead. */
    private static boolean isAmount(String line, String bare) {
        return Character.isDigit(line.charAt(0)) || bare.endsWith("No.");
    }

    /** Returns where “page” before a number starts, or the number. */
    private static int beforePage(String line, int number, int end) {
        for (String word : new String[] {"page ", "p. ", "pp. "}) {
            int at = number - word.length();
            if (number < end && at > 0 && line.startsWith(word, at)) {
                return at;
            }
        }
        return number;
    }

    private static int numberStart(String line, int end) {
        int at = end;
        while (at > 0 && (Character.isDigit(line.charAt(at - 1)) || isPart(line, at - 1, end))) {
            at--;
        }
        while (at < end && !Character.isDigit(line.charAt(at))) {
            at++;
        }
        if (at < end && end - at <= 4
                || at < end && line.substring(at, end).matches("[\\d, –-]+")) {
            return at;
        }
        int roman = end;
        while (roman > 0 && "ivxlc".indexOf(line.charAt(roman - 1)) >= 0) {
            roman--;
        }
        boolean alone = roman < end && roman > 0 && line.charAt(roman - 1) == ' ';
        return alone ? roman : end;
    }

    /** Several pages in a row: “12, 14–16”. */
    private static boolean isPart(String line, int at, int end) {
        char c = line.charAt(at);
        return at + 1 < end
                && (c == '–'
                        || c == '-' && Character.isDigit(line.charAt(at + 1))
                        || c == ' '
                                && at > 0
                                && line.charAt(at - 1) == ','
                                && at > 1
                                && Character.isDigit(line.charAt(at - 2))
                        || c == ',' && at > 0 && Character.isDigit(line.charAt(at - 1)));
    }

    private void collect(int line) {
        if (lines.isEmpty(line)) {
            return;
        }
        String words = lines.words(line);
        if (!isListed(words)) {
            return;
        }
        int end = words.length();
        while (end > 0 && " ;.,_".indexOf(words.charAt(end - 1)) >= 0) {
            end--;
        }
        int number = numberStart(words, end);
        String page = words.substring(number, end);
        int see = words.indexOf("_see_");
        String title = words.substring(0, number == end && see > 0 ? see : number);
        title = title.replaceAll("[ .…_·|,-]+$", "").replaceAll("^[|\\s]+", "");
        TitleText parsed = TitleText.of(title, 0, title.length());
        add(parsed.words(), page);
        boolean below =
                !title.isEmpty() && Character.isLowerCase(title.charAt(0))
                        || title.startsWith("—")
                        || title.startsWith("\"")
                        || title.startsWith("”");
        if (below && !above.isEmpty()) {
            add(above + " " + parsed.words(), page);
        } else {
            int comma = parsed.words().indexOf(',');
            above = comma > 0 ? parsed.words().substring(0, comma) : parsed.words();
        }
    }

    private void add(String title, String page) {
        TitleKey key = TitleKey.of(title);
        if (!key.isEmpty()) {
            pages.computeIfAbsent(key, k -> new ArrayList<>(1)).add(page);
        }
    }

    /** Returns the page listed for a title the so-manieth time that it comes up. */
    Optional<String> page(TitleKey key, int time) {
        List<String> all = pages(key);
        return time < all.size() && !all.get(time).isEmpty()
                ? Optional.of(all.get(time))
                : Optional.empty();
    }
}
