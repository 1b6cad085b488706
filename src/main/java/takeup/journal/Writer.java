package takeup.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import takeup.day.DayEvent;
import takeup.disk.FileSystem;
import takeup.disk.FolderInUse;
import takeup.disk.Folders;
import takeup.disk.IoErrorText;
import takeup.disk.Quarantine;
import takeup.disk.Reserve;
import takeup.review.ReviewEvent;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.RollNumbers;

/**
 * The one writer of a data folder. It holds the folder's lock, appends to the journals and forces what it appended; it
 * never rewrites a line. One thread uses it, and nobody interrupts that thread: an interrupt would close the files.
 */
public final class Writer implements AutoCloseable {
    private final FileSystem drive;
    private final Archive archive;
    private final JournalPlaces places;
    private final Map<Path, JournalFile> files = new LinkedHashMap<>();
    private final List<String> remarks = new ArrayList<>();
    private final Reserve reserve;
    private FileSystem.Hold lock;
    private boolean saidLow;
    private boolean saidUnlocked;
    private boolean displaced;

    private Writer(FileSystem drive, Archive archive, FileSystem.Hold lock, JournalPlaces places, Reserve reserve) {
        this.drive = drive;
        this.archive = archive;
        this.lock = lock;
        this.places = places;
        this.reserve = reserve;
    }

    /** What a later version wrote is not touched. */
    public static final class Later extends IOException {
        private static final long serialVersionUID = 1;

        Later(String name) {
            super(name + " was written by a later version of takeup; it is not touched");
        }
    }

    /** Takes a data folder to write in; it is made if it is not there. */
    public static Writer take(Path folder) throws IOException {
        return take(FileSystem.REAL, folder);
    }

    /** Takes the folder of an archive to write in, as that archive's writer. */
    public static Writer take(Archive archive) throws IOException {
        return take(FileSystem.REAL, archive.folder(), archive.writer());
    }

    static Writer take(FileSystem drive, Path folder) throws IOException {
        return take(drive, folder, Archive.FIRST_WRITER);
    }

    private static Writer take(FileSystem drive, Path folder, String writer) throws IOException {
        List<Path> folders = Archive.folders(folder);
        for (Path one : folders) {
            Folders.make(drive, one);
        }
        Archive archive = new Archive(drive, folder, writer);
        FileSystem.Hold lock = drive.hold(lock(folder));
        try {
            // An archive of years has ten thousand names here: one look at them does for all that the start asks.
            List<String> names = new ArrayList<>();
            for (Path one : folders) {
                if (!one.equals(Archive.exports(folder))) {
                    List<String> found = Folders.sweep(drive, one);
                    names.addAll(one.startsWith(folder.resolve("rolls")) ? found : List.of());
                }
            }
            JournalPlaces places = JournalPlaces.of(drive, archive, Archive.rolls(names));
            if (places.isEmpty()) {
                // Whoever made the folders may have ended before their names were on the disk.
                for (Path one : List.of(folder.toAbsolutePath().getParent(), folder, folder.resolve("rolls"))) {
                    drive.forceNames(one);
                }
            }
            return new Writer(drive, archive, lock, places, Reserve.of(drive, folder));
        } catch (IOException | RuntimeException e) {
            lock.close();
            throw e;
        }
    }

    /** The numbers of the rolls, open and finished, that lay in the folder when it was taken. */
    public RollNumbers rolls() {
        return places.rolls();
    }

    /**
     * Removes what a program that died left half written beside exports and reviews. Nobody reads it, and each of the
     * two folders has a file for every roll ever shot: for a quiet moment, not for the start.
     */
    public void sweep() throws IOException {
        Folders.sweep(drive, Archive.exports(archive.folder()));
        Folders.sweep(drive, Archive.reviews(archive.folder()));
    }

    private static Path lock(Path folder) {
        return folder.resolve("lock");
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
     * Writes a step down. Once this returns, all of it is on the disk. The day goes first: a finished roll's change
     * must never be unknown to it. A frame that is moved is written where it goes before it is taken from where it was.
     *
     * <p>After an exception the same step is handed in again; what of it was written already is not written twice.
     *
     * @throws IllegalArgumentException before anything is written, for an event that could not be read back
     */
    public void append(Batch batch) throws IOException {
        if (drive.kind(archive.folder()) != FileSystem.Kind.FOLDER) {
            throw new NoSuchFileException(archive.folder().toString());
        }
        int year = batch.at.getYear();
        if (year < 0 || year > 9999) {
            throw new IOException("the clock says the year " + year + "; set it right");
        }
        keepLock();
        Map<Path, List<String>> texts = new LinkedHashMap<>();
        if (!batch.day.isEmpty()) {
            texts.put(
                    archive.day(batch.at.toLocalDate()),
                    batch.day.stream().map(DayEventJson::text).toList());
        }
        for (Map.Entry<RollId, List<RollEvent>> roll : batch.rolls.entrySet()) {
            Path open = archive.open(roll.getKey());
            texts.put(
                    files.containsKey(open) ? open : archive.where(roll.getKey()),
                    roll.getValue().stream().map(RollEventJson::text).toList());
        }
        texts.values().forEach(it -> it.forEach(event -> JournalLines.of(1, batch.step, batch.at, event)));
        undisturbed(() -> {
            try {
                write(batch, texts);
            } catch (IOException e) {
                IOException trouble = named(e);
                if (!IoErrorText.isFull(trouble) || !reserve.release()) {
                    throw trouble;
                }
                remarks.add("the disk is full: what was kept in reserve takes the next frames; free some space now");
                saidLow = true;
                write(batch, texts);
            }
        });
    }

    private interface Writing {
        void run() throws IOException;
    }

    /** An interrupt that came in before would close the files: it is put off until they are written. */
    private static void undisturbed(Writing writing) throws IOException {
        boolean interrupted = Thread.interrupted();
        try {
            writing.run();
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private IOException named(IOException e) {
        return IoErrorText.named(e, drive.room(archive.folder()));
    }

    /**
     * Without its file the lock is there and nobody sees it. A frame is refused only where another program has come in.
     */
    private void keepLock() throws IOException {
        if (lock.isSeen()) {
            return;
        }
        lock.close();
        try {
            lock = drive.hold(lock(archive.folder()));
            remarks.add("the lock file was deleted or replaced by another program; it is back");
            saidUnlocked = false;
        } catch (FolderInUse e) {
            throw e;
        } catch (IOException e) {
            if (!saidUnlocked) {
                remarks.add(
                        "the lock file was deleted and cannot be made again: start no second takeup in this folder");
            }
            saidUnlocked = true;
        }
    }

    /**
     * Writes down what was decided about the scans of a roll. Once this returns, all of it is on the disk. Reviews are
     * not undone but decided anew, so their step is a count of their own. On a full disk they are refused: the reserve
     * is the frames'.
     */
    public void append(RollId roll, OffsetDateTime at, List<ReviewEvent> events) throws IOException {
        List<String> texts = events.stream().map(ReviewEventJson::text).toList();
        texts.forEach(it -> JournalLines.of(1, 1, at, it));
        keepLock();
        undisturbed(() -> {
            try {
                JournalFile file = file(archive.review(roll));
                remark(archive.review(roll), file.append(file.nextStep(), at, texts));
            } catch (IOException e) {
                throw named(e);
            }
        });
    }

    private void write(Batch batch, Map<Path, List<String>> texts) throws IOException {
        if (!batch.day.isEmpty() && !files.containsKey(archive.day(batch.at.toLocalDate()))) {
            turn(batch.at.toLocalDate());
        }
        for (Map.Entry<Path, List<String>> text : texts.entrySet()) {
            remark(text.getKey(), file(text.getKey()).append(batch.step, batch.at, text.getValue()));
        }
        if (displaced) {
            mendAll();
        }
        sayGone();
        if (!saidLow && reserve.isLow()) {
            saidLow = true;
            remarks.add("less than 50 MB are free on this disk: free some space before it is full");
        }
    }

    private void sayGone() {
        try {
            places.gone().ifPresent(remarks::add);
        } catch (IOException e) {
            // again with the next step
        }
    }

    /** Where one journal was laid hands on, the others may have been too. The step itself is on the disk by now. */
    private void mendAll() {
        try {
            for (Map.Entry<Path, JournalFile> file : files.entrySet()) {
                remark(file.getKey(), file.getValue().mend());
            }
            displaced = false;
        } catch (IOException e) {
            // again with the next step
        }
    }

    /**
     * A day that is not the newest is found again at the next start by this mark; one that is left behind costs a look.
     */
    private void turn(LocalDate date) throws IOException {
        List<LocalDate> days = archive.days();
        if (!days.isEmpty() && days.get(days.size() - 1).isAfter(date)) {
            Folders.replace(drive, archive.wentBackFile(), date.toString().getBytes(StandardCharsets.US_ASCII));
        }
    }

    private JournalFile file(Path path) throws IOException {
        JournalFile file = files.get(path);
        if (file == null) {
            file = JournalFile.open(drive, path);
            files.put(path, file);
        }
        return file;
    }

    private void remark(Path path, JournalFile.Anew anew) {
        if (anew == JournalFile.Anew.DISPLACED) {
            displaced = true;
            remarks.add(path.getFileName()
                    + " was moved, deleted or changed by another program; all of it was written anew");
        } else if (anew == JournalFile.Anew.BROKEN) {
            remarks.add("the disk reported an error in " + path.getFileName()
                    + "; all of it was written anew and is safe: copy the data folder to another disk");
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
            drive.delete(archive.draftFile());
        } else {
            Folders.replace(drive, archive.draftFile(), text.getBytes(StandardCharsets.UTF_8));
        }
    }

    /** Writes the export of a roll: the old one or the new one is there, never half of one. */
    public void export(RollId roll, String json) throws IOException {
        refuseLater(roll);
        try {
            Folders.replace(
                    drive,
                    Archive.exports(archive.folder()).resolve(roll + ".json"),
                    json.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw named(e);
        }
    }

    /**
     * Puts a roll's journal with the finished or the open ones; where it lies there already it stays. Where it lies in
     * both places the longer one goes there, and the other is kept aside.
     */
    public void settle(RollId roll, boolean isFinished) throws IOException {
        refuseLater(roll);
        Path from = isFinished ? archive.open(roll) : archive.finished(roll);
        Path to = isFinished ? archive.finished(roll) : archive.open(roll);
        JournalFile file = files.get(from);
        if (file != null) {
            remark(from, file.mend());
        }
        if (drive.kind(from) != FileSystem.Kind.NOTHING) {
            hand(roll, from, to);
        } else if (drive.kind(to) == FileSystem.Kind.NOTHING) {
            return;
        }
        drive.forceNames(to.getParent());
        drive.forceNames(from.getParent());
    }

    private void hand(RollId roll, Path from, Path to) throws IOException {
        boolean twice = drive.kind(to) != FileSystem.Kind.NOTHING;
        Path longer = twice ? archive.where(roll) : from;
        for (Path path : List.of(from, to)) {
            JournalFile open = files.remove(path);
            if (open != null) {
                open.close();
            }
        }
        if (twice) {
            Quarantine.shorter(drive, longer.equals(from) ? to : from, longer);
        }
        if (longer.equals(from)) {
            Folders.handOver(drive, from, to);
        }
    }

    private void refuseLater(RollId roll) throws IOException {
        if (!files.containsKey(archive.open(roll))
                && !files.containsKey(archive.finished(roll))
                && archive.isLater(roll)) {
            throw new Later(roll + ".journal");
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
            lock.close();
        }
    }
}
