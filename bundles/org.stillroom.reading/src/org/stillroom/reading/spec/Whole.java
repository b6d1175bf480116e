package org.stillroom.reading.spec;

import java.util.List;
import java.util.Optional;
import org.stillroom.ingredients.Properties;
import org.stillroom.ingredients.Sense;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.spec.Role;
import org.stillroom.model.spec.SpecLine;

/**
 * Volume, strength and sugar of a whole drink, before ice.
 *
 * <p>Only what has an amount counts; where a liquid part has none (a glass filled up, a dash to
 * taste) there is no strength, because it would be a guess. Where some lines are shares of a whole
 * whose size nobody tells, nothing can be said of it in millilitres. Volumes are added: the error by
 * contraction stays below 0.1 % vol for drinks under 50 % vol (OIML R 22, worked examples).
 *
 * @param volume millilitres
 * @param strength alcohol by volume, 0 to 1
 * @param sugar grams
 * @param alcohol millilitres of it in the whole, where its strength is known
 */
record Whole(
        Optional<Estimate> volume,
        Optional<Estimate> strength,
        Optional<Estimate> sugar,
        Optional<Estimate> alcohol) {

    private static final double PER_CENT = 0.01;
    private static final double PER_LITRE = 0.001;

    static Whole of(List<SpecLine> lines, Concepts concepts) {
        Sum volume = new Sum();
        Sum alcohol = new Sum();
        Sum sugar = new Sum();
        if (lines.stream().anyMatch(l -> counts(l) && l.share().isPresent())) {
            return new Whole(
                    Optional.empty(),
                    strengthOfShares(lines, concepts),
                    Optional.empty(),
                    Optional.empty());
        }
        boolean strengthKnown = true;
        boolean sugarKnown = true;
        for (SpecLine line : lines) {
            if (!counts(line)) {
                continue;
            }
            Optional<Properties> figures = concepts.sense(line).map(Sense::properties);
            if (line.millilitres().isPresent()) {
                Estimate ml = line.millilitres().get();
                volume.add(ml);
                Optional<Estimate> strength =
                        figures.flatMap(Properties::strength).map(Properties.Figure::value);
                strengthKnown &= strength.isPresent() || !strong(line);
                strength.ifPresent(s -> alcohol.add(ml.times(s).times(PER_CENT)));
                Optional<Estimate> sweet =
                        figures.flatMap(Properties::sugar).map(Properties.Figure::value);
                sugarKnown &= sweet.isPresent() || line.ingredient().role() != Role.SWEET;
                sweet.ifPresent(s -> sugar.add(ml.times(s).times(PER_LITRE)));
            } else if (line.grams().isPresent() && line.ingredient().role() == Role.SWEET) {
                sugar.add(line.grams().get());
            } else {
                strengthKnown &= !pours(line);
                sugarKnown &= line.ingredient().role() != Role.SWEET;
            }
        }
        Optional<Estimate> all = volume.total();
        Optional<Estimate> strength =
                strengthKnown
                        ? all.flatMap(v -> alcohol.total().map(a -> a.dividedBy(v)))
                        : Optional.empty();
        return new Whole(
                all,
                strength,
                sugarKnown ? sugar.total() : Optional.empty(),
                strength.flatMap(s -> alcohol.total()));
    }

    private static Optional<Estimate> strengthOfShares(List<SpecLine> lines, Concepts concepts) {
        Sum alcohol = new Sum();
        double all = 0;
        for (SpecLine line : lines) {
            if (!counts(line) || line.share().isEmpty() && isTrace(line)) {
                continue;
            }
            Optional<Estimate> strength =
                    concepts.sense(line)
                            .map(Sense::properties)
                            .flatMap(Properties::strength)
                            .map(Properties.Figure::value);
            if (line.share().isEmpty() || strength.isEmpty() && strong(line)) {
                return Optional.empty();
            }
            double share = line.share().get().toDouble();
            all += share;
            strength.ifPresent(s -> alcohol.add(s.times(share * PER_CENT)));
        }
        double whole = all;
        return whole > 0 ? alcohol.total().map(a -> a.times(1 / whole)) : Optional.empty();
    }

    private static boolean isTrace(SpecLine line) {
        return switch (line.ingredient().role()) {
            case BITTER, AROMATIC, COLOUR, ICE -> true;
            default -> false;
        };
    }

    private static boolean counts(SpecLine line) {
        LineKind kind = line.line().kind();
        return kind == LineKind.MEASURED || kind == LineKind.TOP;
    }

    private static boolean strong(SpecLine line) {
        return switch (line.ingredient().role()) {
            case SPIRIT, WINE, BEER, LIQUEUR, BITTER -> true;
            default -> !line.ingredient().known();
        };
    }

    private static boolean pours(SpecLine line) {
        return switch (line.ingredient().role()) {
            case SPIRIT, WINE, BEER, LIQUEUR, DILUTION, FRUIT, SOUR -> true;
            default -> false;
        };
    }

    /** A sum of estimates that may have no terms. */
    private static final class Sum {
        private Optional<Estimate> total = Optional.empty();

        void add(Estimate term) {
            total = Optional.of(total.map(t -> t.plus(term)).orElse(term));
        }

        Optional<Estimate> total() {
            return total;
        }
    }
}
