package org.stillroom.workbench.widgets;

import java.util.Optional;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

/** Gives controls the names by which assistive technology calls them. */
public final class Names {
    private static final String KEY = "org.stillroom.name";

    private Names() {}

    /** Gives a control a name. */
    public static void give(Control control, String name) {
        boolean first = control.getData(KEY) == null;
        control.setData(KEY, name);
        if (first) {
            control.getAccessible()
                    .addAccessibleListener(
                            new AccessibleAdapter() {
                                @Override
                                public void getName(AccessibleEvent event) {
                                    event.result = (String) control.getData(KEY);
                                }
                            });
        }
    }

    /** Returns the name that a control was given. */
    public static Optional<String> of(Control control) {
        return Optional.ofNullable((String) control.getData(KEY));
    }
}
