package org.stillroom.workbench.library;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.stillroom.search.Facet;
import org.stillroom.workbench.widgets.Names;

/** How the hits are spread over ingredients, decades, places; a tick keeps to a value. */
final class FacetTree {
    private static final Set<String> OPEN_FIRST = Set.of("ingredient", "decade");
    private static final String UNDATED = "undated";

    private final Tree tree;
    private final Question question;
    private final Runnable changed;
    private final Set<String> open = new HashSet<>(OPEN_FIRST);

    FacetTree(Composite parent, Question question, Runnable changed) {
        this.question = question;
        this.changed = changed;
        tree = new Tree(parent, SWT.CHECK | SWT.SINGLE);
        Names.give(tree, "Facets");
        tree.addListener(SWT.Selection, this::selected);
        tree.addListener(
                SWT.DefaultSelection,
                e -> {
                    TreeItem item = (TreeItem) e.item;
                    item.setChecked(!item.getChecked());
                    ticked(item);
                });
        tree.addListener(SWT.Expand, e -> open.add(field((TreeItem) e.item)));
        tree.addListener(SWT.Collapse, e -> open.remove(field((TreeItem) e.item)));
    }

    Tree control() {
        return tree;
    }

    /** Shows how the hits are spread. */
    void show(List<Facet> facets) {
        tree.setRedraw(false);
        tree.removeAll();
        for (Facet facet : ordered(facets)) {
            TreeItem head = new TreeItem(tree, SWT.NONE);
            head.setText(
                    facet.field().substring(0, 1).toUpperCase(Locale.ROOT)
                            + facet.field().substring(1));
            head.setData(facet.field());
            for (Facet.Count count : facet.counts()) {
                value(head, facet.field(), count);
            }
            head.setExpanded(open.contains(facet.field()));
        }
        tree.setRedraw(true);
    }

    /** Returns the facets with decades first, because they are few, and the rest as they come. */
    private static List<Facet> ordered(List<Facet> facets) {
        return facets.stream()
                .sorted(Comparator.comparing(f -> f.field().equals("decade") ? 0 : 1))
                .toList();
    }

    private void value(TreeItem head, String field, Facet.Count count) {
        if (!count.value().equals(UNDATED)) {
            TreeItem item = new TreeItem(head, SWT.NONE);
            item.setText(count.value() + "  (" + count.hits() + ")");
            item.setData(count.value());
            boolean on = question.isTicked(field, count.value());
            item.setChecked(on);
            head.setChecked(head.getChecked() || on);
            head.setGrayed(true);
        }
    }

    private static String field(TreeItem item) {
        TreeItem parent = item.getParentItem();
        return (String) (parent == null ? item : parent).getData();
    }

    private void selected(Event event) {
        if (event.detail == SWT.CHECK) {
            ticked((TreeItem) event.item);
        }
    }

    /** A tick on a value keeps to it; taking the tick from a head takes all of its ticks away. */
    private void ticked(TreeItem item) {
        if (item.getParentItem() != null) {
            question.tick(field(item), (String) item.getData(), item.getChecked());
        } else {
            for (TreeItem value : item.getItems()) {
                question.tick(field(item), (String) value.getData(), false);
            }
        }
        changed.run();
    }
}
