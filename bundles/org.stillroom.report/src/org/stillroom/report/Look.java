package org.stillroom.report;

import java.awt.Color;
import java.util.List;

/**
 * The colours of figures.
 *
 * <p>Roles are told apart by shape and line too, so that no meaning hangs on a colour alone.
 *
 * @param paper background
 * @param ink text and lines
 * @param faint grid and secondary lines
 * @param fill background of boxes
 * @param series colours of data, each at least 3:1 against the paper (WCAG 2.2, 1.4.11)
 */
public record Look(Color paper, Color ink, Color faint, Color fill, List<Color> series) {

    /** Dark ink on light paper. */
    public static final Look LIGHT =
            new Look(
                    new Color(0xFBF9F4),
                    new Color(0x2B2A28),
                    new Color(0xCFC8BA),
                    new Color(0xF1ECE1),
                    List.of(
                            new Color(0x1F5F7A),
                            new Color(0xA3462B),
                            new Color(0x4F6F2F),
                            new Color(0x7A4E8A),
                            new Color(0x8A6A14),
                            new Color(0x35635F),
                            new Color(0x8C3A5B),
                            new Color(0x555555)));

    /** Light ink on dark paper. */
    public static final Look DARK =
            new Look(
                    new Color(0x232528),
                    new Color(0xE8E4DA),
                    new Color(0x4A4D52),
                    new Color(0x2E3135),
                    List.of(
                            new Color(0x7FC4E0),
                            new Color(0xF0A088),
                            new Color(0xA9CF86),
                            new Color(0xCBA6DC),
                            new Color(0xE3C468),
                            new Color(0x8CCBC4),
                            new Color(0xEBA3BF),
                            new Color(0xC0C0C0)));

    /** Keeps the colours as an unchangeable list. */
    public Look {
        series = List.copyOf(series);
    }

    /** Returns the colour of the nth series. */
    public Color series(int n) {
        return series.get(n % series.size());
    }
}
