package org.stillroom.workbench.widgets;

import java.util.function.BooleanSupplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.stillroom.model.explain.Explanation;

/**
 * Shows an explanation as a tree: a statement, and under it what it rests on.
 *
 * <p>Beside the tree stands the whole of the selected statement with who published it.
 */
public final class ReasonTree {
    private final SashForm sides;
    private final Tree tree;
    private final StyledText whole;

    /** Makes an empty tree. */
    public ReasonTree(Composite parent) {
        sides = new SashForm(parent, SWT.HORIZONTAL);
        sides.setSashWidth(1);
        tree = new Tree(sides, SWT.FULL_SELECTION | SWT.SINGLE);
        Names.give(tree, "Explanation");
        tree.addListener(SWT.Selection, e -> write((Explanation) e.item.getData()));
        whole = new StyledText(sides, SWT.READ_ONLY | SWT.WRAP | SWT.MULTI | SWT.V_SCROLL);
        whole.setMargins(14, 8, 14, 8);
        whole.setLineSpacing(3);
        whole.setAlwaysShowScrollBars(false);
        Names.give(whole, "The whole statement and its source");
        sides.setWeights(62, 38);
    }

    /** Returns the widget. */
    public Control control() {
        return sides;
    }

    /** Offers an action in the tree's context menu while it can be taken. */
    public void offer(String words, BooleanSupplier possible, Runnable action) {
        Menu menu = new Menu(tree);
        tree.setMenu(menu);
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(words);
        item.addListener(SWT.Selection, e -> action.run());
        menu.addListener(SWT.Show, e -> item.setEnabled(possible.getAsBoolean()));
    }

    /** Puts the keyboard into the tree. */
    public void focus() {
        tree.setFocus();
    }

    /** Shows an explanation, the first three levels open. */
    public void show(Explanation explanation) {
        tree.setRedraw(false);
        tree.removeAll();
        fill(new TreeItem(tree, SWT.NONE), explanation);
        expand(tree.getItems(), 3);
        tree.setRedraw(true);
        if (tree.getItemCount() > 0) {
            tree.setSelection(tree.getItem(0));
            write(explanation);
        }
    }

    private void write(Explanation explanation) {
        StringBuilder words = new StringBuilder(explanation.statement());
        explanation
                .source()
                .ifPresent(
                        s ->
                                words.append("\n\nPublished in: ")
                                        .append(s.work())
                                        .append("\nHow it is known: ")
                                        .append(s.status().words()));
        whole.setText(words.toString());
    }

    /** Shows nothing. */
    public void clear() {
        tree.removeAll();
        whole.setText("");
    }

    /** Opens from the top down: an item whose parent is closed cannot be opened. */
    private static void expand(TreeItem[] items, int levels) {
        for (TreeItem item : items) {
            if (levels > 0) {
                item.setExpanded(true);
                expand(item.getItems(), levels - 1);
            }
        }
    }

    private void fill(TreeItem item, Explanation explanation) {
        String source = explanation.source().map(s -> "  [" + s.work() + "]").orElse("");
        item.setText(explanation.statement() + source);
        item.setData(explanation);
        for (Explanation reason : explanation.because()) {
            fill(new TreeItem(item, SWT.NONE), reason);
        }
    }
}
