package org.stillroom.reading.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Splits a text into units: lines that may be titles, paragraphs, furniture of the page, listings.
 *
 * <p>One pass over the lines; every unit is scored once. Long paragraphs are looked through for
 * titles in their middle with bounded looking ahead.
 */
final class Splitter {

    private static final int LONGEST_TITLE = 90;
    private static final int FULL_LINE = 45;
    private static final int LONGEST_LINE = 140;

    private final Structure structure;
    private final String text;
    private final Lines lines;
    private final Listing listing;
    private final Cues cues;
    private final int lineCount;
    private final RunIn runIn;
    private boolean unwrapped;
    private final List<Unit> units = new ArrayList<>();

    Splitter(Structure structure, Lines lines, Listing listing, Cues cues) {
        this.structure = structure;
        this.text = structure.text();
        this.lines = lines;
        this.listing = listing;
        this.cues = cues;
        this.lineCount = lines.count();
        this.runIn = new RunIn(structure, cues);
    }

    /** Returns the units in the order of the text. */
    List<Unit> split() {
        int line = 0;
        boolean blank = true;
        unwrapped = isUnwrapped();
        while (line < lineCount) {
            if (lines.isEmpty(line)) {
                blank = true;
                line++;
            } else if (listing.contains(line)) {
                int last = line;
                while (last + 1 < lineCount && listing.contains(last + 1)) {
                    last++;
                }
                add(Unit.Kind.LISTING, lines.first(line), lines.last(last), true);
                line = last + 1;
                blank = true;
            } else {
                line = run(line, blank);
                blank = unwrapped;
            }
        }
        return new LeadIns(structure, cues).mark(units);
    }

    /** Tells whether each paragraph is one long line, so that a line that ends ends a paragraph. */
    private boolean isUnwrapped() {
        long all = 0;
        long inLong = 0;
        for (int line = 0; line < lineCount; line++) {
            int length = lines.last(line) - lines.first(line);
            all += length;
            inLong += length > LONGEST_LINE ? length : 0;
        }
        return inLong > 0.6 * all;
    }

    /** Splits the lines up to the next empty one, or to the next furniture or listing. */
    private int run(int first, boolean blank) {
        if (isNoise(first)) {
            add(Unit.Kind.NOISE, lines.first(first), lines.last(first), blank);
            return first + 1;
        }
        int end = first;
        int limit = unwrapped ? first + 1 : lineCount;
        while (end < limit && !lines.isEmpty(end) && !isNoise(end) && !listing.contains(end)) {
            end++;
        }
        boolean after = (blank || units.isEmpty()) && !breaksOff(first);
        int line = first;
        int body = -1;
        while (line < end) {
            Optional<Integer> headEnd = headEnd(line, end, line == first && after);
            boolean subtitle =
                    body < 0
                            && line > first
                            && !isMarked(line)
                            && !TitleWords.isGroup(lines.words(line - 1), cues);
            if (headEnd.isPresent() && !subtitle && mayStart(line, first, after)) {
                flush(body, line, first, after);
                body = -1;
                addHead(line, headEnd.get(), line == first && after);
                line = headEnd.get();
            } else {
                body = body < 0 ? line : body;
                line++;
            }
        }
        flush(body, end, first, after);
        return end;
    }

    /** Tells whether a sentence that a page mark parts goes on in this line. */
    private boolean breaksOff(int line) {
        int i = units.size() - 1;
        boolean noise = false;
        while (i >= 0 && units.get(i).kind() == Unit.Kind.NOISE) {
            noise = true;
            i--;
        }
        if (!noise || i < 0 || units.get(i).kind() != Unit.Kind.BODY) {
            return false;
        }
        int end = units.get(i).end();
        int start = text.lastIndexOf('\n', end - 1) + 1;
        boolean open = ".!?:)]”\"".indexOf(text.charAt(end - 1)) < 0;
        String words = lines.words(line);
        boolean small = Character.isLowerCase(words.charAt(0));
        boolean apart =
                Head.letters(words) == Head.Letters.CAPITALS
                        || structure.emphasisEnd(lines.first(line), lines.last(line)) > 0;
        return open && (small || end - start > FULL_LINE && !apart);
    }

    private boolean isMarked(int line) {
        return structure.headingLevel(lines.first(line)) > 0 || hashes(line) > 0;
    }

    private boolean isNoise(int line) {
        int first = lines.first(line);
        if (lines.last(line) - first > 90) {
            return false;
        }
        return PageMarks.isNoise(text, lines.start(line), lines.end(line), listing.runningHeads());
    }

    /** A title inside a block must follow a closed sentence and be set apart by its letters. */
    private boolean mayStart(int line, int first, boolean after) {
        if (line == first && after || isMarked(line)) {
            return true;
        }
        int before = line > 0 ? lines.last(line - 1) : 0;
        boolean closed =
                before > 0
                        && (".!?)”\"}]:—*_=+~".indexOf(text.charAt(before - 1)) >= 0
                                || TitleWords.isGroup(lines.words(line - 1), cues));
        String words = lines.words(line);
        boolean apart =
                Head.letters(words) == Head.Letters.CAPITALS
                        || structure.emphasisEnd(lines.first(line), lines.last(line)) > 0
                        || listing.size() > 0
                                && words.endsWith(".")
                                && listing.lists(TitleKey.of(words));
        return (closed || line == first) && apart;
    }

    private void flush(int body, int end, int first, boolean after) {
        if (body < 0) {
            return;
        }
        boolean blank = body == first && after;
        paragraph(lines.first(body), lines.last(end - 1), blank, indent(body, end));
    }

    private int indent(int from, int end) {
        int line = Math.min(from + 1, end - 1);
        return lines.first(line) - lines.start(line);
    }

    /** Adds a paragraph, parted at the titles that run into it. */
    private void paragraph(int from, int to, boolean blank, int indent) {
        int start = from;
        Optional<Head> head = runIn.atStart(from, to, blank);
        boolean first = true;
        int after = head.filter(h -> h.place == Head.Place.RUN_IN).map(h -> h.end).orElse(from);
        for (RunIn.Found next = runIn.next(after, to);
                next != null;
                next = runIn.next(next.end(), to)) {
            addBody(start, next.start(), blank && first, indent, head);
            first = false;
            start = next.start();
            head = Optional.of(next.head());
        }
        addBody(start, to, blank && first, indent, head);
    }

    private void addBody(int from, int to, boolean blank, int indent, Optional<Head> head) {
        int end = to;
        while (end > from && Lines.isBlank(text.charAt(end - 1))) {
            end--;
        }
        int scored = head.map(h -> h.place == Head.Place.SENTENCE ? h.start : h.end).orElse(from);
        BodyScore score = BodyScore.of(text, Math.min(scored, end), end, cues);
        units.add(new Unit(Unit.Kind.BODY, from, end, blank, indent, score, head));
    }

    private void add(Unit.Kind kind, int from, int to, boolean blank) {
        units.add(new Unit(kind, from, to, blank, 0, BodyScore.NONE, Optional.empty()));
    }

    private Unit last() {
        return units.get(units.size() - 1);
    }

    private int hashes(int line) {
        int at = lines.first(line);
        int n = 0;
        while (at + n < lines.end(line) && n < 7 && text.charAt(at + n) == '#') {
            n++;
        }
        boolean heading = n > 0 && n < 7 && at + n < lines.end(line) && text.charAt(at + n) == ' ';
        return heading ? n : 0;
    }

    /** Returns the line after a title that starts at this line, where it looks like a title. */
    private Optional<Integer> headEnd(int line, int runEnd, boolean first) {
        int from = lines.first(line);
        if (structure.headingLevel(from) > 0) {
            int end = structure.headingEnd(from);
            int next = line + 1;
            while (next < runEnd && lines.first(next) < end) {
                next++;
            }
            return Optional.of(next);
        }
        if (hashes(line) > 0) {
            return Optional.of(line + 1);
        }
        if (!isTitleLine(line, runEnd)) {
            return Optional.empty();
        }
        int next = line + 1;
        while (next < runEnd && next - line < 3 && goesOn(next - 1, next, runEnd)) {
            next++;
        }
        return Optional.of(next);
    }

    /** Tells whether a title is broken over two lines. */
    private boolean goesOn(int line, int next, int runEnd) {
        String upper = lines.words(line);
        String lower = lines.words(next);
        boolean capitals =
                Head.letters(upper) == Head.Letters.CAPITALS
                        && Head.letters(lower) == Head.Letters.CAPITALS;
        boolean apart = upper.endsWith(".") || TitleWords.isGroup(upper, cues);
        if (!capitals || lower.length() > LONGEST_TITLE || apart) {
            return false;
        }
        String lastWord = upper.substring(upper.lastIndexOf(' ') + 1);
        String firstWord = lower.split(" ", 2)[0];
        return ",;:-—".indexOf(upper.charAt(upper.length() - 1)) >= 0
                || isSmall(lastWord)
                || isSmall(firstWord)
                || lower.endsWith(".") && count(upper) + count(lower) <= 8 && next + 1 < runEnd
                || next + 1 == runEnd && next > 0 && upper.length() > 30;
    }

    private static boolean isSmall(String word) {
        return switch (word) {
            case "OR", "AND", "OF", "THE", "WITH", "FOR", "A", "TO", "IN", "FROM", "À", "DE" ->
                    true;
            default -> false;
        };
    }

    /** Tells whether a line by itself looks like a title. */
    private boolean isTitleLine(int line, int runEnd) {
        String words = lines.words(line);
        int n = words.length();
        if (n < 3
                || n > LONGEST_TITLE
                || words.startsWith("(")
                || words.startsWith("[")
                || words.startsWith("|")
                || words.startsWith("<")) {
            return false;
        }
        TitleText title = TitleText.of(words, 0, n);
        String bare = title.words();
        if (bare.length() < 3 || count(bare) > 14 || !startsLikeTitle(bare)) {
            return false;
        }
        int emphasised = structure.emphasisEnd(lines.first(line), lines.last(line));
        boolean emphasis = emphasised >= lines.last(line) - 2 || quotedEmphasis(words);
        if (!emphasis && runsIn(emphasised, bare)) {
            return false;
        }
        Head.Letters letters = Head.letters(bare);
        char close = words.charAt(n - 1);
        if (!emphasis && letters != Head.Letters.CAPITALS && isParted(bare)) {
            return false;
        }
        if (!emphasis && (",;-—".indexOf(close) >= 0 && letters != Head.Letters.CAPITALS)) {
            return false;
        }
        boolean alone = line + 1 == runEnd;
        boolean priced = n - title.end() >= 4;
        boolean opens = alone || priced || opensBody(line + 1);
        boolean plain =
                switch (letters) {
                    case CAPITALS -> true;
                    case TITLE ->
                            opens
                                    && (alone
                                            || close == '.'
                                            || close == ')'
                                            || close == ':'
                                            || title.number().isPresent()
                                            || count(bare) <= 6);
                    case SENTENCE -> opens && count(bare) <= 9 && (alone || close == '.');
                };
        boolean named =
                !TitleWords.isLine(bare, cues)
                        || title.number().isPresent()
                                && HeadMaker.SAME_FOR.matcher(bare).lookingAt();
        return (emphasis || plain && !FirstWords.pointsAway(bare)) && named;
    }

    /** A line that goes on after emphasised first words, or after a closed sentence. */
    private static boolean runsIn(int emphasised, String words) {
        if (emphasised > 0) {
            return true;
        }
        for (int at = words.indexOf(". "); at >= 0; at = words.indexOf(". ", at + 1)) {
            char next = at + 2 < words.length() ? words.charAt(at + 2) : ' ';
            boolean amount = RunIn.isSign(next) || Character.isDigit(next);
            if (amount && count(words.substring(0, at)) > 0 && count(words.substring(at)) > 1) {
                return true;
            }
            boolean word = at > 2 && !RunIn.isAbbreviation(words, at) && isWord(words, at);
            String rest = words.substring(at + 2);
            boolean told = count(rest) >= 4 || hasPlainWord(rest);
            if (word && told && Character.isUpperCase(rest.charAt(0))) {
                return true;
            }
        }
        return false;
    }

    private static boolean isWord(String words, int end) {
        return words.substring(end - 3, end).chars().allMatch(Character::isLetter);
    }

    /** Tells whether a word of the rest starts small, so that it is no second title. */
    private static boolean hasPlainWord(String rest) {
        for (String word : rest.split("[ .]+")) {
            boolean small = !word.isEmpty() && Character.isLowerCase(word.charAt(0));
            if (small && word.length() > 3) {
                return true;
            }
        }
        return false;
    }

    /** A line whose title is parted from its recipe by a colon or a dash. */
    private static boolean isParted(String words) {
        return words.contains(": ") || words.contains("--") || words.contains("—");
    }

    /** A title such as “_Pilot’s Cup_,” with a quotation mark before it. */
    private static boolean quotedEmphasis(String words) {
        return words.length() > 3
                && (words.charAt(0) == '“' || words.charAt(0) == '‘')
                && words.charAt(1) == '_'
                && words.indexOf('_', 2) >= words.length() - 3;
    }

    private boolean opensBody(int line) {
        char c = text.charAt(lines.first(line));
        return Character.isUpperCase(c)
                || Character.isDigit(c)
                || "([_*“\"‘'½¼¾⅓⅔⅛℞—-".indexOf(c) >= 0
                || c >= '⅐' && c <= '⅞';
    }

    private static boolean startsLikeTitle(String words) {
        char c = words.charAt(0);
        char second = words.length() > 1 ? words.charAt(1) : ' ';
        return Character.isUpperCase(c)
                || (c == '“' || c == '"' || c == '‘' || c == '\'')
                        && (Character.isUpperCase(second) || second == '_');
    }

    static int count(String words) {
        int n = 0;
        boolean inside = false;
        for (int i = 0; i < words.length(); i++) {
            boolean letter = Character.isLetter(words.charAt(i));
            n += letter && !inside ? 1 : 0;
            inside = letter || inside && "'’-".indexOf(words.charAt(i)) >= 0;
        }
        return n;
    }

    private void addHead(int line, int next, boolean blank) {
        int from = lines.first(line);
        int to = lines.last(next - 1);
        int marked = structure.headingLevel(from);
        int level = marked > 0 ? marked : hashes(line);
        TitleText title =
                TitleText.of(text, from, Math.min(to, from + 4 * LONGEST_TITLE), level > 0);
        boolean emphasis =
                structure.emphasisEnd(from, to) >= to - 2 || quotedEmphasis(lines.words(line));
        Head head =
                new Head(
                        level > 0 ? Head.Place.MARKED : Head.Place.OWN_LINE,
                        "",
                        level,
                        Head.letters(title.words()),
                        emphasis,
                        blank,
                        text.charAt(to - 1) == '.'
                                || title.end() < to && text.charAt(title.end()) == '.',
                        title,
                        from,
                        to);
        units.add(
                new Unit(
                        Unit.Kind.HEAD,
                        from,
                        to,
                        blank,
                        from - lines.start(line),
                        BodyScore.NONE,
                        Optional.of(head)));
    }
}
