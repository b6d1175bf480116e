package org.stillroom.measures.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.model.source.Place;

class GazetteerTests {

    private final Gazetteer places = Gazetteer.shipped();

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "London|GB|GB-MDX",
                "Manchester|GB|GB-LAN",
                "Manchester, US|US|US-NH",
                "New-York|US|US-NY",
                "N. Y.|US|US-NY",
                "Lancaster, US|US|US-PA",
                "Lancaster|GB|GB-LAN",
                "Boston|US|US-MA",
                "Boston, GB|GB|GB-LIN",
                "Edinr.|GB|GB-S-MLN",
                "GB|GB|GB",
                "US|US|US",
                "England|GB|GB-ENG",
                "Saltmarch, GB|GB|GB",
                "Saltmarch, Lancashire|GB|GB-LAN",
                "köln|DE|DE",
                "Bruxelles|BE|BE",
                "Cincinnati, Ohio|US|US-OH",
                "Saltmarch, Mass.|US|US-MA",
                "United States|US|US",
                "Kingston|JM|JM"
            })
    void aPlaceHasItsCountryAndRegion(String words, String country, String region) {
        Locality place = places.find(Place.of(words)).orElseThrow();
        assertEquals(country, place.country().orElseThrow(), words);
        assertEquals(region, place.region().orElseThrow(), words);
    }

    @Test
    void countiesOfTheNorthLieInTheNorth() {
        for (String town : new String[] {"Leeds", "Liverpool", "Carlisle", "York", "Kendal"}) {
            assertTrue(places.find(Place.of(town)).orElseThrow().isWithin("GB-NORTH"), town);
        }
        assertTrue(!places.find(Place.of("London")).orElseThrow().isWithin("GB-NORTH"));
    }

    @Test
    void anUnknownTownWithoutACountryIsNotGuessed() {
        assertTrue(places.find(Place.of("Saltmarch")).isEmpty());
        assertTrue(places.find(Place.of("Saltmarch, Nowhereshire")).isEmpty());
        assertTrue(places.size() > 600, "places: " + places.size());
    }
}
