package org.stillroom.workbench.shell;

import jakarta.inject.Inject;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.equinox.app.IApplicationContext;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Work;

/** Finds the library to start with: the one asked for, else the last one, else the example. */
public final class FirstLibrary {
    /** The argument of the command line that names a library. */
    static final String ARGUMENT = "-library";

    private final OpenLibrary library;
    private final Settings settings;
    private final Work work;
    private final Optional<IApplicationContext> start;

    /** Makes a finder that opens what it finds. */
    @Inject
    public FirstLibrary(
            OpenLibrary library,
            Settings settings,
            Work work,
            @org.eclipse.e4.core.di.annotations.Optional IApplicationContext start) {
        this.library = library;
        this.settings = settings;
        this.work = work;
        this.start = Optional.ofNullable(start);
    }

    /** Opens the library, or says how to open one. */
    public void open() {
        asked().or(this::last).ifPresentOrElse(library::open, this::example);
    }

    private void example() {
        if (library.hasExample()) {
            library.openExample();
        } else {
            work.say("No library is open. Choose a folder with Ctrl+O.");
        }
    }

    private Optional<Path> last() {
        // a library that lies inside the program would be replaced together with it
        return settings.library()
                .filter(Files::isDirectory)
                .filter(folder -> !library.isShipped(folder));
    }

    private Optional<Path> asked() {
        String[] arguments =
                start.map(s -> s.getArguments().get(IApplicationContext.APPLICATION_ARGS))
                        .map(String[].class::cast)
                        .orElse(new String[0]);
        for (int i = 0; i + 1 < arguments.length; i++) {
            if (arguments[i].equals(ARGUMENT)) {
                return Optional.of(Path.of(arguments[i + 1]));
            }
        }
        return Optional.empty();
    }
}
