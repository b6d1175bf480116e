package org.stillroom.reading.spec;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.stillroom.ingredients.Candidate;
import org.stillroom.ingredients.Cautions;
import org.stillroom.ingredients.IngredientLexicon;
import org.stillroom.ingredients.Sense;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.spec.Caution;
import org.stillroom.model.text.Folding;

/**
 * Finds hazardous things that a recipe names outside its ingredients: in a step, a variation, a
 * remark, or in a line that could not be read.
 *
 * <p>A thing that is only compared with, left out or held is passed over (“the size of an egg”,
 * “without orgeat”, “an egg glass”).
 */
final class NamedHazards {

    private static final Pattern MARKS = Pattern.compile("(?<!\\bst)[.,;:()!?\\[\\]“”\"|_*]+");
    private static final Pattern BEFORE =
            Pattern.compile(
                    ".*\\b(?:without|omit|omitting|omission of|no|not|instead of|in place of|size of"
                            + "|big as|large as|like|than|addition of|free from|colour of|shape of"
                            + "|leave out|leaving out|wants? no|never|neither|nor)"
                            + "(?: (?:the|an?|any|of|hen's|pigeon's|small|large|pea))*$");
    private static final Pattern AFTER =
            Pattern.compile(
                    "(?:cups?|glass|glasses|spoons?|spoonfuls?|cupfuls?|beaters?|whisks?|shells?"
                            + "|bottles?|pans?|pails?|jugs?|timers?|warm|white|boilers?|stands?"
                            + "|of (?:almonds?|lime|sulphur|magnesia))\\b.*");

    /** Outside lines it is as often the milk of almonds, or water of that colour. */
    private static final String MILK = "milk";

    /** How many signs of mark-up may stand before a title. */
    private static final int MARK = 12;

    private final Thesaurus thesaurus;

    NamedHazards(Thesaurus thesaurus) {
        this.thesaurus = thesaurus;
    }

    /**
     * Returns a caution for each hazardous thing that the words name.
     *
     * @param words the recipe’s words as printed
     * @param title its title, which names a drink and not what is in it
     */
    List<Caution> in(String words, String title) {
        int at = title.isBlank() ? -1 : words.indexOf(title.strip());
        int from = at >= 0 && at <= MARK ? at + title.strip().length() : 0;
        String folded = Folding.foldWord(words.substring(from));
        List<String> tokens = List.of(MARKS.matcher(folded).replaceAll(" , ").split(" +"));
        List<Sense> senses = new ArrayList<>();
        int next = 0;
        while (next < tokens.size()) {
            Optional<IngredientLexicon.Match> match = thesaurus.lexicon().match(tokens, next);
            int end = next + match.map(IngredientLexicon.Match::tokens).orElse(1);
            if (match.isPresent() && isMeant(tokens, next, end)) {
                sense(String.join(" ", tokens.subList(next, end))).ifPresent(senses::add);
            }
            next = end;
        }
        return Cautions.of(senses, List.of(), Circumstances.UNKNOWN).hazards();
    }

    private static boolean isMeant(List<String> tokens, int from, int to) {
        String before = String.join(" ", tokens.subList(Math.max(0, from - 5), from));
        String after = String.join(" ", tokens.subList(to, Math.min(tokens.size(), to + 2)));
        return !BEFORE.matcher(before).matches() && !AFTER.matcher(after).matches();
    }

    private Optional<Sense> sense(String name) {
        return thesaurus.find(name, Circumstances.UNKNOWN).stream()
                .findFirst()
                .filter(c -> c.score() >= 0.85)
                .map(Candidate::sense)
                .filter(s -> !s.hazards().isEmpty() && !s.id().equals(MILK));
    }
}
