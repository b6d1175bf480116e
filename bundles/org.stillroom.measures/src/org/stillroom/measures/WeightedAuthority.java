package org.stillroom.measures;

import org.stillroom.measures.knowledge.Authority;

/**
 * A statement with how much it counts in given circumstances.
 *
 * @param authority the statement
 * @param placeName the place it holds for, in words, or empty
 * @param share its part of the whole weight, 0 to 1; 0 for one that does not count
 * @param why why it counts so much, a clause (“same country, 32 years away, other trade”)
 */
public record WeightedAuthority(Authority authority, String placeName, double share, String why) {

    /** Returns who says so: short name of the work, or the system of a legal unit. */
    public String source() {
        return authority.shortName();
    }

    /** Returns the years it speaks for, in words, or an empty string. */
    public String date() {
        if (authority.from().isEmpty() && authority.to().isEmpty()) {
            return "";
        }
        if (authority.from().equals(authority.to())) {
            return Integer.toString(authority.from().getAsInt());
        }
        String from = authority.from().isPresent() ? "" + authority.from().getAsInt() : "";
        String to = authority.to().isPresent() ? "" + authority.to().getAsInt() : "";
        return from + "–" + to;
    }

    /** Returns the usual amount that it states, in millilitres or grams; NaN without a number. */
    public double amount() {
        return authority.content().map(c -> c.likely().toDouble()).orElse(Double.NaN);
    }

    /** Returns the least and the most that it states, in millilitres or grams; empty without. */
    public double[] limits() {
        return authority
                .content()
                .map(c -> new double[] {c.low().toDouble(), c.high().toDouble()})
                .orElse(new double[0]);
    }
}
