package org.stillroom.library.journal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.explain.Problem;

/**
 * The append-only record of what people decided about a library.
 *
 * <p>One JSON object a line in {@code research/journal.jsonl}. A line is never changed: taking a
 * decision back is one more line. Copies that a synchronised folder makes of the journal ({@code
 * journal (conflicted copy).jsonl}) are read too; each decision counts once, by its id.
 */
public final class Journal {

    private static final String NAME = "journal";
    private static final String ENDING = ".jsonl";
    private static final int PATIENCE = 60;
    private static final int PAUSE = 50;

    private final Path folder;
    private final ObjectMapper json = new ObjectMapper();

    /** Makes the journal of a folder {@code research/}, which need not be there yet. */
    public Journal(Path folder) {
        this.folder = folder;
    }

    /**
     * Adds a decision at the end, forced to the disk before this returns.
     *
     * @throws JournalLockedException where another program holds the journal for some seconds
     * @throws IOException where it cannot be written; the journal is as it was
     */
    public void append(Assertion decision) throws IOException {
        Files.createDirectories(folder);
        byte[] line =
                (json.writeValueAsString(AssertionJson.of(decision)) + "\n")
                        .getBytes(StandardCharsets.UTF_8);
        try (FileChannel file =
                        FileChannel.open(
                                folder.resolve(NAME + ENDING),
                                StandardOpenOption.CREATE,
                                StandardOpenOption.READ,
                                StandardOpenOption.WRITE);
                FileLock lock = locked(file)) {
            long end = file.size();
            try {
                file.position(end);
                write(file, mended(file, end, line));
                file.force(true);
            } catch (IOException e) {
                file.truncate(end);
                throw e;
            }
            lock.release();
        }
    }

    /** Waits for other programs to finish their line; they hold the journal for a moment only. */
    private FileLock locked(FileChannel file) throws IOException {
        for (int tries = 0; tries < PATIENCE; tries++) {
            Optional<FileLock> lock = tryLock(file);
            if (lock.isPresent()) {
                return lock.get();
            }
            try {
                Thread.sleep(PAUSE);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new InterruptedIOException("The decision was not waited for.");
            }
        }
        throw new JournalLockedException(folder.resolve(NAME + ENDING));
    }

    private static Optional<FileLock> tryLock(FileChannel file) throws IOException {
        try {
            return Optional.ofNullable(file.tryLock());
        } catch (OverlappingFileLockException held) {
            return Optional.empty();
        }
    }

    /** Puts a line feed first where the last line was cut off by a crash. */
    private static byte[] mended(FileChannel file, long end, byte[] line) throws IOException {
        if (end == 0) {
            return line;
        }
        ByteBuffer last = ByteBuffer.allocate(1);
        file.read(last, end - 1);
        if (last.get(0) == '\n') {
            return line;
        }
        byte[] more = new byte[line.length + 1];
        more[0] = '\n';
        System.arraycopy(line, 0, more, 1, line.length);
        return more;
    }

    private static void write(FileChannel file, byte[] bytes) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        while (buffer.hasRemaining()) {
            file.write(buffer);
        }
    }

    /**
     * Reads every decision ever made, in order of their ids.
     *
     * @param problems takes a problem for each line that cannot be read; the others are read
     */
    public List<Assertion> all(List<Problem> problems) {
        Map<String, Assertion> byId = new TreeMap<>();
        for (Path file : files(problems)) {
            read(file, byId, problems);
        }
        return List.copyOf(byId.values());
    }

    /** Reads the decisions that stand: those that no later one replaces or takes back. */
    public List<Assertion> standing(List<Problem> problems) {
        return standingOf(all(problems));
    }

    /**
     * Returns those decisions that no later one replaces or takes back.
     *
     * <p>A decision that takes back a taking-back lets the first one stand again, which is how redo
     * works.
     */
    public static List<Assertion> standingOf(List<Assertion> all) {
        Set<String> gone = new HashSet<>();
        List<Assertion> standing = new ArrayList<>();
        for (int i = all.size() - 1; i >= 0; i--) {
            Assertion decision = all.get(i);
            if (gone.contains(decision.id())) {
                continue;
            }
            decision.replaces().ifPresent(gone::add);
            if (!decision.kind().equals(Assertion.TAKEN_BACK)) {
                standing.add(decision);
            }
        }
        standing.sort(Comparator.comparing(Assertion::id));
        return List.copyOf(standing);
    }

    private List<Path> files(List<Problem> problems) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.filter(Journal::isJournal).sorted().toList();
        } catch (IOException e) {
            problems.add(
                    Problem.error(
                            "research",
                            "The decisions cannot be read (" + e.getMessage() + ").",
                            "The library opens without them until they can."));
            return List.of();
        }
    }

    private static boolean isJournal(Path file) {
        String name = file.getFileName().toString();
        return name.startsWith(NAME) && name.endsWith(ENDING);
    }

    private void read(Path file, Map<String, Assertion> byId, List<Problem> problems) {
        String name = "research/" + file.getFileName();
        List<String> lines;
        try {
            lines = Files.readAllLines(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            problems.add(
                    Problem.error(
                            name,
                            "It cannot be read (" + e.getMessage() + ").",
                            "The library opens without its decisions until it can."));
            return;
        }
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.isBlank()) {
                continue;
            }
            try {
                Assertion decision = json.readValue(line, AssertionJson.class).toAssertion();
                byId.putIfAbsent(decision.id(), decision);
            } catch (JsonProcessingException | IllegalArgumentException e) {
                problems.add(cutOff(name, i + 1, i == lines.size() - 1));
            }
        }
    }

    private static Problem cutOff(String name, int line, boolean last) {
        return Problem.warning(
                name,
                line,
                "",
                last
                        ? "The last decision was cut off while it was being written."
                        : "The line is not a decision.",
                "All other decisions were read; the line may be deleted.");
    }
}
