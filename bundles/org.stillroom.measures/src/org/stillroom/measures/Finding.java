package org.stillroom.measures;

import java.util.List;
import java.util.Optional;
import org.stillroom.measures.MeasureMeaning.Answer;
import org.stillroom.measures.knowledge.Dimension;
import org.stillroom.measures.knowledge.MeasureWord;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.number.Rational;

/** What was found about a measure, before it is put into words. */
record Finding(
        MeasureWord word,
        Dimension dimension,
        MeasureQuestion question,
        Setting setting,
        Estimate one,
        Optional<Rational> exact,
        List<WeightedAuthority> authorities,
        List<Answer> answers,
        List<String> warnings,
        Optional<Knowledge.SizeFactor> size) {}
