package org.stillroom.reading.anchor;

import java.util.Optional;
import org.stillroom.model.text.Anchor;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/**
 * Finds the words of an anchor again in a text that may have been corrected since.
 *
 * <p>Every place with the anchor’s exact words is scored by how much of the words before and after
 * agrees and by how far it moved; where the words themselves changed, the stretch between the words
 * before and after is taken. Two places that score alike give nothing: the person is asked.
 */
public final class Reanchoring {

    private static final double CONTEXT = 2;
    private static final double LEAST = 0.35;
    private static final double MARGIN = 0.08;
    private static final int SURE_CONTEXT = 10;
    private static final int MOST_PLACES = 2000;

    private Reanchoring() {}

    /** Returns where the anchor’s words stand in a text, or nothing where that cannot be told. */
    public static Optional<Span> find(SourceText text, Anchor anchor) {
        if (isAt(text, anchor, anchor.position())) {
            return Optional.of(anchor.position());
        }
        Optional<Span> exact = anchor.exact().isEmpty() ? Optional.empty() : exact(text, anchor);
        return exact.isPresent() ? exact : between(text, anchor);
    }

    private static boolean isAt(SourceText text, Anchor anchor, Span span) {
        return span.end() <= text.length()
                && text.slice(span).equals(anchor.exact())
                && score(text, anchor, text.toIndex(span.start())) > 0.999;
    }

    private static Optional<Span> exact(SourceText text, Anchor anchor) {
        String all = text.toString();
        double best = -1;
        double second = -1;
        int bestAt = -1;
        int places = 0;
        for (int at = all.indexOf(anchor.exact());
                at >= 0 && places < MOST_PLACES;
                at = all.indexOf(anchor.exact(), at + 1)) {
            double score = score(text, anchor, at);
            places++;
            if (score > best) {
                second = best;
                best = score;
                bestAt = at;
            } else {
                second = Math.max(second, score);
            }
        }
        boolean clear = bestAt >= 0 && (best >= LEAST || places == 1) && best - second >= MARGIN;
        if (!clear) {
            return Optional.empty();
        }
        int end = bestAt + anchor.exact().length();
        return Optional.of(new Span(text.toPlace(bestAt), text.toPlace(end)));
    }

    /** Returns how well a place suits, 0 to 1: two parts context and one part nearness. */
    private static double score(SourceText text, Anchor anchor, int index) {
        String all = text.toString();
        int end = index + anchor.exact().length();
        double before = share(commonEnd(all, index, anchor.prefix()), anchor.prefix().length());
        double after = share(commonStart(all, end, anchor.suffix()), anchor.suffix().length());
        double moved = Math.abs(text.toPlace(index) - anchor.position().start());
        double near = 1 / (1 + moved / 500.0);
        return (CONTEXT * (before + after) / 2 + near) / (CONTEXT + 1);
    }

    private static double share(int common, int length) {
        return length == 0 ? 1 : (double) common / length;
    }

    private static int commonEnd(String all, int index, String prefix) {
        int n = 0;
        while (n < prefix.length()
                && index - n > 0
                && all.charAt(index - 1 - n) == prefix.charAt(prefix.length() - 1 - n)) {
            n++;
        }
        return n;
    }

    private static int commonStart(String all, int index, String suffix) {
        int n = 0;
        while (n < suffix.length()
                && index + n < all.length()
                && all.charAt(index + n) == suffix.charAt(n)) {
            n++;
        }
        return n;
    }

    /** The words were changed: the stretch between the words before and the words after. */
    private static Optional<Span> between(SourceText text, Anchor anchor) {
        String all = text.toString();
        String before =
                isOnce(all, tail(anchor.prefix())) ? tail(anchor.prefix()) : anchor.prefix();
        String after = head(anchor.suffix());
        if (before.length() < SURE_CONTEXT || after.length() < SURE_CONTEXT) {
            return Optional.empty();
        }
        if (!isOnce(all, before)) {
            return Optional.empty();
        }
        int start = all.indexOf(before) + before.length();
        int end = all.indexOf(after, start);
        boolean near = end >= start && end - start <= 2 * anchor.exact().length() + SURE_CONTEXT;
        return near
                ? Optional.of(new Span(text.toPlace(start), text.toPlace(end)))
                : Optional.empty();
    }

    private static boolean isOnce(String all, String words) {
        int at = all.indexOf(words);
        return at >= 0 && all.indexOf(words, at + 1) < 0;
    }

    private static String tail(String prefix) {
        return prefix.substring(Math.max(0, prefix.length() - 2 * SURE_CONTEXT));
    }

    private static String head(String suffix) {
        return suffix.substring(0, Math.min(suffix.length(), 2 * SURE_CONTEXT));
    }
}
