package org.stillroom.library.journal;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ThreadLocalRandom;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.text.Anchor;

/**
 * Makes decisions and takes them back, one person's hand on one journal.
 *
 * <p>Undo and redo work across restarts, because they are lines of the journal like any other.
 */
public final class Decisions {

    private final Journal journal;
    private final Clock clock;
    private final String by;

    /** Makes the hand of a person. */
    public Decisions(Journal journal, Clock clock, String by) {
        this.journal = journal;
        this.clock = clock;
        this.by = by;
    }

    /** Decides something; see {@link Assertion} for the parameters. */
    public Assertion decide(
            String kind, String source, Optional<Anchor> anchor, Map<String, String> values)
            throws IOException {
        return write(kind, source, anchor, values, Optional.empty());
    }

    /** Decides something in the place of an earlier decision. */
    public Assertion replace(Assertion earlier, Map<String, String> values) throws IOException {
        return write(
                earlier.kind(),
                earlier.source(),
                earlier.anchor(),
                values,
                Optional.of(earlier.id()));
    }

    /** Takes back the last decision that stands; tells which one it was. */
    public Optional<Assertion> undo() throws IOException {
        List<Assertion> standing = Journal.standingOf(journal.all(new ArrayList<>()));
        if (standing.isEmpty()) {
            return Optional.empty();
        }
        Assertion last = standing.get(standing.size() - 1);
        write(
                Assertion.TAKEN_BACK,
                last.source(),
                Optional.empty(),
                Map.of(),
                Optional.of(last.id()));
        return Optional.of(last);
    }

    /** Lets the decision stand again that was taken back last, unless one was made since. */
    public Optional<Assertion> redo() throws IOException {
        List<Assertion> all = journal.all(new ArrayList<>());
        Optional<Assertion> undone = lastUndo(all);
        if (undone.isEmpty()) {
            return Optional.empty();
        }
        String again = undone.get().id();
        write(
                Assertion.TAKEN_BACK,
                undone.get().source(),
                Optional.empty(),
                Map.of(),
                Optional.of(again));
        String first = undone.get().replaces().orElse("");
        return all.stream().filter(a -> a.id().equals(first)).findFirst();
    }

    /** Returns the last taking-back of a real decision that still holds. */
    private static Optional<Assertion> lastUndo(List<Assertion> all) {
        Map<String, Assertion> byId = new TreeMap<>();
        all.forEach(a -> byId.put(a.id(), a));
        java.util.Set<String> redone = new java.util.HashSet<>();
        for (int i = all.size() - 1; i >= 0; i--) {
            Assertion a = all.get(i);
            if (!a.kind().equals(Assertion.TAKEN_BACK)) {
                return Optional.empty();
            }
            Assertion target = byId.get(a.replaces().orElse(""));
            boolean redo = target != null && target.kind().equals(Assertion.TAKEN_BACK);
            if (redo) {
                redone.add(target.id());
            } else if (!redone.contains(a.id())) {
                return Optional.of(a);
            }
        }
        return Optional.empty();
    }

    private Assertion write(
            String kind,
            String source,
            Optional<Anchor> anchor,
            Map<String, String> values,
            Optional<String> replaces)
            throws IOException {
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        String id = nextId(now);
        Assertion decision =
                new Assertion(
                        id,
                        now.toString(),
                        by,
                        kind,
                        source,
                        anchor,
                        new TreeMap<>(values),
                        replaces);
        journal.append(decision);
        return decision;
    }

    /** Returns an id later than any in the journal, whatever the clock does. */
    private String nextId(Instant now) {
        List<Assertion> all = journal.all(new ArrayList<>());
        long micros = now.getEpochSecond() * 1_000_000 + now.getNano() / 1000;
        long last = all.isEmpty() ? 0 : micros(all.get(all.size() - 1).id());
        long next = Math.max(micros, last + 1);
        int tail = ThreadLocalRandom.current().nextInt(0x10000);
        return String.format(java.util.Locale.ROOT, "%016d-%04x", next, tail);
    }

    private static long micros(String id) {
        int dash = id.indexOf('-');
        try {
            return Long.parseLong(dash < 0 ? id : id.substring(0, dash));
        } catch (NumberFormatException foreign) {
            return 0;
        }
    }
}
