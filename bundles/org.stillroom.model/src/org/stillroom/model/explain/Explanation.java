package org.stillroom.model.explain;

import java.util.List;
import java.util.Optional;

/**
 * One statement and the statements that it rests on.
 *
 * @param statement a sentence for the reader
 * @param because what it rests on, in order of importance
 * @param source where it was published, if it was
 */
public record Explanation(String statement, List<Explanation> because, Optional<Citation> source) {

    /** Keeps the reasons as an unchangeable list. */
    public Explanation {
        because = List.copyOf(because);
    }

    /** Returns a statement that rests on these. */
    public static Explanation of(String statement, Explanation... because) {
        return new Explanation(statement, List.of(because), Optional.empty());
    }

    /** Returns a statement that rests on these. */
    public static Explanation of(String statement, List<Explanation> because) {
        return new Explanation(statement, because, Optional.empty());
    }

    /** Returns a statement that was published. */
    public static Explanation cited(String statement, Citation source) {
        return new Explanation(statement, List.of(), Optional.of(source));
    }

    /** Returns the tree as indented lines, two blanks a level. */
    public String toText() {
        StringBuilder out = new StringBuilder();
        write(out, 0);
        return out.toString();
    }

    private void write(StringBuilder out, int level) {
        out.append("  ".repeat(level)).append(statement);
        source.ifPresent(
                c ->
                        out.append(" [")
                                .append(c.work())
                                .append("; ")
                                .append(c.status().words())
                                .append(']'));
        out.append('\n');
        because.forEach(e -> e.write(out, level + 1));
    }
}
