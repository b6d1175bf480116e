package org.stillroom.inquiry;

import org.stillroom.drift.Drift;
import org.stillroom.lineage.Lineage;
import org.stillroom.measures.WordAccount;

/** What a picture shows; how it is drawn is the report's business. */
public sealed interface Figure {

    /** Who took a drink from whom. */
    record LineageFigure(Lineage lineage) implements Figure {}

    /** How a drink's proportions moved. */
    record DriftFigure(String drink, Drift drift) implements Figure {}

    /** What is said about a word of measure, over time. */
    record MeasureFigure(WordAccount account) implements Figure {}
}
