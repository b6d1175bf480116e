package org.stillroom.library;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.stillroom.model.explain.Problem;

/** Reads a library's {@code stillroom.json}. */
final class SettingsFile {

    private SettingsFile() {}

    /** Returns the settings, or plain ones where there is no file or a bad one. */
    static LibrarySettings read(LibraryLayout layout, List<Problem> problems) {
        Path file = layout.settings();
        LibrarySettings plain =
                LibrarySettings.of(
                        folderName(layout),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty());
        if (!Files.exists(file)) {
            return plain;
        }
        try {
            JsonNode root = new ObjectMapper().readTree(Files.readAllBytes(file));
            checkFormat(root, problems);
            JsonNode defaults = root.path("defaults");
            return LibrarySettings.of(
                    text(root, "title").orElse(plain.title()),
                    text(defaults, "place"),
                    text(defaults, "trade"),
                    text(defaults, "language"),
                    text(root, "measures"));
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 1 : e.getLocation().getLineNr();
            problems.add(
                    Problem.error(
                            LibraryLayout.SETTINGS,
                            line,
                            "",
                            "It is not JSON: " + e.getOriginalMessage() + ".",
                            "The library opens without defaults until it is mended."));
        } catch (IOException e) {
            problems.add(
                    Problem.error(
                            LibraryLayout.SETTINGS,
                            "It cannot be read (" + e.getMessage() + ").",
                            "The library opens without defaults until it can."));
        }
        return plain;
    }

    private static void checkFormat(JsonNode root, List<Problem> problems) {
        int format = root.path("format").asInt(LibrarySettings.FORMAT);
        if (format > LibrarySettings.FORMAT) {
            problems.add(
                    Problem.warning(
                            LibraryLayout.SETTINGS,
                            "It was written by a later Stillroom (format " + format + ").",
                            "It opens, but take a newer Stillroom to see all of it."));
        }
    }

    private static String folderName(LibraryLayout layout) {
        Path name = layout.root().getFileName();
        return name == null ? layout.root().toString() : name.toString();
    }

    private static Optional<String> text(JsonNode node, String field) {
        return Optional.of(node.path(field).asText("")).filter(s -> !s.isBlank());
    }
}
