package takeup.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.ReferenceTable;

/** Factors, densities and magnifications as stops; sources stand in the tables. */
class StopsTest {
    static Stream<ReferenceTable.Row> nd_filters() {
        return ReferenceTable.rows("nd_filters");
    }

    static Stream<ReferenceTable.Row> filter_stack_cases() {
        return ReferenceTable.rows("filter_stack_cases");
    }

    static Stream<ReferenceTable.Row> extension_cases() {
        return ReferenceTable.rows("extension_cases");
    }

    /** The printed stops are rounded to thirds; density 4 is printed as 13 where it is 13.29. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("nd_filters")
    void densityIsThePrintedLossWithinAThirdOfAStop(ReferenceTable.Row row) {
        double stops = Stops.ofDensity(row.number("density"));
        assertEquals(row.number("stops"), stops, 1e-5);
        assertEquals(printed(row.text("printed_stops")), stops, 1 / 3.0);
        // The ND number is itself rounded: 8 for a density of 0.9, which is 7.94.
        assertEquals(stops, Stops.of(row.number("nd_number")), 0.04);
    }

    /** "6 2/3" is 6.67. */
    private static double printed(String cell) {
        return cell.endsWith(" 2/3")
                ? Double.parseDouble(cell.substring(0, cell.indexOf(' '))) + 2 / 3.0
                : Double.parseDouble(cell);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("filter_stack_cases")
    void stackedFiltersMultiplyTheirFactorsAndAddTheirStops(ReferenceTable.Row row) {
        double stops = 0;
        for (String filter : row.text("filters").split(" x ")) {
            stops += filter.startsWith("density ")
                    ? Stops.ofDensity(Double.parseDouble(filter.substring(8)))
                    : Stops.of(Double.parseDouble(filter.startsWith("ND") ? filter.substring(2) : filter));
        }
        assertEquals(row.number("stops"), stops, 1e-5);
        assertEquals(row.number("factor"), Stops.factor(stops), 1e-5 * row.number("factor"));
    }

    /** m = extension / focal length - 1, or focal length / (distance - focal length): the first line of the table. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("extension_cases")
    void aLongerDrawTakesTheSquareOfItsLengthening(ReferenceTable.Row row) {
        double magnification = row.has("magnification")
                ? row.number("magnification")
                : row.has("extension_mm")
                        ? row.number("extension_mm") / row.number("focal_mm") - 1
                        : row.number("focal_mm") / (row.number("distance_mm") - row.number("focal_mm"));
        assertEquals(row.number("stops"), Stops.ofMagnification(magnification), 1e-5);
        assertEquals(
                row.number("factor"), Stops.factor(Stops.ofMagnification(magnification)), 1e-5 * row.number("factor"));
    }

    /** Printed by others, rounded to a third by them. */
    @ParameterizedTest(name = "a factor of {0} is {1} stops: {2}")
    @CsvSource(textBlock = """
            1.5, 0.6667, 'US Army subcourse SS0508, sheet 45'
            3,   1.6667, 'largeformatphotography.info thread 158132, table in the first answer'
            8,   3,      'neighborshateus.com, filter factor, three filters of 2x'
            1024, 10,    'US Army subcourse SS0508, sheet 52'
            20,  4.3333, 'shutterbug, Photo filters, p. 2'
            """)
    void aFactorIsTheStopsThatOthersPrint(double factor, double stops, String source) {
        assertEquals(stops, Stops.of(factor), 0.09, source);
    }

    /** A limit is passed by more than a hundredth of a stop, not by the last digit of a sum. */
    @Test
    void aHundredthOfAStopIsNoDifference() {
        assertFalse(Stops.above(1.0099, 1));
        assertTrue(Stops.above(1.0101, 1));
        assertFalse(Stops.above(1, 1.5));
    }
}
