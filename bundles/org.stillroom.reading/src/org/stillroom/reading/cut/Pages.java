package org.stillroom.reading.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.stillroom.model.source.Mark;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.SourceText;

/**
 * The printed pages of a source, from the file's own marks or from page numbers in the text.
 *
 * <p>A number in braces or brackets, or above a form feed's page, opens its page; a number alone on
 * a line at the foot closes it. Which of the two a bare number does is told by the form feed beside
 * it, and is taken as closing where there is none.
 */
public final class Pages {

    private record Page(String label, int start) {}

    private final List<Page> pages = new ArrayList<>();

    /** Finds the pages of a source. */
    public Pages(Source source) {
        for (Mark mark : source.marks()) {
            if (mark.kind() == Mark.Kind.PAGE && !mark.label().isBlank()) {
                pages.add(new Page(mark.label().strip(), mark.span().start()));
            }
        }
        if (pages.isEmpty()) {
            findBraces(source.text());
        }
        if (pages.isEmpty()) {
            findLines(source.text());
        }
        pages.sort(Comparator.comparingInt(Page::start));
    }

    /** Returns the label of the page that holds a place, counted in code points. */
    public Optional<String> at(int place) {
        int low = 0;
        int high = pages.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (pages.get(middle).start() <= place) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low == 0 ? Optional.empty() : Optional.of(pages.get(low - 1).label());
    }

    private void findBraces(SourceText text) {
        String s = text.toString();
        for (int at = 0; at < s.length(); at++) {
            char c = s.charAt(at);
            if (c != '{' && c != '[') {
                continue;
            }
            int close = at + 1;
            int limit = Math.min(s.length(), at + 13);
            while (close < limit && s.charAt(close) != (c == '{' ? '}' : ']')) {
                close++;
            }
            if (close == limit) {
                continue;
            }
            String inside = s.substring(at, close + 1);
            boolean marked = c == '{' || inside.toLowerCase(java.util.Locale.ROOT).startsWith("[p");
            if (marked) {
                int place = text.toPlace(at);
                PageMarks.label(inside).ifPresent(l -> pages.add(new Page(l, place)));
            }
        }
        if (pages.size() < 3) {
            pages.clear();
        }
    }

    private void findLines(SourceText text) {
        Lines lines = new Lines(text.toString());
        int openedAt = 0;
        List<Page> found = new ArrayList<>();
        for (int i = 0; i < lines.count(); i++) {
            int length = lines.last(i) - lines.first(i);
            if (length <= 0 || length > 90) {
                continue;
            }
            String line = lines.words(i);
            Optional<String> bare = PageMarks.label(line);
            Optional<String> head =
                    PageMarks.numberedCapitals(line)
                            .filter(w -> PageMarks.isSetOff(line))
                            .map(w -> line.replaceAll("[^0-9]", ""));
            int start = text.toPlace(lines.start(i));
            if (head.isPresent()) {
                found.add(new Page(head.get(), start));
            } else if (bare.isPresent() && Character.isDigit(bare.get().charAt(0))) {
                boolean opens = followsFormFeed(text.toString(), lines.first(i));
                found.add(new Page(bare.get(), opens ? start : openedAt));
                openedAt = text.toPlace(lines.end(i));
            }
        }
        if (found.size() >= 3) {
            pages.addAll(found);
        }
    }

    private static boolean followsFormFeed(String text, int at) {
        int before = at - 1;
        while (before >= 0 && Lines.isBlank(text.charAt(before)) && text.charAt(before) != '\f') {
            before--;
        }
        return before >= 0 && text.charAt(before) == '\f';
    }
}
