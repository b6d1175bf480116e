package org.stillroom.reading.cut;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * How much a stretch of text reads like the body of a recipe.
 *
 * <p>Counts the cues a recipe is made of (amounts, measures, ingredients, orders) against those of
 * a story, per word, in windows of about sixty words, so that a recipe inside a long paragraph is
 * heard. One pass over the characters.
 *
 * @param words how many words were counted
 * @param value the weighed cues per word of the best window; a recipe seldom has less than 0.2, a
 *     story seldom more than 0.12
 * @param mean the weighed cues per word of the whole
 * @param amounts numbers followed by a measure
 * @param verbs orders: verbs at the start of a clause
 * @param ingredients ingredient words
 * @param references words that send to another recipe
 * @param narrative words of story-telling
 */
record BodyScore(
        int words,
        double value,
        double mean,
        int amounts,
        int verbs,
        int ingredients,
        int references,
        int narrative) {

    /** The least value of a stretch that is taken for a recipe's body without further evidence. */
    static final double RECIPE = 0.2;

    static final BodyScore NONE = new BodyScore(0, 0, 0, 0, 0, 0, 0, 0);

    /** A list of topics between dashes, as it stands under the head of a chapter, is no body. */
    private BodyScore ofWords(int count) {
        return new BodyScore(count, 0, 0, 0, 0, 0, 0, 0);
    }

    private static final int WINDOW = 30;
    private static final int LONGEST_WORD = 60;
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");

    /** Returns the score of a stretch of a text, given by UTF-16 units. */
    static BodyScore of(String text, int from, int to, Cues cues) {
        Counter counter = new Counter(cues);
        int at = from;
        while (at < to) {
            char c = text.charAt(at);
            if (Character.isLetter(c)) {
                int end = wordEnd(text, at, to);
                counter.word(fold(text, at, end));
                at = end;
            } else {
                counter.sign(c);
                at++;
            }
        }
        return counter.score();
    }

    /** Returns the end of the word that starts at a place. */
    static int wordEnd(String text, int at, int to) {
        int end = at + 1;
        int limit = Math.min(to, at + LONGEST_WORD);
        while (end < limit) {
            char c = text.charAt(end);
            boolean joins =
                    (c == '-' || c == '\'' || c == '’')
                            && end + 1 < limit
                            && Character.isLetter(text.charAt(end + 1));
            if (!Character.isLetter(c) && !joins) {
                break;
            }
            end++;
        }
        return end;
    }

    /** Returns a word in lower case, with the long s and the curly apostrophe made plain. */
    static String fold(String text, int from, int to) {
        String word = text.substring(from, to);
        for (int i = 0; i < word.length(); i++) {
            char c = word.charAt(i);
            if (c < 'a' || c > 'z') {
                return plain(word.toLowerCase(Locale.ROOT));
            }
        }
        return word;
    }

    private static String plain(String word) {
        for (int i = 0; i < word.length(); i++) {
            if (word.charAt(i) > 127) {
                String curly = word.replace('ſ', 's').replace('’', '\'').replace("ß", "ss");
                return MARKS.matcher(Normalizer.normalize(curly, Normalizer.Form.NFD))
                        .replaceAll("");
            }
        }
        return word;
    }

    /** Collects the cues of one stretch. */
    private static final class Counter {
        private final Cues cues;
        private int words;
        private int amounts;
        private int verbs;
        private int ingredients;
        private int references;
        private int narrative;
        private boolean clause = true;
        private boolean passive;
        private int sinceNumber = 9;
        private int dashes;
        private double total;
        private double window;
        private double before;
        private double best;

        Counter(Cues cues) {
            this.cues = cues;
        }

        void sign(char c) {
            dashes += c == '—' ? 1 : 0;
            switch (c) {
                case '.', ';', ':', ',', '—', '!', '?', '(', '\n' -> {
                    clause = c != '\n' || clause;
                    if (c != '\n' && c != ',') {
                        sinceNumber = 9;
                    }
                }
                case '$', '£' -> {
                    narrative++;
                    window -= 1;
                    total -= 1;
                }
                default -> {
                    if (isNumber(c)) {
                        sinceNumber = 0;
                    }
                }
            }
        }

        void word(String word) {
            int kinds = cues.kinds(word);
            double weight = weight(kinds, word);
            clause = word.equals("and") || word.equals("then") || word.equals("to");
            words++;
            total += weight;
            window += weight;
            if (words % WINDOW == 0) {
                best = Math.max(best, (before + window) / (words == WINDOW ? WINDOW : 2 * WINDOW));
                before = window;
                window = 0;
            }
        }

        private double weight(int kinds, String word) {
            double weight = 0;
            boolean number = (kinds & Cues.NUMBER) != 0;
            if ((kinds & Cues.MEASURE) != 0) {
                boolean counted = sinceNumber <= 2;
                amounts += counted ? 1 : 0;
                weight += counted ? 2 : 0.7;
                sinceNumber = 9;
            }
            boolean done = passive && (kinds & Cues.PARTICIPLE) != 0;
            passive = isBe(word) || passive && (word.endsWith("ly") || word.equals("then"));
            if ((kinds & Cues.VERB) != 0 && clause) {
                verbs++;
                weight += 1.2;
            } else if (done && !isMaking(word)) {
                weight += 1.2;
            }
            if ((kinds & Cues.INGREDIENT) != 0) {
                ingredients++;
                weight += 0.8;
                if (sinceNumber <= 2) {
                    amounts++;
                    weight += 0.6;
                }
            }
            if ((kinds & Cues.VESSEL) != 0) {
                weight += 0.5;
            }
            if ((kinds & Cues.QUALIFIER) != 0) {
                weight += 0.3;
            }
            if ((kinds & Cues.REFERENCE) != 0) {
                references++;
                weight += 1.3;
            }
            if ((kinds & Cues.NARRATIVE) != 0) {
                narrative++;
                weight -= 0.9;
            }
            boolean article = word.equals("a") || word.equals("an");
            sinceNumber = number || article ? 0 : sinceNumber + 1;
            return weight + (number ? 0.3 : 0);
        }

        BodyScore score() {
            if (dashes >= 6 && dashes * 9 > words) {
                return NONE.ofWords(words);
            }
            double mean = total / (words + 4);
            double last = (before + window) / (Math.min(words, WINDOW + words % WINDOW) + 4);
            double top = Math.max(best, Math.max(last, mean));
            double value = words <= 2 * WINDOW ? mean : 0.75 * top + 0.25 * mean;
            boolean orders = verbs > 0 || references > 0;
            if (!orders && amounts == 0 && ingredients * 4 < words || !orders && ingredients == 0) {
                value *= ingredients == 0 ? 0.2 : 0.5;
            }
            return new BodyScore(
                    words, value, mean, amounts, verbs, ingredients, references, narrative);
        }

        /** What is made, mixed or distilled is told of ready things too (“Arrack is made from rice”). */
        private static boolean isMaking(String word) {
            return switch (word) {
                case "made", "mixed", "prepared", "distilled", "brewed", "kept", "drunk" -> true;
                default -> false;
            };
        }

        private static boolean isBe(String word) {
            return switch (word) {
                case "is", "are", "be", "being", "been" -> true;
                default -> false;
            };
        }

        private static boolean isNumber(char c) {
            return c >= '0' && c <= '9'
                    || c >= '¼' && c <= '¾'
                    || c >= '⅐' && c <= '⅞'
                    || c == '℥'
                    || c == 'ʒ'
                    || c == '℞'
                    || c == '℔';
        }
    }
}
