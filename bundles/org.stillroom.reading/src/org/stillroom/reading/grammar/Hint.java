package org.stillroom.reading.grammar;

/** Something about how a line was read that makes it more or less certain. */
enum Hint {
    /** Only an article stands for the number. */
    ARTICLE("an article stands for “one”"),
    /** No number is printed and none is needed. */
    NO_NUMBER(""),
    /** A singular measure without number is taken for one. */
    BARE_MEASURE("no number is printed before the measure; one is understood"),
    /** The signs of the number can be read in two ways. */
    AMBIGUOUS("the number can be read in two ways"),
    /** A slip of type or scanning was passed over. */
    SLIP("a slip of type or scanning was put right"),
    /** The word of measure is not in the vocabulary. */
    OPEN_MEASURE("the word of measure is not a usual one"),
    /** The ingredient is not in the thesaurus. */
    UNKNOWN_NAME("the ingredient is not in the thesaurus"),
    /** The ingredient ends where the grammar guesses. */
    LONG_NAME("the ingredient’s name is long; it may end earlier"),
    /** The amount stands after the name. */
    INVERSE("the amount is printed after the ingredient"),
    /** The amount points at another one. */
    SAME("the amount points at another amount"),
    /** Amounts are joined, of which the first is taken. */
    COMPOUND("two amounts stand together; the first is taken"),
    /** A name without amount. */
    BARE("no amount is printed"),
    /** Something is missing that a neighbour supplies. */
    ELIDED("a word is supplied from the phrase before"),
    /** A name without amount that stands in the middle of a sentence. */
    BARE_TOLD("no amount is printed; it may be named in passing"),
    /** In running prose a word beside the line was not understood. */
    BESIDE(""),
    /** A word beside the line, or anywhere in a single line, was not understood. */
    LEFTOVER("a word beside it was not understood"),
    /** A number beside the line was not taken up. */
    LOOSE_NUMBER("a number beside it was not taken up"),
    /** The measure comes from a slip or from no list, and no “of” follows. */
    SHARE_ALONE("a fraction without a measure is taken for a share"),
    /** A thing that is poured or heaped is counted; a word of measure may be missing. */
    MASS_COUNTED("a number stands before something that is not counted"),
    /** A word of measure stands inside the name. */
    MEASURE_IN_NAME("a word of measure stands inside the ingredient’s name"),
    /** A word of the name is neither in the thesaurus nor printed as a proper name. */
    STRANGE_WORD("a word of the ingredient’s name is not known"),
    /** The sentence tells a story. */
    NARRATIVE("it stands in a sentence that tells a story"),
    /** Something unknown is counted in running prose; it may be no ingredient. */
    UNKNOWN_COUNTED("something is counted that may be no ingredient"),
    /** “Do.” after a number repeats the measure of the line before. */
    DITTO(""),
    /** A share of the whole. */
    SHARE(""),
    /** A vessel that is filled. */
    FILL(""),
    /** The line begins in the middle of a sentence of many words. */
    PROSE("");

    private final String reason;

    Hint(String reason) {
        this.reason = reason;
    }

    String reason() {
        return reason;
    }
}
