package org.stillroom.reading.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.model.number.Rational;
import org.stillroom.reading.table.Joins.Join;
import org.stillroom.reading.table.Joins.Joined;

/** Reads what a row or a sentence says of its measures from the amounts in it. */
final class Statements {

    /** How freely the words may be taken. */
    enum Setting {
        /** A row of a table: dots, blanks and commas join. */
        ROW,
        /** A sentence outside the recipes. */
        PROSE,
        /** A sentence of a recipe, where only “one holds so many” is safe. */
        RECIPE
    }

    /** So many of one are so many of another; places are of the folded words. */
    record Stated(Item one, Item other, String of, int start, int end) {}

    private static final Pattern AFTER =
            Pattern.compile(
                    "^ (?:of |de |du |d'|von |del )([a-z][a-z -]{1,30}?)"
                            + "(?=[,.;)]|$| (?:and|et|und|y) )");
    private static final Pattern THERE =
            Pattern.compile(
                    "(?:there (?:are|is|go)|allow|allowing|reckon|reckoning|count|counting"
                            + "|il y a|il faut|il entre|on compte|comptez|on met"
                            + "|es gehen|man rechnet|rechnet man|rechne|es kommen|gehen"
                            + "|hay|entran|caben|se cuentan|cuentense|van) "
                            + "(?:about |environ |etwa |ungefahr |unos |unas |cerca de )?$");
    private static final Pattern ONE =
            Pattern.compile(
                    "(?:the|a|an|one|each|every|1|le|la|l'|un|une|chaque|une? seule?|ein|eine|einen"
                            + "|einem|einer|das|die|der|den|dem|jede[rsn]?|el|una|cada)[ '].*");

    private final Joins joins;
    private final String folded;
    private final List<Item> items;
    private final Setting setting;
    private final Optional<String> unit;
    private final List<Stated> out = new ArrayList<>();
    private boolean goesOn;
    private int chained = -1;

    /**
     * Makes a reader of one row or sentence.
     *
     * @param unit measure of bare numbers, as the head of their column names it
     */
    Statements(
            Joins joins, String folded, List<Item> items, Setting setting, Optional<String> unit) {
        this.joins = joins;
        this.folded = folded;
        this.items = items;
        this.setting = setting;
        this.unit = unit;
    }

    List<Stated> read() {
        int i = 0;
        while (i + 1 < items.size()) {
            i = step(i);
        }
        return out;
    }

    private Joined join(int i) {
        return i + 1 < items.size()
                ? joins.between(folded.substring(items.get(i).end(), items.get(i + 1).start()))
                : new Joined(Join.NONE, "");
    }

    /** Reads the pair that starts at an item; returns the item to go on from. */
    private int step(int i) {
        Item one = items.get(i);
        Joined join = join(i);
        if (one.kind() != Item.Kind.AMOUNT) {
            goesOn = false;
            return i + 1;
        }
        Optional<Integer> last =
                switch (join.join()) {
                    case EQUAL -> pair(i, join);
                    case IS -> setting == Setting.RECIPE ? Optional.empty() : pair(i, join);
                    case IN -> in(i, join);
                    case COUNT -> counted(i);
                    case GAP -> gap(i, join);
                    case CHAIN -> chained == i ? pair(i, join) : Optional.empty();
                    case OR, NEXT, NONE -> Optional.empty();
                };
        if (last.isEmpty()) {
            goesOn = false;
            return i + 1;
        }
        return after(last.get());
    }

    /** Returns where to go on after a pair that ends with an item. */
    private int after(int last) {
        goesOn = false;
        if (setting == Setting.RECIPE) {
            return items.size();
        }
        Join next = join(last).join();
        if (next == Join.EQUAL || next == Join.IS || next == Join.COUNT || next == Join.CHAIN) {
            chained = last;
            return last;
        }
        if (next == Join.OR && items.get(last + 1).kind() == Item.Kind.AMOUNT) {
            Stated before = out.get(out.size() - 1);
            Item other = items.get(last + 1);
            out.add(new Stated(before.one(), other, before.of(), before.start(), other.end()));
            return after(last + 1);
        }
        goesOn = next == Join.NEXT || next == Join.GAP;
        return last + 1;
    }

    private Optional<Integer> pair(int i, Joined join) {
        Item one = items.get(i);
        Optional<Item> other = other(i + 1);
        boolean unsafe =
                setting == Setting.RECIPE
                        && !(one.low().equals(Rational.ONE) && join.stuff().isEmpty());
        if (other.isEmpty() || unsafe) {
            return Optional.empty();
        }
        boolean number = items.get(i + 1).kind() == Item.Kind.NUMBER;
        if (number && join(i + 1).join() == Join.IN) {
            return counted(i);
        }
        add(one, other.get(), join.stuff());
        return Optional.of(i + 1);
    }

    /** Returns the other side of a pair: an amount, or a number whose measure was just named. */
    private Optional<Item> other(int i) {
        Item item = items.get(i);
        Optional<Item> before =
                out.isEmpty() ? Optional.empty() : Optional.of(out.get(out.size() - 1).other());
        return switch (item.kind()) {
            case AMOUNT -> Optional.of(item);
            case TIMES -> before.map(b -> b.times(item.low())).map(b -> moved(b, item));
            case NUMBER ->
                    unit.or(() -> goesOn ? before.map(Item::word) : Optional.empty()).map(item::of);
            case DITTO -> Optional.empty();
        };
    }

    private static Item moved(Item amount, Item place) {
        return new Item(
                amount.kind(),
                amount.low(),
                amount.high(),
                amount.size(),
                amount.word(),
                true,
                place.start(),
                place.end());
    }

    /** “There are four gills in a pint”. */
    private Optional<Integer> in(int i, Joined join) {
        boolean told = THERE.matcher(folded.substring(0, items.get(i).start())).find();
        boolean free = setting == Setting.ROW || setting == Setting.PROSE && (told || goesOn);
        if (!free || !isOne(items.get(i + 1)) || !join.stuff().isEmpty()) {
            return Optional.empty();
        }
        add(items.get(i), items.get(i + 1), "");
        return Optional.of(i + 1);
    }

    /** “To the pint”, “in a pint”, and not “to two pints”. */
    private boolean isOne(Item item) {
        return item.kind() == Item.Kind.AMOUNT
                && item.low().equals(Rational.ONE)
                && ONE.matcher(folded.substring(item.start(), item.end())).matches();
    }

    /** “A wine-glass that stands eight to the pint”. */
    private Optional<Integer> counted(int i) {
        boolean three =
                setting != Setting.RECIPE
                        && i + 2 < items.size()
                        && items.get(i + 1).kind() == Item.Kind.NUMBER
                        && items.get(i + 2).kind() == Item.Kind.AMOUNT
                        && join(i + 1).join() == Join.IN;
        if (!three) {
            return Optional.empty();
        }
        add(items.get(i).times(items.get(i + 1).low()), items.get(i + 2), "");
        return Optional.of(i + 2);
    }

    private Optional<Integer> gap(int i, Joined join) {
        boolean blank = folded.substring(items.get(i).end(), items.get(i + 1).start()).isBlank();
        boolean row = setting == Setting.ROW;
        Optional<Item> other = row || goesOn && blank ? other(i + 1) : Optional.empty();
        if (other.isEmpty()) {
            return Optional.empty();
        }
        add(items.get(i), other.get(), join.stuff());
        return Optional.of(i + 1);
    }

    private void add(Item one, Item other, String stuff) {
        Matcher after = AFTER.matcher(folded.substring(other.end()));
        String of = !stuff.isEmpty() ? stuff : after.find() ? after.group(1) : "";
        out.add(new Stated(one, other, of, one.start(), other.end()));
    }
}
