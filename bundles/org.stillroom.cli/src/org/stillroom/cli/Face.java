package org.stillroom.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.InquiryException;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** The command line: every inquiry as a command of its name. */
final class Face {

    private static final int WIDTH = 100;

    private final List<Inquiry> inquiries;
    private final Surroundings surroundings;
    private final Terminal terminal;
    private final String version;

    Face(List<Inquiry> inquiries, Surroundings surroundings, Terminal terminal, String version) {
        this.inquiries = inquiries.stream().sorted(Comparator.comparing(Inquiry::name)).toList();
        this.surroundings = surroundings;
        this.terminal = terminal;
        this.version = version;
    }

    /** Runs a command and returns its exit code. */
    int run(String... words) {
        CommandLine line = commandLine();
        if (words.length == 0) {
            line.usage(terminal.err(), Ansi.OFF);
            return ExitCode.USAGE;
        }
        return line.execute(words);
    }

    private String command() {
        return surroundings.command();
    }

    private CommandLine commandLine() {
        CommandSpec root = CommandSpec.wrapWithoutInspection(null);
        root.name(command());
        root.version("Stillroom " + version);
        root.mixinStandardHelpOptions(true);
        root.usageMessage()
                .width(WIDTH)
                .description("A workbench over your own library of old drink recipes.")
                .footer(
                        "",
                        "“"
                                + command()
                                + " help NAME” shows a command’s parameters with an example;",
                        "without any words “" + command() + "” opens the workbench.");
        root.addSubcommand("help", new CommandLine(new HelpCommand()));
        for (Inquiry inquiry : inquiries) {
            root.addSubcommand(inquiry.name(), InquiryCommand.spec(inquiry, command()));
        }
        root.addSubcommand("decide", DecideCommand.spec(command()));
        root.addSubcommand("demo", DemoCommand.spec(command()));
        CommandLine line = new CommandLine(root);
        line.setOut(new PrintWriter(terminal.out(), true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(terminal.err(), true, StandardCharsets.UTF_8));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setExecutionStrategy(this::execute);
        line.setParameterExceptionHandler(this::wrongWords);
        return line;
    }

    private int execute(ParseResult parsed) {
        ParseResult last = parsed;
        while (last.hasSubcommand()) {
            last = last.subcommand();
        }
        Integer helped = CommandLine.executeHelpRequest(parsed);
        if (helped != null) {
            return helped;
        }
        String name = last.commandSpec().name();
        try {
            if (name.equals("demo")) {
                return new DemoCommand(inquiries, surroundings, terminal).run(last);
            }
            if (name.equals("decide")) {
                return new DecideCommand(surroundings, terminal).run(last);
            }
            String asked = name;
            Inquiry inquiry =
                    inquiries.stream()
                            .filter(i -> i.name().equals(asked))
                            .findFirst()
                            .orElseThrow(
                                    () ->
                                            new InquiryException(
                                                    "No command was named.",
                                                    "“" + command() + " help” lists them."));
            return new InquiryCommand(inquiry, surroundings, terminal).run(last);
        } catch (InquiryException e) {
            terminal.err().println("stillroom: " + e.getMessage() + " " + e.remedy());
            return ExitCode.REFUSED;
        } catch (CancellationException e) {
            terminal.err().println("stillroom: stopped.");
            return ExitCode.STOPPED;
        } catch (RuntimeException e) {
            return fault(e);
        }
    }

    private int wrongWords(ParameterException e, String[] words) {
        terminal.err().println("stillroom: " + e.getMessage());
        for (String word : words) {
            if (word.matches("-\\d.*")) {
                terminal.err()
                        .println(
                                "“"
                                        + word
                                        + "” begins as an option does; write -- before words that begin"
                                        + " with a minus sign.");
                return ExitCode.USAGE;
            }
        }
        if (!UnmatchedArgumentException.printSuggestions(e, terminal.err())) {
            String name = e.getCommandLine().getCommandName();
            String help = name.equals(command()) ? "help" : "help " + name;
            terminal.err().println("“" + command() + " " + help + "” shows what would work.");
        }
        return ExitCode.USAGE;
    }

    private int fault(RuntimeException fault) {
        String words =
                fault.getMessage() == null ? fault.getClass().getSimpleName() : fault.getMessage();
        terminal.err()
                .println(
                        "stillroom: this should not have happened: "
                                + words
                                + ". Nothing of yours was changed; please report the command.");
        return ExitCode.FAULT;
    }
}
