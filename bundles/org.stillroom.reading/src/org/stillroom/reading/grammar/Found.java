package org.stillroom.reading.grammar;

import java.util.ArrayList;
import java.util.List;

/** What one pass over a recipe's words has found; used inside one call of the reader alone. */
final class Found {

    /** A verb in its base form, its place, and how many lines had been read before it. */
    record Deed(String verb, int from, int to, int linesBefore, int segment) {}

    /** A vessel. */
    record Pot(String word, int from, int to, boolean mixing, boolean receives) {}

    /** Words that cannot be read. */
    record Puzzle(String reason, int from, int to, double weight) {}

    final List<Draft> drafts = new ArrayList<>();
    final List<Deed> deeds = new ArrayList<>();
    final List<Pot> pots = new ArrayList<>();
    final List<Puzzle> puzzles = new ArrayList<>();
}
