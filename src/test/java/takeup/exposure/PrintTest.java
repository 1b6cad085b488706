package takeup.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.text.Plain;

/** How apertures, times and stops are written: the forms are those of the trade. */
class PrintTest {
    @ParameterizedTest(name = "{0} s prints as {1}")
    @CsvSource({
        "0.004,1/250",
        "0.5,1/2",
        "0.8,0.8s",
        "0.3,0.3s",
        "1,1s",
        "2,2s",
        "12,12s",
        "60,60s",
        "250,4m10s",
        "120,2min",
        "90.5,1m30.5s",
        "0.0001220703125,1/8192",
        "3600,1h",
        "3599,59m59s",
        "3748,1h02m28s",
        "5400,1h30m",
        "7205,2h00m05s",
        "36000,10h"
    })
    void aTimePrintsAsAPhotographerWritesIt(double seconds, String print) {
        assertEquals(print, ExposureTime.literal(seconds).toString());
    }

    @ParameterizedTest(name = "the dial shows {1} for {0} s")
    @CsvSource({"0.008,125", "0.5,2", "1,1", "0.8,0.8", "2,2", "0.6,0.6"})
    void aDialPrintsTheLowerHalfOfTheFraction(double seconds, String print) {
        assertEquals(print, ExposureTime.literal(seconds).dial());
    }

    @ParameterizedTest(name = "f/{0} and {1} tenths prints as {2}")
    @CsvSource({"2.8,0,f/2.8", "11,0,f/11", "5.6,3,f/5.6+3/10", "0.7,0,f/0.7"})
    void anAperturePrintsAsOnTheRing(double fNumber, int tenths, String print) {
        assertEquals(print, Scale.anyAperture(fNumber).plusTenths(tenths).toString());
    }

    /** f/5.6 is 5 stops from f/1 (table scale_fnumbers); three tenths on make 5.3; tenths replace tenths. */
    @Test
    void tenthsCountFromTheMark() {
        Aperture aperture = Scale.FULL.aperture(5.6).orElseThrow().plusTenths(3);
        assertEquals(5.3, aperture.stops(), 1e-9);
        assertEquals(5.7, aperture.plusTenths(7).stops(), 1e-9);
    }

    /**
     * Seconds to one decimal below 10 s, whole ones up to a minute, then five by five, as one counts; below 0.29 s one
     * over two digits, three from 1/100 on.
     */
    @ParameterizedTest(name = "{0} s in words is {1}")
    @CsvSource({
        "0.0111,1/90",
        "0.00271,1/369",
        "2.7123,2.7s",
        "9.94,9.9s",
        "9.96,10s",
        "47.3,47s",
        "250.2,4m10s",
        "0.3,0.3s",
        "0.25,1/4",
        "59.7,60s",
        "94.3,1m35s",
        "3747.6,1h02m30s"
    })
    void aWorkedOutTimeIsRoundedForReading(double seconds, String words) {
        assertEquals(words, ExposureTime.words(seconds));
    }

    @ParameterizedTest(name = "{0} stops is {1}")
    @CsvSource({"0.33,0.3 over", "-1.2,1.2 under", "0.04,right", "-0.04,right", "0.05,0.1 over"})
    void anErrorSaysWhichWay(double stops, String words) {
        assertEquals(words, Stops.error(stops));
        assertEquals(words.replace("right", "on meter"), Stops.onMeter(stops));
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"1,1 stop", "-1,1 stop", "2,2 stops", "2.58,2.6 stops", "0.5,0.5 stops", "0.98,1 stop"})
    void stopsAreCountedInWords(double stops, String words) {
        assertEquals(words, Stops.words(stops));
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"0.00024414,0.00024414", "1e-7,0.0000001", "5.6,5.6", "11,11", "-2,-2", "1e15,1000000000000000"})
    void aNumberHasNoExponent(double value, String print) {
        assertEquals(print, Plain.number(value));
        assertEquals(value, Double.parseDouble(Plain.number(value)));
    }

    @ParameterizedTest(name = "{0} to {1} places is {2}")
    @CsvSource({
        "0.25,1,0.3",
        "-0.25,1,-0.3",
        "-0.04,1,0.0",
        "11.96,1,12.0",
        "2,0,2",
        "-0.6,0,-1",
        "-0.06,1,-0.1",
        "-9,0,-9"
    })
    void decimalsAreRoundedAwayFromZeroAndAZeroHasNoSign(double value, int places, String print) {
        assertEquals(print, Plain.decimals(value, places));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void whatIsNoTimeAndNoApertureIsRefused(double value) {
        assertThrows(IllegalArgumentException.class, () -> ExposureTime.literal(value));
        assertThrows(IllegalArgumentException.class, () -> Aperture.literal(value));
    }

    @Test
    void anExposureValuePrintsToATenth() {
        assertEquals("EV 11.3", new ExposureValue(11.34).toString());
        assertEquals("EV -2.0", new ExposureValue(-2).toString());
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 10})
    void tenTenthsAreTheNextMarkAndNoTenths(int tenths) {
        assertThrows(
                IllegalArgumentException.class,
                () -> Scale.FULL.aperture(8).orElseThrow().plusTenths(tenths));
    }
}
