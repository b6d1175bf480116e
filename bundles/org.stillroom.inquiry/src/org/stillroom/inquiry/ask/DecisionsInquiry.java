package org.stillroom.inquiry.ask;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Component;
import org.stillroom.ingredients.ThesaurusEdit;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.Parameter;
import org.stillroom.inquiry.Parameter.Kind;
import org.stillroom.inquiry.Study;
import org.stillroom.library.journal.History;
import org.stillroom.library.journal.Journal;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.text.Anchor;

/** Lists what was decided about the library, and what of it stands. */
@Component(service = Inquiry.class)
public final class DecisionsInquiry implements Inquiry {

    private static final int WORDS = 40;

    private static final List<Parameter> PARAMETERS =
            List.of(
                    Parameter.option("source", Kind.TEXT, "only those about this source"),
                    Parameter.option(
                            "kind",
                            Kind.TEXT,
                            "only these: words, line, cut, system, sense or drink"),
                    Parameter.option("standing", Kind.FLAG, "only those that stand"));

    @Override
    public String name() {
        return "decisions";
    }

    @Override
    public String summary() {
        return "list what was decided about the library, standing or taken back";
    }

    @Override
    public String example() {
        return "decisions --standing";
    }

    @Override
    public List<Parameter> parameters() {
        return PARAMETERS;
    }

    @Override
    public Answer answer(Desk desk, Arguments arguments, Progress progress) {
        Study study = desk.study(progress);
        List<Problem> problems = new ArrayList<>();
        History history =
                History.of(new Journal(study.library().layout().research()).all(problems));
        Set<String> standing = new HashSet<>();
        history.standing().forEach(d -> standing.add(d.id()));
        Set<String> replaced = new HashSet<>();
        history.standing().forEach(d -> d.replaces().ifPresent(replaced::add));
        List<List<String>> rows = new ArrayList<>();
        ArrayNode json = Json.array();
        for (Assertion d : history.all()) {
            boolean stands = standing.contains(d.id());
            if (d.kind().equals(Assertion.TAKEN_BACK) || !isWanted(d, stands, arguments)) {
                continue;
            }
            String state =
                    stands ? "stands" : replaced.contains(d.id()) ? "replaced" : "taken back";
            rows.add(row(d, state));
            json.add(json(d, state));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(count(rows.size(), standing.size())));
        if (!rows.isEmpty()) {
            blocks.add(
                    new Block.Table(
                            "Decisions, oldest first",
                            List.of("id", "when", "who", "kind", "about", "what", "state"),
                            List.of(false, false, false, false, false, false, false),
                            rows,
                            List.of()));
        }
        ObjectNode answer = Json.object().put("library", study.title());
        answer.set("decisions", json);
        return new Answer("Decisions about " + study.title(), blocks, answer, problems);
    }

    private static String count(int shown, int standing) {
        return shown == 0
                ? "Nothing was decided that fits."
                : shown
                        + (shown == 1 ? " decision; " : " decisions; ")
                        + standing
                        + (standing == 1 ? " stands" : " stand")
                        + " in the whole library.";
    }

    private static boolean isWanted(Assertion d, boolean stands, Arguments arguments) {
        boolean source = arguments.text("source").map(d.source()::equals).orElse(true);
        boolean kind = arguments.text("kind").map(kind(d)::equals).orElse(true);
        return source && kind && (stands || !arguments.flag("standing"));
    }

    /** Returns the kind as a user calls it. */
    private static String kind(Assertion d) {
        return d.kind().equals(ThesaurusEdit.ASSERTION_KIND) ? "sense" : d.kind();
    }

    private static List<String> row(Assertion d, String state) {
        String words = d.anchor().map(Anchor::exact).orElse("").strip().replaceAll("\\s+", " ");
        String shown = words.length() > WORDS ? words.substring(0, WORDS) + "…" : words;
        String about =
                d.source().isEmpty()
                        ? "the library"
                        : d.source() + (shown.isEmpty() ? "" : ": “" + shown + "”");
        return List.of(d.id(), day(d), d.by(), kind(d), about, what(d), state);
    }

    private static String day(Assertion d) {
        return d.at().length() >= 16 ? d.at().substring(0, 16).replace('T', ' ') : d.at();
    }

    private static String what(Assertion d) {
        return ThesaurusEdit.fromValues(d.values())
                .filter(e -> d.kind().equals(ThesaurusEdit.ASSERTION_KIND))
                .map(ThesaurusEdit::toText)
                .orElseGet(
                        () ->
                                d.values().entrySet().stream()
                                        .map(e -> e.getKey() + "=" + e.getValue())
                                        .collect(Collectors.joining(" ")));
    }

    private static ObjectNode json(Assertion d, String state) {
        ObjectNode node =
                Json.object()
                        .put("id", d.id())
                        .put("at", d.at())
                        .put("by", d.by())
                        .put("kind", kind(d))
                        .put("source", d.source());
        Json.put(node, "words", d.anchor().map(Anchor::exact));
        ObjectNode values = Json.object();
        d.values().forEach(values::put);
        node.set("values", values);
        return node.put("state", state);
    }
}
