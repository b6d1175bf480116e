package org.stillroom.cli;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.Parameter;
import org.stillroom.inquiry.StudyDesk;
import org.stillroom.model.explain.Problem;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** One inquiry as a command. */
final class InquiryCommand {

    private final Inquiry inquiry;
    private final Surroundings surroundings;
    private final Terminal terminal;

    InquiryCommand(Inquiry inquiry, Surroundings surroundings, Terminal terminal) {
        this.inquiry = inquiry;
        this.surroundings = surroundings;
        this.terminal = terminal;
    }

    /** Returns the command that the inquiry's declared parameters make; hints name the program. */
    static CommandSpec spec(Inquiry inquiry, String command) {
        CommandSpec spec = CommandSpec.wrapWithoutInspection(null);
        spec.name(inquiry.name());
        spec.mixinStandardHelpOptions(true);
        spec.usageMessage()
                .width(100)
                .description(inquiry.summary())
                .footer("", "Example: " + command + " " + inquiry.example());
        int place = 0;
        for (Parameter p : inquiry.parameters()) {
            if (p.place() == Parameter.Place.OBJECT) {
                spec.addPositional(object(p, place++));
            } else {
                spec.addOption(option(p));
            }
        }
        LibraryOptions.add(spec);
        return spec;
    }

    private static PositionalParamSpec object(Parameter p, int place) {
        return PositionalParamSpec.builder()
                .index(Integer.toString(place))
                .arity(p.required() ? "1" : "0..1")
                .required(p.required())
                .paramLabel(p.name().toUpperCase(java.util.Locale.ROOT))
                .type(String.class)
                .description(p.words())
                .build();
    }

    private static OptionSpec option(Parameter p) {
        OptionSpec.Builder option = OptionSpec.builder("--" + p.name());
        String choices = p.choices().isEmpty() ? "" : " (" + String.join(", ", p.choices()) + ")";
        option.description(p.words() + choices);
        if (p.kind() == Parameter.Kind.FLAG) {
            return option.type(boolean.class).build();
        }
        p.usual().ifPresent(usual -> option.defaultValue(usual));
        if (p.many()) {
            option.type(List.class).auxiliaryTypes(String.class);
        } else {
            option.type(String.class);
        }
        return option.arity("1").required(p.required()).paramLabel(p.kind().name()).build();
    }

    int run(ParseResult parsed) {
        try (StudyDesk desk = LibraryOptions.desk(parsed, surroundings);
                ConsoleProgress progress = new ConsoleProgress(terminal.err())) {
            Answer answer = inquiry.answer(desk, arguments(parsed), progress);
            progress.close();
            int code = show(answer, parsed);
            desk.openStudy().ifPresent(study -> mentionOthers(study.problems(), answer));
            return code;
        }
    }

    /** What is wrong elsewhere in the library is counted, so that nobody takes it for whole. */
    private void mentionOthers(List<Problem> all, Answer answer) {
        long others = all.stream().filter(p -> !answer.problems().contains(p)).count();
        if (others > 0) {
            terminal.err()
                    .println(
                            others
                                    + (others == 1 ? " problem" : " problems")
                                    + " in this library: “"
                                    + surroundings.command()
                                    + " sources” lists what could not be read or done.");
        }
    }

    private Arguments arguments(ParseResult parsed) {
        Map<String, String> values = new TreeMap<>();
        int place = 0;
        for (Parameter p : inquiry.parameters()) {
            if (p.place() == Parameter.Place.OBJECT) {
                String value = parsed.matchedPositionalValue(place++, "");
                values.put(p.name(), p.kind() == Parameter.Kind.FILE ? file(value) : value);
            } else if (p.kind() == Parameter.Kind.FLAG) {
                if (parsed.hasMatchedOption("--" + p.name())) {
                    values.put(p.name(), Arguments.YES);
                }
            } else {
                Object value = parsed.commandSpec().findOption("--" + p.name()).getValue();
                Optional.ofNullable(value)
                        .map(v -> v instanceof List<?> many ? joined(many) : v.toString())
                        .map(v -> p.kind() == Parameter.Kind.FILE ? file(v) : v)
                        .ifPresent(v -> values.put(p.name(), v));
            }
        }
        return new Arguments(values);
    }

    private static String joined(List<?> values) {
        return values.stream().map(Object::toString).collect(Collectors.joining("; "));
    }

    private String file(String value) {
        return value.isEmpty() ? value : surroundings.folder().resolve(value).toString();
    }

    private int show(Answer answer, ParseResult parsed) {
        boolean explained = parsed.hasMatchedOption(LibraryOptions.EXPLAIN);
        try {
            if (parsed.hasMatchedOption(LibraryOptions.JSON)) {
                terminal.out().print(AnswerText.json(answer, explained));
            } else {
                terminal.out().print(AnswerText.of(answer, explained));
            }
            terminal.out().flush();
            answer.problems().forEach(p -> terminal.err().println(p.toText()));
            new AnswerFiles(answer, terminal).write(parsed);
            return ExitCode.OK;
        } catch (IOException e) {
            terminal.err()
                    .println(
                            "stillroom: a file could not be written ("
                                    + e.getMessage()
                                    + "). Name a folder that you may write to.");
            return ExitCode.NOT_WRITTEN;
        }
    }
}
