package org.stillroom.reading.cut;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.stillroom.model.source.Source;
import org.stillroom.reading.cut.Habits.Trade;

/** Invented books, each in one habit of setting recipes, are cut where their recipes start. */
class HabitBooksTest {
    /**
     * The share of recipes that must be found in their place, over two hundred books whose habits
     * are drawn at random.
     */
    @ParameterizedTest
    @EnumSource(Trade.class)
    void findsRecipesInBooksOfAnyHabit(Trade trade) throws IOException {
        HabitBook.Score all = new HabitBook.Score(0, 0, 0, 0);
        for (int seed = 0; seed < 200; seed++) {
            all = all.plus(score(Habits.drawn(trade, new Random(seed)), seed, new ArrayList<>()));
        }
        double least = trade == Trade.BAR ? 0.985 : 0.965;
        assertTrue(all.f1() >= least, line(trade.name(), all));
    }

    /** Run from the command line: prints the figure of each habit, and what is wrong. */
    public static void main(String[] args) throws IOException {
        boolean tell = args.length > 0;
        for (Habits habits : Habits.oneByOne()) {
            if (tell && !habits.toString().matches(args[0])) {
                continue;
            }
            List<String> wrong = new ArrayList<>();
            HabitBook.Score score = score(habits, 1, wrong);
            if (tell || score.f1() < 1 || score.titled() < score.right()) {
                System.out.println(line(habits.toString(), score));
            }
            if (tell) {
                wrong.forEach(w -> System.out.println("    " + w.replace('\n', '/')));
            }
            if (args.length > 1) {
                Files.writeString(Path.of(args[1]), new HabitBook(habits, 1).text());
            }
        }
        for (Trade trade : Trade.values()) {
            drawn(trade, tell ? 0 : 200);
        }
    }

    private static void drawn(Trade trade, int times) throws IOException {
        Map<String, HabitBook.Score> each = new LinkedHashMap<>();
        for (int seed = 0; seed < times; seed++) {
            Habits habits = Habits.drawn(trade, new Random(seed));
            HabitBook.Score score = score(habits, seed, new ArrayList<>());
            each.merge(trade + " all", score, HabitBook.Score::plus);
            for (String value : habits.toString().split(" ")) {
                each.merge(trade + " " + value, score, HabitBook.Score::plus);
            }
        }
        each.forEach((name, score) -> System.out.println(line(name, score)));
    }

    private static String line(String name, HabitBook.Score s) {
        return String.format(
                Locale.ROOT,
                "%-80s there %4d found %4d right %4d titles %4d F1 %.3f",
                name,
                s.there(),
                s.found(),
                s.right(),
                s.titled(),
                s.f1());
    }

    private static HabitBook.Score score(Habits habits, long seed, List<String> wrong)
            throws IOException {
        HabitBook book = new HabitBook(habits, seed);
        Source source = MiniatureBooksTest.source("habit", book.text());
        return book.score(source.text(), new BookCutter().cut(source).witnesses(), wrong);
    }
}
