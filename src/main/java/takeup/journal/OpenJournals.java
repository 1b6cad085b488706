package takeup.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import takeup.disk.FileSystem;

/**
 * The journals that were written to since the data folder was taken, each opened at its first record. Of a step that
 * goes to several of them, all is there in the end or nothing.
 */
final class OpenJournals implements AutoCloseable {
    private final FileSystem drive;
    /** Gets a sentence for what was put right. */
    private final List<String> remarks;

    private final Map<Path, JournalFile> files = new LinkedHashMap<>();
    /** Those that the step in hand goes to, or one that was refused and is not taken back yet. */
    private final Set<JournalFile> touched = new LinkedHashSet<>();

    private final UnfinishedStep unfinished;
    private boolean isOneDisplaced;

    OpenJournals(FileSystem drive, UnfinishedStep unfinished, List<String> remarks) {
        this.drive = drive;
        this.unfinished = unfinished;
        this.remarks = remarks;
    }

    boolean isOpen(Path path) {
        return files.containsKey(path);
    }

    /** Appends a step to the journals that it goes to, in that order. Once this returns all of it is on the disk. */
    void append(long step, OffsetDateTime at, Map<Path, List<String>> texts) throws IOException {
        if (texts.size() > 1 && !unfinished.isNoted()) {
            List<UnfinishedStep.Part> parts = new ArrayList<>();
            for (Map.Entry<Path, List<String>> text : texts.entrySet()) {
                JournalFile file = file(text.getKey());
                parts.add(new UnfinishedStep.Part(text.getKey(), file.size(), file.lines(step, at, text.getValue())));
            }
            unfinished.note(parts);
        }
        for (Map.Entry<Path, List<String>> text : texts.entrySet()) {
            append(text.getKey(), step, at, text.getValue());
        }
        keep();
    }

    private void keep() throws IOException {
        unfinished.forget();
        touched.forEach(JournalFile::keep);
        touched.clear();
    }

    /**
     * Takes back what is on the disk of a step that was refused, what was written last first; most often there is
     * nothing. As long as this fails nothing else may be written.
     */
    void takeBack() throws IOException {
        List<JournalFile> lastFirst = new ArrayList<>(touched);
        Collections.reverse(lastFirst);
        for (JournalFile file : lastFirst) {
            file.takeBack();
            touched.remove(file);
        }
        unfinished.forget();
    }

    /** Whether something of a refused step may be on the disk still. */
    boolean holdsRefused() {
        return !touched.isEmpty() || unfinished.isBegun();
    }

    private void append(Path path, long step, OffsetDateTime at, List<String> events) throws IOException {
        JournalFile file = file(path);
        touched.add(file);
        remark(path, file.append(step, at, events));
    }

    /** Appends to a journal that counts its own steps. */
    void append(Path path, OffsetDateTime at, List<String> events) throws IOException {
        append(path, file(path).nextStep(), at, events);
        keep();
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

    /**
     * Where one journal was moved or changed, the others may have been too. The step itself is on the disk by now.
     *
     * @return whether one was
     */
    boolean mendAllIfOneWasDisplaced() {
        if (!isOneDisplaced) {
            return false;
        }
        try {
            for (Map.Entry<Path, JournalFile> file : files.entrySet()) {
                remark(file.getKey(), file.getValue().mend());
            }
            isOneDisplaced = false;
        } catch (IOException e) {
            // again with the next step
        }
        return true;
    }

    private void remark(Path path, JournalFile.Rewritten rewritten) {
        if (rewritten == JournalFile.Rewritten.DISPLACED) {
            isOneDisplaced = true;
            remarks.add(path.getFileName()
                    + " was moved, deleted or changed by another program; all of it was written anew");
        } else if (rewritten == JournalFile.Rewritten.SHARED) {
            remarks.add(path.getFileName() + " had a second name elsewhere, as in a backup made of links; it is a file "
                    + "of its own now, and the other stays as it was");
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
