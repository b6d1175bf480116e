package org.stillroom.ingredients.knowledge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.rdf4j.model.IRI;
import org.eclipse.rdf4j.model.Literal;
import org.eclipse.rdf4j.model.Resource;
import org.eclipse.rdf4j.model.vocabulary.DC;
import org.eclipse.rdf4j.model.vocabulary.DCTERMS;
import org.eclipse.rdf4j.model.vocabulary.SKOS;
import org.eclipse.rdf4j.model.vocabulary.SKOSXL;
import org.stillroom.ingredients.IngredientKind;
import org.stillroom.ingredients.Label;
import org.stillroom.ingredients.Properties;
import org.stillroom.ingredients.Validity;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Trade;

/**
 * Reads the concepts of a SKOS file as senses.
 *
 * <p>Vocabulary by the W3C Recommendation “SKOS Simple Knowledge Organization System Reference” (18
 * August 2009) with SKOS-XL, and Dublin Core terms: {@code dcterms:type} is the role, {@code
 * dcterms:source} who says so, {@code dcterms:temporal}, {@code spatial} and {@code audience} years,
 * countries and trades. A concept that is an exact match of one of our senses gives it its names.
 */
final class SkosReader {

    /** What our own senses are called in RDF. */
    private static final String OURS = "urn:stillroom:ingredient:";

    private static final Pattern SLUG = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final Pattern YEARS =
            Pattern.compile("(-?\\d{1,4}|\\.\\.)?(?:/(-?\\d{1,4}|\\.\\.)?)?");

    private final SkosFile file;
    private final Sources sources;
    private final Predicate<String> known;
    private final List<Problem> problems;
    private final List<Resource> concepts;
    private final Optional<String> title;
    private final Map<Resource, String> ids = new LinkedHashMap<>();
    private final Map<Resource, String> same = new HashMap<>();
    private final List<LabelRow> labels = new ArrayList<>();
    private final List<FigureRow> figures = new ArrayList<>();

    /**
     * Makes a reader of one file.
     *
     * @param known tells whether a sense of this id is known without the file
     */
    SkosReader(SkosFile file, Sources sources, Predicate<String> known, List<Problem> problems) {
        this.file = file;
        this.sources = sources;
        this.known = known;
        this.problems = problems;
        this.concepts = file.concepts();
        this.title =
                file.schemes().stream()
                        .flatMap(s -> file.words(s, DCTERMS.TITLE, DC.TITLE).stream())
                        .findFirst();
    }

    /** A sense with the line on which its concept stands. */
    record Placed(SenseRow sense, int line) {}

    /** What a file states. */
    record Result(
            List<Placed> senses,
            List<LabelRow> labels,
            List<FigureRow> figures,
            SkosStatementReader.Result statements) {}

    Result read() {
        concepts.forEach(this::name);
        Map<Resource, Optional<IngredientKind>> kinds = new HashMap<>();
        List<Placed> senses = new ArrayList<>();
        for (Resource concept : concepts) {
            String id = ids.get(concept);
            if (id == null) {
                continue;
            }
            Optional<String> shown = labels(concept, id);
            figures(concept, id);
            if (same.containsKey(concept)) {
                continue;
            }
            if (shown.isEmpty()) {
                report(
                        concept,
                        id,
                        "The concept has no skos:prefLabel; it was left out.",
                        "Give it one preferred label, such as skos:prefLabel \"gum\"@en.");
                labels.removeIf(l -> l.sense().equals(id));
                continue;
            }
            Optional<IngredientKind> kind = kind(concept, kinds, new HashSet<>());
            if (kind.isEmpty()) {
                warn(
                        concept,
                        shown.get(),
                        "The concept does not say what sort of thing it is; it is read as “other”.",
                        "Add dcterms:type with one of: " + kindWords() + ".");
            }
            senses.add(
                    new Placed(
                            new SenseRow(
                                    id,
                                    shown.get(),
                                    kind.orElse(IngredientKind.OTHER),
                                    broader(concept, id),
                                    related(concept, id, SKOS.CLOSE_MATCH),
                                    validity(concept),
                                    scope(concept),
                                    source(concept)),
                            file.line(concept)));
        }
        return new Result(
                senses,
                labels,
                figures,
                new SkosStatementReader(file, sources, ids, problems).read());
    }

    private static String kindWords() {
        List<String> words = new ArrayList<>();
        for (IngredientKind kind : IngredientKind.values()) {
            words.add(kind.word());
        }
        return String.join(", ", words);
    }

    private void report(Resource concept, String words, String reason, String remedy) {
        problems.add(Problem.error(file.path(), file.line(concept), words, reason, remedy));
    }

    private void warn(Resource concept, String words, String reason, String remedy) {
        problems.add(Problem.warning(file.path(), file.line(concept), words, reason, remedy));
    }

    /** Finds the id of a concept: ours where it is one of ours or its exact match. */
    private void name(Resource concept) {
        Optional<String> match =
                file.resources(concept, SKOS.EXACT_MATCH).stream()
                        .map(Resource::stringValue)
                        .filter(v -> v.startsWith(OURS))
                        .map(v -> v.substring(OURS.length()))
                        .findFirst();
        if (match.isPresent()) {
            if (!known.test(match.get())) {
                report(
                        concept,
                        match.get(),
                        "The concept is said to be a sense that there is not; it was left out.",
                        "Match it to urn:stillroom:ingredient: and the id of a sense.");
                return;
            }
            ids.put(concept, match.get());
            same.put(concept, match.get());
            return;
        }
        String id = slug(concept);
        if (ids.containsValue(id)) {
            report(
                    concept,
                    id,
                    "Two concepts have the id " + id + "; this one was left out.",
                    "Give it a skos:notation of its own, small letters, digits and hyphens.");
            return;
        }
        ids.put(concept, id);
    }

    private String slug(Resource concept) {
        String iri = concept.stringValue();
        if (iri.startsWith(OURS)) {
            return iri.substring(OURS.length());
        }
        Optional<String> notation =
                file.everyWord(concept, SKOS.NOTATION).stream()
                        .filter(n -> SLUG.matcher(n).matches())
                        .filter(n -> n.chars().anyMatch(Character::isLetter))
                        .findFirst();
        String local =
                concept.isIRI() ? iri.replaceAll("[/#]+$", "").replaceFirst(".*[/#:]", "") : "";
        boolean telling = local.chars().filter(Character::isLetter).count() > 2;
        String words =
                telling ? local : file.words(concept, SKOS.PREF_LABEL).orElse("concept-" + local);
        return notation.orElseGet(() -> slugOf(words));
    }

    private static String slugOf(String words) {
        String folded = org.stillroom.model.text.Folding.foldWord(words);
        String slug = folded.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return slug.isEmpty() ? "concept" : slug;
    }

    /** Reads the names of a concept; returns the one that is shown. */
    private Optional<String> labels(Resource concept, String id) {
        boolean ours = same.containsKey(concept);
        Set<String> used = new HashSet<>();
        described(concept, id, SKOSXL.PREF_LABEL, Label.Kind.PREFERRED, used);
        described(concept, id, SKOSXL.ALT_LABEL, Label.Kind.ALTERNATIVE, used);
        described(concept, id, SKOSXL.HIDDEN_LABEL, Label.Kind.HIDDEN, used);
        List<Literal> preferred = file.literals(concept, SKOS.PREF_LABEL);
        Optional<Literal> shown =
                preferred.stream()
                        .filter(l -> language(l).startsWith("en"))
                        .findFirst()
                        .or(() -> preferred.stream().findFirst());
        Set<String> languages = new HashSet<>();
        for (Literal l : preferred) {
            if (!languages.add(language(l))) {
                warn(
                        concept,
                        l.getLabel(),
                        "The concept has two preferred labels in one language (SKOS S14); this one"
                                + " is read as an alternative.",
                        "Make it a skos:altLabel.");
            }
            boolean first = shown.filter(l::equals).isPresent() && !ours;
            add(id, l, first ? Label.Kind.PREFERRED : Label.Kind.ALTERNATIVE, concept, used);
        }
        file.literals(concept, SKOS.ALT_LABEL)
                .forEach(l -> add(id, l, Label.Kind.ALTERNATIVE, concept, used));
        file.literals(concept, SKOS.HIDDEN_LABEL)
                .forEach(l -> add(id, l, Label.Kind.HIDDEN, concept, used));
        return shown.map(Literal::getLabel)
                .or(
                        () ->
                                file.resources(concept, SKOSXL.PREF_LABEL).stream()
                                        .flatMap(r -> file.words(r, SKOSXL.LITERAL_FORM).stream())
                                        .findFirst());
    }

    private void described(
            Resource concept, String id, IRI property, Label.Kind kind, Set<String> used) {
        for (Resource r : file.resources(concept, property)) {
            for (Literal l : file.literals(r, SKOSXL.LITERAL_FORM)) {
                used.add(key(l));
                Label label =
                        new Label(l.getLabel(), kind, language(l), validity(r), source(r, concept));
                labels.add(new LabelRow(id, label));
            }
        }
    }

    private void add(String id, Literal l, Label.Kind kind, Resource concept, Set<String> used) {
        if (l.getLabel().isBlank()) {
            warn(
                    concept,
                    "",
                    "A label is empty; it was left out.",
                    "Write the name, or take it away.");
        } else if (used.add(key(l))) {
            labels.add(
                    new LabelRow(
                            id,
                            new Label(
                                    l.getLabel().strip(),
                                    kind,
                                    language(l),
                                    Validity.ALWAYS,
                                    source(concept))));
        }
    }

    private static String key(Literal l) {
        return l.getLabel().strip() + '@' + language(l);
    }

    private static String language(Literal l) {
        return l.getLanguage().map(t -> t.toLowerCase(Locale.ROOT)).orElse("en");
    }

    private Optional<IngredientKind> kind(
            Resource concept, Map<Resource, Optional<IngredientKind>> found, Set<Resource> open) {
        if (found.containsKey(concept)) {
            return found.get(concept);
        }
        Optional<IngredientKind> kind = Optional.empty();
        for (String word : file.everyWord(concept, DCTERMS.TYPE, DC.TYPE)) {
            kind = kind.or(() -> IngredientKind.of(word));
            if (IngredientKind.of(word).isEmpty()) {
                warn(
                        concept,
                        word,
                        "No role is called so; it was passed over.",
                        "One of: " + kindWords() + ".");
            }
        }
        if (open.add(concept)) {
            for (Resource broader : file.resources(concept, SKOS.BROADER)) {
                kind = kind.or(() -> kind(broader, found, open));
            }
        }
        found.put(concept, kind);
        return kind;
    }

    private List<String> broader(Resource concept, String id) {
        Set<String> all = new LinkedHashSet<>(related(concept, id, SKOS.BROADER, SKOS.BROAD_MATCH));
        for (Resource other : concepts) {
            boolean above = file.all(other, SKOS.NARROWER, SKOS.NARROW_MATCH).contains(concept);
            if (above && ids.containsKey(other) && !ids.get(other).equals(id)) {
                all.add(ids.get(other));
            }
        }
        return List.copyOf(all);
    }

    private List<String> related(Resource concept, String id, IRI... properties) {
        Set<String> all = new LinkedHashSet<>();
        for (Resource r : file.resources(concept, properties)) {
            String iri = r.stringValue();
            if (ids.containsKey(r)) {
                all.add(ids.get(r));
            } else if (iri.startsWith(OURS)) {
                all.add(iri.substring(OURS.length()));
            } else {
                warn(
                        concept,
                        iri,
                        "The concept points to one that is not in the file; it was read without it.",
                        "Add the concept, or point to one of ours: " + OURS + "rum.");
            }
        }
        if (List.of(properties).contains(SKOS.CLOSE_MATCH)) {
            all.remove(id);
        }
        return List.copyOf(all);
    }

    private String scope(Resource concept) {
        return file.words(concept, SKOS.DEFINITION)
                .or(
                        () ->
                                concept.stringValue().startsWith(OURS)
                                        ? Optional.empty()
                                        : file.words(concept, SKOS.SCOPE_NOTE))
                .orElse("");
    }

    private Validity validity(Resource r) {
        OptionalInt from = OptionalInt.empty();
        OptionalInt to = OptionalInt.empty();
        for (String words : file.everyWord(r, DCTERMS.TEMPORAL)) {
            Matcher m = YEARS.matcher(words);
            if (!m.matches()) {
                warn(
                        r,
                        words,
                        "These are not years; they were passed over.",
                        "Write 1820/1860, 1820/.. or ../1860.");
                continue;
            }
            from = year(m.group(1));
            to = words.contains("/") ? year(m.group(2)) : from;
        }
        List<Trade> trades =
                file.literals(r, DCTERMS.AUDIENCE).stream()
                        .flatMap(w -> Trade.of(w.getLabel().strip()).stream())
                        .toList();
        List<String> places =
                file.literals(r, DCTERMS.SPATIAL).stream()
                        .map(Literal::getLabel)
                        .filter(w -> w.matches("[A-Z]{2}"))
                        .toList();
        return new Validity(from, to, places, trades);
    }

    private static OptionalInt year(String words) {
        return words == null || words.equals("..") || words.isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(Integer.parseInt(words));
    }

    private Citation source(Resource concept) {
        String who =
                file.words(concept, DCTERMS.SOURCE, DC.SOURCE).or(() -> title).orElse(file.path());
        return sources.citation(who, SkosStatementReader.status(file, concept));
    }

    private Citation source(Resource label, Resource concept) {
        return file.words(label, DCTERMS.SOURCE, DC.SOURCE)
                .map(w -> sources.citation(w, SkosStatementReader.status(file, label)))
                .orElseGet(() -> source(concept));
    }

    /** Reads strength, sugar, acid and density, given as property values of schema.org. */
    private void figures(Resource concept, String id) {
        for (Resource value :
                file.resources(
                        concept, schema("additionalProperty"), schemaOld("additionalProperty"))) {
            Optional<Properties.Quantity> quantity =
                    file.words(value, schema("name"), schemaOld("name"))
                            .flatMap(Properties.Quantity::of);
            Optional<Double> likely = number(value, "value");
            if (quantity.isPresent() && likely.isPresent()) {
                double low = number(value, "minValue").orElse(likely.get());
                double high = number(value, "maxValue").orElse(likely.get());
                boolean ordered = low >= 0 && low <= likely.get() && likely.get() <= high;
                if (ordered) {
                    figures.add(
                            new FigureRow(
                                    id,
                                    quantity.get(),
                                    low,
                                    likely.get(),
                                    high,
                                    source(value, concept)));
                } else {
                    warn(
                            concept,
                            low + "–" + likely.get() + "–" + high,
                            "The range of the "
                                    + quantity.get().word()
                                    + " is upside down or negative.",
                            "Write minValue, value and maxValue in rising order.");
                }
            }
        }
    }

    private Optional<Double> number(Resource value, String name) {
        return file.words(value, schema(name), schemaOld(name))
                .filter(w -> w.matches("-?\\d+(?:\\.\\d+)?"))
                .map(Double::valueOf);
    }

    private static IRI schema(String name) {
        return org.eclipse.rdf4j.model.impl.SimpleValueFactory.getInstance()
                .createIRI("https://schema.org/", name);
    }

    private static IRI schemaOld(String name) {
        return org.eclipse.rdf4j.model.impl.SimpleValueFactory.getInstance()
                .createIRI("http://schema.org/", name);
    }
}
