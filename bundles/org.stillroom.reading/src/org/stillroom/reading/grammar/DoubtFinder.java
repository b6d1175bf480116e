package org.stillroom.reading.grammar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.stillroom.model.reading.Doubt;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.text.Span;

/** Lists what could not be read with certainty. */
final class DoubtFinder {

    private static final double CERTAIN = 0.8;

    private final Vocabulary words;
    private final Passage p;

    DoubtFinder(Vocabulary words, Passage passage) {
        this.words = words;
        this.p = passage;
    }

    /**
     * Lists the doubts of a reading.
     *
     * @param lines what was read
     * @param serves the words that say for how many, if any do
     */
    List<Doubt> find(List<ReadingLine> lines, Optional<Span> serves) {
        List<Doubt> doubts = new ArrayList<>();
        ShareCheck.check(lines).ifPresent(doubts::add);
        for (ReadingLine line : lines) {
            double p = line.confidence().probability();
            if (p < CERTAIN && !isOnlyBare(line)) {
                String why =
                        line.confidence().reasons().isEmpty()
                                ? "This line is read with little certainty"
                                : capital(String.join("; ", line.confidence().reasons()));
                doubts.add(new Doubt(why + ".", line.span(), 1 - p));
            }
        }
        unread(lines, serves, doubts);
        if (lines.isEmpty() && p.size() > 0) {
            doubts.add(
                    new Doubt("No ingredient was found in these words.", p.span(0, p.size()), 1));
        }
        doubts.sort(
                Comparator.comparingDouble(Doubt::weight).reversed().thenComparing(Doubt::span));
        return doubts;
    }

    /** That a book prints no amount is nothing to look up again. */
    private static boolean isOnlyBare(ReadingLine line) {
        return line.confidence().reasons().equals(List.of(Hint.BARE.reason()));
    }

    /** Tells whether a number counts no ingredient: “No. 6”, “a 5-oz. glass”, “60 °C”, “2:1”. */
    private boolean countsNothing(int i, int next) {
        int before = p.at(i - 1).isMark('.') ? i - 2 : i - 1;
        boolean numbered = words.has("numbered", p.word(before));
        boolean ratio = p.at(next).isMark(':') || p.at(i - 1).isMark(':') && p.at(i - 2).isNumber();
        boolean degree = p.at(next).isMark('%') || p.at(next).isMark('°');
        boolean unit = words.has("degree", p.word(next));
        return numbered || ratio && isFigure(next, i) || degree || unit || isOfVessel(next);
    }

    private boolean isFigure(int next, int i) {
        return p.at(next + 1).isNumber() || p.at(i - 2).isNumber();
    }

    private boolean isOfVessel(int next) {
        boolean measured = words.at("measure", p, next).isPresent() && p.at(next).glued();
        for (int j = next + 1; measured && j < next + 4; j++) {
            if (words.at("vessel", p, j).isPresent()) {
                return true;
            }
        }
        return false;
    }

    /** Numbers with a measure that no line, time or serving took up. */
    private void unread(List<ReadingLine> lines, Optional<Span> serves, List<Doubt> doubts) {
        NumberParser numbers = new NumberParser(words, p);
        for (int i = 0; i < p.size(); i++) {
            boolean sign =
                    p.at(i).type() == Token.Type.FRACTION
                            || p.at(i).type() == Token.Type.NUMBER
                            || words.has("number", p.word(i))
                                    && !words.has("article", p.word(i))
                                    && words.at("measure", p, i + 1).isPresent();
            if (!sign) {
                continue;
            }
            Span span = p.span(i, i + 1);
            int next = numbers.parse(i).map(Numeral::next).orElse(i + 1);
            boolean time = words.has("time", p.word(next)) || words.has("time", p.word(next + 1));
            boolean taken =
                    lines.stream().anyMatch(l -> l.span().overlaps(span))
                            || serves.filter(s -> s.overlaps(span)).isPresent();
            if (!taken && !time && !countsNothing(i, next)) {
                doubts.add(
                        new Doubt(
                                "A number stands here that no ingredient takes up.",
                                p.span(i, Math.max(i + 1, Math.min(next, p.size()))),
                                0.4));
            }
            i = Math.max(i, next - 1);
        }
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
