package org.stillroom.workbench.trace;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.BookStudy;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.Figure;
import org.stillroom.inquiry.Study;
import org.stillroom.inquiry.WordAnswers;
import org.stillroom.measures.MeasureTable;
import org.stillroom.measures.WordAccount;
import org.stillroom.measures.knowledge.MeasureWord;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Source;
import org.stillroom.workbench.Explains;
import org.stillroom.workbench.Lane;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Signals;
import org.stillroom.workbench.Topics;
import org.stillroom.workbench.Work;
import org.stillroom.workbench.widgets.DataTable;
import org.stillroom.workbench.widgets.FileChooser;
import org.stillroom.workbench.widgets.Names;
import org.stillroom.workbench.widgets.Sheet;

/** A word of measure across time and place: who says what, as a picture and as a table. */
public final class MeasuresPart implements Explains {
    private static final List<DataTable.Column> COLUMNS =
            List.of(
                    DataTable.Column.figures("No.", 8),
                    DataTable.Column.words("Source", 25),
                    DataTable.Column.figures("Amount", 21),
                    DataTable.Column.figures("Weight", 12),
                    DataTable.Column.words("Date", 15),
                    DataTable.Column.words("Place", 20),
                    DataTable.Column.words("Trade", 14),
                    DataTable.Column.words("How it is known", 28));

    /** Which cells of the table behind the figure stand in which column: what counts comes first. */
    private static final List<Integer> ORDER = List.of(0, 1, 5, 6, 2, 3, 4, 7);

    private final Signals signals;
    private final OpenLibrary library;
    private final Navigator navigator;
    private final Work work;
    private final IThemeEngine themes;
    private final FileChooser files;
    private final Lane asking;
    private final LastWord last = new LastWord();
    private Optional<Arguments> asked = Optional.empty();
    private Optional<WordAccount> shown = Optional.empty();
    private WordForm form;
    private Label meaning;
    private Label disagreement;
    private FigurePane figure;
    private DataTable statements;
    private StyledText why;

    /** What is said of a word, and the words that could be asked for. */
    private record Found(
            WordAccount account,
            Block.Table table,
            List<String> words,
            List<WordForm.Book> books) {}

    /** Makes a part that explores nothing yet. */
    @Inject
    public MeasuresPart(
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
        this.asking = work.lane("Looking the word up");
    }

    /** Lays out the question above, the picture to the left, table and statement to the right. */
    @PostConstruct
    void create(Composite owner) {
        Composite parent = Sheet.on(owner);
        signals.on(Topics.THEME, String.class, parent, id -> figure.redraw());
        signals.on(Topics.OPENED, String.class, parent, folder -> ask());
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        form = new WordForm(parent, this::ask);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(form.control());
        meaning = sentence(parent, "Plain");
        disagreement = sentence(parent, "Quiet");
        SashForm sides = new SashForm(parent, SWT.HORIZONTAL);
        sides.setSashWidth(1);
        GridDataFactory.fillDefaults().grab(true, true).indent(0, 8).applyTo(sides);
        figure = new FigurePane(sides, work, themes, files);
        SashForm side = new SashForm(sides, SWT.VERTICAL);
        side.setSashWidth(1);
        createTable(side);
        why = new StyledText(side, SWT.READ_ONLY | SWT.WRAP | SWT.MULTI | SWT.V_SCROLL);
        why.setMargins(14, 8, 14, 8);
        why.setLineSpacing(3);
        why.setAlwaysShowScrollBars(false);
        Names.give(why, "The statement and its source");
        side.setWeights(64, 36);
        sides.setWeights(56, 44);
        form.fill(asked.orElseGet(last::get));
        ask();
    }

    private static Label sentence(Composite parent, String style) {
        Label label = new Label(parent, SWT.WRAP);
        label.setData("org.eclipse.e4.ui.css.CssClassName", style);
        GridDataFactory.fillDefaults()
                .grab(true, false)
                .hint(300, SWT.DEFAULT)
                .indent(16, 0)
                .applyTo(label);
        return label;
    }

    private void createTable(Composite side) {
        statements = new DataTable(side, "Who says what", COLUMNS);
        statements.onSelect(row -> row.ifPresent(r -> tell(r.target(Explanation.class))));
        statements.onOpen(row -> explain());
        statements.offer("Explain what the word held\tEnter", row -> explain());
    }

    /** Explores the word that was asked for. */
    @Inject
    @org.eclipse.e4.core.di.annotations.Optional
    void explore(@Named(Navigator.MEASURE) Arguments word) {
        asked = Optional.of(word);
        if (form != null && !form.control().isDisposed()) {
            form.fill(word);
            ask();
        }
    }

    private void ask() {
        Arguments arguments = form.arguments();
        library.desk()
                .ifPresentOrElse(
                        desk ->
                                asking.run(
                                        progress -> find(desk, arguments, progress),
                                        found -> show(found, arguments),
                                        this::refuse),
                        () -> refuse("No library is open. Choose a folder with Ctrl+O."));
    }

    private static Found find(Desk desk, Arguments arguments, Progress progress) {
        Study study = desk.study(progress);
        Optional<BookStudy> book = arguments.text("source").flatMap(study::book);
        MeasureTable table =
                book.map(b -> b.table(study.knowledge()))
                        .orElseGet(() -> desk.knowledge().measures());
        Arguments asked = book.map(b -> inItsPlace(arguments, b.source())).orElse(arguments);
        List<WordForm.Book> books =
                study.books().stream()
                        .filter(b -> !b.reading().ownMeasures().isEmpty())
                        .map(b -> new WordForm.Book(b.source().id(), b.source().shortName()))
                        .toList();
        WordAccount account = WordAnswers.account(table, asked);
        List<String> words =
                table.words().all().stream()
                        .filter(w -> w.dimension().isPresent())
                        .map(MeasureWord::word)
                        .sorted()
                        .toList();
        return new Found(account, WordAnswers.table(account), words, books);
    }

    /** A book speaks of its own place and date unless others are asked for. */
    private static Arguments inItsPlace(Arguments asked, Source book) {
        Bibliography b = book.bibliography();
        Arguments there = asked;
        if (asked.text("place").isEmpty() && b.place().isPresent()) {
            there = there.with("place", b.place().get().toText());
        }
        if (asked.text("date").isEmpty() && b.date().isPresent()) {
            there = there.with("date", b.date().get().toText());
        }
        return there;
    }

    private void show(Found found, Arguments arguments) {
        WordAccount account = found.account();
        shown = Optional.of(account);
        last.set(arguments);
        form.offer(found.words());
        form.books(found.books());
        say(account.meaning().reason(), account.disagreement());
        List<DataTable.Row> rows = new ArrayList<>();
        for (int i = 0; i < found.table().rows().size(); i++) {
            List<String> cells = found.table().rows().get(i);
            List<String> ordered = ORDER.stream().map(cells::get).toList();
            rows.add(new DataTable.Row(ordered, found.table().whys().get(i)));
        }
        statements.rows(rows);
        statements.select(0);
        statements
                .selection()
                .ifPresentOrElse(r -> tell(r.target(Explanation.class)), () -> why.setText(""));
        figure.show(new Figure.MeasureFigure(account), "word");
    }

    /** Writes a statement out: what it says, where it was published, how much it counts and why. */
    private void tell(Explanation statement) {
        StringBuilder words = new StringBuilder(statement.statement());
        for (Explanation because : statement.because()) {
            words.append("\n\n").append(because.statement());
            because.source()
                    .ifPresent(
                            c ->
                                    words.append("\nPublished in: ")
                                            .append(c.work())
                                            .append(" (")
                                            .append(c.status().words())
                                            .append(")"));
        }
        why.setText(words.toString());
    }

    private void refuse(String words) {
        shown = Optional.empty();
        say(words, "");
        statements.rows(List.of());
        why.setText("");
        figure.clear();
    }

    private void say(String head, String under) {
        meaning.setText(head.replace("&", "&&"));
        disagreement.setText(head.equals(under) ? "" : under.replace("&", "&&"));
        meaning.getParent().layout(true, true);
    }

    @Override
    public Optional<Navigator.Reason> reason() {
        return shown.map(
                a -> new Navigator.Reason(a.word(), a.meaning().explanation(), Optional.empty()));
    }

    private void explain() {
        reason().ifPresent(navigator::explain);
    }

    /** Puts the keyboard into the word. */
    @Focus
    void focus() {
        form.focus();
    }

    /** Drops what is still being looked up. */
    @PreDestroy
    void close() {
        asking.close();
    }
}
