package takeup.journal;

import java.io.IOException;
import java.nio.file.Path;
import takeup.disk.FileSystem;
import takeup.disk.Folders;
import takeup.disk.Quarantine;
import takeup.roll.RollId;

/** Moves the journals of rolls between the open and the finished ones. What is in them it leaves to others. */
final class JournalMoves {
    private final FileSystem drive;
    private final Archive archive;
    private final DataLayout layout;
    private final OpenJournals journals;

    JournalMoves(FileSystem drive, Archive archive, OpenJournals journals) {
        this.drive = drive;
        this.archive = archive;
        this.layout = archive.layout();
        this.journals = journals;
    }

    /** Puts a roll's journal with the finished ones, as {@link #toOpen} does with the open ones. */
    void toFinished(RollId roll) throws IOException {
        settle(roll, layout.open(roll), layout.finished(roll));
    }

    /**
     * Puts a roll's journal with the open ones; where it lies there already it stays. Where it lies in both places the
     * longer one goes there, and the other is kept aside.
     */
    void toOpen(RollId roll) throws IOException {
        settle(roll, layout.finished(roll), layout.open(roll));
    }

    /** The same, but that nothing is done where no journal of it lies with the finished ones; whether one does. */
    boolean reopen(RollId roll) throws IOException {
        if (journals.isOpen(layout.open(roll)) || drive.kind(layout.finished(roll)) == FileSystem.Kind.NOTHING) {
            return false;
        }
        toOpen(roll);
        return true;
    }

    private void settle(RollId roll, Path from, Path to) throws IOException {
        refuseLater(roll);
        journals.takeBack();
        journals.mend(from);
        if (drive.kind(from) != FileSystem.Kind.NOTHING) {
            move(roll, from, to);
        } else if (drive.kind(to) == FileSystem.Kind.NOTHING) {
            return;
        }
        drive.forceNames(to.getParent());
        drive.forceNames(from.getParent());
    }

    private void move(RollId roll, Path from, Path to) throws IOException {
        boolean twice = drive.kind(to) != FileSystem.Kind.NOTHING;
        Path longer = twice ? archive.where(roll) : from;
        journals.close(from);
        journals.close(to);
        if (twice) {
            Quarantine.shorter(drive, longer.equals(from) ? to : from, longer);
        }
        if (longer.equals(from)) {
            Folders.handOver(drive, from, to);
        }
    }

    /** Leaves alone what a later version wrote. */
    void refuseLater(RollId roll) throws IOException {
        if (!journals.isOpen(layout.open(roll)) && !journals.isOpen(layout.finished(roll)) && archive.isLater(roll)) {
            throw new LaterVersion(roll + DataLayout.ENDING);
        }
    }
}
