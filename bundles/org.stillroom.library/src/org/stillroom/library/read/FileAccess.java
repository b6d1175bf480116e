package org.stillroom.library.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.Channels;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.stillroom.model.explain.Problem;

/**
 * The way to the bytes of files, within limits.
 *
 * @param opener opens them
 * @param limits says how much of them is read
 */
record FileAccess(Opener opener, Limits limits) {

    /** Files of the system, within the usual limits. */
    static final FileAccess USUAL = new FileAccess(Opener.SYSTEM, Limits.USUAL);

    /** Reads a text in UTF-8, or in UTF-16 where it starts with a byte order mark. */
    FileText text(String id, Path file) throws Refused {
        return FileText.of(id, bytes(id, file));
    }

    /** Reads a plain text, which may be larger than one with mark-up. */
    FileText plain(String id, Path file) throws Refused {
        return FileText.of(id, bytes(id, file, limits.plainBytes()));
    }

    /** Reads the bytes of a file of words or mark-up. */
    byte[] bytes(String id, Path file) throws Refused {
        return bytes(id, file, limits.textBytes());
    }

    private byte[] bytes(String id, Path file, long largest) throws Refused {
        try (SeekableByteChannel channel = open(id, file, largest);
                InputStream in = Channels.newInputStream(channel)) {
            // a file may grow while it is read, or hide its size
            byte[] bytes = in.readNBytes(Math.toIntExact(largest + 1));
            if (bytes.length > largest) {
                throw tooLarge(id, bytes.length, largest);
            }
            return bytes;
        } catch (IOException e) {
            throw unreadable(id, e);
        }
    }

    /** Returns the digest of a file that is too large to be held, see {@link FileText#digest}. */
    String digest(String id, Path file, long largest, TimeBudget budget) throws Refused {
        try (SeekableByteChannel channel = open(id, file, largest);
                InputStream in = Channels.newInputStream(channel)) {
            MessageDigest sha = FileText.sha();
            byte[] buffer = new byte[1 << 16];
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                budget.check();
                sha.update(buffer, 0, n);
            }
            return HexFormat.of().formatHex(sha.digest());
        } catch (IOException e) {
            throw unreadable(id, e);
        }
    }

    private SeekableByteChannel open(String id, Path file, long largest)
            throws IOException, Refused {
        SeekableByteChannel channel = opener.open(file);
        if (channel.size() > largest) {
            long size = channel.size();
            channel.close();
            throw tooLarge(id, size, largest);
        }
        return channel;
    }

    private static Refused tooLarge(String id, long size, long largest) {
        return Refused.of(
                id,
                "It holds "
                        + megabytes(size)
                        + "; of its kind no more than "
                        + megabytes(largest)
                        + " are read.",
                "Cut it into one file for each book, or save its words without the pictures.");
    }

    private static String megabytes(long bytes) {
        long mega = 1024L * 1024;
        return bytes < mega ? bytes / 1024 + " KB" : bytes / mega + " MB";
    }

    private static Refused unreadable(String id, IOException e) {
        if (e instanceof AccessDeniedException) {
            return Refused.of(
                    id, "It may not be read by this user.", "Give yourself the right to read it.");
        }
        if (e instanceof NoSuchFileException) {
            return Refused.of(
                    id, "It is no longer there.", "Put it back, or open the library again.");
        }
        return new Refused(
                Problem.error(
                        id,
                        "It cannot be read (" + e.getMessage() + ").",
                        "Look whether the disk or the share is still there."));
    }
}
