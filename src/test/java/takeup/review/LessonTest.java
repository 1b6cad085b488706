package takeup.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Simulated archives with a planted cause: it is named, and none is named where none was planted. */
@Tag("slow")
class LessonTest {
    /** {@code -Darchives=100} simulates more of them. */
    private static final int ARCHIVES = Integer.getInteger("archives", 8);

    private static final double USUAL_SCATTER = 0.35;

    /** A frame of the archive before anybody judged it. */
    private record Taken(String stock, double index, String body, String method, String light, double over) {}

    @Test
    void namesNothingWhereNothingWasPlanted() {
        for (int seed = 0; seed < ARCHIVES; seed++) {
            Lesson lesson = Lesson.of(archive(seed, 300, it -> 0, it -> USUAL_SCATTER));
            assertTrue(lesson.isEnough());
            assertEquals(List.of(), lesson.findings(), "seed " + seed);
            assertTrue(lesson.scatter().low() < Lesson.WILD, lesson.toString());
        }
    }

    @Test
    void aRatingThatIsOffByAStopIsNamedWithTheSpeedToRateAt() {
        int inside = 0;
        for (int seed = 0; seed < ARCHIVES; seed++) {
            Lesson lesson = Lesson.of(archive(seed, 300, it -> it.stock.equals("bw400") ? -1 : 0, it -> USUAL_SCATTER));
            assertEquals(1, lesson.findings().size(), seed + ": " + lesson);
            Finding found = lesson.findings().get(0);
            assertEquals("bw400 rated 400", found.name(), seed + ": " + lesson);
            assertEquals(Finding.Kind.RATING, found.kind());
            assertEquals(-1, found.stops().estimate(), 0.5, seed + ": " + found);
            // A stop slower than 400 is 200; a third either way is 160 or 250.
            assertTrue(List.of(160.0, 200.0, 250.0).contains(found.newIndex().orElseThrow()), found.toString());
            inside += found.stops().low() <= -1 && found.stops().high() >= -1 ? 1 : 0;
        }
        // Of 8 intervals of 95 % at least 6 hold the truth with a probability of 0.994 (binomial).
        assertTrue(inside >= 0.75 * ARCHIVES, "the truth lies in " + inside + " of " + ARCHIVES + " intervals");
    }

    @Test
    void aSlowShutterIsNamedByItsBody() {
        for (int seed = 0; seed < ARCHIVES; seed++) {
            Lesson lesson = Lesson.of(archive(seed, 300, it -> it.body.equals("35") ? 1 : 0, it -> USUAL_SCATTER));
            assertEquals(Finding.Kind.EQUIPMENT, lesson.findings().get(0).kind(), seed + ": " + lesson);
            assertTrue(lesson.findings().get(0).name().startsWith("35"), lesson.toString());
            assertEquals(1, lesson.findings().size(), seed + ": " + lesson);
        }
    }

    @Test
    void scatteredMeteringIsNamedAndNoRatingIsBlamed() {
        for (int seed = 0; seed < ARCHIVES; seed++) {
            Lesson lesson =
                    Lesson.of(archive(seed, 300, it -> 0, it -> it.method.equals("spot") ? 1.8 : USUAL_SCATTER));
            assertEquals(
                    List.of(Finding.Kind.SCATTER),
                    lesson.findings().stream().map(Finding::kind).toList(),
                    seed + ": " + lesson);
            assertEquals("spot", lesson.findings().get(0).name());
        }
    }

    @Test
    void aStockThatOnlyEverWasInOneBodySaysThatItMayBeTheBody() {
        VerdictCounts tally = new VerdictCounts();
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            boolean first = random.nextBoolean();
            judge(
                    tally,
                    random,
                    new Taken(
                            first ? "bw400" : "cn400",
                            400,
                            first ? "35" : "645",
                            "incident",
                            "shade",
                            0.3 + 0.7 * random.nextGaussian()),
                    first ? -1.2 : 0,
                    USUAL_SCATTER);
        }
        Lesson lesson = Lesson.of(tally);
        assertEquals("bw400 rated 400", lesson.findings().get(0).name());
        assertTrue(lesson.findings().get(0).otherCauses().contains("body 35"), lesson.toString());
    }

    @Test
    void aStockThatBearsMoreThanItsFileSaysBlamesNobodysMetering() {
        VerdictCounts tally = new VerdictCounts();
        for (int i = 0; i < 60; i++) {
            tally.add(
                    new JudgedFrame(
                            new JudgedFrame.Rating("bw400", 400),
                            new JudgedFrame.Gear("645", "645 80"),
                            "incident",
                            "shade",
                            "",
                            i % 12 * 5 - 20,
                            new JudgedFrame.Latitude(1, 2),
                            Density.GOOD),
                    1);
        }
        assertEquals(List.of(), Lesson.of(tally).findings());
    }

    @Test
    void saysThatThereAreNotEnoughFrames() {
        Lesson lesson = Lesson.of(archive(1, Lesson.FEWEST - 1, it -> -3, it -> 0.1));
        assertFalse(lesson.isEnough());
        assertEquals(List.of(), lesson.findings());
    }

    private static VerdictCounts archive(
            long seed, int frames, ToDoubleFunction<Taken> planted, Function<Taken, Double> scatter) {
        Random random = new Random(seed * 0x9E3779B97F4A7C15L);
        VerdictCounts tally = new VerdictCounts();
        for (int i = 0; i < frames; i++) {
            Taken taken = new Taken(
                    random.nextBoolean() ? "bw400" : "cn400",
                    400,
                    random.nextInt(3) == 0 ? "35" : "645",
                    random.nextInt(3) == 0 ? "spot" : "incident",
                    random.nextInt(3) == 0 ? "indoors" : "shade",
                    0.3 + 0.8 * random.nextGaussian());
            judge(tally, random, taken, planted.applyAsDouble(taken), scatter.apply(taken));
        }
        return tally;
    }

    /**
     * The verdict as the limits of the stock have it: thin a stop under, dense two stops over, with the light that the
     * film really got.
     */
    private static void judge(VerdictCounts tally, Random random, Taken taken, double offset, double scatter) {
        double real = taken.over + offset + scatter * random.nextGaussian();
        Density verdict = real < -1 ? Density.THIN : real > 2 ? Density.DENSE : Density.GOOD;
        tally.add(
                new JudgedFrame(
                        new JudgedFrame.Rating(taken.stock, taken.index),
                        new JudgedFrame.Gear(taken.body, taken.body + " 80"),
                        taken.method,
                        taken.light,
                        "",
                        (int) Math.round(10 * taken.over),
                        new JudgedFrame.Latitude(1, 2),
                        verdict),
                1);
    }
}
