package org.stillroom.report.figure;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The fonts of figures, the same on every machine. */
final class Fonts {

    private final Font regular;
    private final Font bold;

    private Fonts(Font regular, Font bold) {
        this.regular = regular;
        this.bold = bold;
    }

    static Fonts load() {
        return new Fonts(font("DejaVuSans.ttf"), font("DejaVuSans-Bold.ttf"));
    }

    private static Font font(String name) {
        try (InputStream in =
                Fonts.class.getResourceAsStream("/net/sf/jasperreports/fonts/dejavu/" + name)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (FontFormatException e) {
            throw new IllegalStateException("The font " + name + " is damaged", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Font regular(float size) {
        return regular.deriveFont(size);
    }

    Font bold(float size) {
        return bold.deriveFont(size);
    }
}
