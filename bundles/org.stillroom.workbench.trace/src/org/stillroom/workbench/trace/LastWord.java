package org.stillroom.workbench.trace;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;
import org.stillroom.inquiry.Arguments;

/** The word of measure that was explored last; it comes back at the next start. */
final class LastWord {
    private static final List<String> NAMES = List.of("word", "place", "date", "trade");

    private final IEclipsePreferences node =
            InstanceScope.INSTANCE.getNode("org.stillroom.workbench.trace");

    /** Returns what was asked last; a wineglass at first, about which most is said. */
    Arguments get() {
        Map<String, String> values = new TreeMap<>();
        for (String name : NAMES) {
            String value = node.get(name, name.equals("word") ? "wineglass" : "");
            if (!value.isBlank()) {
                values.put(name, value);
            }
        }
        return new Arguments(values);
    }

    /** Remembers what was asked. */
    void set(Arguments asked) {
        NAMES.forEach(name -> node.put(name, asked.text(name).orElse("")));
        try {
            node.flush();
        } catch (BackingStoreException notKept) {
            org.eclipse.core.runtime.Platform.getLog(LastWord.class)
                    .warn("The last word could not be kept", notKept);
        }
    }
}
