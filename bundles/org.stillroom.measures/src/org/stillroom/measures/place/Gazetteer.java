package org.stillroom.measures.place;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.stillroom.measures.rows.Nearest;
import org.stillroom.measures.rows.Row;
import org.stillroom.measures.rows.Rows;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Place;
import org.stillroom.model.text.Folding;

/**
 * Towns, regions and countries where books of drinks were written or printed.
 *
 * <p>A place that is not known by name still has its country where one was given with it.
 */
public final class Gazetteer {

    private record Entry(
            String name, Locality.Kind kind, String code, String within, String source) {}

    private final Map<String, Entry> byCode = new LinkedHashMap<>();
    private final Map<String, List<Entry>> byName = new LinkedHashMap<>();

    private Gazetteer() {}

    /** Returns the places that ship with this bundle. */
    public static Gazetteer shipped() {
        Gazetteer gazetteer = new Gazetteer();
        for (Row row : Rows.shipped("places.csv")) {
            gazetteer.add(row, false);
        }
        return gazetteer;
    }

    /**
     * A gazetteer with what was wrong in the rows that were added.
     *
     * @param gazetteer the places
     * @param problems the rows left out, in their order
     */
    public record Extended(Gazetteer gazetteer, List<Problem> problems) {}

    /** Returns this gazetteer with a user's rows, which come before ours of the same name. */
    public Extended with(List<Row> rows) {
        Gazetteer more = new Gazetteer();
        more.byCode.putAll(byCode);
        byName.forEach((name, entries) -> more.byName.put(name, new ArrayList<>(entries)));
        List<Problem> problems = new ArrayList<>();
        for (Row row : rows) {
            Optional<Problem> problem = more.check(row);
            problem.ifPresent(problems::add);
            if (problem.isEmpty()) {
                more.add(row, true);
            }
        }
        return new Extended(more, List.copyOf(problems));
    }

    private Optional<Problem> check(Row row) {
        if (row.get("name").isEmpty()) {
            return Optional.of(row.error("", "The row names no place.", "Fill “name”."));
        }
        String within = row.get("within");
        if (code(within).isEmpty()) {
            return Optional.of(
                    row.error(
                            within,
                            "The region or country it lies in is not known.",
                            "Use a code such as GB or US-NY. " + Nearest.remedy(within, names())));
        }
        if (row.get("source").isEmpty()) {
            return Optional.of(
                    row.error(
                            row.get("name"),
                            "The row names no source.",
                            "Write who says so, or “general knowledge”."));
        }
        return Optional.empty();
    }

    private void add(Row row, boolean first) {
        Entry entry =
                new Entry(
                        row.get("name"),
                        kind(row.get("kind")),
                        row.get("code"),
                        code(row.get("within")).orElse(""),
                        row.get("source"));
        if (!entry.code().isEmpty()) {
            byCode.put(entry.code(), entry);
        }
        List<String> names = new ArrayList<>(row.list("aliases"));
        names.add(entry.name());
        for (String name : names) {
            List<Entry> same = byName.computeIfAbsent(key(name), k -> new ArrayList<>());
            same.add(first ? 0 : same.size(), entry);
        }
    }

    private static Locality.Kind kind(String word) {
        return switch (word) {
            case "country" -> Locality.Kind.COUNTRY;
            case "region" -> Locality.Kind.REGION;
            default -> Locality.Kind.TOWN;
        };
    }

    private static String key(String name) {
        return Folding.foldWord(name).toLowerCase(Locale.ROOT);
    }

    /** Returns the code of a code or of the name of a region or country. */
    public Optional<String> code(String codeOrName) {
        if (codeOrName.isEmpty() || byCode.containsKey(codeOrName)) {
            return Optional.of(codeOrName);
        }
        if (codeOrName.contains(";")) {
            return Optional.of(codeOrName);
        }
        return byName.getOrDefault(key(codeOrName), List.of()).stream()
                .map(e -> e.code().isEmpty() ? e.within() : e.code())
                .findFirst();
    }

    /** Returns what is known of a place as a source names it. */
    public Optional<Locality> find(Place place) {
        String name = place.name();
        if (byCode.containsKey(name)) {
            return Optional.of(locality(byCode.get(name)));
        }
        List<Locality> candidates = candidates(name);
        Optional<Locality> inCountry = place.country().flatMap(c -> inCountry(candidates, name, c));
        if (inCountry.isPresent()) {
            return inCountry;
        }
        if (place.country().isPresent()) {
            return place.country().filter(byCode::containsKey).map(c -> elsewhere(name, c));
        }
        return candidates.stream().findFirst().or(() -> afterComma(name));
    }

    private List<Locality> candidates(String name) {
        return byName.getOrDefault(key(name), List.of()).stream().map(this::locality).toList();
    }

    private Optional<Locality> inCountry(List<Locality> candidates, String name, String country) {
        String start = key(name) + ", ";
        return candidates.stream()
                .filter(l -> l.isWithin(country))
                .findFirst()
                .or(
                        () ->
                                byName.keySet().stream()
                                        .filter(k -> k.startsWith(start))
                                        .flatMap(k -> candidates(k).stream())
                                        .filter(l -> l.isWithin(country))
                                        .findFirst());
    }

    private Locality elsewhere(String name, String country) {
        return new Locality(
                name,
                Locality.Kind.TOWN,
                locality(byCode.get(country)).codes(),
                Optional.of(country));
    }

    /** Takes “Saltmarch, Devon” for an unknown town in a known region. */
    private Optional<Locality> afterComma(String name) {
        int comma = name.lastIndexOf(',');
        if (comma < 0) {
            return Optional.empty();
        }
        String head = name.substring(0, comma).strip();
        return find(Place.of(name.substring(comma + 1).strip())).map(l -> within(head, l));
    }

    private Locality within(String town, Locality wider) {
        return candidates(town).stream()
                .filter(l -> wider.codes().stream().limit(1).allMatch(l::isWithin))
                .findFirst()
                .orElseGet(
                        () ->
                                new Locality(
                                        town, Locality.Kind.TOWN, wider.codes(), wider.country()));
    }

    private Locality locality(Entry entry) {
        List<String> codes = new ArrayList<>();
        if (!entry.code().isEmpty()) {
            codes.add(entry.code());
        }
        String next = entry.within();
        while (!next.isEmpty() && !codes.contains(next)) {
            codes.add(next);
            next = byCode.containsKey(next) ? byCode.get(next).within() : "";
        }
        Optional<String> country = codes.stream().filter(c -> c.length() == 2).findFirst();
        return new Locality(entry.name(), entry.kind(), codes, country);
    }

    /** Returns the name of the place of a code, or the code where it is not known. */
    public String nameOf(String code) {
        return byCode.containsKey(code) ? byCode.get(code).name() : code;
    }

    /** Returns the names of all places, as they are compared. */
    public Collection<String> names() {
        return List.copyOf(byName.keySet());
    }

    /** Returns how many towns, regions and countries there are. */
    public long size() {
        return byName.values().stream().flatMap(List::stream).distinct().count();
    }
}
