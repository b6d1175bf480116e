package org.stillroom.measures.knowledge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stillroom.measures.rows.Row;
import org.stillroom.measures.rows.Rows;
import org.stillroom.model.number.Rational;

/** The legal and standard units, each resolved by exact arithmetic to millilitres or grams. */
public final class UnitTable {

    private final Map<String, LegalUnit> byCode = new LinkedHashMap<>();
    private final Map<String, List<LegalUnit>> byWord = new HashMap<>();

    private UnitTable() {}

    /** Returns the units that ship with this bundle. */
    public static UnitTable shipped(Works works, Map<String, MeasureSystem> systems) {
        UnitTable table = new UnitTable();
        for (Row row : Rows.shipped("units.csv")) {
            LegalUnit unit = table.read(row, works, systems);
            table.byCode.put(unit.code(), unit);
            table.byWord.computeIfAbsent(unit.word(), w -> new ArrayList<>()).add(unit);
        }
        return table;
    }

    /** Reads a row; a unit may rest only on units above it, so that no definition is circular. */
    private LegalUnit read(Row row, Works works, Map<String, MeasureSystem> systems) {
        String of = row.get("of");
        Optional<LegalUnit> base = find(of);
        Rational amount = row.number("amount").orElseThrow();
        boolean mass = base.map(b -> b.dimension() == Dimension.MASS).orElse(of.equals("g"));
        if (of.isEmpty()) {
            mass = row.get("code").equals("g");
        }
        return new LegalUnit(
                row.get("code"),
                row.get("word"),
                systems.get(row.get("system")),
                mass ? Dimension.MASS : Dimension.VOLUME,
                base.map(b -> amount.times(b.amount())).orElse(amount),
                row.list("place"),
                row.year("from"),
                row.year("to"),
                row.get("id"),
                works.cite(row.get("source"), Works.status(row.get("status"))),
                row.get("statement"));
    }

    /** Returns the unit of a code. */
    public Optional<LegalUnit> find(String code) {
        return Optional.ofNullable(byCode.get(code));
    }

    /** Returns the units that define a word. */
    public List<LegalUnit> ofWord(String word) {
        return List.copyOf(byWord.getOrDefault(word, List.of()));
    }

    /** Returns every unit. */
    public Collection<LegalUnit> all() {
        return List.copyOf(byCode.values());
    }

    /** Returns every code. */
    public Collection<String> codes() {
        return List.copyOf(byCode.keySet());
    }
}
