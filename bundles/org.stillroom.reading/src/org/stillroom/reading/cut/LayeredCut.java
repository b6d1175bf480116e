package org.stillroom.reading.cut;

import java.util.List;
import org.stillroom.model.source.Mark;
import org.stillroom.model.source.Section;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.LayeredText;
import org.stillroom.reading.anchor.Readings;

/**
 * Cuts a source by its words put right, and says where the cuts lie in the words of the file.
 *
 * <p>A heading that a scanner damaged is a heading again, and its recipe bears the right title.
 */
public final class LayeredCut {

    private LayeredCut() {}

    /** Returns the cut of a source whose words stand under layers. */
    public static Cut cut(BookCutter cutter, Source source, LayeredText words) {
        if (words.isBare()) {
            return cutter.cut(source);
        }
        List<Mark> marks =
                source.marks().stream()
                        .map(m -> new Mark(m.kind(), m.label(), words.toTop(m.span())))
                        .toList();
        Source right =
                new Source(
                        source.id(), source.bibliography(), words.text(), marks, source.digest());
        Cut cut = cutter.cut(right);
        return new Cut(
                cut.witnesses().stream().map(w -> Readings.placed(w, words::toBottom)).toList(),
                cut.sections().stream()
                        .map(s -> new Section(s.kind(), words.toBottom(s.span())))
                        .toList());
    }
}
