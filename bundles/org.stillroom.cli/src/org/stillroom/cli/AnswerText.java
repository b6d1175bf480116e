package org.stillroom.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.AnswerReasons;
import org.stillroom.model.explain.Explanation;

/** Writes an answer for a terminal. */
final class AnswerText {

    private static final int WIDTH = 110;

    private AnswerText() {}

    /** Returns the answer for programs, two blanks a level, line feeds alone. */
    static String json(Answer answer, boolean explained) {
        JsonNode tree = explained ? AnswerReasons.json(answer) : answer.json();
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(indenter);
        printer.indentArraysWith(indenter);
        try {
            return new ObjectMapper().writer(printer).writeValueAsString(tree) + "\n";
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("A tree of JSON can always be written", impossible);
        }
    }

    /** Returns the answer for people; where asked for, with the reasons of the amounts. */
    static String of(Answer answer, boolean explained) {
        StringBuilder out = new StringBuilder();
        out.append(answer.title()).append('\n');
        out.append("=".repeat(answer.title().length())).append('\n');
        for (Block block : answer.blocks()) {
            out.append('\n');
            switch (block) {
                case Block.Paragraph p -> wrap(out, "", p.words());
                case Block.Heading h ->
                        out.append(h.words())
                                .append('\n')
                                .append("-".repeat(h.words().length()))
                                .append('\n');
                case Block.Table t -> {
                    table(out, t);
                    if (explained) {
                        t.whys().forEach(w -> because(out, w));
                    }
                }
                case Block.Why w -> why(out, w.explanation());
                case Block.Picture p ->
                        out.append("(figure “")
                                .append(p.name())
                                .append("”: --figures FOLDER writes it)\n");
            }
        }
        return out.toString();
    }

    /** Writes an explanation as an indented tree with dashes. */
    private static void why(StringBuilder out, Explanation explanation) {
        tree(out, "Why: ", explanation);
    }

    /** Writes the reason of a row under its table. */
    private static void because(StringBuilder out, Explanation explanation) {
        out.append('\n');
        tree(out, "", explanation);
    }

    private static void tree(StringBuilder out, String lead, Explanation explanation) {
        for (String line : explanation.toText().split("\n")) {
            int level = line.length() - line.stripLeading().length();
            wrap(out, " ".repeat(level) + (level == 0 ? lead : "- "), line.strip());
        }
    }

    /** Writes words on lines of the usual width; further lines stand under the first word. */
    private static void wrap(StringBuilder out, String lead, String words) {
        String under = " ".repeat(lead.length());
        StringBuilder line = new StringBuilder(lead);
        boolean empty = true;
        for (String word : words.split("\\s+")) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                out.append(line).append('\n');
                line = new StringBuilder(under);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        out.append(line).append('\n');
    }

    private static void table(StringBuilder out, Block.Table t) {
        out.append(t.caption()).append('\n');
        out.append(new TableLayout(t, WIDTH).toText());
    }
}
