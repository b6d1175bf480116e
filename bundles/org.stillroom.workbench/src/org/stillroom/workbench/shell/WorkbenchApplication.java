package org.stillroom.workbench.shell;

import org.eclipse.e4.ui.internal.workbench.swt.E4Application;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/**
 * The workbench as an OSGi application; the start script names it.
 *
 * <p>It hands everything to the platform's own, which the platform marks as internal though every
 * pure e4 product starts with it.
 */
public final class WorkbenchApplication implements IApplication {
    private final IApplication platform = new E4Application();

    @Override
    public Object start(IApplicationContext context) throws Exception {
        return platform.start(context);
    }

    @Override
    public void stop() {
        platform.stop();
    }
}
