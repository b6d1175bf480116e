package org.stillroom.workbench.shell;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.Platform;
import org.osgi.framework.Bundle;

/**
 * Tells one application model from another by the bytes of the model and of all its fragments.
 *
 * <p>Nobody has to remember to count a version up: whoever changes the model, or installs a bundle
 * that adds to it, changes the version.
 */
final class LayoutVersion {
    private final IExtensionRegistry registry;

    LayoutVersion(IExtensionRegistry registry) {
        this.registry = registry;
    }

    /** Returns the version of the model of the installed bundles, in hexadecimal. */
    String current() {
        Map<String, URL> files = new TreeMap<>();
        add(files, "org.stillroom.workbench", "Application.e4xmi");
        for (IConfigurationElement element :
                registry.getConfigurationElementsFor("org.eclipse.e4.workbench.model")) {
            if (element.getName().equals("fragment")) {
                add(files, element.getContributor().getName(), element.getAttribute("uri"));
            }
        }
        return digest(files);
    }

    private static void add(Map<String, URL> files, String bundleName, String path) {
        Optional<Bundle> bundle = Optional.ofNullable(Platform.getBundle(bundleName));
        bundle.map(b -> b.getEntry(path)).ifPresent(url -> files.put(bundleName + '/' + path, url));
    }

    private static String digest(Map<String, URL> files) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            for (Map.Entry<String, URL> file : files.entrySet()) {
                sha.update(file.getKey().getBytes(java.nio.charset.StandardCharsets.UTF_8));
                try (InputStream in = file.getValue().openStream()) {
                    sha.update(in.readAllBytes());
                }
            }
            return HexFormat.of().formatHex(sha.digest());
        } catch (IOException | NoSuchAlgorithmException unreadable) {
            throw new IllegalStateException("The application model cannot be read", unreadable);
        }
    }
}
