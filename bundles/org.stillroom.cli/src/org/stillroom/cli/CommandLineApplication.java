package org.stillroom.cli;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.Premises;

/** The command line of the product as an OSGi application; the start script names it. */
public final class CommandLineApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        String[] words =
                (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        Bundle bundle = FrameworkUtil.getBundle(CommandLineApplication.class);
        Face face =
                new Face(
                        inquiries(bundle.getBundleContext()),
                        new Surroundings(
                                path("stillroom.library"),
                                Premises.here(),
                                Path.of(""),
                                System.getProperty("stillroom.command", "stillroom")),
                        new Terminal(stream(System.out), stream(System.err)),
                        bundle.getVersion().toString());
        int code = face.run(words == null ? new String[0] : words);
        return code == 0 ? EXIT_OK : Integer.valueOf(code);
    }

    private static PrintStream stream(PrintStream raw) {
        return new PrintStream(raw, true, StandardCharsets.UTF_8);
    }

    private static Optional<Path> path(String property) {
        return Optional.ofNullable(System.getProperty(property))
                .filter(v -> !v.isBlank())
                .map(Path::of);
    }

    /** Returns every inquiry that is registered as a service, by name. */
    private static List<Inquiry> inquiries(BundleContext context) {
        List<Inquiry> found = new ArrayList<>();
        try {
            for (ServiceReference<Inquiry> reference :
                    context.getServiceReferences(Inquiry.class, null)) {
                found.add(context.getService(reference));
            }
        } catch (InvalidSyntaxException impossible) {
            throw new IllegalStateException("No filter was given", impossible);
        }
        found.sort(Comparator.comparing(Inquiry::name));
        return found;
    }

    @Override
    public void stop() {
        // every command runs to its end on the thread that called start
    }
}
