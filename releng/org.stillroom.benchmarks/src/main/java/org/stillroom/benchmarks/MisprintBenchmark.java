package org.stillroom.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.stillroom.ingredients.Label;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.model.text.SourceText;
import org.stillroom.reading.misprint.Misprint;
import org.stillroom.reading.misprint.MisprintFinder;
import org.stillroom.reading.misprint.Words;

/**
 * Damages the letters of a library's texts as scanners do and prints how many of the damaged words are
 * found and how many proposals are right.
 *
 * <p>Arguments: a folder of texts, else the sources of the example library; the share of letters that
 * are damaged is 1, 3 and 5 per cent, with a fixed seed. Half of the damage is one letter for any
 * other, which no list of confusions foresees.
 */
public final class MisprintBenchmark {

    private static final String[][] LOOKS = {
        {"m", "rn"}, {"h", "b"}, {"e", "c"}, {"c", "e"}, {"n", "u"}, {"u", "n"}, {"l", "1"},
        {"o", "0"}, {"s", "f"}, {"d", "cl"}, {"i", "l"}, {"t", "l"}, {"f", "t"}, {"g", "q"},
        {"w", "vv"}, {"a", "o"}, {"r", "t"}, {"b", "h"}, {"v", "y"}, {"k", "h"}
    };

    private MisprintBenchmark() {}

    /** Runs the benchmark. */
    public static void main(String[] args) throws IOException {
        Locale.setDefault(Locale.ROOT);
        Path folder =
                args.length > 0
                        ? Path.of(args[0])
                        : Path.of(System.getProperty("stillroom.example"), "sources");
        List<String> clean = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file :
                    files.filter(f -> f.toString().matches(".*\\.(md|txt)")).sorted().toList()) {
                clean.add(Files.readString(file, StandardCharsets.UTF_8).replace("\r", ""));
            }
        }
        for (double share : new double[] {0.01, 0.03, 0.05}) {
            run(clean, share);
        }
    }

    private static void run(List<String> clean, double share) {
        Random random = new Random(1894);
        List<Map<Integer, String>> damaged = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        for (String text : clean) {
            Map<Integer, String> meant = new HashMap<>();
            texts.add(damage(text, share, random, meant));
            damaged.add(meant);
        }
        Thesaurus thesaurus = Thesaurus.shipped();
        List<String> names =
                thesaurus.senses().keySet().stream()
                        .flatMap(id -> thesaurus.labels(id).stream())
                        .filter(l -> l.kind() != Label.Kind.HIDDEN)
                        .map(Label::text)
                        .toList();
        MisprintFinder finder = new MisprintFinder(Words.of(texts, names));
        int wrong = 0;
        int right = 0;
        int all = 0;
        for (int i = 0; i < texts.size(); i++) {
            SourceText text = SourceText.of(texts.get(i));
            all += damaged.get(i).size();
            for (Misprint m : finder.find(text)) {
                String meant = damaged.get(i).get(text.toIndex(m.span().start()));
                boolean hit = m.meant().equals(meant);
                right += hit ? 1 : 0;
                wrong += hit ? 0 : 1;
            }
        }
        System.out.printf(
                "letters damaged %.0f %%: words damaged %d, found %.1f %%, proposals right %.1f %%"
                        + " of %d%n",
                100 * share,
                all,
                100.0 * right / Math.max(1, all),
                100.0 * right / Math.max(1, right + wrong),
                right + wrong);
    }

    /** Damages letters; the map says at which place of the new text which word was meant. */
    private static String damage(
            String text, double share, Random random, Map<Integer, String> meant) {
        StringBuilder out = new StringBuilder();
        java.util.regex.Matcher m = java.util.regex.Pattern.compile("[\\p{L}'’]+").matcher(text);
        int at = 0;
        while (m.find()) {
            out.append(text, at, m.start());
            String word = m.group();
            StringBuilder printed = new StringBuilder();
            for (int i = 0; i < word.length(); i++) {
                String letter = word.substring(i, i + 1);
                boolean hurt = random.nextDouble() < share && Character.isLetter(letter.charAt(0));
                printed.append(hurt ? other(letter, random) : letter);
            }
            if (!printed.toString().equals(word)) {
                meant.put(
                        out.codePointCount(0, out.length()) == out.length() ? out.length() : -1,
                        word.toLowerCase(Locale.ROOT).replace('’', '\'').replace('ſ', 's'));
            }
            out.append(printed);
            at = m.end();
        }
        return out.append(text.substring(at)).toString();
    }

    private static String other(String letter, Random random) {
        List<String> looks = new ArrayList<>();
        for (String[] pair : LOOKS) {
            if (pair[0].equalsIgnoreCase(letter)) {
                looks.add(pair[1]);
            }
        }
        boolean any = looks.isEmpty() || random.nextBoolean();
        return any
                ? String.valueOf((char) ('a' + random.nextInt(26)))
                : looks.get(random.nextInt(looks.size()));
    }
}
