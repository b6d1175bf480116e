package org.stillroom.model.text;

/**
 * A half-open stretch of a text, counted in Unicode code points.
 *
 * <p>Code points rather than UTF-16 units, so that a place means the same to a program in another
 * language and to a person who counts characters.
 *
 * @param start the first code point inside, 0 or more
 * @param end the first code point after it, not before {@code start}
 */
public record Span(int start, int end) implements Comparable<Span> {

    /** Refuses a negative start and an end before the start. */
    public Span {
        if (start < 0 || end < start) {
            throw new IllegalArgumentException(
                    "A span runs forward from 0, not " + start + "–" + end);
        }
    }

    /** Returns the span with these bounds. */
    public static Span of(int start, int end) {
        return new Span(start, end);
    }

    /** Returns the number of code points inside. */
    public int length() {
        return end - start;
    }

    /** Tells whether nothing is inside. */
    public boolean isEmpty() {
        return start == end;
    }

    /** Tells whether the code point at this place is inside. */
    public boolean contains(int place) {
        return place >= start && place < end;
    }

    /** Tells whether the other span lies wholly inside this one. */
    public boolean contains(Span other) {
        return other.start >= start && other.end <= end;
    }

    /** Tells whether the two share at least one code point. */
    public boolean overlaps(Span other) {
        return start < other.end && other.start < end;
    }

    /** Returns the smallest span that holds both. */
    public Span hull(Span other) {
        return new Span(Math.min(start, other.start), Math.max(end, other.end));
    }

    /** Returns the span moved by a distance, which may be negative. */
    public Span shift(int distance) {
        return new Span(start + distance, end + distance);
    }

    @Override
    public int compareTo(Span other) {
        return start != other.start
                ? Integer.compare(start, other.start)
                : Integer.compare(end, other.end);
    }

    @Override
    public String toString() {
        return start + "–" + end;
    }
}
