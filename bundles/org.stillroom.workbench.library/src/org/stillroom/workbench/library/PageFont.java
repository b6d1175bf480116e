package org.stillroom.workbench.library;

import java.util.List;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.widgets.Control;

/** Chooses a type with serifs for old print, from what the system has. */
final class PageFont {
    private static final List<String> FAMILIES =
            List.of("Libertinus Serif", "Georgia", "DejaVu Serif", "Times New Roman", "Serif");

    private PageFont() {}

    /** Returns a font that goes with the control; the control's own where none is there. */
    static Font of(Control control) {
        FontData own = control.getFont().getFontData()[0];
        for (String family : FAMILIES) {
            if (control.getDisplay().getFontList(family, true).length > 0) {
                LocalResourceManager fonts =
                        new LocalResourceManager(JFaceResources.getResources(), control);
                return fonts.create(FontDescriptor.createFrom(family, own.getHeight(), SWT.NORMAL));
            }
        }
        return control.getFont();
    }
}
