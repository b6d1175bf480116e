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
 * fills the glass up are not counted in any version. Bitters, spices and colour count where they
 * have an amount. A version in which any other ingredient has no amount cannot be compared. Shares
 * are used as they stand where all parts have them; otherwise volumes; sugar by weight counts with
 * the room that it takes when dissolved.
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
            new Origin(
                    "room of dissolved sugar, ml a gram", 0.60, 0.62, 0.63, Origin.Shape.PERT);

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
        List<SpecLine> main =
                lines.stream().filter(l -> !TRACES.contains(l.ingredient().role())).toList();
        if (!main.isEmpty() && main.stream().allMatch(l -> l.share().isPresent())) {
            return byShares(lines);
        }
        return byVolumes(lines);
    }

    private static boolean isCounted(SpecLine line) {
        return COUNTED.contains(line.line().kind())
                && line.ingredient().role() != Role.ICE
                && line.line().amount().kind() != Amount.Kind.FILL;
    }

    /** Shares as they stand; what has only a volume beside them is a trace and not counted. */
    private static Result byShares(List<SpecLine> lines) {
        List<Part> parts = new ArrayList<>();
        for (SpecLine line : lines) {
            line.share()
                    .filter(s -> s.signum() > 0)
                    .ifPresent(s -> parts.add(part(line, Estimate.exact(s))));
        }
        return result(parts);
    }

    private static Result byVolumes(List<SpecLine> lines) {
        List<Part> parts = new ArrayList<>();
        for (SpecLine line : lines) {
            Optional<Estimate> volume = volume(line);
            if (volume.isPresent()) {
                parts.add(part(line, volume.get()));
            } else if (!TRACES.contains(line.ingredient().role())) {
                return new Result.Left(missing(line));
            }
        }
        return result(parts);
    }

    private static Result result(List<Part> parts) {
        if (parts.size() < 2) {
            return new Result.Left("fewer than two of its ingredients have amounts");
        }
        return new Result.Usable(Composition.of(parts));
    }

    private static Part part(SpecLine line, Estimate amount) {
        return new Part(
                line.ingredient().family(),
                line.ingredient().label(),
                line.ingredient().role(),
                amount);
    }

    private static Optional<Estimate> volume(SpecLine line) {
        Optional<Estimate> volume = line.millilitres().filter(v -> v.low() > 0);
        if (volume.isPresent() || line.ingredient().role() != Role.SWEET) {
            return volume;
        }
        return line.grams()
                .filter(g -> g.low() > 0)
                .map(g -> g.times(Estimate.of(DISSOLVED)));
    }

    private static String missing(SpecLine line) {
        String name = line.ingredient().label();
        return switch (line.line().amount().kind()) {
            case TO_TASTE -> name + " goes in to taste";
            case ENOUGH, A_LITTLE -> "how much " + name + " goes in is left to the maker";
            case UNSTATED -> "no amount is given for " + name;
            default -> "the amount of " + name + " has no volume";
        };
    }
}
