package org.stillroom.library.journal;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.stillroom.model.assertion.Assertion;

/**
 * Everything that was ever decided about a library, and what of it stands.
 *
 * <p>Nothing is ever dropped from it: a decision made after an undo makes the undone ones
 * unreachable for redo, yet they stay in {@link #all} and can be {@linkplain #gone found}.
 *
 * @param all every line of the journal, oldest first
 * @param standing the decisions that no later one replaces or takes back, oldest first
 * @param undoable what {@link Decisions#undo} would undo: a decision, or a deliberate taking-back
 * @param redoable what {@link Decisions#redo} would do again
 * @param undoing the line that undid the redoable one, by its id
 */
public record History(
        List<Assertion> all,
        List<Assertion> standing,
        Optional<Assertion> undoable,
        Optional<Assertion> redoable,
        Optional<String> undoing) {

    /** Values of a taking-back that is a decision of its own and no undo. */
    static final Map<String, String> DELIBERATE = Map.of("deliberate", "yes");

    /** Keeps the lists unchangeable. */
    public History {
        all = List.copyOf(all);
        standing = List.copyOf(standing);
    }

    /** Returns the history that these lines of a journal tell, given in the order of their ids. */
    public static History of(List<Assertion> all) {
        Replay replay = new Replay();
        all.forEach(replay::take);
        return new History(
                all,
                Journal.standingOf(all),
                Optional.ofNullable(replay.done.peekLast()),
                Optional.ofNullable(replay.undone.peekLast()).map(Undo::what),
                Optional.ofNullable(replay.undone.peekLast()).map(Undo::id));
    }

    /** Returns the decisions that do not stand, oldest first, takings-back left out. */
    public List<Assertion> gone() {
        Set<String> held = new HashSet<>();
        standing.forEach(a -> held.add(a.id()));
        return all.stream().filter(a -> !isBack(a) && !held.contains(a.id())).toList();
    }

    /** Returns a line by its id. */
    public Optional<Assertion> find(String id) {
        return all.stream().filter(a -> a.id().equals(id)).findFirst();
    }

    /** Returns the decision that a line is about: itself, or the one that it takes back. */
    public Assertion subject(Assertion line) {
        Assertion found = line;
        while (isBack(found)) {
            Optional<Assertion> target = found.replaces().flatMap(this::find);
            if (target.isEmpty()) {
                return found;
            }
            found = target.get();
        }
        return found;
    }

    private static boolean isBack(Assertion line) {
        return line.kind().equals(Assertion.TAKEN_BACK);
    }

    /** An undo: its own id, and what it undid. */
    private record Undo(String id, Assertion what) {}

    /** Goes over the journal as its writer did. */
    private static final class Replay {
        private final Deque<Assertion> done = new ArrayDeque<>();
        private final Deque<Undo> undone = new ArrayDeque<>();
        private final Map<String, Assertion> byId = new HashMap<>();

        void take(Assertion line) {
            byId.put(line.id(), line);
            if (!isBack(line) || line.value("deliberate").isPresent()) {
                done.addLast(line);
                undone.clear();
                return;
            }
            String target = line.replaces().orElse("");
            Optional<Undo> again = undone.stream().filter(u -> u.id().equals(target)).findFirst();
            if (again.isPresent()) {
                undone.remove(again.get());
                done.addLast(again.get().what());
            } else if (byId.containsKey(target) && done.remove(byId.get(target))) {
                undone.addLast(new Undo(line.id(), byId.get(target)));
            }
        }
    }
}
