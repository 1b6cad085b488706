package takeup.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import takeup.handoff.Rolls;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollEvent;

/** Verdicts and accepted scans of a roll: crew portraits at 15:11, 15:12 and 15:13. */
class ReviewTest {
    private static final FrameKey BOW = key(1, "15:11:00");
    private static final FrameKey COX = key(2, "15:12:00");
    private static final FrameKey STROKE = key(3, "15:13:00");

    @Test
    void theLaterVerdictOnAFrameCounts() {
        check(portraits(), List.of("", "dense", ""), judged(COX, Density.THIN), judged(COX, Density.DENSE));
    }

    @Test
    void aVerdictCanBeTakenBack() {
        check(portraits(), List.of("", "", "good"), judged(COX, Density.THIN), judged(STROKE, Density.GOOD), back(COX));
    }

    @Test
    void aFrameKeepsItsVerdictWhenItIsRenumbered() {
        check(withoutTheFirst(), List.of("", "thin"), judged(STROKE, Density.THIN));
    }

    @Test
    void theLaterVerdictCountsAlsoWhereTheFrameWasRenumberedInBetween() {
        FrameKey renumbered = key(2, "15:13:00");
        for (Density first : Density.values()) {
            for (Density later : Density.values()) {
                check(
                        withoutTheFirst(),
                        List.of("", later.toString()),
                        judged(STROKE, first),
                        judged(renumbered, later));
            }
        }
        check(withoutTheFirst(), List.of("", ""), judged(STROKE, Density.THIN), back(renumbered));
    }

    @Test
    void ofABurstWithOneTimeTheNumberTellsWhichFrameIsMeant() {
        Roll burst = frames("15:11:00", "15:11:00", "15:11:00");
        check(burst, List.of("", "thin", ""), judged(key(2, "15:11:00"), Density.THIN));
        check(burst, List.of("", "", ""), judged(key(4, "15:11:00"), Density.THIN));
    }

    @Test
    void aFrameThatIsGoneTakesItsVerdictAlongAndIsNamedByItsNumber() {
        Review review = Review.of(
                List.of(judged(BOW, Density.THIN), accepted(new ReviewEvent.PlacedScan("01.jpg", List.of(BOW)))));
        assertEquals(List.of("", ""), verdicts(review, withoutTheFirst()));
        assertEquals(List.of(1), review.missingFrames(withoutTheFirst().frames()));
        assertEquals(List.of(), review.missingFrames(portraits().frames()));
    }

    @Test
    void whatWasAcceptedLastTellsWhichScanShowsWhichFrame() {
        Review review = Review.of(List.of(
                accepted(new ReviewEvent.PlacedScan("a.jpg", List.of(STROKE))),
                judged(COX, Density.GOOD),
                accepted(
                        new ReviewEvent.PlacedScan("1.jpg", List.of(BOW, COX)),
                        new ReviewEvent.PlacedScan("2.jpg", List.of()))));
        assertEquals(List.of(Optional.of("1.jpg"), Optional.of("1.jpg"), Optional.empty()), review.scans(portraits()));
        assertEquals(List.of("", "good", ""), verdicts(review, portraits()));
    }

    @Test
    void whatALaterVersionWroteChangesNothing() {
        assertEquals(Review.NONE, Review.of(List.of(new ReviewEvent.Unknown("framed", "{}"))));
    }

    private static Roll portraits() {
        return frames("15:11:00", "15:12:00", "15:13:00");
    }

    private static Roll frames(String... clocks) {
        Rolls rolls = Rolls.loaded();
        for (int i = 0; i < clocks.length; i++) {
            rolls.frame(
                    i + 1,
                    Frame.Kind.EXPOSED,
                    Rolls.exposure(clocks[i], Rolls.set(4, 1 / 125.0), Rolls.incident(11, clocks[i])));
        }
        return rolls.roll();
    }

    /** The same roll once its first frame turned out to be on another one: what was 2 and 3 is 1 and 2. */
    private static Roll withoutTheFirst() {
        Rolls rolls = Rolls.loaded();
        for (Frame frame : portraits().frames()) {
            rolls.frame(frame.number(), frame.kind(), frame.exposure());
        }
        return rolls.then("15:40:00", new RollEvent.Dropped(1, 1, Optional.empty()))
                .roll();
    }

    private static FrameKey key(int number, String clock) {
        return new FrameKey(number, Optional.of(Rolls.at(clock)));
    }

    private static ReviewEvent judged(FrameKey frame, Density verdict) {
        return new ReviewEvent.Judged(frame, Optional.of(verdict));
    }

    private static ReviewEvent back(FrameKey frame) {
        return new ReviewEvent.Judged(frame, Optional.empty());
    }

    private static ReviewEvent accepted(ReviewEvent.PlacedScan... scans) {
        return new ReviewEvent.Accepted("/scans/4412", false, 1, List.of(scans));
    }

    private static List<String> verdicts(Review review, Roll roll) {
        return review.verdicts(roll).stream()
                .map(it -> it.map(Density::toString).orElse(""))
                .toList();
    }

    private static void check(Roll roll, List<String> verdicts, ReviewEvent... events) {
        assertEquals(verdicts, verdicts(Review.of(List.of(events)), roll));
    }
}
