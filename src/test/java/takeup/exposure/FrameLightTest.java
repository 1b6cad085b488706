package takeup.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Light adds up: what ambient light and flash come to together on one frame. */
class FrameLightTest {
    private static final OffsetDateTime NOON = OffsetDateTime.parse("2026-09-12T12:00+02:00");
    private static final LightPath ISO_100 =
            new LightPath(FilmSpeed.ISO_100, 0, 0, 0, new Reciprocity.None(OptionalDouble.empty()));
    private static final Aperture F8 = Scale.FULL.aperture(8).orElseThrow();

    private static ExposureTime time(double tv) {
        return ExposureTime.literal(Stops.factor(-tv));
    }

    private static FlashLight guided(double av) {
        return new FlashLight(
                new Aperture(Stops.factor(av / 2), 0, av), FilmSpeed.ISO_100, Optional.empty(), "flash", NOON);
    }

    private static FlashLight metered(double av, ExposureTime time) {
        return new FlashLight(
                new Aperture(Stops.factor(av / 2), 0, av),
                FilmSpeed.ISO_100,
                Optional.of(new FlashLight.Measured(Optional.of(time), Optional.empty(), Optional.empty())),
                "m flash",
                NOON);
    }

    private static LightParts at(double ev, FlashLight flash, ExposureTime time) {
        return new FrameLight(Optional.of(new ExposureValue(ev)), true, Optional.of(flash), false)
                .through(ISO_100, Optional.of(F8), Optional.of(time));
    }

    /** Two equal lights are twice the light, one stop; half of it more is log2(1.5) = 0.585. */
    @Test
    void twoLightsTogetherAreTheSumOfBoth() {
        // f/8 (6) and 1/64 s (6) are EV 12.
        assertEquals(1, at(12, guided(6), time(6)).totalStops().orElseThrow(), 1e-9);
        assertEquals(0.585, at(12, guided(5), time(6)).totalStops().orElseThrow(), 0.001);
        assertEquals(0, at(12, guided(5), time(6)).ambientStops().orElseThrow(), 1e-9);
        assertEquals(-1, at(12, guided(5), time(6)).flashStops().orElseThrow(), 1e-9);
    }

    /**
     * The meter read f/8 with the room's light at 1/64 s, which alone is a stop under: half of all light is the room's,
     * the other half the flash's. At 1/32 s the room's half becomes a whole: log2(1 + 0.5) = 0.585. At 1/128 s it is a
     * quarter: log2(0.25 + 0.5) = -0.415.
     */
    @Test
    void anotherTimeChangesTheRoomsPartOfAFlashMetersReadingAlone() {
        FlashLight flash = metered(6, time(6));
        assertEquals(0, at(11, flash, time(6)).totalStops().orElseThrow(), 1e-9);
        assertEquals(-1, at(11, flash, time(6)).flashStops().orElseThrow(), 1e-9);
        assertEquals(0.585, at(11, flash, time(5)).totalStops().orElseThrow(), 0.001);
        assertEquals(-1, at(11, flash, time(5)).flashStops().orElseThrow(), 1e-9);
        assertEquals(-0.415, at(11, flash, time(7)).totalStops().orElseThrow(), 0.001);
    }

    /**
     * The same, and then the room goes a stop darker (EV 10): its half becomes a quarter, the flash stays: log2(0.25 +
     * 0.5) = -0.415.
     */
    @Test
    void aRoomThatIsMeteredAnewLeavesTheFlashAsItWas() {
        FlashLight read = metered(6, time(6));
        FlashLight inRoom = new FlashLight(
                read.aperture(),
                read.index(),
                Optional.of(new FlashLight.Measured(
                        Optional.of(time(6)), Optional.empty(), Optional.of(new ExposureValue(11)))),
                read.typed(),
                NOON);
        assertEquals(-0.415, at(10, inRoom, time(6)).totalStops().orElseThrow(), 0.001);
        assertEquals(-1, at(10, inRoom, time(6)).flashStops().orElseThrow(), 1e-9);
        assertEquals(0, at(11, inRoom, time(6)).totalStops().orElseThrow(), 1e-9);
    }

    @Test
    void withoutTheRoomsLightAnotherTimeIsNotKnown() {
        FrameLight light = new FrameLight(Optional.empty(), true, Optional.of(metered(6, time(6))), false);
        assertEquals(
                0,
                light.through(ISO_100, Optional.of(F8), Optional.of(time(6)))
                        .totalStops()
                        .orElseThrow(),
                1e-9);
        assertEquals(LightParts.UNKNOWN, light.through(ISO_100, Optional.of(F8), Optional.of(time(3))));
    }

    /**
     * The shore at noon is metered, then the boathouse with flash: the flash meter saw less, so that was another place.
     */
    @Test
    void anOlderReadingOfABrighterPlaceDoesNotCountBesideTheFlashMeters() {
        assertEquals(0, at(15, metered(6, time(6)), time(6)).totalStops().orElseThrow(), 1e-9);
        // Metered after the flash, it is the light of now: EV 15 is three stops over.
        LightParts outside = new FrameLight(
                        Optional.of(new ExposureValue(15)), true, Optional.of(metered(6, time(6))), true)
                .through(ISO_100, Optional.of(F8), Optional.of(time(6)));
        assertEquals(3, outside.totalStops().orElseThrow(), 1e-9);
    }

    @Test
    void moreFlashNeverLowersTheExposureAndTwoLightsAreNeverLessThanOne() {
        Random random = new Random(17);
        for (int i = 0; i < 10_000; i++) {
            double ev = random.nextDouble() * 20 - 2;
            ExposureTime now = time(random.nextInt(14) - 4);
            double av = random.nextDouble() * 10;
            double more = av + random.nextDouble() * 4;
            ExposureTime taken = random.nextBoolean() ? now : time(random.nextInt(14) - 4);
            boolean isGuided = random.nextBoolean();
            LightParts weak = at(ev, isGuided ? guided(av) : metered(av, taken), now);
            LightParts strong = at(ev, isGuided ? guided(more) : metered(more, taken), now);
            String scene = "EV " + ev + ", " + now + ", flash " + av + " and " + more + ", guided " + isGuided;
            for (LightParts one : new LightParts[] {weak, strong}) {
                if (one.totalStops().isPresent()) {
                    double total = one.totalStops().getAsDouble() + 1e-9;
                    assertTrue(total >= one.ambientStops().orElse(Double.NEGATIVE_INFINITY), scene);
                    assertTrue(total >= one.flashStops().orElse(Double.NEGATIVE_INFINITY), scene);
                }
            }
            if (weak.totalStops().isPresent() && strong.totalStops().isPresent()) {
                assertTrue(
                        strong.totalStops().getAsDouble() >= weak.totalStops().getAsDouble() - 1e-9, scene);
            }
        }
    }
}
