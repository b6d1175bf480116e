package org.stillroom.reading.grammar;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Finds the base form of participles and other forms of the verbs that a vocabulary lists. */
final class VerbForms {

    private final Map<String, String> participles = new HashMap<>();
    private final Map<String, String> gerunds = new HashMap<>();
    private final Map<String, String> thirds = new HashMap<>();

    /** Makes the regular forms of an English verb. */
    void add(String base) {
        boolean e = base.endsWith("e");
        String stem = e ? base.substring(0, base.length() - 1) : base;
        participles.putIfAbsent(stem + "ed", base);
        gerunds.putIfAbsent(stem + "ing", base);
        if (doubles(base)) {
            char last = base.charAt(base.length() - 1);
            participles.putIfAbsent(base + last + "ed", base);
            gerunds.putIfAbsent(base + last + "ing", base);
        }
        if (base.endsWith("y")) {
            participles.putIfAbsent(base.substring(0, base.length() - 1) + "ied", base);
        }
        boolean hiss =
                base.endsWith("s")
                        || base.endsWith("sh")
                        || base.endsWith("ch")
                        || base.endsWith("x");
        thirds.putIfAbsent(base + (hiss ? "es" : "s"), base);
    }

    /** Notes a participle that is not made by rule. */
    void addParticiple(String form, String base) {
        participles.put(form, base);
    }

    private static boolean doubles(String base) {
        int n = base.length();
        return n > 2
                && "bdgklmnprt".indexOf(base.charAt(n - 1)) >= 0
                && "aeiou".indexOf(base.charAt(n - 2)) >= 0
                && "aeiou".indexOf(base.charAt(n - 3)) < 0;
    }

    Optional<String> participle(String form) {
        return Optional.ofNullable(participles.get(form));
    }

    Optional<String> gerund(String form) {
        return Optional.ofNullable(gerunds.get(form));
    }

    Optional<String> third(String form) {
        return Optional.ofNullable(thirds.get(form));
    }
}
