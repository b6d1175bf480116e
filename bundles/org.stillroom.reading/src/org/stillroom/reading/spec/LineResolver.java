package org.stillroom.reading.spec;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.stillroom.ingredients.Properties;
import org.stillroom.ingredients.Sense;
import org.stillroom.measures.Matter;
import org.stillroom.measures.MeasureMeaning;
import org.stillroom.measures.MeasureQuestion;
import org.stillroom.measures.MeasureTable;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.estimate.Origin;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.spec.Concept;
import org.stillroom.model.spec.Role;
import org.stillroom.model.spec.SpecLine;

/** Resolves one line: its number times what one measure held. */
final class LineResolver {

    private final MeasureTable measures;
    private final Concepts concepts;
    private final Circumstances where;
    private final Shares shares;

    LineResolver(MeasureTable measures, Concepts concepts, Circumstances where, Shares shares) {
        this.shares = shares;
        this.measures = measures;
        this.concepts = concepts;
        this.where = where;
    }

    /** Resolves a line; its index keeps the unknown of a range apart from other lines'. */
    SpecLine resolve(ReadingLine line, int index) {
        List<Concept> meanings = concepts.of(line.ingredientName());
        Concept concept = meanings.get(0);
        List<Concept> others = meanings.subList(1, meanings.size());
        Optional<Rational> share = shares.of(line);
        Optional<Estimate> number = number(line.amount(), index);
        if (number.isEmpty() || share.isPresent() || line.kind() == LineKind.ICE) {
            Explanation why = Explanation.of(unmeasured(line, share));
            return new SpecLine(
                    line, concept, Optional.empty(), Optional.empty(), share, others, why);
        }
        return measured(line, concept, others, number.get());
    }

    private SpecLine measured(
            ReadingLine line, Concept concept, List<Concept> others, Estimate number) {
        Matter matter = matter(concept);
        MeasureMeaning meaning = meaning(line, matter, concept);
        Optional<Estimate> grams = meaning.grams().map(g -> g.times(number));
        Optional<Estimate> volume =
                meaning.millilitres()
                        .map(v -> v.times(number))
                        .or(
                                () ->
                                        flows(matter, concept)
                                                ? grams.flatMap(g -> volume(g, concept))
                                                : Optional.empty());
        Explanation why =
                Explanation.of(
                        said(line)
                                + ": "
                                + line.amount().quantity().map(Rational::toString).orElse("")
                                + " × "
                                + meaning.word(),
                        List.of(meaning.explanation(), ingredient(line, concept)));
        return new SpecLine(line, concept, volume, grams, Optional.empty(), others, why);
    }

    /** What a measure of something held may be known under its English name alone. */
    private MeasureMeaning meaning(ReadingLine line, Matter matter, Concept concept) {
        MeasureQuestion asPrinted =
                new MeasureQuestion(
                        line.measure(), line.size(), matter, line.ingredientName(), where);
        MeasureMeaning meaning = measures.resolve(asPrinted);
        boolean figure = meaning.millilitres().isPresent() || meaning.grams().isPresent();
        if (figure || !concept.known()) {
            return meaning;
        }
        String label = concept.label().toLowerCase(Locale.ROOT);
        return measures.resolve(asPrinted.about(matter, label));
    }

    /** An egg is counted and weighed, and fills the glass all the same. */
    private static boolean flows(Matter matter, Concept concept) {
        return matter == Matter.LIQUID || concept.role() == Role.RICH;
    }

    private Optional<Estimate> volume(Estimate grams, Concept concept) {
        return concepts.sense(concept)
                .map(Sense::properties)
                .flatMap(Properties::density)
                .map(d -> grams.dividedBy(d.value()));
    }

    private static Explanation ingredient(ReadingLine line, Concept concept) {
        String name = line.ingredientName();
        if (!concept.known()) {
            return Explanation.of("“" + name + "” is not in the thesaurus.");
        }
        return Explanation.of("“" + name + "” is read as " + concept.label() + ".");
    }

    private static String said(ReadingLine line) {
        return "The words are “" + line.text().strip().replaceAll("\\s+", " ") + "”";
    }

    private static String unmeasured(ReadingLine line, Optional<Rational> share) {
        String said = said(line);
        if (share.isPresent()) {
            return said
                    + ": a share of "
                    + share.get()
                    + " of the whole; no volume until the size of the serve is told.";
        }
        return switch (line.amount().kind()) {
            case FILL -> said + ": as much as fills the vessel.";
            case TO_TASTE -> said + ": to taste; no amount can be given.";
            case EQUAL_PARTS -> said + ": as much as of each of the others.";
            case A_LITTLE, ENOUGH, FLOAT, DUST -> said + ": no number is printed.";
            default ->
                    line.kind() == LineKind.ICE
                            ? said + ": ice is not counted as volume."
                            : said + ": no amount is printed.";
        };
    }

    /** Returns the number of measures; a range is an unknown of its own. */
    private static Optional<Estimate> number(Amount amount, int index) {
        if (amount.quantity().isEmpty()) {
            return Optional.empty();
        }
        double low = amount.quantity().get().toDouble();
        if (amount.quantityMax().isEmpty()) {
            return Optional.of(Estimate.exact(low));
        }
        double high = Math.max(low, amount.quantityMax().get().toDouble());
        String name = "the number in line " + (index + 1);
        return Optional.of(
                Estimate.of(
                        new Origin(name, low, (low + high) / 2, high, Origin.Shape.RECTANGULAR)));
    }

    private Matter matter(Concept concept) {
        if (!concept.known()) {
            return Matter.UNKNOWN;
        }
        return switch (concept.role()) {
            case SPIRIT, WINE, BEER, LIQUEUR, DILUTION, BITTER -> Matter.LIQUID;
            case SWEET, SOUR, RICH, FRUIT, AROMATIC, COLOUR -> pourable(concept);
            case ICE -> Matter.SOLID;
            case OTHER -> Matter.UNKNOWN;
        };
    }

    /** A sense with a density and no crystal's is poured; a juice, syrup, water or cream too. */
    private Matter pourable(Concept concept) {
        String label = concept.label().toLowerCase(Locale.ROOT);
        boolean named =
                label.matches(
                        ".*\\b(syrup|juice|water|cream(?! of tartar)|milk|honey|molasses|treacle|essence"
                                + "|tincture|vinegar|oil|cordial|grenadine|orgeat|capillaire"
                                + "|white|phosphate|extract|shrub|whey)\\b.*");
        return named || concept.role() == Role.BITTER ? Matter.LIQUID : Matter.SOLID;
    }
}
