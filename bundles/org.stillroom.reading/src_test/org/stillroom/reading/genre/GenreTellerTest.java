package org.stillroom.reading.genre;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.model.reading.Reading.Genre;

class GenreTellerTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Ward Boss's Punch|Take of promises two gallons, of principle a pinch; stir with the "
                        + "vanity of the candidate.|PARODY",
                "Elixir for a Cough|Syrup of squills an ounce, paregoric two drachms. Dose, a teaspoonful "
                        + "every three hours.|MEDICAL",
                "Whitcomb Ginger Ale|Beware of imitations. Of all grocers, per dozen, 3s.|ADVERTISEMENT",
                "Wharf Cocktail|Two dashes of gum, one jigger of whiskey; stir with ice.|RECIPE",
                "Love's Cup|A bottle of claret, a glass of sherry and a sprig of borage.|RECIPE",
                "Ginger Cordial|Bruised ginger two ounces, whisky a bottle; good for a cold.|RECIPE"
            })
    void tellsWhatSortOfTextItIs(String title, String body, Genre genre) {
        assertEquals(genre, GenreTeller.house().tell(title, body));
    }
}
