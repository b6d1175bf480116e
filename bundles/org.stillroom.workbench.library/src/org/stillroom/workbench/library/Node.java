package org.stillroom.workbench.library;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A line of the library's tree.
 *
 * @param kind what it stands for
 * @param name its name, or what it is sorted by
 * @param detail what stands behind the name
 * @param target id of the source, drink or witness, or empty
 * @param children what lies under it
 */
record Node(Kind kind, String name, String detail, String target, List<Node> children) {
    /** What a line of the tree stands for. */
    enum Kind {
        /** A source. */
        SOURCE,
        /** A drink. */
        DRINK,
        /** Ten years. */
        DECADE,
        /** One recipe in one source. */
        RECIPE;

        /** Returns the name of its icon. */
        String icon() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    Node {
        children = List.copyOf(children);
    }

    static Node leaf(String name, String detail, String target) {
        return new Node(Kind.RECIPE, name, detail, target, List.of());
    }

    /** Returns the line in one piece. */
    String text() {
        return detail.isEmpty() ? name : name + "  ·  " + detail;
    }

    /** Returns the node with what under it holds some words, or nothing where none does. */
    Optional<Node> filtered(String words) {
        if (holds(words)) {
            return Optional.of(this);
        }
        List<Node> kept = new ArrayList<>();
        children.forEach(c -> c.filtered(words).ifPresent(kept::add));
        return kept.isEmpty()
                ? Optional.empty()
                : Optional.of(new Node(kind, name, detail, target, kept));
    }

    private boolean holds(String words) {
        return text().toLowerCase(Locale.ROOT).contains(words);
    }
}
