package takeup.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import takeup.disk.FileSystem;

/** The journals that were written to since the data folder was taken, each opened at its first record. */
final class OpenJournals implements AutoCloseable {
    private final FileSystem drive;
    /** Gets a sentence for what was put right. */
    private final List<String> remarks;

    private final Map<Path, JournalFile> files = new LinkedHashMap<>();
    private boolean isOneDisplaced;

    OpenJournals(FileSystem drive, List<String> remarks) {
        this.drive = drive;
        this.remarks = remarks;
    }

    boolean isOpen(Path path) {
        return files.containsKey(path);
    }

    /** Appends the events of a step; once this returns they are on the disk. */
    void append(Path path, long step, OffsetDateTime at, List<String> events) throws IOException {
        remark(path, file(path).append(step, at, events));
    }

    /** The same in a journal that counts its own steps. */
    void append(Path path, OffsetDateTime at, List<String> events) throws IOException {
        append(path, file(path).nextStep(), at, events);
    }

    private JournalFile file(Path path) throws IOException {
        JournalFile file = files.get(path);
        if (file == null) {
            file = JournalFile.open(drive, path);
            files.put(path, file);
        }
        return file;
    }

    /** Writes a journal anew if it is open and cannot be trusted or found any more. */
    void mend(Path path) throws IOException {
        JournalFile file = files.get(path);
        if (file != null) {
            remark(path, file.mend());
        }
    }

    /** Where one journal was moved or changed, the others may have been too. The step itself is on the disk by now. */
    void mendAllIfOneWasDisplaced() {
        if (!isOneDisplaced) {
            return;
        }
        try {
            for (Map.Entry<Path, JournalFile> file : files.entrySet()) {
                remark(file.getKey(), file.getValue().mend());
            }
            isOneDisplaced = false;
        } catch (IOException e) {
            // again with the next step
        }
    }

    private void remark(Path path, JournalFile.Rewritten rewritten) {
        if (rewritten == JournalFile.Rewritten.DISPLACED) {
            isOneDisplaced = true;
            remarks.add(path.getFileName()
                    + " was moved, deleted or changed by another program; all of it was written anew");
        } else if (rewritten == JournalFile.Rewritten.BROKEN) {
            remarks.add("the disk reported an error in " + path.getFileName()
                    + "; all of it was written anew and is safe: copy the data folder to another disk");
        }
    }

    /** Closes a journal, if it is open, so that it can be moved. */
    void close(Path path) throws IOException {
        JournalFile file = files.remove(path);
        if (file != null) {
            file.close();
        }
    }

    @Override
    public void close() throws IOException {
        try {
            for (JournalFile file : files.values()) {
                file.close();
            }
        } finally {
            files.clear();
        }
    }
}
