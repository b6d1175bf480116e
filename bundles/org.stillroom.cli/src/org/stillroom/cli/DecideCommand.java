package org.stillroom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import org.stillroom.inquiry.Deciding;
import org.stillroom.inquiry.InquiryException;
import org.stillroom.inquiry.StudyDesk;
import org.stillroom.inquiry.Wish;
import org.stillroom.model.assertion.Assertion;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Decides something about the library, takes it back, does it again. */
final class DecideCommand {

    private static final String SOURCE = "--source";
    private static final String WORDS = "--words";
    private static final String LINE = "--line";
    private static final String UNDO = "--undo";
    private static final String REDO = "--redo";
    private static final String BACK = "--take-back";

    /** What a word without a name means for each kind. */
    private static final Map<String, String> BARE =
            Map.of(
                    "system", "system", "sense", "edit", "cut", "action", "drink", "action",
                    "words", "reads");

    private final Surroundings surroundings;
    private final Terminal terminal;

    DecideCommand(Surroundings surroundings, Terminal terminal) {
        this.surroundings = surroundings;
        this.terminal = terminal;
    }

    static CommandSpec spec(String command) {
        CommandSpec spec = CommandSpec.wrapWithoutInspection(null);
        spec.name("decide");
        spec.mixinStandardHelpOptions(true);
        spec.usageMessage()
                .width(100)
                .description(
                        "decide about words, lines, cuts, measures, senses and drinks; take it back")
                .footer(
                        "",
                        "Examples:",
                        "  " + command + " decide system imperial --source 1838-pell.md",
                        "  "
                                + command
                                + " decide system us --source 1838-pell.md --line 25 level=line",
                        "  " + command + " decide sense merge from=old-tom into=gin",
                        "  "
                                + command
                                + " decide line measure=gill --source 1838-pell.md --words \"a glass of rum\"",
                        "  "
                                + command
                                + " decide words syrup --source 1838-pell.md --words \"fyrnp\"",
                        "  " + command + " decide --undo",
                        "“" + command + " decisions” lists what was decided.");
        spec.addPositional(
                PositionalParamSpec.builder()
                        .index("0..*")
                        .arity("0..*")
                        .paramLabel("KIND NAME=VALUE")
                        .type(List.class)
                        .auxiliaryTypes(String.class)
                        .description(
                                "words, line, cut, system, sense or drink, then what is decided")
                        .build());
        spec.addOption(text(LibraryOptions.LIBRARY, "FOLDER", "the library"));
        spec.addOption(text(SOURCE, "FILE", "the source that it is about"));
        spec.addOption(text(WORDS, "WORDS", "the words that it is about, as printed"));
        spec.addOption(text(LINE, "NUMBER", "the line of the source on which they stand"));
        spec.addOption(flag(UNDO, "undo what was decided last"));
        spec.addOption(flag(REDO, "do again what was undone last"));
        spec.addOption(text(BACK, "ID", "take one decision back, however old"));
        return spec;
    }

    private static OptionSpec text(String name, String label, String words) {
        return OptionSpec.builder(name)
                .type(String.class)
                .arity("1")
                .paramLabel(label)
                .description(words)
                .build();
    }

    private static OptionSpec flag(String name, String words) {
        return OptionSpec.builder(name).type(boolean.class).description(words).build();
    }

    int run(ParseResult parsed) {
        try (StudyDesk desk = LibraryOptions.desk(parsed, surroundings);
                ConsoleProgress progress = new ConsoleProgress(terminal.err())) {
            if (parsed.hasMatchedOption(UNDO)) {
                say("Undone", desk.undo(), "There is nothing to undo.");
            } else if (parsed.hasMatchedOption(REDO)) {
                say("Done again", desk.redo(), "There is nothing to do again.");
            } else if (parsed.hasMatchedOption(BACK)) {
                Assertion back = find(desk, parsed.matchedOptionValue(BACK, ""));
                desk.takeBack(back);
                say("Taken back", Optional.of(back), "");
            } else {
                Deciding.Done done = new Deciding(desk).decide(wish(parsed), progress);
                progress.close();
                say("Decided", Optional.of(done.decision()), "");
                done.problems().forEach(p -> terminal.err().println(p.toText()));
            }
            return ExitCode.OK;
        }
    }

    private static Assertion find(StudyDesk desk, String id) {
        return desk.decisions().standing().stream()
                .filter(d -> d.id().equals(id))
                .findFirst()
                .orElseThrow(
                        () ->
                                new InquiryException(
                                        "No decision that stands has the id “" + id + "”.",
                                        "“decisions --standing” lists them."));
    }

    private void say(String what, Optional<Assertion> decision, String none) {
        terminal.out().println(decision.map(d -> what + ": " + text(d)).orElse(none));
    }

    private static String text(Assertion d) {
        String about = d.source().isEmpty() ? "the library" : d.source();
        String words = d.anchor().map(a -> " at “" + a.exact().strip() + "”").orElse("");
        StringBuilder values = new StringBuilder();
        d.values().forEach((k, v) -> values.append(' ').append(k).append('=').append(v));
        return d.kind() + values + " for " + about + words + " (" + d.id() + ")";
    }

    private Wish wish(ParseResult parsed) {
        List<String> words = new ArrayList<>(parsed.matchedPositionalValue(0, List.of()));
        if (words.isEmpty()) {
            throw new InquiryException(
                    "Nothing was named to decide.",
                    "“help decide” shows what can be decided, with examples.");
        }
        String kind = words.remove(0);
        SortedMap<String, String> values = new TreeMap<>();
        for (String word : words) {
            int sign = word.indexOf('=');
            String name = sign > 0 ? word.substring(0, sign) : BARE.getOrDefault(kind, "");
            if (name.isEmpty()) {
                throw new InquiryException(
                        "“" + word + "” has no name.",
                        "Write it as NAME=VALUE, such as measure=gill.");
            }
            String value = word.substring(sign > 0 ? sign + 1 : 0);
            boolean list = name.equals("labels") || name.equals("broader");
            values.put(name, list ? value.replaceAll("; *", "\n") : value);
        }
        return new Wish(
                kind,
                Optional.ofNullable(parsed.matchedOptionValue(SOURCE, (String) null)),
                Optional.ofNullable(parsed.matchedOptionValue(WORDS, (String) null)),
                line(parsed),
                values);
    }

    private static OptionalInt line(ParseResult parsed) {
        String words = parsed.matchedOptionValue(LINE, "");
        if (words.isEmpty()) {
            return OptionalInt.empty();
        }
        try {
            return OptionalInt.of(Integer.parseInt(words.strip()));
        } catch (NumberFormatException e) {
            throw new InquiryException(
                    "“" + words + "” is not the number of a line.",
                    "Give digits alone, such as 25.");
        }
    }
}
