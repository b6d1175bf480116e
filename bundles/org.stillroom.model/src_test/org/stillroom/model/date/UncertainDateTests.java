package org.stillroom.model.date;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Examples of the Library of Congress EDTF specification (4 February 2019), unless noted. */
class UncertainDateTests {

    private static UncertainDate date(String edtf) {
        return UncertainDate.parse(edtf).orElseThrow(() -> new AssertionError(edtf));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "1985-04-12|1985-04-12|1985-04-12",
                "1985-04|1985-04-01|1985-04-30",
                "1985|1985-01-01|1985-12-31",
                "1985-04-12T23:20:30|1985-04-12|1985-04-12",
                "1985-04-12T23:20:30Z|1985-04-12|1985-04-12",
                "1985-04-12T23:20:30-04|1985-04-12|1985-04-12",
                "1985-04-12T23:20:30+04:30|1985-04-12|1985-04-12",
                "1964/2008|1964-01-01|2008-12-31",
                "2004-06/2006-08|2004-06-01|2006-08-31",
                "2004-02-01/2005-02-08|2004-02-01|2005-02-08",
                "2005/2006-02|2005-01-01|2006-02-28",
                "Y170000002|170000002-01-01|170000002-12-31",
                "2001-21|2001-01-01|2001-12-31",
                "1984?|1984-01-01|1984-12-31",
                "2004-06~|2004-06-01|2004-06-30",
                "2004-06-11%|2004-06-11|2004-06-11",
                "201X|2010-01-01|2019-12-31",
                "20XX|2000-01-01|2099-12-31",
                "2004-XX|2004-01-01|2004-12-31",
                "1985-04-XX|1985-04-01|1985-04-30",
                "1985-XX-XX|1985-01-01|1985-12-31",
                "1985-04-12/..|1985-04-12|-",
                "../1985-04|-|1985-04-30",
                "1985/|1985-01-01|-",
                "/1985-04-12|-|1985-04-12",
                "-1985|-1985-01-01|-1985-12-31",
                "1984~/2004-06|1984-01-01|2004-06-30",
                "156X-12-25|1560-12-25|1569-12-25",
                "15XX-12-XX|1500-12-01|1599-12-31",
                "[1667,1668,1670..1672]|1667-01-01|1672-12-31",
                "[..1760-12-03]|-|1760-12-03",
                "[1760-12..]|1760-12-01|-",
                "{1960,1961-12}|1960-01-01|1961-12-31",
                "2004-06~-11|2004-06-11|2004-06-11",
                "?2004-06-~11|2004-06-11|2004-06-11",
                "[1862,1865..1867]|1862-01-01|1867-12-31",
                "[1862..1867]|1862-01-01|1867-12-31",
                "186X~|1860-01-01|1869-12-31"
            })
    void limitsOfTheSpecificationsExamples(String edtf, String earliest, String latest) {
        assertEquals(
                Optional.ofNullable(earliest),
                date(edtf).earliest().map(d -> d.toString().replaceFirst("^\\+", "")));
        assertEquals(
                Optional.ofNullable(latest),
                date(edtf).latest().map(d -> d.toString().replaceFirst("^\\+", "")));
        assertEquals(edtf, date(edtf).toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "c. 1862",
                "186",
                "1862-13",
                "1862-02-30",
                "1862/1861",
                "[1862",
                "XXXX",
                "1862-4",
                "12-04-1862",
                "/",
                "{..}",
                "Y1985",
                "1985-04-12T25:00:00"
            })
    void whatIsNotEdtfIsRefused(String words) {
        assertEquals(Optional.empty(), UncertainDate.parse(words));
    }

    @Test
    void qualifiersStayApart() {
        assertTrue(date("1984?").isUncertain() && !date("1984?").isApproximate());
        assertTrue(date("1984~").isApproximate() && !date("1984~").isUncertain());
        assertTrue(date("1984%").isApproximate() && date("1984%").isUncertain());
    }

    @Test
    void beforeHasThreeAnswers() {
        assertEquals(Certainty.CERTAIN, date("1859").before(date("186X")));
        assertEquals(Certainty.POSSIBLE, date("1862").before(date("186X")));
        assertEquals(Certainty.NO, date("1870").before(date("186X")));
        assertEquals(Certainty.POSSIBLE, date("1862/..").before(date("1870")));
    }

    @Test
    void wordsForReaders() {
        assertEquals("about 1862", date("1862~").toText());
        assertEquals("the 1860s", date("186X").toText());
        assertEquals("until 1861", date("../1861").toText());
        assertEquals("1862–1865", date("1862/1865").toText());
    }
}
