package org.stillroom.workbench.trace;

import jakarta.annotation.PostConstruct;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.stillroom.inquiry.Figure;
import org.stillroom.inquiry.Study;
import org.stillroom.lineage.Descent;
import org.stillroom.lineage.Drink;
import org.stillroom.lineage.Lineage;
import org.stillroom.model.progress.Progress;
import org.stillroom.workbench.Explains;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.widgets.DataTable;
import org.stillroom.workbench.widgets.Names;
import org.stillroom.workbench.widgets.Sheet;

/** The versions of a drink in order of time, who took it from whom, and the figure of it. */
public final class VersionsPart extends DrinkPart<Lineage> implements Explains {
    private static final int MOST_NAMES = 2;

    private DataTable versions;
    private DataTable parents;
    private StyledText why;
    private FigurePane figure;

    /** Makes a part that traces nothing yet. */
    @Inject
    public VersionsPart(Bench bench) {
        super(bench, "Tracing the drink");
    }

    /** Lays out the time line and the possible parents above, the figure below. */
    @PostConstruct
    void create(Composite owner) {
        Composite parent = Sheet.on(owner);
        createHead(parent);
        SashForm halves = new SashForm(parent, SWT.VERTICAL);
        halves.setSashWidth(1);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(halves);
        SashForm tables = new SashForm(halves, SWT.HORIZONTAL);
        tables.setSashWidth(1);
        versions = new DataTable(tables, "Versions in order of time", LineageRows.VERSIONS);
        versions.onSelect(row -> row.ifPresent(r -> rank(r.target(Descent.class))));
        versions.onOpen(row -> navigator().page(row.target(Descent.class).version().id()));
        versions.offer(
                "Open the page\tEnter",
                row -> navigator().page(row.target(Descent.class).version().id()));
        versions.offer(
                "Explain the amounts\tCtrl+E", row -> reason().ifPresent(navigator()::explain));
        createParents(tables);
        tables.setWeights(64, 36);
        figure = figure(halves);
        halves.setWeights(45, 55);
        trace();
    }

    private void createParents(Composite place) {
        SashForm side = new SashForm(place, SWT.VERTICAL);
        side.setSashWidth(1);
        parents = new DataTable(side, "Possible parents", LineageRows.PARENTS);
        parents.onOpen(row -> navigator().page(row.target(String.class)));
        why = new StyledText(side, SWT.READ_ONLY | SWT.WRAP | SWT.MULTI | SWT.V_SCROLL);
        why.setMargins(12, 8, 12, 8);
        why.setLineSpacing(3);
        why.setAlwaysShowScrollBars(false);
        Names.give(why, "What speaks for and against");
        side.setWeights(46, 54);
    }

    @Override
    Lineage work(Study study, Drink drink, Progress progress) {
        return study.lineage(drink, progress);
    }

    @Override
    void show(Drink drink, Lineage lineage) {
        versions.rows(lineage.descents().stream().map(LineageRows::version).toList());
        versions.select(0);
        parents.rows(List.of());
        why.setText("");
        versions.selection().ifPresent(r -> rank(r.target(Descent.class)));
        figure.show(new Figure.LineageFigure(lineage), "lineage");
    }

    @Override
    String summary(Drink drink, Lineage lineage) {
        long lines = lineage.roots().values().stream().distinct().count();
        String also = also(drink);
        return drink.versions().size()
                + (drink.versions().size() == 1 ? " version" : " versions")
                + " in "
                + lines
                + (lines == 1 ? " line of copies" : " lines of copies")
                + (also.isEmpty() ? "" : "; also called " + also);
    }

    /** Returns a few of a drink's other names; names that differ only in capitals are one. */
    private static String also(Drink drink) {
        Map<String, String> others = new LinkedHashMap<>();
        drink.names().forEach(n -> others.putIfAbsent(n.toLowerCase(Locale.ROOT), n));
        others.remove(drink.name().toLowerCase(Locale.ROOT));
        String some = others.values().stream().limit(MOST_NAMES).collect(Collectors.joining(", "));
        int more = others.size() - MOST_NAMES;
        return more > 0 ? some + " and " + more + " more" : some;
    }

    @Override
    public Optional<Navigator.Reason> reason() {
        return versions.selection()
                .map(r -> r.target(Descent.class).version())
                .flatMap(this::whole);
    }

    private void rank(Descent descent) {
        parents.rows(LineageRows.parents(descent));
        why.setText(LineageRows.why(descent));
    }

    /** Puts the keyboard into the time line. */
    @Focus
    void focus() {
        versions.control().setFocus();
    }
}
