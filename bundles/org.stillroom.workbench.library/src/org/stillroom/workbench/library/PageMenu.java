package org.stillroom.workbench.library;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** What can be done with words of a page, beside the pointer. */
final class PageMenu {
    private PageMenu() {}

    /** Gives a control its menu. */
    static void on(Control control, PageCorrections corrections) {
        Menu menu = new Menu(control);
        item(menu, "Correct the reading…\tF2", corrections::correct);
        item(menu, "It is right\tCtrl+Shift+R", () -> corrections.line("right"));
        item(
                menu,
                "This is not part of the recipe\tCtrl+Shift+X",
                () -> corrections.line("remove"));
        item(menu, "Put the words right…\tCtrl+Shift+W", corrections::putRight);
        new MenuItem(menu, SWT.SEPARATOR);
        item(menu, "A recipe begins here\tCtrl+Shift+B", () -> corrections.cut("split"));
        item(menu, "The recipe ends here\tCtrl+Shift+E", () -> corrections.cut("end"));
        item(menu, "This is no recipe\tCtrl+Shift+N", () -> corrections.cut("not-a-recipe"));
        item(menu, "Join with the recipe before\tCtrl+Shift+J", () -> corrections.cut("join"));
        item(menu, "This is the title\tCtrl+Shift+T", () -> corrections.cut("title"));
        control.setMenu(menu);
    }

    private static void item(Menu menu, String words, Runnable action) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(words);
        item.addListener(SWT.Selection, e -> action.run());
    }
}
