package org.stillroom.workbench.library;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.stillroom.workbench.Ink;
import org.stillroom.workbench.widgets.Names;

/** Says what the colours and lines on a page stand for. */
final class Legend {
    private static final String GAP = "     ";
    private static final List<Ink.Use> USES =
            List.of(
                    Ink.Use.AMOUNT,
                    Ink.Use.MEASURE,
                    Ink.Use.INGREDIENT,
                    Ink.Use.STEP,
                    Ink.Use.VESSEL,
                    Ink.Use.DOUBT);

    private final StyledText text;
    private final Ink ink;

    Legend(Composite parent) {
        text = new StyledText(parent, SWT.READ_ONLY | SWT.SINGLE);
        text.setData("org.eclipse.e4.ui.css.CssClassName", "Inked");
        text.setMargins(20, 4, 8, 4);
        Names.give(text, "What the marks stand for");
        ink = Ink.of(text, this::write);
        write();
    }

    StyledText control() {
        return text;
    }

    private void write() {
        StringBuilder words = new StringBuilder();
        List<StyleRange> styles = new ArrayList<>();
        for (Ink.Use use : USES) {
            StyleRange style = PageStyles.style(use, ink);
            style.start = words.length();
            words.append(use.name().toLowerCase(java.util.Locale.ROOT));
            style.length = words.length() - style.start;
            styles.add(style);
            words.append(GAP);
        }
        text.setText(words.toString().stripTrailing());
        text.setStyleRanges(styles.toArray(StyleRange[]::new));
    }
}
