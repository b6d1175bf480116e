package org.stillroom.library.read;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Takes the words off the pages of a PDF file, with how they are set. */
final class PdfStripper extends PDFTextStripper {

    /** Figures smaller than this share of the one before are raised or lowered. */
    private static final double SMALL = 0.8;

    private final TimeBudget budget;
    private final List<PdfPage> pages = new ArrayList<>();
    private final List<Integer> damaged = new ArrayList<>();
    private List<PdfPage.Line> lines = new ArrayList<>();
    private PdfPage.Line line = new PdfPage.Line(true);

    PdfStripper(TimeBudget budget) {
        this.budget = budget;
    }

    /** Returns the pages of a document. */
    List<PdfPage> pages(PDDocument document) throws IOException {
        writeText(document, Writer.nullWriter());
        return pages;
    }

    /** Returns the places, from 1, of pages whose words could not be taken off. */
    List<Integer> damaged() {
        return damaged;
    }

    @Override
    public void processPage(PDPage page) throws IOException {
        lines = new ArrayList<>();
        line = new PdfPage.Line(true);
        try {
            super.processPage(page);
        } catch (TimeBudget.Over e) {
            throw e;
        } catch (IOException | RuntimeException e) {
            damaged.add(pages.size() + 1);
        }
        endLine(false);
        pages.add(new PdfPage(lines, isPictured(page)));
    }

    /** A page without contents is not processed, and is a page all the same. */
    @Override
    protected void processPages(org.apache.pdfbox.pdmodel.PDPageTree tree) throws IOException {
        for (PDPage page : tree) {
            budget.check();
            if (page.hasContents()) {
                processPage(page);
            } else {
                pages.add(new PdfPage(List.of(), false));
            }
        }
    }

    private static boolean isPictured(PDPage page) {
        PDResources resources = page.getResources();
        if (resources != null) {
            for (COSName name : resources.getXObjectNames()) {
                if (resources.isImageXObject(name)) {
                    return true;
                }
            }
        }
        return false;
    }

    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
        budget.check();
        super.processOperator(operator, operands);
    }

    @Override
    protected void writeString(String text, List<TextPosition> positions) {
        if (positions.isEmpty()) {
            return;
        }
        TextPosition first = positions.get(0);
        PDFont font = first.getFont();
        double size = Math.round(first.getFontSizeInPt() * 2) / 2.0;
        String words = withFractions(text, positions);
        line.runs()
                .add(new PdfPage.Run(words, size, PdfFonts.isItalic(font), PdfFonts.isBold(font)));
        budget.gained(text.length());
    }

    /** Sets a small figure apart from a large one before it, as in one and a half. */
    private static String withFractions(String text, List<TextPosition> positions) {
        StringBuilder words = new StringBuilder();
        StringBuilder plain = new StringBuilder();
        TextPosition before = positions.get(0);
        for (TextPosition position : positions) {
            String letter = position.getUnicode();
            boolean small = position.getFontSizeInPt() < SMALL * before.getFontSizeInPt();
            boolean figures = isFigure(before.getUnicode()) && isFigure(letter);
            words.append(small && figures ? " " : "").append(letter);
            plain.append(letter);
            before = position;
        }
        return text.contentEquals(plain) ? words.toString() : text;
    }

    private static boolean isFigure(String letter) {
        return letter.length() == 1 && letter.charAt(0) >= '0' && letter.charAt(0) <= '9';
    }

    @Override
    protected void writeWordSeparator() {
        line.runs().add(new PdfPage.Run(" ", 0, false, false));
    }

    @Override
    protected void writeLineSeparator() {
        endLine(false);
    }

    @Override
    protected void writeParagraphSeparator() {
        endLine(true);
    }

    private void endLine(boolean paragraph) {
        if (line.text().isEmpty()) {
            line = new PdfPage.Line(paragraph || line.paragraph());
        } else {
            lines.add(line);
            line = new PdfPage.Line(paragraph);
        }
    }
}
