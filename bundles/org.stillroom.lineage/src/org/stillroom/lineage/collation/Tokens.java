package org.stillroom.lineage.collation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Step;
import org.stillroom.model.reading.Vessel;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.FoldedText;
import org.stillroom.model.text.Folding;
import org.stillroom.model.text.Span;

/** Turns a version into typed words in the order in which they stand on the page. */
public final class Tokens {

    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+");

    private Tokens() {}

    /** Returns the tokens of a version’s own words, title left out. */
    public static List<Token> of(Version version) {
        Map<Integer, Placed> placed = placed(version);
        Span body = version.witness().body();
        String printed = version.source().text().slice(body);
        FoldedText folded = Folding.fold(printed);
        List<Token> tokens = new ArrayList<>();
        Matcher m = WORD.matcher(folded.folded());
        int done = body.start();
        while (m.find()) {
            Span place = folded.toPrinted(m.start(), m.end()).shift(body.start());
            for (Placed p : between(placed, done, place.end())) {
                tokens.addAll(p.tokens());
                done = Math.max(done, p.span().end());
            }
            if (place.start() >= done) {
                tokens.add(new Token(Token.Kind.WORD, m.group()));
                done = place.end();
            }
        }
        return List.copyOf(tokens);
    }

    /** Typed tokens that stand for the words of a span. */
    private record Placed(Span span, List<Token> tokens) {}

    private static List<Placed> between(Map<Integer, Placed> placed, int from, int to) {
        List<Placed> found = new ArrayList<>();
        for (Map.Entry<Integer, Placed> e : placed.entrySet()) {
            if (e.getKey() >= from && e.getKey() < to) {
                found.add(e.getValue());
            }
        }
        return found;
    }

    private static Map<Integer, Placed> placed(Version version) {
        Map<Integer, Placed> placed = new TreeMap<>();
        int inherited = version.reading().inherited().size();
        List<SpecLine> lines = version.spec().lines();
        for (SpecLine spec : lines.subList(inherited, lines.size())) {
            amount(placed, spec.line());
            spec.line().ingredient().ifPresent(i -> put(placed, i.span(), List.of(named(spec))));
        }
        for (Step step : version.reading().steps()) {
            put(placed, step.span(), List.of(new Token(Token.Kind.VERB, step.verb())));
        }
        for (Vessel vessel : version.reading().vessels()) {
            put(
                    placed,
                    vessel.span(),
                    List.of(new Token(Token.Kind.VESSEL, Folding.foldWord(vessel.word()))));
        }
        return placed;
    }

    private static Token named(SpecLine line) {
        Token.Kind kind =
                switch (line.line().kind()) {
                    case ICE -> Token.Kind.ICE;
                    case GARNISH -> Token.Kind.GARNISH;
                    default -> Token.Kind.INGREDIENT;
                };
        return new Token(kind, line.ingredient().family());
    }

    private static void amount(Map<Integer, Placed> placed, ReadingLine line) {
        if (line.amountSpan().isEmpty()) {
            return;
        }
        List<Token> tokens = new ArrayList<>();
        line.amount()
                .quantity()
                .map(Rational::toString)
                .ifPresent(q -> tokens.add(new Token(Token.Kind.NUMBER, q)));
        tokens.add(new Token(Token.Kind.MEASURE, line.measure()));
        put(placed, line.amountSpan().get(), tokens);
    }

    private static void put(Map<Integer, Placed> placed, Span span, List<Token> tokens) {
        if (!span.isEmpty()) {
            placed.putIfAbsent(span.start(), new Placed(span, tokens));
        }
    }
}
