package takeup.exposure;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** The limits that the Javadoc names: the last value that is taken, and the first that is refused. */
class LimitsTest {
    private static void taken(Executable... values) {
        for (Executable value : values) {
            assertDoesNotThrow(value);
        }
    }

    private static void refused(Executable... values) {
        for (Executable value : values) {
            assertThrows(IllegalArgumentException.class, value);
        }
    }

    @Test
    void anApertureIsAboveZeroAndItsTenthsAreOneDigit() {
        taken(() -> new Aperture(0.1, 0, -6), () -> new Aperture(8, 9, 6.9));
        refused(
                () -> new Aperture(0, 0, 0),
                () -> new Aperture(Double.POSITIVE_INFINITY, 0, 0),
                () -> new Aperture(8, 10, 7),
                () -> new Aperture(8, -1, 6));
    }

    @Test
    void aTimeIsAboveZeroBothAsPrintedAndExactly() {
        taken(() -> new ExposureTime(1e-6, 1e-6));
        refused(
                () -> new ExposureTime(0, 1),
                () -> new ExposureTime(1, 0),
                () -> new ExposureTime(Double.NaN, 1),
                () -> new ExposureTime(1, Double.POSITIVE_INFINITY));
    }

    @Test
    void aFilmSpeedRunsFromATenthToAMillion() {
        taken(() -> new FilmSpeed(0.1), () -> new FilmSpeed(1_000_000));
        refused(() -> new FilmSpeed(0.0999), () -> new FilmSpeed(1_000_001));
    }

    @Test
    void anExtensionIsAboveZeroAndEndsAtFiveMetresOrFiftyTimes() {
        taken(
                () -> new Extension(Extension.Kind.DRAW, 5000),
                () -> new Extension(Extension.Kind.MAGNIFICATION, 50),
                () -> new Extension(Extension.Kind.NONE, 0));
        refused(
                () -> new Extension(Extension.Kind.DRAW, 0),
                () -> new Extension(Extension.Kind.DRAW, 5001),
                () -> new Extension(Extension.Kind.MAGNIFICATION, 51),
                () -> new Extension(Extension.Kind.NONE, 1));
    }

    @Test
    void aGuideNumberEndsAtFiveHundred() {
        taken(() -> new GuideNumber(500));
        refused(() -> new GuideNumber(0), () -> new GuideNumber(500.1));
    }

    @Test
    void aPowerHasAnExponentFromOneToThreeAndAThreshold() {
        taken(() -> new Reciprocity.Power(1, 1), () -> new Reciprocity.Power(3, 0.001));
        refused(
                () -> new Reciprocity.Power(0.99, 1),
                () -> new Reciprocity.Power(3.01, 1),
                () -> new Reciprocity.Power(1.3, 0),
                () -> new Reciprocity.Power(1.3, Double.POSITIVE_INFINITY));
    }

    @Test
    void aPointIsATimeAboveZeroAndAValueNotBelowIt() {
        taken(() -> new Reciprocity.Point(1e6, 1e9), () -> new Reciprocity.Point(1e-6, 0));
        refused(
                () -> new Reciprocity.Point(0, 0),
                () -> new Reciprocity.Point(1e6 + 1, 0),
                () -> new Reciprocity.Point(1, -0.1),
                () -> new Reciprocity.Point(1, 1.1e9));
    }

    private static List<Reciprocity.Point> points(double... pairs) {
        List<Reciprocity.Point> points = new ArrayList<>();
        for (int i = 0; i < pairs.length; i += 2) {
            points.add(new Reciprocity.Point(pairs[i], pairs[i + 1]));
        }
        return points;
    }

    @Test
    void aTableRisesAndIsNeverShorterThanTheMeteredTime() {
        taken(() -> new Reciprocity.Table(points(1, 1, 2, 2)), () -> new Reciprocity.Table(points(1, 1, 2, 2, 4, 4)));
        refused(
                () -> new Reciprocity.Table(points(1, 1)),
                () -> new Reciprocity.Table(points(1, 2, 2, 4)),
                () -> new Reciprocity.Table(points(1, 1, 2, 1.9)),
                () -> new Reciprocity.Table(points(1, 1, 2, 5, 4, 5)),
                () -> new Reciprocity.Table(points(1, 1, 1, 2)),
                () -> new Reciprocity.Table(points(2, 2, 1, 3)));
    }

    @Test
    void stopsToOpenNeverFallAndStayUnderTwenty() {
        taken(() -> new Reciprocity.Opening(points(1, 0, 2, 0)), () -> new Reciprocity.Opening(points(1, 0, 2, 20)));
        refused(
                () -> new Reciprocity.Opening(points(1, 0.1, 2, 1)),
                () -> new Reciprocity.Opening(points(1, 0, 2, 1, 4, 0.9)),
                () -> new Reciprocity.Opening(points(1, 0, 2, 20.1)));
    }

    @Test
    void aChangeOfDevelopmentRunsFromMinusNinetyToAHundredPercent() {
        taken(() -> new DevelopmentChange.Point(1, -90), () -> new DevelopmentChange.Point(1e6, 100));
        refused(
                () -> new DevelopmentChange.Point(0, 0),
                () -> new DevelopmentChange.Point(1, -90.1),
                () -> new DevelopmentChange.Point(1, 100.1),
                () -> new DevelopmentChange.Point(1e6 + 1, 0));
    }

    /** The prints of the half stops alone: f/3.3 is 2^1.75, 1/45 is 2^-5.5 s (reference table of scales). */
    @Test
    void aPrintOfTheHalfStopsIsFoundWhereNoOtherScaleHasIt() {
        assertEquals(3.5, Scale.anyAperture(3.3).stops(), 1e-12);
        assertEquals(-5.5, Scale.anyTime(1 / 45.0).stops(), 1e-12);
        assertEquals(4 / 3.0, Scale.anyAperture(1.6).stops(), 1e-12);
        assertEquals(-22 / 3.0, Scale.anyTime(1 / 160.0).stops(), 1e-12);
        assertEquals(7.7, Scale.anyAperture(7.7).exactFNumber(), 1e-12);
        assertEquals(1 / 300.0, Scale.anyTime(1 / 300.0).exactSeconds(), 1e-12);
    }
}
