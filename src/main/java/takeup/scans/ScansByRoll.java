package takeup.scans;

import java.util.List;
import takeup.roll.RollId;

/**
 * A folder divided among rolls: which of its scans belong to the roll that was asked for, and which to others.
 *
 * @param asked the proposal for the roll that was asked for
 * @param others proposals for other rolls whose scans lie in the same folder
 * @param unmatched scans of no roll that is known
 */
public record ScansByRoll(Proposal asked, List<Other> others, List<Scan> unmatched) {
    /** Scans of another roll. */
    public record Other(RollId roll, Proposal proposal) {}

    /** A roll that scans may belong to; rolls are in the order of loading. */
    public record Candidate(RollId roll, List<Slot> slots) {
        public Candidate {
            slots = List.copyOf(slots);
        }

        /** Whether so many scans may be further frames of one film. Common practice: 39 fit on a 36. */
        boolean mayHold(int scans) {
            return scans <= slots.size() + MORE;
        }
    }

    /** So many more scans than logged frames may come of one film. */
    static final int MORE = 3;

    public ScansByRoll {
        others = List.copyOf(others);
        unmatched = List.copyOf(unmatched);
    }

    /** All scans are of the roll that was asked for. */
    static ScansByRoll all(List<Scan> scans, Candidate wanted) {
        return new ScansByRoll(Aligner.of(scans, wanted.slots), List.of(), List.of());
    }
}
