package org.stillroom.inquiry.ask;

import java.util.List;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.InquiryException;
import org.stillroom.inquiry.Parameter;
import org.stillroom.inquiry.Parameter.Kind;
import org.stillroom.inquiry.Study;
import org.stillroom.lineage.Drink;
import org.stillroom.model.progress.Progress;

/** Finds the drink that an inquiry is about. */
final class DrinkChoice {

    static final Parameter PARAMETER =
            Parameter.object("drink", Kind.DRINK, "the drink, by any of its names");

    private DrinkChoice() {}

    /** Returns the likeliest drink of the name that was given. */
    static Drink of(Study study, Arguments arguments, Progress progress) {
        String name = arguments.required("drink");
        List<Drink> found = study.findDrinks(name, progress);
        if (found.isEmpty()) {
            String some =
                    String.join(
                            ", ",
                            study.drinks(progress).drinks().stream()
                                    .sorted(
                                            java.util.Comparator.comparing(
                                                            (Drink d) -> -d.versions().size())
                                                    .thenComparing(Drink::name))
                                    .limit(5)
                                    .map(Drink::name)
                                    .toList());
            throw new InquiryException(
                    "No drink of this library is called anything like “" + name + "”.",
                    some.isEmpty()
                            ? "No recipe was found in it: ask “sources”."
                            : "The drinks with most versions are " + some + ".");
        }
        return found.get(0);
    }

    /** Returns the names of other drinks that the same words may mean, or an empty string. */
    static String others(Study study, Arguments arguments, Drink chosen, Progress progress) {
        String name = arguments.required("drink");
        List<String> others =
                study.findDrinks(name, progress).stream()
                        .filter(d -> !d.id().equals(chosen.id()))
                        .filter(d -> d.names().stream().anyMatch(n -> n.equalsIgnoreCase(name)))
                        .map(d -> d.name() + " (" + first(d) + ")")
                        .toList();
        return others.isEmpty()
                ? ""
                : "The name also stands for another drink: " + String.join("; ", others) + ".";
    }

    private static String first(Drink drink) {
        return drink.versions().isEmpty()
                ? "no version"
                : drink.versions().size()
                        + " versions, first in "
                        + drink.versions().get(0).source().shortName();
    }
}
