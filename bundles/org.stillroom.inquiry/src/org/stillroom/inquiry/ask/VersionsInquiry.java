package org.stillroom.inquiry.ask;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.osgi.service.component.annotations.Component;
import org.stillroom.inquiry.AmountReasons;
import org.stillroom.inquiry.Amounts;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.Parameter;
import org.stillroom.inquiry.Study;
import org.stillroom.lineage.Drink;
import org.stillroom.lineage.Drinks;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Place;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;

/** Lists every version of a drink with its spec, or every drink of the library. */
@Component(service = Inquiry.class)
public final class VersionsInquiry implements Inquiry {

    private static final List<String> COLUMNS =
            List.of("date", "place", "source", "called", "spec", "whole", "strength");
    private static final List<Boolean> NUMERIC =
            List.of(false, false, false, false, false, true, true);

    private static final List<Parameter> PARAMETERS =
            List.of(
                    Parameter.optionalObject(
                            "drink",
                            Parameter.Kind.DRINK,
                            "the drink, by any of its names; without it all drinks are listed"),
                    Parameter.option(
                            "whole", Parameter.Kind.FLAG, "show each version line by line"));

    @Override
    public String name() {
        return "versions";
    }

    @Override
    public String summary() {
        return "list every version of a drink with date, place and spec in millilitres";
    }

    @Override
    public String example() {
        return "versions \"harbour master's punch\"";
    }

    @Override
    public List<Parameter> parameters() {
        return PARAMETERS;
    }

    @Override
    public Answer answer(Desk desk, Arguments arguments, Progress progress) {
        Study study = desk.study(progress);
        if (arguments.text("drink").isEmpty()) {
            return all(study, progress);
        }
        Drink drink = DrinkChoice.of(study, arguments, progress);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(summary(drink)));
        String others = DrinkChoice.others(study, arguments, drink, progress);
        if (!others.isEmpty()) {
            blocks.add(new Block.Paragraph(others));
        }
        List<List<String>> rows = new ArrayList<>();
        List<String> targets = new ArrayList<>();
        List<Explanation> whys = new ArrayList<>();
        AmountReasons reasons = new AmountReasons(study.knowledge().thesaurus());
        boolean whole = arguments.flag("whole");
        ArrayNode versions = Json.array();
        for (Version version : drink.versions()) {
            rows.add(row(version));
            targets.add(version.id());
            whys.add(whole ? reasons.total(version) : reasons.whole(version));
            ObjectNode node = ReadingJson.recipe(version);
            node.put("version", version.id());
            node.set("source", ReadingJson.source(version.source()));
            versions.add(node);
        }
        blocks.add(
                new Block.Table(
                        "Versions of " + drink.name() + " by date",
                        COLUMNS,
                        NUMERIC,
                        rows,
                        targets,
                        whys));
        if (whole) {
            drink.versions().forEach(v -> blocks.addAll(RecipeBlocks.of(v, reasons)));
        } else {
            blocks.addAll(cautions(drink));
        }
        ObjectNode json = Json.object().put("drink", drink.name()).put("id", drink.id());
        json.set("names", Json.strings(drink.names()));
        json.set("versions", versions);
        return new Answer("Versions of " + drink.name(), blocks, json, List.of());
    }

    private static String summary(Drink drink) {
        String names =
                drink.names().size() > 1
                        ? " Its names: " + String.join(", ", drink.names()) + "."
                        : "";
        int n = drink.versions().size();
        return n + (n == 1 ? " version" : " versions") + " in this library." + names;
    }

    private static List<String> row(Version version) {
        Bibliography b = version.source().bibliography();
        return List.of(
                b.date().map(d -> d.toText()).orElse("undated"),
                b.place().map(Place::toText).orElse("unknown"),
                b.author().orElse(b.title()),
                version.witness().title(),
                spec(version),
                version.spec()
                        .volume()
                        .map(v -> org.stillroom.measures.format.AmountFormat.poured(v, "ml"))
                        .orElse("–"),
                Amounts.percent(version.spec().strength()));
    }

    /** Returns the spec in one line: amounts with ingredients. */
    static String spec(Version version) {
        List<String> parts = new ArrayList<>();
        for (SpecLine line : version.spec().lines()) {
            LineKind kind = line.line().kind();
            String name = line.line().ingredientName();
            if (kind == LineKind.MEASURED || kind == LineKind.TOP) {
                String amount = Amounts.resolved(line);
                parts.add((amount.equals("–") ? Amounts.asRead(line.line()) : amount) + " " + name);
            }
        }
        return parts.isEmpty() ? "no amounts read" : String.join("; ", parts);
    }

    private static List<Block> cautions(Drink drink) {
        List<Block> blocks = new ArrayList<>();
        drink.versions().stream()
                .flatMap(v -> v.spec().cautions().stream())
                .distinct()
                .sorted(
                        java.util.Comparator.comparing(org.stillroom.model.spec.Caution::level)
                                .thenComparing(org.stillroom.model.spec.Caution::subject))
                .map(RecipeBlocks::words)
                .distinct()
                .forEach(w -> blocks.add(new Block.Paragraph(w)));
        return blocks;
    }

    private static Answer all(Study study, Progress progress) {
        Drinks drinks = study.drinks(progress);
        List<List<String>> rows = new ArrayList<>();
        List<String> targets = new ArrayList<>();
        ArrayNode json = Json.array();
        for (Drink drink : drinks.drinks()) {
            String first =
                    drink.versions().stream()
                            .findFirst()
                            .map(v -> v.source().shortName())
                            .orElse("");
            String others =
                    String.join(
                            ", ",
                            drink.names().stream().filter(n -> !n.equals(drink.name())).toList());
            rows.add(
                    List.of(
                            drink.name(),
                            Integer.toString(drink.versions().size()),
                            first,
                            others));
            targets.add(drink.versions().stream().findFirst().map(Version::id).orElse(""));
            ObjectNode node =
                    Json.object()
                            .put("id", drink.id())
                            .put("name", drink.name())
                            .put("versions", drink.versions().size());
            node.set("names", Json.strings(drink.names()));
            json.add(node);
        }
        ObjectNode answer = Json.object();
        answer.set("drinks", json);
        Block table =
                new Block.Table(
                        "Drinks of the library",
                        List.of("drink", "versions", "first in", "also called"),
                        List.of(false, true, false, false),
                        rows,
                        targets);
        return new Answer("Drinks of " + study.title(), List.of(table), answer, List.of());
    }
}
