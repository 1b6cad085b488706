package takeup.scans;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which numbers in the names of files may be the numbers of frames. */
class NameNumbersTest {
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            crew_01.jpg crew_02.jpg crew_04.jpg,       1 2 4
            000871_1.tif 000871_2.tif 000871_3.tif,    1 2 3
            r7-3-001.jpg r7-5-002.jpg r7-6-003.jpg,    3 5 6
            00.jpg 0.jpg 1.jpg 2.jpg,                  -1 0 1 2
            roll2/01.jp2 roll2/02.jp2,                 1 2
            """)
    void theNumbersThatRiseFromScanToScanMayBeFrames(String names, String values) {
        assertEquals(
                Arrays.stream(values.split(" ")).map(Integer::parseInt).toList(),
                numbers(names).orElseThrow().values());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "bow.jpg stroke.jpg cox.jpg",
        "crew_1.jpg crew_1b.jpg",
        "crew_2.jpg crew_1.jpg",
        "1.jpg",
        "20260912_1.jpg 20260912.jpg",
        "DSC_8712.jpg DSC_8713.jpg"
    })
    void namesWithoutSuchNumbersSayNothing(String names) {
        assertEquals(Optional.empty(), numbers(names));
    }

    @Test
    void aCountFromOneThatLeavesNothingOutSaysNoMoreThanTheOrder() {
        assertTrue(numbers("a1 a2 a3").orElseThrow().isPlain());
        assertFalse(numbers("a2 a3 a4").orElseThrow().isPlain());
        assertFalse(numbers("a1 a2 a4").orElseThrow().isPlain());
    }

    /** A lab that numbers what it scans has no reason to leave numbers out: the gap speaks for frames. */
    @Test
    void aGapMakesItLikelyThatTheNumbersMeanFrames() {
        NameNumbers gap = numbers("a1 a2 a5 a6").orElseThrow();
        assertTrue(gap.hasGaps());
        assertTrue(gap.asFrameNumbers() > gap.asOtherNumbers());
        NameNumbers fromTwo = numbers("a2 a3 a4").orElseThrow();
        assertFalse(fromTwo.hasGaps());
    }

    private static Optional<NameNumbers> numbers(String names) {
        return NameNumbers.of(List.of(names.split(" ")));
    }
}
