package org.stillroom.workbench.library;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.stillroom.inquiry.Study;
import org.stillroom.workbench.Lane;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Signals;
import org.stillroom.workbench.Topics;
import org.stillroom.workbench.Work;
import org.stillroom.workbench.widgets.Names;
import org.stillroom.workbench.widgets.Sheet;

/** The open library as a tree by source, by drink or by decade; typing narrows it down. */
public final class LibraryPart {
    private final MPart part;
    private final Signals signals;
    private static final String KEPT = "arrangement";

    private final OpenLibrary library;
    private final Navigator navigator;
    private final Lane arranging;
    private final Map<Arrangement, Button> buttons = new EnumMap<>(Arrangement.class);
    private Arrangement arrangement = Arrangement.SOURCE;
    private List<Node> roots = List.of();
    private Label title;
    private Text filter;
    private NodeTree tree;

    /** Makes an empty tree. */
    @Inject
    public LibraryPart(
            MPart part, Signals signals, OpenLibrary library, Navigator navigator, Work work) {
        this.part = part;
        this.signals = signals;
        this.library = library;
        this.navigator = navigator;
        this.arranging = work.lane("Arranging the library");
    }

    /** Lays out the choice of arrangement, the filter and the tree. */
    @PostConstruct
    void create(Composite owner) {
        Composite parent = Sheet.on(owner);
        signals.on(Topics.OPENED, String.class, parent, this::opened);
        GridLayoutFactory.fillDefaults().margins(8, 8).spacing(0, 6).applyTo(parent);
        title = new Label(parent, SWT.WRAP);
        title.setData("org.eclipse.e4.ui.css.CssClassName", "Heading");
        title.setText("No library is open");
        GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).applyTo(title);
        createButtons(parent);
        filter = new Text(parent, SWT.SINGLE | SWT.BORDER | SWT.SEARCH | SWT.ICON_CANCEL);
        filter.setMessage("Type to narrow down");
        Names.give(filter, "Narrow the library down");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
        tree = new NodeTree(parent);
        tree.onOpen(this::open);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(tree.control());
        filter.addListener(SWT.Modify, e -> narrow());
        filter.addListener(SWT.KeyDown, this::key);
        String kept = part.getPersistedState().get(KEPT);
        choose(kept == null ? Arrangement.SOURCE : Arrangement.valueOf(kept));
    }

    private void createButtons(Composite parent) {
        Composite row = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(4).spacing(6, 0).applyTo(row);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        Label by = new Label(row, SWT.NONE);
        by.setText("By");
        for (Arrangement each : Arrangement.values()) {
            Button button = new Button(row, SWT.RADIO);
            button.setText(each.words());
            button.setData("org.eclipse.e4.ui.css.CssClassName", "Plain");
            Names.give(button, "By " + each.words().toLowerCase(Locale.ROOT));
            button.addListener(
                    SWT.Selection,
                    e -> {
                        if (button.getSelection()) {
                            choose(each);
                        }
                    });
            buttons.put(each, button);
        }
    }

    private void choose(Arrangement next) {
        arrangement = next;
        part.getPersistedState().put(KEPT, next.name());
        buttons.forEach((each, button) -> button.setSelection(each == next));
        library.study().ifPresent(this::arrange);
    }

    private void arrange(Study study) {
        Arrangement wanted = arrangement;
        title.setText(study.title().replace("&", "&&"));
        title.setToolTipText(study.library().root().toString());
        title.getParent().layout();
        arranging.run(
                progress -> wanted.arrange(study, progress),
                nodes -> {
                    roots = nodes;
                    narrow();
                });
    }

    private void narrow() {
        String words = filter.getText().strip().toLowerCase(Locale.ROOT);
        if (words.isEmpty()) {
            tree.show(roots, false);
            return;
        }
        List<Node> all = roots;
        arranging.run(
                progress -> all.stream().flatMap(n -> n.filtered(words).stream()).toList(),
                nodes -> tree.show(nodes, true));
    }

    private void open(Node node) {
        switch (node.kind()) {
            case SOURCE, RECIPE -> navigator.page(node.target());
            case DRINK -> navigator.drink(node.target());
            case DECADE -> tree.toggle(node);
        }
    }

    private void key(Event event) {
        if (event.keyCode == SWT.ARROW_DOWN) {
            tree.control().setFocus();
        } else if (event.keyCode == SWT.ESC) {
            filter.setText("");
        }
    }

    /** Shows the library that was opened or read again. */
    private void opened(String folder) {
        if (tree != null) {
            library.study().ifPresent(this::arrange);
        }
    }

    /** Puts the keyboard into the tree. */
    @Focus
    void focus() {
        tree.control().setFocus();
    }

    /** Drops what is still being arranged. */
    @PreDestroy
    void close() {
        arranging.close();
    }
}
