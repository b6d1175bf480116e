package org.stillroom.reading.reference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds what a reference changes: one thing for another, more, less, or none of a thing. */
final class EditFinder {

    private static final String N =
            "((?:(?! for | being | replacing | read | instead| in (?:the )?(?:place|lieu|room|stead)| vice "
                    + "| with | but | and (?:no|omit|leave|drop|add|for) )[^,;:.()§]){2,60}?)";
    private static final String END =
            "(?= ?(?:$|[,;:.()§])| and | but | with (?!the )| in (?:all )?other| instead| otherwise"
                    + "| if | as | when | where | until | to (?!the)| too\\b| also\\b)";
    private static final String OPEN =
            "(?:(?<=^)|(?<=[,;:.(] )|(?<=[,;:.(§])|(?<=§ )|\\b(?:but|and|only|or) )"
                    + "(?:but |and |only |save that |saving that |except that |excepting that |with |by |use |using |put |put in |of |taking |take |employ(?:ing)? )*"
                    + "(?:the |that )?";
    private static final String INSTEAD =
            "(?: being| is| are)?(?: used| put| taken| added| employed| gathered| chosen)? (?:(?<=used |put |taken |employed )for|instead of|in (?:the )?(?:place|lieu|room|stead) of"
                    + "|in exchange for|rather than|vice|substituted for|replacing|where that has|takes? the place of"
                    + "|taking the place of|suppl(?:ies|ying) the place of|ousting|displacing|supplanting"
                    + "|do(?:es|ing) duty for|stand(?:s|ing) (?:in )?for|in substitution for) (?:the |that of |using )*";

    private record Rule(RawEdit.Op op, Pattern pattern, int from, int to) {}

    private static final List<Rule> RULES =
            List.of(
                    rule(
                            RawEdit.Op.REPLACE,
                            "\\bsubstitut(?:e|ing) for (?:the )?"
                                    + N
                                    + " ((?:an?|one|two|three|four|five|six|half an?|some|\\d+) [^,;:.()§]{2,50}?)"
                                    + END,
                            1,
                            2),
                    rule(
                            RawEdit.Op.REPLACE,
                            "\\b(?:omit(?:ting)?|leav(?:e|ing) out) (?:the )?"
                                    + N
                                    + ",? and (?:put|us|tak|substitut)(?:e|ing|ting)? (?:in )?(?:the )?"
                                    + "(?!twice |thrice |double |half |more |less |extra )"
                                    + N
                                    + "(?: instead)?"
                                    + END,
                            1,
                            2),
                    rule(
                            RawEdit.Op.REPLACE,
                            "\\b(?:with|taking|us(?:e|ing)|put(?:ting)?) (?:the )?"
                                    + N
                                    + " where (?:the )?"
                                    + N
                                    + " (?:is|are) (?:ordered|directed|prescribed|named|used)",
                            2,
                            1),
                    rule(
                            RawEdit.Op.AMOUNT,
                            "\\bwith an? (double|treble|half) (?:quantity|allowance|portion|measure) of (?:the )?"
                                    + N
                                    + END,
                            2,
                            1),
                    rule(
                            RawEdit.Op.ADD,
                            "\\bto (?:each|every|an?) [a-z]+ of which (?:the )?"
                                    + N
                                    + " (?:has|have)? ?(?:been|is|are|being) (?:put|added|thrown in)",
                            0,
                            1),
                    rule(
                            RawEdit.Op.REPLACE,
                            "\\bsubstitut(?:e|ing|ed)(?: the)? "
                                    + N
                                    + " for (?:the |that of )*"
                                    + N
                                    + END,
                            2,
                            1),
                    rule(
                            RawEdit.Op.REPLACE,
                            "(?:^|[,;:.§] ?|\\bwith |\\bbut |\\band )(?:the )?"
                                    + N
                                    + " (?:being |is |are |to be )?(?:replaced by|changed (?:to|for)"
                                    + "|exchanged for|giv(?:ing|es?) (?:place|way) to) (?:the )?"
                                    + N
                                    + END,
                            1,
                            2),
                    rule(
                            RawEdit.Op.REPLACE,
                            "\\b(?:us(?:e|ing)|put(?:ting)?|tak(?:e|ing)) (?:the )?"
                                    + N
                                    + " (?:in )?(?:the )?§+(?: recipe| receipt)? ?(?:instead of"
                                    + "|in (?:the )?(?:place|lieu|room|stead) of|for) (?:the )?"
                                    + N
                                    + END,
                            2,
                            1),
                    rule(
                            RawEdit.Op.REPLACE,
                            "\\bfor (?:the )?"
                                    + N
                                    + " (?:read|put|use|take|write|substitute) (?:the )?"
                                    + N
                                    + END,
                            1,
                            2),
                    rule(
                            RawEdit.Op.REPLACE,
                            "\\b(?:replac|chang|exchang)(?:e|ing)(?: the)? "
                                    + N
                                    + "(?: in (?:the )?§+(?: recipe| receipt)?)?"
                                    + " (?:for|by|with|to|into) (?:the )?"
                                    + N
                                    + END,
                            1,
                            2),
                    rule(
                            RawEdit.Op.AMOUNT,
                            "\\bthe (?:[a-z]+) of "
                                    + N
                                    + " (?:becomes|is made|being made) "
                                    + N
                                    + END,
                            1,
                            2),
                    rule(
                            RawEdit.Op.REPLACE,
                            "\\b(?:us(?:e|ing)|put(?:ting)?|tak(?:e|ing)|and|add(?:ing)?) (?:the )?"
                                    + N
                                    + " in (its|their) (?:stead|place|room)",
                            2,
                            1),
                    rule(
                            RawEdit.Op.AMOUNT,
                            "\\b(?:omit(?:ting)?|leav(?:e|ing) out|minus) "
                                    + "((?:an? |one )?(?:quarter|third|half|fourth)) (?:of )?the "
                                    + N
                                    + END,
                            2,
                            1),
                    rule(
                            RawEdit.Op.AMOUNT,
                            "(?:^|[,;:.§] ?|\\bwith |\\bbut |\\band )(?:the )?"
                                    + N
                                    + " (?:being |is |are )?(?:cut|reduced|increased|raised|brought)"
                                    + "(?: down)? to (?:only )?"
                                    + N
                                    + END,
                            1,
                            2),
                    rule(
                            RawEdit.Op.AMOUNT,
                            "\\blet there be ([^,;:.()§]{2,40}?) of the " + N + END,
                            2,
                            1),
                    rule(
                            RawEdit.Op.AMOUNT,
                            "\\b((?:doubl|trebl|halv)(?:e|ing) (?:everything|all(?: the)?(?: quantities"
                                    + "| amounts)?|the (?:whole|quantities|lot)))\\b",
                            0,
                            1),
                    rule(
                            RawEdit.Op.AMOUNT,
                            "\\b((?:one )?(?:half|quarter|third|fourth)) (?:of )?(?:the |these |those )?§*"
                                    + " ?(?:foregoing |above |same )?(?:quantit|amounts|measures)[a-z]*",
                            0,
                            1),
                    rule(
                            RawEdit.Op.AMOUNT,
                            "\\bin ((?:two|three|four|five|six) times) (?:the|that) (?:quantity|amount)",
                            0,
                            1),
                    rule(
                            RawEdit.Op.REPLACE,
                            "\\b(?:in|with) which (?:the )?"
                                    + N
                                    + " (?:is|are) (?:substituted|used|put|taken) (?:for|instead of"
                                    + "|in (?:the )?place of) (?:the )?"
                                    + N
                                    + END,
                            2,
                            1),
                    rule(RawEdit.Op.REPLACE, OPEN + N + INSTEAD + N + END, 2, 1),
                    rule(
                            RawEdit.Op.REPLACE,
                            "\\b(?:using|use|with|but|and|taking|of) (?:the )?"
                                    + N
                                    + INSTEAD
                                    + N
                                    + END,
                            2,
                            1),
                    rule(
                            RawEdit.Op.AMOUNT,
                            "\\breduc(?:e|ing)(?: the)? " + N + " to " + N + END,
                            1,
                            2),
                    rule(
                            RawEdit.Op.REPLACE,
                            "\\blet (?:the )?" + N + " be (?:the )?" + N + END,
                            1,
                            2),
                    rule(
                            RawEdit.Op.REMOVE,
                            "(?:^|[,;:.§] ?|\\band )(?:the )?"
                                    + N
                                    + " (?:being |is |are )?(?:left (?:out|off)|omitted|dispensed with|dropped"
                                    + "|kept back)",
                            1,
                            0),
                    rule(
                            RawEdit.Op.REMOVE,
                            "\\b(?:leav(?:e|ing)|keep(?:ing)?|tak(?:e|ing)) (?:the )?"
                                    + N
                                    + " (?:out|back|away)\\b",
                            1,
                            0),
                    rule(
                            RawEdit.Op.ADD,
                            "\\bcolou?r(?:ing|ed)? (?:it )?with (?:the )?" + N + END,
                            0,
                            1),
                    rule(
                            RawEdit.Op.ADD,
                            "\\bwith (?:the )?" + N + " (?:on top|floated(?: on)?|on the top)\\b",
                            0,
                            1),
                    rule(
                            RawEdit.Op.ADD,
                            "\\bthen (?:the )?"
                                    + N
                                    + " (?:to be |is |are )?(?:put in|added|thrown in|poured on)",
                            0,
                            1),
                    rule(
                            RawEdit.Op.WITH,
                            "\\b(?:save|except|only|saving)(?: that| for)? (?:the )?"
                                    + N
                                    + " (?:is|are|being) used",
                            0,
                            1),
                    rule(
                            RawEdit.Op.WITH,
                            "(?:^|[,;:.§] ?|\\band )(?:the )?"
                                    + N
                                    + " (?:being (?:used|employed|taken|put in|substituted|supplied)|put in)"
                                    + "(?= ?(?:$|[,;:.]| and | but ))",
                            0,
                            1),
                    rule(
                            RawEdit.Op.WITH,
                            "(?:^|[,;:.§] ?)(?:the )?" + N + " (?:is |are )?to be used",
                            0,
                            1),
                    rule(
                            RawEdit.Op.WITH,
                            "§ ?,? (?:in|of) (?!an? |the |equal|all|half|every|proportion|large|small|tall|other)"
                                    + N
                                    + END,
                            0,
                            1),
                    rule(
                            RawEdit.Op.REMOVE,
                            "\\b(?:simple |mere )?omission of (?:the |any )?" + N + END,
                            1,
                            0),
                    rule(
                            RawEdit.Op.REMOVE,
                            "\\b(?:with )?the " + N + " (?:being )?(?:left out|omitted)",
                            1,
                            0),
                    rule(
                            RawEdit.Op.REMOVE,
                            "\\b(?:leav(?:e|ing) (?:out|off)|omit(?:ting)?|without|minus|wanting"
                                    + "|dispens(?:e|ing) with|drop(?:ping)?|less the|but not|no|not) (?:the |any )?"
                                    + N
                                    + END,
                            1,
                            0),
                    rule(
                            RawEdit.Op.AMOUNT,
                            "\\b(?:(?:doubl(?:e|ing)|halv(?:e|ing)|twice|treble|thrice)(?: the quantity of)? (?:the |as much (?:of )?(?:the )?)?"
                                    + "|half (?:the quantity of |as much (?:of )?)?(?:the |as much (?:of )?(?:the )?))"
                                    + N
                                    + END,
                            1,
                            -1),
                    rule(
                            RawEdit.Op.AMOUNT,
                            "(?:\\band |\\ballow(?:ing)? |, |§ |\\bwith )((?:half an? |an? (?:half|third|quarter|fourth)"
                                    + " of an? |an? |one |two |three )[a-z]+ (?:more|less))(?: of)? "
                                    + N
                                    + "(?= is | to |"
                                    + END.substring(3),
                            2,
                            1),
                    rule(
                            RawEdit.Op.AMOUNT,
                            "\\b((?:two|three|four|five|six|eight|ten|twelve|twenty)(?: times)?) (?:the )?(?=§)",
                            0,
                            1),
                    rule(
                            RawEdit.Op.AMOUNT,
                            "(?:§ ?,? ?|\\b)((?:using|use|in|taking|all in|but in|but) equal (?:parts|quantities|proportions))"
                                    + "(?= ?(?:$|[,;.]))",
                            0,
                            1),
                    rule(RawEdit.Op.AMOUNT, "\\b(more|less|extra)(?: of)? " + N + END, 2, 1),
                    rule(
                            RawEdit.Op.ADD,
                            "\\badd(?:ing)? (?:to )?(?:the )?§+,? (?:the )?" + N + END,
                            0,
                            1),
                    rule(RawEdit.Op.WITH, "§ ?[.)]{1,2} ([a-z]+(?: [a-z]+)?)(?=[.]?$)", 0, 1),
                    rule(RawEdit.Op.ADD, "\\bto which " + N + " (?:is|are|may be) added", 0, 1),
                    rule(
                            RawEdit.Op.ADD,
                            "§ ?, and (?:the )?((?:an?|one|two|three|half|some|the) [^,;:.()§]{2,50}?)"
                                    + END,
                            0,
                            1),
                    rule(
                            RawEdit.Op.ADD,
                            "(?:^|[.;,§] ?)(?:and )?"
                                    + N
                                    + " (?:may be |is |are |being )?(?:added|supplied|introduced|in addition)",
                            0,
                            1),
                    rule(
                            RawEdit.Op.ADD,
                            "\\b(?:add(?:ing)?|plus|topped with|top(?:ping)? up with|grate|with the addition of"
                                    + "|fill(?:ed|ing)?(?: it)?(?: up)? with|lengthen(?:ed|ing)? with|finish(?:ed|ing)? with"
                                    + "|squeez(?:e|ing) in|break(?:ing)? in|slic(?:e|ing) in) (?:the )?"
                                    + N
                                    + END,
                            0,
                            1),
                    rule(
                            RawEdit.Op.ADD,
                            "\\bwith (?:the )?" + N + " (?:added|also|too|besides|in addition)",
                            0,
                            1),
                    rule(
                            RawEdit.Op.ADD,
                            "\\b(?:(?:put|throw|pour|stir|drop|dash|shake)(?:ting|ing)? in"
                                    + "|(?:finish(?:ing)?|with) (?:a )?float of|float(?:ing)?) (?:the )?"
                                    + N
                                    + END,
                            0,
                            1),
                    rule(RawEdit.Op.WITH, OPEN + N + " instead", 0, 1),
                    rule(
                            RawEdit.Op.WITH,
                            "\\b(?:using|use|substitut(?:e|ing)|made (?:with|of)|but with|but of|only with|only|but) (?:the )?"
                                    + N
                                    + END,
                            0,
                            1),
                    rule(RawEdit.Op.WITH, "\\bwith (?:the )?" + N + END, 0, 1));

    /** “With the natural substitution of perry for cider”; looked for before all else. */
    private static final Rule SUBSTITUTION =
            rule(
                    RawEdit.Op.REPLACE,
                    "\\b(?:(?:with|by) )?(?:the )?(?:simple |natural |mere )?substitution of(?: the)? "
                            + N
                            + " for (?:the )?"
                            + N
                            + END,
                    2,
                    1);

    private static final Pattern FOR =
            Pattern.compile(
                    "(?:"
                            + OPEN
                            + "|\\b(?:using|use|with|but|put|of|and) (?:the )?)"
                            + N
                            + " for (?:the |that of )*"
                            + N
                            + END);
    private static final Pattern MORE =
            Pattern.compile("^ ?(?:, |,? and )(?:the |no |an? )?" + N + END);

    private static final Pattern LEADING =
            Pattern.compile(
                    "^(?:and|but|with|taking|using|use|put|put in|putting|the|of|allow|allowing|by|only|employ|or"
                            + "|adding|add|in|made|it|make|take|substituting|substitute|except that|except|save that|saving that|save|having"
                            + "|sweetened with|flavou?red with|let|that|, )(?: |$)");

    /** Words that a pattern catches and that name nothing to drink. */
    private static final Pattern IDLE =
            Pattern.compile(
                    "^(?:much|difference|more|less|boil(?:ed|ing)?|shak(?:e|en)|stir(?:red)?|strain(?:ed)?"
                            + "|serve[d]?|freeze|frozen|a (?:long|tall|small|large|thin) glass|equal parts"
                            + "|everything|straws?|a spoon|spoon|hot|cold|care|that|this|these|it|them"
                            + "|little|some|same|any|all|not|quite|well|ice in|having|sugared|frosted|as .*)$"
                            + "|^(?:boiled|stirred|shaken|served|strained|mixed|in place|it |so |a smaller"
                            + "|a larger|exception|addition)\\b");

    private static final Pattern MEASURED =
            Pattern.compile("^(?:an?|one|two|three|four|five|six|half|\\d[\\d/]*) [a-z-]+ of ");

    private EditFinder() {}

    private static Rule rule(RawEdit.Op op, String pattern, int from, int to) {
        return new Rule(op, Pattern.compile(pattern), from, to);
    }

    /**
     * Returns the changes in a folded body, in the order of the words.
     *
     * @param body the folded body, the words of the mention made “§”
     * @param inBase tells whether words name an ingredient of the other recipe
     */
    static List<RawEdit> find(String body, Predicate<String> inBase) {
        StringBuilder rest = new StringBuilder(body);
        List<RawEdit> found = new ArrayList<>();
        run(SUBSTITUTION, rest, inBase, found);
        exchanges(rest, inBase, found);
        RULES.forEach(rule -> run(rule, rest, inBase, found));
        found.sort(Comparator.comparingInt(RawEdit::start));
        return found;
    }

    private static void run(
            Rule rule, StringBuilder rest, Predicate<String> inBase, List<RawEdit> found) {
        Matcher m = rule.pattern.matcher(rest.toString());
        while (m.find()) {
            take(rule, m, rest, inBase, found);
            m.reset(rest.toString());
        }
    }

    /** “Brandy for whiskey”, where the second is in the other recipe. */
    private static void exchanges(
            StringBuilder rest, Predicate<String> inBase, List<RawEdit> found) {
        Matcher m = FOR.matcher(rest.toString());
        int from = 0;
        while (from < rest.length() && m.find(from)) {
            boolean replaced = INSTEAD_OF.matcher(rest.substring(0, m.start(1))).find();
            boolean swapped = SWAP.matcher(rest.substring(0, m.start())).find();
            if (swapped && inBase.test(m.group(1)) && !inBase.test(m.group(2))) {
                found.add(
                        new RawEdit(
                                RawEdit.Op.REPLACE,
                                bare(m.group(1)),
                                m.group(2).strip(),
                                m.start(),
                                m.end(2),
                                m.start(2)));
                blot(rest, m.start(1), m.end(2));
                m.reset(rest.toString());
            } else if (inBase.test(m.group(2)) && !replaced && !startsWithOrder(m.group(1))) {
                found.add(
                        new RawEdit(
                                RawEdit.Op.REPLACE,
                                m.group(2).strip(),
                                bare(m.group(1)),
                                m.start(),
                                m.end(2),
                                m.start(1) + m.group(1).indexOf(bare(m.group(1)))));
                blot(rest, m.start(1), m.end(2));
                m.reset(rest.toString());
            } else {
                from = m.start() + 1;
            }
        }
    }

    /** “Exchange the gin for rum and the milk for cream” names first what goes. */
    private static final Pattern SWAP = Pattern.compile("\\b(?:exchang|chang|swap)");

    /** In “rum instead of gin and sugar for the syrup” the gin is not what the syrup gives way to. */
    private static final Pattern INSTEAD_OF =
            Pattern.compile("\\b(?:instead|place|lieu|room|stead) of (?:the )?$");

    private static boolean startsWithOrder(String words) {
        String order = words.strip();
        return order.startsWith("substitut") || order.startsWith("chang");
    }

    private static void take(
            Rule rule,
            Matcher m,
            StringBuilder rest,
            Predicate<String> inBase,
            List<RawEdit> found) {
        boolean whole = rule.op == RawEdit.Op.AMOUNT && rule.from == 0;
        String from = rule.from > 0 ? bare(m.group(rule.from)) : whole ? "all" : "";
        String to = rule.to > 0 ? bare(m.group(rule.to)) : "";
        if (rule.to < 0) {
            to =
                    m.group()
                            .substring(0, m.start(1) - m.start())
                            .replaceAll(" (the|of)\\b", "")
                            .strip();
        }
        int toStart =
                rule.to > 0
                        ? m.start(rule.to) + Math.max(0, m.group(rule.to).indexOf(to))
                        : m.start();
        int end = m.end();
        boolean named =
                rule.op == RawEdit.Op.REMOVE || rule.op == RawEdit.Op.AMOUNT
                        ? whole || !from.isEmpty() && !IDLE.matcher(from).find()
                        : !to.isEmpty() && !IDLE.matcher(to).find();
        if (named) {
            found.add(new RawEdit(rule.op, from, to, m.start(), end, toStart));
        }
        blot(rest, m.start(), end);
        boolean list =
                rule.op == RawEdit.Op.REMOVE
                        || rule.op == RawEdit.Op.ADD
                        || rule.op == RawEdit.Op.AMOUNT
                        || rule.op == RawEdit.Op.WITH;
        while (list && end < rest.length()) {
            Matcher more = MORE.matcher(rest.substring(end));
            if (!more.find() || !goesOn(rule.op, more, inBase)) {
                break;
            }
            String word = bare(more.group(1));
            boolean remove = rule.op == RawEdit.Op.REMOVE;
            RawEdit.Op next = rule.op == RawEdit.Op.AMOUNT ? RawEdit.Op.WITH : RawEdit.Op.ADD;
            RawEdit.Op op = remove ? RawEdit.Op.REMOVE : next;
            found.add(
                    new RawEdit(
                            op,
                            remove ? word : "",
                            remove ? "" : word,
                            end,
                            end + more.end(),
                            end + more.start(1)));
            blot(rest, end, end + more.end());
            end += more.end();
        }
    }

    private static boolean goesOn(RawEdit.Op op, Matcher more, Predicate<String> inBase) {
        String words = more.group(1).strip();
        boolean order =
                words.matches(
                        "(?:add|omit|leav|with|put|tak|only|mak|us|serve|drop|no|put|twice|half|doubl|otherwise|allow|stir|shak|strain|made|mix).*");
        if (order) {
            return false;
        }
        if (op == RawEdit.Op.AMOUNT) {
            return MEASURED.matcher(words).find();
        }
        return op == RawEdit.Op.REMOVE
                ? inBase.test(words) && !more.group().contains("an ")
                : words.split(" ").length <= 5 && !inBase.test(words);
    }

    /** Returns words without the small words before them. */
    private static String bare(String words) {
        String rest = words.strip();
        String shorter = LEADING.matcher(rest).replaceFirst("");
        while (!shorter.equals(rest)) {
            rest = shorter;
            shorter = LEADING.matcher(rest).replaceFirst("");
        }
        return rest;
    }

    private static void blot(StringBuilder rest, int from, int to) {
        for (int i = from; i < to; i++) {
            rest.setCharAt(i, '§');
        }
    }
}
