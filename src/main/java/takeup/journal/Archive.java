package takeup.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import takeup.day.DayRecord;
import takeup.disk.FileSystem;
import takeup.disk.Folders;
import takeup.records.FastIsoParser;
import takeup.review.ReviewEvent;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.RollNumbers;
import takeup.roll.RollRecord;
import takeup.text.StableId;

/**
 * The data folder, to read: {@code rolls/open}, {@code rolls/finished}, {@code days}, {@code reviews}. Reading changes
 * nothing, and sees nothing of a step that is not whole: what is being written, or what the next start takes back.
 */
public final class Archive {
    /** The letters of the writer whose days have no letters in their names. */
    public static final String FIRST_WRITER = DataLayout.FIRST_WRITER;

    private final FileSystem drive;
    private final DataLayout layout;

    /** The data folder of that name, which need not be there, as the first writer sees it. */
    private volatile Optional<String> id = Optional.empty();

    public Archive(Path folder) {
        this(folder, FIRST_WRITER);
    }

    /** The same as one of several writers sees it: all rolls, and this writer's own days. */
    public Archive(Path folder, String writer) {
        this(FileSystem.REAL, new DataLayout(folder, writer));
    }

    Archive(FileSystem drive, Path folder) {
        this(drive, DataLayout.of(folder));
    }

    Archive(FileSystem drive, DataLayout layout) {
        this.drive = drive;
        this.layout = layout;
    }

    DataLayout layout() {
        return layout;
    }

    FileSystem drive() {
        return drive;
    }

    /** The data folder. */
    public Path folder() {
        return layout.root();
    }

    /**
     * The letters that this writer's roll numbers begin with, and that its days bear unless they are those of the
     * first.
     */
    public String writer() {
        return layout.writer();
    }

    /** The writers that have rolls or days here, in the order of their letters. */
    public Set<String> writers() throws IOException {
        Set<String> all = new TreeSet<>();
        openRolls().forEach(it -> all.add(it.letters()));
        finishedRolls().forEach(it -> all.add(it.letters()));
        for (String name : names(layout.days())) {
            DataLayout.dayWriter(name).ifPresent(all::add);
        }
        return all;
    }

    private List<String> names(Path in) throws IOException {
        List<String> names = Folders.names(unfinished().confirmedNames(in), DataLayout.ENDING);
        names.sort(null);
        return names;
    }

    private UnfinishedStep unfinished() {
        return new UnfinishedStep(drive, layout);
    }

    /**
     * The day that was written on when the clock had gone back, so that it was not the newest; empty where it never
     * did.
     */
    public Optional<LocalDate> wentBackTo() {
        Path file = layout.wentBackTo();
        try {
            return drive.kind(file) == FileSystem.Kind.FILE && drive.size(file) == 10
                    ? FastIsoParser.date(new String(drive.read(file), StandardCharsets.US_ASCII))
                    : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** The roll of this writer with the highest number ever, whether its journal is there still or not. */
    public Optional<RollId> lastRoll() {
        return JournalPlaces.newest(drive, layout);
    }

    /** The numbers of the rolls about whose scans something was decided. */
    public RollNumbers reviewedRolls() throws IOException {
        return DataLayout.rolls(drive.names(layout.reviews()));
    }

    /** What was decided about the scans of a roll; nothing and no problem where there is no such file. */
    public JournalRecords<ReviewEvent> reviewOf(RollId roll) {
        Path file = layout.review(roll);
        try {
            return drive.kind(file) == FileSystem.Kind.NOTHING
                    ? new JournalRecords<>(List.of(), List.of())
                    : new RecordReader.OfReview().read(unfinished(), file);
        } catch (IOException e) {
            return RollJournals.unreadable(roll, e);
        }
    }

    /** Whether a journal of a roll lies here, whatever is in it. */
    public boolean holds(RollId roll) throws IOException {
        return new RollJournals(drive, layout).holds(roll);
    }

    /** Whether the last line before the program ended is on the disk in part only. */
    public boolean holdsUnfinishedStep() throws IOException {
        return drive.kind(layout.unfinished()) != FileSystem.Kind.NOTHING;
    }

    /** What was being typed when the program ended last; empty if nothing was, or it cannot be read. */
    public Optional<String> draft() {
        return new DraftFile(drive, layout.draft()).read();
    }

    /** The numbers of the rolls whose journals lie with the open ones. */
    public List<RollId> openRolls() throws IOException {
        return ids(layout.openRolls());
    }

    /** The numbers of the finished rolls, by the names of their files. */
    public List<RollId> finishedRolls() throws IOException {
        return ids(layout.finishedRolls());
    }

    /** The numbers of all rolls, open and finished, by the names of their files. */
    public RollNumbers rolls() throws IOException {
        List<String> names = new ArrayList<>(unfinished().confirmedNames(layout.openRolls()));
        names.addAll(drive.names(layout.finishedRolls()));
        return DataLayout.rolls(names);
    }

    /**
     * What other programs know this data folder by: made of its first roll and when that was loaded, so that it is the
     * same for every copy of the folder on every machine. Empty while there is no roll.
     */
    public Optional<String> id() {
        if (id.isEmpty()) {
            id = madeId();
        }
        return id;
    }

    private Optional<String> madeId() {
        try {
            List<RollId> all = new ArrayList<>(rolls());
            Collections.sort(all);
            // The first writer's come first: another's begin later, whatever their letters.
            all.sort((a, b) -> Boolean.compare(
                    !a.letters().equals(FIRST_WRITER), !b.letters().equals(FIRST_WRITER)));
            for (RollId first : all) {
                Optional<Roll> roll = Roll.of(roll(first).records());
                if (roll.isPresent()) {
                    return Optional.of(StableId.of("data folder that begins with " + first + ", loaded at "
                            + roll.get().loadedAt().toEpochSecond()));
                }
            }
        } catch (IOException e) {
            // Whoever reads the rolls themselves says so.
        }
        return Optional.empty();
    }

    /** The numbers of all rolls, and by what is known whether they were written to. */
    public RollStamps stamps() throws IOException {
        return RollStamps.of(drive, layout);
    }

    /** The files of the index, which is no record of anything. */
    public IndexFiles indexFiles() {
        return new IndexFiles(drive, layout.index());
    }

    private List<RollId> ids(Path in) throws IOException {
        List<RollId> ids = new ArrayList<>();
        for (String name : names(in)) {
            Optional<RollId> id = DataLayout.roll(name);
            if (id.isPresent()) {
                ids.add(id.get());
            }
        }
        return ids;
    }

    /** What lies in the data folder beside what is read, in words; often nothing. */
    public List<String> leftOvers() throws IOException {
        return new StrayFiles(drive, layout).find();
    }

    /** The dates of the days that have a journal of this writer, oldest first. */
    public List<LocalDate> days() throws IOException {
        List<LocalDate> dates = new ArrayList<>();
        for (String name : names(layout.days())) {
            Optional<String> dayWriter = DataLayout.dayWriter(name);
            if (dayWriter.isPresent() && dayWriter.get().equals(writer())) {
                dates.add(FastIsoParser.date(name.substring(0, 10)).orElseThrow());
            }
        }
        return dates;
    }

    /** Where the export of a roll lies. */
    public Path export(RollId id) {
        return layout.export(id);
    }

    /** Where the journal of a finished roll lies. */
    public Path finished(RollId id) {
        return layout.finished(id);
    }

    /** The records of a day. */
    public JournalRecords<DayRecord> dayOf(LocalDate date) {
        return new RecordReader.OfDay().read(unfinished(), layout.day(date));
    }

    /** The records of a roll, wherever its journal lies; where it lies twice, of the longer one. */
    public JournalRecords<RollRecord> roll(RollId id) {
        return new RollJournals(drive, layout).read(id);
    }

    /** Where a roll's journal lies, or would be begun; where it lies twice, the place of the longer one. */
    Path where(RollId id) throws IOException {
        return new RollJournals(drive, layout).where(id);
    }

    /** Whether a later version wrote a journal: nothing is written to such a one, and it is left where it lies. */
    public boolean isLater(RollId id) throws IOException {
        return new RollJournals(drive, layout).isLater(id);
    }
}
