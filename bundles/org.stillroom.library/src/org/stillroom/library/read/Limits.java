package org.stillroom.library.read;

import java.time.Duration;

/**
 * How much of a file is read before it is refused, so that one bad file cannot stall the others.
 *
 * @param plainBytes largest file of plain words, which needs little memory beside its own size
 * @param textBytes largest file of mark-up, whose structure needs a good deal more
 * @param containerBytes largest file that packs its parts, such as DOCX; pictures included
 * @param pdfBytes largest PDF file; scanned pages included
 * @param inflatedBytes most bytes that may come out of the parts, or of one stream, of a file
 * @param parts most parts in a file that packs them
 * @param pages most pages of a PDF file
 * @param depth deepest nesting of XML elements
 * @param patience longest time without words; words that come prolong it
 */
record Limits(
        long plainBytes,
        long textBytes,
        long containerBytes,
        long pdfBytes,
        long inflatedBytes,
        int parts,
        int pages,
        int depth,
        Duration patience) {

    private static final long MB = 1024L * 1024;

    private static final long LARGEST_PLAIN = 256 * MB;

    /**
     * Bytes of memory for each byte of a text that is nothing but short recipes: measured at 13 for
     * what is kept of it, and as much again to be safe.
     */
    private static final long MEMORY_PER_BYTE = 24;

    /** Far more than any book needs: its words take some 1 MB, its scans some 100 MB. */
    static final Limits USUAL =
            new Limits(
                    plain(Runtime.getRuntime().maxMemory()),
                    32 * MB,
                    256 * MB,
                    512 * MB,
                    128 * MB,
                    20_000,
                    5_000,
                    1_000,
                    Duration.ofSeconds(8));

    /** Returns how large a plain text may be where so much memory is allowed. */
    static long plain(long memory) {
        return Math.clamp(memory / MEMORY_PER_BYTE, 32 * MB, LARGEST_PLAIN);
    }
}
