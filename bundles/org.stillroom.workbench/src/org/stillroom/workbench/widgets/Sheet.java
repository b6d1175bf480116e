package org.stillroom.workbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

/** The sheet of paper that a part is written on. */
public final class Sheet {
    private Sheet() {}

    /** Lays a sheet over the whole of a part's place. */
    public static Composite on(Composite place) {
        place.setLayout(new FillLayout());
        return new Composite(place, SWT.NONE);
    }
}
