package org.stillroom.workbench.shell;

import jakarta.inject.Inject;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.e4.ui.workbench.IWorkbench;
import org.eclipse.e4.ui.workbench.lifecycle.PostContextCreate;

/** Looks, before the window is made, whether the kept layout still fits the application model. */
public final class LifeCycle {
    @Inject private IExtensionRegistry registry;

    /** Drops a layout that was made with another application model. */
    @PostContextCreate
    void dropOldLayout() {
        Settings settings = new Settings();
        String version = new LayoutVersion(registry).current();
        boolean fits = settings.layout().filter(version::equals).isPresent();
        System.setProperty(IWorkbench.CLEAR_PERSISTED_STATE, Boolean.toString(!fits));
        if (!fits) {
            settings.layout(version);
        }
    }
}
