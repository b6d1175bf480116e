package org.stillroom.ingredients;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.stillroom.ingredients.knowledge.Knowledge;
import org.stillroom.ingredients.knowledge.KnowledgeReader;
import org.stillroom.ingredients.spelling.Words;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.spec.Concept;
import org.stillroom.model.text.Folding;

/**
 * What the names of ingredients meant, by time, place and trade.
 *
 * <p>A thesaurus never changes; a library’s own rows and its decisions give another one. It may be
 * used by any number of threads.
 */
public final class Thesaurus {

    /** Answers kept for words asked for before; they do not depend on time and place. */
    private static final int REMEMBERED = 20_000;

    private static final int MOST_CANDIDATES = 8;

    /** Where a library keeps its decisions. */
    private static final String JOURNAL = "research/journal.jsonl";

    private final Knowledge knowledge;
    private final ShippedData data;
    private final SortedMap<String, Sense> senses;
    private final Map<String, List<Label>> labels;
    private final Matching matching;
    private final IngredientLexicon english;
    private final Map<String, List<Matching.Hit>> remembered = new ConcurrentHashMap<>();

    private Thesaurus(Knowledge knowledge, ShippedData data) {
        this.knowledge = knowledge;
        this.data = data;
        this.senses = Collections.unmodifiableSortedMap(new SenseBuilder(knowledge).build());
        this.labels = labels(knowledge);
        this.matching = Matching.of(labels, data.spelling());
        this.english = IngredientLexicon.of(labels, "en");
    }

    private static Map<String, List<Label>> labels(Knowledge knowledge) {
        Map<String, List<Label>> labels = new TreeMap<>();
        knowledge.senses().keySet().forEach(id -> labels.put(id, new ArrayList<>()));
        knowledge.labels().stream()
                .filter(l -> labels.containsKey(knowledge.current(l.sense())))
                .forEach(l -> labels.get(knowledge.current(l.sense())).add(l.label()));
        knowledge
                .senses()
                .forEach(
                        (id, sense) -> {
                            List<Label> own = labels.get(id);
                            if (own.stream().noneMatch(l -> l.text().equals(sense.label()))) {
                                own.addFirst(
                                        new Label(
                                                sense.label(),
                                                Label.Kind.PREFERRED,
                                                "en",
                                                Validity.ALWAYS,
                                                sense.source()));
                            }
                        });
        labels.replaceAll((id, list) -> List.copyOf(list));
        return Collections.unmodifiableMap(labels);
    }

    /** Returns the thesaurus that comes with the program. */
    public static Thesaurus shipped() {
        return Holder.SHIPPED;
    }

    /** Reads the shipped files once, when they are first asked for. */
    private static final class Holder {
        static final Thesaurus SHIPPED = load();

        private static Thesaurus load() {
            ShippedData data = ShippedData.read();
            return new Thesaurus(data.knowledge(), data);
        }
    }

    /**
     * A thesaurus that was made of files, with what was wrong in them.
     *
     * @param thesaurus the thesaurus
     * @param problems what could not be read
     */
    public record Loaded(Thesaurus thesaurus, List<Problem> problems) {

        /** Keeps the list unchangeable. */
        public Loaded {
            problems = List.copyOf(problems);
        }
    }

    /** Returns this with the rows of a library’s {@code knowledge/ingredients*.csv} files. */
    public Loaded with(List<KnowledgeFile> files) {
        if (files.isEmpty()) {
            return new Loaded(this, List.of());
        }
        List<Problem> problems = new ArrayList<>();
        Knowledge rows = KnowledgeReader.read(files, data.sources().forUser(), knowledge, problems);
        return new Loaded(new Thesaurus(knowledge.plus(rows), data), problems);
    }

    /**
     * Returns this with a user’s decisions replayed, oldest first.
     *
     * <p>A decision about a sense that is no longer there is passed over with a problem; to take one
     * back, replay the others without it.
     */
    public Loaded apply(List<ThesaurusEdit> edits) {
        List<Problem> problems = new ArrayList<>();
        Knowledge rows = knowledge;
        for (ThesaurusEdit edit : edits) {
            List<Problem> wrong = new ArrayList<>();
            rows = new Editing(rows, wrong).apply(edit);
            wrong.forEach(
                    w ->
                            problems.add(
                                    new Problem(
                                            w.severity(),
                                            JOURNAL,
                                            w.line(),
                                            edit.toText(),
                                            w.reason(),
                                            w.remedy())));
        }
        return new Loaded(new Thesaurus(rows, data), problems);
    }

    /** Returns the sense with this id, or the one that it was merged into. */
    public Optional<Sense> sense(String id) {
        return Optional.ofNullable(senses.get(knowledge.current(id)));
    }

    /** Returns every sense, by id. */
    public SortedMap<String, Sense> senses() {
        return senses;
    }

    /** Returns the names of a sense, the preferred one first. */
    public List<Label> labels(String id) {
        return labels.getOrDefault(knowledge.current(id), List.of()).stream()
                .sorted(Comparator.comparing(Label::kind))
                .toList();
    }

    /** Returns the senses of which this one is a broader sense, directly. */
    public List<Sense> narrower(String id) {
        return senses.values().stream().filter(s -> s.broader().contains(id)).toList();
    }

    /** Returns the id itself and the ids of all broader senses, nearest first. */
    public Set<String> withBroader(String id) {
        Set<String> all = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(List.of(knowledge.current(id)));
        for (int i = 0; i < open.size(); i++) {
            Sense sense = senses.get(open.get(i));
            if (sense != null && all.add(sense.id())) {
                open.addAll(sense.broader());
            }
        }
        return all;
    }

    /**
     * Returns the id of the broadest sense by which versions of a drink may be compared: “gin” for
     * every gin, but “curacao” for a curaçao, since “liqueur” would say too little.
     */
    public String family(String id) {
        String family = knowledge.current(id);
        for (String broader : withBroader(id)) {
            if (!data.general().contains(broader)) {
                family = broader;
            }
        }
        return family;
    }

    /** Returns a sense as specs and versions carry it. */
    public Concept concept(Sense sense) {
        return new Concept(sense.id(), sense.label(), family(sense.id()), sense.role(), true);
    }

    /**
     * Returns the senses that words may have, likeliest first; none where nothing is near.
     *
     * <p>A name that is right counts before one that is nearly right; among equals the time, place,
     * trade and language decide. A name with several senses keeps them all.
     *
     * @param words an ingredient’s name as printed or folded (“old Tom gin”, “curaçoa”)
     * @param where when, where and for whose work it was written
     */
    public List<Candidate> find(String words, Circumstances where) {
        Setting setting = new Setting(where, data.countries());
        Map<String, Candidate> best = new HashMap<>();
        for (Matching.Hit hit : hits(words)) {
            Sense sense = senses.get(hit.name().sense());
            Candidate found = Reasons.candidate(hit, sense, setting, weight(sense));
            best.merge(sense.id(), found, (a, b) -> a.score() >= b.score() ? a : b);
        }
        return best.values().stream()
                .sorted(
                        Comparator.comparingDouble(Candidate::score)
                                .reversed()
                                .thenComparing(c -> c.sense().id()))
                .limit(MOST_CANDIDATES)
                .toList();
    }

    /** Things with many names are the common ones; of two that fit alike they are likelier. */
    private double weight(Sense sense) {
        return 0.0005 * Math.min(20, labels.get(sense.id()).size());
    }

    private List<Matching.Hit> hits(String words) {
        String folded = Folding.foldWord(words);
        boolean accented = Words.isArticle(folded) && words.chars().anyMatch(c -> c > 127);
        String key = accented ? words.strip() : folded;
        List<Matching.Hit> known = remembered.get(key);
        if (known == null) {
            known = List.copyOf(matching.hits(key));
            if (remembered.size() >= REMEMBERED) {
                remembered.clear();
            }
            remembered.put(key, known);
        }
        return known;
    }

    /** Returns the rows that it was made of, each with its source, as an export needs them. */
    public Knowledge rows() {
        return knowledge;
    }

    /** Tells whether words are, nearly are or hold the name of an ingredient. */
    public boolean looksLikeIngredient(String words) {
        List<String> tokens = Words.of(words);
        return !english.all(tokens).isEmpty()
                || hits(words).stream().anyMatch(h -> h.likeness() >= 0.86);
    }

    /** Returns the names that the reader looks for in English text. */
    public IngredientLexicon lexicon() {
        return english;
    }

    /** Returns the names that the reader looks for in text of a language. */
    public IngredientLexicon lexicon(String language) {
        return language.equals("en") ? english : IngredientLexicon.of(labels, language);
    }

    /** Returns every hazard, by id. */
    public List<Hazard> hazards() {
        Map<String, Hazard> byId = new TreeMap<>();
        knowledge.hazards().forEach(h -> byId.put(h.id(), h));
        return List.copyOf(byId.values());
    }

    /** Returns the first and last dates of things, by id. */
    public List<Milestone> milestones() {
        Map<String, Milestone> byId = new TreeMap<>();
        knowledge.milestones().forEach(m -> byId.put(m.id(), m));
        return List.copyOf(byId.values());
    }
}
