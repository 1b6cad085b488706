package takeup.journal;

import java.io.IOException;
import java.nio.file.Path;
import takeup.disk.FileSystem;
import takeup.roll.RollId;
import takeup.roll.RollNumbers;

/**
 * Whether the files of a roll were written to, by their sizes and times. The names in the folders are read once; a roll
 * is looked at where it is asked for, on any thread.
 */
public final class RollStamps {
    private final FileSystem drive;
    private final DataLayout layout;
    private final RollNumbers open;
    private final RollNumbers finished;
    private final RollNumbers reviews;

    private RollStamps(
            FileSystem drive, DataLayout layout, RollNumbers open, RollNumbers finished, RollNumbers reviews) {
        this.drive = drive;
        this.layout = layout;
        this.open = open;
        this.finished = finished;
        this.reviews = reviews;
    }

    static RollStamps of(FileSystem drive, DataLayout layout) throws IOException {
        // In this order a roll that is finished at this very moment is in one of the two.
        RollNumbers open = DataLayout.rolls(new UnfinishedStep(drive, layout).confirmedNames(layout.openRolls()));
        RollNumbers finished = DataLayout.rolls(drive.names(layout.finishedRolls()));
        return new RollStamps(drive, layout, open, finished, DataLayout.rolls(drive.names(layout.reviews())));
    }

    /** The numbers of all rolls, open and finished, by the names of their files. */
    public RollNumbers rolls() {
        return finished.and(open);
    }

    /**
     * Sizes and times of the files that a roll is read from: what is the same as before was not written to. Empty where
     * one of them is none to be read, or is being written to.
     */
    public String of(RollId roll) throws IOException {
        String stamp = "";
        if (open.contains(roll)) {
            stamp = drive.stamp(layout.open(roll));
            if (stamp.isEmpty() || new UnfinishedStep(drive, layout).goesTo(layout.open(roll))) {
                return "";
            }
            stamp = "open " + stamp;
        }
        if (finished.contains(roll)) {
            String own = drive.stamp(layout.finished(roll));
            if (own.isEmpty()) {
                return "";
            }
            stamp += (stamp.isEmpty() ? "" : " ") + "finished " + own;
        }
        if (!reviews.contains(roll)) {
            return stamp;
        }
        Path review = layout.review(roll);
        String own = drive.stamp(review);
        return own.isEmpty() ? "" : stamp + " review " + own;
    }
}
