package takeup.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How good the answer to a long exposure is. The generic tables are those of digitaltruth.com, Reciprocity, and for
 * modern film of paladix.cz, "Schwarzschilduv efekt" (both in {@code reference/reciprocity_films.json}).
 */
class LongExposureTest {
    private static final Reciprocity BLACK_AND_WHITE = new Reciprocity.Table(points(0.5, 0.5, 1, 2, 10, 60, 100, 1200));
    private static final Reciprocity REVERSAL = new Reciprocity.Opening(points(0.5, 0, 1, 0.5, 10, 1.5, 100, 2.5));
    /** Foma 200: 1 s 3x, 10 s 9x, 100 s 18x (its maker's sheet). */
    private static final Reciprocity MAKERS = new Reciprocity.Table(points(0.5, 0.5, 1, 3, 10, 90, 100, 1800));

    private static List<Reciprocity.Point> points(double... numbers) {
        return IntStream.range(0, numbers.length / 2)
                .mapToObj(it -> new Reciprocity.Point(numbers[2 * it], numbers[2 * it + 1]))
                .toList();
    }

    /**
     * Black and white: 10 s is printed, 60 s. Past 100 s the last line goes on, 60 to 1200 s over a decade, a slope of
     * log10(20) = 1.30103: 200 s need 1200 x 2^1.301 = 2957 s = 49.3 min; 1000 s, ten times the last point, need 24000
     * s = 6.67 h. Past that there is no figure.
     */
    @ParameterizedTest(name = "metered {0} s: {1}")
    @CsvSource({"0.4, 0.4s", "10, 60s", "100, 20min", "200, about 49 min", "1000, about 6.7 h", "1001, about 6.7 h"})
    void pastTheLastPublishedPointThereAreTwoFiguresAtMost(double metered, String needs) {
        assertEquals(needs, new LongExposure(metered, BLACK_AND_WHITE).needs());
    }

    /** Stops differ by 0.01 where a limit is compared, so 1001 s is still ten times 100 s and 1010 s is past it. */
    @Test
    void pastTenTimesThatPointThereIsNone() {
        LongExposure far = new LongExposure(1010, BLACK_AND_WHITE);
        assertTrue(far.isUnknown() && far.isNeeded());
        assertEquals(OptionalDouble.empty(), far.seconds());
        assertEquals("", far.needs());
    }

    /** 126600 s are 35.17 h: about 35 h. 4075 s are 67.9 min: 68 min. 6400 s are 1.78 h: 1.8 h. */
    @ParameterizedTest(name = "{0} s is set as {1} s")
    @CsvSource({"85.4, 85", "455, 456", "1655, 1680", "4075, 4080", "6400, 6480", "126600, 126000", "912450, 900000"})
    void aGuessIsSetToTwoFigures(double seconds, double set) {
        assertEquals(set, LongExposure.guess(seconds), 1e-6);
    }

    /**
     * Reversal, 8 s metered: t = 8 x 2^n(t), n = 0.5 + log10 t (1 to 10 s), 1.5 + log10(t/10) after: t = (8 x 2^0.5)^(1
     * / (1 - log10 2)) = 11.314^1.4307 = 32.2 s. The mild table: n(12.4) = 0.5 + 0.1667 x log2(12.4/8) / log2(15/8) =
     * 0.616: 8 x 2^0.616 = 12.3 s.
     */
    @Test
    void genericReversalFilmShowsTheRangeInsteadOfAFigure() {
        LongExposure slide = new LongExposure(8, REVERSAL);
        assertEquals("12s to 32s", slide.needs());
        assertEquals("open 0.5 to 1.4 stops", slide.orOpen());
        assertTrue(slide.isGeneric());
    }

    @Test
    void onlyATableForAllFilmsOfAKindIsGenericAndOnlyWhereItTakesSomething() {
        assertTrue(new LongExposure(2, BLACK_AND_WHITE).isGeneric());
        assertTrue(new LongExposure(
                        2, new DevelopmentChange(BLACK_AND_WHITE, List.of(new DevelopmentChange.Point(1, -10))))
                .isGeneric());
        assertTrue(!new LongExposure(0.5, BLACK_AND_WHITE).isGeneric());
        assertTrue(!new LongExposure(2, MAKERS).isGeneric());
        assertEquals(OptionalDouble.empty(), new LongExposure(2, MAKERS).leastSeconds());
    }
}
