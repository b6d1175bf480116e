package org.stillroom.reading.grammar;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.Size;

/** A line while it is being read; used inside one call of the reader alone. */
final class Draft {

    LineKind kind = LineKind.MEASURED;
    Amount amount = Amount.UNSTATED;
    String measure = "unstated";
    Optional<Size> size = Optional.empty();
    final List<Name.Piece> pieces = new ArrayList<>();
    final List<String> preparations = new ArrayList<>();
    List<String> senses = List.of();
    final List<Amount> others = new ArrayList<>();
    final Set<Hint> hints = EnumSet.noneOf(Hint.class);
    int start;
    int end;
    int amountStart = -1;
    int amountEnd = -1;
    boolean each;

    Draft(int start, int end) {
        this.start = start;
        this.end = end;
    }

    void name(Name name) {
        pieces.addAll(name.pieces());
        preparations.addAll(name.preparations());
        senses = name.senses();
        hints.addAll(name.hints());
        end = Math.max(end, name.next());
    }

    void quantity(Quantity q) {
        amount = q.amount();
        measure = q.measure();
        size = q.size();
        others.addAll(q.others());
        hints.addAll(q.hints());
        amountStart = q.start();
        amountEnd = q.next();
        each = q.each();
    }

    /** Takes the amount of another line, which holds for this one too. */
    void sameAmountAs(Draft other) {
        amount = other.amount;
        measure = other.measure;
        size = other.size;
        each = other.each;
        amountStart = other.amountStart;
        amountEnd = other.amountEnd;
        hints.add(Hint.ELIDED);
    }

    boolean isNamed() {
        return !pieces.isEmpty();
    }

    int lastNameToken() {
        return pieces.get(pieces.size() - 1).to() - 1;
    }
}
