package org.stillroom.reading.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.stillroom.model.reading.Step;

/** Makes steps of the verbs that were found, with the lines that each applies to. */
final class StepBuilder {

    private final Vocabulary words;
    private final Passage p;

    StepBuilder(Vocabulary words, Passage passage) {
        this.words = words;
        this.p = passage;
    }

    List<Step> build(Found found, int lineCount) {
        List<Step> steps = new ArrayList<>();
        for (int k = 0; k < found.deeds.size(); k++) {
            Found.Deed deed = found.deeds.get(k);
            int until =
                    k + 1 < found.deeds.size()
                            ? found.deeds.get(k + 1).linesBefore()
                            : found.drafts.size();
            List<Integer> lines = lines(deed, until, lineCount);
            steps.add(
                    new Step(
                            deed.verb(),
                            p.span(deed.from(), deed.to()),
                            lines,
                            detail(deed, k, found)));
        }
        return steps;
    }

    /** A verb applies to the lines named after it, or, where none is, to all before it. */
    private static List<Integer> lines(Found.Deed deed, int until, int count) {
        int from = Math.min(deed.linesBefore(), count);
        int to = Math.min(until, count);
        return to > from
                ? IntStream.range(from, to).boxed().toList()
                : IntStream.range(0, from).boxed().toList();
    }

    private String detail(Found.Deed deed, int k, Found found) {
        int limit = k + 1 < found.deeds.size() ? found.deeds.get(k + 1).from() : p.size();
        int end = deed.to();
        while (end < limit
                && end < deed.to() + 9
                && p.at(end).type() != Token.Type.MARK
                && !p.at(end).ends()) {
            end++;
        }
        while (end > deed.to() && words.has("and", p.word(end - 1))) {
            end--;
        }
        return end > deed.to() ? p.name(deed.to(), end) : "";
    }
}
