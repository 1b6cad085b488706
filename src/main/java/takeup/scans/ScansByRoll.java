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

    /**
     * A roll that scans may belong to; rolls are in the order of loading.
     *
     * @param holds how many frames the film holds
     */
    public record Candidate(RollId roll, List<Slot> slots, int holds) {
        public Candidate {
            slots = List.copyOf(slots);
        }

        /** Of a film that was exposed to its end. */
        Candidate(RollId roll, List<Slot> slots) {
            this(roll, slots, slots.size());
        }

        /** Whether so many scans may be of this film alone. */
        boolean mayHold(int scans) {
            return scans <= slots.size() + Math.min(MORE, room());
        }

        /** How many pictures beside those in the log the film may hold; rolls run long, so one is to spare. */
        int room() {
            return Math.max(0, holds - slots.size()) + SPARE;
        }
    }

    /** So many pictures more than it says go on a film. Common practice. */
    private static final int SPARE = 1;

    /** So many more scans than logged frames may come of one film. */
    static final int MORE = 3;

    public ScansByRoll {
        others = List.copyOf(others);
        unmatched = List.copyOf(unmatched);
    }

    /** All scans are of the roll that was asked for. */
    static ScansByRoll all(List<Scan> scans, Candidate wanted) {
        return new ScansByRoll(Aligner.of(scans, wanted.slots, wanted.room()), List.of(), List.of());
    }
}
