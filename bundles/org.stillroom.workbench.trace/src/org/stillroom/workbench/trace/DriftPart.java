package org.stillroom.workbench.trace;

import jakarta.annotation.PostConstruct;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.stillroom.drift.Drift;
import org.stillroom.inquiry.AmountReasons;
import org.stillroom.inquiry.Figure;
import org.stillroom.inquiry.Study;
import org.stillroom.lineage.Drink;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.spec.Version;
import org.stillroom.workbench.Explains;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.widgets.DataTable;
import org.stillroom.workbench.widgets.Names;
import org.stillroom.workbench.widgets.Sheet;

/** How a drink's proportions moved: in plain words, as a chart, and as the table behind it. */
public final class DriftPart extends DrinkPart<Drift> implements Explains {
    private StyledText words;
    private Composite stack;
    private FigurePane chart;
    private Composite tablePlace;
    private Optional<DataTable> table = Optional.empty();
    private DataTable events;
    private Optional<Drift> measured = Optional.empty();

    /** Makes a part that shows nothing yet. */
    @Inject
    public DriftPart(Bench bench) {
        super(bench, "Measuring the drift");
    }

    /** Lays out chart or table to the left, words and events to the right. */
    @PostConstruct
    void create(Composite owner) {
        Composite parent = Sheet.on(owner);
        createHead(parent);
        SashForm sides = new SashForm(parent, SWT.HORIZONTAL);
        sides.setSashWidth(1);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sides);
        stack = new Composite(sides, SWT.NONE);
        stack.setLayout(new StackLayout());
        chart = figure(stack);
        tablePlace = new Composite(stack, SWT.NONE);
        tablePlace.setLayout(new org.eclipse.swt.layout.FillLayout());
        front(chart.control());
        createWords(sides);
        sides.setWeights(65, 35);
        trace();
    }

    private void createWords(Composite sides) {
        SashForm side = new SashForm(sides, SWT.VERTICAL);
        side.setSashWidth(1);
        words = new StyledText(side, SWT.READ_ONLY | SWT.WRAP | SWT.MULTI | SWT.V_SCROLL);
        words.setMargins(14, 10, 14, 8);
        words.setLineSpacing(3);
        words.setAlwaysShowScrollBars(false);
        Names.give(words, "The result in words");
        events = new DataTable(side, "What entered and what left", DriftRows.EVENTS);
        side.setWeights(58, 42);
    }

    private void front(Control control) {
        ((StackLayout) stack.getLayout()).topControl = control;
        stack.layout();
    }

    /** Shows the table in the chart's place, or the chart in the table's. */
    public void toggle() {
        boolean charted = ((StackLayout) stack.getLayout()).topControl == chart.control();
        front(charted ? tablePlace : chart.control());
        focus();
    }

    @Override
    Drift work(Study study, Drink drink, Progress progress) {
        return study.drift(drink, progress);
    }

    @Override
    void show(Drink drink, Drift drift) {
        List<String> all = new ArrayList<>(drift.words());
        drift.trends().forEach(t -> all.add(t.words()));
        drift.left().forEach(l -> all.add("Left out: " + l));
        words.setText(String.join("\n", all.stream().distinct().toList()));
        chart.show(new Figure.DriftFigure(drink.name(), drift), "drift");
        table.ifPresent(t -> t.control().dispose());
        DataTable fresh =
                new DataTable(tablePlace, "Shares of the whole", DriftRows.columns(drift));
        fresh.onOpen(row -> reason().ifPresent(navigator()::explain));
        fresh.offer("Explain the shares\tEnter", r -> reason().ifPresent(navigator()::explain));
        fresh.offer("Open the page", row -> navigator().page(row.target(String.class)));
        measured = Optional.of(drift);
        fresh.rows(DriftRows.points(drift));
        table = Optional.of(fresh);
        tablePlace.layout();
        events.rows(DriftRows.events(drift));
    }

    @Override
    public Optional<Navigator.Reason> reason() {
        return table.flatMap(DataTable::selection)
                .map(row -> row.target(String.class))
                .flatMap(id -> version(id).flatMap(v -> measured.flatMap(d -> shares(v, d))));
    }

    private static Optional<Navigator.Reason> shares(Version version, Drift drift) {
        return drift.points().stream()
                .filter(p -> p.version().equals(version.id()))
                .findFirst()
                .map(p -> AmountReasons.shares(version, drift, p))
                .map(why -> new Navigator.Reason("shares in " + version.witness().title(), why));
    }

    @Override
    String summary(Drink drink, Drift drift) {
        return drift.versions()
                + (drift.versions() == 1 ? " version, " : " versions, ")
                + drift.independent()
                + " independent; Ctrl+T shows the table behind the chart";
    }

    /** Puts the keyboard into chart or table. */
    @Focus
    void focus() {
        boolean charted = ((StackLayout) stack.getLayout()).topControl == chart.control();
        if (charted || table.isEmpty()) {
            chart.canvas().setFocus();
        } else {
            table.get().control().setFocus();
        }
    }
}
