package takeup.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.ReferenceTable;

/** The marks of rings and dials; sources stand in the tables. */
class ScaleTest {
    static Stream<ReferenceTable.Row> scale_fnumbers() {
        return ReferenceTable.rows("scale_fnumbers");
    }

    static Stream<ReferenceTable.Row> scale_times() {
        return ReferenceTable.rows("scale_times");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scale_fnumbers")
    void anEngravedFNumberStandsForItsPowerOfTheRootOfTwo(ReferenceTable.Row row) {
        Aperture mark = scale(row).aperture(row.number("label")).orElseThrow();
        assertEquals(row.number("av"), mark.stops(), 1e-5);
        assertEquals(row.number("exact"), mark.exactFNumber(), 1e-5 * row.number("exact"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scale_times")
    void anEngravedTimeStandsForItsPowerOfTwo(ReferenceTable.Row row) {
        ExposureTime mark = scale(row).time(row.number("label")).orElseThrow();
        assertEquals(-row.number("tv"), mark.stops(), 1e-5);
        assertEquals(row.number("exact_s"), mark.exactSeconds(), 1e-5 * row.number("exact_s"));
        assertEquals(row.number("label_error_stops"), Stops.of(mark.seconds() / mark.exactSeconds()), 1e-5);
    }

    @Test
    void noMarkIsMissingFromTheTablesAndNoneIsAddedToThem() {
        for (Scale scale : Scale.values()) {
            assertEquals(
                    scale_fnumbers().filter(it -> scale(it) == scale).count(),
                    scale.apertures().size(),
                    scale + " apertures");
            assertEquals(
                    scale_times().filter(it -> scale(it) == scale).count(),
                    scale.times().size(),
                    scale + " times");
        }
    }

    /** Other spellings met: the third comment line of scale_fnumbers. */
    @ParameterizedTest(name = "{0}: f/{1} is f/{2}")
    @CsvSource({"HALF,3.4,3.3", "HALF,4.7,4.8", "HALF,6.8,6.7", "HALF,9.6,9.5", "HALF,13.5,13", "THIRD,28,29"})
    void anotherSpellingIsTheSameMark(Scale scale, double spelt, double mark) {
        assertEquals(scale.aperture(mark), scale.aperture(spelt));
        assertTrue(scale.aperture(spelt).isPresent());
    }

    /** The same print can be two values: scale_fnumbers (1.2, 13) and scale_times (0.3, 1/6, 1/10, 1/20). */
    @ParameterizedTest(name = "f/{0} is Av {1} in half stops, {2} in thirds")
    @CsvSource({"1.2,0.5,0.6666667", "13,7.5,7.3333333"})
    void aPrintThatStandsOnTwoScalesIsReadOnItsOwn(double print, double half, double third) {
        assertEquals(half, Scale.HALF.aperture(print).orElseThrow().stops(), 1e-6);
        assertEquals(third, Scale.THIRD.aperture(print).orElseThrow().stops(), 1e-6);
    }

    /** A value on no such scale (1/300, f/7.7) is literal. */
    @Test
    void aPrintOnNoScaleIsItsFaceValue() {
        assertEquals(7.7, Scale.anyAperture(7.7).exactFNumber(), 1e-9);
        assertEquals(1 / 300.0, Scale.anyTime(1 / 300.0).exactSeconds(), 1e-12);
        assertTrue(Scale.HALF.time(1 / 100.0).isEmpty());
    }

    private static Scale scale(ReferenceTable.Row row) {
        return Scale.valueOf(row.text("scale").toUpperCase(Locale.ROOT));
    }
}
