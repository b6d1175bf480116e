package org.stillroom.reading.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.Confidence;
import org.stillroom.model.reading.Doubt;
import org.stillroom.model.reading.Ingredient;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Reference.Edit;
import org.stillroom.model.text.FoldedText;
import org.stillroom.model.text.Folding;
import org.stillroom.model.text.Span;
import org.stillroom.reading.cut.TitleKey;

/**
 * Applies the changes of a reference to the lines of the other recipe.
 *
 * <p>A replaced ingredient keeps the amount unless the words give another. A change that does not
 * fit the other recipe is a doubt.
 */
final class EditPlan {

    /** Words that tell what to do, or in what, and are no ingredient. */
    private static final Pattern NO_NAME =
            Pattern.compile(
                    "\\b(?:into|it|them|glass(?:es)?|tumbler|goblet|cup|spoon|strain(?:ed)?|fill(?:ed|ing)?"
                            + "|top|serve[d]?|stir(?:red)?|shak(?:e|en)|having|that|which|is|are|be|before|after"
                            + "|until|till|when|while|very|quite|more|less|other|others|manner|way|case)\\b");

    /** What a recipe calls the fruit that its title has named. */
    private static final Set<String> NAMELESS =
            Set.of("juice", "fruit", "berries", "the fruit", "the juice", "peel", "flowers");

    private static final Pattern GENERIC = Pattern.compile("^(?:wine|spirits?|liquor|alcohol)$");
    private static final Pattern NO_STRENGTH =
            Pattern.compile(
                    "(?:any )?(?:liquors?|spirits|alcohol)(?: of any (?:kind|sort)| whatever)");
    private static final Pattern PART =
            Pattern.compile(
                    "((?:an? |one )?(?:half|third|quarter)|part|some|so much|a portion)(?: of)?(?: the)? (.+)");
    private static final Map<String, Rational> REST =
            Map.of(
                    "half", Rational.of(1, 2),
                    "third", Rational.of(2, 3),
                    "quarter", Rational.of(3, 4));

    /** What tells one sort from another and names nothing by itself (“hot milk for cold”). */
    private static final Pattern QUALITY =
            Pattern.compile(
                    "(?:hot|cold|white|red|brown|black|green|fresh|dry|sweet|old|new|plain)");

    private static final Pattern ALL =
            Pattern.compile(
                    "^(?:(?:the )?(?:quantit|amount|proportion|measure)|all\\b|everything|every ingredient)");

    private static final Map<String, Rational> TIMES =
            Map.of(
                    "three times", Rational.of(3),
                    "four times", Rational.of(4),
                    "five times", Rational.of(5),
                    "six times", Rational.of(6),
                    "ten times", Rational.of(10),
                    "twelve times", Rational.of(12),
                    "one quarter", Rational.of(1, 4),
                    "one third", Rational.of(1, 3),
                    "one half", Rational.of(1, 2));

    private final List<ReadingLine> lines;
    private final List<ReadingLine> added = new ArrayList<>();
    private final List<Edit> edits = new ArrayList<>();
    private final List<Doubt> doubts = new ArrayList<>();
    private final List<String> passedOver = new ArrayList<>();
    private final FoldedText folded;
    private final int offset;
    private final Function<String, List<ReadingLine>> reader;
    private final Categories categories = Categories.house();

    /**
     * Starts from the other recipe.
     *
     * @param base its lines
     * @param folded the folded body that the changes stand in
     * @param offset where that body starts in the source
     * @param reader reads a phrase into lines
     */
    EditPlan(
            List<ReadingLine> base,
            FoldedText folded,
            int offset,
            Function<String, List<ReadingLine>> reader) {
        this.lines = new ArrayList<>(base);
        this.folded = folded;
        this.offset = offset;
        this.reader = reader;
    }

    List<ReadingLine> lines() {
        return lines;
    }

    List<ReadingLine> added() {
        return added;
    }

    List<Edit> edits() {
        return edits;
    }

    List<Doubt> doubts() {
        return doubts;
    }

    /** Carries out one change; a change that names nothing is passed over. */
    void apply(RawEdit raw) {
        boolean needs = raw.op() != RawEdit.Op.REMOVE && raw.op() != RawEdit.Op.AMOUNT;
        if (needs && read(raw.to(), raw.toStart()).ingredientName().isBlank()) {
            return;
        }
        boolean brings = raw.op() == RawEdit.Op.ADD || raw.op() == RawEdit.Op.WITH;
        if (brings && !isThing(read(raw.to(), raw.toStart()))) {
            passedOver.add(raw.to());
            return;
        }
        switch (raw.op()) {
            case REPLACE -> replace(raw, find(raw.from()));
            case WITH -> with(raw);
            case ADD -> add(raw);
            case REMOVE -> remove(raw);
            case AMOUNT -> amount(raw);
        }
    }

    /** Tells whether a line names something to drink or eat, or measures it. */
    private boolean isThing(ReadingLine line) {
        boolean known = line.ingredient().filter(i -> !i.senses().isEmpty()).isPresent();
        boolean measured =
                line.amount().quantity().isPresent()
                        && !line.measure().equals("whole")
                        && !line.measure().equals("unstated");
        return known || measured || categories.of(line.ingredientName()).isPresent();
    }

    /**
     * Exchanges what gives the other recipe its name, where only the titles say so: “Quince Water:
     * as Apple Water”.
     */
    void exchangeByTitle(String own, String other) {
        List<String> mine = different(own, other);
        List<String> theirs = different(other, own);
        boolean exchanged = edits.stream().anyMatch(e -> e instanceof Edit.Replace);
        if (exchanged || mine.size() != 1 || theirs.size() != 1 || isAdded(mine.get(0))) {
            return;
        }
        int at = naming(theirs.get(0));
        String name = named(mine.get(0)).orElseGet(() -> asWritten(mine.get(0)));
        Optional<ReadingLine> named = reader.apply(name).stream().findFirst();
        boolean thing =
                named.flatMap(ReadingLine::ingredient)
                        .filter(i -> !i.senses().isEmpty())
                        .isPresent();
        boolean told = named(mine.get(0)).isPresent();
        if (at >= 0 && (thing || told || categories.of(name).isPresent())) {
            ReadingLine line = lines.get(at);
            edits.add(new Edit.Replace(line.ingredientName(), name));
            Ingredient ingredient =
                    named.flatMap(ReadingLine::ingredient)
                            .map(i -> new Ingredient(i.name(), line.span(), i.senses(), List.of()))
                            .orElse(new Ingredient(name, line.span(), List.of(), List.of()));
            lines.set(at, withIngredient(line, ingredient));
        }
    }

    /** The words of the recipe say already that the thing is there, or comes beside what is. */
    private boolean isAdded(String word) {
        List<String> changed = new ArrayList<>();
        edits.forEach(
                e -> {
                    if (e instanceof Edit.Change c) {
                        changed.add(c.ingredient());
                    }
                });
        boolean beside = isOne(word, added.stream().map(ReadingLine::ingredientName).toList());
        return isOne(word, changed) || !changed.isEmpty() && beside;
    }

    /** Returns the words of a change that named nothing known, where a title's word is in them. */
    private Optional<String> named(String word) {
        Set<String> sought = TitleKey.of(word).words();
        return passedOver.stream()
                .filter(words -> TitleKey.of(words).words().containsAll(sought))
                .filter(words -> words.split(" ").length <= 3)
                .findFirst();
    }

    /**
     * Leaves out what is said twice: a thing that takes another's place is neither added nor left
     * out (“brandy, not gin”).
     */
    void settle() {
        List<String> taken = new ArrayList<>();
        edits.forEach(
                e -> {
                    if (e instanceof Edit.Replace r) {
                        taken.add(r.to());
                    }
                });
        edits.removeIf(e -> e instanceof Edit.Remove r && isOne(r.ingredient(), taken));
        edits.removeIf(e -> e instanceof Edit.Add a && isOne(a.line().ingredientName(), taken));
        added.removeIf(l -> isOne(l.ingredientName(), taken));
        doubts.removeIf(
                d ->
                        taken.stream()
                                .anyMatch(t -> d.reason().startsWith("“" + t + "” is to be left")));
    }

    private static boolean isOne(String name, List<String> names) {
        Set<String> key = TitleKey.of(name).words();
        return names.stream().anyMatch(n -> TitleKey.of(n).words().equals(key));
    }

    /** Returns the form of a title's word that the recipe's own words have, “bullaces”. */
    private String asWritten(String word) {
        Set<String> key = TitleKey.of(word).words();
        for (String written : folded.folded().split("[^\\p{L}]+")) {
            if (written.startsWith(word.substring(0, Math.min(3, word.length())))
                    && TitleKey.of(written).words().equals(key)) {
                return written;
            }
        }
        return word;
    }

    /** Returns the line that a title's word names, or that is left nameless for it: “juice”. */
    private int naming(String word) {
        Set<String> sought = TitleKey.of(word).words();
        int bare = -1;
        for (int i = 0; i < lines.size(); i++) {
            String name = lines.get(i).ingredientName();
            if (TitleKey.of(name).words().containsAll(sought)) {
                return i;
            }
            bare = NAMELESS.contains(name) ? i : bare;
        }
        return bare;
    }

    /** Returns the words of one title that the other has not, in lower case. */
    private static List<String> different(String title, String other) {
        Set<String> known = TitleKey.of(other).words();
        List<String> rest = new ArrayList<>();
        for (String word : Folding.foldWord(title).split("[^\\p{L}]+")) {
            Set<String> key = TitleKey.of(word).words();
            if (!key.isEmpty() && !known.containsAll(key)) {
                rest.add(word);
            }
        }
        return rest;
    }

    private static ReadingLine withIngredient(ReadingLine line, Ingredient ingredient) {
        return new ReadingLine(
                line.text(),
                line.span(),
                line.kind(),
                line.amount(),
                line.measure(),
                line.size(),
                Optional.of(ingredient),
                line.amountSpan(),
                line.confidence(),
                List.of());
    }

    /** Returns the line that words name, or -1. */
    int find(String words) {
        int best = -1;
        int most = 0;
        for (int i = 0; i < lines.size(); i++) {
            int agreement = Categories.agreement(words, lines.get(i).ingredientName());
            if (agreement > most) {
                most = agreement;
                best = i;
            }
        }
        return best;
    }

    private void replace(RawEdit raw, int at) {
        String sort = raw.from().substring(raw.from().lastIndexOf(' ') + 1);
        boolean bare = QUALITY.matcher(raw.to()).matches() && !sort.equals(raw.from());
        ReadingLine to = read(bare ? raw.to() + " " + sort : raw.to(), raw.toStart());
        if (raw.from().equals("its") || raw.from().equals("their")) {
            inStead(to);
            return;
        }
        Matcher part = PART.matcher(raw.from());
        if (part.matches() && find(part.group(2)) >= 0) {
            inPart(raw, part.group(1), find(part.group(2)), to);
            return;
        }
        if (at < 0) {
            Optional<String> category = categories.of(raw.from());
            at = category.map(this::only).orElse(-1);
        }
        at = at < 0 ? first(raw.from()) : at;
        boolean quality = at < 0 && QUALITY.matcher(raw.from()).matches();
        at = quality ? find(to.ingredientName()) : at;
        if (at < 0) {
            missing(
                    raw,
                    "“"
                            + raw.from()
                            + "” is to be replaced, and the other recipe does not name it.");
            edits.add(new Edit.Replace(raw.from(), to.ingredientName()));
            added.add(to);
            return;
        }
        edits.add(new Edit.Replace(lines.get(at).ingredientName(), to.ingredientName()));
        lines.set(at, replaced(lines.get(at), to));
    }

    /** “Wine instead of half the milk”: the rest of the milk stays. */
    private void inPart(RawEdit raw, String part, int at, ReadingLine to) {
        ReadingLine line = lines.get(at);
        Optional<Rational> rest =
                Optional.ofNullable(REST.get(part.replaceAll("^(?:an?|one) ", "")));
        Optional<ReadingLine> less =
                rest.filter(r -> line.amount().quantity().isPresent()).map(r -> times(line, r));
        edits.add(new Edit.Change(line.ingredientName(), part, less));
        less.ifPresentOrElse(
                l -> lines.set(at, l),
                () ->
                        doubt(
                                raw,
                                "“"
                                        + to.ingredientName()
                                        + "” takes the place of a part of “"
                                        + line.ingredientName()
                                        + "”, and it is not said of how much."));
        edits.add(new Edit.Add(to));
        added.add(to);
    }

    /** “Leaving the wine out, and putting cider in its stead.” */
    private void inStead(ReadingLine to) {
        for (int i = edits.size() - 1; i >= 0; i--) {
            if (edits.get(i) instanceof Edit.Remove gone) {
                edits.set(i, new Edit.Replace(gone.ingredient(), to.ingredientName()));
                lines.add(to);
                return;
            }
        }
        edits.add(new Edit.Add(to));
        added.add(to);
    }

    /** What is of its kind gives way; where nothing is, the thing comes on top. */
    private void with(RawEdit raw) {
        ReadingLine to = read(raw.to(), raw.toStart());
        String name = to.ingredientName();
        int same = find(name);
        boolean measured = to.amount().quantity().isPresent();
        boolean exact =
                same >= 0 && Categories.agreement(name, lines.get(same).ingredientName()) == 3;
        if (exact && measured) {
            ReadingLine changed = withAmount(lines.get(same), to);
            edits.add(new Edit.Change(changed.ingredientName(), raw.to(), Optional.of(changed)));
            lines.set(same, changed);
            return;
        }
        if (exact) {
            return;
        }
        int kind = categories.of(name).map(this::likely).orElse(-1);
        int at = same >= 0 ? same : kind >= 0 ? kind : alike(name);
        boolean article = raw.to().startsWith("an ") || raw.to().startsWith("a ");
        if (at >= 0 && !(article && measured && same < 0)) {
            edits.add(new Edit.Replace(lines.get(at).ingredientName(), name));
            lines.set(at, replaced(lines.get(at), to));
        } else {
            edits.add(new Edit.Add(to));
            added.add(to);
        }
    }

    /** The only line whose name ends alike: another juice for a juice. */
    private int alike(String name) {
        String head = name.substring(name.lastIndexOf(' ') + 1);
        int found = -1;
        for (int i = 0; i < lines.size(); i++) {
            String there = lines.get(i).ingredientName();
            boolean ends = there.endsWith(" " + head) && name.contains(" ");
            if (ends && found >= 0) {
                return -1;
            }
            found = ends ? i : found;
        }
        return found;
    }

    /** The only line of a category, or the only strong line where the category is strong. */
    private int likely(String category) {
        int same = only(category);
        if (same >= 0 || !Categories.isStrong(category)) {
            return same;
        }
        int found = -1;
        for (int i = 0; i < lines.size(); i++) {
            Optional<String> there = categories.of(lines.get(i).ingredientName());
            if (there.filter(Categories::isStrong).isPresent()) {
                if (found >= 0) {
                    return -1;
                }
                found = i;
            }
        }
        return found;
    }

    private int only(String category) {
        int found = -1;
        for (int i = 0; i < lines.size(); i++) {
            Optional<String> there = categories.of(lines.get(i).ingredientName());
            if (there.filter(c -> Categories.alike(c, category)).isPresent()) {
                if (found >= 0) {
                    return category.equals("spirit") ? found : -1;
                }
                found = i;
            }
        }
        return found;
    }

    /** “The wine” means the first of several wines. */
    private int first(String words) {
        if (!GENERIC.matcher(words).matches()) {
            return -1;
        }
        Optional<String> category = categories.of(words);
        for (int i = 0; category.isPresent() && i < lines.size(); i++) {
            if (categories.of(lines.get(i).ingredientName()).equals(category)) {
                return i;
            }
        }
        return -1;
    }

    private void add(RawEdit raw) {
        ReadingLine line = read(raw.to(), raw.toStart());
        edits.add(new Edit.Add(line));
        added.add(line);
    }

    private void remove(RawEdit raw) {
        if (NO_STRENGTH.matcher(raw.from()).matches()) {
            unspirited();
            return;
        }
        int at = raw.from().equals("float") ? floated() : find(raw.from());
        if (at < 0) {
            at = categories.of(raw.from()).map(this::only).orElse(-1);
        }
        if (at < 0 && !isThing(read(raw.from(), raw.start()))) {
            return;
        }
        if (at < 0) {
            edits.add(new Edit.Remove(raw.from()));
            missing(
                    raw,
                    "“"
                            + raw.from()
                            + "” is to be left out, and the other recipe does not name it.");
            return;
        }
        edits.add(new Edit.Remove(lines.get(at).ingredientName()));
        lines.remove(at);
    }

    /** “Without liquor of any kind”: all that makes the drink strong goes. */
    private void unspirited() {
        List<ReadingLine> strong =
                lines.stream()
                        .filter(
                                l ->
                                        categories
                                                .of(l.ingredientName())
                                                .filter(Categories::isStrong)
                                                .isPresent())
                        .toList();
        strong.forEach(l -> edits.add(new Edit.Remove(l.ingredientName())));
        lines.removeAll(strong);
    }

    /** Returns the only line that goes on top, or -1. */
    private int floated() {
        int found = -1;
        for (int i = 0; i < lines.size(); i++) {
            boolean top = lines.get(i).kind() == LineKind.TOP;
            if (top && found >= 0) {
                return -1;
            }
            found = top ? i : found;
        }
        return found;
    }

    /** “Half the gentian”, “twice the sugar”, “reduce bourbon to 1 oz.”. */
    private void amount(RawEdit raw) {
        if (ALL.matcher(raw.from()).find()) {
            scaleAll(raw);
            return;
        }
        int at = find(raw.from());
        if (at < 0) {
            edits.add(new Edit.Change(raw.from(), raw.to(), Optional.empty()));
            doubt(
                    raw,
                    "The amount of “"
                            + raw.from()
                            + "” changes, and the other recipe does not name it.");
            return;
        }
        ReadingLine line = lines.get(at);
        Optional<Rational> factor = factor(raw.to());
        Optional<ReadingLine> stated =
                factor.isEmpty()
                        ? Optional.of(read(raw.to() + " " + raw.from(), raw.toStart()))
                                .filter(l -> l.amount().quantity().isPresent())
                                .filter(
                                        l ->
                                                !raw.to().contains("more")
                                                        && !raw.to().contains("less"))
                        : Optional.empty();
        ReadingLine changed;
        if (factor.isPresent() && line.amount().quantity().isPresent()) {
            changed = times(line, factor.get());
        } else if (stated.isPresent()) {
            changed = withAmount(line, stated.get());
        } else if (moreOrLess(raw, line).isPresent()) {
            changed = moreOrLess(raw, line).get();
        } else {
            edits.add(new Edit.Change(line.ingredientName(), raw.to(), Optional.empty()));
            doubt(
                    raw,
                    "The words change an amount (“" + raw.to() + "”) without saying to how much.");
            return;
        }
        edits.add(new Edit.Change(line.ingredientName(), raw.to(), Optional.of(changed)));
        lines.set(at, changed);
    }

    /** “Using half the quantities”: every number of the other recipe times a factor. */
    private void scaleAll(RawEdit raw) {
        edits.add(new Edit.Change(Edit.Change.ALL, raw.to(), Optional.empty()));
        Optional<Rational> factor = factor(raw.to());
        if (factor.isEmpty()) {
            doubt(raw, "The words change every amount without saying to how much.");
            return;
        }
        lines.replaceAll(l -> times(l, factor.get()));
    }

    /** “Half a pound more”: the sum or the rest, where both amounts are of one measure. */
    private Optional<ReadingLine> moreOrLess(RawEdit raw, ReadingLine line) {
        String stated = raw.to().replaceAll(" (?:more|less)$", "");
        if (stated.equals(raw.to()) || line.amount().quantity().isEmpty()) {
            return Optional.empty();
        }
        ReadingLine change = read(stated + " of " + raw.from(), raw.toStart());
        if (change.amount().quantity().isEmpty() || !change.measure().equals(line.measure())) {
            return Optional.empty();
        }
        Rational there = line.amount().quantity().get();
        Rational by = change.amount().quantity().get();
        Rational sum = raw.to().endsWith("more") ? there.plus(by) : there.minus(by);
        Amount amount = new Amount(line.amount().kind(), Optional.of(sum), Optional.empty());
        return sum.signum() <= 0
                ? Optional.empty()
                : Optional.of(
                        new ReadingLine(
                                line.text(),
                                line.span(),
                                line.kind(),
                                amount,
                                line.measure(),
                                line.size(),
                                line.ingredient(),
                                line.amountSpan(),
                                line.confidence(),
                                List.of()));
    }

    private static Optional<Rational> factor(String words) {
        if (words.startsWith("doubl") || words.startsWith("twice")) {
            return Optional.of(Rational.of(2));
        }
        if (words.startsWith("treble")) {
            return Optional.of(Rational.of(3));
        }
        if (words.startsWith("halv")) {
            return Optional.of(Rational.of(1, 2));
        }
        Optional<Rational> times =
                TIMES.entrySet().stream()
                        .filter(e -> (words + " times").startsWith(e.getKey()))
                        .map(Map.Entry::getValue)
                        .findFirst();
        if (times.isPresent()) {
            return times;
        }
        return words.equals("half") || words.startsWith("half as")
                ? Optional.of(Rational.of(1, 2))
                : Optional.empty();
    }

    private static ReadingLine times(ReadingLine line, Rational factor) {
        Amount old = line.amount();
        Amount amount =
                new Amount(
                        old.kind(),
                        old.quantity().map(factor::times),
                        old.quantityMax().map(factor::times));
        return new ReadingLine(
                line.text(),
                line.span(),
                line.kind(),
                amount,
                line.measure(),
                line.size(),
                line.ingredient(),
                line.amountSpan(),
                line.confidence(),
                List.of());
    }

    private static ReadingLine withAmount(ReadingLine line, ReadingLine stated) {
        return new ReadingLine(
                stated.text(),
                stated.span(),
                line.kind(),
                stated.amount(),
                stated.measure(),
                stated.size(),
                line.ingredient(),
                stated.amountSpan(),
                stated.confidence(),
                List.of());
    }

    private static ReadingLine replaced(ReadingLine line, ReadingLine to) {
        boolean measured = to.amount().quantity().isPresent() && !to.measure().equals("unstated");
        ReadingLine amount = measured ? to : line;
        return new ReadingLine(
                line.text(),
                line.span(),
                line.kind(),
                amount.amount(),
                amount.measure(),
                amount.size(),
                to.ingredient(),
                line.amountSpan(),
                line.confidence(),
                List.of());
    }

    /** Reads words of the body; what the grammar cannot read is taken as a name. */
    private ReadingLine read(String words, int start) {
        int end = Math.min(folded.folded().length(), start + words.length());
        Span printed = folded.toPrinted(Math.min(start, end), end).shift(offset);
        for (ReadingLine line : reader.apply(words)) {
            if (!line.ingredientName().isBlank()) {
                return moved(line, printed, words);
            }
        }
        String name = words.replaceAll("^(?:the|an?|some|of) ", "").strip();
        name = NO_NAME.matcher(name).find() || name.split(" ").length > 4 ? "" : name;
        Ingredient ingredient = new Ingredient(name, printed, List.of(), List.of());
        return new ReadingLine(
                words,
                printed,
                LineKind.MEASURED,
                Amount.UNSTATED,
                "unstated",
                Optional.empty(),
                Optional.of(ingredient),
                Optional.empty(),
                Confidence.of(0.6),
                List.of());
    }

    private static ReadingLine moved(ReadingLine line, Span printed, String words) {
        Optional<Ingredient> ingredient =
                line.ingredient()
                        .map(i -> new Ingredient(i.name(), printed, i.senses(), i.preparations()));
        return new ReadingLine(
                words,
                printed,
                line.kind(),
                line.amount(),
                line.measure(),
                line.size(),
                ingredient,
                Optional.empty(),
                line.confidence(),
                List.of());
    }

    private void missing(RawEdit raw, String reason) {
        if (!lines.isEmpty()) {
            doubt(raw, reason);
        }
    }

    private void doubt(RawEdit raw, String reason) {
        int end = Math.min(raw.end(), folded.folded().length());
        int start = Math.min(raw.start(), end);
        doubts.add(new Doubt(reason, folded.toPrinted(start, end).shift(offset), 0.5));
    }
}
