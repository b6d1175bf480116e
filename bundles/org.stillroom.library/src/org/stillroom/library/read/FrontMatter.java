package org.stillroom.library.read;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.model.explain.Problem;

/**
 * The fields of a block of YAML at the head of a source, or of its sidecar.
 *
 * <p>Values are kept as the words in the file: a year is never read as a number, nor “no” as a
 * truth value.
 *
 * @param fields each field with its words and its line
 * @param problems what was wrong
 */
record FrontMatter(Map<String, Field> fields, List<Problem> problems) {

    /**
     * One field.
     *
     * @param words its value as written; several are joined by “; ”
     * @param file the file that it stands in, as problems name it
     * @param line its line in the file
     */
    record Field(String words, String file, int line) {}

    /**
     * Reads a block of YAML.
     *
     * @param file the file's name for problems
     * @param yaml the block
     * @param firstLine the line of the file that the block starts on
     */
    static FrontMatter parse(String file, String yaml, int firstLine) {
        Map<String, Field> fields = new LinkedHashMap<>();
        List<Problem> problems = new ArrayList<>();
        YAMLFactory factory = YAMLFactory.builder().build();
        try (YAMLParser parser = factory.createParser(yaml)) {
            if (parser.nextToken() == JsonToken.START_OBJECT) {
                readFields(new Block(file, firstLine, fields, problems), parser);
            } else if (!yaml.isBlank()) {
                problems.add(
                        Problem.error(
                                file,
                                firstLine,
                                "",
                                "The front matter is not a list of fields.",
                                "Write one “name: value” a line, such as “title: …”."));
            }
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 1 : e.getLocation().getLineNr();
            problems.add(
                    Problem.error(
                            file,
                            firstLine + line - 1,
                            "",
                            "The front matter is not YAML: " + firstLineOf(e) + ".",
                            "Put a value that holds a colon or starts with a sign into quotes; "
                                    + "the text itself was opened."));
        } catch (IOException impossible) {
            throw new IllegalStateException("A string can always be read", impossible);
        }
        return new FrontMatter(fields, problems);
    }

    private static String firstLineOf(JsonProcessingException e) {
        return e.getOriginalMessage().lines().findFirst().orElse("").strip();
    }

    /** What is being filled. */
    private record Block(
            String file, int firstLine, Map<String, Field> fields, List<Problem> problems) {

        void put(String name, String words, int line) {
            int at = firstLine + line - 1;
            Field before = fields.putIfAbsent(name, new Field(words, file, at));
            if (before != null) {
                problems.add(
                        Problem.warning(
                                file,
                                at,
                                name,
                                "The field stands twice; the first one, in line "
                                        + before.line()
                                        + ", holds.",
                                "Take one of them out."));
            }
        }
    }

    private static void readFields(Block block, YAMLParser parser) throws IOException {
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            int line = parser.currentTokenLocation().getLineNr();
            JsonToken token = parser.nextToken();
            if (parser.isCurrentAlias()) {
                block.problems.add(
                        Problem.warning(
                                block.file,
                                block.firstLine + line - 1,
                                name,
                                "A YAML alias (*) is not read here.",
                                "Write the value out."));
            } else if (token == JsonToken.START_ARRAY) {
                block.put(name, list(parser), line);
            } else if (token == JsonToken.START_OBJECT) {
                parser.skipChildren();
                block.problems.add(
                        Problem.warning(
                                block.file,
                                block.firstLine + line - 1,
                                name,
                                "Fields inside a field are not read here.",
                                "Write the value in words on one line."));
            } else if (token != JsonToken.VALUE_NULL) {
                block.put(name, parser.getText().strip(), line);
            }
        }
    }

    private static String list(JsonParser parser) throws IOException {
        List<String> words = new ArrayList<>();
        for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
            if (t == JsonToken.START_OBJECT || t == JsonToken.START_ARRAY) {
                parser.skipChildren();
            } else {
                words.add(parser.getText().strip());
            }
        }
        return String.join("; ", words);
    }
}
