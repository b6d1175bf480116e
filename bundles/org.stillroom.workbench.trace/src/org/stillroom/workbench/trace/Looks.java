package org.stillroom.workbench.trace;

import java.awt.Color;
import org.stillroom.report.Look;

/** The colours of figures on the window's own paper. */
final class Looks {
    private static final Look LIGHT =
            new Look(
                    new Color(0xFBF8F1),
                    new Color(0x2A241C),
                    new Color(0xC9BEA6),
                    new Color(0xF1EADB),
                    Look.LIGHT.series());
    private static final Look DARK =
            new Look(
                    new Color(0x26221D),
                    new Color(0xECE4D4),
                    new Color(0x5A5246),
                    new Color(0x332E26),
                    Look.DARK.series());

    private Looks() {}

    /** Returns the colours for the dark or the light theme. */
    static Look of(boolean dark) {
        return dark ? DARK : LIGHT;
    }
}
