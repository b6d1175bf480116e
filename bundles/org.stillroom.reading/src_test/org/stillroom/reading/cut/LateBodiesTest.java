package org.stillroom.reading.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillroom.model.source.Witness;

/** Books that put a story between a title and its recipe, and titles that look like orders. */
class LateBodiesTest {

    private static final String STORY =
            """
            My uncle, who was a captain and a great friend of the town, told us that he had
            never believed the story which the people of the street would tell about his
            ship; he said that she was the first of her sort, and that the men who had
            sailed in her were always the last to say what they thought of the king. When
            he was an old man he wrote a book of his life, which nobody in our house ever
            read, though my lady aunt always said that she would, and was known to have
            opened it in her last years.

            """;

    private static final String RECIPE =
            """
             Take a pint of rum, two ounces of sugar, and the juice of one lemon; add a
             quart of boiling water, stir it well, and grate a nutmeg on the top.

            """;

    @Test
    void goesOnToTheFirstRecipeThatIsSetInAfterAStory() {
        StringBuilder book = new StringBuilder("OLD TALES\n\n");
        for (int i = 0; i < 12; i++) {
            book.append(STORY).append("_Tide Punch._\n\n").append(RECIPE);
        }
        book.append("_Late Punch._\n\n").append(STORY).append(STORY).append(RECIPE);
        String text = book.toString();
        List<Witness> found =
                new BookCutter().cut(MiniatureBooksTest.source("late", text)).witnesses();
        Witness late = found.get(found.size() - 1);
        assertEquals("Late Punch", late.title());
        assertEquals(text.strip().length(), late.span().end());
    }

    @Test
    void aCompoundIsATitleAndNoOrder() {
        assertFalse(TitleWords.isLine("Gull-Shake", Cues.house()));
        assertTrue(TitleWords.isLine("Shake well", Cues.house()));
    }
}
