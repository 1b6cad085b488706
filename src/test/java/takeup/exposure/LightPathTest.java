package takeup.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.OffsetDateTime;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How a setting is judged. The chain from light to time stands in the cases of the kit, with the films' own numbers.
 */
class LightPathTest {
    private static final Reciprocity NONE = new Reciprocity.None(OptionalDouble.empty());

    /** EV 12 at ISO 100 is f/8 at 1/60 (table ev_grid); each change of the setting is a whole stop of error. */
    @ParameterizedTest(name = "f/{0} at 1/{1} with a filter of {2} and a bias of {3} is {4} off")
    @CsvSource({
        "8,60,0,0,0",
        "5.6,60,0,0,1",
        "8,30,0,0,1",
        "8,125,0,0,-1",
        "8,60,1,0,-1",
        "8,30,1,0,0",
        "8,60,0,1,-1",
        "8,30,0,1,0",
        "8,60,0,-1,1"
    })
    void moreLightThanAskedForIsPlus(double fNumber, double oneOver, double filter, double bias, double error) {
        LightPath path = new LightPath(FilmSpeed.ISO_100, filter, 0, bias, NONE);
        assertEquals(
                error,
                path.error(
                        new ExposureValue(12),
                        Scale.FULL.aperture(fNumber).orElseThrow(),
                        Scale.FULL.time(1 / oneOver).orElseThrow()),
                1e-9);
    }

    /**
     * A power of 1.26 makes 10 s of light ask for 18.19701 s (table reciprocity_cases); the corrected time is no error.
     */
    @Test
    void aLongExposureIsJudgedByWhatItIsWorth() {
        LightPath path = new LightPath(FilmSpeed.ISO_100, 0, 0, 0, new Reciprocity.Power(1.26, 1));
        ExposureValue light = new ExposureValue(6 - Stops.of(10));
        Aperture f8 = Scale.FULL.aperture(8).orElseThrow();
        assertEquals(10, path.metered(light, f8), 1e-9);
        assertEquals(0, path.error(light, f8, ExposureTime.literal(18.19701)), 1e-5);
        // 10 s as metered is worth 10^(1/1.26) s: log2(10) * (1/1.26 - 1) = -0.6855 stop.
        assertEquals(-0.6855, path.error(light, f8, ExposureTime.literal(10)), 1e-4);
    }

    /** The meter was at 400 and the film is rated 100: two stops more light than f/8 said, which is f/4. */
    @Test
    void aFlashMeterAtAnotherSpeedIsTurnedIntoTheFilms() {
        FlashLight flash = new FlashLight(
                Scale.FULL.aperture(8).orElseThrow(),
                new FilmSpeed(400),
                "m flash 8 @400",
                OffsetDateTime.parse("2026-09-12T15:00+02:00"));
        assertEquals(
                0,
                new LightPath(FilmSpeed.ISO_100, 0, 0, 0, NONE)
                        .flashError(flash, Scale.FULL.aperture(4).orElseThrow()),
                1e-9);
    }

    /**
     * A flash meter set to 100 asks for f/8. At EI 400 two stops less are wanted, f/16; a filter of one stop wants one
     * back, as does one stop of draw or of bias.
     */
    @ParameterizedTest(name = "EI {0}, filter {1}, draw {2}, bias {3}: f/{4} is {5} off")
    @CsvSource({
        "100,0,0,0,8,0",
        "400,0,0,0,16,0",
        "400,0,0,0,8,2",
        "100,1,0,0,5.6,0",
        "100,0,1,0,5.6,0",
        "100,0,0,1,5.6,0",
        "100,0,0,0,11,-1"
    })
    void flashCountsTheApertureAlone(double index, double filter, double draw, double bias, double set, double error) {
        FlashLight flash = new FlashLight(
                Scale.FULL.aperture(8).orElseThrow(),
                FilmSpeed.ISO_100,
                "m flash 8",
                OffsetDateTime.parse("2026-09-12T15:00+02:00"));
        LightPath path = new LightPath(new FilmSpeed(index), filter, draw, bias, NONE);
        assertEquals(error, path.flashError(flash, Scale.FULL.aperture(set).orElseThrow()), 1e-9);
    }
}
