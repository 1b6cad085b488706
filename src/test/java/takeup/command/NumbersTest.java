package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers as they are typed on a frame line, and the notes behind them. */
class NumbersTest {
    // Exact values of prints: reference/scale_fnumbers.csv and scale_times.csv, columns av and exact_s.
    @ParameterizedTest(name = "{0} is {1} and {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "f2.8 1/125  | f/2.8 | 1/125",
                "F/2.8 1/125 | f/2.8 | 1/125",
                "f 8 1/125   | f/8   | 1/125",
                "f/ 8 1/125  | f/8   | 1/125",
                "1/125 f8    | f/8   | 1/125",
                "8 125       | f/8   | 1/125",
                "2,8 125     | f/2.8 | 1/125",
                "f2,8 0,5s   | f/2.8 | 1/2",
                "8 2s        | f/8   | 2s",
                "8 2 s       | f/8   | 2s",
                "8 2\"       | f/8   | 2s",
                "8 1m30s     | f/8   | 1m30s",
                "8 1min30s   | f/8   | 1m30s",
                "8 2min      | f/8   | 2min",
                "8 2 min     | f/8   | 2min",
                "8 4m10s     | f/8   | 4m10s",
                "8 b12s      | f/8   | 12s",
                "8 b2504m45s | f/8   | 41h44m45s",
                "8 62m28s    | f/8   | 1h02m28s",
                "8 1h02m28s  | f/8   | 1h02m28s",
                "8 1h2m28s   | f/8   | 1h02m28s",
                "8 90min     | f/8   | 1h30m",
                "8 b1h30m    | f/8   | 1h30m",
                "8 1h30min   | f/8   | 1h30m",
                "8 2 h       | f/8   | 2h",
                "8 1h0.5s    | f/8   | 1h00m00.5s",
                "8 1h00m00.5s | f/8  | 1h00m00.5s",
                "8 b 12 s    | f/8   | 12s",
                "5.6.3 125   | f/5.6+3/10 | 1/125",
                "5,6,3 125   | f/5.6+3/10 | 1/125",
                "f5.6+.3 125 | f/5.6+3/10 | 1/125",
                "5.6+3/10 125 | f/5.6+3/10 | 1/125",
                "f32 1/2000  | f/32  | 1/2000",
                "f7.7 1/300  | f/7.7 | 1/300"
            })
    void aFrameLineIsReadAsItIsTyped(String line, String aperture, String time) {
        Shooting shooting = Shooting.medium(line);
        assertEquals(aperture + " " + time, Shooting.pair(shooting.frame()));
    }

    // The mark's exact value: the exact power of the root of two; half stops: common practice, no source.
    @ParameterizedTest(name = "{0} on {1}: {2} stops, {3} s")
    @CsvSource(
            delimiter = '|',
            value = {
                "5.6 60      | 645  | 5        | 0.015625",
                "5.6 1/60    | 645  | 5        | 0.015625",
                "11 15       | 645  | 7        | 0.0625",
                "f3.4 125    | 645  | 3.5      | 0.0078125",
                "4.7 125     | 645  | 4.5      | 0.0078125",
                "6.8 125     | 645  | 5.5      | 0.0078125",
                "9.6 125     | 645  | 6.5      | 0.0078125",
                "13.5 125    | 645  | 7.5      | 0.0078125",
                "13 125      | 35af | 7.333333 | 0.0078125",
                "f28 125     | 35af | 9.666667 | 0.0078125",
                "8 0.8       | 35af | 6        | 0.793701",
                "8 30s       | 35af | 6        | 32",
                "8 b30s      | 35af | 6        | 30",
                "8 8s        | 645  | 6        | 8",
                "8 30s       | 645  | 6        | 30",
                "8 1m        | 645  | 6        | ",
                "8 1/300     | 645  | 6        | 0.003333",
                "f7.7 125    | 645  | 5.889717 | 0.0078125",
                "8 1/25      | 66   | 6        | 0.039373",
                "8 1/125     | 66   | 6        | 0.008"
            })
    void aPrintStandsForTheExactValueOfItsMarkAndWhatIsNoMarkForItself(
            String line, String camera, double stops, Double seconds) {
        Shooting shooting = Shooting.of("cam " + camera, "load cn400", line);
        assertEquals(stops, shooting.setting().aperture().orElseThrow().stops(), 1e-5);
        assertEquals(
                Optional.ofNullable(seconds).isPresent(),
                shooting.setting().time().isPresent());
        shooting.setting().time().ifPresent(it -> assertEquals(seconds, it.exactSeconds(), 1e-6));
    }

    @Test
    void whatTheLineLeavesOutStaysAsSet() {
        Shooting shooting = Shooting.medium("4 125", "8", "60", "f11", "1/30");
        assertEquals("1 f/4 1/125, 2 f/8 1/125, 3 f/8 1/60, 4 f/11 1/60, 5 f/11 1/30", shooting.frames());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "4 125 80mm 3m x5 ; bow seat",
                "x5 3 m 80 mm 125 4 ; bow seat",
                "4 125 5x 3m 80mm; bow seat",
                "*5 80mm 4 3m 125;bow seat"
            })
    void aFrameLineTakesItsWordsInAnyOrder(String line) {
        Shooting shooting = Shooting.medium(line);
        assertEquals(5, shooting.roll().frames().size());
        shooting.roll().frames().forEach(it -> {
            assertEquals("f/4 1/125", Shooting.pair(it));
            assertEquals(3, it.exposure().setting().distanceM().orElseThrow());
            assertEquals(80, it.exposure().setting().focalMm().orElseThrow());
            assertEquals(Optional.of("bow seat"), it.note());
        });
    }

    // One foot is 0.3048 m: international yard and pound agreement, 1959.
    @ParameterizedTest
    @CsvSource({"3m,3", "10ft,3.048", "10 ft,3.048", "'2,5m',2.5"})
    void aDistanceIsKeptInMetres(String distance, double metres) {
        assertEquals(
                metres,
                Shooting.medium("4 125 " + distance).setting().distanceM().orElseThrow(),
                1e-9);
    }

    @ParameterizedTest
    @CsvSource({"x1,1", "1x,1", "*1,1", "x99,99", "99x,99", "* 7,7"})
    void aCountRunsFrom1To99(String count, int frames) {
        Shooting shooting = Shooting.medium();
        shooting.typeSurely("4 125 " + count);
        assertEquals(frames, shooting.roll().frames().size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"x0", "x100", "x1.5", "100x", "*0", "x5 x5", "4 125 x5 3x"})
    void anyOtherCountIsRefused(String line) {
        assertTrue(Shooting.medium("4 125").refused(line).contains("count"), line);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "4 125 @400",
                "4 125 ev11",
                "4 125 2500lx",
                "4 125 64cd",
                "4 125 bow",
                "4 125 3m 4m",
                "4 125 80mm 80mm",
                "1/0",
                "b12",
                "b0s",
                "f0",
                "5.6.33 125",
                "5..6 125",
                "5.6+1/3 125",
                "8 1m30",
                "8 b90000000s",
                "8 1/2000000",
                "4 125 0m",
                "4 125 0mm",
                "4 125 6000mm",
                "8 b2s 1/125",
                "f8 f11",
                "1/60 1/30",
                "1/60 2s",
                "f8.b",
                "x",
                "*"
            })
    void whatIsNoNumberOfAFrameIsRefused(String line) {
        Shooting.medium("4 125").refused(line);
    }

    @ParameterizedTest
    @ValueSource(strings = {"f/11.5.2", "f7.7+.3", "f11.5.0", "f0.5.1", "f1001.1"})
    void tenthsBehindWhatIsNoMarkAreNoAperture(String typed) {
        assertEquals(
                typed + " is not an f-number: type a number such as 5.6",
                Shooting.medium("4 125").refused(typed));
    }

    @ParameterizedTest
    @CsvSource({"f11.5,f/11.5", "f4.5.2,f/4.5+2/10", "f6.8.9,f/6.7+9/10", "f8.0.1,f/8+1/10"})
    void aNumberAtFaceValueAndTenthsBehindAMarkOfAnyScaleAreTaken(String typed, String aperture) {
        assertEquals(
                aperture + " 1/125",
                Shooting.pair(Shooting.medium("4 125", typed).frame()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "bow seat",
                "Grüße; Zeile 2; f8 1/125",
                "زورق السباق",
                "🚣‍♀️ 2-",
                "UPPER lower",
                "a,b 1,5 ; ;",
                "9"
            })
    void aNoteIsKeptLetterForLetter(String note) {
        assertEquals(
                Optional.of(note), Shooting.medium("4 125 ; " + note).frame().note());
        assertEquals(Optional.of(note), Shooting.medium(".;" + note).frame().note());
        assertEquals(
                Optional.of(note), Shooting.medium(".", "; " + note).frame().note());
        assertEquals(
                Optional.of(note), Shooting.medium(".", "n " + note).frame().note());
        assertEquals(Optional.of(note), Shooting.medium("note " + note).roll().note());
    }

    @Test
    void digitsOfOtherScriptsAreNoNumbers() {
        Shooting.medium().refused("٤ ١٢٥");
        Shooting.medium("4 125").refused("4 ١٢٥");
    }

    @Test
    void blanksThatDoNotBreakALineAreBlanks() {
        assertEquals("f/4 1/125", Shooting.pair(Shooting.medium("4\u00a0125").frame()));
        assertEquals(
                Optional.of("bow seat"),
                Shooting.medium(".", "n\u00a0bow seat").frame().note());
    }

    @Test
    void aLineOfOverAThousandCharactersIsRefused() {
        assertTrue(Shooting.medium().refused(". ; " + "a".repeat(1000)).contains("1000"));
    }
}
