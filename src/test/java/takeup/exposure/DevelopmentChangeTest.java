package takeup.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The change of development that goes with long exposures. */
class DevelopmentChangeTest {
    private static final Reciprocity TIMES =
            new Reciprocity.Opening(List.of(new Reciprocity.Point(0.5, 0), new Reciprocity.Point(1, 1)));
    /** Black-and-white in general: digitaltruth.com, Reciprocity. */
    private static final DevelopmentChange FILM = of(1, -10, 10, -20, 100, -30);

    @ParameterizedTest(name = "metered {0} s: {1} %")
    @CsvSource({"0.995,-10", "1,-10", "10,-20", "100,-30", "1000,-30", "3.16227766,-15", "31.6227766,-25"})
    void thePublishedPercentAreThoseOfTheirTimes(double metered, double percent) {
        assertEquals(percent, FILM.developmentPercent(metered).orElseThrow(), 1e-6);
    }

    @ParameterizedTest(name = "metered {0} s")
    @CsvSource({"0.99", "0.5", "0.001"})
    void belowTheFirstPointNothingIsChanged(double metered) {
        assertEquals(OptionalDouble.empty(), FILM.developmentPercent(metered));
        assertEquals(OptionalDouble.empty(), TIMES.developmentPercent(10));
    }

    @ParameterizedTest(name = "{0} s")
    @CsvSource({"0.25", "0.9", "3", "40"})
    void theTimesStayThoseOfTheFilm(double seconds) {
        assertEquals(TIMES.corrected(seconds), FILM.corrected(seconds));
        assertEquals(TIMES.worth(seconds), FILM.worth(seconds));
        assertEquals(TIMES.beyond(seconds), FILM.beyond(seconds));
        assertEquals(TIMES.openStops(seconds), FILM.openStops(seconds));
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"-10,develop 10 % less", "5,develop 5 % more", "-14.8,develop 15 % less"})
    void aChangeIsSaidInWholePercent(double percent, String words) {
        assertEquals(words, DevelopmentChange.words(percent));
    }

    @Test
    void whatCannotBePublishedIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> of());
        assertThrows(IllegalArgumentException.class, () -> of(1, -10, 1, -20));
        assertThrows(IllegalArgumentException.class, () -> of(0, -10));
        assertThrows(IllegalArgumentException.class, () -> of(1, -90.5));
        assertThrows(IllegalArgumentException.class, () -> of(1, 100.5));
        assertThrows(IllegalArgumentException.class, () -> of(1_000_001, -10));
        assertThrows(IllegalArgumentException.class, () -> new DevelopmentChange(FILM, FILM.points()));
    }

    private static DevelopmentChange of(double... pairs) {
        DevelopmentChange.Point[] points = new DevelopmentChange.Point[pairs.length / 2];
        for (int i = 0; i < points.length; i++) {
            points[i] = new DevelopmentChange.Point(pairs[2 * i], pairs[2 * i + 1]);
        }
        return new DevelopmentChange(TIMES, List.of(points));
    }
}
