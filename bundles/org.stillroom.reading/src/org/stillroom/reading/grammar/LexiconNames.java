package org.stillroom.reading.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.stillroom.ingredients.IngredientLexicon;

/** The thesaurus seen from one passage; remembers what it has looked up. */
final class LexiconNames implements Names {

    private final IngredientLexicon lexicon;
    private final Set<String> words;
    private final List<String> tokens;
    private final List<Optional<Known>> found;

    LexiconNames(IngredientLexicon lexicon, Set<String> words, Passage passage) {
        this.lexicon = lexicon;
        this.words = words;
        this.tokens = new ArrayList<>(passage.size());
        this.found = new ArrayList<>(passage.size());
        for (int i = 0; i < passage.size(); i++) {
            Token t = passage.at(i);
            tokens.add(t.isWord() && !t.text().startsWith("'") ? t.text() : ",");
            found.add(null);
        }
    }

    @Override
    public Optional<Known> longest(Passage passage, int index) {
        if (index < 0 || index >= tokens.size() || !passage.at(index).isWord()) {
            return Optional.empty();
        }
        Optional<Known> known = found.get(index);
        if (known == null) {
            known =
                    lexicon.match(tokens, index)
                            .map(m -> new Known(index + m.tokens(), m.senses()));
            found.set(index, known);
        }
        return known;
    }

    @Override
    public boolean knowsWord(String word) {
        return words.contains(word);
    }
}
