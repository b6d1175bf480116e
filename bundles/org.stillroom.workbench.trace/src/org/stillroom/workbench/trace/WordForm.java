package org.stillroom.workbench.trace;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.eclipse.jface.fieldassist.AutoCompleteField;
import org.eclipse.jface.fieldassist.ComboContentAdapter;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.stillroom.inquiry.Arguments;
import org.stillroom.model.source.Trade;
import org.stillroom.workbench.widgets.Names;

/** The fields of a question after a word of measure. */
final class WordForm {
    private static final String ANY = "not known";
    private static final String NO_BOOK = "no book";

    private final Composite row;
    private final Combo word;
    private final Text place;
    private final Text date;
    private final Combo trade;
    private final Combo book;
    private List<Book> books = List.of();
    private final AutoCompleteField proposals;

    /**
     * A book whose own table of measures may be asked.
     *
     * @param id the source's id
     * @param title what a reader calls it
     */
    record Book(String id, String title) {}

    /** Makes empty fields; the action is run by Enter in one of them and by the button. */
    WordForm(Composite parent, Runnable ask) {
        row = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(11).margins(16, 10).spacing(8, 0).applyTo(row);
        word = new Combo(row("Word"), SWT.DROP_DOWN);
        Names.give(word, "Word of measure");
        GridDataFactory.fillDefaults().hint(170, SWT.DEFAULT).applyTo(word);
        proposals = new AutoCompleteField(word, new ComboContentAdapter());
        place = text("Place", "Place", "a town, region or country");
        date = text("Date", "Date", "1862, 186X, 1860/1865");
        trade = new Combo(row("Trade"), SWT.DROP_DOWN | SWT.READ_ONLY);
        trade.setItems(
                Stream.concat(Stream.of(ANY), Stream.of(Trade.values()).map(Trade::word))
                        .toArray(String[]::new));
        Names.give(trade, "Trade");
        book = new Combo(row("Book"), SWT.DROP_DOWN | SWT.READ_ONLY);
        book.setItems(NO_BOOK);
        Names.give(book, "Book whose own table comes first");
        GridDataFactory.fillDefaults().hint(150, SWT.DEFAULT).applyTo(book);
        book.addListener(SWT.Selection, e -> ask.run());
        Button show = new Button(row, SWT.PUSH);
        show.setText("Show");
        Names.give(show, "Show what is said");
        show.addListener(SWT.Selection, e -> ask.run());
        word.addListener(SWT.DefaultSelection, e -> ask.run());
        word.addListener(SWT.Selection, e -> ask.run());
        place.addListener(SWT.DefaultSelection, e -> ask.run());
        date.addListener(SWT.DefaultSelection, e -> ask.run());
        trade.addListener(SWT.Selection, e -> ask.run());
    }

    private Composite row(String label) {
        Label words = new Label(row, SWT.NONE);
        words.setText(label);
        words.setData("org.eclipse.e4.ui.css.CssClassName", "Quiet");
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(words);
        return row;
    }

    private Text text(String label, String name, String example) {
        Text text = new Text(row(label), SWT.SINGLE | SWT.BORDER);
        text.setMessage(example);
        Names.give(text, name);
        GridDataFactory.fillDefaults()
                .align(SWT.FILL, SWT.CENTER)
                .grab(true, false)
                .hint(120, SWT.DEFAULT)
                .applyTo(text);
        return text;
    }

    Composite control() {
        return row;
    }

    void focus() {
        word.setFocus();
    }

    /** Offers these words in the list and while typing. */
    void offer(List<String> words) {
        if (!List.of(word.getItems()).equals(words)) {
            String typed = word.getText();
            word.setItems(words.toArray(String[]::new));
            word.setText(typed);
            proposals.setProposals(words.toArray(String[]::new));
        }
    }

    /** Offers the books that print a table of measures. */
    void books(List<Book> printed) {
        if (!books.equals(printed)) {
            String chosen = chosen().map(Book::id).orElse("");
            books = List.copyOf(printed);
            book.setItems(
                    Stream.concat(Stream.of(NO_BOOK), books.stream().map(Book::title))
                            .toArray(String[]::new));
            choose(chosen);
        }
    }

    private void choose(String id) {
        List<String> ids = books.stream().map(Book::id).toList();
        book.select(ids.indexOf(id) + 1);
    }

    private java.util.Optional<Book> chosen() {
        int index = book.getSelectionIndex() - 1;
        return index < 0 ? java.util.Optional.empty() : java.util.Optional.of(books.get(index));
    }

    /** Fills the fields. */
    void fill(Arguments asked) {
        word.setText(asked.text("word").orElse(""));
        place.setText(asked.text("place").orElse(""));
        date.setText(asked.text("date").orElse(""));
        trade.setText(asked.text("trade").orElse(ANY));
        choose(asked.text("source").orElse(""));
    }

    /** Returns what is filled in; empty fields are left out. */
    Arguments arguments() {
        Map<String, String> values = new TreeMap<>();
        put(values, "word", word.getText());
        put(values, "place", place.getText());
        put(values, "date", date.getText());
        put(values, "trade", trade.getText().equals(ANY) ? "" : trade.getText());
        chosen().ifPresent(b -> put(values, "source", b.id()));
        return new Arguments(values);
    }

    private static void put(Map<String, String> values, String name, String value) {
        if (!value.isBlank()) {
            values.put(name, value.strip());
        }
    }
}
