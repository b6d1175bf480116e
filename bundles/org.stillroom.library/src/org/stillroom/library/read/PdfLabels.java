package org.stillroom.library.read;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;

/**
 * The numbers of the pages of a PDF file: as the file labels them, else as they are printed at head
 * or foot, else counted.
 */
final class PdfLabels {

    /** So many pages must bear a number that fits, and so large a share of them. */
    private static final int ENOUGH = 3;

    private static final double SHARE = 0.4;
    private static final Pattern ALONE = Pattern.compile("[\\s\\[(—–-]*(\\d{1,4})[\\s\\])—–.-]*");
    private static final Pattern LEADING = Pattern.compile("(\\d{1,4})\\s+\\D{3,60}");
    private static final Pattern TRAILING = Pattern.compile("\\D{3,60}\\s(\\d{1,4})");

    private final String[] labels;

    PdfLabels(PDDocument document, List<PdfPage> pages) {
        String[] stated = stated(document, pages.size());
        labels = isCounted(stated) ? printed(pages) : stated;
    }

    /** Returns the label of a page by its place from 0, or nothing. */
    String of(int place) {
        return labels[place];
    }

    private static String[] stated(PDDocument document, int size) {
        String[] stated = new String[0];
        try {
            PDPageLabels labels = document.getDocumentCatalog().getPageLabels();
            stated = labels == null ? stated : labels.getLabelsByPageIndices();
        } catch (IOException | RuntimeException damaged) {
            stated = new String[0];
        }
        return stated.length == size ? stated : new String[0];
    }

    private static boolean isCounted(String[] stated) {
        boolean counted = true;
        for (int i = 0; i < stated.length; i++) {
            counted &= stated[i] == null || stated[i].strip().equals(Integer.toString(i + 1));
        }
        return counted;
    }

    private static String[] printed(List<PdfPage> pages) {
        Map<Integer, Integer> votes = new HashMap<>();
        int worded = 0;
        for (int i = 0; i < pages.size(); i++) {
            PdfPage page = pages.get(i);
            worded += page.isBlank() ? 0 : 1;
            for (int offset : offsets(page, i)) {
                votes.merge(offset, 1, Integer::sum);
            }
        }
        int needed = Math.max(ENOUGH, (int) Math.ceil(worded * SHARE));
        int offset =
                votes.entrySet().stream()
                        .filter(e -> e.getValue() >= needed)
                        .max(
                                Map.Entry.<Integer, Integer>comparingByValue()
                                        .thenComparing(Map.Entry.comparingByKey()))
                        .map(Map.Entry::getKey)
                        .orElse(0);
        String[] labels = new String[pages.size()];
        for (int i = 0; i < labels.length; i++) {
            int number = i + 1 + offset;
            labels[i] = number > 0 ? Integer.toString(number) : "";
        }
        return labels;
    }

    /** Returns how far the numbers at head and foot are from the page's place in the file. */
    private static List<Integer> offsets(PdfPage page, int place) {
        List<PdfPage.Line> lines = page.lines();
        if (lines.isEmpty()) {
            return List.of();
        }
        OptionalInt head = number(lines.get(0).text());
        OptionalInt foot = number(lines.get(lines.size() - 1).text());
        return java.util.stream.IntStream.concat(head.stream(), foot.stream())
                .map(n -> n - place - 1)
                .distinct()
                .boxed()
                .toList();
    }

    private static OptionalInt number(String line) {
        for (Pattern pattern : List.of(ALONE, LEADING, TRAILING)) {
            Matcher m = pattern.matcher(line);
            if (m.matches()) {
                return OptionalInt.of(Integer.parseInt(m.group(1)));
            }
        }
        return OptionalInt.empty();
    }
}
