package org.stillroom.inquiry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.stillroom.drift.Drift;
import org.stillroom.drift.composition.Stuff;
import org.stillroom.ingredients.Properties;
import org.stillroom.ingredients.Sense;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.measures.format.AmountFormat;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.spec.Spec;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;

/**
 * Says why an amount that is shown is so, back to the words on the page and to who said what they
 * held.
 *
 * <p>One place for all faces: what the window explains, the command line and the page explain alike.
 */
public final class AmountReasons {

    private final Thesaurus thesaurus;

    /** Makes reasons that name the figures of a thesaurus for strength and sugar. */
    public AmountReasons(Thesaurus thesaurus) {
        this.thesaurus = thesaurus;
    }

    /** Returns why a line's amount is so, the amount first. */
    public static Explanation line(SpecLine line) {
        String amount = Amounts.resolved(line);
        String shown = amount.equals("–") ? Amounts.asRead(line.line()) : amount;
        String name = line.line().ingredientName();
        return Explanation.of(name.isBlank() ? shown : shown + " " + name, line.why());
    }

    /** Returns why each amount of a version is so: its lines, volume, strength, sugar, measures. */
    public Explanation whole(Version version) {
        return whole(version, AmountReasons::line);
    }

    /** Returns the same for one who sees the reasons of the lines elsewhere. */
    public Explanation total(Version version) {
        return whole(version, l -> Explanation.of(line(l).statement()));
    }

    private Explanation whole(Version version, Function<SpecLine, Explanation> line) {
        Spec spec = version.spec();
        List<SpecLine> counted = spec.lines().stream().filter(AmountReasons::counts).toList();
        List<Explanation> because = new ArrayList<>();
        because.add(volume(spec, counted.stream().map(line).toList()));
        because.add(strength(spec, counted));
        because.add(sugar(spec, counted));
        because.add(Explanation.of("Measures: " + spec.system() + ". " + spec.systemReason()));
        return Explanation.of(name(version) + ": " + Amounts.whole(spec) + ".", because);
    }

    private static String name(Version version) {
        return version.witness().title().strip() + " (" + version.source().shortName() + ")";
    }

    private static boolean counts(SpecLine line) {
        LineKind kind = line.line().kind();
        return kind == LineKind.MEASURED || kind == LineKind.TOP;
    }

    private static Explanation volume(Spec spec, List<Explanation> lines) {
        return Explanation.of(
                spec.volume()
                        .map(
                                v ->
                                        "Volume "
                                                + AmountFormat.poured(v, "ml")
                                                + ": what is poured, added up, before ice melts.")
                        .orElse("No volume is given: no line has one."),
                and(lines, spec.volume().flatMap(v -> Spread.of(v, "ml"))));
    }

    private static List<Explanation> and(List<Explanation> some, Optional<Explanation> last) {
        List<Explanation> all = new ArrayList<>(some);
        last.ifPresent(all::add);
        return all;
    }

    private Explanation strength(Spec spec, List<SpecLine> lines) {
        return Explanation.of(
                spec.strength()
                        .map(
                                s ->
                                        "Strength "
                                                + AmountFormat.percent(s)
                                                + " by volume: the alcohol of the lines over the"
                                                + " volume, before ice melts.")
                        .orElse(
                                "No strength is given: nothing strong is read, or the amount or"
                                        + " strength of something is not known."),
                and(
                        figures(lines, Properties::strength, "%"),
                        spec.strength().flatMap(s -> Spread.of(s.times(100), "%"))));
    }

    private Explanation sugar(Spec spec, List<SpecLine> lines) {
        return Explanation.of(
                spec.sugar()
                        .map(s -> "Sugar " + AmountFormat.poured(s, "g") + " in the whole.")
                        .orElse(
                                "No sugar is given: nothing sweet is read, or the amount or sugar"
                                        + " of something is not known."),
                and(
                        figures(lines, Properties::sugar, "g/l"),
                        spec.sugar().flatMap(s -> Spread.of(s, "g"))));
    }

    private List<Explanation> figures(
            List<SpecLine> lines,
            Function<Properties, Optional<Properties.Figure>> figure,
            String unit) {
        List<Explanation> said = new ArrayList<>();
        for (SpecLine line : lines) {
            thesaurus
                    .sense(line.ingredient().id())
                    .filter(s -> line.ingredient().known())
                    .map(Sense::properties)
                    .flatMap(figure)
                    .ifPresent(f -> said.add(figure(line, f, unit)));
        }
        return said.stream().distinct().toList();
    }

    private static Explanation figure(SpecLine line, Properties.Figure f, String unit) {
        return Explanation.cited(
                line.ingredient().label() + ": " + AmountFormat.write(f.value(), unit) + ".",
                f.source());
    }

    /** Returns why a version's shares of the whole are so, role by role. */
    public static Explanation shares(Version version, Drift drift, Drift.Point point) {
        List<Explanation> because = new ArrayList<>();
        for (int i = 0; i < drift.roles().size(); i++) {
            String role = drift.roles().get(i);
            Drift.Share share = point.shares().get(i);
            if (share.high() > 0) {
                because.add(
                        Explanation.of(
                                role + ": " + Amounts.share(share) + " % of the whole",
                                lines(version, role)));
            }
        }
        return Explanation.of(
                name(version)
                        + ": shares of what is measured out; ice, garnish and what fills the glass"
                        + " are not counted, and what one unknown glass measures cancels out.",
                because);
    }

    private static List<Explanation> lines(Version version, String role) {
        return version.spec().lines().stream()
                .filter(l -> l.line().kind() == LineKind.MEASURED)
                .filter(l -> Stuff.of(l).role().word().equals(role))
                .map(AmountReasons::line)
                .toList();
    }
}
