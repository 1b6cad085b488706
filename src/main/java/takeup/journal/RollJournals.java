package takeup.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import takeup.disk.FileSystem;
import takeup.disk.Folders;
import takeup.disk.IoErrorText;
import takeup.disk.Quarantine;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/** The journals of rolls, to read: with the open ones, with the finished ones, or, after a copy, with both. */
record RollJournals(FileSystem drive, DataLayout layout) {
    /** Whether a journal of a roll lies here, whatever is in it. */
    boolean holds(RollId id) throws IOException {
        return drive.kind(layout.open(id)) != FileSystem.Kind.NOTHING
                || drive.kind(layout.finished(id)) != FileSystem.Kind.NOTHING;
    }

    /** The records of a roll, wherever its journal lies; where it lies twice, of the longer one. */
    JournalRecords<RollRecord> read(RollId id) {
        Path path;
        boolean twice;
        try {
            path = where(id);
            twice = liesTwice(id);
        } catch (IOException e) {
            return unreadable(id, e);
        }
        JournalRecords<RollRecord> found = records(path);
        if (!twice) {
            return found;
        }
        if (!id.letters().equals(layout.writer()) && isBeginningOfOther(id)) {
            // Copied from another laptop before and after it was finished there; that laptop clears up, not this one.
            return found;
        }
        List<String> problems = new ArrayList<>(found.problems());
        problems.addAll(records(path.equals(layout.open(id)) ? layout.finished(id) : layout.open(id))
                .problems());
        problems.add(id + DataLayout.ENDING
                + ":1: it lies with the open and with the finished rolls; the longer one counts");
        return new JournalRecords<>(found.records(), problems);
    }

    private boolean isBeginningOfOther(RollId id) {
        Path open = layout.open(id);
        Path finished = layout.finished(id);
        try {
            return Quarantine.isBeginning(drive, open, Folders.read(drive, finished))
                    || Quarantine.isBeginning(drive, finished, Folders.read(drive, open));
        } catch (IOException e) {
            return false;
        }
    }

    /** Where a roll's journal lies, or would be begun; where it lies twice, the place of the longer one. */
    Path where(RollId id) throws IOException {
        Path open = layout.open(id);
        Path finished = layout.finished(id);
        if (drive.kind(finished) == FileSystem.Kind.NOTHING) {
            return open;
        }
        return liesTwice(id)
                        && records(open).records().size()
                                >= records(finished).records().size()
                ? open
                : finished;
    }

    private boolean liesTwice(RollId id) throws IOException {
        return drive.kind(layout.open(id)) != FileSystem.Kind.NOTHING
                && drive.kind(layout.finished(id)) != FileSystem.Kind.NOTHING;
    }

    private JournalRecords<RollRecord> records(Path path) {
        JournalRecords<RollRecord> found = new RecordReader.OfRoll().read(new UnfinishedStep(drive, layout), path);
        String name = path.getFileName().toString();
        boolean isOther = !found.records().isEmpty()
                && found.records().get(0).event() instanceof RollEvent.Loaded loaded
                && !name.equals(loaded.id() + DataLayout.ENDING);
        return !isOther
                ? found
                : JournalRecords.unreadable(name + ":2: by its records this is roll "
                        + ((RollEvent.Loaded) found.records().get(0).event()).id()
                        + "; give the file that name back");
    }

    /** Whether a later version wrote a journal: nothing is written to such a one, and it is left where it lies. */
    boolean isLater(RollId id) throws IOException {
        Path path = where(id);
        return drive.kind(path) == FileSystem.Kind.FILE
                && JournalReader.read(path.getFileName().toString(), Folders.read(drive, path))
                        .newer();
    }

    static <T> JournalRecords<T> unreadable(RollId roll, IOException why) {
        return JournalRecords.unreadable(roll + DataLayout.ENDING + ":1: cannot be read: " + IoErrorText.words(why));
    }
}
