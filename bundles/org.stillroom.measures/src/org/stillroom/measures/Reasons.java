package org.stillroom.measures;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.stillroom.measures.MeasureMeaning.Answer;
import org.stillroom.measures.format.AmountFormat;
import org.stillroom.measures.knowledge.Dimension;
import org.stillroom.measures.knowledge.MeasureWord;
import org.stillroom.measures.system.SystemPosterior;
import org.stillroom.measures.system.Where;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.number.Rational;

/** Puts into words why a measure is given so many millilitres. */
final class Reasons {

    private static final int NAMED = 3;

    private static final double SERIOUS = 0.05;

    private Reasons() {}

    static String sentence(
            MeasureWord word,
            Dimension dimension,
            Where where,
            Estimate one,
            Optional<Rational> exact,
            List<WeightedAuthority> authorities,
            List<Answer> answers,
            MeasureQuestion question,
            Optional<Knowledge.SizeFactor> size) {
        boolean either = size.isEmpty() && isEither(word, answers, exact);
        String amount =
                either
                        ? either(answers, dimension)
                        : AmountFormat.write(one, dimension.symbol());
        String what =
                capital(
                        question.size().map(s -> s.word() + " ").orElse("")
                                + word.word()
                                + (question.thing().isEmpty() ? "" : " of " + question.thing()));
        StringBuilder out = new StringBuilder(what);
        out.append(" (").append(where.text()).append("): ").append(amount);
        if (exact.isPresent()) {
            out.append(", ").append(fixed(authorities.getFirst())).append('.');
        } else {
            String by = either ? "" : ", by " + named(authorities, dimension);
            out.append(by).append('.');
        }
        size.ifPresent(s -> out.append(" Size: ").append(s.row().get("statement")).append('.'));
        out.append(missing(where));
        return out.toString();
    }

    /** Tells whether a few exact definitions compete, so that a range between them says little. */
    private static boolean isEither(
            MeasureWord word, List<Answer> answers, Optional<Rational> exact) {
        long serious = answers.stream().filter(a -> a.share() > SERIOUS).count();
        return word.kind() == MeasureWord.Kind.LEGAL
                && exact.isEmpty()
                && word.scatter() == 0
                && serious > 1
                && serious <= NAMED;
    }

    private static String either(List<Answer> answers, Dimension dimension) {
        return answers.stream()
                .filter(a -> a.share() > SERIOUS)
                .map(
                        a ->
                                String.format(
                                        Locale.ROOT,
                                        "%s (%s, %.0f %%)",
                                        AmountFormat.write(
                                                a.amount(), a.amount(), a.amount(),
                                                dimension.symbol()),
                                        a.who(),
                                        100 * a.share()))
                .collect(Collectors.joining(" or "));
    }

    private static String fixed(WeightedAuthority first) {
        String work = first.authority().citation().work();
        return "by " + first.source() + " (" + work + ")";
    }

    private static String missing(Where where) {
        if (where.isKnown()) {
            return "";
        }
        String what =
                where.place().isEmpty() && where.years().isEmpty()
                        ? "Place and date are"
                        : where.place().isEmpty() ? "The place is" : "The date is";
        return " " + what + " not known, so the range is wider.";
    }

    private static String named(List<WeightedAuthority> authorities, Dimension dimension) {
        List<WeightedAuthority> counting =
                authorities.stream().filter(a -> a.share() > 0.005).toList();
        String first =
                counting.stream()
                        .limit(NAMED)
                        .map(a -> a.source() + " (" + stated(a, dimension) + ")")
                        .collect(Collectors.joining(", "));
        int more = counting.size() - NAMED;
        return more > 0 ? first + " and " + more + " more" : first;
    }

    private static String stated(WeightedAuthority a, Dimension dimension) {
        double[] limits = a.limits();
        String text =
                limits[0] == limits[1]
                        ? three(a.amount())
                        : three(limits[0]) + "–" + three(limits[1]);
        return text + " " + dimension.symbol();
    }

    private static String three(double value) {
        double power = Math.floor(Math.log10(value));
        int place = (int) power - 2;
        String text = AmountFormat.rounded(value, place);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }

    static Explanation tree(
            String reason,
            List<WeightedAuthority> authorities,
            SystemPosterior systems,
            List<String> warnings,
            Optional<Knowledge.SizeFactor> size,
            Citation customary) {
        List<Explanation> because = new ArrayList<>();
        for (WeightedAuthority a : authorities) {
            String place = a.placeName().isEmpty() ? "" : ", " + a.placeName();
            String date = a.date().isEmpty() ? "" : ", " + a.date();
            String text =
                    String.format(
                            Locale.ROOT,
                            "%s [%s%s%s; weight %.0f %%: %s]",
                            a.authority().statement(),
                            a.authority().unitWords(),
                            place,
                            date,
                            100 * a.share(),
                            a.why());
            because.add(Explanation.cited(text, a.authority().citation()));
        }
        size.ifPresent(
                s -> because.add(Explanation.cited(s.row().get("statement"), customary)));
        because.add(systems.explanation());
        warnings.forEach(w -> because.add(Explanation.of("Beware: " + w)));
        return Explanation.of(reason, because);
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
