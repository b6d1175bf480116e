package org.stillroom.reading.grammar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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

    List<Doubt> find(List<ReadingLine> lines, boolean refers) {
        List<Doubt> doubts = new ArrayList<>();
        ShareCheck.check(lines).ifPresent(doubts::add);
        for (ReadingLine line : lines) {
            double p = line.confidence().probability();
            if (p < CERTAIN) {
                String why =
                        line.confidence().reasons().isEmpty()
                                ? "This line is read with little certainty"
                                : capital(String.join("; ", line.confidence().reasons()));
                doubts.add(new Doubt(why + ".", line.span(), 1 - p));
            }
        }
        unread(lines, doubts);
        if (lines.isEmpty() && p.size() > 0 && !refers) {
            doubts.add(
                    new Doubt("No ingredient was found in these words.", p.span(0, p.size()), 1));
        }
        doubts.sort(
                Comparator.comparingDouble(Doubt::weight).reversed().thenComparing(Doubt::span));
        return doubts;
    }

    /** Numbers with a measure that no line, time or serving took up. */
    private void unread(List<ReadingLine> lines, List<Doubt> doubts) {
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
            boolean taken = lines.stream().anyMatch(l -> l.span().overlaps(span));
            if (!taken && !time) {
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
