package takeup.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What planted answers to a rating test come to. */
class RatingTestTest {
    private static final List<Double> BRACKET = List.of(-1.0, -0.5, 0.0, 0.5, 1.0, 2.0);

    /** Half the way to the cards on both sides, since no nearer one was there to choose. */
    @ParameterizedTest(name = "best at {0}: {0} ({1} to {2})")
    @CsvSource({"1, 0.75, 1.5", "0.5, 0.25, 0.75", "0, -0.25, 0.25"})
    void oneAnswerIsAsSureAsTheBracketIsFine(double best, double low, double high) {
        RatingTest test = RatingTest.of(List.of(answer(best))).orElseThrow();
        assertEquals(best, test.stops().estimate(), 1e-9);
        assertEquals(low, test.stops().low(), 1e-9);
        assertEquals(high, test.stops().high(), 1e-9);
        assertTrue(test.isSure());
    }

    @Test
    void twoRollsThatAgreeAreNoLessSureThanOne() {
        RatingTest test = RatingTest.of(List.of(answer(1), answer(1))).orElseThrow();
        assertEquals(1, test.stops().estimate(), 1e-9);
        assertTrue(test.isSure());
    }

    /**
     * Mean 0.5, s = 1/√2 of 0 and 1; t(0.975, 1) = 12.706 (NIST/SEMATECH e-Handbook, 1.3.6.7.2): 12.706 / √2 / √2 =
     * 6.353.
     */
    @Test
    void answersThatContradictEachOtherGiveAWideRangeAndNoRating() {
        RatingTest test = RatingTest.of(List.of(answer(0), answer(1))).orElseThrow();
        assertEquals(0.5, test.stops().estimate(), 1e-9);
        assertTrue(
                test.stops().high() - test.stops().low() > 2 * 6.353,
                test.stops().toString());
        assertFalse(test.isSure());
        assertFalse(RatingTest.of(List.of(new RatingTest.Answer(BRACKET, List.of(-0.5, 0.0, 1.0))))
                .orElseThrow()
                .isSure());
    }

    /** Two cards that are as good: halfway between them, and as far as half the way to the cards beside both. */
    @Test
    void aTieOnOneRollIsOneAnswer() {
        RatingTest test = RatingTest.of(List.of(new RatingTest.Answer(BRACKET, List.of(0.5, 1.0))))
                .orElseThrow();
        assertEquals(List.of(0.75), test.bestStops());
        assertEquals(0.25, test.stops().low(), 1e-9);
        assertEquals(1.5, test.stops().high(), 1e-9);
        assertTrue(test.isSure());
        assertEquals(
                2,
                RatingTest.of(List.of(answer(1), new RatingTest.Answer(BRACKET, List.of(0.5, 1.0))))
                        .orElseThrow()
                        .bestStops()
                        .size());
        assertTrue(RatingTest.of(List.of(new RatingTest.Answer(BRACKET, List.of(1.0, 2.0))))
                .orElseThrow()
                .isOpenEnded());
    }

    @Test
    void aBestFrameAtTheEndOfItsBracketIsOpenToThatSide() {
        assertTrue(RatingTest.of(List.of(answer(2))).orElseThrow().isOpenEnded());
        assertFalse(RatingTest.of(List.of(answer(2))).orElseThrow().isSure());
        assertFalse(RatingTest.of(List.of(answer(1))).orElseThrow().isOpenEnded());
    }

    @Test
    void withoutAnAnswerThereIsNone() {
        assertEquals(Optional.empty(), RatingTest.of(List.of(new RatingTest.Answer(BRACKET, List.of()))));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "-1, 1 STOP UNDER",
        "-0.5, 1/2 STOP UNDER",
        "0, BOX SPEED",
        "0.5, 1/2 STOP OVER",
        "1, 1 STOP OVER",
        "2, 2 STOPS OVER"
    })
    void aCardHasWordsAndNoSign(double stops, String words) {
        assertEquals(words, RatingTest.card(stops));
    }

    private static RatingTest.Answer answer(double best) {
        return new RatingTest.Answer(BRACKET, List.of(best));
    }
}
