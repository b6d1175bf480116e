package org.stillroom.measures.knowledge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.measures.MeasureTable;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Circumstances;

class BadRowsTests {

    private static final MeasureTable TABLE = MeasureTable.shipped();
    private static final String HEAD =
            "word,low,likely,high,unit,place,from,to,trade,source,role,size\n";
    private static final String GOOD = "toddy-stick,,12,,ml,GB,1860,1870,bar,a find,,\n";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "wineglass,,2,,imp-flozz,GB,,,,a find,,|The unit is not known|imp-fl-oz",
                "wineglass,,-50,,ml,GB,,,,a find,,|must be more than nothing|50",
                "wineglass,70,60,50,ml,GB,,,,a find,,|upside down|low 50, likely 60, high 70",
                "wineglass,,50,,ml,GB,,,,,,|names no source|who says so",
                "wineglass,,fifty,,ml,GB,,,,a find,,|is not a number|2.5",
                "wineglass,,50,,ml,Londn,,,,a find,,|not in the gazetteer|london",
                "wineglass,,50,,ml,GB,,,kitchn,a find,,|The trade is not known|kitchen",
                "wineglass,,50,,ml,GB,1890,1860,,a find,,|wrong way round|1860 to 1890",
                "wineglass,,50,,ml,GB,18x,,,a find,,|not a year|1862",
                "wineglass,,50,,ml,GB,,,,a find,overule,|role is not known|overrule",
                "wineglass,,50,,ml,GB,,,,a find,,hudge|size is not known|large",
                "wineglass,,,,ml,GB,,,,a find,,|gives no amount|likely",
                ",,50,,ml,GB,,,,a find,,|names no word|word",
                "wineglass,,50,,ml,GB,,,,a find,,,,too,many|14 cells|quotation"
            })
    void aBadRowIsReportedWithItsLineAndTheRestLoads(String row, String reason, String remedy) {
        MeasureTable.Extended more =
                TABLE.with("knowledge/measures.csv", HEAD + GOOD + row + "\n" + GOOD);
        assertEquals(1, more.problems().size(), () -> more.problems().toString());
        Problem problem = more.problems().getFirst();
        assertEquals(3, problem.line().orElseThrow());
        assertEquals("knowledge/measures.csv", problem.file());
        assertTrue(
                problem.reason().contains(reason.replace("14 cells", "cells")), problem.toText());
        assertTrue(problem.remedy().contains(remedy), problem.toText());
        assertTrue(
                more.table()
                        .resolve("toddy-stick", Optional.empty(), Circumstances.UNKNOWN)
                        .millilitres()
                        .isPresent());
    }

    @Test
    void aCircleOfDefinitionsIsReportedOnEachOfItsRows() {
        String rows =
                "slosh,,2,,glug,GB,,,,a find,,\n"
                        + "glug,,1/2,,slosh,GB,,,,a find,,\n"
                        + "dollop,,3,,ladleful-of-ours,GB,,,,a find,,\n"
                        + "ladleful-of-ours,,100,,ml,GB,,,,a find,,\n";
        MeasureTable.Extended more = TABLE.with("knowledge/measures.csv", HEAD + rows);
        assertEquals(2, more.problems().size(), () -> more.problems().toString());
        assertTrue(more.problems().getFirst().reason().contains("circle: glug, slosh"));
        assertEquals(
                300,
                more.table()
                        .resolve("dollop", Optional.empty(), Circumstances.UNKNOWN)
                        .millilitres()
                        .orElseThrow()
                        .likely());
    }

    @Test
    void anUnclosedQuotationMarkCostsOneRow() {
        MeasureTable.Extended more =
                TABLE.with("m.csv", HEAD + "\"wineglass,,50,,ml,GB,,,,a find,,\n" + GOOD);
        assertEquals(1, more.problems().size(), () -> more.problems().toString());
        assertTrue(more.table().words().find("toddy stick").isPresent());
    }

    @Test
    void placesOfALibraryComeBeforeOursAndBadOnesAreReported() {
        MeasureTable.Extended more =
                TABLE.withPlaces(
                        "knowledge/places.csv",
                        "name,kind,code,within,aliases,source\n"
                                + "Saltmarch,town,,GB-LAN,Salt Marsh,invented\n"
                                + "Wrackport,town,,Mass,,invented\n"
                                + "Elsewhere,town,,ZZ,,invented\n"
                                + ",town,,GB,,invented\n"
                                + "Nemo,town,,GB,,\n");
        List<Problem> problems = more.problems();
        assertEquals(
                List.of(3, 4, 5, 6),
                problems.stream().map(p -> p.line().orElseThrow()).toList(),
                problems::toString);
        assertEquals(
                "GB-LAN",
                more.table()
                        .places()
                        .find(org.stillroom.model.source.Place.of("salt marsh"))
                        .orElseThrow()
                        .codes()
                        .getFirst());
    }

    @Test
    void noFileOfRandomBytesStopsTheReader() {
        Random random = new Random(20);
        String noise = "\",;\n/-1a½ ml\u0000\uFEFF";
        for (int n = 0; n < 300; n++) {
            StringBuilder text = new StringBuilder(n % 2 == 0 ? HEAD : "");
            int length = random.nextInt(200);
            for (int i = 0; i < length; i++) {
                text.append(noise.charAt(random.nextInt(noise.length())));
            }
            MeasureTable.Extended more = TABLE.with("noise.csv", text.toString());
            assertTrue(more.problems().size() <= 4 * length + 4, "seed 20, file " + n);
        }
    }
}
