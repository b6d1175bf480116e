package org.stillroom.library.read;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;
import org.apache.pdfbox.io.RandomAccessReadView;

/** The bytes of a PDF file, as long as there is time. */
final class PdfFile extends RandomAccessReadBufferedFile {

    private static final int LOOK = 1024;

    private final TimeBudget budget;
    private int reads;

    PdfFile(Path file, TimeBudget budget) throws IOException {
        super(file);
        this.budget = budget;
    }

    private void look() {
        if (++reads % LOOK == 0) {
            budget.check();
        }
    }

    @Override
    public int read() throws IOException {
        look();
        return super.read();
    }

    @Override
    public int read(byte[] bytes, int offset, int length) throws IOException {
        look();
        return super.read(bytes, offset, length);
    }

    @Override
    public void seek(long position) throws IOException {
        look();
        super.seek(position);
    }

    @Override
    public RandomAccessReadView createView(long start, long length) {
        return new RandomAccessReadView(this, start, length);
    }
}
