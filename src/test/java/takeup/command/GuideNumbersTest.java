package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.ReferenceTable;
import takeup.exposure.Stops;
import takeup.text.Plain;

/** Flash on the prompt: guide numbers, the light that is there anyway, and the caution about old units. */
class GuideNumbersTest {
    private static double fNumber(Shooting shooting) {
        return shooting.situation().day().flash().orElseThrow().aperture().exactFNumber();
    }

    @Test
    void theFlashTableIsReadOnThePrompt() {
        long read = ReferenceTable.rows("flash_cases")
                .peek(it -> {
                    String unit = it.text("unit");
                    Shooting shooting = Shooting.of("cam 645", "load cr100 @" + it.text("iso"));
                    shooting.type("flash gn" + it.text("gn100") + unit + " " + it.text("distance") + unit + " power "
                            + it.text("power"));
                    assertEquals(it.number("f_number"), fNumber(shooting), 1e-4 * it.number("f_number"), it.toString());
                })
                .count();
        assertTrue(read > 5);
    }

    // N = GN x sqrt(ISO / 100) x sqrt(power) / distance; several heads: the root of the sum of squares
    // (the textbook formula of the guide number).
    // 118 ft is 35.97 m; 20 and 20 together are 28.28; 36 x 3.28084 / 10 = 11.81.
    @ParameterizedTest(name = "{0} is f/{1}")
    @CsvSource({
        "flash gn36 3m,12",
        "flash gn36m 3m 1/4,6",
        "flash gn36 3m power 1/4,6",
        "flash gn118ft 10ft power 1/4,5.9",
        "flash gn118 10ft,11.8",
        "flash gn36m 10ft,11.811",
        "flash gn20m gn20m 4m,7.071",
        "flash gn 36 m 3 m,12",
        "FLASH GN36 3M 1/1,12",
        "'flash gn36 1,5m',24"
    })
    void aGuideNumberGivesAnAperture(String line, double fNumber) {
        assertEquals(fNumber, fNumber(Shooting.of("cam 645", "load cr100 @100", line)), 0.001 * fNumber);
    }

    @Test
    void lightFallsOffWithTheSquareOfTheDistance() {
        double near = fNumber(Shooting.of("cam 645", "load cr100 @100", "flash gn36 2m"));
        long read = ReferenceTable.rows("inverse_square")
                .peek(it -> {
                    double far = fNumber(Shooting.of(
                            "cam 645",
                            "load cr100 @100",
                            "flash gn36 " + Plain.number(2 * it.number("distance_ratio")) + "m"));
                    assertEquals(it.number("stops"), 2 * Stops.of(far / near), 1e-4, it.toString());
                })
                .count();
        assertTrue(read > 3);
    }

    @Test
    void theNearestApertureIsPutInHandAndTheAnswerSaysBoth() {
        Shooting shooting = Shooting.of("cam 645", "load cr100 @100");
        // log2 of (12 / 11.31)^2 is 0.17.
        assertEquals("Flash at EI 100: f/12 at 3 m: set f/11, 0.2 over.", shooting.type("flash gn36 3m"));
        assertEquals("f/11", shooting.setting().aperture().orElseThrow().toString());
        assertTrue(shooting.setting().flash());
        assertEquals(3, shooting.setting().distanceM().orElseThrow());
        shooting.type(". ");
        assertEquals(0.17, shooting.error().orElseThrow(), 0.005);
        assertEquals("Flash at EI 100: f/6 at 3 m: set f/5.6, 0.2 over.", shooting.type("flash gn36m 1/4"));
    }

    @Test
    void aHeldApertureIsKept() {
        Shooting shooting = Shooting.of("cam 645", "load cr100 @100", "hold f8");
        assertEquals("Flash at EI 100: f/12 at 3 m: set f/8, 1.2 over.", shooting.type("flash gn36 3m"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "flash gn0 3m",
                "flash gn36 3m power 0",
                "flash gn36 3m power 2",
                "flash gn36 3m 2/1",
                "flash gn36 3m 1/0",
                "flash gn36 3m power",
                "flash gn36",
                "flash gn36m",
                "flash gn 3m",
                "flash gnx 3m",
                "flash gn36 3m 4m",
                "flash gn36 3m 1/2 1/4",
                "flash gn600m 3m",
                "flash gn36 0m",
                "flash gn36 3m 8",
                "flash maybe",
                "flash",
                "flash gn400m gn400m 3m",
                "flash gn36m f8 f11",
                "flash gn36m f8 fill",
                "flash gn36m 3m fill",
                "flash gn36m 3m fill -1",
                "flash gn36m 3m f8 1/4",
                "flash gn36m 3m f8 fill 1"
            })
    void whatIsNoFlashIsRefused(String line) {
        Shooting.of("cam 645", "load cr100 @100").refused(line);
    }

    /**
     * d = GN x sqrt(ISO / 100) x sqrt(power) / N: 36 / 8 is 4.5 m, at EI 400 twice that, at a quarter of the power
     * half; 118 / 8 is 14.75 ft. A filter of two stops halves it again. f/11 is 11.31: 36 / 11.31 = 3.18.
     */
    @ParameterizedTest(name = "EI {0}, {1}: {2}")
    @CsvSource({
        "100, flash gn36m f8, f/8 is right at 4.5 m",
        "100, flash gn118ft f8, f/8 is right at 14.8 ft",
        "400, flash gn36m f8, f/8 is right at 9 m",
        "100, flash gn36m f8 1/4, f/8 is right at 2.25 m",
        "100, flash gn36m f11, f/11 is right at 3.18 m",
        "100, flash gn36m f5.6, f/5.6 is right at 6.36 m"
    })
    void anApertureGivesTheDistance(int index, String line, String said) {
        Shooting shooting = Shooting.of("cam 645", "load cr100 @" + index);
        assertEquals("Flash at EI " + index + ": " + said + ".", shooting.type(line));
        assertTrue(shooting.setting().flash());
        shooting.type(". ");
        assertEquals(0, shooting.error().orElseThrow(), 1e-6);
    }

    @Test
    void aFilterBringsTheFlashNearer() {
        assertEquals(
                "Flash at EI 100: f/8 is right at 2.25 m.",
                Shooting.of("cam 645", "load cr100 @100", "filter 4x").type("flash gn36m f8"));
    }

    /**
     * At 3 m the full power of guide number 36 is right at f/12, Av 7.17. f/8 (Av 6) takes (8/12)^2 = 1/2.25 of it; a
     * stop under that is half, 1/4.5: log2(4.5 / 4) = 0.17 stops below 1/4.
     */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            flash gn36m 3m fill -1   | power 1/4.5 (0.2 stops below 1/4) is 1.0 under at f/8 | -1
            flash gn36m 3m fill 0    | power 1/2.3 (0.2 stops below 1/2) is right at f/8     | 0
            flash gn36m 3m f8        | power 1/2.3 (0.2 stops below 1/2) is right at f/8     | 0
            flash gn24m 3m f8        | power full is right at f/8                            | 0
            """)
    void aDistanceAndAnApertureGiveThePower(String line, String said, double error) {
        Shooting shooting = Shooting.of("cam 645", "load cr100 @100", "set 8 60");
        assertEquals("Flash at EI 100, 3 m: " + said + ".", shooting.type(line));
        assertEquals("f/8 1/60", shooting.pair());
        shooting.type(". ");
        assertEquals(error, shooting.error().orElseThrow(), 1e-6);
    }

    /** Full power of 12 at 3 m is f/4: two stops under f/8, right there from 1.5 m. */
    @Test
    void morePowerThanThereIsIsRefusedWithWhatWouldDo() {
        String why = Shooting.of("cam 645", "load cr100 @100", "set 8 60").refused("flash gn12m 3m fill 0");
        assertEquals(
                "at 3 m full power is 2.0 under at f/8; for right at f/8 the flash must be 1.5 m away, or the lens opened",
                why);
    }

    /**
     * Fill on the shore: the ambient light is right (EV 12 at f/8 1/60), the flash a stop under: log2(1 + 0.5) = 0.6
     * over.
     */
    @Test
    void fillAddsToTheLightThatIsThere() {
        assertTrue(Shooting.of("cam 645", "load cr100 @100", "m ev12", "set 8 60")
                .type("flash gn36m 3m fill -1")
                .endsWith(" Ambient light alone: right. Together: 0.6 over."));
    }

    /** f/8 is Av 6, f/5.6 Av 5: twice the light. Together 2^6 + 2^5 = 96, Av 6.58, f/9.8; half-stop ring: f/9.5. */
    @Test
    void keyAndFillAreMeasuredAloneAndAddOnTheLitSide() {
        Shooting shooting = Shooting.of("cam 645", "load cr100 @100", "set 8 60");
        assertEquals(
                "Flash: key f/8, fill f/5.6 at 100, ratio 2:1 (lit side to shadow side 3:1), together f/9.8."
                        + " Set: f/9.5, 0.1 over.",
                shooting.type("m flash 8 and 5.6"));
        shooting.type("8 60");
        assertEquals(0.585, shooting.error().orElseThrow(), 0.001);
    }

    @Test
    void withTheDistanceInHandTheUnitMustBeSaid() {
        String why = Shooting.of("cam 645", "load cr100 @100", "set 3m").refused("flash gn36");
        assertTrue(why.contains("gn36m") && why.contains("gn36ft"), why);
    }

    @Test
    void theAnswerSaysHowFarTheLightThatIsThereLiesUnder() {
        // EV 10 at ISO 100, f/11 (7 stops) at 1/60 (6 stops) is EV 13: three stops under. The flash is 0.17 over:
        // log2(2^-3 + 2^0.17) = 0.32. A flash meter's reading is all light there is.
        Shooting shooting = Shooting.of("cam 645", "load cr100 @100", "m ev10", "set 60");
        assertEquals(
                "Flash at EI 100: f/12 at 3 m: set f/11, 0.2 over. Ambient light alone: 3.0 under. Together: 0.3 over.",
                shooting.type("flash gn36 3m"));
        assertTrue(
                shooting.type("m flash 8").endsWith("Ambient light alone: 2.0 under. Together: right."),
                shooting.answer().text());
        assertFalse(
                Shooting.of("cam 645", "load cr100 @100").type("flash gn36 3m").contains("Ambient"));
    }

    /**
     * f/12 is 0.17 over at f/11 (2 log2(12 / 11.31)), 0.33 under at f/13, 0.83 under at f/16, 1.33 under at f/19. EV 6
     * at ISO 100 asks for 2 s at f/11 (Av 7): sync 1/60 is seven stops under it, 2^-7 + 2^0.17 is 0.18 over; 1/8 in
     * hand four stops, 0.25 over. EV 9 is four under at f/11 1/60: 0.25 over, and what is nearer is too long for the
     * hand (1/50 for 80 mm). EV 13 is 1 under at f/16 1/60: log2(0.5 + 0.56) = 0.09 over; f/11 there would be a stop
     * over. EV 15 is right at f/22 1/60, the flash 1.83 under: log2(1 + 0.28) = 0.36 over, and nothing comes nearer.
     */
    @ParameterizedTest(name = "{0} and then EV {1}")
    @CsvSource(delimiter = '|', textBlock = """
            set 11        | 6  | Set: f/11 1/60, 0.2 over.                    | 7.0 under
            set 11 60     | 6  | The setting in hand stays: f/11 1/60, 0.2 over. | 7.0 under
            set 11 4s     | 9  | Set: f/11 1/60, 0.2 over.                    | 4.0 under
            set 11 1/8    | 6  | The setting in hand stays: f/11 1/8, 0.2 over. | 4.0 under
            set 11 1/500  | 13 | Set: f/16 1/60, 0.1 over.                    | 1.0 under
            set 11 1/8    | 13 | Set: f/16 1/60, 0.1 over.                    | 1.0 under
            set 11 60     | 15 | Set: f/22 1/60, 0.4 over.                    | right
            """)
    void besideTheLightThatIsThereAllOfItIsWhatTheFilmNeeds(String set, int ev, String said, String ambient) {
        Shooting shooting = Shooting.of("cam 645", "load cr100 @100", "flash gn36 3m", set);
        String answer = shooting.type("m ev" + ev);
        assertTrue(answer.contains(said) && answer.contains("Ambient light alone: " + ambient + "."), answer);
    }

    @ParameterizedTest
    @ValueSource(strings = {"flash on", "flash gn36 3m", "m flash 8"})
    void theVoltageOfOldUnitsIsSaidOnceADay(String line) {
        Shooting shooting = Shooting.medium();
        shooting.type(line);
        assertEquals("flash-voltage", shooting.warnings());
        shooting.type("flash off");
        assertEquals("", shooting.warnings());
        for (String again : new String[] {"flash on", "flash gn36 3m", "m flash 8"}) {
            shooting.type(again);
            assertEquals("", shooting.warnings());
        }
        shooting.type("cam 35");
        shooting.type("flash on");
        assertEquals("", shooting.warnings());
    }

    @Test
    void theCautionIsNotSaidAgainAfterUndoButOnAnotherDay() {
        Shooting shooting = Shooting.medium("flash on", "undo");
        assertFalse(shooting.setting().flash());
        shooting.type("flash on");
        assertEquals("", shooting.warnings());
        shooting.type("flash off");
        shooting.later(24 * 60);
        shooting.type("flash on");
        assertEquals("flash-voltage", shooting.warnings());
    }
}
