package org.stillroom.reading.grammar;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;

/** The words of one language that the grammar knows, read from a file of rows. */
final class Vocabulary {

    private static final PhraseTable NOTHING = new PhraseTable();
    private static final int LONGEST_MEASURE = 18;

    /** A measure with the letters of like shape made one. */
    private record Shape(Slips.Word word, String value) {}

    /** By the length of their forms, so that only words of about one length are compared. */
    private final Map<Integer, List<Shape>> shapes = new HashMap<>();

    private final String language;
    private final Map<String, PhraseTable> classes = new HashMap<>();
    private final Set<String> words = new HashSet<>();
    private final Map<String, String> numberShapes = new TreeMap<>();
    private final VerbForms verbs = new VerbForms();
    private final Map<String, String> longMeasures = new TreeMap<>();

    private Vocabulary(String language) {
        this.language = language;
    }

    /** Reads the vocabulary of a language: “en”, “fr”, “de” or “es”. */
    static Vocabulary of(String language) {
        Vocabulary vocabulary = new Vocabulary(language);
        VocabularyRow.of(language).forEach(r -> vocabulary.add(r.kind(), r.form(), r.value()));
        vocabulary.close();
        return vocabulary;
    }

    private void close() {
        classes.values().forEach(PhraseTable::close);
        longMeasures.forEach(
                (form, value) ->
                        shapes.computeIfAbsent(form.length(), n -> new ArrayList<>())
                                .add(new Shape(Slips.Word.of(form), value)));
    }

    private void add(String kind, String form, String value) {
        PhraseTable table = classes.computeIfAbsent(kind, k -> new PhraseTable());
        table.add(form, value);
        if (kind.equals("measure") && form.endsWith("fuls")) {
            add(kind, form.substring(0, form.length() - 4) + "sful", value);
        }
        for (String word : form.split("[ -]+")) {
            words.add(word);
        }
        if (kind.equals("verb") && form.indexOf(' ') < 0) {
            verbs.add(form);
        } else if (kind.equals("participle")) {
            verbs.addParticiple(form, value);
        }
        boolean number = kind.equals("number") && form.length() > 2;
        if (number || kind.equals("fraction") && form.length() > 3) {
            numberShapes.putIfAbsent(Slips.likeness(form), value);
        }
        boolean whole = form.indexOf(' ') < 0 && form.length() > 3;
        if (kind.equals("measure") && whole && !form.startsWith("fl")) {
            longMeasures.put(form, value);
        }
        if (kind.equals("measure") && form.indexOf(' ') > 0 && form.length() > 4) {
            table.add(form.replace(" ", ""), value);
            if (!form.startsWith("fl ")) {
                longMeasures.putIfAbsent(form.replace(" ", ""), value);
            }
            words.add(form.replace(" ", ""));
        }
    }

    /** Tells whether the noun stands before what tells of it: “glace pilée”. */
    boolean isRomance() {
        return language.equals("fr") || language.equals("es");
    }

    String language() {
        return language;
    }

    /** Returns the phrases of a class; empty where the language has none. */
    PhraseTable table(String kind) {
        return classes.getOrDefault(kind, NOTHING);
    }

    boolean has(String kind, String word) {
        return table(kind).has(word);
    }

    Optional<PhraseTable.Match> at(String kind, Passage passage, int index) {
        return table(kind).at(passage, index);
    }

    /** Returns the value of the number that a word with confused letters stands for. */
    Optional<String> likeNumber(String printed) {
        return Optional.ofNullable(numberShapes.get(Slips.likeness(printed)));
    }

    /** Returns the forms of its verbs. */
    VerbForms verbs() {
        return verbs;
    }

    /** Returns where two words were set as one, or 0: “halfa”, “smallpiece”. */
    int cut(String word, Predicate<String> known) {
        if (word.length() < 5 || known.test(word)) {
            return 0;
        }
        boolean of = has("of", word.substring(0, 2)) && known.test(word.substring(2));
        if (of && word.length() > 4) {
            return 2;
        }
        for (int i = word.length() - 1; i > 2; i--) {
            String head = word.substring(0, i);
            boolean leads =
                    has("number", head)
                            || has("measure", head)
                            || has("size", head)
                            || has("fraction", head);
            String tail = word.substring(i);
            boolean follows =
                    tail.length() > 2 && known.test(tail)
                            || has("article", tail)
                            || has("of", tail) && has("measure", head);
            if (leads && follows && !has("no-cut", tail) && !has("no-tail", tail)) {
                return i;
            }
        }
        return 0;
    }

    /**
     * Returns the measure that a word with a slip of type or scanning stands for; nothing where two
     * are as near.
     */
    Optional<String> nearMeasure(String printed) {
        if (printed.length() > LONGEST_MEASURE) {
            return Optional.empty();
        }
        Slips.Word word = Slips.Word.of(printed);
        int least = Slips.FAR;
        Set<String> nearest = new TreeSet<>();
        for (int length = printed.length() - 2; length <= printed.length() + 2; length++) {
            for (Shape shape : shapes.getOrDefault(length, List.of())) {
                int slips = Slips.slips(word, shape.word());
                if (slips < least) {
                    least = slips;
                    nearest.clear();
                }
                if (slips == least && slips < Slips.FAR) {
                    nearest.add(shape.value());
                }
            }
        }
        return nearest.size() == 1 ? nearest.stream().findFirst() : Optional.empty();
    }

    /** Tells whether a word occurs anywhere in the vocabulary. */
    boolean knows(String word) {
        return words.contains(word);
    }
}
