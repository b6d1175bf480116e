package org.stillroom.workbench.trace;

import jakarta.inject.Inject;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.eclipse.e4.core.di.annotations.Creatable;
import org.eclipse.swt.widgets.Shell;
import org.stillroom.lineage.Drink;
import org.stillroom.lineage.Drinks;
import org.stillroom.model.spec.Version;
import org.stillroom.workbench.Lane;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Work;
import org.stillroom.workbench.widgets.DataTable;
import org.stillroom.workbench.widgets.PickDialog;

/** Lets the user choose the drink to trace. */
@Creatable
public final class DrinkChooser {
    private static final List<DataTable.Column> COLUMNS =
            List.of(
                    DataTable.Column.words("Drink", 36),
                    DataTable.Column.figures("Versions", 10),
                    DataTable.Column.words("First", 24),
                    DataTable.Column.words("Also called", 30));

    private final OpenLibrary library;
    private final Navigator navigator;
    private final Lane finding;

    /** Makes a chooser among the drinks of the open library. */
    @Inject
    public DrinkChooser(OpenLibrary library, Navigator navigator, Work work) {
        this.library = library;
        this.navigator = navigator;
        this.finding = work.lane("Finding drinks");
    }

    /** Shows the drinks, those with most versions first, and traces the one chosen. */
    public void choose(Shell shell) {
        library.study()
                .ifPresent(
                        study ->
                                finding.run(
                                        progress -> rows(study.drinks(progress)),
                                        rows ->
                                                new PickDialog(
                                                                shell,
                                                                "Choose a drink",
                                                                "Trace",
                                                                COLUMNS,
                                                                rows)
                                                        .choose(String.class)
                                                        .ifPresent(navigator::drink)));
    }

    private static List<DataTable.Row> rows(Drinks drinks) {
        return drinks.drinks().stream()
                .sorted(
                        Comparator.<Drink>comparingInt(d -> -d.versions().size())
                                .thenComparing(d -> d.name().toLowerCase(Locale.ROOT)))
                .map(DrinkChooser::row)
                .toList();
    }

    private static DataTable.Row row(Drink drink) {
        List<Version> versions = drink.versions();
        String first = versions.isEmpty() ? "" : versions.get(0).source().shortName();
        String others =
                String.join(
                        ", ", drink.names().stream().filter(n -> !n.equals(drink.name())).toList());
        return new DataTable.Row(
                List.of(drink.name(), "" + versions.size(), first, others), drink.id());
    }
}
