package takeup.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
public record Proposal(List<Scan> scans, List<Slot> slots, List<Integer> slotOf, boolean isReversed, boolean isPiled, double confidence, List<String> reasons) {
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
        List<Slot> missing = new ArrayList<>();
        for (int i = 0; i < slots.size(); i++) {
            if (!slotOf.contains(i)) {
                missing.add(slots.get(i));
            }
        }
        return missing;
    }

    /** The scans that nobody logged. */
    public List<Scan> extra() {
        List<Scan> extra = new ArrayList<>();
        for (int i = 0; i < scans.size(); i++) {
            if (slotOf.get(i) < 0) {
                extra.add(scans.get(i));
            }
        }
        return extra;
    }
}
