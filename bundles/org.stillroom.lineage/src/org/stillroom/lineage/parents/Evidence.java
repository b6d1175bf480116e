package org.stillroom.lineage.parents;

import java.util.List;
import java.util.Optional;
import org.stillroom.lineage.collation.Token;

/**
 * What speaks for a later text being taken from an earlier one, in bits.
 *
 * <p>At every place the chance of agreeing as a copy is held against the chance of agreeing as two
 * independent recipes of the same drink do, which the other versions show. An unusual amount that
 * both have is therefore strong evidence, and a lemon in a lemonade none. How much a copyist
 * changes is not known beforehand; the evidence is the mean over faithful and free ones.
 *
 * @param earlier the candidate
 * @param sites where the two agree
 * @param chance for each place of the later text how often independent recipes agree there
 * @param copied whether the words speak for it by themselves, or send the reader to it
 * @param bits the evidence, in bits; below 0 it speaks against
 * @param cost changes in edits
 * @param ratios ingredients in the same proportions though in other measures
 * @param reversals places where the later text has a reading older than the candidate
 * @param reuse share of short stretches that both have
 * @param verbatim whether they are one text but for accidentals
 * @param rest the text that the end follows, where that is another one
 */
record Evidence(
        Text earlier,
        Sites sites,
        double[] chance,
        boolean copied,
        double bits,
        double cost,
        int ratios,
        int reversals,
        double reuse,
        boolean verbatim,
        Optional<Text> rest) {

    /** Texts that share this much are one text, if nothing of substance is changed. */
    static final double VERBATIM = 0.8;

    /** Fewest edits of substance that a reprint does not have. */
    static final double SLIP = 0.75;

    /** Bits for naming the other text’s author. */
    private static final double NAMED = 20;

    /** Bits for sending the reader to the other text. */
    private static final double CITED = 30;

    /** What unlike words still count where a text says itself whom it follows. */
    private static final double REWORDED = 0.2;

    /** How often a copyist changes a word: the evidence is the mean over these. */
    private static final double[] RATES = {0.03, 0.08, 0.2, 0.4, 0.6};

    /** Even the freest copyist agrees oftener than chance: his changes beside chance's. */
    private static final double FREEST = 0.85;

    private static final double CHANGE = 0.5;

    /** Returns the evidence; without its last part, returns to older readings. */
    static Evidence of(Text earlier, Text later, Sites sites, double[] chance, Settings settings) {
        double amounts = likelihood(earlier, later, sites, chance, settings, true);
        double rest = likelihood(earlier, later, sites, chance, settings, false);
        Proportions proportions = Proportions.between(earlier.amounts(), later.amounts());
        double bits = rest + Math.max(amounts, proportions.bits());
        bits += order(earlier, later);
        boolean copied = bits > 0 || later.cites().contains(earlier.id());
        bits = said(bits, earlier, later);
        double reuse = earlier.wording().jaccard(later.wording());
        boolean verbatim =
                reuse >= VERBATIM && sites.substantive(earlier.tokens(), later.tokens()) < SLIP;
        int ratios = proportions.bits() > amounts ? proportions.alike() : 0;
        double cost = sites.cost(earlier.tokens(), later.tokens());
        return new Evidence(
                earlier,
                sites,
                chance,
                copied,
                bits,
                cost,
                ratios,
                0,
                reuse,
                verbatim,
                Optional.empty());
    }

    /** Whoever says himself whom he follows may word it anew: then unlike words say little. */
    private static double said(double bits, Text earlier, Text later) {
        double named = later.names(earlier) ? NAMED : 0;
        double cited = later.cites().contains(earlier.id()) ? CITED : 0;
        return named + cited + (named + cited > 0 && bits < 0 ? bits * REWORDED : bits);
    }

    Evidence returning(int places, double bits) {
        return new Evidence(
                earlier,
                sites,
                chance,
                copied,
                this.bits - bits,
                cost,
                ratios,
                places,
                reuse,
                verbatim,
                rest);
    }

    /** Returns the evidence for two sources, where they explain the text better than one. */
    Evidence blended(Blend blend) {
        if (blend.rest().isEmpty() || blend.bits() <= bits) {
            return this;
        }
        return new Evidence(
                earlier,
                sites,
                chance,
                copied,
                blend.bits(),
                cost,
                ratios,
                reversals,
                reuse,
                verbatim,
                blend.rest());
    }

    /** The same long order of ingredients is rarely chance, though custom explains some of it. */
    private static double order(Text earlier, Text later) {
        int n = later.order().size();
        return n >= 4 && later.order().equals(earlier.order()) ? 0.8 * (n - 3) : 0;
    }

    private static boolean isAmount(Token token) {
        return token.kind() == Token.Kind.NUMBER || token.kind() == Token.Kind.MEASURE;
    }

    private static double likelihood(
            Text earlier,
            Text later,
            Sites sites,
            double[] chance,
            Settings settings,
            boolean amounts) {
        double sum = 0;
        for (double rate : RATES) {
            sum += Math.pow(2, bits(later, sites, chance, settings, amounts, rate));
        }
        return Math.log(sum / RATES.length) / Math.log(2);
    }

    private static double bits(
            Text later,
            Sites sites,
            double[] chance,
            Settings settings,
            boolean amounts,
            double rate) {
        double bits = amounts ? 0 : sites.moved() * log(rate * CHANGE);
        for (int j = 0; j < sites.agrees().length; j++) {
            Token token = later.tokens().get(j);
            if (isAmount(token) == amounts) {
                double q = chance[j];
                double changed = Math.min(rate, FREEST * (1 - q));
                double ratio = sites.agrees()[j] ? (1 - changed) / q : changed / (1 - q);
                bits += weight(token, settings) * log(ratio);
            }
        }
        for (List<Token> gap : sites.dropped()) {
            for (Token token : gap) {
                if (isAmount(token) == amounts) {
                    double ratio = Math.min(FREEST, rate / (1 - token.kind().usual()));
                    bits += weight(token, settings) * CHANGE * log(ratio);
                }
            }
        }
        return bits;
    }

    static double weight(Token token, Settings settings) {
        return switch (token.kind()) {
            case WORD -> settings.words();
            case MARK -> 0;
            default -> 1;
        };
    }

    private static double log(double x) {
        return Math.log(x) / Math.log(2);
    }
}
