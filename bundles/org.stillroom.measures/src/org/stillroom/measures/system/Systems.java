package org.stillroom.measures.system;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.stillroom.measures.knowledge.MeasureSystem;
import org.stillroom.measures.knowledge.Works;
import org.stillroom.measures.rows.Row;
import org.stillroom.measures.rows.Rows;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.number.Rational;
import org.stillroom.model.source.Trade;

/** What is known of which system was in use where, when and in what trade. */
public final class Systems {

    /**
     * The shares of the systems in one year at one place.
     *
     * @param year the year
     * @param shares share of each system's id
     * @param statement why, a clause
     * @param citation who says so
     */
    record Era(int year, Map<String, Double> shares, String statement, Citation citation) {}

    /**
     * What a word of measure in a book says about its system.
     *
     * @param word the canonical word
     * @param years when it says so
     * @param factors by how much each system's odds are multiplied
     * @param statement why, a clause
     * @param citation who says so
     */
    record Clue(
            String word,
            YearRange years,
            Map<String, Double> factors,
            String statement,
            Citation citation) {}

    /**
     * Where books of one language came from.
     *
     * @param shares share of each place's code
     * @param statement why, a clause
     */
    record Origins(Map<String, Double> shares, String statement) {}

    private final Map<String, MeasureSystem> byId;
    private final Map<String, NavigableMap<Integer, Era>> eras = new HashMap<>();
    private final Map<String, Clue> clues = new LinkedHashMap<>();
    private final Map<String, Origins> languages = new HashMap<>();

    private Systems(Map<String, MeasureSystem> byId) {
        this.byId = byId;
    }

    /** Returns the systems by their id. */
    public static Map<String, MeasureSystem> byId() {
        Map<String, MeasureSystem> systems = new LinkedHashMap<>();
        for (Row row : Rows.shipped("systems.csv")) {
            systems.put(row.get("id"), new MeasureSystem(row.get("id"), row.get("label")));
        }
        return systems;
    }

    /** Returns the knowledge that ships with this bundle. */
    public static Systems shipped(Works works) {
        Systems systems = new Systems(byId());
        Rows.shipped("eras.csv").forEach(row -> systems.addEra(row, works));
        Rows.shipped("clues.csv").forEach(row -> systems.addClue(row, works));
        for (Row row : Rows.shipped("languages.csv")) {
            systems.languages.put(
                    row.get("language") + "/" + row.get("trade"),
                    new Origins(shares(row), row.get("statement")));
        }
        return systems;
    }

    private void addEra(Row row, Works works) {
        int year = row.year("year").orElseThrow();
        eras.computeIfAbsent(row.get("place") + "/" + row.get("trade"), k -> new TreeMap<>())
                .put(year, new Era(year, shares(row), row.get("statement"), cite(row, works)));
    }

    private void addClue(Row row, Works works) {
        Map<String, Double> factors = new HashMap<>();
        for (String id : byId.keySet()) {
            row.number(id).ifPresent(f -> factors.put(id, f.toDouble()));
        }
        YearRange years = new YearRange(row.year("from").orElse(0), row.year("to").orElse(9999));
        clues.put(
                row.get("word"),
                new Clue(row.get("word"), years, factors, row.get("statement"), cite(row, works)));
    }

    private static Citation cite(Row row, Works works) {
        return works.cite(row.get("source"), Works.status(row.get("status")));
    }

    private static Map<String, Double> shares(Row row) {
        Map<String, Double> shares = new LinkedHashMap<>();
        for (String part : row.list("shares")) {
            int blank = part.lastIndexOf(' ');
            Rational share = Rational.parse(part.substring(blank + 1)).orElseThrow();
            shares.put(part.substring(0, blank), share.toDouble());
        }
        return shares;
    }

    /** Returns a system by its id. */
    public Optional<MeasureSystem> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** Returns every system. */
    public List<MeasureSystem> all() {
        return new ArrayList<>(byId.values());
    }

    /** Returns the years of the narrowest place that has any, for the trade if it has its own. */
    NavigableMap<Integer, Era> eras(List<String> codes, Optional<Trade> trade) {
        for (String code : codes) {
            Optional<NavigableMap<Integer, Era>> special =
                    trade.map(t -> eras.get(code + "/" + t.word()));
            NavigableMap<Integer, Era> general = eras.get(code + "/");
            if (special.isPresent()) {
                return joined(special.get(), general);
            }
            if (general != null) {
                return general;
            }
        }
        return eras.get("XX/");
    }

    /** A trade's own years stand in for the general ones between the first and the last of them. */
    private static NavigableMap<Integer, Era> joined(
            NavigableMap<Integer, Era> special, NavigableMap<Integer, Era> general) {
        NavigableMap<Integer, Era> all = new TreeMap<>(special);
        all.putAll(general.headMap(special.firstKey(), false));
        all.putAll(general.tailMap(special.lastKey(), false));
        return all;
    }

    /** Returns what a word says about the system of a book of these years. */
    Optional<Clue> clue(String word, Optional<YearRange> years) {
        return Optional.ofNullable(clues.get(word))
                .filter(
                        c ->
                                years.isEmpty()
                                        || (years.get().to() >= c.years().from()
                                                && years.get().from() <= c.years().to()));
    }

    /** Returns where books of a language and trade came from. */
    Origins origins(Optional<String> language, Optional<Trade> trade) {
        String tag = language.filter(l -> languages.containsKey(l + "/")).orElse("");
        return trade.map(t -> languages.get(tag + "/" + t.word()))
                .orElseGet(() -> languages.get(tag + "/"));
    }
}
