package org.stillroom.drift.composition;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.estimate.Origin;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.spec.Role;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;

/**
 * Makes a version's lines into a composition, or says why it cannot.
 *
 * <p>The rules: ice, garnish, what only rinses the glass, what may stand in for another line and what
 * fills the glass up are not counted in any version. Bitters, spices and colour, and fruit that goes
 * in by the slice, count where they have a volume. A version in which any other ingredient has no
 * amount cannot be compared. Shares are used as they stand; a spoonful beside shares is held against
 * the volume of an ordinary drink, which is one unknown for all of its lines. Sugar by weight counts
 * with the room that it takes when dissolved.
 */
public final class Composing {

    private static final Set<LineKind> COUNTED = EnumSet.of(LineKind.MEASURED);

    private static final Set<Role> TRACES =
            EnumSet.of(Role.BITTER, Role.AROMATIC, Role.COLOUR, Role.ICE);

    /**
     * Room that a gram of dissolved sugar takes, in millilitres: 0.60 in thin and 0.63 in thick
     * syrup, derived from the densities 1.0400 at 10 °Bx and 1.3214 at 66 °Bx (US National Bureau of
     * Standards, Circular 440, 1942).
     */
    private static final Origin DISSOLVED =
            new Origin("room of dissolved sugar, ml a gram", 0.60, 0.62, 0.63, Origin.Shape.PERT);

    /** Volume of one drink that is given in shares, in millilitres: common practice, no source. */
    private static final Origin DRINK =
            new Origin("volume of a drink given in shares, ml", 50, 75, 120, Origin.Shape.PERT);

    /** Fruit by such a measure is put in whole and gives next to nothing. */
    private static final Set<String> PIECES = Set.of("slice", "piece", "sprig", "strip", "wedge");

    private static final int FEWEST_SHARES = 2;

    private Composing() {}

    /** What came of a version. */
    public sealed interface Result {

        /**
         * It can be compared.
         *
         * @param composition its composition
         */
        record Usable(Composition composition) implements Result {}

        /**
         * It cannot be compared.
         *
         * @param reason why not, the end of a sentence (“no amount is given for sugar”)
         */
        record Left(String reason) implements Result {}
    }

    /** Returns the composition of a version, or why there is none. */
    public static Result of(Version version) {
        if (version.reading().genre() != Reading.Genre.RECIPE) {
            return new Result.Left("it is not a recipe to be made");
        }
        List<SpecLine> lines =
                version.spec().lines().stream().filter(Composing::isCounted).toList();
        if (lines.isEmpty()) {
            return new Result.Left("it gives no amounts");
        }
        long shares =
                lines.stream()
                        .filter(l -> l.share().filter(x -> x.signum() > 0).isPresent())
                        .count();
        return shares >= FEWEST_SHARES ? read(lines, true) : read(lines, false);
    }

    private static boolean isCounted(SpecLine line) {
        return COUNTED.contains(line.line().kind())
                && line.ingredient().role() != Role.ICE
                && line.line().amount().kind() != Amount.Kind.FILL;
    }

    private static Result read(List<SpecLine> lines, boolean shares) {
        List<Part> parts = new ArrayList<>();
        for (SpecLine line : lines) {
            Optional<Estimate> share =
                    line.share()
                            .filter(s -> shares && s.signum() > 0)
                            .map(s -> Estimate.of(DRINK).times(s));
            Optional<Estimate> amount = share.or(() -> volume(line));
            if (amount.isPresent()) {
                parts.add(part(line, amount.get()));
            } else if (!isTrace(line)) {
                return new Result.Left(missing(line));
            }
        }
        return result(parts);
    }

    private static boolean isTrace(SpecLine line) {
        Role role = Stuff.of(line).role();
        return TRACES.contains(role) || PIECES.contains(line.line().measure());
    }

    private static Result result(List<Part> parts) {
        if (parts.size() < 2) {
            return new Result.Left("fewer than two of its ingredients have amounts");
        }
        return new Result.Usable(Composition.of(parts));
    }

    private static Part part(SpecLine line, Estimate amount) {
        Stuff stuff = Stuff.of(line);
        return new Part(stuff.family(), stuff.label(), stuff.role(), amount);
    }

    private static Optional<Estimate> volume(SpecLine line) {
        Optional<Estimate> volume = line.millilitres().filter(v -> v.low() > 0);
        if (volume.isPresent() || line.ingredient().role() != Role.SWEET) {
            return volume;
        }
        return line.grams().filter(g -> g.low() > 0).map(g -> g.times(Estimate.of(DISSOLVED)));
    }

    private static String missing(SpecLine line) {
        String name = Stuff.of(line).label();
        return switch (line.line().amount().kind()) {
            case TO_TASTE -> name + " goes in to taste";
            case ENOUGH, A_LITTLE -> "how much " + name + " goes in is left to the maker";
            case UNSTATED -> "no amount is given for " + name;
            default -> "the amount of " + name + " has no volume";
        };
    }
}
