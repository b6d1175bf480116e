package org.stillroom.reading.grammar;

import java.util.Optional;
import java.util.regex.Pattern;
import org.stillroom.model.number.Rational;

/** Reads Roman numerals as prescriptions print them: a final j for i, “ss” for a half. */
final class Roman {

    private static final Pattern FORM =
            Pattern.compile("m{0,3}(cm|cd|d?c{0,3})(xc|xl|l?x{0,4})(ix|iv|v?i{0,4})");

    private Roman() {}

    /** Tells whether a word has no letters but those of small numerals. */
    static boolean isSmall(String word) {
        for (int i = 0; i < word.length(); i++) {
            if ("ivxlj".indexOf(word.charAt(i)) < 0) {
                return false;
            }
        }
        return !word.isEmpty();
    }

    static Optional<Rational> parse(String word) {
        for (int i = 0; i < word.length(); i++) {
            if ("ivxlcdmjsf".indexOf(word.charAt(i)) < 0) {
                return Optional.empty();
            }
        }
        boolean half = word.endsWith("ss") || word.equals("fs");
        String whole = half ? word.substring(0, word.length() - 2) : word;
        String letters = whole.replace('j', 'i');
        boolean empty = letters.isEmpty();
        if (empty && !half || !FORM.matcher(letters).matches()) {
            return Optional.empty();
        }
        Rational value = Rational.of(value(letters));
        return Optional.of(half ? value.plus(Rational.of(1, 2)) : value);
    }

    private static long value(String letters) {
        long sum = 0;
        for (int i = 0; i < letters.length(); i++) {
            int here = digit(letters.charAt(i));
            int after = i + 1 < letters.length() ? digit(letters.charAt(i + 1)) : 0;
            sum += here < after ? -here : here;
        }
        return sum;
    }

    private static int digit(char c) {
        return switch (c) {
            case 'i' -> 1;
            case 'v' -> 5;
            case 'x' -> 10;
            case 'l' -> 50;
            case 'c' -> 100;
            case 'd' -> 500;
            default -> 1000;
        };
    }
}
