package org.stillroom.library.read;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/** Characters for a parser that does not look at the time itself. */
final class TimedReader extends FilterReader {

    private final TimeBudget budget;

    TimedReader(Reader in, TimeBudget budget) {
        super(in);
        this.budget = budget;
    }

    @Override
    public int read(char[] buffer, int offset, int length) throws IOException {
        budget.check();
        int read = super.read(buffer, offset, length);
        budget.taken(Math.max(0, read));
        return read;
    }
}
