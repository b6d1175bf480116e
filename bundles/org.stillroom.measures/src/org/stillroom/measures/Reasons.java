package org.stillroom.measures;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.stillroom.measures.MeasureMeaning.Answer;
import org.stillroom.measures.format.AmountFormat;
import org.stillroom.measures.knowledge.MeasureWord;
import org.stillroom.measures.system.Where;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.explain.Explanation;

/** Puts into words why a measure is given so many millilitres. */
final class Reasons {

    private static final int NAMED = 3;

    private static final double SERIOUS = 0.05;

    /** Less than this part of the weight is shown as nought per cent. */
    private static final double SHOWN = 0.005;

    private Reasons() {}

    static String sentence(Finding f) {
        boolean either = isEither(f);
        String symbol = f.dimension().symbol();
        String amount = either ? either(f.answers(), symbol) : AmountFormat.write(f.one(), symbol);
        StringBuilder out = new StringBuilder(capital(what(f)));
        out.append(" (").append(f.setting().where().text()).append("): ").append(amount);
        if (f.exact().isPresent()) {
            out.append(", ").append(fixed(f.authorities().getFirst()));
        } else if (!either) {
            out.append(", by ").append(named(f.authorities(), symbol));
        }
        out.append('.');
        f.size().ifPresent(s -> out.append(" Size: ").append(s.row().get("statement")).append('.'));
        return out.append(missing(f.setting().where())).toString();
    }

    private static String what(Finding f) {
        String size = f.question().size().map(s -> s.word() + " ").orElse("");
        String thing = f.question().thing();
        String word = f.word().word().equals("juice-of") ? "juice" : f.word().word();
        String of = word.equals("whole") ? " " : " of ";
        return size + word + (thing.isEmpty() ? "" : of + thing);
    }

    /** Tells whether a few exact definitions compete, so that a range between them says little. */
    private static boolean isEither(Finding f) {
        long serious = f.answers().stream().filter(a -> a.share() > SERIOUS).count();
        return f.word().kind() == MeasureWord.Kind.LEGAL
                && f.size().isEmpty()
                && f.exact().isEmpty()
                && f.word().scatter() == 0
                && serious > 1
                && serious <= NAMED;
    }

    private static String either(List<Answer> answers, String symbol) {
        return answers.stream()
                .filter(a -> a.share() > SERIOUS)
                .map(
                        a ->
                                String.format(
                                        Locale.ROOT,
                                        "%s (%s, %.0f %%)",
                                        AmountFormat.write(
                                                a.amount(), a.amount(), a.amount(), symbol),
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

    private static String named(List<WeightedAuthority> authorities, String symbol) {
        List<WeightedAuthority> counting =
                authorities.stream().filter(a -> a.share() > 0.005).toList();
        String first =
                counting.stream()
                        .limit(NAMED)
                        .map(a -> who(a) + " (" + stated(a, symbol) + ")")
                        .collect(Collectors.joining(", "));
        int more = counting.size() - NAMED;
        return more > 0 ? first + " and " + more + " more" : first;
    }

    private static String who(WeightedAuthority a) {
        return a.source().equals("from memory") ? "a figure from memory" : a.source();
    }

    private static String stated(WeightedAuthority a, String symbol) {
        double[] limits = a.limits();
        String text =
                limits[0] == limits[1]
                        ? three(a.amount())
                        : three(limits[0]) + "–" + three(limits[1]);
        return text + " " + symbol;
    }

    private static String three(double value) {
        double power = Math.floor(Math.log10(value));
        int place = (int) power - 2;
        String text = AmountFormat.rounded(value, place);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }

    static Explanation tree(Finding f, String reason, Citation customary) {
        List<Explanation> because = new ArrayList<>();
        f.authorities().stream()
                .filter(a -> a.share() >= SHOWN)
                .forEach(a -> because.add(statement(a)));
        others(f).ifPresent(because::add);
        f.size()
                .ifPresent(
                        s -> because.add(Explanation.cited(s.row().get("statement"), customary)));
        because.add(f.setting().systems().explanation());
        f.warnings().forEach(w -> because.add(Explanation.of("Beware: " + w)));
        return Explanation.of(reason, because);
    }

    /** Puts those who count for next to nothing under one head, so that the others stand out. */
    private static Optional<Explanation> others(Finding f) {
        List<Explanation> light =
                f.authorities().stream()
                        .filter(a -> a.share() < SHOWN)
                        .map(Reasons::statement)
                        .toList();
        if (light.isEmpty()) {
            return Optional.empty();
        }
        String more = light.size() == 1 ? "1 more statement" : light.size() + " more statements";
        return Optional.of(Explanation.of(more + " with next to no weight here", light));
    }

    private static Explanation statement(WeightedAuthority a) {
        String place = a.placeName().isEmpty() ? "" : ", " + a.placeName();
        String date = a.date().isEmpty() ? "" : ", " + a.date();
        String text =
                a.authority().statement()
                        + " ["
                        + a.authority().unitWords()
                        + place
                        + date
                        + "; weight "
                        + Math.round(100 * a.share())
                        + " %: "
                        + a.why()
                        + "]";
        return Explanation.cited(text, a.authority().citation());
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
