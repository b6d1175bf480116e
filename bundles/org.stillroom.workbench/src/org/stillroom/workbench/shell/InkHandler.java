package org.stillroom.workbench.shell;

import org.eclipse.e4.ui.css.core.dom.properties.ICSSPropertyHandler;
import org.eclipse.e4.ui.css.core.engine.CSSEngine;
import org.eclipse.e4.ui.css.swt.helpers.SWTElementHelpers;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Control;
import org.stillroom.workbench.Ink;
import org.w3c.dom.css.CSSValue;

/** Gives the colours of a style sheet to the controls that write in them. */
public final class InkHandler implements ICSSPropertyHandler {
    @Override
    public boolean applyCSSProperty(
            Object element, String property, CSSValue value, String pseudo, CSSEngine engine)
            throws Exception {
        Control control = SWTElementHelpers.getControl(element);
        if (control == null || control.isDisposed()) {
            return false;
        }
        Color colour = (Color) engine.convert(value, Color.class, control.getDisplay());
        if (colour != null) {
            Ink.Use.ofProperty(property)
                    .ifPresent(use -> Ink.of(control).ifPresent(ink -> ink.set(use, colour)));
        }
        return true;
    }
}
