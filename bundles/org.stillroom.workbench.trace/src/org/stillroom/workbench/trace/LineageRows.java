package org.stillroom.workbench.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stillroom.lineage.Candidate;
import org.stillroom.lineage.Descent;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.spec.Version;
import org.stillroom.workbench.widgets.DataTable;

/** Puts a lineage into the rows of tables. */
final class LineageRows {
    /** The columns of the time line. */
    static final List<DataTable.Column> VERSIONS =
            List.of(
                    DataTable.Column.words("Date", 14),
                    DataTable.Column.words("Source", 20),
                    DataTable.Column.words("Place", 16),
                    DataTable.Column.words("Called", 22),
                    DataTable.Column.words("Descent", 28));

    /** The columns of the possible parents. */
    static final List<DataTable.Column> PARENTS =
            List.of(
                    DataTable.Column.words("Possible parent", 40),
                    DataTable.Column.figures("Support", 16),
                    DataTable.Column.figures("Edits", 12));

    private LineageRows() {}

    static DataTable.Row version(Descent descent) {
        Version version = descent.version();
        Bibliography b = version.source().bibliography();
        return new DataTable.Row(
                List.of(
                        b.date().map(d -> d.toText()).orElse("undated"),
                        b.author().orElse(b.title()),
                        b.place().map(p -> p.toText()).orElse("unknown"),
                        version.witness().title(),
                        descent(descent)),
                descent);
    }

    private static String descent(Descent descent) {
        String names =
                switch (descent.standing()) {
                    case TIED ->
                            String.join(
                                    " and ",
                                    tied(descent).stream().map(c -> name(c.parent())).toList());
                    case REPRINT, TAKEN -> descent.parent().map(LineageRows::name).orElse("");
                    default -> "";
                };
        return switch (descent.standing()) {
            case TIED -> "tied: " + names;
            case REPRINT -> "reprint of " + names;
            case TAKEN -> "taken from " + names;
            default -> descent.standing().words();
        };
    }

    /** Returns the candidates that are less than one edit behind the first. */
    private static List<Candidate> tied(Descent descent) {
        List<Candidate> tied = new ArrayList<>();
        for (Candidate each : descent.candidates()) {
            boolean near = each.cost() - descent.candidates().get(0).cost() < 1;
            if (tied.size() < 2 || near) {
                tied.add(each);
            }
        }
        return tied;
    }

    private static String name(Version version) {
        return version.source().shortName();
    }

    /** Returns the possible parents of a version, likeliest first. */
    static List<DataTable.Row> parents(Descent descent) {
        return descent.candidates().stream()
                .map(
                        c ->
                                new DataTable.Row(
                                        List.of(
                                                name(c.parent()),
                                                Math.round(100 * c.support()) + " %",
                                                String.format(Locale.ROOT, "%.1f", c.cost())),
                                        c.parent().id()))
                .toList();
    }

    /** Returns the finding, how far the first is ahead, and what speaks for each candidate. */
    static String why(Descent descent) {
        StringBuilder words = new StringBuilder(descent.reason());
        if (descent.candidates().size() > 1) {
            words.append(
                    String.format(
                            Locale.ROOT,
                            " The first is %.1f edits ahead of the second%s.",
                            descent.margin(),
                            descent.margin() < 1 ? ", which is a tie" : ""));
        }
        for (Candidate candidate : descent.candidates()) {
            words.append("\n\n").append(name(candidate.parent())).append(":  ");
            words.append(candidate.nearVerbatim() ? "the same text; " : "");
            words.append(String.join("; ", candidate.reasons()));
        }
        return words.toString();
    }
}
