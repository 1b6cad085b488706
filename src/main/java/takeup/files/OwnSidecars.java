package takeup.files;

import java.nio.file.Path;
import java.util.List;
import takeup.handoff.FirstSidecar;
import takeup.handoff.SidecarDigest;
import takeup.journal.Archive;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/** Tells sidecars that takeup wrote, and nobody changed since, from all others. */
final class OwnSidecars {
    private final Archive archive;
    private final RollId roll;
    /** The roll after each of its records; only read where a sidecar of version 1.0.0 is met. */
    private List<Roll> states;

    OwnSidecars(Archive archive, RollId roll) {
        this.archive = archive;
        this.roll = roll;
    }

    boolean isOwn(String text, Path scan) {
        return SidecarDigest.isOwn(text)
                || FirstSidecar.isBegunByIt(text) && FirstSidecar.isUnchanged(text, states(), ScanDate.of(scan));
    }

    private List<Roll> states() {
        if (states == null) {
            states = RollRecord.statesAlong(archive.roll(roll).records());
        }
        return states;
    }
}
