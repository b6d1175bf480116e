package org.stillroom.inquiry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.stillroom.ingredients.ThesaurusEdit;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;

/**
 * Where a library's lines speak of an ingredient, so that a change of its senses can be looked at
 * before it is made.
 *
 * @param lines how many lines
 * @param recipes in how many recipes
 * @param examples some of them, as printed, with their recipe
 */
public record SenseUse(int lines, int recipes, List<String> examples) {

    private static final int MOST = 3;

    /** Keeps the examples unchangeable. */
    public SenseUse {
        examples = List.copyOf(examples);
    }

    /** Returns the lines that are read as a sense. */
    public static SenseUse of(Study study, String sense) {
        return where(study, line -> line.ingredient().id().equals(sense));
    }

    /** Returns the lines whose printed name is one of these, whatever they are read as. */
    public static SenseUse named(Study study, List<String> names) {
        List<String> folded = names.stream().map(SenseUse::plain).toList();
        return where(study, line -> folded.contains(plain(line.line().ingredientName())));
    }

    /** Returns the lines that a change may be felt in. */
    public static SenseUse of(Study study, ThesaurusEdit edit) {
        return switch (edit) {
            case ThesaurusEdit.AddSense e -> named(study, List.of(e.label()));
            case ThesaurusEdit.AddLabel e -> named(study, List.of(e.text()));
            case ThesaurusEdit.RemoveLabel e -> named(study, List.of(e.text()));
            case ThesaurusEdit.Merge e -> of(study, e.from());
            case ThesaurusEdit.Split e -> named(study, e.labels());
        };
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replace('-', ' ').strip();
    }

    private static SenseUse where(Study study, Predicate<SpecLine> wanted) {
        int lines = 0;
        int recipes = 0;
        List<String> examples = new ArrayList<>();
        for (Version version : study.versions()) {
            List<SpecLine> found = version.spec().lines().stream().filter(wanted).toList();
            lines += found.size();
            recipes += found.isEmpty() ? 0 : 1;
            if (!found.isEmpty() && examples.size() < MOST) {
                examples.add(
                        "“"
                                + found.get(0).line().text().strip().replaceAll("\\s+", " ")
                                + "” in "
                                + version.witness().title());
            }
        }
        return new SenseUse(lines, recipes, examples);
    }

    /** Returns this in a sentence: “4 lines in 3 recipes of this library: …”. */
    public String words() {
        if (lines == 0) {
            return "No line of this library speaks of it.";
        }
        String counted =
                (lines == 1 ? "1 line" : lines + " lines")
                        + " in "
                        + (recipes == 1 ? "1 recipe" : recipes + " recipes")
                        + " of this library";
        return counted + ", such as " + String.join("; ", examples) + ".";
    }
}
