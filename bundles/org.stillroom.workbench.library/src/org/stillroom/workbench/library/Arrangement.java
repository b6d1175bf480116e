package org.stillroom.workbench.library;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.stillroom.inquiry.BookStudy;
import org.stillroom.inquiry.Study;
import org.stillroom.lineage.Drink;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Source;
import org.stillroom.model.spec.Version;

/** The three ways in which the tree shows a library. */
enum Arrangement {
    /** Sources by date, their recipes in the order of the book. */
    SOURCE("Source") {
        @Override
        List<Node> arrange(Study study, Progress progress) {
            return study.books().stream()
                    .sorted(Comparator.comparingDouble(b -> year(b.source())))
                    .map(Arrangement::book)
                    .toList();
        }
    },

    /** Drinks by name, their versions by date. */
    DRINK("Drink") {
        @Override
        List<Node> arrange(Study study, Progress progress) {
            return study.drinks(progress).drinks().stream()
                    .sorted(Comparator.comparing(d -> d.name().toLowerCase(Locale.ROOT)))
                    .map(Arrangement::drink)
                    .toList();
        }
    },

    /** Decades, the recipes of each by date and then by title. */
    DECADE("Decade") {
        @Override
        List<Node> arrange(Study study, Progress progress) {
            Map<String, List<Version>> decades = new TreeMap<>();
            for (Version version : study.versions()) {
                decades.computeIfAbsent(decade(version.source()), d -> new ArrayList<>())
                        .add(version);
            }
            List<Node> nodes = new ArrayList<>();
            decades.forEach((decade, versions) -> nodes.add(decade(decade, versions)));
            return nodes;
        }
    };

    private static final String UNDATED = "undated";
    private final String words;

    Arrangement(String words) {
        this.words = words;
    }

    /** Returns its name for the user. */
    String words() {
        return words;
    }

    /** Returns the roots of the tree. */
    abstract List<Node> arrange(Study study, Progress progress);

    private static Node book(BookStudy book) {
        Source source = book.source();
        List<Node> recipes =
                book.versions().stream()
                        .map(v -> Node.leaf(v.witness().title(), "", v.id()))
                        .toList();
        String title = source.bibliography().title();
        return new Node(Node.Kind.SOURCE, Places.date(source), title, source.id(), recipes);
    }

    private static Node drink(Drink drink) {
        List<Node> versions =
                drink.versions().stream()
                        .map(v -> Node.leaf(v.witness().title(), v.source().shortName(), v.id()))
                        .toList();
        String size = versions.size() == 1 ? "1 version" : versions.size() + " versions";
        return new Node(Node.Kind.DRINK, drink.name(), size, drink.id(), versions);
    }

    private static Node decade(String decade, List<Version> versions) {
        List<Node> leaves =
                versions.stream()
                        .sorted(
                                Comparator.<Version>comparingDouble(v -> year(v.source()))
                                        .thenComparing(v -> v.witness().title()))
                        .map(v -> Node.leaf(v.witness().title(), v.source().shortName(), v.id()))
                        .toList();
        String size = leaves.size() == 1 ? "1 recipe" : leaves.size() + " recipes";
        String name = decade.equals(UNDATED) ? "Undated" : decade;
        return new Node(Node.Kind.DECADE, name, size, "", leaves);
    }

    private static double year(Source source) {
        return source.bibliography().date().map(d -> d.middleYear()).orElse(Double.MAX_VALUE);
    }

    private static String decade(Source source) {
        OptionalInt year =
                source.bibliography().date().map(d -> d.earliestYear()).orElse(OptionalInt.empty());
        return year.isPresent() ? Math.floorDiv(year.getAsInt(), 10) * 10 + "s" : UNDATED;
    }
}
