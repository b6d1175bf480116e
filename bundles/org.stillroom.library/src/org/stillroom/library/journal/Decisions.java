package org.stillroom.library.journal;

import java.io.IOException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.text.Anchor;

/**
 * Makes decisions and takes them back, one person's hand on one journal.
 *
 * <p>Undo and redo work across restarts, because they are lines of the journal like any other.
 */
public final class Decisions {

    private final Journal journal;
    private final Hand hand;

    /** Makes the decisions of a person in a journal. */
    public Decisions(Journal journal, Hand hand) {
        this.journal = journal;
        this.hand = hand;
    }

    /** Decides something; see {@link Assertion} for the parameters. */
    public Assertion decide(
            String kind, String source, Optional<Anchor> anchor, Map<String, String> values)
            throws IOException {
        return write(kind, source, anchor, values, Optional.empty());
    }

    /** Decides something in the place of an earlier decision, about the same words. */
    public Assertion replace(Assertion earlier, Map<String, String> values) throws IOException {
        return replace(earlier, earlier.anchor(), values);
    }

    /** Decides something in the place of an earlier decision, about other words. */
    public Assertion replace(Assertion earlier, Optional<Anchor> anchor, Map<String, String> values)
            throws IOException {
        return write(earlier.kind(), earlier.source(), anchor, values, Optional.of(earlier.id()));
    }

    /** Takes one decision back, however long ago it was made; {@link #undo} lets it stand again. */
    public Assertion takeBack(Assertion decision) throws IOException {
        return write(
                Assertion.TAKEN_BACK,
                decision.source(),
                Optional.empty(),
                History.DELIBERATE,
                Optional.of(decision.id()));
    }

    /** Undoes what was done last and still holds; tells which decision it was. */
    public Optional<Assertion> undo() throws IOException {
        Optional<Assertion> last = history().undoable();
        if (last.isPresent()) {
            back(last.get().source(), last.get().id());
        }
        return last;
    }

    /** Does again what was undone last, unless something was decided since. */
    public Optional<Assertion> redo() throws IOException {
        History history = history();
        Optional<Assertion> undone = history.redoable();
        if (undone.isPresent()) {
            back(undone.get().source(), history.undoing().orElseThrow());
        }
        return undone;
    }

    /** Returns everything that was ever decided, and what of it stands. */
    public History history() {
        return History.of(journal.all(new ArrayList<>()));
    }

    private void back(String source, String id) throws IOException {
        write(Assertion.TAKEN_BACK, source, Optional.empty(), Map.of(), Optional.of(id));
    }

    private Assertion write(
            String kind,
            String source,
            Optional<Anchor> anchor,
            Map<String, String> values,
            Optional<String> replaces)
            throws IOException {
        Instant now = hand.clock().instant().truncatedTo(ChronoUnit.MICROS);
        String id = nextId(now);
        Assertion decision =
                new Assertion(
                        id,
                        now.toString(),
                        hand.name(),
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
        return String.format(Locale.ROOT, "%016d-%s", next, hand.tails().get());
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
