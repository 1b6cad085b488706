package takeup.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import takeup.disk.FileSystem;
import takeup.disk.Folders;
import takeup.disk.IoErrorText;
import takeup.disk.Reserve;
import takeup.records.ReviewEventJson;
import takeup.review.ReviewEvent;
import takeup.roll.RollId;
import takeup.roll.RollNumbers;

/**
 * The one writer of a data folder. It holds the folder's lock, appends to the journals and forces what it appended; it
 * never rewrites a line. One thread uses it, and nobody interrupts that thread: an interrupt would close the files.
 */
public final class Writer implements AutoCloseable {
    /** At the end it is tried so often to take back what was refused and could not be taken back yet. */
    private static final int LAST_ATTEMPTS = 5;

    private final FileSystem drive;
    private final Archive archive;
    private final DataLayout layout;
    private final JournalPlaces places;
    private final OpenJournals journals;
    private final JournalMoves moves;
    private final FolderLock lock;
    private final Reserve reserve;
    private final List<String> remarks;
    /** Rolls whose journals went to the open ones for the step in hand. */
    private final List<RollId> reopened = new ArrayList<>();

    private final FolderWatch watch;

    private Writer(FileSystem drive, Archive archive, JournalPlaces places, FolderLock lock, List<String> remarks) {
        this.drive = drive;
        this.archive = archive;
        this.layout = archive.layout();
        this.places = places;
        this.lock = lock;
        this.remarks = remarks;
        this.journals = new OpenJournals(drive, new UnfinishedStep(drive, layout), remarks);
        this.moves = new JournalMoves(drive, archive, journals);
        this.reserve = Reserve.of(drive, layout.root());
        this.watch = new FolderWatch(places, reserve);
    }

    /** Takes a data folder to write in; it is made if it is not there. */
    public static Writer take(Path folder) throws IOException {
        return take(FileSystem.REAL, folder);
    }

    /** Takes the folder of an archive to write in, as that archive's writer. */
    public static Writer take(Archive archive) throws IOException {
        return take(archive.drive(), archive.layout());
    }

    static Writer take(FileSystem drive, Path folder) throws IOException {
        return take(drive, DataLayout.of(folder));
    }

    private static Writer take(FileSystem drive, DataLayout layout) throws IOException {
        JournalPlaces.make(drive, layout);
        List<String> remarks = new ArrayList<>();
        FolderLock lock = new FolderLock(drive, layout.lock(), remarks);
        try {
            remarks.addAll(new UnfinishedStep(drive, layout).takeBack());
            Folders.sweep(drive, layout.root());
            List<String> open = Folders.sweep(drive, layout.openRolls());
            Folders.sweep(drive, layout.days());
            JournalPlaces places = JournalPlaces.of(drive, layout, DataLayout.rolls(open));
            if (places.isEmpty()) {
                // Whoever made the folders may have ended before their names were on the disk.
                Path root = layout.root();
                for (Path one : List.of(root.toAbsolutePath().getParent(), root, root.resolve("rolls"))) {
                    drive.forceNames(one);
                }
            }
            return new Writer(drive, new Archive(drive, layout), places, lock, remarks);
        } catch (IOException | RuntimeException e) {
            lock.close();
            throw e;
        }
    }

    /** The numbers of the rolls, open and finished, that lay in the folder when it was taken. */
    public RollNumbers rolls() {
        return places.rolls();
    }

    /** Reads the names of all finished rolls, unless somebody asked for one of {@link #rolls} before. */
    public void know() throws IOException {
        places.know();
    }

    /** Removes what a program that died left half written where each roll ever shot has a file: nobody reads it. */
    public void sweep() throws IOException {
        for (Path folder : List.of(layout.finishedRolls(), layout.exports(), layout.reviews())) {
            if (drive.kind(folder) == FileSystem.Kind.FOLDER) {
                Folders.sweep(drive, folder);
            }
        }
    }

    /**
     * Writes a step down. Once this returns, all of it is on the disk, and after an exception nothing of it. The day
     * goes first: a finished roll's change must never be unknown to it; but a roll is begun before the bag counts it. A
     * frame that is moved is written where it goes before it is taken from where it was. A roll that is written to lies
     * with the open ones, so that whatever ends the program, the next start looks at it and puts it where its last
     * record says.
     *
     * <p>Where the disk does not even let a refused step be taken back, every other one is refused until it does.
     *
     * @throws IllegalArgumentException before anything is written, for an event that could not be read back
     */
    public void append(Batch batch) throws IOException {
        if (!Folders.isFolder(drive, layout.root())) {
            throw new NoSuchFileException(layout.root().toString());
        }
        int year = batch.at().getYear();
        if (year < 0 || year > 9999) {
            throw new IOException("the clock says the year " + year + "; set it right");
        }
        lock.renew();
        places.know(batch.rolls());
        Map<Path, List<String>> texts = batch.texts(layout);
        texts.values().forEach(it -> it.forEach(event -> JournalLines.of(1, batch.step(), batch.at(), event)));
        wholly(() -> {
            try {
                write(batch, texts);
            } catch (IOException e) {
                if (!IoErrorText.isFull(named(e)) || !reserve.release()) {
                    throw e;
                }
                remarks.add("the disk is full: what was kept in reserve takes the next frames; free some space now");
                watch.roomIsTold();
                write(batch, texts);
            }
        });
    }

    /** Writes all of it, or takes back what was written. */
    private void wholly(Writing writing) throws IOException {
        undisturbed(() -> {
            try {
                journals.takeBack();
                writing.run();
            } catch (IOException e) {
                takeBack();
                throw named(e);
            } catch (RuntimeException e) {
                takeBack();
                throw e;
            }
        });
    }

    private void takeBack() {
        try {
            journals.takeBack();
            for (RollId roll : List.copyOf(reopened)) {
                moves.toFinished(roll);
            }
            reopened.clear();
        } catch (IOException e) {
            // tried again before anything else is written, and at the next start
        }
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
        return IoErrorText.named(e, drive.room(layout.root()));
    }

    /**
     * Writes down what was decided about the scans of a roll. Once this returns, all of it is on the disk. Reviews are
     * not undone but decided anew, so their step is a count of their own. On a full disk they are refused: the reserve
     * is the frames'.
     */
    public void append(RollId roll, OffsetDateTime at, List<ReviewEvent> events) throws IOException {
        List<String> texts = events.stream().map(ReviewEventJson::text).toList();
        texts.forEach(it -> JournalLines.of(1, 1, at, it));
        Folders.refuseLink(drive, layout.reviews());
        lock.renew();
        wholly(() -> journals.append(layout.review(roll), at, texts));
    }

    private void write(Batch batch, Map<Path, List<String>> texts) throws IOException {
        LocalDate date = batch.at().toLocalDate();
        Path day = layout.day(date);
        if (texts.containsKey(day) && !journals.isOpen(day)) {
            markIfNotTheNewest(date);
        }
        for (RollId roll : batch.rolls()) {
            if (moves.reopen(roll)) {
                reopened.add(roll);
            }
        }
        journals.append(batch.step(), batch.at(), texts);
        reopened.clear();
        places.noteNewest(batch.rolls());
        watch.written(batch.at());
        if (journals.mendAllIfOneWasDisplaced()) {
            watch.alarmed();
        }
    }

    /**
     * A day that is not the newest is found again at the next start by this mark; one that is left behind costs a look.
     */
    private void markIfNotTheNewest(LocalDate date) throws IOException {
        List<LocalDate> days = archive.days();
        if (!days.isEmpty() && days.get(days.size() - 1).isAfter(date)) {
            Folders.replace(drive, layout.wentBackTo(), date.toString().getBytes(StandardCharsets.US_ASCII));
        }
    }

    /**
     * What went wrong since this was last asked, and was put right without losing anything: sentences, often none. It
     * looks for more, so it is asked once a frame is acknowledged.
     */
    public List<String> remarks() {
        watch.look(remarks);
        List<String> all = List.copyOf(remarks);
        remarks.clear();
        return all;
    }

    /** Keeps what is being typed; nothing is kept of an empty line. */
    public void draft(String text) throws IOException {
        new DraftFile(drive, layout.draft()).keep(text);
    }

    /** Writes the export of a roll: the old one or the new one is there, never half of one. */
    public void export(RollId roll, String json) throws IOException {
        moves.refuseLater(roll);
        try {
            Folders.refuseLink(drive, layout.exports());
            Folders.replace(drive, layout.export(roll), json.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw named(e);
        }
    }

    /** Whether a roll has an export, as one has that was finished once. */
    public boolean isExported(RollId roll) throws IOException {
        return drive.kind(layout.export(roll)) == FileSystem.Kind.FILE;
    }

    /** Puts a roll's journal with the finished ones. */
    public void settleFinished(RollId roll) throws IOException {
        moves.toFinished(roll);
    }

    /** Puts a roll's journal with the open ones; where it lies there already it stays. */
    public void settleOpen(RollId roll) throws IOException {
        moves.toOpen(roll);
    }

    /** Puts a roll's journal with the open ones if it lies with the finished ones; most often it does not. */
    public void reopen(RollId roll) throws IOException {
        moves.reopen(roll);
    }

    @Override
    public void close() throws IOException {
        try (lock) {
            for (int attempt = 0; attempt < LAST_ATTEMPTS && journals.holdsRefused(); attempt++) {
                takeBack();
            }
            journals.close();
        }
    }
}
