package org.stillroom.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Writes a library of invented books of any size with its truth.
 *
 * <p>{@code LibraryGenerator FOLDER [RECIPES] [SEED]}: the same seed gives the same bytes. Beside
 * each book the truth says what each line means: quantity, measure, ingredient.
 */
public final class LibraryGenerator {

    /** Recipes in one book. */
    static final int IN_A_BOOK = 25;

    private static final String[] SPIRITS = {
        "brandy",
        "Jamaica rum",
        "Holland gin",
        "Old Tom gin",
        "rye whiskey",
        "Scotch whisky",
        "arrack",
        "applejack",
        "Santa Cruz rum",
        "cognac"
    };
    private static final String[] WINES = {
        "sherry", "port wine", "claret", "Italian vermouth", "French vermouth", "Madeira"
    };
    private static final String[] SWEETS = {
        "gum syrup", "raspberry syrup", "orgeat", "maraschino", "curaçao", "capillaire"
    };
    private static final String[] SOURS = {"lemon juice", "lime juice", "orange juice"};
    private static final String[] BITTERS = {"orange bitters", "bitters", "absinthe"};
    private static final String[] FIRST = {
        "Anchor", "Beacon", "Captain's", "Dockside", "Easterly", "Ferryman's", "Gannet",
        "Harbour", "Ironmonger's", "Jetty", "Keel", "Lantern", "Mainsail", "Net-maker's",
        "Oyster", "Pilot's", "Quarterdeck", "Rigger's", "Saltwater", "Tidal"
    };
    private static final String[] SECOND = {
        "Cocktail", "Punch", "Sling", "Cobbler", "Flip", "Fizz", "Sour", "Toddy", "Cup", "Julep"
    };
    private static final String[][] FRACTIONS = {
        {"one", "1"},
        {"two", "2"},
        {"half a", "1/2"},
        {"one and a half", "1 1/2"},
        {"two-thirds of a", "2/3"},
        {"one-third of a", "1/3"},
        {"three", "3"}
    };
    private static final String[] TOWNS = {"Saltreath, GB", "Port Merriam, US"};

    private final SplittableRandom random;

    private LibraryGenerator(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** Writes a library. */
    public static void main(String[] words) throws IOException {
        Path folder = Path.of(words[0]);
        int recipes = words.length > 1 ? Integer.parseInt(words[1]) : 50_000;
        long seed = words.length > 2 ? Long.parseLong(words[2]) : 1L;
        int books = write(folder, recipes, seed);
        System.out.println(recipes + " recipes in " + books + " books, seed " + seed);
    }

    /** Writes a library and returns the number of books. */
    static int write(Path folder, int recipes, long seed) throws IOException {
        Files.createDirectories(folder.resolve("sources"));
        Files.createDirectories(folder.resolve("truth"));
        Files.writeString(
                folder.resolve("stillroom.json"),
                "{\"format\": 1, \"title\": \"Generated library, seed " + seed + "\"}\n");
        int books = (recipes + IN_A_BOOK - 1) / IN_A_BOOK;
        LibraryGenerator generator = new LibraryGenerator(seed);
        for (int book = 0; book < books; book++) {
            int here = Math.min(IN_A_BOOK, recipes - book * IN_A_BOOK);
            generator.book(folder, book, here);
        }
        return books;
    }

    private void book(Path folder, int book, int recipes) throws IOException {
        String name = String.format(java.util.Locale.ROOT, "book-%05d", book);
        int year = 1800 + random.nextInt(150);
        StringBuilder text = new StringBuilder();
        text.append("---\ntitle: The Book of the ")
                .append(pick(FIRST))
                .append(" House, ")
                .append(book)
                .append("\ntext-date: ")
                .append(year)
                .append("\nplace: ")
                .append(pick(TOWNS))
                .append("\ntrade: bar\nlanguage: en\n---\n");
        StringBuilder truth = new StringBuilder("ordinal\ttitle\tquantity\tmeasure\tingredient\n");
        for (int i = 1; i <= recipes; i++) {
            recipe(text, truth, i);
        }
        Files.writeString(
                folder.resolve("sources").resolve(name + ".md"), text, StandardCharsets.UTF_8);
        Files.writeString(
                folder.resolve("truth").resolve(name + ".tsv"), truth, StandardCharsets.UTF_8);
    }

    private void recipe(StringBuilder text, StringBuilder truth, int ordinal) {
        String title = pick(FIRST) + " " + pick(SECOND) + ", No. " + ordinal;
        List<String> said = new ArrayList<>();
        List<String[]> meant = new ArrayList<>();
        line(said, meant, pick(SPIRITS), "wineglass", "wineglass of ");
        line(said, meant, pick(WINES), "pony", "pony of ");
        line(said, meant, pick(SWEETS), "teaspoon", "teaspoonful of ");
        line(said, meant, pick(SOURS), "tablespoon", "tablespoonful of ");
        int dashes = 1 + random.nextInt(4);
        String bitters = pick(BITTERS);
        String[] numbers = {"one dash", "two dashes", "three dashes", "four dashes"};
        said.add(numbers[dashes - 1] + " of " + bitters);
        meant.add(new String[] {Integer.toString(dashes), "dash", bitters});
        text.append("\n## ").append(title).append("\n\nTake ");
        text.append(String.join(", ", said.subList(0, said.size() - 1)));
        text.append(" and ").append(said.get(said.size() - 1));
        text.append(
                ". Shake well with fine ice, strain into a cocktail glass, and serve with a slice "
                        + "of lemon. This was ");
        text.append("made at the ")
                .append(pick(FIRST))
                .append(" in the ")
                .append(pick(FIRST).toLowerCase(java.util.Locale.ROOT))
                .append(" season.\n");
        for (String[] m : meant) {
            truth.append(ordinal).append('\t').append(title).append('\t');
            truth.append(String.join("\t", m)).append('\n');
        }
    }

    private void line(
            List<String> said, List<String[]> meant, String thing, String measure, String words) {
        String[] fraction = FRACTIONS[random.nextInt(FRACTIONS.length)];
        boolean many = fraction[0].equals("two") || fraction[0].equals("three");
        String shown = many ? plural(words) : words;
        said.add(fraction[0] + " " + shown + thing);
        meant.add(new String[] {fraction[1], measure, thing});
    }

    private static String plural(String words) {
        return switch (words) {
            case "wineglass of " -> "wineglasses of ";
            case "pony of " -> "ponies of ";
            case "teaspoonful of " -> "teaspoonfuls of ";
            default -> "tablespoonfuls of ";
        };
    }

    private String pick(String[] words) {
        return words[random.nextInt(words.length)];
    }
}
