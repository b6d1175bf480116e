package org.stillroom.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Words in both themes stand out from their ground.
 *
 * <p>Contrast and its limit of 4.5 to 1 after the Web Content Accessibility Guidelines 2.2,
 * success criterion 1.4.3 and the definitions of contrast ratio and relative luminance.
 */
class ThemeContrastTests {
    private static final double LEAST = 4.5;
    private static final List<String> WORDS =
            List.of(
                    "ink",
                    "quiet",
                    "accent",
                    "amount",
                    "measure",
                    "ingredient",
                    "step",
                    "vessel",
                    "doubt",
                    "caution");

    /** Words that stand on lit or found ground too. */
    private static final List<String> LIT_WORDS =
            List.of("ink", "amount", "measure", "ingredient", "step", "vessel", "doubt");

    private static final Pattern COLOUR =
            Pattern.compile("stillroom-([a-z]+):\\s*#([0-9a-fA-F]{6})");

    private static Map<String, Integer> colours(String theme) throws IOException {
        String css = Files.readString(Path.of("css", theme + ".css"));
        Map<String, Integer> colours = new TreeMap<>();
        Matcher m = COLOUR.matcher(css);
        while (m.find()) {
            colours.put(m.group(1), Integer.parseInt(m.group(2), 16));
        }
        assertFalse(colours.isEmpty(), theme);
        return colours;
    }

    private static double contrast(int one, int other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16 & 0xFF)
                + 0.7152 * linear(rgb >> 8 & 0xFF)
                + 0.0722 * linear(rgb & 0xFF);
    }

    private static double linear(int eight) {
        double share = eight / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    @Test
    void contrastOfBlackOnWhiteIsTwentyOne() {
        assertEquals(21.0, contrast(0x000000, 0xFFFFFF), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void wordsStandOutFromPaper(String theme) throws IOException {
        Map<String, Integer> colours = colours(theme);
        for (String word : WORDS) {
            double contrast = contrast(colours.get(word), colours.get("paper"));
            assertTrue(contrast >= LEAST, theme + ", " + word + ": " + contrast);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void wordsStandOutFromLitGround(String theme) throws IOException {
        Map<String, Integer> colours = colours(theme);
        for (String word : LIT_WORDS) {
            for (String ground : List.of("lit", "found")) {
                double contrast = contrast(colours.get(word), colours.get(ground));
                assertTrue(contrast >= LEAST, theme + ", " + word + " on " + ground + contrast);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void everyUseHasAColour(String theme) throws IOException {
        Map<String, Integer> colours = colours(theme);
        for (Ink.Use use : Ink.Use.values()) {
            assertTrue(
                    colours.containsKey(use.property().replace("stillroom-", "")), use.property());
        }
    }
}
