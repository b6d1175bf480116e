package org.stillroom.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.stillroom.ingredients.Hazard;
import org.stillroom.ingredients.Label;
import org.stillroom.ingredients.Sense;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.inquiry.Study;
import org.stillroom.inquiry.StudyDesk;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.spec.Caution;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Folding;

/**
 * Looks for hazards in the recipes of whole books: where a sentence of the truth is put at the end of
 * a recipe that has no caution yet, and where a book itself names something hazardous.
 */
final class HazardBooks {

    /** What says nothing about one ingredient. */
    private static final Set<String> GENERAL = Set.of("allergens", "strength");

    private final String name;
    private final Path folder;
    private final boolean mistakes;

    /**
     * Makes a judge of the books in a folder.
     *
     * @param name what the figures are called
     * @param folder a library, or texts alone; it is copied and left as it is
     */
    HazardBooks(String name, Path folder, boolean mistakes) {
        this.name = name;
        this.folder = folder;
        this.mistakes = mistakes;
    }

    /** A sentence of the truth: gravest level that it must raise, none where it is harmless. */
    record Planted(String id, String text, Optional<Caution.Level> level) {}

    /** Prints how many of the sentences are flagged inside recipes of the books. */
    void planted(List<Planted> sentences) throws IOException {
        Path copy = copy(folder);
        List<Version> free = new ArrayList<>();
        for (Version v : versions(copy)) {
            if (hazards(v).isEmpty() && !body(v).isBlank()) {
                free.add(v);
            }
        }
        List<Planted> rest = new ArrayList<>(sentences);
        List<Version> judged = new ArrayList<>();
        List<Planted> put = new ArrayList<>();
        while (!rest.isEmpty() && !free.isEmpty()) {
            int before = rest.size();
            Path planted = copy(copy);
            put.addAll(plant(planted, free, rest));
            judged.addAll(versions(planted));
            if (rest.size() == before) {
                break;
            }
        }
        judge(put, judged, sentences.size() - put.size());
    }

    /** Puts a sentence into each free recipe of files that are plain enough; takes them off. */
    private static List<Planted> plant(Path library, List<Version> free, List<Planted> rest)
            throws IOException {
        List<Planted> put = new ArrayList<>();
        Map<Path, String> texts = new TreeMap<>();
        for (Version v : free) {
            Optional<Path> file = file(library, v.source().id());
            if (rest.isEmpty() || file.isEmpty()) {
                continue;
            }
            String text = texts.get(file.get());
            text = text == null ? Files.readString(file.get(), StandardCharsets.UTF_8) : text;
            String body = body(v).stripTrailing();
            int at = text.indexOf(body);
            if (at >= 0 && text.indexOf(body, at + 1) < 0) {
                Planted sentence = rest.remove(0);
                put.add(sentence);
                int end = at + body.length();
                text = text.substring(0, end) + " " + sentence.text() + text.substring(end);
                texts.put(file.get(), text);
            }
        }
        for (Map.Entry<Path, String> e : texts.entrySet()) {
            Files.writeString(e.getKey(), e.getValue(), StandardCharsets.UTF_8);
        }
        return put;
    }

    private static Optional<Path> file(Path library, String id) {
        return Stream.of(library.resolve("sources").resolve(id), library.resolve(id))
                .filter(Files::isRegularFile)
                .filter(f -> f.toString().endsWith(".md") || f.toString().endsWith(".txt"))
                .findFirst();
    }

    private void judge(List<Planted> put, List<Version> versions, int nowhere) {
        int flagged = 0;
        int level = 0;
        int hazards = 0;
        int alarmed = 0;
        int harmless = 0;
        int lost = 0;
        for (Planted p : put) {
            Optional<Version> in =
                    versions.stream()
                            .filter(v -> plain(body(v)).contains(plain(p.text())))
                            .min(Comparator.comparingInt(v -> body(v).length()));
            List<Caution> found = in.map(HazardBooks::hazards).orElse(List.of());
            Optional<Caution.Level> gravest =
                    found.stream().map(Caution::level).min(Caution.Level::compareTo);
            lost += in.isEmpty() ? 1 : 0;
            boolean wrong;
            if (p.level().isPresent()) {
                hazards++;
                flagged += gravest.isPresent() ? 1 : 0;
                level += gravest.equals(p.level()) ? 1 : 0;
                wrong = !gravest.equals(p.level());
            } else {
                harmless++;
                wrong = gravest.filter(l -> l != Caution.Level.CARE).isPresent();
                alarmed += wrong ? 1 : 0;
            }
            if (mistakes && (wrong || in.isEmpty())) {
                System.out.println(
                        "    "
                                + p.id()
                                + " "
                                + p.text()
                                + " → "
                                + found.stream().map(Caution::subject).toList()
                                + (in.isEmpty() ? " in no recipe" : ""));
            }
        }
        Figures.printShare(name + ", put in: hazards flagged", flagged, hazards);
        Figures.printShare(name + ", put in: with the level of the table", level, hazards);
        Figures.printShare(name + ", put in: harmless raised", alarmed, harmless);
        Figures.print(name + ", put in: sentences in no recipe", lost + nowhere, "");
    }

    /** Prints how often a book itself names one of the hazards, and how often that is flagged. */
    void standing(List<String> terms) throws IOException {
        Thesaurus thesaurus = Thesaurus.shipped();
        Map<String, List<Version>> books = new TreeMap<>();
        versions(copy(folder))
                .forEach(
                        v -> books.computeIfAbsent(v.source().id(), b -> new ArrayList<>()).add(v));
        books.forEach((book, versions) -> standing(book, versions, terms, thesaurus));
    }

    private void standing(
            String book, List<Version> versions, List<String> terms, Thesaurus thesaurus) {
        Set<String> occurring = new TreeSet<>();
        int named = 0;
        int flagged = 0;
        Set<String> senses = new HashSet<>();
        for (String term : terms) {
            Sense sense = thesaurus.find(term, Circumstances.UNKNOWN).get(0).sense();
            if (sense.hazards().isEmpty() || !senses.add(sense.id())) {
                continue;
            }
            Pattern names = names(thesaurus, sense, term);
            Set<String> warnings =
                    sense.hazards().stream().map(Hazard::words).collect(Collectors.toSet());
            for (Version v : versions) {
                if (names.matcher(Folding.foldWord(body(v))).find()) {
                    boolean told = hazards(v).stream().anyMatch(c -> warnings.contains(c.words()));
                    occurring.add(term);
                    named++;
                    flagged += told ? 1 : 0;
                    if (!told) {
                        System.out.println(
                                "    not flagged: "
                                        + sense.id()
                                        + " in “"
                                        + v.witness().title().strip()
                                        + "”"
                                        + (mistakes ? ": " + Folding.foldWord(body(v)) : ""));
                    }
                }
            }
        }
        System.out.println(book + " names itself: " + String.join(", ", occurring));
        Figures.printShare(book.replaceAll("[.].*", "") + ": named, flagged", flagged, named);
    }

    private static Pattern names(Thesaurus thesaurus, Sense sense, String term) {
        Stream<String> labels =
                thesaurus.labels(sense.id()).stream()
                        .filter(l -> l.kind() != Label.Kind.HIDDEN)
                        .filter(l -> l.validity().trades().isEmpty())
                        .filter(l -> l.language().equals("en"))
                        .map(Label::text);
        return Pattern.compile(
                "(?<![a-z-])(?:"
                        + Stream.concat(labels, Stream.of(term))
                                .map(Folding::foldWord)
                                .filter(l -> l.length() > 2)
                                .distinct()
                                .map(Pattern::quote)
                                .collect(Collectors.joining("|"))
                        + ")s?(?![a-z-])");
    }

    private static List<Version> versions(Path library) throws IOException {
        try (StudyDesk desk = new StudyDesk(Files.createTempDirectory("stillroom-caches"))) {
            desk.lay(library);
            Study study = desk.study(Progress.SILENT);
            return study.books().stream().flatMap(b -> b.versions().stream()).toList();
        }
    }

    private static String body(Version v) {
        return v.source().text().slice(v.witness().body());
    }

    private static String plain(String words) {
        return Folding.foldWord(words).replaceAll("\\s+", " ");
    }

    private static List<Caution> hazards(Version v) {
        return v.spec().cautions().stream().filter(c -> !GENERAL.contains(c.subject())).toList();
    }

    private static Path copy(Path from) throws IOException {
        Path to = Files.createTempDirectory("stillroom-hazards");
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.sorted().toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else if (!file.getFileName().toString().equals("README.md")) {
                    Files.copy(file, target);
                }
            }
        }
        return to;
    }
}
