package org.stillroom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.InquiryException;
import org.stillroom.inquiry.StudyDesk;
import org.stillroom.lineage.Drink;
import org.stillroom.model.progress.Progress;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Runs the main job on a library: traces its drink with the most versions. */
final class DemoCommand {

    private static final String INTO = "--into";
    private static final List<String> STEPS = List.of("versions", "lineage", "drift");

    private final List<Inquiry> inquiries;
    private final Surroundings surroundings;
    private final Terminal terminal;

    DemoCommand(List<Inquiry> inquiries, Surroundings surroundings, Terminal terminal) {
        this.inquiries = inquiries;
        this.surroundings = surroundings;
        this.terminal = terminal;
    }

    static CommandSpec spec(String command) {
        CommandSpec spec = CommandSpec.wrapWithoutInspection(null);
        spec.name("demo");
        spec.mixinStandardHelpOptions(true);
        spec.usageMessage()
                .width(100)
                .description("trace one drink through the example library, figures included")
                .footer("", "Example: " + command + " demo --into figures");
        spec.addOption(
                OptionSpec.builder(LibraryOptions.LIBRARY)
                        .type(String.class)
                        .arity("1")
                        .paramLabel("FOLDER")
                        .description("another library than the example")
                        .build());
        spec.addOption(
                OptionSpec.builder(INTO)
                        .type(String.class)
                        .arity("1")
                        .paramLabel("FOLDER")
                        .defaultValue("stillroom-figures")
                        .description("where the figures go, “stillroom-figures” if not told")
                        .build());
        return spec;
    }

    int run(ParseResult parsed) {
        Path into =
                surroundings
                        .folder()
                        .resolve(parsed.commandSpec().findOption(INTO).getValue().toString());
        List<Path> written = new ArrayList<>();
        try (StudyDesk desk = LibraryOptions.desk(parsed, surroundings);
                ConsoleProgress progress = new ConsoleProgress(terminal.err())) {
            if (!parsed.hasMatchedOption(LibraryOptions.LIBRARY)) {
                surroundings.premises().example().ifPresent(desk::lay);
            }
            Drink drink = richest(desk, progress);
            show(ask("sources", desk, Arguments.of(), progress), progress);
            Arguments about = Arguments.of("drink", drink.name());
            for (String step : STEPS) {
                Answer answer = ask(step, desk, about, progress);
                show(answer, progress);
                written.addAll(new AnswerFiles(answer, terminal).figures(into));
            }
            next(drink, written);
            return ExitCode.OK;
        } catch (IOException e) {
            terminal.err()
                    .println(
                            "stillroom: the figures could not be written to "
                                    + into
                                    + " ("
                                    + e.getMessage()
                                    + "). Name a folder that you may write to with --into FOLDER.");
            return ExitCode.NOT_WRITTEN;
        }
    }

    private static Drink richest(StudyDesk desk, Progress progress) {
        return desk.study(progress).drinks(progress).drinks().stream()
                .min(
                        Comparator.comparing((Drink d) -> -d.versions().size())
                                .thenComparing(Drink::id))
                .orElseThrow(
                        () ->
                                new InquiryException(
                                        "There is no recipe in this library.",
                                        "Name another one with --library FOLDER."));
    }

    private Answer ask(String name, StudyDesk desk, Arguments arguments, Progress progress) {
        return inquiries.stream()
                .filter(i -> i.name().equals(name))
                .findFirst()
                .orElseThrow(
                        () ->
                                new InquiryException(
                                        "This copy lacks the inquiry “" + name + "”.",
                                        "Unpack or build it again."))
                .answer(desk, arguments, progress);
    }

    private void show(Answer answer, ConsoleProgress progress) {
        progress.close();
        terminal.out().println(AnswerText.of(withoutPictures(answer), false));
        answer.problems().forEach(p -> terminal.err().println(p.toText()));
    }

    /** The demo writes its figures by itself, and says at the end where they are. */
    private static Answer withoutPictures(Answer answer) {
        List<Block> blocks =
                answer.blocks().stream().filter(b -> !(b instanceof Block.Picture)).toList();
        return new Answer(answer.title(), blocks, answer.json(), answer.problems());
    }

    private void next(Drink drink, List<Path> written) {
        terminal.out().println("Figures were written to:");
        written.forEach(f -> terminal.out().println("  " + f.toAbsolutePath().normalize()));
        terminal.out().println();
        terminal.out().println("What to try next:");
        tips(drink.name()).forEach(this::tip);
    }

    /** A command and what it does. */
    private record Tip(String words, String what) {}

    private static List<Tip> tips(String drink) {
        return List.of(
                new Tip("", "open the workbench"),
                new Tip("versions", "list every drink"),
                new Tip("versions \"" + drink + "\" --whole", "every version line by line"),
                new Tip("versions \"" + drink + "\" --explain", "why each amount is so"),
                new Tip("find \"ingredient:gin date:1860/1900\"", "search words and amounts"),
                new Tip("measure \"2 wineglasses\" --date 1862 --place GB", "what a phrase meant"),
                new Tip("sources --library YOUR-FOLDER", "your own library"),
                new Tip("word wineglass --date 1862 --place GB", "who says what of a word"),
                new Tip("help", "everything else"));
    }

    private void tip(Tip tip) {
        String line = (surroundings.command() + " " + tip.words()).strip();
        terminal.out().println("  " + line);
        terminal.out().println("      " + tip.what());
    }
}
