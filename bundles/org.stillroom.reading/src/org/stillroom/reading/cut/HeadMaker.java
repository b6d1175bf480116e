package org.stillroom.reading.cut;

import java.util.Optional;
import java.util.regex.Pattern;

/** Makes a possible title of words that a recipe's text runs on from, where they can be one. */
final class HeadMaker {

    static final int MOST_WORDS = 14;

    static final Pattern SAME_FOR = Pattern.compile("(?i)the same,? (?:for|in|as|with|without) ");

    private final String text;
    private final Cues cues;

    HeadMaker(String text, Cues cues) {
        this.text = text;
        this.cues = cues;
    }

    /** Returns the same title, standing in another place. */
    static Head moved(Head h, Head.Place place) {
        return new Head(
                place,
                h.manner,
                h.level,
                h.letters,
                h.emphasis,
                h.blankBefore,
                h.stop,
                h.title,
                h.start,
                h.end);
    }

    /** Returns the title whose words start where its recipe does. */
    Optional<Head> head(
            String manner, int from, int end, int after, int to, boolean blank, boolean stop) {
        return head(manner, from, from, end, after, to, blank, stop);
    }

    /** Returns the title, or nothing where the words are a line of a recipe or point to a story. */
    Optional<Head> head(
            String manner,
            int from,
            int named,
            int end,
            int after,
            int to,
            boolean blank,
            boolean stop) {
        TitleText title = TitleText.of(text, named, end);
        String words = title.words();
        if (words.length() < 3
                || FirstWords.pointsAway(words)
                || Splitter.count(words) > MOST_WORDS
                || after >= to
                || TitleWords.isLine(words, cues)
                        && !(manner.equals("dash") && SAME_FOR.matcher(words).lookingAt())
                || !Character.isUpperCase(words.charAt(0))
                        && "“\"‘'".indexOf(words.charAt(0)) < 0) {
            return Optional.empty();
        }
        return Optional.of(
                new Head(
                        Head.Place.RUN_IN,
                        manner,
                        0,
                        Head.letters(words),
                        manner.equals("italics"),
                        blank,
                        stop,
                        title,
                        from,
                        Math.max(end, after)));
    }
}
