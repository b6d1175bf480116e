package org.stillroom.reading.idiom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.text.Folding;
import org.stillroom.model.text.SourceText;

/** The printed words of a line, as an idiom knows them. */
public final class Printed {

    private static final Pattern WORD =
            Pattern.compile("[\\p{L}\\p{M}]+(?:[-’'.][\\p{L}\\p{M}]+)*\\.?|[\\d½¼¾⅓⅔⅛⅜⅝⅞/]+");

    private Printed() {}

    /** Returns words and numbers, folded; a stop stays with a word that it may shorten. */
    public static List<String> words(String printed) {
        List<String> words = new ArrayList<>();
        Matcher m = WORD.matcher(printed);
        while (m.find()) {
            words.add(Folding.foldWord(m.group()));
        }
        return words;
    }

    /** Returns a word without stop at its end. */
    static String bare(String word) {
        return word.endsWith(".") ? word.substring(0, word.length() - 1) : word;
    }

    /** Returns a word of measure without the ending of the plural and of “-ful”. */
    static String stem(String word) {
        return bare(word)
                .replaceAll("(?:fuls|sful|ful)$", "")
                .replaceAll("(?<=ss|sh|ch|x)es$|(?<![s'])s$", "")
                .replaceAll("ie$", "y");
    }

    /** Returns the stem of the printed word of measure, the last word of the amount. */
    public static Optional<String> measure(ReadingLine line, SourceText text) {
        return line.amountSpan()
                .map(text::slice)
                .map(Printed::words)
                .filter(words -> !words.isEmpty())
                .map(words -> stem(lastOf(words)))
                .filter(stem -> !stem.isEmpty() && Character.isLetter(stem.charAt(0)));
    }

    private static String lastOf(List<String> words) {
        String last = words.getLast();
        return last.equals("of") && words.size() > 1 ? words.get(words.size() - 2) : last;
    }

    /** Tells whether a word is a number or an article. */
    public static boolean isNumber(String word) {
        return word.isEmpty()
                || !Character.isLetter(word.charAt(0))
                || SMALL.matcher(bare(word)).matches();
    }

    private static final Pattern SMALL =
            Pattern.compile(
                    "an?|the|of|one|two|three|four|five|six|seven|eight|nine|ten|twelve|half|"
                            + "quarter|third|thirds|quarters|and|or|to|with|good|small|large|some");
}
