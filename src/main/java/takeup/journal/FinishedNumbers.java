package takeup.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.function.Supplier;
import takeup.disk.FileSystem;
import takeup.roll.RollNumbers;

/**
 * The numbers of the finished rolls, read once, by whoever needs them first: an archive of years has ten thousand, and
 * the first picture needs none. Safe to ask on any thread.
 */
final class FinishedNumbers implements Supplier<RollNumbers> {
    private final FileSystem drive;
    private final Path folder;
    /** What tells that folder from another that took its name. */
    private final Object key;

    private RollNumbers read;
    private boolean isElsewhere;
    /** Why somebody was answered without them. */
    private IOException missed;

    FinishedNumbers(FileSystem drive, Path folder, Object key) {
        this.drive = drive;
        this.folder = folder;
        this.key = key;
    }

    /** An exception for good once somebody went on without them, and may have taken a number that is in use. */
    synchronized RollNumbers read() throws IOException {
        if (missed != null) {
            throw new IOException(
                    "rolls/finished could not be read at the start: leave, and start takeup again", missed);
        }
        if (read == null) {
            RollNumbers here = DataLayout.rolls(drive.names(folder));
            isElsewhere = !JournalPlaces.key(drive, folder).equals(key);
            read = here;
        }
        return read;
    }

    /** Whether their folder was gone before anybody asked for them. */
    synchronized boolean areElsewhere() throws IOException {
        read();
        return isElsewhere;
    }

    /** The same for one who can only show them: none where they cannot be read, and then no roll is begun. */
    @Override
    public synchronized RollNumbers get() {
        try {
            return read();
        } catch (IOException e) {
            missed = missed == null ? e : missed;
            return RollNumbers.of(Set.of());
        }
    }
}
