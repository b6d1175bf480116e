package org.stillroom.reading.misprint;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/**
 * Finds words that type or a scanner has damaged, and proposes what they were.
 *
 * <p>A word that nobody knows is compared with what it would be if letters had been confused in the
 * usual ways, or if one letter were wrong. The better known that word is, the rarer and the stranger
 * the printed one is, the oftener its neighbours stand beside it elsewhere, and the more alone it is
 * among what could be meant, the likelier it is. A noisy channel, as handbooks on speech and language
 * processing describe it.
 */
public final class MisprintFinder {

    private static final int SHORTEST = 2;
    private static final int LONGEST = 24;
    private static final double PLAIN_SLIP = 0.7;
    private static final double BESIDE = 8;

    /** Where the proposal begins to be worth reading; chosen on generated misprints. */
    private static final double WORTH = 0.78;

    /** A library that prints a word more often speaks for it, more than in proportion. */
    private static final double MET = 1.5;

    /** “Syrups” beside “syrup”: endings are no misprints. */
    private static final double ENDING = 40;

    /** Of two letters there is always another word. */
    private static final double TINY = 10;

    private final Words words;
    private final List<Confusion> confusions = confusions();

    private record Confusion(String printed, String meant, double weight) {}

    /** A word in small letters and where it stands, in UTF-16 units. */
    private record Place(String word, int at) {}

    private record Guess(String word, String confused, double score) {}

    /** Makes a finder that knows these words. */
    public MisprintFinder(Words words) {
        this.words = words;
    }

    /** Returns the proposals for a text, in its order, each worth reading. */
    public List<Misprint> find(SourceText text) {
        List<Misprint> found = new ArrayList<>();
        List<Place> places = new ArrayList<>();
        Words.each(text.toString(), (word, at) -> places.add(new Place(word, at)));
        for (int i = 0; i < places.size(); i++) {
            Place place = places.get(i);
            String before = i > 0 ? places.get(i - 1).word() : "";
            String after = i + 1 < places.size() ? places.get(i + 1).word() : "";
            look(place.word(), before, after).ifPresent(g -> found.add(misprint(text, place, g)));
        }
        return found;
    }

    private static Misprint misprint(SourceText text, Place place, Guess guess) {
        int end = place.at() + place.word().length();
        Span span = new Span(text.toPlace(place.at()), text.toPlace(end));
        return new Misprint(span, text.slice(span), guess.word(), guess.confused(), guess.score());
    }

    /** Returns what an unknown word probably was, with its probability as the score. */
    private Optional<Guess> look(String word, String before, String after) {
        boolean letters = word.chars().anyMatch(Character::isLetter);
        boolean number = word.chars().filter(Character::isDigit).count() * 2 > word.length();
        boolean size = word.length() >= SHORTEST && word.length() <= LONGEST;
        boolean roman = word.matches("[ivxlcdm]+");
        if (!letters || number || roman || !size || words.isTaught(word)) {
            return Optional.empty();
        }
        Map<String, Guess> guesses = new HashMap<>();
        confuse(word, 1, "", guesses, 2);
        slip(word, guesses);
        guesses.remove(word);
        List<Guess> best =
                guesses.values().stream()
                        .map(g -> beside(g, before, after))
                        .sorted((a, b) -> Double.compare(b.score(), a.score()))
                        .limit(2)
                        .toList();
        return best.isEmpty() ? Optional.empty() : judged(word, best);
    }

    /** A word that is met beside the same neighbours elsewhere is the likelier. */
    private Guess beside(Guess g, String before, String after) {
        int met = words.pair(before, g.word()) + words.pair(g.word(), after);
        return new Guess(g.word(), g.confused(), g.score() * (1 + BESIDE * met));
    }

    private Optional<Guess> judged(String word, List<Guess> best) {
        Guess first = best.get(0);
        double second = best.size() > 1 ? best.get(1).score() : 0;
        double own = asPrinted(word, first.word());
        double probability = first.score() / (first.score() + second + own);
        return probability < WORTH
                ? Optional.empty()
                : Optional.of(new Guess(first.word(), first.confused(), probability));
    }

    /** How much speaks for a word being right as it stands, beside what it may have been. */
    private double asPrinted(String word, String meant) {
        double own = own(word.length(), words.strange(word));
        double met = Math.pow(Math.max(1, words.count(word)), MET);
        double tiny = word.length() == SHORTEST ? TINY : 1;
        return own * met * tiny * (isEnding(word, meant) ? ENDING : 1);
    }

    /** Tells whether two words differ by a letter or two at the end alone. */
    private static boolean isEnding(String a, String b) {
        String shorter = a.length() < b.length() ? a : b;
        String longer = a.length() < b.length() ? b : a;
        return longer.startsWith(shorter) && longer.length() - shorter.length() <= 2;
    }

    /**
     * How much speaks for a word that nobody knows being right as it stands: the less, the longer it
     * is and the more of its letters stand together as in no known word.
     */
    private static double own(int length, int strange) {
        return switch (strange) {
            case 0 -> length < 5 ? 40 : length < 8 ? 6 : 2;
            case 1 -> length < 5 ? 4 : 0.6;
            default -> length < 5 ? 0.8 : 0.1;
        };
    }

    private void confuse(
            String word, double weight, String said, Map<String, Guess> guesses, int rounds) {
        for (Confusion c : confusions) {
            for (int at = word.indexOf(c.printed());
                    at >= 0;
                    at = word.indexOf(c.printed(), at + 1)) {
                String meant =
                        word.substring(0, at)
                                + c.meant()
                                + word.substring(at + c.printed().length());
                double now = weight * c.weight();
                String told =
                        (said.isEmpty() ? "" : said + ", ")
                                + "“"
                                + c.printed()
                                + "” for “"
                                + c.meant()
                                + "”";
                guess(meant, now, told, guesses);
                if (rounds > 1 && word.length() > 4) {
                    confuse(meant, now * 0.06, told, guesses, rounds - 1);
                }
            }
        }
    }

    /** Any one letter may be another, or one too many, or missing. */
    private void slip(String word, Map<String, Guess> guesses) {
        for (int i = 0; i < word.length(); i++) {
            String head = word.substring(0, i);
            String tail = word.substring(i + 1);
            guess(head + tail, PLAIN_SLIP, "a letter too many", guesses);
            for (char c = 'a'; c <= 'z'; c++) {
                guess(head + c + tail, PLAIN_SLIP, "a letter wrong", guesses);
                guess(head + c + word.substring(i), PLAIN_SLIP, "a letter lost", guesses);
            }
        }
    }

    private void guess(String word, double weight, String said, Map<String, Guess> guesses) {
        if (words.isKnown(word)) {
            double score = weight * words.count(word);
            guesses.merge(
                    word, new Guess(word, said, score), (a, b) -> a.score() >= b.score() ? a : b);
        }
    }

    private static List<Confusion> confusions() {
        try (InputStream in = MisprintFinder.class.getResourceAsStream("confusions.tsv");
                BufferedReader rows =
                        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return rows.lines()
                    .filter(l -> !l.startsWith("#") && !l.startsWith("printed\t"))
                    .map(l -> l.split("\t"))
                    .map(
                            c ->
                                    new Confusion(
                                            Words.plain(c[0]),
                                            Words.plain(c[1]),
                                            Double.parseDouble(c[2])))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("The confusions cannot be read", e);
        }
    }
}
