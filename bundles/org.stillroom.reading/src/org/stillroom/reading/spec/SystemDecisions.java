package org.stillroom.reading.spec;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.stillroom.measures.MeasureTable;
import org.stillroom.measures.book.OwnTable;
import org.stillroom.measures.knowledge.MeasureSystem;
import org.stillroom.measures.rows.Nearest;
import org.stillroom.measures.system.SystemOverride;
import org.stillroom.measures.system.SystemOverride.Level;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.Span;
import org.stillroom.reading.anchor.Decided;
import org.stillroom.reading.anchor.Unplaced;

/**
 * Carries out decisions about the system of measures: those of the kind {@code system}.
 *
 * <p>The value {@code system} names the system. A decision without a source holds for the library,
 * one with a source and without words for that source; one about words holds for the recipe that
 * they stand in, or where {@code level} is {@code line} for their line. The narrowest wins, and of
 * two alike the later one.
 */
public final class SystemDecisions {

    /** The kind of these decisions. */
    public static final String KIND = "system";

    private final MeasureTable measures;
    private final Source source;
    private final List<Problem> problems;
    private final List<SystemOverride> whole = new ArrayList<>();
    private final List<BookMeasures.Local> local = new ArrayList<>();

    private SystemDecisions(MeasureTable measures, Source source, List<Problem> problems) {
        this.measures = measures;
        this.source = source;
        this.problems = problems;
    }

    /**
     * Returns what is known of a book's measures.
     *
     * @param library the system that the library's settings name, if they do
     * @param decisions decisions about this source, and those about the whole library
     * @param problems takes what could not be carried out
     */
    public static BookMeasures of(
            Source source,
            OwnTable ownTable,
            Optional<String> library,
            List<Assertion> decisions,
            MeasureTable measures,
            List<Problem> problems) {
        SystemDecisions all = new SystemDecisions(measures, source, problems);
        library.flatMap(w -> all.system(w, "stillroom.json", 1))
                .ifPresent(s -> all.add(Level.LIBRARY, s, "stillroom.json"));
        source.bibliography()
                .measures()
                .flatMap(w -> all.system(w, source.id(), 1))
                .ifPresent(s -> all.add(Level.SOURCE, s, "the front matter"));
        decisions.stream()
                .filter(d -> d.kind().equals(KIND) && d.source().isEmpty())
                .forEach(d -> all.decide(d, Level.LIBRARY));
        Decided about = Decided.about(source, decisions);
        about.ofKind(KIND).forEach(d -> all.decide(d, about));
        return new BookMeasures(ownTable, all.whole, all.local);
    }

    private void decide(Assertion d, Decided about) {
        if (d.anchor().isEmpty()) {
            decide(d, Level.SOURCE);
            return;
        }
        List<Unplaced> lost = new ArrayList<>();
        Optional<Span> at = about.place(d, lost);
        lost.forEach(l -> problems.add(l.problem()));
        boolean line = d.value("level").filter("line"::equals).isPresent();
        at.ifPresent(
                span ->
                        system(d, source.text().lineAt(span.start()))
                                .map(
                                        s ->
                                                new SystemOverride(
                                                        line ? Level.LINE : Level.RECIPE,
                                                        s,
                                                        who(d)))
                                .ifPresent(o -> local.add(new BookMeasures.Local(span, o))));
    }

    private void decide(Assertion d, Level level) {
        system(d, 1).ifPresent(s -> add(level, s, who(d)));
    }

    private void add(Level level, MeasureSystem system, String who) {
        whole.add(new SystemOverride(level, system, who));
    }

    private static String who(Assertion d) {
        String day = d.at().substring(0, Math.min(10, d.at().length()));
        return (d.by().isBlank() ? "the user" : d.by()) + (day.isEmpty() ? "" : " on " + day);
    }

    private Optional<MeasureSystem> system(Assertion d, int line) {
        return system(d.value(KIND).orElse(""), source.id(), line);
    }

    private Optional<MeasureSystem> system(String words, String file, int line) {
        Optional<MeasureSystem> found = find(measures, words);
        if (found.isEmpty()) {
            problems.add(
                    Problem.warning(
                            file,
                            line,
                            words,
                            "No system of measures is called so.",
                            nearest(measures, words)));
        }
        return found;
    }

    /** Returns a system by its id or its name, whatever the capitals. */
    public static Optional<MeasureSystem> find(MeasureTable measures, String words) {
        String wanted = words.strip().toLowerCase(Locale.ROOT);
        return measures.allSystems().stream()
                .filter(
                        s ->
                                s.id().equals(wanted)
                                        || s.label().toLowerCase(Locale.ROOT).equals(wanted))
                .findFirst();
    }

    /** Returns a sentence that names the nearest system to some words. */
    public static String nearest(MeasureTable measures, String words) {
        List<String> ids = measures.allSystems().stream().map(MeasureSystem::id).toList();
        return Nearest.remedy(words.strip().toLowerCase(Locale.ROOT), ids)
                + " All: "
                + String.join(", ", ids)
                + ".";
    }
}
