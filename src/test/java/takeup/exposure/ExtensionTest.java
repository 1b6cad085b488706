package takeup.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.ReferenceTable;

/** The lens drawn out for a close-up; sources stand in the table extension_cases. */
class ExtensionTest {
    static Stream<ReferenceTable.Row> extension_cases() {
        return ReferenceTable.rows("extension_cases").filter(it -> it.has("extension_mm") || it.has("magnification"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("extension_cases")
    void aDrawOrAMagnificationTakesWhatTheTableSays(ReferenceTable.Row row) {
        if (row.has("magnification")) {
            assertEquals(
                    row.number("stops"),
                    new Extension(Extension.Kind.MAGNIFICATION, row.number("magnification"))
                            .stops(OptionalDouble.empty())
                            .orElseThrow(),
                    1e-5);
            return;
        }
        double focal = row.number("focal_mm");
        double draw = row.number("extension_mm");
        assertEquals(
                row.number("stops"),
                new Extension(Extension.Kind.DRAW, draw)
                        .stops(OptionalDouble.of(focal))
                        .orElseThrow(),
                1e-5);
        if (draw > focal) {
            assertEquals(
                    row.number("stops"),
                    new Extension(Extension.Kind.TUBE, draw - focal)
                            .stops(OptionalDouble.of(focal))
                            .orElseThrow(),
                    1e-5);
        }
    }

    /**
     * Printed by others: US Army subcourse SS0511, sheet 76: 12 in drawn out to 27 in turns 7 s into 35.4 s; SS0512,
     * sheet 44: 18 in for 12 in makes 8 s 18 s.
     */
    @ParameterizedTest(name = "{0} mm drawn out to {1} mm makes {2} s {3} s")
    @CsvSource({"304.8,685.8,7,35.4", "300,450,8,18"})
    void aDrawMakesTheTimeAsLongAsOthersPrint(double focal, double draw, double before, double after) {
        double stops = new Extension(Extension.Kind.DRAW, draw)
                .stops(OptionalDouble.of(focal))
                .orElseThrow();
        assertEquals(after, before * Stops.factor(stops), 0.05);
    }

    @Test
    void aTubeNeedsToKnowTheLensAndAMagnificationDoesNot() {
        assertEquals(OptionalDouble.empty(), new Extension(Extension.Kind.TUBE, 30).stops(OptionalDouble.empty()));
        assertEquals(OptionalDouble.empty(), new Extension(Extension.Kind.DRAW, 110).stops(OptionalDouble.empty()));
        assertEquals(OptionalDouble.of(0), Extension.NONE.stops(OptionalDouble.empty()));
    }

    /** As they are typed (reference-card.md). */
    @Test
    void itPrintsAsItIsTyped() {
        assertEquals("ext 110mm", new Extension(Extension.Kind.DRAW, 110).toString());
        assertEquals("tube 30mm", new Extension(Extension.Kind.TUBE, 30).toString());
        assertEquals("mag 0.5", new Extension(Extension.Kind.MAGNIFICATION, 0.5).toString());
        assertEquals("ext off", Extension.NONE.toString());
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"DRAW,0", "TUBE,-30", "MAGNIFICATION,51", "DRAW,5001", "NONE,1", "TUBE,NaN"})
    void whatNoBellowsReachesIsRefused(Extension.Kind kind, double value) {
        assertThrows(IllegalArgumentException.class, () -> new Extension(kind, value));
    }
}
