package takeup.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.ReferenceTable;

/** How strong a flash is; sources stand in the tables flash_cases and inverse_square. */
class GuideNumberTest {
    static Stream<ReferenceTable.Row> flash_cases() {
        return ReferenceTable.rows("flash_cases");
    }

    static Stream<ReferenceTable.Row> inverse_square() {
        return ReferenceTable.rows("inverse_square");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("flash_cases")
    void aGuideNumberGivesTheApertureAndTheDistanceOfTheTable(ReferenceTable.Row row) {
        boolean feet = row.text("unit").equals("ft");
        GuideNumber guide = feet ? GuideNumber.inFeet(row.number("gn100")) : new GuideNumber(row.number("gn100"));
        double metres = row.number("distance") * (feet ? GuideNumber.FOOT : 1);
        FilmSpeed speed = new FilmSpeed(row.number("iso"));
        assertEquals(row.number("f_number"), guide.fNumber(speed, row.number("power"), metres), 1e-5);
        assertEquals(metres, guide.distanceM(speed, row.number("power"), row.number("f_number")), 1e-5);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("inverse_square")
    void lightFallsOffWithTheSquareOfTheDistance(ReferenceTable.Row row) {
        assertEquals(row.number("stops"), GuideNumber.fallOff(row.number("distance_ratio")), 1e-5);
        assertEquals(row.number("light_ratio"), Stops.factor(GuideNumber.fallOff(row.number("distance_ratio"))), 1e-6);
    }

    /** gamestone.co.uk, "Multiple flashguns", example layout 1: three heads of guide number 20 at 4 m are f/8.66. */
    @Test
    void headsTogetherHaveTheRootOfTheSumOfTheirSquares() {
        GuideNumber head = new GuideNumber(20);
        assertEquals(8.66, GuideNumber.together(List.of(head, head, head)).fNumber(FilmSpeed.ISO_100, 1, 4), 0.005);
    }

    @ParameterizedTest(name = "guide number {0}")
    @ValueSource(doubles = {0, -1, 500.1, Double.NaN})
    void whatNoFlashHasIsRefused(double guide) {
        assertThrows(IllegalArgumentException.class, () -> new GuideNumber(guide));
    }

    @Test
    void theStrongestThatIsTakenIsFiveHundred() {
        assertEquals(500, new GuideNumber(500).fNumber(FilmSpeed.ISO_100, 1, 1), 1e-9);
    }
}
