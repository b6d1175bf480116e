package org.stillroom.workbench.library;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Span;
import org.stillroom.reading.anchor.WordCorrection;
import org.stillroom.workbench.Ink;
import org.stillroom.workbench.widgets.Names;

/**
 * The printed words of a page, with readings marked by colour and by the style of a line under
 * them.
 *
 * <p>Words of a chosen line are lit up. The pointer and the caret both choose: whoever uses the
 * keyboard alone walks through the words and sees the same.
 */
final class PageText {
    private final StyledText text;
    private final Ink ink;
    private Optional<MarkedPage> page = Optional.empty();
    private List<Span> lit = List.of();
    private Consumer<MarkedPage.Mark> met = mark -> {};
    private Consumer<MarkedPage.Mark> opened = mark -> {};
    private Consumer<WordCorrection> told = right -> {};
    private Runnable chosen = () -> {};
    private boolean quiet;

    PageText(Composite parent) {
        text = new StyledText(parent, SWT.READ_ONLY | SWT.WRAP | SWT.MULTI | SWT.V_SCROLL);
        text.setData("org.eclipse.e4.ui.css.CssClassName", "Inked");
        text.setMargins(20, 12, 10, 12);
        text.setLineSpacing(5);
        text.setAlwaysShowScrollBars(false);
        text.setFont(PageFont.of(text));
        Names.give(text, "Words of the source");
        ink = Ink.of(text, this::restyle);
        text.addListener(SWT.MouseMove, this::hover);
        text.addListener(SWT.MouseUp, this::click);
        text.addCaretListener(e -> meet(e.caretOffset));
        text.addListener(SWT.KeyDown, this::key);
    }

    StyledText control() {
        return text;
    }

    /** Calls the consumer when pointer or caret meets a mark. */
    void onMeet(Consumer<MarkedPage.Mark> consumer) {
        met = consumer;
    }

    /** Calls the consumer when a mark is opened by Enter or a click. */
    void onOpen(Consumer<MarkedPage.Mark> consumer) {
        opened = consumer;
    }

    /** Calls the consumer when the caret comes to words that were put right. */
    void onPutRight(Consumer<WordCorrection> consumer) {
        told = consumer;
    }

    /** Runs the action when Enter is pressed on selected words. */
    void onChosen(Runnable action) {
        chosen = action;
    }

    /** Returns the selected words as a place in the source, blanks around them left out. */
    Optional<Span> selection() {
        Point range = text.getSelection();
        String words = text.getText();
        int from = range.x;
        int to = range.y;
        while (from < to && Character.isWhitespace(words.charAt(from))) {
            from++;
        }
        while (to > from && Character.isWhitespace(words.charAt(to - 1))) {
            to--;
        }
        int start = from;
        int end = to;
        return from < to ? page.map(p -> p.span(start, end)) : Optional.empty();
    }

    /** Returns the line of the source that the caret stands in. */
    Optional<Span> line() {
        return page.map(
                p -> {
                    int at = p.span(text.getCaretOffset(), text.getCaretOffset()).start();
                    return p.source().text().line(p.source().text().lineAt(at));
                });
    }

    /** Returns the words of what was read at the caret: the line of a recipe that it stands in. */
    Optional<Span> readAtCaret() {
        return at(text.getCaretOffset())
                .filter(m -> m.line() >= 0)
                .map(m -> m.version().reading().lines().get(m.line()).span());
    }

    /** Selects words and brings them into sight. */
    void select(Span span) {
        page.flatMap(p -> p.characters(span))
                .ifPresent(
                        c ->
                                silently(
                                        () -> {
                                            text.setSelection(c[0], c[1]);
                                            text.showSelection();
                                        }));
    }

    /** Returns where on the display the selected words, or the caret, end. */
    Point below() {
        int end = Math.max(0, text.getSelection().y);
        Point at = text.getLocationAtOffset(Math.min(end, text.getCharCount()));
        return text.toDisplay(
                Math.max(0, at.x - 40), at.y + text.getLineHeight(Math.max(0, end)) + 8);
    }

    /** Shows a page with its recipe in sight. */
    void show(MarkedPage next) {
        page = Optional.of(next);
        lit = List.of();
        silently(
                () -> {
                    text.setText(next.words());
                    restyle();
                    next.shown().ifPresent(this::reveal);
                });
    }

    private void reveal(Version version) {
        page.flatMap(p -> p.characters(version.witness().span()))
                .ifPresent(
                        c -> {
                            text.setCaretOffset(c[0]);
                            int line = text.getLineAtOffset(c[0]);
                            text.setTopIndex(Math.max(0, line - 1));
                        });
    }

    /** Lights up these places of the source, and brings the first into sight if asked to. */
    void light(List<Span> spans, boolean reveal) {
        lit = List.copyOf(spans);
        restyle();
        if (reveal && !spans.isEmpty()) {
            page.flatMap(p -> p.characters(spans.get(0)))
                    .ifPresent(
                            c ->
                                    silently(
                                            () -> {
                                                text.setSelection(c[0]);
                                                text.showSelection();
                                            }));
        }
    }

    /** Returns the places that are lit up. */
    List<Span> lit() {
        return lit;
    }

    private void silently(Runnable action) {
        quiet = true;
        try {
            action.run();
        } finally {
            quiet = false;
        }
    }

    private void restyle() {
        page.ifPresent(p -> text.setStyleRanges(new PageStyles(p, ink).ranges(lit)));
        text.setSelectionBackground(ink.colour(Ink.Use.LIT));
        text.setSelectionForeground(ink.colour(Ink.Use.INK));
    }

    private void hover(Event event) {
        int offset = text.getOffsetAtPoint(new Point(event.x, event.y));
        Optional<MarkedPage.Mark> mark = offset < 0 ? Optional.empty() : at(offset);
        text.setCursor(
                text.getDisplay()
                        .getSystemCursor(mark.isPresent() ? SWT.CURSOR_HAND : SWT.CURSOR_IBEAM));
        mark.ifPresent(met);
        text.setToolTipText(putRight(offset).map(PageText::words).orElse(null));
    }

    private Optional<WordCorrection> putRight(int offset) {
        boolean on = offset >= 0 && offset < text.getCharCount();
        return on ? page.flatMap(p -> p.putRight(p.span(offset, offset + 1))) : Optional.empty();
    }

    /** Says what words were put right as, by whom and when. */
    static String words(WordCorrection right) {
        String by = right.decision().by().isBlank() ? "" : " by " + right.decision().by();
        return "Put right as “"
                + right.reads()
                + "”"
                + by
                + ", "
                + right.decision().at().split("T")[0];
    }

    /** Returns the word at the caret, without its punctuation. */
    Optional<Span> wordAtCaret() {
        String words = text.getText();
        int from = text.getCaretOffset();
        int to = from;
        while (from > 0 && Character.isLetterOrDigit(words.charAt(from - 1))) {
            from--;
        }
        while (to < words.length() && Character.isLetterOrDigit(words.charAt(to))) {
            to++;
        }
        int start = from;
        int end = to;
        return from < to ? page.map(p -> p.span(start, end)) : Optional.empty();
    }

    private void click(Event event) {
        int offset = text.getOffsetAtPoint(new Point(event.x, event.y));
        if (offset >= 0 && text.getSelectionCount() == 0) {
            at(offset).ifPresent(opened);
        }
    }

    private void meet(int offset) {
        if (!quiet) {
            at(offset).ifPresent(met);
            putRight(offset).ifPresent(told);
        }
    }

    private void key(Event event) {
        if (event.character == SWT.CR && text.getSelectionCount() > 0) {
            chosen.run();
        } else if (event.character == SWT.CR) {
            at(text.getCaretOffset()).ifPresent(opened);
        } else if ((event.stateMask & SWT.MOD1) != 0 && event.keyCode == SWT.ARROW_DOWN) {
            step(1);
        } else if ((event.stateMask & SWT.MOD1) != 0 && event.keyCode == SWT.ARROW_UP) {
            step(-1);
        }
    }

    /** Moves the caret to the next or the previous mark. */
    private void step(int direction) {
        int caret = text.getCaretOffset();
        List<Integer> places =
                new ArrayList<>(
                        page.map(MarkedPage::marks).orElse(List.of()).stream()
                                .map(MarkedPage.Mark::from)
                                .distinct()
                                .sorted()
                                .toList());
        Optional<Integer> next =
                direction > 0
                        ? places.stream().filter(p -> p > caret).findFirst()
                        : places.reversed().stream().filter(p -> p < caret).findFirst();
        next.ifPresent(text::setCaretOffset);
        text.showSelection();
    }

    private Optional<MarkedPage.Mark> at(int offset) {
        List<MarkedPage.Mark> here =
                page.map(MarkedPage::marks).orElse(List.of()).stream()
                        .filter(m -> m.from() <= offset && offset < m.to())
                        .toList();
        return here.stream()
                .filter(m -> m.line() >= 0)
                .findFirst()
                .or(() -> here.stream().findFirst());
    }
}
