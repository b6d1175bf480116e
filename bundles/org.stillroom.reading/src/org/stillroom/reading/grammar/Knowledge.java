package org.stillroom.reading.grammar;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.ingredients.IngredientLexicon;
import org.stillroom.ingredients.Label;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.model.text.Folding;

/** What the grammar knows of each language: its vocabulary and the names in the thesaurus. */
final class Knowledge {

    static final List<String> LANGUAGES = VocabularyRow.LANGUAGES;

    private final Map<String, Vocabulary> vocabularies = new HashMap<>();
    private final Map<String, IngredientLexicon> lexicons = new HashMap<>();
    private final Set<String> words = new HashSet<>();

    Knowledge(Thesaurus thesaurus) {
        for (String language : LANGUAGES) {
            vocabularies.put(language, Vocabulary.of(language));
            lexicons.put(language, thesaurus.lexicon(language));
        }
        for (String id : thesaurus.senses().keySet()) {
            for (Label label : thesaurus.labels(id)) {
                words.addAll(List.of(Folding.foldWord(label.text()).split("[ -]+")));
            }
        }
    }

    Vocabulary vocabulary(String language) {
        return vocabularies.getOrDefault(language, vocabularies.get("en"));
    }

    Names names(String language, Passage passage) {
        IngredientLexicon lexicon = lexicons.getOrDefault(language, lexicons.get("en"));
        return new LexiconNames(lexicon, words, passage);
    }

    boolean knowsWord(String word) {
        return words.contains(word);
    }
}
