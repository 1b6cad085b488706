package takeup.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.ReferenceTable;
import takeup.exposure.Scale;
import takeup.exposure.SharpRange;

/** The aperture that makes it sharp from near to far: the formulas of depth of field, solved for it. */
class SharpSettingTest {
    static Stream<ReferenceTable.Row> depths() {
        return ReferenceTable.rows("dof_cases")
                .filter(it -> !it.text("near_mm").isEmpty() && it.text("source").startsWith("computed"));
    }

    /** Table dof_cases the other way round: near and far give back the distance and the f-number (its exact scale). */
    @ParameterizedTest(name = "{0}")
    @MethodSource("depths")
    void nearAndFarGiveBackApertureAndFocus(ReferenceTable.Row row) {
        SharpRange range = new SharpRange(row.number("near_mm") / 1000, OptionalDouble.of(row.number("far_mm") / 1000));
        assertEquals(row.number("distance_mm") / 1000, range.focusM(), 1e-4 * range.focusM());
        double exact = Scale.anyMark(row.number("f_label")).orElseThrow().exactFNumber();
        assertEquals(exact, range.fNumber(row.number("focal_mm"), row.number("coc_mm")), 1e-3 * exact);
    }

    /**
     * 50 mm on 24x36, c = 43.267 / 1500 = 0.028844 mm, 2 m to infinity: H = 4 m, N = 2500 / (0.028844 x 3950) = 21.94.
     * On the ring of the 35 mm reflex, which ends at f/16, nothing is enough; f/22 (22.63) of a third-stop ring is.
     */
    @Test
    void theWidestMarkThatIsEnoughIsTaken() {
        SharpRange range = new SharpRange(2, OptionalDouble.empty());
        assertEquals(4, range.focusM(), 1e-9);
        assertEquals(21.94, range.fNumber(50, FrameSize.SMALL.circleOfConfusionMm()), 0.01);
        SharpSetting ends =
                SharpSetting.of(range, Ring.between(1.8, 16, Scale.HALF), 50, FrameSize.SMALL.circleOfConfusionMm());
        assertFalse(ends.isEnough());
        assertEquals("f/16", ends.aperture().toString());
        assertTrue(ends.depth().nearM() > 2);
        SharpSetting enough =
                SharpSetting.of(range, Ring.between(1.8, 32, Scale.THIRD), 50, FrameSize.SMALL.circleOfConfusionMm());
        assertTrue(enough.isEnough());
        assertEquals("f/22", enough.aperture().toString());
        assertTrue(enough.depth().nearM() <= 2);
        assertTrue(enough.depth().farM().isEmpty());
    }

    /** A circle of 0.05 mm: N = 2500 / (0.05 x 3950) = 12.66, and the first half-stop mark above is f/13 (13.45). */
    @Test
    void aLargerCircleAllowsAWiderAperture() {
        SharpSetting sharp =
                SharpSetting.of(new SharpRange(2, OptionalDouble.empty()), Ring.between(1.8, 16, Scale.HALF), 50, 0.05);
        assertEquals("f/13", sharp.aperture().toString());
        assertTrue(sharp.isEnough());
    }
}
