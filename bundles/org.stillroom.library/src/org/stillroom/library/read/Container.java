package org.stillroom.library.read;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.stillroom.model.explain.Problem;

/**
 * A file that packs its parts, as DOCX, ODT and EPUB do, read within limits.
 *
 * <p>Parts are read into memory one at a time, never unpacked to disk, so that no name in the file
 * leads anywhere.
 */
final class Container implements AutoCloseable {

    private final String id;
    private final ZipFile zip;
    private final Limits limits;
    private final TimeBudget budget;
    private final Map<String, ZipEntry> entries = new LinkedHashMap<>();
    private long inflated;

    private Container(String id, ZipFile zip, Limits limits, TimeBudget budget) {
        this.id = id;
        this.zip = zip;
        this.limits = limits;
        this.budget = budget;
        for (ZipEntry entry : Collections.list(zip.entries())) {
            entries.putIfAbsent(entry.getName().replace('\\', '/'), entry);
        }
    }

    /**
     * Opens a file.
     *
     * @param kind what it should be, such as “DOCX”, for problems
     */
    static Container open(String id, Path file, String kind, Limits limits, TimeBudget budget)
            throws Refused {
        try {
            ZipFile zip = new ZipFile(file.toFile());
            if (zip.size() > limits.parts()) {
                int parts = zip.size();
                zip.close();
                throw Refused.of(
                        id,
                        "It holds "
                                + parts
                                + " parts; of more than "
                                + limits.parts()
                                + " none is read.",
                        "Save it again without what is not its text.");
            }
            return new Container(id, zip, limits, budget);
        } catch (IOException | IllegalArgumentException e) {
            throw broken(id, file, kind, String.valueOf(e.getMessage()));
        }
    }

    private static Refused broken(String id, Path file, String kind, String message) {
        Optional<Signature> found = Signature.of(file);
        if (found.isPresent() && found.get() != Signature.ZIP) {
            return Refused.of(
                    id,
                    "It is not a " + kind + " file: " + found.get().what() + ".",
                    found.get().remedy());
        }
        return Refused.of(
                id,
                "It is not a whole "
                        + kind
                        + " file: its list of parts cannot be read ("
                        + message
                        + ").",
                "It was cut short or damaged: copy it again, or open it in the program that it "
                        + "comes from and save it again.");
    }

    /** Returns the names of its parts, in the order of the file. */
    List<String> names() {
        return new ArrayList<>(entries.keySet());
    }

    /** Tells whether it holds a part. */
    boolean has(String name) {
        return entries.containsKey(name);
    }

    /** Returns the bytes of a part, if there is one of this name. */
    Optional<byte[]> part(String name) throws Refused {
        ZipEntry entry = entries.get(name);
        if (entry == null) {
            return Optional.empty();
        }
        try (InputStream in = zip.getInputStream(entry)) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            byte[] buffer = new byte[1 << 14];
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                budget.check();
                inflated += n;
                if (inflated > limits.inflatedBytes()) {
                    throw tooMuch(name);
                }
                out.write(buffer, 0, n);
            }
            return Optional.of(out.toByteArray());
        } catch (ZipException e) {
            throw damaged(name, String.valueOf(e.getMessage()));
        } catch (IOException e) {
            throw damaged(name, e.getClass().getSimpleName());
        }
    }

    /** Returns the bytes of a part that no such file can be without. */
    byte[] needed(String name, String kind) throws Refused {
        Optional<byte[]> part = part(name);
        if (part.isEmpty()) {
            throw Refused.of(
                    id,
                    "It is not a " + kind + " file: it has no part “" + name + "”.",
                    "Look whether its name has the right ending, or save it again as "
                            + kind
                            + ".");
        }
        return part.get();
    }

    /** Reads a part as XML, if there is one of this name. */
    void read(String name, SafeXml.Handler handler) throws Refused {
        Optional<byte[]> part = part(name);
        if (part.isPresent()) {
            xml(name).read(new ByteArrayInputStream(part.get()), handler);
        }
    }

    /** Returns a reader for the XML of a part. */
    SafeXml xml(String name) {
        return new SafeXml(id, name, limits, budget);
    }

    private Refused tooMuch(String name) {
        return new Refused(
                new Problem(
                        Problem.Severity.ERROR,
                        id,
                        OptionalInt.empty(),
                        name,
                        "Its parts unpack to more than "
                                + limits.inflatedBytes() / (1024 * 1024)
                                + " MB of words, which no book has.",
                        "Cut it into one file for each book; if it came from a stranger, do not "
                                + "open it elsewhere either."));
    }

    private Refused damaged(String name, String message) {
        return new Refused(
                new Problem(
                        Problem.Severity.ERROR,
                        id,
                        OptionalInt.empty(),
                        name,
                        "A part of it is damaged (" + message + ").",
                        "Copy it again, or open it in the program that it comes from and save it "
                                + "again."));
    }

    @Override
    public void close() {
        try {
            zip.close();
        } catch (IOException readOnly) {
            throw new java.io.UncheckedIOException(readOnly);
        }
    }
}
