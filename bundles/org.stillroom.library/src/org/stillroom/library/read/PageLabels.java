package org.stillroom.library.read;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.nodes.Element;

/** Finds the numbers of printed pages in the elements of a web page or a chapter of an EPUB. */
final class PageLabels {

    private static final String NUMBER = "(\\d{1,4}|[ivxlc]{1,8})";
    private static final Pattern ID =
            Pattern.compile("(?i)(?:page|pagina|seite|pg|pb|p)[-_.]?0*+" + NUMBER);
    private static final Pattern WORDS =
            Pattern.compile("(?i)[\\s\\[({]*(?:page|pg|p)?[.:]?\\s*" + NUMBER + "[\\s\\])}.]*");
    private static final Set<String> CLASSES =
            Set.of("pagenum", "pageno", "page-number", "pagenumber", "pagebreak", "pb", "folio");
    private static final Pattern SCANNED = Pattern.compile("\\b(l|p)pageno\\s+(\\d{1,5})");

    private PageLabels() {}

    /** Tells whether an element says of itself that it is the break of a page. */
    static boolean isBreak(Element element) {
        String roles = element.attr("epub:type") + " " + element.attr("role");
        boolean said = roles.contains("pagebreak");
        boolean tag = element.normalName().equals("pagebreak");
        return said
                || tag
                || CLASSES.stream().anyMatch(element::hasClass) && words(element).isPresent();
    }

    /** Returns the number of the page that starts at an element. */
    static Optional<String> of(Element element) {
        if (element.hasClass("ocr_page")) {
            return scanned(element.attr("title"));
        }
        if (isBreak(element)) {
            return words(element)
                    .or(() -> number(WORDS, element.attr("title")))
                    .or(() -> number(WORDS, element.attr("aria-label")))
                    .or(() -> number(ID, element.id()));
        }
        String name = element.id().isEmpty() ? element.attr("name") : element.id();
        return name.isEmpty() ? Optional.empty() : number(ID, name);
    }

    /** Tells whether the words of a page’s break are a bare number that would harm the sentence. */
    static boolean isBare(Element element) {
        return element.text().strip().chars().allMatch(Character::isLetterOrDigit);
    }

    /** Returns the label that a list of pages gives. */
    static String plain(String words) {
        return number(WORDS, words).orElse(words.strip());
    }

    private static Optional<String> words(Element element) {
        return number(WORDS, element.text());
    }

    private static Optional<String> number(Pattern pattern, String words) {
        Matcher m = pattern.matcher(words.strip());
        return m.matches() ? Optional.of(m.group(1)) : Optional.empty();
    }

    /** Returns the logical number of a page in hOCR, else the place of its image, from 1. */
    private static Optional<String> scanned(String title) {
        Matcher m = SCANNED.matcher(title.toLowerCase(Locale.ROOT));
        Optional<String> physical = Optional.empty();
        while (m.find()) {
            int number = Integer.parseInt(m.group(2));
            if (m.group(1).equals("l")) {
                return Optional.of(Integer.toString(number));
            }
            physical = Optional.of(Integer.toString(number + 1));
        }
        return physical;
    }
}
