package takeup.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.exposure.ExposureTime;
import takeup.exposure.Extension;
import takeup.exposure.Light;
import takeup.exposure.Stops;

/**
 * Numbers as they are printed; the expected ones follow from the rounding named in the Javadoc, halves away from zero.
 */
class PlainTest {
    @ParameterizedTest(name = "{0} to {1} decimals is {2}")
    @CsvSource({
        "0.25, 1, 0.3",
        "-0.25, 1, -0.3",
        "-0.04, 1, 0.0",
        "0.04, 1, 0.0",
        "-0.05, 1, -0.1",
        "-1, 0, -1",
        "-0.4, 0, 0",
        "10.04, 1, 10.0",
        "-10.04, 1, -10.0",
        "-0.09, 1, -0.1",
        "-0.91, 1, -0.9"
    })
    void decimalsAreRoundedAndAZeroHasNoSign(double value, int places, String print) {
        assertEquals(print, Plain.decimals(value, places));
    }

    @ParameterizedTest(name = "{0} in {1} digits is {2}")
    @CsvSource({
        "12.3456, 3, 12.3",
        "0.0078125, 3, 0.00781",
        "1234.5, 2, 1200",
        "-2.96, 2, -3",
        "0, 3, 0",
        "99.96, 3, 100",
        "1234567891, 9, 1234567890",
        "-999, 2, -1000",
        "-999, 3, -999",
        "1001, 3, 1000"
    })
    void significantDigitsAreCountedFromTheFirstThatIsNotZero(double value, int digits, String print) {
        assertEquals(print, Plain.digits(value, digits));
        assertEquals(Double.parseDouble(print), Plain.rounded(value, digits), 1e-12);
    }

    @Test
    void whatIsNoNumberStaysWhatItIs() {
        assertTrue(Double.isNaN(Plain.rounded(Double.NaN, 3)));
        assertEquals(Double.POSITIVE_INFINITY, Plain.rounded(Double.POSITIVE_INFINITY, 3));
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "11, 11",
        "5.6, 5.6",
        "0.000125, 0.000125",
        "1e-7, 0.0000001",
        "999999999999999, 999999999999999",
        "1e15, 1000000000000000",
        "-3, -3",
        "0, 0"
    })
    void numbersHaveNoExponent(double value, String print) {
        assertEquals(print, Plain.number(value));
    }

    @Test
    void theWordsInFilesAreThoseThatAreTyped() {
        assertEquals("ext", Extension.Kind.DRAW.word());
        assertEquals("tube", Extension.Kind.TUBE.word());
        assertEquals("mag", Extension.Kind.MAGNIFICATION.word());
        assertEquals("off", Extension.Kind.NONE.word());
        assertEquals("incident", Light.Method.INCIDENT.word());
        assertEquals("sky", Light.Method.SKY.word());
    }

    @Test
    void aTenthIsSaidWithItsSideAndLessIsRight() {
        assertEquals("right", Stops.error(0.04));
        assertEquals("right", Stops.error(-0.04));
        assertEquals("0.1 over", Stops.error(0.05));
        assertEquals("0.1 under", Stops.error(-0.05));
        assertEquals("1 stop", Stops.words(-1));
        assertEquals("2.6 stops", Stops.words(2.58));
        assertFalse(Stops.above(1.005, 1));
        assertTrue(Stops.above(1.02, 1));
    }

    /** 0.5 is 1/2 and prints so; 0.3 is 1/3.33 and does not. A time over a minute is said in minutes and seconds. */
    @ParameterizedTest(name = "{0} s prints as {1}")
    @CsvSource({
        "0.5, 1/2",
        "0.3, 0.3s",
        "1, 1s",
        "0.001, 1/1000",
        "60, 60s",
        "61, 1m1s",
        "120, 2min",
        "250, 4m10s",
        "90.5, 1m30.5s",
        "0.7, 0.7s",
        "1.5, 1.5s"
    })
    void timesPrintAsTheTradeWritesThem(double seconds, String print) {
        assertEquals(print, ExposureTime.literal(seconds).toString());
    }

    @ParameterizedTest(name = "{0} s is said {1}")
    @CsvSource({
        "0.0112, 1/89",
        "0.28, 1/4",
        "0.5, 0.5s",
        "2.71, 2.7s",
        "9.94, 9.9s",
        "9.96, 10s",
        "47.4, 47s",
        "249.6, 4m10s",
        "0.00781, 1/128"
    })
    void workedOutTimesAreRoundedForReading(double seconds, String words) {
        assertEquals(words, ExposureTime.words(seconds));
    }
}
