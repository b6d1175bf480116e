package org.stillroom.search.query;

import java.util.stream.Collectors;

/** Says a query back in words. */
public final class QueryWords {

    private QueryWords() {}

    /** Returns the query in words. */
    public static String of(Condition condition) {
        return switch (condition) {
            case Condition.Words w -> words(w);
            case Condition.Years y -> "dated, certainly or possibly, within " + y.said();
            case Condition.Not n -> "not " + of(n.condition());
            case Condition.Any a ->
                    a.conditions().stream()
                            .map(QueryWords::of)
                            .collect(Collectors.joining(" or ", "(", ")"));
            case Condition.All a ->
                    a.conditions().isEmpty()
                            ? "everything"
                            : a.conditions().stream()
                                    .map(QueryWords::of)
                                    .collect(Collectors.joining(", and "));
        };
    }

    private static String words(Condition.Words w) {
        String quoted = "“" + w.words() + "”";
        String side = w.phrase() && w.words().contains(" ") ? " side by side" : "";
        return w.field().equals("words")
                ? "the words " + quoted + side
                : w.field() + " " + quoted + side;
    }
}
