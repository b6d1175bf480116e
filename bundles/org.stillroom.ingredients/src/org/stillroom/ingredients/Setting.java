package org.stillroom.ingredients;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Trade;

/** Circumstances as names and senses are judged by. */
final class Setting {

    private final Optional<String> country;
    private final Optional<UncertainDate> date;
    private final Optional<Trade> trade;
    private final String language;

    Setting(Circumstances where, Map<String, String> countries) {
        this.country = where.place().flatMap(p -> country(p, countries));
        this.date = where.date();
        this.trade = where.trade();
        this.language =
                where.language()
                        .map(l -> l.split("-")[0].toLowerCase(Locale.ROOT))
                        .orElseGet(() -> country.map(Setting::languageOf).orElse("en"));
    }

    /** The language that most books of a country are written in. */
    private static String languageOf(String country) {
        return switch (country) {
            case "FR", "MQ" -> "fr";
            case "DE", "AT" -> "de";
            case "ES", "CU", "MX", "PE", "CL", "AR", "VE", "CO" -> "es";
            case "IT" -> "it";
            case "NL" -> "nl";
            case "PT", "BR" -> "pt";
            default -> "en";
        };
    }

    private static Optional<String> country(Place place, Map<String, String> countries) {
        if (place.country().isPresent()) {
            return place.country();
        }
        return Optional.ofNullable(countries.get(place.name().toLowerCase(Locale.ROOT)));
    }

    Optional<String> country() {
        return country;
    }

    /** How well a name of a sense fits, about 1; above 1 where it was made for this very setting. */
    double fit(Label label, Sense sense) {
        return time(label.validity(), 0.55, 0.03)
                * place(label.validity(), 0.72, 0.02)
                * trade(label.validity())
                * time(sense.validity(), 0.86, 0.004)
                * place(sense.validity(), 0.985, 0.004)
                * language(label);
    }

    private double time(Validity validity, double outside, double bonus) {
        if (!validity.isDated()) {
            return 1;
        }
        if (date.isEmpty()) {
            return 1 - (1 - outside) * 0.04;
        }
        double share = validity.shareOf(date.get());
        return outside + (1 + bonus - outside) * share;
    }

    private double place(Validity validity, double outside, double bonus) {
        if (validity.places().isEmpty()) {
            return 1;
        }
        if (country.isEmpty()) {
            return 1 - (1 - outside) * 0.04;
        }
        return validity.places().contains(country.get()) ? 1 + bonus : outside;
    }

    private double trade(Validity validity) {
        if (validity.trades().isEmpty()) {
            return 1;
        }
        if (trade.isEmpty()) {
            return 0.98;
        }
        return validity.trades().contains(trade.get()) ? 1.01 : 0.8;
    }

    private double language(Label label) {
        if (label.language().equals(language)) {
            return 1;
        }
        return switch (label.language()) {
            case "en", "la", "fr" -> 0.97;
            default -> 0.94;
        };
    }
}
