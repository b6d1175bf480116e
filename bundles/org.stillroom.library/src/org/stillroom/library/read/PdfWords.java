package org.stillroom.library.read;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.stillroom.model.source.Mark;

/**
 * Lays the lines of a PDF file together to a text.
 *
 * <p>PDF knows no headings. Where most of a file is set in letters of one size, short lines in
 * clearly larger ones are taken as headings; where sizes vary, as under scanned pages, none are.
 */
final class PdfWords {

    private static final double MOST = 0.6;
    private static final double LARGER = 1.15;
    private static final double FEW = 0.4;
    private static final int LONGEST = 90;
    private static final int LEVELS = 6;

    private final BlockText words;
    private final double body;
    private final TreeSet<Double> sizes = new TreeSet<>();
    private boolean sentenceEnd;

    PdfWords(BlockText words, List<PdfPage> pages) {
        this.words = words;
        this.body = bodySize(pages);
        List<PdfPage.Line> lines = pages.stream().flatMap(p -> p.lines().stream()).toList();
        List<PdfPage.Line> large = lines.stream().filter(this::isLarge).toList();
        if (large.size() <= FEW * lines.size()) {
            large.forEach(l -> sizes.add(l.size()));
        }
        if (sizes.size() > LEVELS) {
            sizes.clear();
        }
    }

    /** Returns the size that most letters have, or 0 where no size has most. */
    private static double bodySize(List<PdfPage> pages) {
        Map<Double, Integer> letters = new TreeMap<>();
        int all = 0;
        for (PdfPage page : pages) {
            for (PdfPage.Line line : page.lines()) {
                for (PdfPage.Run run : line.runs()) {
                    int length = run.size() > 0 ? run.text().length() : 0;
                    letters.merge(run.size(), length, Integer::sum);
                    all += length;
                }
            }
        }
        double needed = MOST * all;
        return letters.entrySet().stream()
                .filter(e -> e.getValue() > needed)
                .mapToDouble(Map.Entry::getKey)
                .findFirst()
                .orElse(0);
    }

    private boolean isLarge(PdfPage.Line line) {
        String text = line.text();
        return body > 0
                && line.size() >= LARGER * body
                && text.length() <= LONGEST
                && text.codePoints().anyMatch(Character::isLetter);
    }

    /** Adds a page. */
    void add(PdfPage page, String label) {
        int levelBefore = 0;
        int headingFrom = 0;
        boolean first = true;
        for (PdfPage.Line line : page.lines()) {
            int level = level(line);
            if (levelBefore > 0 && level != levelBefore) {
                words.mark(Mark.Kind.HEADING, Integer.toString(levelBefore), headingFrom);
            }
            boolean starts = first ? startsParagraph(line) : line.paragraph();
            words.breakLine(starts || level != levelBefore ? 2 : 1);
            if (first && !label.isEmpty()) {
                words.page(label);
            }
            headingFrom = level == levelBefore ? headingFrom : words.place();
            levelBefore = level;
            add(line);
            first = false;
        }
        if (levelBefore > 0) {
            words.mark(Mark.Kind.HEADING, Integer.toString(levelBefore), headingFrom);
        }
    }

    /** Tells whether a page starts with a paragraph, or in the middle of one from the page before. */
    private boolean startsParagraph(PdfPage.Line line) {
        String text = line.text();
        return sentenceEnd && !text.isEmpty() && !Character.isLowerCase(text.codePointAt(0));
    }

    /** The largest letters make the highest heading. */
    private int level(PdfPage.Line line) {
        if (!sizes.contains(line.size()) || !isLarge(line)) {
            return 0;
        }
        return 1 + sizes.tailSet(line.size(), false).size();
    }

    private void add(PdfPage.Line line) {
        Emphases emphases = new Emphases(words);
        for (PdfPage.Run run : line.runs()) {
            emphases.add(run.text(), run.italic(), run.bold(), false);
        }
        emphases.end();
        String text = line.text();
        if (text.codePoints().anyMatch(Character::isLetter)) {
            sentenceEnd = ".!?:”\"".indexOf(text.charAt(text.length() - 1)) >= 0;
        }
    }
}
