package org.stillroom.ingredients.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.eclipse.rdf4j.model.IRI;
import org.eclipse.rdf4j.model.Literal;
import org.eclipse.rdf4j.model.Resource;
import org.eclipse.rdf4j.model.impl.SimpleValueFactory;
import org.eclipse.rdf4j.model.vocabulary.DC;
import org.eclipse.rdf4j.model.vocabulary.DCTERMS;
import org.stillroom.ingredients.Allergen;
import org.stillroom.ingredients.Hazard;
import org.stillroom.ingredients.Milestone;
import org.stillroom.ingredients.knowledge.AllergenRow.Presence;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.spec.Caution;

/**
 * Reads what a SKOS file states in terms of our own: allergens, hazards, first and last dates, and
 * ids that were merged into others.
 */
final class SkosStatementReader {

    private static final String OURS = "urn:stillroom:ingredient:";

    private final SkosFile file;
    private final Sources sources;
    private final Map<Resource, String> ids;
    private final List<Problem> problems;
    private final List<AllergenRow> allergens = new ArrayList<>();
    private final List<Hazard> hazards = new ArrayList<>();
    private final List<Milestone> milestones = new ArrayList<>();
    private final SortedMap<String, String> moved = new TreeMap<>();

    /**
     * Makes a reader of one file.
     *
     * @param ids the concepts of the file with their ids
     */
    SkosStatementReader(
            SkosFile file, Sources sources, Map<Resource, String> ids, List<Problem> problems) {
        this.file = file;
        this.sources = sources;
        this.ids = ids;
        this.problems = problems;
    }

    /** What a file states. */
    record Result(
            List<AllergenRow> allergens,
            List<Hazard> hazards,
            List<Milestone> milestones,
            SortedMap<String, String> moved) {}

    Result read() {
        ids.forEach(this::allergens);
        file.ofType(iri("Hazard")).forEach(this::hazard);
        file.ofType(iri("Milestone")).forEach(this::milestone);
        for (Resource old : file.subjects()) {
            for (Resource now : file.resources(old, DCTERMS.IS_REPLACED_BY)) {
                Optional<String> from = id(old);
                Optional<String> into = id(now);
                if (from.isPresent() && into.isPresent() && !ids.containsKey(old)) {
                    moved.put(from.get(), into.get());
                }
            }
        }
        return new Result(allergens, hazards, milestones, moved);
    }

    private Optional<String> id(Resource concept) {
        String iri = concept.stringValue();
        return Optional.ofNullable(ids.get(concept))
                .or(
                        () ->
                                iri.startsWith(OURS)
                                        ? Optional.of(iri.substring(OURS.length()))
                                        : Optional.empty());
    }

    private void allergens(Resource concept, String id) {
        for (Resource r : file.resources(concept, term(SkosTerms.ALLERGEN_STATEMENT))) {
            Optional<Presence> presence = one(r, SkosTerms.PRESENCE, Presence.values(), concept);
            Optional<String> word = file.words(r, term(SkosTerms.ALLERGEN));
            Optional<Allergen> allergen = word.flatMap(Allergen::of);
            if (word.isPresent() && allergen.isEmpty()) {
                unknown(concept, word.get(), "allergen", Allergen.values());
            } else if (presence.isPresent() && needs(presence.get()) == allergen.isPresent()) {
                allergens.add(new AllergenRow(id, allergen, presence.get(), source(r)));
            } else if (presence.isPresent()) {
                warn(
                        concept,
                        id,
                        "A statement about allergens does not fit its presence; it was left out.",
                        "“contains” and “possible” name an allergen, “none” and “unknown” do not.");
            }
        }
    }

    private static boolean needs(Presence presence) {
        return presence == Presence.CONTAINS || presence == Presence.POSSIBLE;
    }

    private void hazard(Resource r) {
        Optional<Caution.Level> level = one(r, SkosTerms.LEVEL, Caution.Level.values(), r);
        List<String> senses =
                file.resources(r, term(SkosTerms.GOES_WITH)).stream()
                        .flatMap(s -> id(s).stream())
                        .distinct()
                        .toList();
        List<String> triggers = all(r, term(SkosTerms.TRIGGER));
        Optional<String> what = file.words(r, DCTERMS.DESCRIPTION);
        Optional<String> rule = file.words(r, term(SkosTerms.RULE));
        boolean whole = what.isPresent() && rule.isPresent();
        if (level.isPresent() && whole && !(senses.isEmpty() && triggers.isEmpty())) {
            hazards.add(
                    new Hazard(
                            local(r, SkosTerms.HAZARD),
                            level.get(),
                            senses,
                            triggers,
                            file.words(r, term(SkosTerms.REGION)).orElse(""),
                            what.get(),
                            rule.get(),
                            source(r)));
        } else if (level.isPresent()) {
            warn(
                    r,
                    local(r, SkosTerms.HAZARD),
                    "The hazard is not whole; it was left out.",
                    "It needs dcterms:description, st:rule, and st:goesWith or st:trigger.");
        }
    }

    private void milestone(Resource r) {
        Optional<Milestone.Kind> kind =
                one(r, SkosTerms.MILESTONE_KIND, Milestone.Kind.values(), r);
        List<String> subjects = all(r, term(SkosTerms.SUBJECT));
        Optional<String> statement = file.words(r, DCTERMS.DESCRIPTION);
        if (kind.isPresent() && !subjects.isEmpty() && statement.isPresent()) {
            String years = file.words(r, DCTERMS.TEMPORAL).orElse("../..");
            String[] ends = years.split("/", -1);
            milestones.add(
                    new Milestone(
                            local(r, SkosTerms.MILESTONE),
                            kind.get(),
                            subjects,
                            year(r, ends[0]),
                            year(r, ends[ends.length - 1]),
                            file.words(r, DCTERMS.SPATIAL).orElse(""),
                            statement.get(),
                            source(r)));
        } else if (kind.isPresent()) {
            warn(
                    r,
                    local(r, SkosTerms.MILESTONE),
                    "The first or last date is not whole; it was left out.",
                    "It needs st:subject and dcterms:description.");
        }
    }

    private OptionalInt year(Resource r, String words) {
        if (words.isEmpty() || words.equals("..")) {
            return OptionalInt.empty();
        }
        if (!words.matches("-?\\d{1,4}")) {
            warn(
                    r,
                    words,
                    "This is no year; it was passed over.",
                    "Write 1820/1860, 1820/.. or ../1860.");
            return OptionalInt.empty();
        }
        return OptionalInt.of(Integer.parseInt(words));
    }

    private <E extends Enum<E>> Optional<E> one(
            Resource r, SkosTerms term, E[] values, Resource at) {
        String word = file.words(r, term(term)).orElse("");
        Optional<E> found = Stream.of(values).filter(v -> word(v).equals(word)).findFirst();
        if (found.isEmpty()) {
            unknown(at, word, term.iri().substring(SkosTerms.NAMESPACE.length()), values);
        }
        return found;
    }

    private void unknown(Resource at, String word, String what, Enum<?>[] values) {
        List<String> known = Stream.of(values).map(SkosStatementReader::word).toList();
        warn(
                at,
                word,
                "There is no " + what + " of this name; the statement was left out.",
                "The nearest is "
                        + Nearest.of(word, known)
                        + "; there are "
                        + String.join(", ", known)
                        + ".");
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private List<String> all(Resource r, IRI property) {
        return file.literals(r, property).stream()
                .map(Literal::getLabel)
                .map(String::strip)
                .filter(w -> !w.isEmpty())
                .distinct()
                .toList();
    }

    private static String local(Resource r, String start) {
        String iri = r.stringValue();
        return iri.startsWith(start)
                ? iri.substring(start.length())
                : iri.replaceAll("[/#]+$", "").replaceFirst(".*[/#:]", "");
    }

    private Citation source(Resource r) {
        return sources.citation(
                file.words(r, DCTERMS.SOURCE, DC.SOURCE).orElse(file.path()), status(file, r));
    }

    /** Returns how well it is known, where the file says so. */
    static Optional<Citation.Status> status(SkosFile file, Resource r) {
        String word = file.words(r, term(SkosTerms.STATUS)).orElse("");
        return Stream.of(Citation.Status.values()).filter(s -> word(s).equals(word)).findFirst();
    }

    private void warn(Resource at, String words, String reason, String remedy) {
        problems.add(Problem.warning(file.path(), file.line(at), words, reason, remedy));
    }

    private static IRI term(SkosTerms term) {
        return SimpleValueFactory.getInstance().createIRI(term.iri());
    }

    private static IRI iri(String local) {
        return SimpleValueFactory.getInstance().createIRI(SkosTerms.NAMESPACE + local);
    }
}
