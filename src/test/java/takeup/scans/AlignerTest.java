package takeup.scans;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import takeup.roll.Frame;
import takeup.roll.RollId;
import takeup.scans.PlantedFolder.Fault;

/**
 * Folders with planted faults, one of each and all pairs that can befall one film: the truth is known by how they were
 * made.
 */
@Tag("slow")
class AlignerTest {
    /** {@code -Dfolders=1000} runs more of them. */
    private static final int FOLDERS = Integer.getInteger("folders", 160);

    private static final double UNCORRECTED = 0.1;

    @Test
    void findsThePlantedAlignmentInNearlyAllFoldersAndAsksInTheOthers() {
        List<Set<Fault>> kinds = kinds();
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < FOLDERS; i++) {
            PlantedFolder folder = PlantedFolder.of(i, kinds.get(i % kinds.size()), UNCORRECTED);
            Proposal proposal = Aligner.of(folder.scans(), folder.slots(), 1);
            if (!folder.isMetBy(proposal)) {
                wrong.add(i + " " + kinds.get(i % kinds.size()) + " " + proposal.confidence());
                assertFalse(proposal.isSure(), "wrong without asking: " + wrong);
            }
        }
        assertTrue(wrong.size() <= 0.02 * FOLDERS, wrong.size() + " of " + FOLDERS + " wrong: " + wrong);
    }

    @Test
    void isNeverWrongWithoutAskingWhereTheLabCorrectedAllBrightness() {
        List<Set<Fault>> kinds = kinds();
        for (int i = 0; i < FOLDERS / 2; i++) {
            PlantedFolder folder = PlantedFolder.of(70_000 + i, kinds.get(i % kinds.size()), 0);
            Proposal proposal = Aligner.of(folder.scans(), folder.slots(), 1);
            assertTrue(
                    folder.isMetBy(proposal) || !proposal.isSure(),
                    i + " " + kinds.get(i % kinds.size()) + " " + proposal.confidence());
        }
    }

    @Test
    void asksWhichEndCameFirstWhenNothingTells() {
        Proposal proposal = Aligner.of(scans(12, 0.45, 0.2), slots(12), 1);
        assertFalse(proposal.isSure());
        assertTrue(
                proposal.reasons().get(1).contains("which end of the film was scanned first"),
                proposal.reasons().toString());
    }

    @Test
    void saysThatTheFilmStoppedWhereTheLastScanIsAPile() {
        // 6 scans of 36 logged: a wedding roll came back so, thirty exposures on the sixth (mlarchive.de, Olympus-OM,
        // 2003-05, msg00532).
        List<Scan> scans = new ArrayList<>(scans(5, 0.45, 0.2));
        scans.add(scan(6, 0.92, 0.06));
        Proposal proposal = Aligner.of(scans, slots(36), 1);
        assertTrue(proposal.isPiled());
        assertEquals(List.of(0, 1, 2, 3, 4, 5), proposal.slotOf());
        assertTrue(
                proposal.reasons().get(0).startsWith("6 scans, R0007 has 36, the last one of the film a pile"),
                proposal.reasons().toString());
    }

    @Test
    void threeBlownScansAtTheFrontAreTheLastFramesOfAFilmThatWasScannedFromItsOtherEnd() {
        // 16 frames of 645, the last three with three stops more: nearly white.
        List<Slot> slots = new ArrayList<>(slots(13));
        for (int i = 13; i < 16; i++) {
            slots.add(slot(i, 3.3));
        }
        List<Scan> scans = new ArrayList<>();
        for (int i = 1; i <= 16; i++) {
            scans.add(i <= 3 ? scan(i, 0.92 + 0.01 * (i % 2), 0.05) : scan(i, 0.45 + 0.01 * (i % 3), 0.2));
        }
        Proposal proposal = Aligner.of(scans, slots, 1);
        List<Integer> backwards =
                IntStream.range(0, 16).map(it -> 15 - it).boxed().toList();
        assertTrue(
                proposal.slotOf().equals(backwards) || !proposal.isSure(),
                proposal.confidence() + " " + proposal.slotOf());
        assertEquals(backwards, proposal.slotOf());
    }

    @Test
    void takesNoMorePicturesThanTheFilmHoldsAndOneToSpare() {
        // One frame for each: two beside the log at one end would be one too many.
        for (int blown = 1; blown <= 3; blown++) {
            List<Scan> scans = new ArrayList<>(scans(16, 0.45, 0.2));
            for (int i = 0; i < blown; i++) {
                scans.set(i, scan(i + 1, 0.92, 0.05));
            }
            assertTrue(Aligner.of(scans, slots(16), 1).extra().size() <= 1, blown + " blown");
        }
    }

    @Test
    void takesGapsInTheNamesForFramesThatWereLeftOut() {
        List<Scan> scans = IntStream.of(1, 2, 3, 5, 6, 9, 10)
                .mapToObj(it -> scan(it, 0.45 + (it % 3) * 0.02, 0.2))
                .toList();
        Proposal proposal = Aligner.of(scans, slots(10), 1);
        assertEquals(List.of(0, 1, 2, 4, 5, 8, 9), proposal.slotOf());
        assertTrue(
                proposal.reasons().get(0).contains("frames 4, 7-8 most likely have no scan"),
                proposal.reasons().toString());
    }

    @Test
    void saysNothingOfAnEmptyFolderAndOfAnEmptyLog() {
        assertEquals(
                List.of("there are no scans"),
                Aligner.of(List.of(), slots(3), 1).reasons());
        assertEquals(
                List.of("no frame is logged"),
                Aligner.of(scans(3, 0.5, 0.2), List.of(), 1).reasons());
        assertEquals(0, Aligner.of(List.of(), slots(3), 1).confidence());
    }

    private static List<Set<Fault>> kinds() {
        List<Set<Fault>> kinds = new ArrayList<>();
        kinds.add(EnumSet.noneOf(Fault.class));
        for (Fault a : Fault.values()) {
            kinds.add(EnumSet.of(a));
            for (Fault b : Fault.values()) {
                if (a.compareTo(b) < 0 && PlantedFolder.goTogether(a, b)) {
                    kinds.add(EnumSet.of(a, b));
                }
            }
        }
        return kinds;
    }

    private static List<Scan> scans(int count, double brightness, double contrast) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(it -> scan(it, brightness, contrast))
                .toList();
    }

    private static Scan scan(int number, double brightness, double contrast) {
        return new Scan("crew" + number + ".jpg", 3000, 2000, new Tone(brightness, contrast, false));
    }

    private static List<Slot> slots(int count) {
        return IntStream.range(0, count)
                .mapToObj(it -> slot(it, 0.3 * (it % 4)))
                .toList();
    }

    private static Slot slot(int place, double over) {
        return new Slot(
                new RollId("R", 7),
                List.of(place),
                place + 1,
                Frame.Kind.EXPOSED,
                OptionalDouble.of(over),
                false,
                1.5,
                Optional.empty());
    }
}
