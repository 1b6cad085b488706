package takeup.scans;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import takeup.roll.Frame;
import takeup.roll.RollId;

/** What the photographer puts right by hand: four scans beside five frames, the third frame missing. */
class ProposalTest {
    private static final Proposal PROPOSED = proposal(0.6, 0, 1, 3, 4);

    @Test
    void whatNoScanShowsIsMissingAndWhatNobodyLoggedIsExtra() {
        assertEquals(List.of(3), PROPOSED.missing().stream().map(Slot::number).toList());
        assertEquals(List.of(), PROPOSED.extra());
        assertEquals(
                List.of("crew2"),
                proposal(0.6, 0, -1, 3, 4).extra().stream().map(Scan::name).toList());
    }

    @Test
    void fromAScanOnAllShowAFrameLaterOrEarlier() {
        check(PROPOSED.shifted(2, -1), 0, 1, 2, 3);
        check(PROPOSED.shifted(3, 1), 0, 1, 3, -1);
        check(PROPOSED.shifted(1, 1), 0, 2, 4, -1);
    }

    @Test
    void aFrameThatAnEarlierScanShowsIsNotShownTwice() {
        check(PROPOSED.shifted(1, -1), 0, -1, 2, 3);
    }

    @Test
    void theFilmCanBeTurnedRoundAndBack() {
        Proposal turned = PROPOSED.turned();
        check(turned, 4, 3, 1, 0);
        assertTrue(turned.isReversed());
        assertEquals(PROPOSED.slotOf(), turned.turned().slotOf());
    }

    @Test
    void twoScansExchangeTheirFrames() {
        check(PROPOSED.swapped(0, 3), 4, 1, 3, 0);
    }

    @Test
    void aScanThatIsPutOnAFrameTakesItFromAnother() {
        check(PROPOSED.placed(3, 2), 0, 1, 3, 2);
        check(PROPOSED.placed(3, 1), 0, -1, 3, 1);
        check(PROPOSED.placed(0, -1), -1, 1, 3, 4);
    }

    @Test
    void whatWasDoneByHandIsSure() {
        assertFalse(PROPOSED.isSure());
        assertTrue(PROPOSED.swapped(0, 1).isSure());
    }

    @Test
    void aProposalIsNoSurerThanWhatItRestsOn() {
        assertEquals(0.3, PROPOSED.weighed(0.5).confidence(), 1e-12);
        assertEquals(PROPOSED.slotOf(), PROPOSED.weighed(0.5).slotOf());
    }

    private static Proposal proposal(double confidence, Integer... slotOf) {
        List<Scan> scans = IntStream.rangeClosed(1, slotOf.length)
                .mapToObj(it -> new Scan("crew" + it, 3000, 2000, new Tone(0.5, 0.2, false), Optional.empty()))
                .toList();
        List<Slot> slots = IntStream.range(0, 5)
                .mapToObj(it -> new Slot(
                        new RollId("R", 7),
                        List.of(it),
                        it + 1,
                        Frame.Kind.EXPOSED,
                        OptionalDouble.of(0),
                        false,
                        1.5,
                        Optional.empty()))
                .toList();
        return new Proposal(scans, slots, Arrays.asList(slotOf), false, false, confidence, List.of());
    }

    private static void check(Proposal proposal, Integer... slotOf) {
        assertEquals(Arrays.asList(slotOf), proposal.slotOf());
    }
}
