package takeup.exposure;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What holds of ambient light and a flash in any scene: 10,000 of them, the same at each run. */
class AddedLightPropertiesTest {
    private static final int SCENES = 10_000;
    private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-09-12T15:00+02:00");

    private final Random random = new Random(1717);

    private final class Scene {
        final FilmSpeed index = new FilmSpeed(25 << random.nextInt(8));
        final LightPath path = new LightPath(
                index,
                random.nextInt(4),
                random.nextInt(3),
                random.nextInt(5) / 2.0 - 1,
                random.nextBoolean()
                        ? new Reciprocity.None(OptionalDouble.empty())
                        : new Reciprocity.Power(1 + random.nextDouble() / 2, 1));
        final ExposureValue room = new ExposureValue(random.nextDouble() * 20 - 3);
        final Optional<Aperture> aperture = Optional.of(Aperture.literal(1.4 + random.nextDouble() * 30));
        final Optional<ExposureTime> time =
                Optional.of(ExposureTime.literal(Math.pow(2, random.nextDouble() * 14 - 10)));
        final double guide = 5 + random.nextInt(60);
        final double metres = 0.5 + random.nextDouble() * 15;

        FlashLight flash(double power) {
            return new FlashLight(
                    Aperture.literal(new GuideNumber(guide).fNumber(index, power, metres)),
                    index,
                    Optional.empty(),
                    "flash",
                    NOW);
        }

        LightParts of(Optional<ExposureValue> ambient, Optional<FlashLight> flash) {
            return new FrameLight(ambient, flash.isPresent(), flash, false).through(path, aperture, time);
        }

        double total(Optional<ExposureValue> ambient, Optional<FlashLight> flash) {
            return of(ambient, flash).totalStops().orElseThrow();
        }
    }

    /** The more of light of the two is a bound from below; twice that light, one stop more, one from above. */
    @Test
    void aFrameWithTwoLightsIsNeverBelowEitherAloneNorAStopAboveTheStronger() {
        for (int i = 0; i < SCENES; i++) {
            Scene scene = new Scene();
            Optional<FlashLight> flash = Optional.of(scene.flash(1));
            double both = scene.total(Optional.of(scene.room), flash);
            double room = scene.total(Optional.of(scene.room), Optional.empty());
            double alone = scene.total(Optional.empty(), flash);
            assertTrue(both >= Math.max(room, alone) - 1e-9, () -> both + " of " + room + " and " + alone);
            assertTrue(both <= Math.max(room, alone) + 1 + 1e-9, () -> both + " of " + room + " and " + alone);
            LightParts parts = scene.of(Optional.of(scene.room), flash);
            assertTrue(parts.ambientStops().orElseThrow() == room
                    && parts.flashStops().orElseThrow() == alone);
        }
    }

    @Test
    void morePowerNeverLowersTheExposure() {
        for (int i = 0; i < SCENES; i++) {
            Scene scene = new Scene();
            double before = Double.NEGATIVE_INFINITY;
            for (int steps = 8; steps >= 0; steps--) {
                double now = scene.total(
                        Optional.of(scene.room).filter(it -> scene.guide > 9),
                        Optional.of(scene.flash(1.0 / (1 << steps))));
                double last = before;
                assertTrue(now >= last, () -> now + " after " + last);
                before = now;
            }
        }
    }

    /** A flash meter's reading is all light at its time: a longer time adds room light, and a shorter takes some. */
    @Test
    void behindAFlashMeterALongerTimeNeverLowersTheExposure() {
        int known = 0;
        for (int i = 0; i < SCENES; i++) {
            Scene scene = new Scene();
            FlashLight read = new FlashLight(
                    Aperture.literal(1.4 + random.nextDouble() * 30),
                    scene.index,
                    Optional.of(new FlashLight.Measured(scene.time, Optional.empty(), Optional.of(scene.room))),
                    "m flash",
                    NOW);
            FrameLight light = new FrameLight(Optional.of(scene.room), true, Optional.of(read), false);
            OptionalDouble at =
                    light.through(scene.path, scene.aperture, scene.time).totalStops();
            OptionalDouble longer = light.through(
                            scene.path,
                            scene.aperture,
                            Optional.of(ExposureTime.literal(scene.time.get().exactSeconds() * 4)))
                    .totalStops();
            if (at.isPresent() && longer.isPresent()) {
                known++;
                assertTrue(longer.getAsDouble() >= at.getAsDouble() - 1e-9, () -> at + " and longer " + longer);
            }
        }
        int counted = known;
        assertTrue(counted > 1000, () -> counted + " scenes were known");
    }
}
