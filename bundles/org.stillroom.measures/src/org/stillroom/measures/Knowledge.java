package org.stillroom.measures;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.stillroom.measures.knowledge.Authority;
import org.stillroom.measures.knowledge.AuthorityReader;
import org.stillroom.measures.knowledge.Dimension;
import org.stillroom.measures.knowledge.MeasureWord;
import org.stillroom.measures.knowledge.MeasureWords;
import org.stillroom.measures.knowledge.UnitTable;
import org.stillroom.measures.knowledge.Works;
import org.stillroom.measures.physics.Densities;
import org.stillroom.measures.place.Gazetteer;
import org.stillroom.measures.rows.Row;
import org.stillroom.measures.rows.Rows;
import org.stillroom.measures.system.SystemInference;
import org.stillroom.measures.system.Systems;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.number.Rational;

/** Everything that is known about measures: ours, and what a library adds. */
record Knowledge(
        Works works,
        UnitTable units,
        MeasureWords words,
        Gazetteer places,
        Systems systems,
        SystemInference inference,
        Map<String, List<Authority>> authorities,
        List<SizeFactor> sizes,
        Densities densities,
        Map<String, String> tongues) {

    /** How a word about size changes an amount. */
    record SizeFactor(
            String size, String dimension, double low, double likely, double high, Row row) {}

    static Knowledge shipped() {
        Works works = Works.shipped();
        UnitTable units = UnitTable.shipped(works, Systems.byId());
        MeasureWords words = MeasureWords.shipped();
        Gazetteer places = Gazetteer.shipped();
        Systems systems = Systems.shipped(works);
        AuthorityReader reader = new AuthorityReader(units, works, words, places);
        AuthorityReader.Result read = reader.read(Rows.shipped("measures.csv"));
        if (!read.problems().isEmpty()) {
            throw new IllegalStateException(read.problems().getFirst().toText());
        }
        return new Knowledge(
                works,
                units,
                words,
                places,
                systems,
                new SystemInference(systems, units),
                byWord(read.authorities()),
                readSizes(),
                Densities.shipped(),
                readTongues());
    }

    /** Reads the language of each country's books: near kin read one another. */
    private static Map<String, String> readTongues() {
        Map<String, String> tongues = new HashMap<>();
        Rows.shipped("tongues.csv").forEach(r -> tongues.put(r.get("country"), r.get("language")));
        return Map.copyOf(tongues);
    }

    private static List<SizeFactor> readSizes() {
        return Rows.shipped("sizes.csv").stream()
                .map(
                        r ->
                                new SizeFactor(
                                        r.get("size"),
                                        r.get("dimension"),
                                        r.number("low").orElseThrow().toDouble(),
                                        r.number("likely").orElseThrow().toDouble(),
                                        r.number("high").orElseThrow().toDouble(),
                                        r))
                .toList();
    }

    private static Map<String, List<Authority>> byWord(List<Authority> authorities) {
        Map<String, List<Authority>> byWord = new HashMap<>();
        authorities.forEach(a -> byWord.computeIfAbsent(a.word(), w -> new ArrayList<>()).add(a));
        byWord.replaceAll((w, list) -> List.copyOf(list));
        return Collections.unmodifiableMap(byWord);
    }

    Knowledge with(List<Authority> more, MeasureWords moreWords) {
        List<Authority> all = new ArrayList<>();
        authorities.values().forEach(all::addAll);
        all.addAll(more);
        return new Knowledge(
                works,
                units,
                moreWords,
                places,
                systems,
                inference,
                byWord(all),
                sizes,
                densities,
                tongues);
    }

    Knowledge with(Gazetteer morePlaces) {
        return new Knowledge(
                works,
                units,
                words,
                morePlaces,
                systems,
                inference,
                authorities,
                sizes,
                densities,
                tongues);
    }

    /** Returns what is said about a word; juice that was weighed is given as a volume. */
    List<Authority> of(String word) {
        List<Authority> said = authorities.getOrDefault(word, List.of());
        boolean fruit =
                words.canonical(word).filter(w -> w.kind() == MeasureWord.Kind.FRUIT).isPresent();
        return fruit ? said.stream().map(this::poured).toList() : said;
    }

    private Authority poured(Authority weighed) {
        if (weighed.dimension() != Dimension.MASS || weighed.content().isEmpty()) {
            return weighed;
        }
        return densities
                .of(weighed.of() + " juice")
                .map(d -> weighed.poured(Rational.of(BigDecimal.valueOf(d.density().likely()))))
                .orElse(weighed);
    }

    Optional<SizeFactor> size(String size, String dimension) {
        return sizes.stream()
                .filter(s -> s.size().equals(size) && s.dimension().equals(dimension))
                .findFirst();
    }

    /** Leaves out what is measured where no statement about the word speaks of it. */
    MeasureQuestion plain(MeasureQuestion question) {
        String thing = question.thing().replace('-', ' ');
        if (thing.isEmpty()) {
            return question;
        }
        Optional<MeasureWord> counted = counted(question);
        if (counted.isPresent()) {
            return plain(question.withWord(counted.get().word()));
        }
        Optional<MeasureWord> word = words.find(question.word());
        for (String name :
                List.of(thing, withoutEnding(thing, "s", ""), withoutEnding(thing, "ies", "y"))) {
            if (word.filter(w -> of(w.word()).stream().anyMatch(a -> a.isAbout(name)))
                    .isPresent()) {
                return question.about(question.matter(), name);
            }
        }
        return isOnlyAboutStuffs(question.word())
                ? question
                : question.about(question.matter(), "");
    }

    /**
     * What is counted whole may have figures of its own: “one white of egg” is an egg white, not a
     * kind of egg. The longest name at the end or beginning of the words is taken, else one within.
     */
    private Optional<MeasureWord> counted(MeasureQuestion question) {
        if (!question.word().equals("whole")) {
            return Optional.empty();
        }
        List<String> tokens = List.of(question.thing().split("[ -]+"));
        int all = tokens.size();
        Stream<List<String>> names =
                IntStream.range(0, all)
                        .boxed()
                        .flatMap(
                                n -> Stream.of(tokens.subList(n, all), tokens.subList(0, all - n)));
        return Stream.concat(names, tokens.stream().map(List::of))
                .map(name -> words.find(String.join(" ", name)))
                .flatMap(Optional::stream)
                .filter(w -> w.kind() == MeasureWord.Kind.STUFF)
                .findFirst();
    }

    private static String withoutEnding(String word, String ending, String instead) {
        return word.endsWith(ending)
                ? word.substring(0, word.length() - ending.length()) + instead
                : word;
    }

    /** Tells whether every statement about a word names a stuff, so that another has no figure. */
    private boolean isOnlyAboutStuffs(String word) {
        return words.find(word)
                .map(w -> of(w.word()))
                .filter(list -> list.stream().noneMatch(a -> a.counts() && a.of().isEmpty()))
                .filter(list -> !list.isEmpty())
                .isPresent();
    }

    Citation customary() {
        return works.cite("TRADE", Citation.Status.MEMORY);
    }
}
