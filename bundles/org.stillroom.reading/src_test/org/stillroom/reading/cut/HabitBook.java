package org.stillroom.reading.cut;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.SourceText;
import org.stillroom.reading.cut.Habits.Body;
import org.stillroom.reading.cut.Habits.Extra;
import org.stillroom.reading.cut.Habits.Trade;

/** An invented book in given habits, with the place and title of each of its recipes. */
final class HabitBook {

    /** One recipe of the truth. */
    record Wanted(int place, String title) {}

    /** Counts of recipes: there, found, found in their place, and found with their title. */
    record Score(int there, int found, int right, int titled) {

        double f1() {
            return there + found == 0 ? 1 : 2.0 * right / (there + found);
        }

        Score plus(Score o) {
            return new Score(there + o.there, found + o.found, right + o.right, titled + o.titled);
        }
    }

    private record Recipe(String title, List<String> lines) {}

    private final Habits habits;
    private final Random random;
    private final HabitSheet sheet;
    private final List<Wanted> wanted = new ArrayList<>();
    private final List<Recipe> recipes;
    private final List<String> stories;
    private final List<String> adverts;
    private int footnote;

    /** Sets a book. */
    HabitBook(Habits habits, long seed) throws IOException {
        this.habits = habits;
        this.random = new Random(seed);
        this.sheet = new HabitSheet(habits);
        this.stories = pieces("stories.txt");
        this.adverts = pieces("adverts.txt");
        this.recipes = new ArrayList<>();
        for (String piece : pieces(habits.trade() == Trade.BAR ? "bar.txt" : "house.txt")) {
            List<String> lines = piece.lines().toList();
            recipes.add(new Recipe(lines.get(0), lines.subList(1, lines.size())));
        }
        Collections.shuffle(recipes, random);
        front();
        chapters();
        back();
    }

    private static List<String> pieces(String file) throws IOException {
        try (InputStream in = HabitBook.class.getResourceAsStream("habits/" + file)) {
            String all = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return List.of(all.strip().split("\n\n"));
        }
    }

    /** Returns the words of the book. */
    String text() {
        return sheet.toString();
    }

    List<Wanted> wanted() {
        return wanted;
    }

    private void front() {
        if (habits.extra() == Extra.LICENCE) {
            sheet.paragraph(
                    "This text is offered to anybody anywhere at no cost. You may copy it, give it"
                            + " away or use it again under the terms of the licence included at its"
                            + " end. If you are not located in the country check its laws before"
                            + " using this file.",
                    0,
                    0);
            sheet.blank(1);
            sheet.line("*** START OF THE TEXT OF THE SLIPWAY BOOK ***", 0);
            sheet.blank(2);
            sheet.line("Produced by two volunteers from page images of the library.", 0);
            sheet.blank(1);
            sheet.line("[Transcriber's note: italics are marked _so_, bold =so=. Spelling", 0);
            sheet.line("was left as it is, “Curacoa” and “Curaçao” alike.]", 0);
            sheet.blank(1);
        }
        sheet.line("THE SLIPWAY BOOK", 0);
        sheet.blank(1);
        sheet.line("OR", 6);
        sheet.blank(1);
        sheet.line("WHAT TO DRINK AND HOW TO MAKE IT", 2);
        sheet.blank(1);
        sheet.line("BY A RETIRED STEWARD", 4);
        sheet.blank(1);
        sheet.line("SALTREATH:", 6);
        sheet.line("PRINTED FOR THE AUTHOR, MARKET STRAND.", 2);
        sheet.line("1884.", 8);
        sheet.blank(3);
        sheet.line("PREFACE.", 0);
        sheet.blank(1);
        story();
        story();
        if (habits.list() != Habits.Listed.NONE) {
            contents();
        }
    }

    private void story() {
        sheet.paragraph(stories.get(random.nextInt(stories.size())), 0, 0);
        sheet.blank(1);
    }

    private void contents() {
        sheet.blank(1);
        sheet.line("CONTENTS.", 0);
        sheet.blank(1);
        List<String> titles = recipes.stream().map(Recipe::title).toList();
        if (habits.list() == Habits.Listed.COLUMNS) {
            for (int i = 0; i + 1 < titles.size(); i += 2) {
                sheet.line(entry(titles.get(i), i) + "      " + entry(titles.get(i + 1), i), 0);
            }
        } else {
            for (int i = 0; i < titles.size(); i++) {
                sheet.line(entry(titles.get(i), i), 0);
            }
        }
        sheet.blank(3);
    }

    private String entry(String title, int i) {
        int page = 5 + i / 3;
        return switch (habits.list()) {
            case NONE, UNNUMBERED -> title;
            case LEADERS -> title + " " + ".".repeat(Math.max(4, 50 - title.length())) + " " + page;
            case DOTTED_STOP -> title + " . . . . . . " + page + ".";
            case COMMAS -> title + ", " + page;
            case BARE -> title + " " + page;
            case COLUMNS -> title + ", " + page;
        };
    }

    private void chapters() {
        sheet.marksPages(true);
        boolean chaptered = habits.extra() == Extra.CHAPTERS;
        boolean kinds =
                habits.extra() == Extra.CATEGORIES || habits.extra() == Extra.CATEGORIES_TOLD;
        String[] names = {"COCKTAILS.", "PUNCHES AND CUPS.", "SUNDRY DRINKS."};
        for (int i = 0; i < recipes.size(); i++) {
            if (chaptered && i % 8 == 0) {
                sheet.blank(3);
                sheet.line("CHAPTER " + "I".repeat(1 + i / 8) + ".", 20);
                sheet.blank(1);
                sheet.line("OF DRINKS FOR THE " + (i == 0 ? "MORNING" : "EVENING"), 12);
                sheet.blank(1);
                story();
            } else if (kinds && i % 8 == 0) {
                sheet.blank(2);
                sheet.line(names[i / 8], 0);
                sheet.blank(2);
                if (habits.extra() == Extra.CATEGORIES_TOLD) {
                    story();
                }
            }
            recipe(recipes.get(i), i);
            more(recipes.get(i), i);
            sheet.turn(true);
        }
        sheet.marksPages(false);
    }

    private void recipe(Recipe recipe, int i) {
        String title = recipe.title();
        List<String> lines = lines(recipe);
        if (habits.isSide()) {
            String first = side(title, i) + " " + lines.get(0);
            int place = paragraph(first);
            wanted.add(new Wanted(place, title));
            lay(lines.subList(1, lines.size()));
        } else {
            heading(title, i);
            sheet.blank(habits.gap());
            lay(lines);
        }
        sheet.blank(habits.apart());
    }

    /** Returns the lines of a recipe, the last being its prose, in the order of the book. */
    private List<String> lines(Recipe recipe) {
        List<String> lines = new ArrayList<>(recipe.lines());
        if (habits.trade() == Trade.HOUSE) {
            return lines;
        }
        String method = lines.remove(lines.size() - 1);
        switch (habits.body()) {
            case ONE_PARAGRAPH -> {
                String parts = String.join("; ", lines).replace(".;", ";") + ". " + method;
                return List.of(parts);
            }
            case METHOD_FIRST -> {
                lines.add(0, "Use a large bar glass, and " + small(method));
                return lines;
            }
            case INGREDIENTS_WORD -> {
                lines.add(0, "INGREDIENTS.");
                lines.add("METHOD. " + method);
                return lines;
            }
            case INGREDIENTS_AFTER -> {
                lines.add(0, method);
                lines.add(1, "INGREDIENTS:");
                return lines;
            }
            default -> {
                lines.add(method);
                return lines;
            }
        }
    }

    private static String small(String words) {
        return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    private void lay(List<String> lines) {
        for (String line : lines) {
            paragraph(line);
            if (habits.body() == Body.DOUBLE_SPACED) {
                sheet.blank(1);
            }
        }
    }

    private int paragraph(String words) {
        int first = habits.indent() + (habits.body() == Body.FIRST_LINE_IN ? 3 : 0);
        int rest = habits.indent() + (habits.body() == Body.HANGING ? 4 : 0);
        return sheet.paragraph(words, first, rest);
    }

    private void heading(String title, int i) {
        String upper = title.toUpperCase(Locale.ROOT);
        int no = i + 1;
        switch (habits.title()) {
            case CAPITALS -> heading(title, upper, 0);
            case PLAIN -> heading(title, title, 0);
            case PLAIN_STOP -> heading(title, title + ".", 0);
            case ITALIC -> heading(title, "_" + title + "._", 0);
            case BOLD -> heading(title, "=" + title + ".=", 0);
            case PLUS -> heading(title, "+" + title + ".+", 0);
            case TILDE -> heading(title, "~" + title + "~", 0);
            case CENTRED -> heading(title, upper + ".", 36 - title.length() / 2);
            case NUMBERED -> heading(title, no + ". " + title + ".", 0);
            case NUMBER_DASH -> heading(title, no + ".--" + upper + ".", 0);
            case NUMBER_WORD -> heading(title, "No. " + no + ". " + upper + ".", 0);
            case NUMBER_ABOVE -> {
                sheet.line("No. " + no + ".", 0);
                sheet.blank(1);
                heading(title, upper + ".", 0);
            }
            case QUOTED -> heading(title, "“" + title + ".”", 0);
            case GLASS_BELOW -> {
                heading(title, upper + ".", 0);
                sheet.line("(Use a large bar glass.)", 0);
            }
            case GLASS_BESIDE -> heading(title, upper + ".  (Use small bar glass.)", 0);
            case BRACKETED -> heading(title, upper + ". (For a party of six.)", 0);
            default -> heading(title, upper + ".", 0);
        }
    }

    private void heading(String title, String printed, int indent) {
        wanted.add(new Wanted(sheet.line(printed, indent), title));
    }

    private String side(String title, int i) {
        String upper = title.toUpperCase(Locale.ROOT);
        return switch (habits.title()) {
            case SIDE_CAPITALS -> upper + ".";
            case SIDE_STOP -> title + ".";
            case SIDE_ITALIC -> "_" + title + "._";
            case SIDE_BOLD -> "=" + title + ".=";
            case SIDE_NUMBERED -> (i + 1) + ". " + title + ".";
            case SIDE_NUMBERED_ITALIC -> (i + 1) + ". _" + title + "._--";
            case TO_MAKE -> "To make " + title + ".";
            case TO_MAKE_SENTENCE -> "_To make " + title + "_.--";
            default -> title + ".—";
        };
    }

    /** Sets what stands between this recipe and the next. */
    private void more(Recipe recipe, int i) {
        switch (habits.extra()) {
            case ANOTHER -> {
                if (i % 5 == 2) {
                    another(recipe);
                }
            }
            case SHORT_REFERENCES -> {
                if (i % 5 == 2) {
                    shorter(recipe.title() + " Royal", "The same, with champagne.", i);
                }
            }
            case SHORT_RECIPES -> {
                if (i % 6 == 2) {
                    shorter("Stevedore", "Half stout, half porter.", i);
                    shorter("Parish Clerk", "Rum and milk.", i);
                }
            }
            case FOOTNOTES -> {
                if (i % 4 == 1) {
                    footnote++;
                    sheet.paragraph(
                            "["
                                    + footnote
                                    + "] So called from the parish in which it was first"
                                    + " sold, and where it is now forgotten.",
                            0,
                            0);
                    sheet.blank(1);
                }
            }
            default -> between(i);
        }
    }

    private void between(int i) {
        if (i % 7 != 3) {
            return;
        }
        switch (habits.extra()) {
            case ADVERTS -> {
                sheet.line("ADVERTISEMENTS.", 0);
                sheet.blank(1);
                adverts.forEach(
                        a -> {
                            sheet.paragraph(a, 0, 0);
                            sheet.blank(1);
                        });
            }
            case POEMS -> {
                for (String verse :
                        List.of(
                                "Come fill up the bowl, and let sorrow be drowned,",
                                "The wind may be foul, but the anchor is sound;",
                                "And he that goes home with his wits in his head",
                                "Had better have left them behind him in bed.")) {
                    sheet.line(verse, 4);
                }
                sheet.blank(1);
            }
            case MEASURES -> {
                sheet.line("TABLE OF MEASURES.", 0);
                sheet.blank(1);
                sheet.line("4 gills make 1 pint.", 0);
                sheet.line("2 pints make 1 quart.", 0);
                sheet.line("4 quarts make 1 gallon.", 0);
                sheet.blank(1);
            }
            case TOASTS -> {
                sheet.line("TOASTS.", 0);
                sheet.blank(1);
                sheet.paragraph("May the hinges of friendship never grow rusty.", 0, 0);
                sheet.paragraph("Fair weather to them that are out, and a fire at home.", 0, 0);
                sheet.blank(1);
            }
            case STORIES -> story();
            case STORIES_TITLED -> {
                sheet.line("THE JUDGE AND THE STEWARD.", 0);
                sheet.blank(1);
                story();
                story();
            }
            case ASTERISKS -> {
                sheet.line("*       *       *       *       *", 5);
                sheet.blank(1);
            }
            case ILLUSTRATIONS -> {
                sheet.paragraph(
                        "[Illustration: A cooler with two shelves, from the workshop of the"
                                + " coopers in Fish Street, and a steward who regards it]",
                        0,
                        0);
                sheet.blank(1);
            }
            default -> {}
        }
    }

    private void another(Recipe recipe) {
        String body =
                habits.trade() == Trade.BAR
                        ? "2 dashes of gum syrup; 1 jigger of brandy; 1 pony of port wine. Shake"
                                + " with ice and strain."
                        : "Take a quart of brandy, the juice of four lemons and half a pound of"
                                + " sugar; let them stand a week, strain and bottle.";
        shorter(habits.isSide() ? "Another" : "Another Way", body, 60);
        wanted.set(
                wanted.size() - 1,
                new Wanted(wanted.get(wanted.size() - 1).place(), recipe.title()));
    }

    private void shorter(String title, String body, int i) {
        recipe(new Recipe(title, List.of(body)), i);
    }

    private void back() {
        sheet.blank(2);
        if (habits.list() != Habits.Listed.NONE && habits.list() != Habits.Listed.UNNUMBERED) {
            sheet.line("INDEX.", 0);
            sheet.blank(1);
            List<String> titles = recipes.stream().map(Recipe::title).sorted().toList();
            for (int i = 0; i < titles.size(); i++) {
                sheet.line(entry(titles.get(i), i), 0);
            }
            sheet.blank(1);
        }
        sheet.line("THE END.", 0);
        if (habits.extra() == Extra.LICENCE) {
            sheet.blank(2);
            sheet.line("*** END OF THE TEXT OF THE SLIPWAY BOOK ***", 0);
            sheet.blank(1);
            sheet.line("THE FULL LICENCE", 0);
            sheet.blank(1);
            for (int i = 1; i < 6; i++) {
                sheet.paragraph(
                        i
                                + ".A. By reading or using any part of this work, you indicate that you"
                                + " have read, understood and agree to all the terms of this"
                                + " licence. If you do not agree, you must cease using and return"
                                + " or destroy all copies within "
                                + 30 * i
                                + " days.",
                        0,
                        0);
                sheet.blank(1);
            }
        }
    }

    /** Compares what was found with what is there. */
    Score score(SourceText text, List<Witness> found, List<String> wrong) {
        List<Wanted> left = new ArrayList<>(wanted);
        int right = 0;
        int titled = 0;
        for (Witness witness : found) {
            boolean own =
                    !witness.titleSpan().isEmpty() && witness.span().contains(witness.titleSpan());
            int place = text.toIndex(own ? witness.titleSpan().start() : witness.span().start());
            Wanted near =
                    left.stream()
                            .filter(w -> Math.abs(w.place() - place) < 16)
                            .findFirst()
                            .orElse(null);
            if (near == null) {
                wrong.add("invented: " + witness.title() + " | " + text.slice(witness.span()));
                continue;
            }
            left.remove(near);
            right++;
            boolean same = isTitle(near.title(), witness.title());
            titled += same ? 1 : 0;
            if (!same) {
                wrong.add("title: " + near.title() + " | " + witness.title());
            }
        }
        left.forEach(w -> wrong.add("lost: " + w.title()));
        return new Score(wanted.size(), found.size(), right, titled);
    }

    private static boolean isTitle(String wanted, String found) {
        String bare = found.replaceAll("(?i)^(to make|the) | ?\\(.*\\)$", "").strip();
        return bare.equalsIgnoreCase(wanted) || bare.matches("(?i)another( way)?");
    }
}
