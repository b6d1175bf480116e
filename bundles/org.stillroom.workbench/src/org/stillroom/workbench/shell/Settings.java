package org.stillroom.workbench.shell;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/** What the window remembers from one start to the next, beside its layout. */
public final class Settings {
    private static final String LIBRARY = "library";
    private static final String LAYOUT = "layout";

    private final IEclipsePreferences node =
            InstanceScope.INSTANCE.getNode("org.stillroom.workbench");

    /** Returns the library that was open last. */
    public Optional<Path> library() {
        return Optional.ofNullable(node.get(LIBRARY, null)).map(Path::of);
    }

    /** Remembers the library that is open. */
    public void library(Path folder) {
        node.put(LIBRARY, folder.toAbsolutePath().normalize().toString());
        save();
    }

    /** Returns the version of the application model that the kept layout was made with. */
    public Optional<String> layout() {
        return Optional.ofNullable(node.get(LAYOUT, null));
    }

    /** Remembers the version of the application model. */
    public void layout(String version) {
        node.put(LAYOUT, version);
        save();
    }

    private void save() {
        try {
            node.flush();
        } catch (BackingStoreException notKept) {
            org.eclipse.core.runtime.Platform.getLog(Settings.class)
                    .warn("The settings could not be kept", notKept);
        }
    }
}
