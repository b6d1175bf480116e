package org.stillroom.library.read;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.OpenTypeFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Stands in for fonts that a PDF names and does not bring along.
 *
 * <p>PDFBox would look through every font of the machine and keep a list of them in the user's home;
 * to get at words one font is enough, and then the words do not depend on the machine.
 */
final class PdfFonts implements FontMapper {

    private static final String FONT =
            "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private final TrueTypeFont font;

    PdfFonts() {
        try (InputStream in = PDDocument.class.getResourceAsStream(FONT)) {
            font = new TTFParser().parse(new RandomAccessReadBuffer(in));
        } catch (IOException e) {
            throw new UncheckedIOException("PDFBox brings this font along", e);
        }
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, false);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, false);
    }

    @Override
    public CIDFontMapping getCIDFont(
            String name, PDFontDescriptor descriptor, PDCIDSystemInfo system) {
        return new CIDFontMapping((OpenTypeFont) null, font, false);
    }

    /** Tells whether the letters of a font lean. */
    static boolean isItalic(PDFont font) {
        PDFontDescriptor descriptor = font.getFontDescriptor();
        String name = String.valueOf(font.getName()).toLowerCase(Locale.ROOT);
        return name.contains("italic")
                || name.contains("oblique")
                || descriptor != null
                        && (descriptor.isItalic() || descriptor.getItalicAngle() < -3);
    }

    /** Tells whether the letters of a font are heavy. */
    static boolean isBold(PDFont font) {
        PDFontDescriptor descriptor = font.getFontDescriptor();
        String name = String.valueOf(font.getName()).toLowerCase(Locale.ROOT);
        return name.contains("bold")
                || name.contains("black")
                || descriptor != null
                        && (descriptor.isForceBold() || descriptor.getFontWeight() >= 600);
    }
}
