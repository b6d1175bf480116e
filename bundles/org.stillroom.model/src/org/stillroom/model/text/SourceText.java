package org.stillroom.model.text;

import java.util.Arrays;

/**
 * The words of a source as they stand in its file, addressed by code point.
 *
 * <p>Immutable. Line ends are single line feeds: a reader of files turns other line ends into line
 * feeds before it makes a text, so that a place in the text does not depend on the system that wrote
 * the file.
 */
public final class SourceText {

    /** Code points between two entries of the sparse index. */
    private static final int STRIDE = 256;

    private final String text;
    private final int length;
    private final int[] marks;
    private final int[] lines;

    private SourceText(String text) {
        this.text = text;
        this.length = text.codePointCount(0, text.length());
        this.marks = length == text.length() ? new int[0] : marks(text, length);
        this.lines = lineStarts();
    }

    /** Returns the text of these characters. */
    public static SourceText of(String characters) {
        return new SourceText(characters.replace("\r\n", "\n").replace('\r', '\n'));
    }

    private static int[] marks(String text, int length) {
        int[] marks = new int[length / STRIDE + 1];
        int at = 0;
        for (int i = 0; i < marks.length; i++) {
            marks[i] = at;
            if (i < marks.length - 1) {
                at = text.offsetByCodePoints(at, STRIDE);
            }
        }
        return marks;
    }

    private int[] lineStarts() {
        int[] starts = new int[16];
        int count = 1;
        int point = 0;
        for (int i = 0; i < text.length(); point++) {
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            if (c == '\n') {
                if (count == starts.length) {
                    starts = Arrays.copyOf(starts, count * 2);
                }
                starts[count++] = point + 1;
            }
        }
        return Arrays.copyOf(starts, count);
    }

    /** Returns the number of code points. */
    public int length() {
        return length;
    }

    /** Returns the span of the whole text. */
    public Span span() {
        return new Span(0, length);
    }

    /** Returns the index into {@link #toString()} of a code point's place. */
    public int toIndex(int place) {
        if (place < 0 || place > length) {
            throw new IndexOutOfBoundsException(place + " is outside a text of " + length);
        }
        if (marks.length == 0) {
            return place;
        }
        return text.offsetByCodePoints(marks[place / STRIDE], place % STRIDE);
    }

    /** Returns the place of the code point that starts at, or holds, an index of {@link #toString()}. */
    public int toPlace(int index) {
        if (marks.length == 0) {
            return Math.min(index, length);
        }
        int mark = Arrays.binarySearch(marks, index);
        int from = mark >= 0 ? mark : -mark - 2;
        return from * STRIDE + text.codePointCount(marks[from], index);
    }

    /** Returns the characters inside a span. */
    public String slice(Span span) {
        return text.substring(toIndex(span.start()), toIndex(span.end()));
    }

    /** Returns the number of lines; an empty text has one. */
    public int lineCount() {
        return lines.length;
    }

    /** Returns the number of the line, from 1, that holds a place. */
    public int lineAt(int place) {
        int found = Arrays.binarySearch(lines, place);
        return found >= 0 ? found + 1 : -found - 1;
    }

    /** Returns the span of a line, from 1, without its line feed. */
    public Span line(int number) {
        int start = lines[number - 1];
        int end = number < lines.length ? lines[number] - 1 : length;
        return new Span(start, end);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SourceText that && text.equals(that.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    /** Returns the characters themselves. */
    @Override
    public String toString() {
        return text;
    }
}
