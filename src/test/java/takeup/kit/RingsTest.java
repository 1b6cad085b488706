package takeup.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.exposure.ExposureTime;
import takeup.exposure.Scale;

/** The ring and the dial: what a number means on them, and which mark is next to a wanted time. */
class RingsTest {
    private static final Ring HALVES = Ring.between(2.8, 22, Scale.HALF);
    private static final Shutter DIAL = Shutter.between(8, 1 / 1000.0, Scale.FULL, true);

    /** Half stops from f/2.8 to f/22: table scale_fnumbers. */
    @Test
    void aRingHasTheMarksBetweenItsEnds() {
        assertEquals(
                "[f/2.8, f/3.3, f/4, f/4.8, f/5.6, f/6.7, f/8, f/9.5, f/11, f/13, f/16, f/19, f/22]",
                HALVES.marks().toString());
        assertEquals(
                "[f/1.8, f/2, f/2.4, f/2.8]",
                Ring.between(1.8, 2.8, Scale.HALF).marks().toString());
        assertEquals(
                "[f/4.5, f/5.6, f/8]", Ring.between(4.5, 8, Scale.FULL).marks().toString());
    }

    @Test
    void aDialHasTheMarksBetweenItsEnds() {
        assertEquals(
                "[8s, 4s, 2s, 1s, 1/2, 1/4, 1/8, 1/15, 1/30, 1/60, 1/125, 1/250, 1/500, 1/1000]",
                DIAL.marks().toString());
    }

    /**
     * Another print of a mark is that mark, what lies beyond the ends is on the same scale, anything else is literal.
     */
    @ParameterizedTest(name = "f/{0} is {1} stops from f/1")
    @CsvSource({"5.6,5,f/5.6", "3.4,3.5,f/3.3", "13,7.5,f/13", "32,10,f/32", "2,2,f/2", "7.7,5.889717,f/7.7"})
    void anApertureIsReadOffTheRing(double print, double stops, String shown) {
        assertEquals(stops, HALVES.read(print).stops(), 1e-6);
        assertEquals(shown, HALVES.read(print).toString());
    }

    /**
     * {@code 1/60} is 1/64 s, 1/2000 a mark of the scale beyond the dial, 1/300 literal, and so is what is longer than
     * the dial.
     */
    @ParameterizedTest(name = "{0} s is {1} s")
    @CsvSource({
        "0.0166666666667,0.015625",
        "0.0005,0.00048828125",
        "0.0033333333333,0.0033333333333",
        "15,15",
        "30,30",
        "8,8"
    })
    void aTimeIsReadOffTheDial(double print, double exact) {
        assertEquals(exact, DIAL.read(print).exactSeconds(), 1e-9);
    }

    /** 125 is 1/125, 2 is 1/2, 1 is 1 s; marks longer than a second are not meant by a bare number. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"125,1/125", "2,1/2", "4,1/4", "8,1/8", "1,1s", "0.5,nothing", "300,nothing", "2000,nothing"})
    void aBareNumberIsWhatTheDialPrints(double number, String time) {
        assertEquals(time, DIAL.printed(number).map(ExposureTime::toString).orElse("nothing"));
    }

    @Test
    void aBareDecimalIsATimeOnlyOnADialThatPrintsIt() {
        Shutter thirds = Shutter.between(30, 1 / 4000.0, Scale.THIRD, true);
        assertEquals("0.8s", thirds.printed(0.8).orElseThrow().toString());
        assertEquals(Optional.empty(), thirds.printed(0.5));
        assertEquals(Optional.empty(), DIAL.printed(0.8));
    }

    /**
     * Between 1/64 and 1/32 s the middle in stops is 2^-5.5 = 0.0221 s; within a hundredth of a stop it is a tie. 11 s
     * lies 0.46 stop past 8 s: more than a third, so the watch is nearer.
     */
    @ParameterizedTest(name = "{0} s is set as {1}, or as {2} where less light is safer")
    @CsvSource({
        "0.020,1/60,1/60",
        "0.0220971,1/30,1/60",
        "0.02215,1/30,1/60",
        "0.0222,1/30,1/30",
        "0.024,1/30,1/30",
        "0.0001,1/1000,1/1000",
        "0.004,1/250,1/250",
        "10,8s,8s",
        "11,11s,11s"
    })
    void theNearestMarkIsSetAndATieGoesToTheSaferSide(double seconds, String moreLight, String lessLight) {
        assertEquals(moreLight, DIAL.nearest(seconds, true).toString());
        assertEquals(lessLight, DIAL.nearest(seconds, false).toString());
    }

    /**
     * Past the longest mark by more than half a step (8 s times the root of 2 is 11.3 s) the time itself, to half a
     * second up to 10 s, a second up to a minute, then five seconds.
     */
    @ParameterizedTest(name = "from a dial to 1 s, {0} s is {1}")
    @CsvSource({
        "1.4,1s",
        "1.45,1.5s",
        "1.7,1.5s",
        "1.8,2s",
        "9.8,10s",
        "10.4,10s",
        "12.6,13s",
        "59.4,59s",
        "62,60s",
        "63,1m5s",
        "250.2,4m10s"
    })
    void aBulbTimeIsRoundedToWhatAWatchCanDo(double seconds, String time) {
        assertEquals(
                time,
                Shutter.between(1, 1 / 1000.0, Scale.FULL, true)
                        .nearest(seconds, true)
                        .toString());
    }

    @ParameterizedTest(name = "{0} s is {1}, or {2} where less light is safer")
    @CsvSource({"2.25,2.5s,2s", "2.75,3s,2.5s", "12.5,13s,12s", "13.5,14s,13s"})
    void halfwayBetweenTwoBulbTimesTheSaferSideIsTaken(double seconds, String moreLight, String lessLight) {
        Shutter dial = Shutter.between(1, 1 / 1000.0, Scale.FULL, true);
        assertEquals(moreLight, dial.nearest(seconds, true).toString());
        assertEquals(lessLight, dial.nearest(seconds, false).toString());
    }

    /**
     * On a third-stop ring 28 is another print of 29, and 6.8 no print at all; a ring of other ends has them as marks.
     */
    @Test
    void anotherPrintBelongsToItsOwnScale() {
        Ring thirds = Ring.between(1.8, 32, Scale.THIRD);
        assertEquals("f/29", thirds.mark(28).orElseThrow().toString());
        assertEquals(Optional.empty(), thirds.mark(6.8));
        assertEquals(Optional.empty(), HALVES.mark(32));
        assertEquals(
                "f/3.5",
                Ring.between(3.5, 22, Scale.HALF).mark(3.5).orElseThrow().toString());
    }

    /** Av 5.2 lies nearer to f/5.6 (5) than to f/6.7 (5.5), 5.3 the other way; past the ends the end is nearest. */
    @ParameterizedTest(name = "{0} stops: {1}")
    @CsvSource({"5.2,f/5.6", "5.3,f/6.7", "0,f/2.8", "12,f/22"})
    void theNearestMarkOfTheRingIsFound(double stops, String mark) {
        assertEquals(mark, HALVES.nearest(stops).toString());
    }

    /**
     * 1/200 is a third stop (2^-7.667), and still the end of a dial in full stops; its neighbours keep their places.
     */
    @Test
    void anEndOnAnotherScaleIsAMarkAllTheSame() {
        assertEquals(
                "[1/30, 1/60, 1/125, 1/200]",
                Shutter.between(1 / 30.0, 1 / 200.0, Scale.FULL, false).marks().toString());
        assertEquals(
                "[1/10, 1/15, 1/30]",
                Shutter.between(1 / 10.0, 1 / 30.0, Scale.FULL, false).marks().toString());
    }

    /** A dial of one mark and bulb: the watch takes over where it can time that, from about a second on. */
    @Test
    void aDialOfOneMarkCountsHalfAStop() {
        Shutter box = Shutter.of(List.of(1 / 30.0), true);
        assertEquals("1/30", box.nearest(0.044, true).toString());
        assertEquals("1/30", box.nearest(0.45, true).toString());
        assertEquals("1s", box.nearest(0.9, true).toString());
        assertEquals("2.5s", box.nearest(2.4, true).toString());
    }

    @Test
    void withoutBulbTheLongestMarkIsTheLongestTime() {
        assertEquals(
                "1s",
                Shutter.between(1, 1 / 1000.0, Scale.FULL, false)
                        .nearest(60, true)
                        .toString());
    }
}
