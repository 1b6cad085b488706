package takeup.scans;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import takeup.roll.Frame;
import takeup.roll.RollId;

/** Slates on the film: they name it, and say where it begins and which way it runs, where tones say nothing. */
class SlateMatcherTest {
    private static final RollId ONE = new RollId("R", 1);
    private static final RollId OTHER = new RollId("R", 2);
    private final Random random = new Random(9);

    @Test
    void aSlateAtTheEndOfTheFolderMeansThatTheFilmWasScannedFromItsOtherEnd() {
        List<Scan> film = film(ONE, 12, 1);
        Collections.reverse(film);
        Proposal proposal =
                RollMatcher.of(named(film), List.of(roll(ONE, 12, 1)), ONE).asked();
        assertTrue(proposal.isReversed());
        assertEquals(IntStream.range(0, 12).map(it -> 11 - it).boxed().toList(), proposal.slotOf());
        assertTrue(proposal.isSure(), "confidence " + proposal.confidence());
        assertTrue(
                proposal.reasons().contains("crew_12.jpg is the slate of R0001"),
                proposal.reasons().toString());
    }

    @Test
    void aSlateInThirdPlaceMeansThatTwoFramesBeforeItWereNotLogged() {
        List<Scan> film = film(ONE, 12, 1);
        film.addAll(0, List.of(plain(), plain()));
        Proposal proposal =
                RollMatcher.of(named(film), List.of(roll(ONE, 12, 1)), ONE).asked();
        assertEquals(List.of(-1, -1, 0, 1, 2), proposal.slotOf().subList(0, 5));
        assertTrue(proposal.isSure(), "confidence " + proposal.confidence());
    }

    @Test
    void withoutTheSlateNothingTellsWhichEndCameFirst() {
        List<Scan> film = film(ONE, 12, 1).stream()
                .map(it -> it.showing(Optional.empty()))
                .toList();
        Proposal proposal =
                RollMatcher.of(named(film), List.of(roll(ONE, 12)), ONE).asked();
        assertFalse(proposal.isReversed(), "it is laid as labs mostly scan");
        assertFalse(RollMatcher.of(named(film.subList(0, 10)), List.of(roll(ONE, 12)), ONE)
                .asked()
                .isSure());
    }

    @Test
    void slatesAtBothEndsAreToldApartByTheirFrames() {
        List<Scan> film = film(ONE, 10, 1, 10);
        Collections.reverse(film);
        Proposal proposal =
                RollMatcher.of(named(film), List.of(roll(ONE, 10, 1, 10)), ONE).asked();
        assertTrue(proposal.isReversed() && proposal.isSure(), "confidence " + proposal.confidence());
    }

    @Test
    void twoFilmsInOneCountAreSplitByTheirSlatesWhicheverCameFirst() {
        List<ScansByRoll.Candidate> rolls = List.of(roll(ONE, 12, 1), roll(OTHER, 9, 1));
        for (boolean isTurned : new boolean[] {false, true}) {
            List<Scan> film = film(OTHER, 9, 1);
            if (isTurned) {
                Collections.reverse(film);
            }
            film.addAll(film(ONE, 12, 1));
            ScansByRoll sorted = RollMatcher.of(named(film), rolls, ONE);
            assertEquals(IntStream.range(0, 12).boxed().toList(), sorted.asked().slotOf());
            assertEquals("crew_10.jpg", sorted.asked().scans().get(0).name());
            assertEquals(
                    List.of(OTHER),
                    sorted.others().stream().map(ScansByRoll.Other::roll).toList());
            assertEquals(9, sorted.others().get(0).proposal().scans().size());
            assertEquals(isTurned, sorted.others().get(0).proposal().isReversed());
        }
    }

    @Test
    void ofTwoFilmsInOneCountTheFirstHasNoSlateAndKeepsItsOwnScans() {
        List<ScansByRoll.Candidate> rolls = List.of(roll(ONE, 16), roll(OTHER, 16, 1));
        List<Scan> scans = film(ONE, 16);
        scans.addAll(film(OTHER, 16, 1));
        for (RollId asked : List.of(ONE, OTHER)) {
            ScansByRoll sorted = RollMatcher.of(named(scans), rolls, asked);
            assertEquals(
                    asked.equals(ONE) ? "crew_01.jpg" : "crew_17.jpg",
                    sorted.asked().scans().get(0).name());
            assertEquals(IntStream.range(0, 16).boxed().toList(), sorted.asked().slotOf());
        }
    }

    @Test
    void aRollWithoutASlateTakesNoFilmWhoseSlatesContradictEachOtherButNameAnother() {
        List<Scan> scans = film(OTHER, 6, 1);
        scans.addAll(film(new RollId("R", 3), 6, 1));
        scans.addAll(film(OTHER, 6, 1));
        ScansByRoll sorted = RollMatcher.of(named(scans), List.of(roll(ONE, 16), roll(OTHER, 16, 1)), ONE);
        assertEquals(List.of(), sorted.asked().scans());
        assertEquals(18, sorted.unmatched().size());
    }

    @Test
    void aFolderWithAnotherRollsSlateIsNotLaidBesideThisOne() {
        ScansByRoll sorted =
                RollMatcher.of(named(film(OTHER, 12, 1)), List.of(roll(ONE, 12, 1), roll(OTHER, 12, 1)), ONE);
        assertEquals(List.of(), sorted.asked().scans());
        assertEquals(
                List.of("by its slate this folder is of R0002"), sorted.asked().reasons());
        assertEquals(12, sorted.others().get(0).proposal().scans().size());
    }

    @Test
    void aSlateLoggedWithTheSpaceBarStillSaysWhichFrameItIs() {
        List<Scan> film = film(ONE, 12, 1);
        Collections.reverse(film);
        Proposal proposal =
                RollMatcher.of(named(film), List.of(roll(ONE, 12)), ONE).asked();
        assertTrue(proposal.isReversed());
        assertEquals(0, proposal.slotOf().get(11));
    }

    private static ScansByRoll.Candidate roll(RollId id, int frames, int... slates) {
        List<Slot> slots = new ArrayList<>();
        for (int i = 0; i < frames; i++) {
            int number = i + 1;
            boolean isSlate = IntStream.of(slates).anyMatch(it -> it == number);
            slots.add(new Slot(
                    id,
                    List.of(i),
                    number,
                    isSlate ? Frame.Kind.SLATE : Frame.Kind.EXPOSED,
                    isSlate ? OptionalDouble.empty() : OptionalDouble.of(0.5),
                    false,
                    1.5,
                    Optional.of(new Slate(id, number))));
        }
        return new ScansByRoll.Candidate(id, slots, Math.max(16, frames));
    }

    /** Scans of a film, as alike as a lab's own correction makes them; a slate is odd to look at. */
    private List<Scan> film(RollId id, int frames, int... slates) {
        List<Scan> scans = new ArrayList<>();
        for (int number = 1; number <= frames; number++) {
            int now = number;
            scans.add(
                    IntStream.of(slates).anyMatch(it -> it == now)
                            ? new Scan(
                                    "slate", 3000, 2000, new Tone(0.7, 0.35, false), Optional.of(new Slate(id, number)))
                            : plain());
        }
        return scans;
    }

    private Scan plain() {
        return new Scan("plain", 3000, 2000, new Tone(0.45 + 0.03 * random.nextGaussian(), 0.2, false));
    }

    private static List<Scan> named(List<Scan> film) {
        return IntStream.range(0, film.size())
                .mapToObj(it -> new Scan(
                        "crew_" + (it < 9 ? "0" : "") + (it + 1) + ".jpg",
                        3000,
                        2000,
                        film.get(it).tone(),
                        film.get(it).slate()))
                .toList();
    }
}
