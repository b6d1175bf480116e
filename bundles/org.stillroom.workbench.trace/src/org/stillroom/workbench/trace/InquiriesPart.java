package org.stillroom.workbench.trace;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.e4.core.di.extensions.Service;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.workbench.Lane;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Signals;
import org.stillroom.workbench.Topics;
import org.stillroom.workbench.Work;
import org.stillroom.workbench.widgets.DataTable;
import org.stillroom.workbench.widgets.FileChooser;
import org.stillroom.workbench.widgets.Names;

/** Every question that is registered: a list, a form for the one chosen, and its answer. */
public final class InquiriesPart {
    private final Signals signals;
    private final OpenLibrary library;
    private final Navigator navigator;
    private final Work work;
    private final IThemeEngine themes;
    private final FileChooser files;
    private final Lane asking;
    private final Map<String, String> known = new HashMap<>();
    private List<Inquiry> inquiries = List.of();
    private Optional<InquiryForm> form = Optional.empty();
    private DataTable list;
    private Composite formPlace;
    private Button ask;
    private AnswerPane answer;

    /** Makes an empty list. */
    @Inject
    public InquiriesPart(
            Signals signals,
            OpenLibrary library,
            Navigator navigator,
            Work work,
            IThemeEngine themes,
            FileChooser files) {
        this.files = files;
        this.signals = signals;
        this.library = library;
        this.navigator = navigator;
        this.work = work;
        this.themes = themes;
        this.asking = work.lane("Asking");
    }

    /** Lays out the list to the left, form and answer to the right. */
    @PostConstruct
    void create(Composite parent) {
        SashForm sides = new SashForm(parent, SWT.HORIZONTAL);
        sides.setSashWidth(1);
        signals.on(Topics.THEME, String.class, sides, this::theme);
        list =
                new DataTable(
                        sides,
                        "Inquiries",
                        List.of(
                                DataTable.Column.words("Inquiry", 26),
                                DataTable.Column.words("Answers", 74)));
        list.onSelect(row -> row.ifPresent(r -> choose(r.target(Inquiry.class))));
        list.onOpen(row -> form.ifPresent(InquiryForm::focus));
        Composite side = new Composite(sides, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(side);
        formPlace = new Composite(side, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(formPlace);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(formPlace);
        createAsk(side);
        answer = new AnswerPane(side, work, themes, files, navigator);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(answer.control());
        sides.setWeights(33, 67);
        fill();
    }

    private void createAsk(Composite side) {
        ask = new Button(side, SWT.PUSH);
        ask.setText("Ask");
        Names.give(ask, "Ask");
        ask.addListener(SWT.Selection, e -> ask());
        GridDataFactory.fillDefaults()
                .align(SWT.BEGINNING, SWT.CENTER)
                .indent(16, 0)
                .hint(120, SWT.DEFAULT)
                .applyTo(ask);
    }

    /** Shows the inquiries that are registered, now and whenever one comes or goes. */
    @Inject
    void registered(@Service List<Inquiry> services) {
        inquiries = services.stream().sorted(Comparator.comparing(Inquiry::name)).toList();
        if (list != null && !list.control().isDisposed()) {
            Display display = list.control().getDisplay();
            display.asyncExec(this::fill);
        }
    }

    private void fill() {
        if (list.control().isDisposed()) {
            return;
        }
        Optional<String> before = list.selection().map(r -> r.target(Inquiry.class).name());
        list.rows(
                inquiries.stream()
                        .map(i -> new DataTable.Row(List.of(i.name(), i.summary()), i))
                        .toList());
        List<String> names = inquiries.stream().map(Inquiry::name).toList();
        list.select(Math.max(0, before.map(names::indexOf).orElse(0)));
        if (form.isEmpty()) {
            list.selection().ifPresent(r -> choose(r.target(Inquiry.class)));
        }
    }

    private void choose(Inquiry inquiry) {
        form.ifPresent(f -> f.control().dispose());
        InquiryForm next = new InquiryForm(formPlace, inquiry, known, this::ask);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(next.control());
        form = Optional.of(next);
        formPlace.getParent().layout(true, true);
    }

    private void ask() {
        Optional<Inquiry> inquiry = list.selection().map(r -> r.target(Inquiry.class));
        if (inquiry.isEmpty() || form.isEmpty()) {
            return;
        }
        Arguments arguments = form.get().arguments();
        library.desk()
                .ifPresentOrElse(
                        desk ->
                                asking.run(
                                        progress -> inquiry.get().answer(desk, arguments, progress),
                                        answer::show,
                                        answer::refuse),
                        () -> answer.refuse("No library is open. Choose a folder with Ctrl+O."));
    }

    /** Proposes the drink that is traced wherever an inquiry wants one. */
    @Inject
    @org.eclipse.e4.core.di.annotations.Optional
    void traced(@Named(Navigator.DRINK) String id) {
        library.study()
                .ifPresent(
                        study ->
                                asking.run(
                                        progress -> study.drinks(progress).byId(id),
                                        drink ->
                                                drink.ifPresent(
                                                        d -> known.put("drink", d.name()))));
    }

    /** Draws figures in the colours of the new theme. */
    private void theme(String id) {
        Optional.ofNullable(answer).ifPresent(AnswerPane::theme);
    }

    /** Puts the keyboard into the list. */
    @Focus
    void focus() {
        list.control().setFocus();
    }

    /** Drops what is still being asked. */
    @PreDestroy
    void close() {
        asking.close();
    }
}
