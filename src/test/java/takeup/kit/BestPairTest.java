package takeup.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.ExposureValue;
import takeup.exposure.FlashLight;
import takeup.exposure.FrameLight;
import takeup.exposure.LightPath;
import takeup.exposure.LongExposure;
import takeup.exposure.Stops;

/** What holds of the best pair in any scene: 10,000 of them, the same at each run. */
class BestPairTest {
    private static final List<String> CAMERAS = List.of("35", "66", "69", "645", "half", "pan");
    private static final List<String> STOCKS = List.of("cn400", "cr50", "cr100", "bw100", "bw400", "bw3200");

    private final Random random = new Random(17);
    private int keptTimes;
    private int keptApertures;

    @Test
    void noOtherPairThatCouldBeSetIsBetterByMoreThanASixthOfAStop() {
        for (int i = 0; i < 10_000; i++) {
            Suggestions.Request asked = scene(Optional.empty());
            Suggestions advice = Suggestions.of(asked);
            OptionalDouble least = advice.suggestions().stream()
                    .filter(it -> isUsable(it, asked) && isSteady(it, advice, asked))
                    .mapToDouble(it -> Math.abs(it.errorStops().orElseThrow()))
                    .min();
            if (least.isPresent()) {
                double best =
                        Math.abs(advice.bestOne().orElseThrow().errorStops().orElseThrow());
                assertTrue(best - least.getAsDouble() <= 1 / 6.0 + Stops.TOLERANCE, () -> asked + "\n" + advice);
            }
        }
    }

    @Test
    void whatIsHeldIsKeptWheneverAPairThatCanBeSetKeepsIt() {
        for (int i = 0; i < 10_000; i++) {
            Suggestions.Request free = scene(Optional.empty());
            Hold hold = random.nextBoolean()
                    ? Hold.of(any(free.optics().lens().orElseThrow().ring().marks()))
                    : Hold.of(any(free.camera().shutter().orElseThrow().marks()));
            Suggestions.Request asked = with(free, hold);
            Suggestions advice = Suggestions.of(asked);
            if (hold.time().isPresent() && !asked.support().flash()) {
                // A row is made for a held time, however far its exposure is off, unless no time is long enough.
                assertEquals(
                        hasTimes(asked),
                        advice.suggestions().stream().anyMatch(hold::isKeptBy),
                        () -> asked + "\n" + advice);
            }
            boolean canBeKept = advice.suggestions().stream().anyMatch(it -> hold.isKeptBy(it) && isUsable(it, asked));
            if (canBeKept) {
                keptTimes += hold.time().isPresent() ? 1 : 0;
                keptApertures += hold.aperture().isPresent() ? 1 : 0;
                assertTrue(hold.isKeptBy(advice.bestOne().orElseThrow()), () -> asked + "\n" + advice);
            }
        }
        assertTrue(keptTimes > 2000, () -> keptTimes + " scenes kept a time");
        assertTrue(keptApertures > 2000, () -> keptApertures + " scenes kept an aperture");
    }

    /** Whether the light asks for a time that the film's figures give, at any aperture. */
    private static boolean hasTimes(Suggestions.Request asked) {
        return asked.optics().lens().orElseThrow().ring().marks().stream()
                .map(it -> asked.path().metered(asked.light().ambient().orElseThrow(), it))
                .anyMatch(it -> new LongExposure(it, asked.path().reciprocity())
                        .seconds()
                        .isPresent());
    }

    @Test
    void withFlashNoPairIsFasterThanSyncUnlessItIsHeld() {
        for (int i = 0; i < 10_000; i++) {
            Suggestions.Request asked = scene(Optional.empty());
            long faster = Suggestions.of(asked).suggestions().stream()
                    .filter(it -> asked.support().flash() && it.has(Warning.Code.SYNC_SPEED))
                    .count();
            assertEquals(0, faster, asked::toString);
        }
    }

    /** What the body can do: the time within half a stop of its dial (with flash, of its sync), or bulb from 1 s on. */
    private static boolean isUsable(Suggestion row, Suggestions.Request asked) {
        if (row.time().isEmpty()) {
            return false;
        }
        if (asked.wishes().hold().flatMap(Hold::time).equals(row.time())) {
            return true;
        }
        if (asked.light().flash().isPresent() && Math.abs(row.errorStops().orElseThrow()) <= 0.5 + Stops.TOLERANCE) {
            return true;
        }
        if (row.correctedSeconds().isEmpty()) {
            return false;
        }
        Shutter shutter = asked.camera().shutter().orElseThrow();
        ExposureTime fastest = asked.support().flash()
                ? asked.camera()
                        .syncTime()
                        .filter(it -> it.stops() > shutter.fastest().stops())
                        .orElse(shutter.fastest())
                : shutter.fastest();
        double wanted = Stops.of(row.correctedSeconds().orElseThrow());
        return wanted >= fastest.stops() - 0.5 - Stops.TOLERANCE
                && (wanted <= shutter.longest().stops() + 0.5 + Stops.TOLERANCE || shutter.bulb() && wanted >= 0);
    }

    /**
     * By hand a second and longer, beside a flash what the hand cannot hold, counts only where no shorter time is
     * within a third of a stop.
     */
    private static boolean isSteady(Suggestion row, Suggestions advice, Suggestions.Request asked) {
        return asked.support().tripod()
                || !isLong(row, asked)
                || advice.suggestions().stream()
                        .filter(it -> isUsable(it, asked) && !isLong(it, asked))
                        .noneMatch(it -> Math.abs(it.errorStops().orElseThrow()) <= 1 / 3.0 + Stops.TOLERANCE);
    }

    /** Past a second no row is said to be long for the hand, and it is. */
    private static boolean isLong(Suggestion row, Suggestions.Request asked) {
        return asked.light().flash().isPresent() && row.has(Warning.Code.HAND_HELD)
                || row.time().orElseThrow().exactSeconds() >= 1;
    }

    private Suggestions.Request scene(Optional<Hold> hold) {
        Camera camera = Shipped.camera(any(CAMERAS));
        Lens lens = any(camera.lenses());
        Stock stock = Shipped.stock(any(STOCKS));
        Optional<Suggestions.PairInHand> inHand = random.nextBoolean()
                ? Optional.empty()
                : Optional.of(new Suggestions.PairInHand(
                        any(lens.ring().marks()),
                        random.nextBoolean()
                                ? Optional.empty()
                                : Optional.of(any(camera.shutter().orElseThrow().marks()))));
        boolean flash = random.nextInt(3) == 0;
        Optional<FlashLight> known = flash && random.nextBoolean()
                ? Optional.of(new FlashLight(
                        Aperture.literal(1 + random.nextDouble() * 30),
                        stock.usualIndex(),
                        Optional.empty(),
                        "flash",
                        OffsetDateTime.parse("2026-09-12T15:00+02:00")))
                : Optional.empty();
        return new Suggestions.Request(
                camera,
                new Suggestions.LensInUse(
                        Optional.of(lens), OptionalDouble.of(lens.shortestMm()), OptionalDouble.empty()),
                new Suggestions.FilmInUse(Optional.of(stock), random.nextInt(3) == 0 ? 1 : 0),
                new LightPath(stock.usualIndex(), random.nextInt(4), 0, random.nextInt(3) - 1, stock.reciprocity()),
                new FrameLight(Optional.of(new ExposureValue(random.nextDouble() * 20 - 3)), flash, known, false),
                new Suggestions.Wishes(hold, inHand, Optional.empty()),
                new Suggestions.Support(flash, random.nextBoolean()));
    }

    private static Suggestions.Request with(Suggestions.Request free, Hold hold) {
        return new Suggestions.Request(
                free.camera(),
                free.optics(),
                free.film(),
                free.path(),
                free.light(),
                new Suggestions.Wishes(
                        Optional.of(hold), free.wishes().inHand(), free.wishes().shown()),
                free.support());
    }

    private <T> T any(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }
}
