package org.stillroom.inquiry.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.stillroom.inquiry.AmountReasons;
import org.stillroom.inquiry.Amounts;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Doubts;
import org.stillroom.measures.format.AmountFormat;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.Step;
import org.stillroom.model.spec.Caution;
import org.stillroom.model.spec.Spec;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;

/** Shows a version for people: its spec as a table, then what is done, doubted and warned of. */
final class RecipeBlocks {

    private static final List<String> COLUMNS =
            List.of("amount as read", "in millilitres", "ingredient", "meaning", "sure");
    private static final List<Boolean> NUMERIC = List.of(false, true, false, false, true);

    private RecipeBlocks() {}

    static List<Block> of(Version version, AmountReasons reasons) {
        List<Block> blocks = new ArrayList<>();
        Reading reading = version.reading();
        List<List<String>> rows = new ArrayList<>();
        List<String> targets = new ArrayList<>();
        List<Explanation> whys = new ArrayList<>();
        for (SpecLine line : version.spec().lines()) {
            rows.add(row(line));
            whys.add(AmountReasons.line(line));
        }
        if (version.spec().volume().isPresent() || version.spec().strength().isPresent()) {
            rows.add(whole(version.spec()));
            whys.add(reasons.total(version));
        }
        rows.forEach(r -> targets.add(version.id()));
        String caption = version.witness().title() + " (" + version.source().shortName() + ")";
        blocks.add(new Block.Table(caption, COLUMNS, NUMERIC, rows, targets, whys));
        method(reading).ifPresent(m -> blocks.add(new Block.Paragraph(m)));
        reading.reference()
                .ifPresent(
                        r ->
                                blocks.add(
                                        new Block.Paragraph(
                                                "It refers to another recipe: “"
                                                        + r.words()
                                                        + "” "
                                                        + (r.isResolved()
                                                                ? "→ "
                                                                        + String.join(
                                                                                " → ", r.chain())
                                                                : "(not found)"))));
        for (String doubt : Doubts.of(version)) {
            blocks.add(new Block.Paragraph("Doubt: " + doubt));
        }
        for (Caution caution : version.spec().cautions()) {
            blocks.add(new Block.Paragraph(words(caution)));
        }
        return blocks;
    }

    static String words(Caution caution) {
        String level =
                switch (caution.level()) {
                    case STOP -> "Do not serve";
                    case RESTRICTED -> "Restricted";
                    case CARE -> "Take care";
                };
        return level
                + ": "
                + caution.subject()
                + ". "
                + caution.words()
                + " ["
                + String.join(
                        "; ",
                        Stream.of(caution.source().work(), caution.source().status().words())
                                .distinct()
                                .toList())
                + "]";
    }

    private static List<String> row(SpecLine line) {
        String name = line.line().ingredientName();
        String meaning = line.ingredient().known() ? line.ingredient().label() : "not known";
        String sure =
                String.format(Locale.ROOT, "%.0f %%", line.line().confidence().probability() * 100);
        String kind = line.line().kind().word();
        String shown =
                switch (line.line().kind()) {
                    case MEASURED -> name;
                    default -> name + " (" + kind + ")";
                };
        return List.of(Amounts.asRead(line.line()), Amounts.resolved(line), shown, meaning, sure);
    }

    private static List<String> whole(Spec spec) {
        String strength =
                spec.strength()
                        .map(AmountFormat::percent)
                        .map(s -> s + " by volume")
                        .orElse("strength not known");
        String volume = spec.volume().map(v -> AmountFormat.poured(v, "ml")).orElse("–");
        return List.of("", volume, "the whole " + Amounts.before(spec), strength, "");
    }

    private static java.util.Optional<String> method(Reading reading) {
        String verbs =
                String.join(", ", reading.steps().stream().map(Step::verb).distinct().toList());
        String vessel = reading.vessel().map(v -> "in " + v.word()).orElse("");
        String serves =
                reading.serves()
                        .map(
                                s ->
                                        "for "
                                                + s.low()
                                                + (s.low().equals(s.high()) ? "" : "–" + s.high()))
                        .orElse("");
        String all =
                String.join(
                        "; ", Stream.of(verbs, vessel, serves).filter(p -> !p.isEmpty()).toList());
        return all.isEmpty()
                ? java.util.Optional.empty()
                : java.util.Optional.of("Done: " + all + ".");
    }
}
