package org.stillroom.workbench.widgets;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The room of a table goes where the words are. */
class ColumnWidthsTests {
    private static final List<DataTable.Column> COLUMNS =
            List.of(
                    DataTable.Column.words("As printed", 3),
                    DataTable.Column.figures("Volume", 2),
                    DataTable.Column.words("Role", 1));

    @Test
    void roomToSpareGoesToTheWordsByWeight() {
        assertArrayEquals(
                new int[] {175, 80, 145},
                ColumnWidths.share(400, COLUMNS, new int[] {100, 80, 120}));
    }

    @Test
    void theLongestWordsGiveWayFirst() {
        assertArrayEquals(
                new int[] {220, 80, 100},
                ColumnWidths.share(400, COLUMNS, new int[] {900, 80, 100}));
    }

    @Test
    void aTableThatIsMuchTooNarrowScrolls() {
        assertArrayEquals(
                new int[] {150, 80, 60}, ColumnWidths.share(90, COLUMNS, new int[] {900, 80, 60}));
    }

    @Test
    void figuresAreNeverCutAndNothingIsWiderThanTheRoomWithoutNeed() {
        Random random = new Random(20);
        for (int round = 0; round < 500; round++) {
            int[] needed = random.ints(3, 48, 900).toArray();
            int room = random.nextInt(300, 1600);
            int[] widths = ColumnWidths.share(room, COLUMNS, needed);
            String seen = room + " " + Arrays.toString(needed) + " " + Arrays.toString(widths);
            assertTrue(widths[1] >= needed[1], seen);
            int least = needed[1] + Math.min(150, needed[0]) + Math.min(150, needed[2]);
            assertTrue(Arrays.stream(widths).sum() <= Math.max(room, least), seen);
            boolean fits = Arrays.stream(needed).sum() <= room;
            assertTrue(!fits || widths[0] >= needed[0] && widths[2] >= needed[2], seen);
        }
    }
}
