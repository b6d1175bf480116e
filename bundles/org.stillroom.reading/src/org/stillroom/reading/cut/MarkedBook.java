package org.stillroom.reading.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Cuts a book whose file marks the recipes: those are the recipes, and nothing else is. */
final class MarkedBook {

    private final Structure structure;
    private final Cues cues;
    private final String text;

    MarkedBook(Structure structure, Cues cues) {
        this.structure = structure;
        this.cues = cues;
        this.text = structure.text();
    }

    /** Returns recipes and sections in the order of the text, without overlap. */
    List<BookCutter.Stretch> assemble(List<Unit> units) {
        int[][] recipes = structure.recipes();
        List<Unit> rest = new ArrayList<>();
        List<BookCutter.Stretch> all = new ArrayList<>();
        Assembler assembler = new Assembler(structure, cues);
        int next = 0;
        int end = 0;
        for (Unit unit : units) {
            while (next < recipes.length && recipes[next][0] < unit.end()) {
                int start = Math.max(end, recipes[next][0]);
                between(rest, unit, Math.max(end, unit.start()), start);
                all.addAll(assembler.sections(rest));
                rest.clear();
                if (recipes[next][1] > start) {
                    end = recipes[next][1];
                    all.add(recipe(start, end));
                }
                next++;
            }
            between(rest, unit, Math.max(end, unit.start()), unit.end());
        }
        all.addAll(assembler.sections(rest));
        return all;
    }

    private static void between(List<Unit> rest, Unit unit, int from, int to) {
        if (from < to) {
            rest.add(
                    new Unit(
                            unit.kind(),
                            from,
                            Math.min(to, unit.end()),
                            unit.blankBefore(),
                            unit.indent(),
                            unit.score(),
                            unit.head()));
        }
    }

    private BookCutter.Stretch recipe(int from, int to) {
        int start = from;
        while (start < to && Lines.isBlank(text.charAt(start))) {
            start++;
        }
        int[] heading = structure.headingWithin(start, to).orElse(firstLine(start, to));
        TitleText title = TitleText.of(text, heading[0], Math.min(to, heading[1]), true);
        Head head =
                new Head(
                        Head.Place.MARKED,
                        "recipe",
                        1,
                        Head.letters(title.words()),
                        false,
                        true,
                        false,
                        title,
                        start,
                        Math.min(to, heading[1]));
        head.accepted = true;
        return new BookCutter.Stretch(start, to, Optional.of(head), null);
    }

    /** The first line, where it is short enough for a title; otherwise there is none. */
    private int[] firstLine(int start, int to) {
        int end = text.indexOf('\n', start);
        end = end < 0 || end > to ? to : end;
        boolean title = end - start <= 90 && end < to;
        return new int[] {start, title ? end : start};
    }
}
