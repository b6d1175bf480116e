package org.stillroom.workbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;
import org.stillroom.model.explain.Explanation;

/** Shows an explanation as a tree: a statement, and under it what it rests on and who said so. */
public final class ReasonTree {
    private final Tree tree;

    /** Makes an empty tree. */
    public ReasonTree(Composite parent) {
        tree = new Tree(parent, SWT.FULL_SELECTION | SWT.SINGLE);
        tree.setHeaderVisible(true);
        Names.give(tree, "Explanation");
        column("Statement");
        column("Where it was published");
        column("How it is known");
        tree.addListener(SWT.Resize, e -> widths());
    }

    private void column(String name) {
        TreeColumn column = new TreeColumn(tree, SWT.NONE);
        column.setText(name);
    }

    private void widths() {
        int room = Math.max(300, tree.getClientArea().width);
        tree.getColumn(0).setWidth(room * 52 / 100);
        tree.getColumn(1).setWidth(room * 30 / 100);
        tree.getColumn(2).setWidth(room * 18 / 100 - 2);
    }

    /** Returns the widget. */
    public Tree control() {
        return tree;
    }

    /** Shows an explanation, the first three levels open. */
    public void show(Explanation explanation) {
        tree.setRedraw(false);
        tree.removeAll();
        fill(new TreeItem(tree, SWT.NONE), explanation, 3);
        tree.setRedraw(true);
        if (tree.getItemCount() > 0) {
            tree.setSelection(tree.getItem(0));
        }
    }

    /** Shows nothing. */
    public void clear() {
        tree.removeAll();
    }

    private void fill(TreeItem item, Explanation explanation, int open) {
        item.setText(0, explanation.statement());
        explanation.source().ifPresent(s -> {
            item.setText(1, s.work());
            item.setText(2, s.status().words());
        });
        for (Explanation reason : explanation.because()) {
            fill(new TreeItem(item, SWT.NONE), reason, open - 1);
        }
        item.setExpanded(open > 0);
    }
}
