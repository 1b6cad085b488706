package takeup.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.ReferenceTable;

/** From where to where it is sharp; the table says how close to be: 1.5 %, 3 % for the far limit. */
class DepthOfFieldTest {
    static Stream<ReferenceTable.Row> dof_cases() {
        return ReferenceTable.rows("dof_cases");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("dof_cases")
    void nearFarAndHyperfocalAreThoseOfTheTable(ReferenceTable.Row row) {
        double print = row.number("f_label");
        Aperture aperture = row.text("source").contains("nominal")
                ? Aperture.literal(print)
                : Scale.FULL.aperture(print).orElseThrow();
        double distance = row.has("distance_mm") ? row.number("distance_mm") / 1000 : 1;
        DepthOfField depth = DepthOfField.of(row.number("focal_mm"), aperture, row.number("coc_mm"), distance);
        assertClose(row.number("hyperfocal_mm"), depth.hyperfocalM() * 1000, 0.015);
        if (row.has("near_mm")) {
            assertClose(row.number("near_mm"), depth.nearM() * 1000, 0.015);
            assertClose(row.number("far_mm"), depth.farM().orElseThrow() * 1000, 0.03);
        }
    }

    /**
     * Focused at H everything from H / 2 to infinity is sharp (the definition of H); a millimetre nearer the far limit
     * is finite.
     */
    @Test
    void atTheHyperfocalDistanceTheFarLimitIsInfinite() {
        Aperture aperture = Scale.FULL.aperture(8).orElseThrow();
        double hyperfocal = DepthOfField.of(50, aperture, 0.03, 1).hyperfocalM();
        DepthOfField there = DepthOfField.of(50, aperture, 0.03, hyperfocal);
        assertEquals(OptionalDouble.empty(), there.farM());
        assertEquals(hyperfocal / 2, there.nearM(), 1e-6);
        assertTrue(
                DepthOfField.of(50, aperture, 0.03, hyperfocal - 0.001).farM().isPresent());
    }

    private static void assertClose(double expected, double actual, double share) {
        assertEquals(expected, actual, share * expected);
    }
}
