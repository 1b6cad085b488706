package takeup.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.ReferenceTable;

/** Aperture and time added up, and light turned into stops; sources stand in the tables. */
class ExposureValueTest {
    static Stream<ReferenceTable.Row> ev_grid() {
        return ReferenceTable.rows("ev_grid");
    }

    static Stream<ReferenceTable.Row> ev_long_times() {
        return ReferenceTable.rows("ev_long_times");
    }

    static Stream<ReferenceTable.Row> ev_light() {
        return ReferenceTable.rows("ev_light");
    }

    static Stream<ReferenceTable.Row> light_value_cases() {
        return ReferenceTable.rows("light_value_cases");
    }

    static Stream<ReferenceTable.Row> scale_speeds() {
        return ReferenceTable.rows("scale_speeds");
    }

    static Stream<ReferenceTable.Row> push_pull() {
        return ReferenceTable.rows("push_pull");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ev_grid")
    void wholeStopsOfRingAndDialAddUpToAWholeValue(ReferenceTable.Row row) {
        Aperture aperture = Scale.FULL.aperture(row.number("f_label")).orElseThrow();
        ExposureTime time = Scale.FULL.time(row.number("t_label")).orElseThrow();
        assertEquals(row.number("ev"), ExposureValue.of(aperture, time).stops(), 1e-9);
        ExposureValue atFaceValue =
                ExposureValue.of(Aperture.literal(aperture.fNumber()), ExposureTime.literal(time.seconds()));
        assertEquals(row.number("ev_nominal"), atFaceValue.stops(), 1e-5);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ev_long_times")
    void inTheDarkTheTimeDoublesFromValueToValue(ReferenceTable.Row row) {
        LightPath plain = new LightPath(FilmSpeed.ISO_100, 0, 0, 0, new Reciprocity.None(OptionalDouble.empty()));
        Aperture aperture = Scale.FULL.aperture(row.number("f_label")).orElseThrow();
        double seconds = plain.metered(new ExposureValue(row.number("ev100")), aperture);
        assertEquals(row.number("seconds"), seconds, 1e-9 * seconds);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ev_light")
    void luxFootcandlesAndCandelasAreTheSameLight(ReferenceTable.Row row) {
        double ev = row.number("ev100");
        assertEquals(ev, ExposureValue.ofLux(row.number("lux_c250"), 250).stops(), 1e-6);
        assertEquals(ev, ExposureValue.ofLux(row.number("lux_c340"), 340).stops(), 1e-6);
        assertEquals(
                ev,
                ExposureValue.ofLux(row.number("footcandles_c250") * ExposureValue.LUX_PER_FOOTCANDLE, 250)
                        .stops(),
                1e-5);
        assertEquals(ev, ExposureValue.ofLuminance(row.number("cd_k12_5"), 12.5).stops(), 1e-6);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("light_value_cases")
    void settingsAtFaceValueGiveTheLightValueOfMetadata(ReferenceTable.Row row) {
        boolean apex = row.text("f_number").startsWith("APEX");
        Aperture aperture =
                apex ? Aperture.mark(5.6, apex(row.text("f_number"))) : Aperture.literal(row.number("f_number"));
        ExposureTime time = apex
                ? new ExposureTime(1 / 125.0, Stops.factor(-apex(row.text("exposure_time"))))
                : ExposureTime.literal(row.number("exposure_time"));
        assertEquals(
                row.number("light_value"),
                ExposureValue.of(aperture, time)
                        .at100(new FilmSpeed(row.number("iso")))
                        .stops(),
                1e-5);
    }

    /** "APEX 5/1" is 5. */
    private static double apex(String cell) {
        return Double.parseDouble(cell.substring("APEX ".length(), cell.indexOf('/')));
    }

    /**
     * The checks printed in the table apex: f/5.6 is Av 5, 60 s is Tv -5.9068906, f/16 at 1/100 is Ev 14.643856, ISO
     * 100 is Sv 5.
     */
    @Test
    void apexValuesAreTheStopsOfEachPart() {
        assertEquals(5, Scale.FULL.aperture(5.6).orElseThrow().stops(), 1e-9);
        assertEquals(-5.9068906, -ExposureTime.literal(60).stops(), 1e-6);
        assertEquals(
                14.643856,
                ExposureValue.of(Aperture.literal(16), ExposureTime.literal(1 / 100.0))
                        .stops(),
                1e-6);
        assertEquals(5, FilmSpeed.ISO_100.apex(), 1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scale_speeds")
    void aFilmSpeedHasItsDegrees(ReferenceTable.Row row) {
        FilmSpeed speed = new FilmSpeed(row.number("arithmetic"));
        assertEquals((int) row.number("degrees"), speed.degrees());
        assertEquals(row.number("sv_apex"), speed.apex(), 1e-5);
        assertEquals(row.number("stops_from_100"), speed.stopsFrom100(), 1e-5);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("push_pull")
    void ratingAFilmSlowerGivesItThatMuchMoreLight(ReferenceTable.Row row) {
        assertEquals(
                -row.number("stops"),
                new FilmSpeed(row.number("box")).stopsOver(new FilmSpeed(row.number("ei"))),
                1e-6);
    }

    /** Printed by others: each answer as it stands in its source, good to the rounding of the dial they print it on. */
    @ParameterizedTest(name = "{4}")
    @CsvSource(textBlock = """
            8,   1/125,  11,  1/60,   'basiccameraphotography.com, How to control exposure'
            32,  1,      2,   1/250,  'US Army subcourse SS0508, sheet 18'
            5.6, 1/8,    16,  1,      'S. J. Godfrey, Long exposures, third paragraph'
            2.8, 1/2000, 32,  1/15,   'an SLR manual of the 1990s, chart of equal exposures, p. 41'
            16,  1/125,  5.6, 1/1000, 'basiccamera.blogspot.com 2008/06, first paragraph'
            16,  1/500,  11,  1/1000, 'solderpunk, Decent exposure, rule of thumb'
            """)
    void pairsThatOthersPrintAsEqualAreEqual(
            double aperture, String time, double otherAperture, String otherTime, String source) {
        ExposureValue one = ExposureValue.of(Scale.anyAperture(aperture), Scale.anyTime(seconds(time)));
        ExposureValue other = ExposureValue.of(Scale.anyAperture(otherAperture), Scale.anyTime(seconds(otherTime)));
        assertEquals(one.stops(), other.stops(), 1e-9, source);
    }

    private static double seconds(String label) {
        return label.startsWith("1/") ? 1 / Double.parseDouble(label.substring(2)) : Double.parseDouble(label);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void aValueThatIsNoNumberIsRefused(double value) {
        assertThrows(IllegalArgumentException.class, () -> new ExposureValue(value));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -400, 0.09, 1_000_001, Double.NaN})
    void aFilmSpeedThatNoFilmHasIsRefused(double value) {
        assertThrows(IllegalArgumentException.class, () -> new FilmSpeed(value));
    }
}
