package org.stillroom.cli;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.osgi.framework.FrameworkUtil;

/** The command line of the product as an OSGi application; the start script names it. */
public final class CommandLineApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        System.out.println(
                "Stillroom "
                        + FrameworkUtil.getBundle(CommandLineApplication.class).getVersion());
        return EXIT_OK;
    }

    @Override
    public void stop() {
        // Every command runs to its end on the thread that called start.
    }
}
