package org.stillroom.inquiry.ask;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.BookStudy;
import org.stillroom.inquiry.Knowledge;
import org.stillroom.measures.MeasureTable;
import org.stillroom.measures.book.Definition;
import org.stillroom.measures.book.Equation;
import org.stillroom.measures.format.AmountFormat;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.source.Circumstances;

/** What a book says itself of its measures, and what each comes to. */
record OwnTableBlocks(BookStudy book, Knowledge knowledge) {

    /** Returns the table, or nothing where the book says nothing. */
    List<Block> blocks() {
        List<Definition> definitions = book.measures().ownTable().definitions();
        if (definitions.isEmpty()) {
            return List.of();
        }
        List<List<String>> rows = new ArrayList<>();
        for (Definition d : definitions) {
            Optional<Equation> first = d.said().stream().findFirst();
            rows.add(
                    List.of(
                            d.name(),
                            d.ratio() + " " + d.base(),
                            amount(d).map(a -> AmountFormat.write(a, "ml")).orElse("–"),
                            first.map(Equation::words).orElse(""),
                            first.map(Equation::where).orElse("")));
        }
        return List.of(
                new Block.Table(
                        "The book's own measures, which outrank every other authority for it",
                        List.of("measure", "is so many", "amount", "as printed", "where"),
                        List.of(false, false, true, false, false),
                        rows,
                        List.of()));
    }

    /** Returns the definitions for programs. */
    ArrayNode json() {
        ArrayNode array = Json.array();
        for (Definition d : book.measures().ownTable().definitions()) {
            var node =
                    Json.object()
                            .put("measure", d.name())
                            .put("ratio", d.ratio().toString())
                            .put("of", d.base());
            Json.put(node, "ml", amount(d), 1);
            Json.put(node, "words", d.said().stream().findFirst().map(Equation::words));
            Json.put(node, "where", d.said().stream().findFirst().map(Equation::where));
            array.add(node);
        }
        return array;
    }

    private Optional<Estimate> amount(Definition d) {
        MeasureTable table = book.table(knowledge);
        Circumstances where = book.source().bibliography().circumstances();
        return table.resolve(d.name(), Optional.empty(), where).millilitres();
    }
}
