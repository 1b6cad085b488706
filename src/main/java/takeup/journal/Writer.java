package takeup.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import takeup.day.DayEvent;
import takeup.roll.RollEvent;
import takeup.roll.RollId;

/**
 * The one writer of a data folder. It holds the folder's lock, appends to the journals and forces what it appended; it
 * never rewrites a line. One thread uses it, and nobody interrupts that thread: an interrupt would close the files.
 */
public final class Writer implements AutoCloseable {
    private final Archive archive;
    private final Lock lock;
    private final Map<Path, JournalFile> files = new LinkedHashMap<>();
    private final List<String> remarks = new ArrayList<>();
    private final Reserve reserve;
    private boolean saidLow;

    private Writer(Archive archive, Lock lock, Reserve reserve) {
        this.archive = archive;
        this.lock = lock;
        this.reserve = reserve;
    }

    /** Another program holds the folder. */
    public static final class Taken extends IOException {
        private static final long serialVersionUID = 1;

        Taken(String who) {
            super(who);
        }
    }

    /** Takes a data folder to write in; it is made if it is not there. */
    public static Writer take(Path folder) throws IOException {
        Folders.make(folder);
        Folders.make(folder.resolve("rolls").resolve("open"));
        Folders.make(folder.resolve("rolls").resolve("finished"));
        Folders.make(folder.resolve("days"));
        Folders.make(folder.resolve("exports"));
        Lock lock = Lock.take(folder.resolve("lock"));
        try {
            Folders.sweep(folder.resolve("rolls").resolve("open"));
            return new Writer(new Archive(folder), lock, Reserve.of(folder));
        } catch (IOException | RuntimeException e) {
            lock.close();
            throw e;
        }
    }

    /** What of one step goes where: rolls in the order in which they must be written. */
    public static final class Batch {
        private final long step;
        private final OffsetDateTime at;
        private final List<DayEvent> day = new ArrayList<>();
        private final Map<RollId, List<RollEvent>> rolls = new LinkedHashMap<>();

        /** A batch for a step. */
        public Batch(long step, OffsetDateTime at) {
            this.step = step;
            this.at = at;
        }

        /** An event of the day. */
        public void add(DayEvent event) {
            day.add(event);
        }

        /** An event of a roll. */
        public void add(RollId roll, RollEvent event) {
            rolls.computeIfAbsent(roll, it -> new ArrayList<>()).add(event);
        }
    }

    /**
     * Writes a step down. Once this returns, all of it is on the disk. The day goes first: a finished roll's change must
     * never be unknown to it. A frame that is moved is written where it goes before it is taken from where it was.
     *
     * <p>After an exception the same step is handed in again; what of it was written already is not written twice.
     *
     * @throws IllegalArgumentException before anything is written, for an event that could not be read back
     */
    public void append(Batch batch) throws IOException {
        if (!Files.isDirectory(archive.folder())) {
            throw new NoSuchFileException(archive.folder().toString());
        }
        Map<Path, List<String>> texts = new LinkedHashMap<>();
        if (!batch.day.isEmpty()) {
            texts.put(archive.day(batch.at.toLocalDate()), batch.day.stream().map(DayEventJson::text).toList());
        }
        for (Map.Entry<RollId, List<RollEvent>> roll : batch.rolls.entrySet()) {
            Path open = archive.open(roll.getKey());
            texts.put(files.containsKey(open) ? open : archive.where(roll.getKey()), roll.getValue().stream().map(RollEventJson::text).toList());
        }
        texts.values().forEach(it -> it.forEach(event -> Lines.of(1, batch.step, batch.at, event)));
        // An interrupt that came in before would close the files.
        boolean interrupted = Thread.interrupted();
        try {
            write(batch, texts);
        } catch (IOException e) {
            if (!Trouble.isFull(e) || !reserve.release()) {
                throw e;
            }
            remarks.add("the disk is full: what was kept in reserve takes the next frames; free some space now");
            saidLow = true;
            write(batch, texts);
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private void write(Batch batch, Map<Path, List<String>> texts) throws IOException {
        for (Map.Entry<Path, List<String>> text : texts.entrySet()) {
            remark(text.getKey(), file(text.getKey()).append(batch.step, batch.at, text.getValue()));
        }
        if (!saidLow && reserve.isLow()) {
            saidLow = true;
            remarks.add("less than 50 MB are free on this disk: free some space before it is full");
        }
    }

    private JournalFile file(Path path) throws IOException {
        JournalFile file = files.get(path);
        if (file == null) {
            file = JournalFile.open(path);
            files.put(path, file);
        }
        return file;
    }

    private void remark(Path path, boolean anew) {
        if (anew) {
            remarks.add(path.getFileName() + " was moved, deleted or changed by another program; all of it was written anew");
        }
    }

    /** What went wrong since this was last asked, and was put right without losing anything: sentences, often none. */
    public List<String> remarks() {
        List<String> all = List.copyOf(remarks);
        remarks.clear();
        return all;
    }

    /** Keeps what is being typed; nothing is kept of an empty line. */
    public void draft(String text) throws IOException {
        if (text.isBlank()) {
            Files.deleteIfExists(archive.draftFile());
        } else {
            Folders.replace(archive.draftFile(), text.getBytes(StandardCharsets.UTF_8));
        }
    }

    /** Writes the export of a roll: the old one or the new one is there, never half of one. */
    public void export(RollId roll, String json) throws IOException {
        Folders.replace(archive.folder().resolve("exports").resolve(roll + ".json"), json.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Puts a roll's journal with the finished or the open ones. Does nothing where it lies there already. Where it lies in
     * both places the longer one goes there, and the other is kept aside.
     */
    public void settle(RollId roll, boolean isFinished) throws IOException {
        Path from = isFinished ? archive.open(roll) : archive.finished(roll);
        Path to = isFinished ? archive.finished(roll) : archive.open(roll);
        JournalFile file = files.get(from);
        if (file != null) {
            remark(from, file.mend());
        }
        if (!Files.exists(from)) {
            return;
        }
        boolean twice = Files.exists(to);
        Path longer = twice ? archive.where(roll) : from;
        for (Path path : List.of(from, to)) {
            JournalFile open = files.remove(path);
            if (open != null) {
                open.close();
            }
        }
        if (twice) {
            Aside.shorter(longer.equals(from) ? to : from, longer);
        }
        if (longer.equals(from)) {
            Folders.move(from, to);
        }
        Folders.force(to.getParent());
        Folders.force(from.getParent());
    }

    @Override public void close() throws IOException {
        try {
            for (JournalFile file : files.values()) {
                file.close();
            }
        } finally {
            files.clear();
            lock.close();
        }
    }
}
