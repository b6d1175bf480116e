package org.stillroom.reading.grammar;

import java.util.Optional;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.LineKind;

/** Decides what part a line plays: ice, garnish, top, rinse or a measured ingredient. */
final class KindRule {

    private final Vocabulary words;
    private final Passage p;

    KindRule(Vocabulary words, Passage passage) {
        this.words = words;
        this.p = passage;
    }

    void decide(Draft d, Role role) {
        if (!d.isNamed()) {
            return;
        }
        String last = p.word(d.lastNameToken());
        if (d.measure.equals("float")) {
            d.kind = LineKind.TOP;
            d.amount = Amount.of(Amount.Kind.FLOAT);
        }
        boolean cubes =
                words.has("ice", p.word(d.lastNameToken() - 1))
                        && words.has("solid-measure", BareNames.singular(last));
        boolean led = words.has("ice", p.word(d.pieces.get(0).from())) && words.isRomance();
        if (words.has("ice", last) || cubes || led) {
            d.kind = LineKind.ICE;
            return;
        }
        if (d.kind != LineKind.MEASURED || d.measure.equals("fill")) {
            return;
        }
        switch (role) {
            case GARNISH -> garnish(d, last);
            case TOP -> top(d, last, "top");
            case FINISH -> top(d, last, "fill");
            case FLOAT -> top(d, last, "float");
            case STICK -> {
                boolean fruit = isSolid(d, last) && !words.has("studding", last);
                if (words.has("stuck", d.measure) || words.has("herb", last) || fruit) {
                    dress(d, last);
                }
            }
            case TWIST -> {
                if (words.has("garnish-over", p.word(d.end)) || markFollows(d.end)) {
                    dress(d, last);
                }
            }
            case RINSE -> d.kind = LineKind.RINSE;
            case SERVE -> {
                if (isSolid(d, last)) {
                    dress(d, last);
                }
            }
            default -> onTop(d, last);
        }
    }

    /** Grating into the drink seasons it; grating over it dresses it. */
    private void garnish(Draft d, String last) {
        Token next = p.at(d.end + 1);
        boolean into =
                words.has("inward", p.word(d.end))
                        && (!p.word(d.end).equals("in")
                                || next.ends()
                                || next.type() == Token.Type.MARK
                                || words.has("article", next.text())
                                        && words.at("vessel", p, d.end + 2).isPresent());
        boolean rind =
                words.has("part-of", p.word(d.pieces.get(0).from()))
                        && !words.at("garnish-mark", p, d.end).isPresent()
                        && words.has("of", p.word(d.pieces.get(0).from() + 1));
        if (!into && !rind) {
            dress(d, last);
        }
    }

    private void dress(Draft d, String last) {
        d.kind = LineKind.GARNISH;
        one(d, last);
    }

    /** A singular thing without number is one. */
    void one(Draft d, String last) {
        boolean plural = last.endsWith("s") && !last.endsWith("ss");
        if (d.amount.equals(Amount.UNSTATED)
                && d.measure.equals("unstated")
                && words.has("countable", last)
                && !plural
                && !words.has("dusted", last)) {
            d.amount = Amount.of(Rational.ONE);
            d.measure = "whole";
        }
    }

    private void top(Draft d, String last, String measure) {
        if (isSolid(d, last)) {
            dress(d, last);
            return;
        }
        d.kind = LineKind.TOP;
        if (d.measure.equals("unstated")) {
            d.measure = measure;
            d.amount = Amount.of(measure.equals("float") ? Amount.Kind.FLOAT : Amount.Kind.FILL);
        }
    }

    private void onTop(Draft d, String last) {
        Token after = p.at(d.end + 1);
        boolean over =
                words.has("garnish-over", p.word(d.end))
                        && (after.ends() || after.type() == Token.Type.MARK);
        boolean floated = over || words.at("is-floated", p, d.end).isPresent();
        if (!floated && !markFollows(d.end)) {
            return;
        }
        if (isSolid(d, last)) {
            dress(d, last);
        } else {
            d.kind = LineKind.TOP;
        }
    }

    private boolean markFollows(int end) {
        for (int i = end; i < end + 6; i++) {
            Token t = p.at(i);
            boolean comma = t.isMark(',') && i > end;
            boolean other = p.at(end).isMark(',') && i > end + 1;
            if (t.ends()
                    || comma
                    || other
                    || t.isMark(';')
                    || t.isMark('.')
                    || words.has("and", t.text())) {
                return false;
            }
            Optional<PhraseTable.Match> mark = words.at("garnish-mark", p, i);
            if (mark.isPresent()) {
                return true;
            }
        }
        return false;
    }

    private boolean isSolid(Draft d, String last) {
        return words.has("solid-measure", d.measure)
                || words.has("countable", last)
                || words.has("solid", last);
    }
}
