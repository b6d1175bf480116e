package org.stillroom.reading.grammar;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.stillroom.model.reading.Confidence;

/**
 * Says how often a line that was read in this way is right.
 *
 * <p>A logistic model over a few features; its weights stand in {@code confidence.tsv} with how they
 * were got.
 */
final class ConfidenceModel {

    private final Map<Hint, Double> weights = new EnumMap<>(Hint.class);
    private double base;

    /** Reads the weights from the data file beside this class. */
    static ConfidenceModel standard() {
        ConfidenceModel model = new ConfidenceModel();
        try (BufferedReader in =
                new BufferedReader(
                        new InputStreamReader(
                                Objects.requireNonNull(
                                        ConfidenceModel.class.getResourceAsStream(
                                                "confidence.tsv")),
                                StandardCharsets.UTF_8))) {
            in.lines().filter(l -> !l.startsWith("#") && !l.isBlank()).forEach(model::row);
        } catch (IOException e) {
            throw new UncheckedIOException("confidence.tsv cannot be read", e);
        }
        return model;
    }

    private void row(String line) {
        String[] cells = line.split("\t");
        double weight = Double.parseDouble(cells[1]);
        if (cells[0].equals("base")) {
            base = weight;
        } else {
            weights.put(Hint.valueOf(cells[0]), weight);
        }
    }

    Confidence of(Draft draft) {
        double sum = base;
        List<String> reasons = new ArrayList<>();
        for (Hint hint : draft.hints) {
            double weight = weights.getOrDefault(hint, 0.0);
            sum += weight;
            if (weight < 0 && !hint.reason().isEmpty()) {
                reasons.add(hint.reason());
            }
        }
        return new Confidence(1 / (1 + Math.exp(-sum)), reasons);
    }
}
