package org.stillroom.measures;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.stillroom.measures.knowledge.Authority;
import org.stillroom.measures.place.Gazetteer;
import org.stillroom.measures.place.Locality;
import org.stillroom.measures.system.Where;
import org.stillroom.model.source.Trade;

/**
 * Weighs a statement by how near it stands to a book in place, date and trade, and by how well it
 * is known.
 *
 * <p>The factors are common practice, no source; {@code docs/decisions} says how they were set and
 * what was tried.
 */
final class Weigher {

    private static final double YEARS = 28;
    private static final double LEAST_BY_DATE = 0.01;
    private static final double UNKNOWN_DATE = 0.5;
    private static final double UNKNOWN_PLACE = 0.4;
    private static final double UNKNOWN_TRADE = 0.7;

    private final Where where;
    private final Gazetteer places;
    private final Map<String, String> tongues;

    Weigher(Where where, Gazetteer places, Map<String, String> tongues) {
        this.where = where;
        this.places = places;
        this.tongues = tongues;
    }

    /** A weight and why it is so. */
    record Weight(double value, String why) {}

    Weight weigh(Authority authority) {
        Weight place = place(authority.place());
        Weight date = date(authority.from(), authority.to());
        Weight trade = trade(authority.trade());
        double status = status(authority);
        return new Weight(
                place.value() * date.value() * trade.value() * status,
                place.why() + ", " + date.why() + ", " + trade.why());
    }

    private Weight place(String code) {
        if (code.isEmpty()) {
            return new Weight(0.3, "no place stated");
        }
        boolean region = code.contains("-");
        if (where.place().isEmpty()) {
            return unknownPlace(code.substring(0, 2), region);
        }
        Locality here = where.place().get();
        double best = 0;
        String why = "another country";
        for (String one : code.split(";")) {
            Weight weight = place(here, one);
            if (weight.value() > best) {
                best = weight.value();
                why = weight.why();
            }
        }
        return new Weight(best, why);
    }

    private Weight unknownPlace(String country, boolean region) {
        String family = tongues.getOrDefault(country, "");
        boolean other = where.language().map(l -> !l.equals(family)).orElse(false);
        double weight = UNKNOWN_PLACE * (region ? 0.2 : 1) * (other ? 0.05 : 1);
        return new Weight(weight, "our place is unknown");
    }

    private Weight place(Locality here, String code) {
        boolean region = code.contains("-");
        if (here.isWithin(code)) {
            return region ? new Weight(3, "same region") : new Weight(1, "same country");
        }
        String country = region ? code.substring(0, 2) : code;
        String home = here.country().orElse("");
        if (home.equals(country)) {
            boolean wide = here.kind() == Locality.Kind.COUNTRY;
            return wide
                    ? new Weight(0.07, "one region of the country")
                    : new Weight(0.01, "another region");
        }
        String family = tongues.getOrDefault(home, "?");
        return family.equals(tongues.getOrDefault(country, ""))
                ? new Weight(region ? 0.02 : 0.12, "another country of the language")
                : new Weight(0.015, "another country");
    }

    private Weight date(OptionalInt from, OptionalInt to) {
        if (from.isEmpty() && to.isEmpty()) {
            return new Weight(0.5, "no date stated");
        }
        if (where.years().isEmpty()) {
            return new Weight(UNKNOWN_DATE, "our date is unknown");
        }
        int distance = where.years().get().distance(from, to);
        if (distance == 0) {
            return new Weight(1, "same years");
        }
        double far = distance / YEARS;
        double weight = Math.max(LEAST_BY_DATE, Math.exp(-far * far));
        return new Weight(weight, distance + (distance == 1 ? " year" : " years") + " away");
    }

    private Weight trade(String trade) {
        if (where.trade().isEmpty()) {
            return new Weight(UNKNOWN_TRADE, "our trade is unknown");
        }
        if (trade.isEmpty() || trade.equals("reference") || trade.equals("law")) {
            return new Weight(0.6, "for every trade");
        }
        Trade ours = where.trade().get();
        if (ours.word().equals(trade)) {
            return new Weight(1, "same trade");
        }
        boolean near = ours == Trade.DISTILLING || trade.equals("cellar");
        return new Weight(near ? 0.5 : 0.35, "another trade");
    }

    private static double status(Authority authority) {
        double known =
                switch (authority.citation().status()) {
                    case PRIMARY, USER -> 1;
                    case DERIVED -> 0.8;
                    case SECONDARY -> 0.7;
                    case MEMORY -> 0.4;
                    case DISPUTED -> 0.2;
                };
        return authority.role() == Authority.Role.OUTLIER ? known * 0.15 : known;
    }

    /** Returns a place's code in words, or an empty string for everywhere. */
    String placeName(Authority authority) {
        return Optional.of(authority.place())
                .filter(p -> !p.isEmpty())
                .map(p -> places.nameOf(p.contains(";") ? p.substring(0, p.indexOf(';')) : p))
                .orElse("");
    }
}
