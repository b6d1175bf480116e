package org.stillroom.workbench.library;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.stillroom.inquiry.BookRules;
import org.stillroom.inquiry.Study;
import org.stillroom.model.progress.Progress;
import org.stillroom.workbench.Lane;
import org.stillroom.workbench.Work;
import org.stillroom.workbench.widgets.Names;

/** A quiet line on the page while a rule for its book waits to be accepted. */
final class RuleHint {
    private final Label words;
    private final Lane looking;

    RuleHint(Composite parent, Work work) {
        looking = work.lane("Looking for rules of the book");
        words = new Label(parent, SWT.NONE);
        words.setData("org.eclipse.e4.ui.css.CssClassName", "Quiet");
        Names.give(words, "Proposed rules");
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(words);
        words.setVisible(false);
    }

    /** Looks, away from the window's thread, for rules that the book of a source proposes. */
    void look(Study study, String source) {
        looking.run(progress -> proposed(study, source, progress), this::show);
    }

    private static List<BookRules.Rule> proposed(Study study, String source, Progress progress) {
        return study.books().stream()
                .filter(book -> book.source().id().equals(source))
                .flatMap(book -> BookRules.of(study, book, progress).stream())
                .filter(rule -> rule.decision().isEmpty())
                .toList();
    }

    private void show(List<BookRules.Rule> rules) {
        Optional<String> line =
                switch (rules.size()) {
                    case 0 -> Optional.empty();
                    case 1 -> {
                        String rule = rules.get(0).idiom().sentence();
                        yield Optional.of(
                                "A rule for this book is proposed: "
                                        + rule
                                        + (rule.endsWith(".") ? " " : ". ")
                                        + "Ctrl+0 shows it.");
                    }
                    default ->
                            Optional.of(
                                    rules.size()
                                            + " rules for this book are proposed. Ctrl+0 shows"
                                            + " them.");
                };
        line.ifPresent(l -> words.setText(l.replace("&", "&&")));
        words.setVisible(line.isPresent());
        ((GridData) words.getLayoutData()).exclude = line.isEmpty();
        words.getParent().getParent().layout(true, true);
    }

    void close() {
        looking.close();
    }
}
