package org.stillroom.reading.grammar;

import java.util.List;
import java.util.Locale;
import org.stillroom.model.text.FoldedText;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/** The words of one recipe as tokens, with the way back to their place in the source. */
final class Passage {

    private final SourceText printed;
    private final FoldedText map;
    private final List<Token> tokens;
    private final int origin;
    private final Token end;

    Passage(SourceText printed, FoldedText map, List<Token> tokens, int origin) {
        this.printed = printed;
        this.map = map;
        this.tokens = List.copyOf(tokens);
        this.origin = origin;
        int length = map.folded().length();
        this.end = new Token(Token.Type.END, "", length, length, false, true, false);
    }

    int size() {
        return tokens.size();
    }

    /** Returns a token; before the first and after the last stands an end. */
    Token at(int index) {
        return index >= 0 && index < tokens.size() ? tokens.get(index) : end;
    }

    String word(int index) {
        return at(index).text();
    }

    /** Returns the place in the source of the tokens from one, to before another. */
    Span span(int from, int to) {
        return local(from, to).shift(origin);
    }

    private Span local(int from, int to) {
        return map.toPrinted(at(from).from(), at(to - 1).to());
    }

    /** Returns the words as printed. */
    String printed(int from, int to) {
        return printed.slice(local(from, to));
    }

    /** Returns a token's letters as printed, in lower case, long s and divisions put right. */
    String plain(int index) {
        String raw = printed(index, index + 1);
        StringBuilder plain = new StringBuilder(raw.length());
        for (int i = 0; i < raw.length(); i++) {
            char c = raw.charAt(i);
            switch (c) {
                case '\u017F' -> plain.append('s');
                case '\uFB00' -> plain.append("ff");
                case '\uFB01' -> plain.append("fi");
                case '\uFB02' -> plain.append("fl");
                case '\uFB03' -> plain.append("ffi");
                case '\uFB04' -> plain.append("ffl");
                case '\uFB05', '\uFB06' -> plain.append("st");
                case '\u00AD', '\u2010', '\u00AC', '-', '_', '*' -> {}
                case '\u2019', '\u2018' -> plain.append('\'');
                default -> {
                    if (!Character.isWhitespace(c)) {
                        plain.append(c);
                    }
                }
            }
        }
        return plain.toString().toLowerCase(Locale.ROOT);
    }

    /** Returns the names of a stretch of tokens, tied by hyphens as printed. */
    String name(int from, int to) {
        StringBuilder name = new StringBuilder();
        for (int i = from; i < to; i++) {
            Token t = at(i);
            if (t.type() == Token.Type.BREAK) {
                continue;
            }
            if (t.type() == Token.Type.MARK) {
                if (t.isMark('.') || t.isMark('\'')) {
                    name.append(t.text());
                }
                continue;
            }
            boolean elided = i > from && at(i - 1).text().endsWith("'");
            if (name.length() > 0 && !t.text().startsWith("'") && !elided) {
                name.append(t.glued() && i > from ? "-" : " ");
            }
            name.append(plain(i));
            boolean possessive =
                    t.text().endsWith("s")
                            && t.to() < map.folded().length()
                            && map.folded().charAt(t.to()) == '\''
                            && i + 1 < to;
            if (possessive) {
                name.append('\'');
            }
        }
        return name.toString();
    }
}
