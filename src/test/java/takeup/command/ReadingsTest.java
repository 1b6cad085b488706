package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.ReferenceTable;
import takeup.advice.ExposureInHand;
import takeup.exposure.Light;
import takeup.history.ShootState;

/** Light readings in every form. The roll in hand is rated 200, one stop over ISO 100. */
class ReadingsTest {
    private static Light light(String meter, String line) {
        Shooting shooting = meter.isEmpty() ? Shooting.medium() : Shooting.medium("meter " + meter);
        shooting.type(line);
        return shooting.situation().day().light().orElseThrow();
    }

    static Stream<ReferenceTable.Row> grid() {
        return ReferenceTable.rows("ev_grid");
    }

    @ParameterizedTest
    @MethodSource("grid")
    void aPairIsItsExposureValueAtTheRollsIndex(ReferenceTable.Row row) {
        String pair = "f" + row.text("f_label") + " " + (row.text("t_label").equals("1") ? "1s" : row.text("t_label"));
        assertEquals(row.number("ev") - 1, light("", "m " + pair).ev100().stops(), 1e-6);
        assertEquals(row.number("ev"), light("hand", "m @100 " + pair).ev100().stops(), 1e-6);
    }

    // EV of the exact marks: ev_grid.csv (f/5.6 1/125 is 12, f/11 1/125 is 14); minus log2(index/100).
    @ParameterizedTest(name = "meter {0}: {1} is EV {2} {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "       | m 5.6 125             | 11   | incident",
                "       | M 5.6 1/125           | 11   | incident",
                "       | m f5.6 125            | 11   | incident",
                "       | m 1/125 5.6           | 11   | incident",
                "       | m 125 f5.6            | 11   | incident",
                "       | m 5,6 125             | 11   | incident",
                "       | m 5.6.3 125           | 11.3 | incident",
                "       | m 5.6+.3 125          | 11.3 | incident",
                "       | m f5.6+3/10 125       | 11.3 | incident",
                "       | m 5.6 125 @100        | 12   | incident",
                "       | m 5.6 125 @ 400       | 10   | incident",
                "       | m ei400 5.6 125       | 10   | incident",
                "       | m @400 5.6 125 @400   | 10   | incident",
                "       | m 4 8                 | 6    | incident",
                "       | m 8 2s                | 4    | incident",
                "       | m 11.3                | 11.3 | incident",
                "       | m 11,3                | 11.3 | incident",
                "       | m 11.2 14.3           | 12.75 | incident",
                "       | m ev11.3              | 11.3 | incident",
                "       | m ev 11.3             | 11.3 | incident",
                "       | m ev-2                | -2   | incident",
                "       | m ev -2               | -2   | incident",
                "       | m ev 8                | 8    | incident",
                "       | m 8 ev                | 8    | incident",
                "       | m ev 11.2 14.3        | 12.75 | incident",
                "       | m ev11 @400           | 9    | incident",
                "       | m low ev 11.2 14.3    | 11.2 | incident",
                "       | m high 11.2 14.3      | 14.3 | incident",
                "       | m 5.6 125 and 11 125  | 12   | incident",
                "       | m low 5.6 125 and 11 125  | 11 | incident",
                "       | m high 5.6 125 and 11 125 | 13 | incident",
                "       | m 5.6 125 and ev13    | 12   | incident",
                "       | m 5.6 125 and 11 125 @100 | 13 | incident",
                "       | m reflected 5.6 125   | 11   | reflected",
                "       | m reflected ev 11     | 11   | reflected",
                "       | m camera 4 500 @400   | 11   | camera",
                "       | m camera f4 1/500     | 12   | camera",
                "       | m camera 4 500 and 8 500 @400 | 12 | camera",
                "       | m spot 9.3 z3         | 11.3 | spot",
                "       | m spot z3 9.3         | 11.3 | spot",
                "       | m spot 9.3            | 9.3  | spot",
                "       | m spot 9 z0           | 14   | spot",
                "       | m spot 9 z10          | 4    | spot",
                "       | m spot 8 12           | 10   | spot",
                "       | m spot low 8 12 z3    | 10   | spot",
                "       | m spot 9 @200         | 8    | spot",
                "       | m 2500lx              | 9.965784 | lux",
                "       | m 2500 lx             | 9.965784 | lux",
                "       | m 2560 lx             | 10   | lux",
                "       | m 64cd                | 9    | reflected",
                "       | m spot 64cd           | 9    | spot",
                "hand   | m 5.6 125             | 11   | incident",
                "hand   | m 8.5 125             | 12.5 | incident",
                "hand   | m 5.6 60              | 10   | incident",
                "hand   | m ev 11.3             | 11.3 | incident",
                "hand   | m ev11.3              | 11.3 | incident",
                "hand   | m camera 4.5 500 @100 | 13.333333 | camera",
                "ev100  | m 11.3                | 11.3 | incident",
                "ev100  | m 8                   | 8    | incident",
                "ev100  | m -2                  | -2   | incident",
                "ev100  | m 11.2 14.3           | 12.75 | incident",
                "ev100  | m f5.6 1/125          | 11   | incident",
                "ev100  | m 8 @200              | 7    | incident",
                "ev100  | m camera 4 500 @400   | 11   | camera",
                "evset  | m 12                  | 11   | incident",
                "evset  | m 12 @400             | 10   | incident",
                "evset  | m low 12 14           | 11   | incident",
                "spot   | m 9.3 z3              | 11.3 | spot",
                "spot   | m 9                   | 9    | spot",
                "spot   | m incident 9          | 9    | incident",
                "spot   | m 2560lx              | 10   | lux",
                "spot   | m sky sun             | 15   | sky",
                "preset 125 | m 5.6             | 11   | incident",
                "preset 125 | m 5.6.3           | 11.3 | incident",
                "preset 125 | m 8               | 12   | incident",
                "preset 125 | m 5.6 11          | 12   | incident",
                "preset 125 | m low 5.6 11      | 11   | incident",
                "preset 125 | m 5.6 8           | 11.5 | incident",
                "preset 125 | m 5.6 1/60        | 10   | incident",
                "preset 125 | m 5.6 60          | 10   | incident",
                "preset 125 | m 5.6 1/8         | 7    | incident",
                "preset 125 | m ev 8            | 8    | incident",
                "preset     | m 5.6 1/125       | 11   | incident",
                "preset 1/60 | m 4 @100         | 10   | incident"
            })
    void aReadingIsReducedToItsExposureValue(String meter, String line, double ev, String method) {
        Light light = light(meter == null ? "" : meter, line);
        assertEquals(ev, light.ev100().stops(), 1e-6);
        assertEquals(method, light.method().word());
    }

    // Tenths after a full stop; f/8 and 1/125 is EV 13, at EI 200 EV 12 at ISO 100.
    @ParameterizedTest(name = "with tenths {0} is {1} stops")
    @CsvSource({
        "8.5,6.5",
        "1.4,1",
        "2.8,3",
        "5.6,5",
        "2.0.8,2.8",
        "4.5,4.5",
        "1.7,0.7",
        "11.3,7.3",
        "16.9,8.9",
        "22.2,9.2",
        "32.1,10.1",
        "8.0,6",
        "2.9,2.9",
        "1.1,0.1",
        "4,4"
    })
    void onAMeterWithTenthsADecimalIsTenthsOfAStop(String typed, double stops) {
        assertEquals(stops + 7 - 1, light("hand", "m " + typed + " 125").ev100().stops(), 1e-6);
        assertEquals(stops + 7 - 1, light("preset 125", "m " + typed).ev100().stops(), 1e-6);
    }

    @ParameterizedTest(name = "meter {0}: {1} is refused, {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "       | m 8            | m ev8",
                "       | m 12           | m ev12",
                "       | m 12           | m 12 125",
                "       | m 9.5          | m ev9.5",
                "       | m 8 11         | m ev 8 11",
                "       | m 11 14.3      | m ev 11 14.3",
                "       | m 125 8        | 8 125",
                "       | m -2           | m ev-2",
                "       | m 1/125        | aperture is missing",
                "       | m f8           | time is missing",
                "       | m 5.6 125 11   | one too many",
                "       | m 5.6 125 11 125 | and",
                "       | m 5.6 125 @200 @400 | two speeds",
                "       | m @200 5.6 125 and 11 125 @400 | two speeds",
                "       | m low          | needs numbers",
                "       | m high         | needs numbers",
                "       | m low high 5.6 125 | one of the two",
                "       | m and 5.6 125  | before and",
                "       | m 5.6 125 and  | after and",
                "       | m 5.6 125 and and 8 125 | before and",
                "       | m ev           | needs numbers",
                "       | m spot         | needs numbers",
                "       | m @200         | needs numbers",
                "       | m spot 9 z11   | z0 to z10",
                "       | m spot 9 z3 z5 | two zones",
                "       | m 9.3 z3       | spot",
                "       | m spot 9 12 z3 | which of them",
                "       | m spot reflected 9 | one way",
                "       | m camera 4     | is missing",
                "       | m camera 11.3  | is missing",
                "       | m camera 11.2 14.3 | no aperture and time",
                "       | m camera ev12  | aperture and a time",
                "       | m camera ev 12 | aperture and a time",
                "       | m camera 64cd  | aperture and a time",
                "       | m camera 2500lx | one way",
                "       | m camera       | needs numbers",
                "       | m flash        | one aperture",
                "       | m flash 8 125  | one aperture",
                "       | m flash 8 and 11 and 4 | one aperture",
                "       | m flash ev8    | no aperture",
                "       | m flash spot 8 | one aperture",
                "       | m sky          | which sky",
                "       | m sky fog      | no sky known here",
                "       | m sky sun 12   | alone",
                "       | m sky sun and 5.6 125 | alone",
                "       | m skye         | did you mean sky",
                "       | m 0lx          | above 0",
                "       | m ev99         | no exposure value",
                "       | m ev 31        | no light",
                "       | m 5.6 125 80mm | no part of a reading",
                "       | m 5.6 125 x5   | no part of a reading",
                "       | m 8 b2s        | no part of a reading",
                "       | m 5.6 125 @0   | no film speed",
                "       | m 5.6 125 ; words | takes none",
                "hand   | m 11.3         | m ev11.3",
                "hand   | m 11.2 14.3    | m ev 11.2 14.3",
                "hand   | m 5.5 125      | no aperture and time",
                "preset | m 5.6          | not known yet",
                "preset | m 5.6 8        | not known yet",
                "preset 125 | m 8 125 60 | one time",
                "preset 125 | m 127      | no aperture",
                "ev100  | m 5.6 1/125    | aperture is missing",
                "ev100  | m 5.6 125      | no exposure value",
                "evset  | m 12 @200 @400 | two speeds"
            })
    void aReadingThatCouldMeanTwoThingsOrNoneIsRefused(String meter, String line, String words) {
        Shooting shooting = Shooting.medium("m ev10", "meter " + (meter == null ? "hand" : meter));
        if (meter == null) {
            shooting = Shooting.medium("m ev10");
        }
        assertTrue(shooting.refused(line).contains(words), shooting.refused(line));
        assertEquals(10, shooting.ev());
    }

    // daylight_rule.csv, column ev100, in this order.
    @ParameterizedTest
    @CsvSource({"snow,0", "sun,1", "hazy,2", "cloudy,3", "overcast,4", "shade,5"})
    void theSkyIsTheDaylightRule(String sky, int row) {
        double[] table = {16, 15, 14, 13, 12, 12};
        assertEquals(table[row], light("", "m sky " + sky).ev100().stops());
    }

    static Stream<ReferenceTable.Row> levels() {
        return ReferenceTable.rows("ev_light");
    }

    @ParameterizedTest
    @MethodSource("levels")
    void luxFootcandlesAndCandelasFollowTheTable(ReferenceTable.Row row) {
        double ev = row.number("ev100");
        // Five and more digits are printed there: a thousandth of a stop.
        assertEquals(ev, light("", "m " + row.text("lux_c250") + "lx").ev100().stops(), 1e-3);
        assertEquals(
                ev,
                light("", "m " + row.text("footcandles_c250") + " fc").ev100().stops(),
                1e-3);
        assertEquals(ev, light("", "m " + row.text("cd_k12_5") + "cd").ev100().stops(), 1e-3);
    }

    @Test
    void severalReadingsShowTheirSpan() {
        Shooting shooting = Shooting.medium();
        assertTrue(
                shooting.type("m 5.6 125 and 11 125")
                        .startsWith("EV 12.0 at ISO 100, incident, span 2 stops, just now."),
                shooting.answer().text());
        assertTrue(
                shooting.type("m low ev 11.2 14.3")
                        .startsWith("EV 11.2 at ISO 100, incident, span 3.1 stops, just now."),
                shooting.answer().text());
        assertEquals("light", shooting.answer().event());
    }

    /** f/5.6 (5) 1/128 (7) at EI 200 is EV 12 - 1 = 11; zone III is two stops less light, so 13 is set for. */
    @Test
    void aZoneGoesWithAPairAndWithAnyReadingOffTheSubject() {
        for (String how : new String[] {"spot", "reflected", "camera"}) {
            Light placed = light("", "m " + how + " 5.6 125 z3" + (how.equals("camera") ? " @200" : ""));
            assertEquals(13, placed.ev100().stops(), 1e-6, how);
            assertEquals(OptionalInt.of(3), placed.zone(), how);
        }
    }

    @Test
    void aSpotReadingIsOnZoneFiveUnlessItSays() {
        assertEquals(OptionalInt.of(5), light("", "m spot 9").zone());
        assertEquals(OptionalInt.of(3), light("", "m spot 9 z3").zone());
        assertEquals(OptionalInt.empty(), light("", "m ev 9").zone());
    }

    @Test
    void aPairOnAnApertureMeterSetsItsPresetFromThenOn() {
        Shooting shooting = Shooting.medium("meter preset 125", "m 5.6 1/60");
        assertEquals("1/60", shooting.situation().day().preset().orElseThrow().toString());
        shooting.type("m 5.6");
        assertEquals(10, shooting.ev(), 1e-6);
        shooting.type("undo");
        shooting.type("undo");
        assertEquals("1/125", shooting.situation().day().preset().orElseThrow().toString());
    }

    @Test
    void onAnApertureMeterANumberThatCanBeBothIsAnAperture() {
        Shooting shooting = Shooting.medium("meter preset 125");
        shooting.type("m 5.6 8");
        assertEquals("1/125", shooting.situation().day().preset().orElseThrow().toString());
        shooting.type("m 5.6 1/8");
        assertEquals("1/8", shooting.situation().day().preset().orElseThrow().toString());
    }

    @Test
    void withoutAFilmAPairNeedsTheSpeedAndAnEvDoesNot() {
        Shooting shooting = Shooting.of("cam 645");
        assertTrue(shooting.refused("m 5.6 125").contains("@200"));
        shooting.type("m 5.6 125 @400");
        assertEquals(10, shooting.ev(), 1e-6);
        assertEquals("EV 10.0 at ISO 100, incident, just now. No film in 645 back 1.", shooting.type("m ev10"));
        assertEquals(
                "EV 10.0 at ISO 100, incident, just now. No camera in hand.",
                Shooting.of().type("m ev10"));
        assertTrue(shooting.refused("m flash 8").contains("no film"));
    }

    @Test
    void mAloneRepeatsTheLastReadingWithItsAge() {
        Shooting shooting = Shooting.medium("m ev10").later(12);
        ShootState before = shooting.situation();
        assertEquals("EV 10.0 at ISO 100, incident, 12 min old. Best: f/5.6 1/60.", shooting.type("m"));
        assertEquals(before, shooting.situation());
        assertTrue(Shooting.medium().refused("m").contains("no light reading today"));
        Shooting flash = Shooting.medium("m ev10").later(1);
        flash.type("m flash 8");
        assertEquals("Flash: f/8 at 200, 1 h 5 min old.", flash.later(65).type("m"));
    }

    @Test
    void theReadingIsKeptAsItWasTypedAndServesEveryCamera() {
        Shooting shooting = Shooting.of("cam 35", "load bw400", "cam 645", "load cn400", "m 5.6 125", "cam 35", ".");
        assertEquals(
                "m 5.6 125", shooting.frame().exposure().light().orElseThrow().typed());
        assertEquals(
                11, shooting.frame().exposure().light().orElseThrow().ev100().stops(), 1e-6);
    }

    @Test
    void aFlashReadingSetsTheAperture() {
        Shooting shooting = Shooting.medium("flash on", "set 4 60");
        assertEquals("Flash: f/8 at 200. Set: f/8, right.", shooting.type("m flash 8"));
        assertEquals("f/8 1/60", shooting.pair());
        shooting.type("5.6");
        // One stop wider than the flash meter asks for.
        assertEquals(1, shooting.error().orElseThrow(), 1e-9);
        assertEquals(1, ExposureInHand.error(shooting.situation()).orElseThrow(), 1e-9);
        assertEquals("Flash: f/8 at 400. Set: f/5.6, right.", shooting.type("m flash 8 @400"));
    }

    @Test
    void withFlashOnAndNoFlashReadingThereIsNoError() {
        Shooting shooting = Shooting.medium("m ev10", "flash on", "4 60");
        assertTrue(shooting.error().isEmpty());
        assertTrue(ExposureInHand.error(shooting.situation()).isEmpty());
    }
}
