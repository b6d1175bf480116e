package org.stillroom.measures.system;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.stillroom.measures.book.Definition;
import org.stillroom.measures.book.OwnTable;
import org.stillroom.measures.knowledge.Dimension;
import org.stillroom.measures.knowledge.LegalUnit;
import org.stillroom.measures.knowledge.MeasureSystem;
import org.stillroom.measures.knowledge.UnitTable;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.explain.Explanation;

/**
 * Tells the system of a book by the ratios of its own table: twenty ounces to the pint are imperial
 * ones.
 */
final class OwnRatios {

    private final UnitTable units;

    OwnRatios(UnitTable units) {
        this.units = units;
    }

    /** Multiplies the odds of the systems that have the table's ratios; tells which lines did. */
    List<Explanation> apply(OwnTable table, SortedMap<MeasureSystem, Double> odds) {
        List<Explanation> evidence = new ArrayList<>();
        for (Definition d : table.definitions()) {
            Map<String, Boolean> fits = fits(d);
            boolean tells =
                    fits.containsValue(true)
                            && fits.containsValue(false)
                            && odds.keySet().stream()
                                    .anyMatch(s -> fits.getOrDefault(s.id(), false));
            if (tells) {
                odds.replaceAll(
                        (s, p) ->
                                fits.getOrDefault(s.id(), false)
                                        ? p * SystemInference.OWN_TABLE
                                        : p);
                evidence.add(explanation(d));
            }
        }
        return evidence;
    }

    /** Tells for each system that has both measures whether its ratio is the book's. */
    private Map<String, Boolean> fits(Definition d) {
        Map<String, Boolean> fits = new TreeMap<>();
        if (!d.ratio().isExact()) {
            return fits;
        }
        double ratio = d.ratio().middle().toDouble();
        for (LegalUnit unit : units.ofWord(d.name())) {
            Optional<LegalUnit> base =
                    units.ofWord(d.base()).stream()
                            .filter(b -> b.system().equals(unit.system()))
                            .findFirst();
            if (unit.dimension() == Dimension.VOLUME && base.isPresent()) {
                double legal = unit.amount().toDouble() / base.get().amount().toDouble();
                fits.merge(
                        unit.system().id(), Math.abs(legal / ratio - 1) < 0.01, Boolean::logicalOr);
            }
        }
        return fits;
    }

    private static Explanation explanation(Definition d) {
        String words = d.said().isEmpty() ? "" : d.said().get(0).words();
        String where = d.said().isEmpty() ? "" : d.said().get(0).where();
        return Explanation.cited(
                "its own table of measures has “" + words + "”",
                new Citation("", "the book itself, " + where, Citation.Status.PRIMARY));
    }
}
