package org.stillroom.workbench.handlers;

import java.nio.file.Path;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;
import org.stillroom.workbench.OpenLibrary;

/** Lets the user choose a folder and opens it. */
public final class OpenLibraryHandler {
    /** Asks for the folder. */
    @Execute
    void open(Shell shell, OpenLibrary library) {
        DirectoryDialog dialog = new DirectoryDialog(shell);
        dialog.setText("Open library");
        dialog.setMessage("Choose a folder that holds your transcriptions in a folder “sources”.");
        library.folder().ifPresent(f -> dialog.setFilterPath(f.toString()));
        String chosen = dialog.open();
        if (chosen != null) {
            library.open(Path.of(chosen));
        }
    }
}
