package org.stillroom.reading.reference;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Finds the words by which a recipe sends the reader to another one.
 *
 * <p>Looks at the folded body only as far as {@link #REACH} characters.
 */
final class MentionFinder {

    static final int REACH = 700;
    private static final int SHORT = 45;
    private static final int BRIEF = 30;

    /** Orders that take over one step of another recipe, not the drink. */
    private static final Pattern STEP =
            Pattern.compile(
                    "(season|freeze|strain|garnish|trim|decorate|ornament|finish|bottle|sweeten)"
                            + "(ed)?( it)? (the )?$");

    private static final Trigger SEVERAL =
            Trigger.of(
                    "above foregoing preceding last previous these",
                    "\\b(?:either|any|any one|one|each|half|both|all|one or other)(?: of)? the (?:above|"
                            + "foregoing|preceding|last)(?: recipes| drinks)?\\b(?! one)"
                            + "|\\b(?:the )?(?:two|three|four|five) (?:foregoing|above|last|preceding|previous)\\b"
                            + "|\\b(?:above|foregoing|last|preceding|previous) (?:two|three|four|five)\\b"
                            + "|\\bthese (?:two|three)\\b");
    private static final Pattern NUMBER =
            Pattern.compile(
                    "\\b(?:same as|like|as in|as for|as|see|from|of|to|in|for)? ?(?:the )?"
                            + "(?:no|number|recipe no|receipt no|recipe|receipt)[.,]? ?(\\d{1,4})\\b"
                            + "|\\b(?:same as|made like|made as|as in|see) (\\d{1,4})\\b(?! ?(?:oz|lb))"
                            + "|\\b(?:as|like|from) (\\d{1,4})(?=[,;.]| with| but| using)"
                            + "|^\\((\\d{1,4})\\)");
    private static final Trigger TITLE =
            Trigger.of(
                    "same comme wie como igual as like see similar similarly manner lines "
                            + "fashion style follow everything times headed entitled consult refer "
                            + "turn ordered directed prescribed",
                    "\\b(?:same (?:way |manner )?as(?: for| in| with)?|comme|wie|como|igual que|as you (?:do|would)|exactly as|just as|as for"
                            + "|as in|as with|like|see|similar(?:ly)? to|manner (?:of|as)|way as|on the lines of|after the (?:manner|fashion|style) of"
                            + "|proceed as|follow|everything in|times|(?:made|make|mix|prepare|prepared"
                            + "|serve) as|in all else as|respects as|as) "
                            + "(?:(?:the )?(?:directions|recipe|receipt|method|instructions|rule|formula)(?: given)?"
                            + " (?:for|of) )?(?:directed |described )?(?:for |in |with |to )?"
                            + "(?:that of |those of )?(?:the |an? |other |le |la |el |l')*"
                            + "|\\b(?:consult|refer to|turn to|(?:ordered|directed|prescribed) (?:in|for|under)) (?:the )?"
                            + "|\\b(?:recipe|receipt|directions|one) (?:headed|entitled) [“\"'‘’]?");
    private static final Trigger LAST_BUT_ONE =
            Trigger.of("last first", "(the )?(one before (the )?last|last but one|first of these)");
    private static final Trigger BEFORE =
            Trigger.of(
                    "foregoing preceding above previous last former before supra one "
                            + "identical same",
                    "\\b(?:as|like|to|from|of|follow|same as|in|with) (?:the |that |directions )*"
                            + "(?:foregoing|preceding|above|previous|last|former|before)"
                            + "(?: one| recipe| receipt| drink| directions)?\\b"
                            + "|\\b(?:directions|recipe|receipt) above\\b"
                            + "|^(?:the )?(?:previous|preceding|foregoing|above|last)(?: one)?\\b"
                            + "|\\b(?:see|vide|as per|repeat|repeating|take|with|by|to) (?:the )?(?:above|preceding|"
                            + "foregoing|last|previous|former|supra)\\b|\\b(?:preceding|previous|last|same) (?:recipe|receipt|"
                            + "formula|drink|directions|mixture)\\b|\\bthe (?:above|preceding|last|former|"
                            + "previous)\\b(?=,? (?:with|but|made|using|without|less|plus|and|will|can|may|is))"
                            + "|\\bthe foregoing\\b|\\b(?:as|like) the [a-z]{3,12} one\\b|^identical\\b|\\babove fashion\\b|\\babove recipe\\b");
    private static final Pattern ELSEWHERE =
            Pattern.compile("^(?:edition|chapter|volume|part|book|work|page|table|paragraph)\\b");
    private static final Trigger SAME =
            Trigger.of(
                    "ditto idem dito do id same manner fashion wise sort aforesaid likewise above before "
                            + "predecessor vide ut eodem comme meme wie ebenso desgleichen dasselbe "
                            + "mismo como come mutatis otherwise respects similarly",
                    "^(?:ditto|idem|dito)\\b|^(?:do|id)\\.(?=[ ,;]|$)|\\bditto\\b(?=[,.; ]|$)"
                            + "|\\b(?:in )?(?:exactly |precisely |just |much )*(?:the )?same "
                            + "(?:way|manner|fashion|style|potion|sort of drink)\\b(?! (?:twice|thrice|daily"
                            + "|every|each|night|morning|until|till|again))|\\bin like (?:manner|fashion|wise|sort)\\b"
                            + "|\\b(?:otherwise |precisely |exactly )*the same\\b(?= ?[,.;:]| with| but"
                            + "| without| using| substituting| only| made| less| in (?:equal|all)| and"
                            + "| except|$)"
                            + "|\\bby the same (?:rule|process|method|means|recipe|receipt)\\b|\\baforesaid\\b"
                            + "|^likewise\\b|\\bthe (?:one|drink|recipe|receipt) (?:above|before)\\b"
                            + "|\\bits predecessor\\b|\\b(?:vide|ut) (?:ante|supra)\\b|\\beodem modo\\b"
                            + "|\\babove\\b(?=[,.;]|$| with| but)"
                            + "|\\bcomme (?:ci-dessus|le precedent|la precedente|dessus)\\b|\\bde meme\\b"
                            + "|\\b(?:le|la) meme\\b|\\bmeme (?:recette|chose|formule)\\b"
                            + "|\\bwie (?:oben|vorher|vorstehend|voriges|das vorige)\\b|\\bebenso\\b"
                            + "|\\bdesgleichen\\b|\\bdasselbe\\b|\\blo mismo\\b|\\bdel mismo modo\\b"
                            + "|\\bcomo (?:el|la) (?:anterior|precedente)\\b|\\bcome sopra\\b"
                            + "|^same\\b|\\bmutatis mutandis\\b|\\botherwise (?:the same|as (?:given|"
                            + "above|before))\\b|\\bin (?:all )?other respects\\b|^similarly\\b"
                            + "|\\bsame\\b(?= ?[,.;]| (?:with|but|using|substituting))");

    /** Words before a title that is named whole; a title in part is not enough after these. */
    private static final Pattern LOOSE =
            Pattern.compile(
                    "\\b(?:reverse the proportions of|recipe (?:for|of)|receipt (?:for|of)|formula (?:for|of)|directions (?:for|of|given (?:for|under))|instructions for|method (?:for|of)|process (?:for|of)|rule for|vary|varying|identical (?:with|to)"
                            + "|differs? from|varies from|resembles|vide|cf\\.?|repeat|start with|begin with"
                            + "|(?:make|mix|take|prepare|build|brew|is|are|of|to|into|from|in|simply|merely"
                            + "|nothing but)(?: up)?(?: an?| the| your)|this is (?:but|only|merely|simply|just|really)|an?|the) "
                            + "(?:plain |ordinary |regular |usual |common )?");

    /** Before a single word these name what goes into the glass, not a recipe. */
    private static final Pattern THING = Pattern.compile("^(?:into|from|in|of|to|is|are|the)\\b");

    /** Words before a title that only compare or name it. */
    private static final Pattern COMPARED =
            Pattern.compile(
                    "\\b(?:than|called|call it|unlike|not|prefer|call this)(?: an?| the)? ?$");

    private static final Trigger SAME_EARLY =
            Trigger.of(
                    "same",
                    "^.{0,30}?\\bsame\\b(?! (?:quantit|amount|weight|proportion|measure|size|bulk|glass"
                            + "|may be|can be|is sold|will|time|water|number|jug|bowl|vessel|of\\b|day|night|lemon|syrup))");
    private static final Pattern SHORT_EDIT =
            Pattern.compile(
                    "^(?:with |without |no |add |omit |use |using |only |but |made with |plus |less "
                            + "|double |half the |twice |substitut)|\\binstead\\b(?! of which)| for ");
    private static final Pattern ONLY_EDIT =
            Pattern.compile(
                    "^(?:with(?:out)? [^,;]{3,30}(?:added|instead|omitted|left out)|omit|leave out|less the"
                            + "|but |only |no [^,;.]{3,25}[.;,] ?[^,;.]{3,25} (?:for|instead)"
                            + "|swap|exchange|change the|double the|halve the|twice the)");
    private static final Pattern LETTER =
            Pattern.compile(
                    "^(?:as |see |like |same as |the same as )?([a-z])(?=,? (?:with|but|without|using"
                            + "|only|less|plus|and)\\b)");

    private static final Pattern EDIT_ALONE =
            Pattern.compile(
                    "^(?:for this,? (?:only )?)?(?:substitut|without the |replace |leave out |omit )"
                            + "|\\bin (?:the )?(?:place|stead|room) of\\b|\\btakes? the place of\\b"
                            + "|\\bvice\\b|\\binstead of\\b(?! which)");

    /** Words that order a recipe to be made like another. */
    private static final Pattern ORDERED =
            Pattern.compile(
                    "^(?:made|make|proceed|prepared?|mix|see|do|follow|treat|as for|as in|same way"
                            + "|same as|exactly as|just as|in like manner|everything in|in all else"
                            + "|in the same (?:way|manner)|ditto|respects as|no|number)\\b");

    private static final Pattern OTHER =
            Pattern.compile("^ ?(?:as |to )?(?:the )?(?:other|all|any|most) ");

    /** “Ditto of port” is the whole recipe. */
    private static final Pattern DITTO = Pattern.compile("^(?:ditto|do|idem|same|similarly)");

    /** “In the same manner as other syrups” names no recipe. */
    private static final Pattern OTHERS = Pattern.compile("\\b(?:other|all|any|most) [a-z]+s$");

    /** Words that a mere ingredient does not have beside it. */
    private static final Pattern TOLD =
            Pattern.compile(
                    "\\b(?:is|are|be|may|made|make|take|put|add|use|using|see|but|as|like|same|proceed"
                            + "|mix|stir|shake|strain|serve|this|it|them|when|then|for|with|without"
                            + "|substitut\\w*|instead|omit\\w*)\\b");

    private static final Pattern OPENING =
            Pattern.compile(
                    "^[a-z0-9'’\\- ]{3,60}?(?=,|;|:| made | and | served | having | on | minus | less "
                            + "| with | without | plus | topped | but | in a | using "
                            + "| to which | is made into | made with |\\.$|\\. )");

    private final TitleIndex titles;

    MentionFinder(TitleIndex titles) {
        this.titles = titles;
    }

    /**
     * Returns the words that send from a recipe to another.
     *
     * @param from the place of the recipe
     * @param full whether it has amounts enough of its own, so that slight signs do not count
     */
    Optional<Mention> find(String folded, String printed, int from, boolean full) {
        String body = folded.substring(0, Math.min(REACH, folded.length()));
        Set<String> present = Trigger.words(body);
        return several(body, present)
                .or(() -> dittoMarks(body, from))
                .or(() -> share(body, from))
                .or(() -> numbered(body, from))
                .or(() -> titled(body, present, printed, from))
                .or(() -> before(body, present, LAST_BUT_ONE, 2))
                .or(() -> before(body, present, BEFORE, 1))
                .or(() -> before(body, present, SAME, 1))
                .filter(m -> !isAside(body, m))
                .or(() -> full ? Optional.empty() : hinted(body, present, folded, printed, from));
    }

    /** Slighter signs, which count in a recipe that says little of its own. */
    private Optional<Mention> hinted(
            String body, Set<String> present, String folded, String printed, int from) {
        return lettered(body, from)
                .or(() -> opening(body, from))
                .or(() -> loose(body, from))
                .or(() -> anywhere(body, printed, from))
                .or(() -> before(body, present, SAME_EARLY, 1))
                .filter(m -> !isAside(body, m))
                .or(() -> editAlone(body, folded.length()))
                .or(() -> variant(body, folded.length(), from));
    }

    /**
     * A recipe that lists its own makings first may still compare itself: “rum, cream; paler than
     * the last”. Only words that order it to be made so send the reader on.
     */
    private static boolean isAside(String body, Mention m) {
        boolean ordered = ORDERED.matcher(body.substring(m.start(), m.end())).find();
        boolean listed = listsFirst(body.substring(0, m.start()));
        return listed && !ordered
                || OTHER.matcher(body.substring(m.end())).find()
                || OTHERS.matcher(body.substring(m.start(), m.end())).find();
    }

    private static boolean listsFirst(String before) {
        long items = 0;
        String[] parts = before.split("[,;.(]", -1);
        for (int i = 0; i + 1 < parts.length; i++) {
            String part = parts[i].strip();
            boolean brief = part.length() > 2 && countWords(part) <= 5;
            items += brief && !TOLD.matcher(part).find() ? 1 : 0;
        }
        return items >= 2;
    }

    /** “" " " with sherry” repeats the recipe above. */
    private static final Pattern MARKS = Pattern.compile("^(?:[\"„] ?){1,5}(?= ?(?:with|but|$))");

    /** “One quarter of the foregoing quantities.” */
    private static final Pattern SHARE =
            Pattern.compile(
                    "^(?:(?:one |a )?(?:half|quarter|third|fourth)(?: of)?|double|twice|three times) the"
                            + " (?:foregoing|above|preceding|last)(?= (?:quantit|recipe|receipt|amounts))");

    private static Optional<Mention> dittoMarks(String body, int from) {
        return above(MARKS.matcher(body), from);
    }

    private static Optional<Mention> share(String body, int from) {
        return above(SHARE.matcher(body), from);
    }

    private static Optional<Mention> above(Matcher m, int from) {
        return from > 0 && m.find()
                ? Optional.of(
                        new Mention(
                                Mention.Kind.BEFORE, Optional.empty(), 1, m.start(), m.end(), true))
                : Optional.empty();
    }

    private static Optional<Mention> several(String body, Set<String> present) {
        Matcher m = SEVERAL.matcher(body);
        return SEVERAL.mayMatch(present) && m.find()
                ? Optional.of(
                        new Mention(
                                Mention.Kind.SEVERAL,
                                Optional.empty(),
                                0,
                                m.start(),
                                m.end(),
                                true))
                : Optional.empty();
    }

    private Optional<Mention> numbered(String body, int from) {
        Matcher m = NUMBER.matcher(body);
        while (m.find()) {
            String number =
                    Stream.of(m.group(1), m.group(2), m.group(3), m.group(4))
                            .filter(Objects::nonNull)
                            .findFirst()
                            .orElseThrow();
            boolean inTitle =
                    m.group(1) != null
                            && m.start() > 0
                            && Character.isLetterOrDigit(body.charAt(m.start()))
                            && m.group().startsWith("no");
            if (!inTitle && (titles.number(number, from).isPresent() || m.start() < 12)) {
                return Optional.of(
                        new Mention(
                                Mention.Kind.NUMBER,
                                Optional.of(number),
                                0,
                                m.start(),
                                m.end(),
                                isWhole(body, m.start())));
            }
        }
        return Optional.empty();
    }

    private static boolean isWhole(String body, int start) {
        return !STEP.matcher(body.substring(Math.max(0, start - 24), start)).find();
    }

    /** A trigger and the longest words after it that are a title, whole before in part. */
    private Optional<Mention> titled(String body, Set<String> present, String printed, int from) {
        Optional<Mention> part = Optional.empty();
        if (!TITLE.mayMatch(present)) {
            return part;
        }
        Matcher m = TITLE.matcher(body);
        while (m.find()) {
            int start = m.start();
            int name = m.end();
            boolean strong = isStrong(m.group());
            for (int end : ends(body, name)) {
                String words = body.substring(name, end);
                if (titles.exact(words, from).isPresent()) {
                    return Optional.of(mention(body, name, start, end, from));
                }
            }
            int end = phraseEnd(body, name);
            String words = body.substring(name, end);
            boolean partly =
                    part.isEmpty()
                            && titles.partly(words, from).isPresent()
                            && words.chars().anyMatch(Character::isLetter);
            boolean fits =
                    m.group().contains("same")
                            || m.group().startsWith("as")
                            || m.group().contains(" as ")
                            || m.group().startsWith("see")
                            || m.group().contains("like");
            boolean kind = m.group().endsWith(" a ") || m.group().endsWith(" an ");
            if (partly && fits && !kind) {
                part = Optional.of(mention(words, start, end, body));
            } else if (part.isEmpty()
                    && strong
                    && end > name
                    && start < 40
                    && namesSomething(words, printed)) {
                part = Optional.of(mention(words, start, end, body));
            }
        }
        return part;
    }

    private static boolean isStrong(String trigger) {
        return trigger.startsWith("see ")
                || trigger.contains("same as")
                || trigger.contains("made as")
                || trigger.contains("like ")
                || trigger.contains("as for");
    }

    /** Tells whether words were printed with a capital, as a title is. */
    private static boolean namesSomething(String words, String printed) {
        if (words.isBlank()
                || words.startsWith("above")
                || words.startsWith("foregoing")
                || words.startsWith("preceding")
                || words.startsWith("last")) {
            return false;
        }
        String first = words.split(" ")[0];
        if (first.length() < 3) {
            return false;
        }
        String capital = Character.toUpperCase(first.charAt(0)) + first.substring(1);
        return printed.contains(capital);
    }

    /** Leaves off words at the end that do not make the title another one. */
    private Mention mention(String body, int name, int start, int end, int from) {
        int shortest = end;
        OptionalInt target = titles.exact(body.substring(name, end), from);
        for (int shorter : ends(body, name)) {
            if (shorter < shortest
                    && titles.exact(body.substring(name, shorter), from).equals(target)) {
                shortest = shorter;
            }
        }
        return mention(body.substring(name, shortest), start, shortest, body);
    }

    private static Mention mention(String words, int start, int end, String body) {
        return new Mention(
                Mention.Kind.TITLE,
                Optional.of(words.strip()),
                0,
                start,
                end,
                isWhole(body, start));
    }

    /** Returns where a title of eight words or fewer may end, longest first. */
    private static int[] ends(String body, int from) {
        int[] ends = new int[8];
        int n = 0;
        int at = from;
        while (n < 8 && at < body.length()) {
            while (at < body.length() && (body.charAt(at) == ' ' || body.charAt(at) == ',')) {
                at++;
            }
            int end = at;
            while (end < body.length() && isName(body.charAt(end))) {
                end++;
            }
            if (end == at) {
                break;
            }
            ends[n++] = end;
            at = end;
            boolean dot = at < body.length() && body.charAt(at) == '.';
            boolean goesOn =
                    dot && at + 2 < body.length() && Character.isDigit(body.charAt(at + 2))
                            || dot && end - ends[n - 1] < 3 && body.startsWith("st.", end - 2);
            at = goesOn ? at + 1 : at;
        }
        int[] longestFirst = new int[n];
        for (int i = 0; i < n; i++) {
            longestFirst[i] = ends[n - 1 - i];
        }
        return longestFirst;
    }

    private static boolean isName(char c) {
        return Character.isLetterOrDigit(c) || "'’-&".indexOf(c) >= 0;
    }

    private static final Pattern PHRASE_END =
            Pattern.compile(
                    "[,;:.()]|$| (?:with|but|using|without|substituting|except|and|only|less|plus|is"
                            + "|leaving|omitting|adding|wanting|in|made|minus|instead)\\b");

    private static int phraseEnd(String body, int from) {
        Matcher m = PHRASE_END.matcher(body);
        return m.find(from) ? Math.min(m.start(), from + 60) : Math.min(body.length(), from + 60);
    }

    private static Optional<Mention> before(
            String body, Set<String> present, Trigger trigger, int back) {
        if (!trigger.mayMatch(present)) {
            return Optional.empty();
        }
        Matcher m = trigger.matcher(body);
        while (m.find()) {
            if (LIKENESS.matcher(body.substring(0, m.start())).find()) {
                continue;
            }
            int start = startOf(m, body);
            boolean early = start < 60 || countWords(body) <= SHORT;
            String rest = body.substring(m.end()).stripLeading();
            if (m.group().endsWith("before") && TIME.matcher(rest).find()) {
                continue;
            }
            boolean thing =
                    rest.startsWith("-")
                            || rest.startsWith("named")
                            || rest.startsWith("mentioned")
                            || rest.startsWith("mixture")
                            || rest.startsWith("ingredients")
                            || rest.startsWith("quantit")
                            || rest.startsWith("proportion")
                            || rest.startsWith("syrup")
                            || rest.startsWith("of ")
                                    && !(m.start() == 0 && DITTO.matcher(m.group()).find())
                            || ELSEWHERE.matcher(rest).find();
            if (early && !thing) {
                return Optional.of(
                        new Mention(
                                Mention.Kind.BEFORE,
                                Optional.empty(),
                                back,
                                start,
                                m.end(),
                                isWhole(body, start)));
            }
        }
        return Optional.empty();
    }

    /** “Gin, vermouth; the same …” begins at “same”, what goes before is the recipe's own. */
    private static int startOf(Matcher m, String body) {
        boolean own = m.start() == 0 && m.group().endsWith("same") && m.group().indexOf(',') >= 0;
        return own ? body.lastIndexOf("same", m.end()) : m.start();
    }

    /** “It has the taste of the former” and “named with the last” only compare. */
    private static final Pattern LIKENESS =
            Pattern.compile(
                    "\\b(?:tastes?|flavou?r|colou?r|looks?|strength|smell|fame|name|named|sister|cousin"
                            + "|brother|rival|popularity|price)(?: [a-z]+)?,? ?(?:of|to|with|like)? ?(?:the )?$");

    /** Words after “as before” that make it a time: “as before dinner”. */
    private static final Pattern TIME =
            Pattern.compile(
                    "^(?!with|but|using|only|and|except|substitut|adding|add|in|made|less|without|described"
                            + "|directed|given|mentioned|stated)[a-z]");

    private static int countWords(String body) {
        return body.isBlank() ? 0 : body.strip().split(" ").length;
    }

    /** A body that starts with another recipe's title: “Groyne, topped with champagne”. */
    private Optional<Mention> opening(String body, int from) {
        Matcher m = OPENING.matcher(body);
        if (m.find() && countWords(body) <= SHORT) {
            for (int end : ends(body, 0)) {
                if (end <= m.end() && titles.exact(body.substring(0, end), from).isPresent()) {
                    return Optional.of(mention(body, 0, 0, end, from));
                }
            }
        }
        int in = body.lastIndexOf(" in a ");
        if (in > 0 && countWords(body) < 14) {
            int end = phraseEnd(body, in + 6);
            String words = body.substring(in + 6, end);
            if (titles.exact(words, from).isPresent()) {
                return Optional.of(mention(words, in, end, body));
            }
        }
        return Optional.empty();
    }

    /** A whole title in a short body, where it is not one of the ingredients. */
    private Optional<Mention> loose(String body, int from) {
        if (countWords(body) > SHORT) {
            return Optional.empty();
        }
        Matcher m = LOOSE.matcher(body);
        int at = 0;
        while (at < body.length() && m.find(at)) {
            for (int end : ends(body, m.end())) {
                String words = body.substring(m.end(), end);
                boolean thing =
                        !words.contains(" ") && THING.matcher(m.group()).find()
                                || COMPARED.matcher(body.substring(0, m.start())).find();
                if (!thing && !isStock(words) && titles.exact(words, from).isPresent()) {
                    return Optional.of(mention(body, m.end(), m.start(), end, from));
                }
            }
            at = m.start() + 1;
        }
        return Optional.empty();
    }

    /** A whole title in a few words, of several words or printed with a capital. */
    private Optional<Mention> anywhere(String body, String printed, int from) {
        if (countWords(body) > BRIEF) {
            return Optional.empty();
        }
        for (int at = 0; at < body.length(); at++) {
            boolean starts = isName(body.charAt(at)) && (at == 0 || !isName(body.charAt(at - 1)));
            for (int end : starts ? ends(body, at) : new int[0]) {
                String words = body.substring(at, end);
                boolean told = words.contains(" ") || at > 0 && namesSomething(words, printed);
                boolean compared = COMPARED.matcher(body.substring(0, at)).find();
                if (told && !compared && !isStock(words) && titles.exact(words, from).isPresent()) {
                    return Optional.of(mention(body, at, at, end, from));
                }
            }
        }
        return Optional.empty();
    }

    /** Tells whether a title names something that other recipes have as an ingredient. */
    private static boolean isStock(String words) {
        return !DRINK.matcher(words).find() && isThing(words);
    }

    private static final Pattern DRINK =
            Pattern.compile(
                    "\\b(?:punch|cocktail|sling|fizz|sour|toddy|flip|cobbler|julep|rickey|cooler|daisy|smash"
                            + "|sangaree|highball|crusta|fix|negus|nog|cup|lemonade)s?$");

    private static boolean isThing(String words) {
        return Categories.house().of(words).isPresent()
                || words.matches(
                        ".*(syrup|bitters|vinegar|cordial|water|sugar|wine|essence|tincture)s?");
    }

    private Optional<Mention> lettered(String body, int from) {
        Matcher m = LETTER.matcher(body);
        if (!m.find()) {
            return Optional.empty();
        }
        String letter = m.group(1).toUpperCase(java.util.Locale.ROOT);
        return titles.number(letter, from).isPresent()
                ? Optional.of(
                        new Mention(
                                Mention.Kind.NUMBER,
                                Optional.of(letter),
                                0,
                                m.start(),
                                m.end(),
                                true))
                : Optional.empty();
    }

    /** A few words of change under a title that varies the one before. */
    private Optional<Mention> variant(String body, int length, int from) {
        boolean brief = length < REACH && countWords(body) <= 14;
        boolean varies = titles.variesTheOneBefore(from) && SHORT_EDIT.matcher(body).find();
        return from > 0 && brief && (varies || ONLY_EDIT.matcher(body).find())
                ? Optional.of(new Mention(Mention.Kind.BEFORE, Optional.empty(), 1, 0, 0, true))
                : Optional.empty();
    }

    /** A short body that only says what to change stands for the recipe before it. */
    private static Optional<Mention> editAlone(String body, int length) {
        boolean brief = length < REACH && countWords(body) <= 22;
        Matcher edit = EDIT_ALONE.matcher(body);
        return brief && edit.find() && !listsFirst(body.substring(0, edit.start()))
                ? Optional.of(new Mention(Mention.Kind.BEFORE, Optional.empty(), 1, 0, 0, true))
                : Optional.empty();
    }
}
