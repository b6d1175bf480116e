package org.stillroom.search;

import java.util.List;

/** Names of the fields in the index. */
final class Fields {

    static final String ID = "id";
    static final String WORDS = "words";
    static final String TITLE = "title";
    static final String TITLE_STORED = "title.stored";
    static final String INGREDIENT = "ingredient";
    static final String MEASURE = "measure";
    static final String VESSEL = "vessel";
    static final String PLACE = "place";
    static final String TRADE = "trade";
    static final String SOURCE = "source";
    static final String SOURCE_ID = "source.id";
    static final String START = "start";
    static final String EARLIEST = "earliest";
    static final String LATEST = "latest";
    static final String DECADE = "decade";

    /** Fields whose values are counted. */
    static final List<String> COUNTED =
            List.of(INGREDIENT, DECADE, PLACE, TRADE, SOURCE, VESSEL, MEASURE);

    private Fields() {}
}
