package org.stillroom.inquiry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.model.explain.Explanation;

/** Gives an answer for programs the reasons of its amounts. */
public final class AnswerReasons {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private AnswerReasons() {}

    /**
     * Returns an answer for programs with one more field, {@code explanations}: for each reason what
     * it is about (a table's caption or the answer's title), the number of the table's row from 0,
     * and the tree of statements.
     */
    public static JsonNode json(Answer answer) {
        ArrayNode all = NODES.arrayNode();
        for (Block block : answer.blocks()) {
            switch (block) {
                case Block.Table t -> rows(t, all);
                case Block.Why w -> {
                    ObjectNode node = NODES.objectNode().put("about", answer.title());
                    node.putNull("row");
                    all.add(node.set("why", tree(w.explanation())));
                }
                case Block.Paragraph p -> {
                    // words carry their reason themselves
                }
                case Block.Heading h -> {
                    // names what follows
                }
                case Block.Picture p -> {
                    // shows what the tables explain
                }
            }
        }
        JsonNode copy = answer.json().deepCopy();
        return copy instanceof ObjectNode object ? object.set("explanations", all) : copy;
    }

    private static void rows(Block.Table table, ArrayNode all) {
        for (int i = 0; i < table.whys().size(); i++) {
            ObjectNode node = NODES.objectNode().put("about", table.caption()).put("row", i);
            all.add(node.set("why", tree(table.whys().get(i))));
        }
    }

    private static ObjectNode tree(Explanation e) {
        ObjectNode node = NODES.objectNode().put("statement", e.statement());
        e.source()
                .ifPresent(
                        c ->
                                node.set(
                                        "source",
                                        NODES.objectNode()
                                                .put("work", c.work())
                                                .put("status", c.status().words())));
        ArrayNode because = NODES.arrayNode();
        e.because().forEach(b -> because.add(tree(b)));
        return node.set("because", because);
    }
}
