package org.stillroom.measures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Holds the legal units against two programs of other people's making. */
class UnitsOracleTests {

    private static final MeasureTable TABLE = MeasureTable.shipped();

    private static double ours(String code) {
        return TABLE.unit(code).orElseThrow().amount().toDouble();
    }

    /** Values of GNU units 2.22, which takes the US survey inch for the wine and ale gallons. */
    @ParameterizedTest
    @CsvSource({
        "imp-gill,142.06531,1e-6",
        "us-gill,118.29412,1e-6",
        "imp-pint,568.26125,1e-6",
        "us-pint,473.17647,1e-6",
        "imp-fl-oz,28.413063,1e-6",
        "us-fl-oz,29.57353,1e-6",
        "imp-fl-drachm,3.5516328,1e-6",
        "imp-minim,0.05919388,1e-6",
        "us-fl-dram,3.6966912,1e-6"
    })
    void agreesWithGnuUnits(String code, double units, double relative) {
        assertEquals(units, ours(code), units * relative);
    }

    /** The same program's older measures, by its own English inch of 1895 or a rounded jug. */
    @ParameterizedTest
    @CsvSource({
        "wine-gallon,3785.392,6e-6",
        "wine-pint,473.174,6e-6",
        "ale-gallon,4621.1279,6e-6",
        "scots-pint,1694.4791,6e-6",
        "scots-mutchkin,423.61978,6e-6",
        "scots-gill,105.90495,6e-6",
        "irish-noggin,111.43145,6e-6"
    })
    void agreesWithGnuUnitsButForItsOlderInch(String code, double units, double relative) {
        assertEquals(units, ours(code), units * relative);
        assertEquals(1.0000049, ours(code) / units, 1e-6, "the inch differs by 1.6 in a million");
    }

    private static double indriya(double number, Unit<Volume> unit) {
        Quantity<Volume> quantity = Quantities.getQuantity(number, unit);
        return quantity.to(Units.LITRE).getValue().doubleValue() * 1000;
    }

    /** Without its fluid scruple and drachm, which that library makes three times too large. */
    @Test
    void agreesWithIndriya() {
        check("us-gallon", USCustomary.GALLON_LIQUID);
        check("us-fl-oz", USCustomary.FLUID_OUNCE);
        check("us-pint", USCustomary.PINT);
        check("us-cup", USCustomary.CUP);
        check("us-gill", USCustomary.GILL_LIQUID);
        check("us-fl-dram", USCustomary.FLUID_DRAM);
        check("us-tablespoon", USCustomary.TABLESPOON);
        check("us-teaspoon", USCustomary.TEASPOON);
        check("us-minim", USCustomary.MINIM);
        check("imp-gallon", Imperial.GALLON_UK);
        check("imp-fl-oz", Imperial.FLUID_OUNCE);
        check("imp-gill", Imperial.GILL);
        check("imp-minim", Imperial.MINIM);
        check("imp-pint", Imperial.PINT);
        check("imp-quart", Imperial.QUART);
    }

    private static void check(String code, Unit<Volume> unit) {
        double theirs = indriya(1, unit);
        assertEquals(theirs, ours(code), theirs * 1e-6, code);
    }
}
