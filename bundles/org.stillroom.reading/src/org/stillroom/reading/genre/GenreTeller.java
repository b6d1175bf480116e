package org.stillroom.reading.genre;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.stillroom.model.reading.Reading.Genre;
import org.stillroom.model.text.Folding;

/**
 * Tells a joke, a remedy and an advertisement from a recipe to be made, by phrases with weights.
 *
 * <p>A phrase counts once, in the title twice. The genre whose phrases weigh most is told if they
 * weigh at least one; otherwise the words are a recipe.
 */
public final class GenreTeller {

    private static final int REACH = 4000;
    private static final GenreTeller HOUSE = load();

    private final List<Phrase> phrases;

    private record Phrase(String words, Genre genre, double weight) {}

    private GenreTeller(List<Phrase> phrases) {
        this.phrases = List.copyOf(phrases);
    }

    /** Returns the teller with the phrases that ship with the program. */
    public static GenreTeller house() {
        return HOUSE;
    }

    /** Returns the genre of a recipe by its title and its words. */
    public Genre tell(String title, String body) {
        String heading = " " + plain(title) + " ";
        String words = " " + plain(body.substring(0, Math.min(REACH, body.length()))) + " ";
        Map<Genre, Double> weights = new EnumMap<>(Genre.class);
        for (Phrase phrase : phrases) {
            double times =
                    heading.contains(phrase.words) ? 2 : words.contains(phrase.words) ? 1 : 0;
            if (times > 0) {
                weights.merge(phrase.genre, times * phrase.weight, Double::sum);
            }
        }
        Genre best = Genre.RECIPE;
        double most = 1 - 1e-9;
        for (Map.Entry<Genre, Double> entry : weights.entrySet()) {
            if (entry.getValue() > most) {
                most = entry.getValue();
                best = entry.getKey();
            }
        }
        return best;
    }

    private static String plain(String words) {
        String folded = Folding.fold(words).folded();
        StringBuilder out = new StringBuilder(folded.length());
        for (int i = 0; i < folded.length(); i++) {
            char c = folded.charAt(i);
            boolean kept = Character.isLetterOrDigit(c) || c == '$' || c == '\'' || c == '-';
            if (kept) {
                out.append(c);
            } else if (!out.isEmpty() && out.charAt(out.length() - 1) != ' ') {
                out.append(' ');
            }
        }
        return out.toString().strip();
    }

    private static GenreTeller load() {
        List<Phrase> phrases = new ArrayList<>();
        try (InputStream in = GenreTeller.class.getResourceAsStream("genre.tsv");
                BufferedReader reader =
                        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                String[] row = line.split("\t");
                if (!line.startsWith("#") && row.length >= 3 && !row[0].equals("phrase")) {
                    Genre genre = Genre.valueOf(row[1].toUpperCase(Locale.ROOT));
                    phrases.add(new Phrase(" " + row[0] + " ", genre, Double.parseDouble(row[2])));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("The data file genre.tsv cannot be read", e);
        }
        return new GenreTeller(phrases);
    }
}
