package org.stillroom.workbench.library;

import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.stillroom.workbench.widgets.Icons;
import org.stillroom.workbench.widgets.Names;

/** A tree whose lines are made when they come into sight. */
final class NodeTree {
    /** More first lines than this are not opened by themselves. */
    private static final int OPENED_AT_ONCE = 40;

    private final Tree tree;
    private final Icons icons;
    private List<Node> roots = List.of();
    private Consumer<Node> opened = node -> {};

    NodeTree(Composite parent) {
        tree = new Tree(parent, SWT.VIRTUAL | SWT.SINGLE | SWT.FULL_SELECTION);
        icons = new Icons(tree);
        Names.give(tree, "Library");
        tree.addListener(SWT.SetData, this::fill);
        tree.addListener(SWT.DefaultSelection, e -> opened.accept((Node) e.item.getData()));
    }

    Tree control() {
        return tree;
    }

    void onOpen(Consumer<Node> consumer) {
        opened = consumer;
    }

    /** Shows these lines, with what lies under them open if asked to. */
    void show(List<Node> next, boolean open) {
        roots = next;
        tree.setRedraw(false);
        tree.setItemCount(0);
        tree.setItemCount(roots.size());
        tree.clearAll(true);
        for (int i = 0; open && i < Math.min(roots.size(), OPENED_AT_ONCE); i++) {
            TreeItem item = tree.getItem(i);
            fill(item, roots.get(i));
            item.setExpanded(true);
        }
        tree.setRedraw(true);
        if (!roots.isEmpty()) {
            tree.select(tree.getItem(0));
        }
    }

    /** Opens a closed line and closes an open one. */
    void toggle(Node node) {
        for (TreeItem item : tree.getSelection()) {
            if (item.getData() == node) {
                item.setExpanded(!item.getExpanded());
            }
        }
    }

    private void fill(Event event) {
        TreeItem item = (TreeItem) event.item;
        TreeItem parent = item.getParentItem();
        List<Node> siblings = parent == null ? roots : ((Node) parent.getData()).children();
        if (event.index < siblings.size()) {
            fill(item, siblings.get(event.index));
        }
    }

    private void fill(TreeItem item, Node node) {
        item.setText(node.text());
        item.setImage(icons.get(node.kind().icon()));
        item.setData(node);
        item.setItemCount(node.children().size());
    }
}
