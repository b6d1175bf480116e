package org.stillroom.measures.knowledge;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.stillroom.measures.rows.Nearest;
import org.stillroom.measures.rows.Row;
import org.stillroom.measures.rows.Rows;
import org.stillroom.model.number.Rational;
import org.stillroom.model.text.Folding;

/** The vocabulary of measures: canonical words, and the spellings that lead to them. */
public final class MeasureWords {

    private final Map<String, MeasureWord> words;
    private final Map<String, String> labels;

    private MeasureWords(Map<String, MeasureWord> words, Map<String, String> labels) {
        this.words = words;
        this.labels = labels;
    }

    /** Returns the vocabulary that ships with this bundle. */
    public static MeasureWords shipped() {
        Map<String, MeasureWord> words = new LinkedHashMap<>();
        for (Row row : Rows.shipped("words.csv")) {
            MeasureWord word = read(row);
            words.put(word.word(), word);
        }
        Map<String, String> labels = new HashMap<>();
        for (Row row : Rows.shipped("labels.csv")) {
            labels.putIfAbsent(plain(row.get("label")), row.get("word"));
        }
        return new MeasureWords(words, labels);
    }

    /** Returns this vocabulary with one more word, which is its own label. */
    public MeasureWords with(MeasureWord word) {
        Map<String, MeasureWord> more = new LinkedHashMap<>(words);
        more.put(word.word(), word);
        Map<String, String> moreLabels = new HashMap<>(labels);
        moreLabels.put(plain(word.word()), word.word());
        return new MeasureWords(more, moreLabels);
    }

    private static MeasureWord read(Row row) {
        return new MeasureWord(
                row.get("word"),
                switch (row.get("dimension")) {
                    case "volume" -> Optional.of(Dimension.VOLUME);
                    case "mass" -> Optional.of(Dimension.MASS);
                    default -> Optional.empty();
                },
                MeasureWord.Kind.valueOf(row.get("kind").toUpperCase(Locale.ROOT)),
                row.number("scatter").map(Rational::toDouble).orElse(0.0),
                row.maybe("base"),
                row.number("factor").orElse(Rational.ONE),
                row.get("meaning"));
    }

    /**
     * Returns the canonical word of a printed one, whatever its capitals, number, hyphens, dots and
     * accents.
     */
    public Optional<MeasureWord> find(String printed) {
        String plain = plain(printed);
        return Stream.of(plain, withoutPlural(plain), plain.replace(" ", ""))
                .map(labels::get)
                .filter(w -> w != null)
                .findFirst()
                .map(words::get);
    }

    /** Returns a canonical word. */
    public Optional<MeasureWord> canonical(String word) {
        return Optional.ofNullable(words.get(word));
    }

    /** Returns the canonical words nearest to a printed one, at most so many. */
    public List<String> nearest(String printed, int most) {
        List<String> telling = labels.keySet().stream().filter(l -> l.length() > 2).toList();
        return Nearest.of(plain(printed), telling, most * 3).stream()
                .map(labels::get)
                .distinct()
                .limit(most)
                .toList();
    }

    /** Returns every canonical word. */
    public Collection<MeasureWord> all() {
        return List.copyOf(words.values());
    }

    /** Returns every spelling with its canonical word. */
    public Map<String, String> labels() {
        return Map.copyOf(labels);
    }

    private static String plain(String printed) {
        String folded = Folding.foldWord(printed).replace('-', ' ').replace(".", "");
        return folded.replaceAll("\\s+", " ").strip();
    }

    private static String withoutPlural(String plain) {
        return plain.endsWith("s") ? plain.substring(0, plain.length() - 1) : plain;
    }
}
