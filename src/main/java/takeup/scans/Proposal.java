package takeup.scans;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Which scan shows which frame, as the evidence has it: a proposal until the photographer accepts it.
 *
 * @param scans the scans, in natural order
 * @param slots what they may show, in the order of the film
 * @param slotOf for each scan its place in the slots, from 0; -1 for a scan that nobody logged
 * @param isReversed whether the film was scanned from its other end
 * @param isPiled whether all further frames lie on the scan of the film's end
 * @param confidence how likely it is among all that was weighed, 0 to 1
 * @param reasons why, in sentences, the weightiest first
 */
public record Proposal(
        List<Scan> scans,
        List<Slot> slots,
        List<Integer> slotOf,
        boolean isReversed,
        boolean isPiled,
        double confidence,
        List<String> reasons) {
    /** Below this the photographer is asked, and nothing is accepted unseen. */
    public static final double SURE = 0.98;

    public Proposal {
        scans = List.copyOf(scans);
        slots = List.copyOf(slots);
        slotOf = List.copyOf(slotOf);
        reasons = List.copyOf(reasons);
        if (slotOf.size() != scans.size()) {
            throw new IllegalArgumentException("each scan has a place, or none");
        }
    }

    /** No scan shows a frame, for that reason. */
    static Proposal none(List<Scan> scans, List<Slot> slots, String reason) {
        return new Proposal(scans, slots, Collections.nCopies(scans.size(), -1), false, false, 0, List.of(reason));
    }

    /** The same, explained. */
    Proposal because(List<String> why) {
        return new Proposal(scans, slots, slotOf, isReversed, isPiled, confidence, why);
    }

    /** The same, as far as something else that it rests on is sure: a share from 0 to 1. */
    Proposal weighed(double share) {
        return new Proposal(scans, slots, slotOf, isReversed, isPiled, confidence * share, reasons);
    }

    /** Whether the evidence is enough to go by. */
    public boolean isSure() {
        return confidence >= SURE;
    }

    /** What a scan shows. */
    public Optional<Slot> slot(int scan) {
        return slotOf.get(scan) < 0 ? Optional.empty() : Optional.of(slots.get(slotOf.get(scan)));
    }

    /** The slots that no scan shows, in the order of the film. */
    public List<Slot> missing() {
        return IntStream.range(0, slots.size())
                .filter(it -> !slotOf.contains(it))
                .mapToObj(slots::get)
                .toList();
    }

    /** The scans that nobody logged. */
    public List<Scan> extra() {
        return IntStream.range(0, scans.size())
                .filter(it -> slotOf.get(it) < 0)
                .mapToObj(scans::get)
                .toList();
    }

    /**
     * The same with all scans from one on showing so many frames later; what falls off an end shows no logged frame.
     */
    public Proposal shifted(int from, int by) {
        List<Integer> places = new ArrayList<>(slotOf);
        for (int i = from; i < places.size(); i++) {
            int place = places.get(i) < 0 ? -1 : places.get(i) + by;
            boolean isTaken = slotOf.subList(0, from).contains(place);
            places.set(i, place < slots.size() && !isTaken ? Math.max(-1, place) : -1);
        }
        return byHand(places, isReversed);
    }

    /** The same with the film the other way round. */
    public Proposal turned() {
        List<Integer> places = new ArrayList<>(slotOf);
        Collections.reverse(places);
        return byHand(places, !isReversed);
    }

    /** The same with the frames of two scans exchanged. */
    public Proposal swapped(int one, int other) {
        List<Integer> places = new ArrayList<>(slotOf);
        Collections.swap(places, one, other);
        return byHand(places, isReversed);
    }

    /** The same with a scan showing that slot, -1 for none; a scan that showed it before shows none. */
    public Proposal placed(int scan, int slot) {
        List<Integer> places = new ArrayList<>(slotOf);
        if (slot >= 0 && places.contains(slot)) {
            places.set(places.indexOf(slot), -1);
        }
        places.set(scan, slot);
        return byHand(places, isReversed);
    }

    /** What the photographer says is sure. */
    private Proposal byHand(List<Integer> places, boolean reversed) {
        return new Proposal(scans, slots, places, reversed, isPiled, 1, List.of("put right by hand"));
    }
}
