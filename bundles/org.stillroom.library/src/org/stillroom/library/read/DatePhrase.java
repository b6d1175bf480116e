package org.stillroom.library.read;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.model.date.UncertainDate;

/**
 * Proposes EDTF for a date in a bibliographer's words, such as “c. 1862” or “[1862]”.
 *
 * <p>It only proposes: a person decides, because “1862–1865” may be a stretch or one unknown year.
 */
final class DatePhrase {

    private record Rule(Pattern words, String edtf) {}

    private static final List<Rule> RULES =
            List.of(
                    rule("(?:c|ca|circa|about|abt)\\.? ?(\\d{4})", "$1~"),
                    rule("\\[(\\d{4})\\??\\]", "$1?"),
                    rule("(\\d{4}) ?\\?", "$1?"),
                    rule("(?:the )?(\\d{3})0'?s", "$1X"),
                    rule("early (?:the )?(\\d{3})0'?s", "$10~/$14~"),
                    rule("late (?:the )?(\\d{3})0'?s", "$16~/$19~"),
                    rule("before (\\d{4})", "../$1"),
                    rule("after (\\d{4})", "$1/.."),
                    rule("between (\\d{4}) and (\\d{4})", "[$1..$2]"),
                    rule("(\\d{4}) ?(?:-|–|—|to) ?(\\d{4})", "$1/$2"),
                    rule(".*?\\b(1[5-9]\\d{2}|20\\d{2})\\b.*", "$1?"));

    private DatePhrase() {}

    private static Rule rule(String words, String edtf) {
        return new Rule(Pattern.compile(words), edtf);
    }

    static Optional<String> toEdtf(String words) {
        String plain = words.strip().toLowerCase(Locale.ROOT);
        for (Rule rule : RULES) {
            Matcher m = rule.words().matcher(plain);
            if (m.matches()) {
                String edtf = m.replaceFirst(rule.edtf());
                return UncertainDate.parse(edtf).map(UncertainDate::toString);
            }
        }
        return Optional.empty();
    }
}
