package takeup.reviewing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import takeup.files.ScanFolder;
import takeup.journal.Archive;
import takeup.roll.Roll;
import takeup.scans.RollMatcher;
import takeup.scans.ScansByRoll;

/**
 * A folder of scans that was read for a roll, and the rolls near to it that its scans may belong to.
 *
 * @param roll the roll that is asked about
 * @param folder what the folder holds
 * @param candidates the rolls that its scans may belong to
 */
public record OpenedScans(Roll roll, ScanFolder folder, List<ScansByRoll.Candidate> candidates) {
    /** Reads the folder. */
    public static OpenedScans of(Archive archive, Roll roll, Path folder) throws IOException {
        ScanCandidates near = ScanCandidates.of(archive, roll, folder);
        ScanFolder read = ScanFolder.read(folder, near.haveSlates());
        return new OpenedScans(roll, read, near.withSlatesOf(read));
    }

    /** The scans laid beside the frames. */
    public ScansByRoll sorted() {
        return RollMatcher.of(folder.scans(), candidates, roll.id());
    }
}
