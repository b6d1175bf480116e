package org.stillroom.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.stillroom.inquiry.StudyDesk;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** The options that every command has. */
final class LibraryOptions {

    static final String LIBRARY = "--library";
    static final String JSON = "--json";
    static final String EXPLAIN = "--explain";
    static final String FIGURES = "--figures";
    static final String TABLES = "--tables";
    static final String REPORT = "--report";

    private LibraryOptions() {}

    static void add(CommandSpec spec) {
        spec.addOption(
                text(
                        LIBRARY,
                        "FOLDER",
                        "the library; else this folder if it is one, else the example"));
        spec.addOption(
                OptionSpec.builder(JSON)
                        .type(boolean.class)
                        .description("print the answer for programs")
                        .build());
        spec.addOption(
                OptionSpec.builder(EXPLAIN)
                        .type(boolean.class)
                        .description(
                                "say why each amount is so, back to the words and the authority")
                        .build());
        spec.addOption(text(FIGURES, "FOLDER", "write the answer's figures there, SVG and PNG"));
        spec.addOption(text(TABLES, "FOLDER", "write the answer's tables there, CSV"));
        spec.addOption(text(REPORT, "FILE", "write the whole answer to a page, HTML"));
    }

    private static OptionSpec text(String name, String label, String words) {
        return OptionSpec.builder(name)
                .type(String.class)
                .arity("1")
                .paramLabel(label)
                .description(words)
                .build();
    }

    /** Returns a desk with the library that is meant. */
    static StudyDesk desk(ParseResult parsed, Surroundings where) {
        StudyDesk desk = new StudyDesk(where.premises().caches());
        Optional<Path> named =
                Optional.ofNullable(parsed.matchedOptionValue(LIBRARY, (String) null))
                        .map(where.folder()::resolve)
                        .or(where::library);
        if (named.isPresent()) {
            desk.lay(named.get());
        } else if (Files.exists(where.folder().resolve("stillroom.json"))) {
            desk.lay(where.folder());
        } else {
            where.premises().example().ifPresent(desk::lay);
        }
        return desk;
    }
}
