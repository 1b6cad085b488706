package takeup.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import takeup.day.DayRecord;
import takeup.disk.FileSystem;
import takeup.disk.Folders;
import takeup.disk.IoErrorText;
import takeup.disk.Quarantine;
import takeup.review.ReviewEvent;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.RollNumbers;
import takeup.roll.RollRecord;

/**
 * The data folder, to read: {@code rolls/open}, {@code rolls/finished}, {@code days}, {@code reviews}. Reading changes
 * nothing.
 */
public final class Archive {
    private static final String ENDING = ".journal";

    private final FileSystem drive;
    /** The letters of the writer whose days have no letters in their names. */
    public static final String FIRST_WRITER = "R";

    private final Path folder;
    private final String writer;

    /** The data folder of that name, which need not be there, as the first writer sees it. */
    public Archive(Path folder) {
        this(folder, FIRST_WRITER);
    }

    /** The same as one of several writers sees it: all rolls, and this writer's own days. */
    public Archive(Path folder, String writer) {
        this(FileSystem.REAL, folder, writer);
    }

    Archive(FileSystem drive, Path folder) {
        this(drive, folder, FIRST_WRITER);
    }

    Archive(FileSystem drive, Path folder, String writer) {
        this.drive = drive;
        this.folder = folder;
        this.writer = writer;
    }

    /**
     * The letters that this writer's roll numbers begin with, and that its days bear unless they are those of the
     * first.
     */
    public String writer() {
        return writer;
    }

    /** The writers that have rolls or days here, in the order of their letters. */
    public Set<String> writers() throws IOException {
        Set<String> all = new TreeSet<>();
        openRolls().forEach(it -> all.add(it.letters()));
        finishedRolls().forEach(it -> all.add(it.letters()));
        for (String name : Folders.names(drive, folder.resolve("days"), ENDING)) {
            dayWriter(name).ifPresent(all::add);
        }
        return all;
    }

    /** Whose day a file is by its name: 2026-09-12 the first writer's, 2026-09-12-AB the one of AB. */
    private static Optional<String> dayWriter(String name) {
        if (FastIsoParser.date(name).isPresent()) {
            return Optional.of(FIRST_WRITER);
        }
        String letters = name.length() > 11
                        && name.charAt(10) == '-'
                        && FastIsoParser.date(name.substring(0, 10)).isPresent()
                ? name.substring(11)
                : "";
        return RollId.parse(letters + "1")
                .filter(it -> it.letters().equals(letters) && !letters.equals(FIRST_WRITER))
                .map(RollId::letters);
    }

    private String ending() {
        return writer.equals(FIRST_WRITER) ? "" : "-" + writer;
    }

    /** The folders that a data folder always has, itself first; {@link #reviews} comes with the first scans. */
    static List<Path> folders(Path folder) {
        return List.of(
                folder,
                folder.resolve("rolls").resolve("open"),
                folder.resolve("rolls").resolve("finished"),
                folder.resolve("days"),
                exports(folder));
    }

    /** Where the finished rolls lie as JSON. */
    static Path exports(Path folder) {
        return folder.resolve("exports");
    }

    /** The data folder. */
    public Path folder() {
        return folder;
    }

    /**
     * What a journal held, or what of it could be read.
     *
     * @param records the records, in order
     * @param problems each with file, line and what it means
     */
    public record Opened<T>(List<T> records, List<String> problems) {}

    Path open(RollId roll) {
        return folder.resolve("rolls").resolve("open").resolve(roll + ENDING);
    }

    Path finished(RollId roll) {
        return folder.resolve("rolls").resolve("finished").resolve(roll + ENDING);
    }

    Path day(LocalDate date) {
        return folder.resolve("days").resolve(date + ending() + ENDING);
    }

    Path wentBackFile() {
        return folder.resolve("went-back-to");
    }

    /**
     * The day that was written on when the clock had gone back, so that it was not the newest; empty where it never
     * did.
     */
    public Optional<LocalDate> wentBackTo() {
        try {
            return drive.kind(wentBackFile()) == FileSystem.Kind.FILE && drive.size(wentBackFile()) == 10
                    ? FastIsoParser.date(new String(drive.read(wentBackFile()), StandardCharsets.US_ASCII))
                    : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Where it lies what was decided about scans. */
    static Path reviews(Path folder) {
        return folder.resolve("reviews");
    }

    Path review(RollId roll) {
        return reviews(folder).resolve(roll + ENDING);
    }

    /** The numbers of the rolls about whose scans something was decided. */
    public List<RollId> reviewedRolls() throws IOException {
        return ids(reviews(folder));
    }

    /** What was decided about the scans of a roll; nothing and no problem where there is no such file. */
    public Opened<ReviewEvent> reviewOf(RollId roll) {
        try {
            return drive.kind(review(roll)) == FileSystem.Kind.NOTHING
                    ? new Opened<>(List.of(), List.of())
                    : read(
                            review(roll),
                            it -> ReviewEventJson.event(new Fields(it.whole()), it::event),
                            (records, gap) -> "");
        } catch (IOException e) {
            return new Opened<>(List.of(), List.of(roll + ENDING + ":1: cannot be read: " + IoErrorText.words(e)));
        }
    }

    Path draftFile() {
        return folder.resolve("draft");
    }

    /** What was being typed when the program ended last; empty if nothing was, or it cannot be read. */
    public Optional<String> draft() {
        try {
            if (drive.kind(draftFile()) != FileSystem.Kind.FILE || drive.size(draftFile()) > 200_000) {
                return Optional.empty();
            }
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(drive.read(draftFile())))
                    .toString();
            return Optional.of(text).filter(it -> !it.isBlank());
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** The numbers of the rolls whose journals lie with the open ones. */
    public List<RollId> openRolls() throws IOException {
        return ids(folder.resolve("rolls").resolve("open"));
    }

    /** The numbers of the finished rolls, by the names of their files. */
    public List<RollId> finishedRolls() throws IOException {
        return ids(folder.resolve("rolls").resolve("finished"));
    }

    /** The numbers of all rolls, open and finished, by the names of their files. */
    public RollNumbers rolls() throws IOException {
        List<String> names = new ArrayList<>(drive.names(folder.resolve("rolls").resolve("open")));
        names.addAll(drive.names(folder.resolve("rolls").resolve("finished")));
        return rolls(names);
    }

    /** The numbers of the rolls whose journals are among files of these names. */
    static RollNumbers rolls(List<String> names) {
        return RollNumbers.named(Folders.names(names, ENDING));
    }

    private List<RollId> ids(Path in) throws IOException {
        List<RollId> ids = new ArrayList<>();
        for (String name : Folders.names(drive, in, ENDING)) {
            id(name).ifPresent(ids::add);
        }
        return ids;
    }

    private static Optional<RollId> id(String name) {
        return RollId.parse(name).filter(it -> it.toString().equals(name));
    }

    /** Whether a folder of a data folder holds journals and nothing else. */
    static boolean holdsJournals(Path root, Path folder) {
        return folder.equals(root.resolve("days"))
                || folder.equals(reviews(root))
                || folder.startsWith(root.resolve("rolls"));
    }

    /** Whether a file there has a name that makes it a journal. */
    static boolean isJournal(Path root, Path folder, String name) {
        String front = name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : "";
        return folder.equals(root.resolve("days"))
                ? dayWriter(front).isPresent()
                : id(front).isPresent();
    }

    /** What lies in the data folder beside what is read, in words; often nothing. */
    public List<String> leftOvers() throws IOException {
        return new StrayFiles(drive, folder).find();
    }

    /** The dates of the days that have a journal of this writer, oldest first. */
    public List<LocalDate> days() throws IOException {
        List<LocalDate> dates = new ArrayList<>();
        for (String name : Folders.names(drive, folder.resolve("days"), ENDING)) {
            if (dayWriter(name).equals(Optional.of(writer))) {
                FastIsoParser.date(name.substring(0, 10)).ifPresent(dates::add);
            }
        }
        return dates;
    }

    /** The records of a roll, wherever its journal lies; where it lies twice, of the longer one. */
    public Opened<RollRecord> roll(RollId id) {
        Path path;
        boolean twice;
        try {
            path = where(id);
            twice = liesTwice(id);
        } catch (IOException e) {
            return new Opened<>(List.of(), List.of(id + ENDING + ":1: cannot be read: " + IoErrorText.words(e)));
        }
        Opened<RollRecord> found = roll(path);
        if (!twice) {
            return found;
        }
        if (!id.letters().equals(writer) && isBeginningOfOther(id)) {
            // Copied from another laptop before and after it was finished there; that laptop clears up, not this one.
            return found;
        }
        List<String> problems = new ArrayList<>(found.problems);
        problems.addAll(roll(path.equals(open(id)) ? finished(id) : open(id)).problems);
        problems.add(id + ENDING + ":1: it lies with the open and with the finished rolls; the longer one counts");
        return new Opened<>(found.records, problems);
    }

    private boolean isBeginningOfOther(RollId id) {
        try {
            return Quarantine.isBeginning(drive, open(id), Folders.read(drive, finished(id)))
                    || Quarantine.isBeginning(drive, finished(id), Folders.read(drive, open(id)));
        } catch (IOException e) {
            return false;
        }
    }

    /** Where a roll's journal lies, or would be begun; where it lies twice, the place of the longer one. */
    Path where(RollId id) throws IOException {
        if (drive.kind(finished(id)) == FileSystem.Kind.NOTHING) {
            return open(id);
        }
        return liesTwice(id)
                        && roll(open(id)).records.size()
                                >= roll(finished(id)).records.size()
                ? open(id)
                : finished(id);
    }

    private boolean liesTwice(RollId id) throws IOException {
        return drive.kind(open(id)) != FileSystem.Kind.NOTHING && drive.kind(finished(id)) != FileSystem.Kind.NOTHING;
    }

    private Opened<RollRecord> roll(Path path) {
        Opened<RollRecord> found = read(
                path,
                it -> new RollRecord(it.step(), it.at(), RollEventJson.event(new Fields(it.whole()), it::event)),
                MissingFrames::words);
        String name = path.getFileName().toString();
        boolean isOther = !found.records.isEmpty()
                && found.records.get(0).event() instanceof RollEvent.Loaded loaded
                && !name.equals(loaded.id() + ENDING);
        return !isOther
                ? found
                : new Opened<>(
                        List.of(),
                        List.of(name + ":2: by its records this is roll "
                                + ((RollEvent.Loaded) found.records.get(0).event()).id()
                                + "; give the file that name back"));
    }

    /** The records of a day. */
    public Opened<DayRecord> dayOf(LocalDate date) {
        return read(
                day(date),
                it -> new DayRecord(it.step(), it.at(), DayEventJson.event(new Fields(it.whole()), it::event)),
                (records, gap) -> "");
    }

    /** Whether a later version wrote a journal: nothing is written to such a one, and it is left where it lies. */
    public boolean isLater(RollId id) throws IOException {
        Path path = where(id);
        return drive.kind(path) == FileSystem.Kind.FILE
                && JournalLines.read(path.getFileName().toString(), Folders.read(drive, path))
                        .newer();
    }

    private interface Decoder<T> {
        T decode(JournalLines.Line line);
    }

    /** What the records before and after a gap, at that place in the list, say of what is missing. */
    private interface Gap<T> {
        String words(List<T> records, int at);
    }

    private <T> Opened<T> read(Path path, Decoder<T> decoder, Gap<T> gap) {
        String name = path.getFileName().toString();
        byte[] bytes;
        try {
            bytes = Folders.read(drive, path);
        } catch (IOException e) {
            return new Opened<>(List.of(), List.of(name + ":1: cannot be read: " + IoErrorText.words(e)));
        }
        JournalLines.Content content = JournalLines.read(name, bytes);
        List<String> problems = new ArrayList<>(content.problems());
        if (content.newer()) {
            problems.add(name
                    + ":1: a later version of takeup wrote this file; what this one does not know is "
                    + "passed over, and nothing is written to it");
        }
        List<T> records = new ArrayList<>();
        List<Integer> gaps = new ArrayList<>();
        List<String> heads = new ArrayList<>();
        int before = 0;
        for (JournalLines.Line line : content.lines()) {
            if (line.n() > before + 1) {
                gaps.add(records.size());
                heads.add(name + ":" + line.number() + ": in front of this line "
                        + (line.n() - before == 2
                                ? "record " + (before + 1) + " is"
                                : "records " + (before + 1) + " to " + (line.n() - 1) + " are")
                        + " missing");
            }
            before = line.n();
            try {
                records.add(decoder.decode(line));
            } catch (Fields.Unreadable | IllegalArgumentException e) {
                problems.add(name + ":" + line.number() + ": record " + line.n()
                        + " cannot be understood and is left out: " + e.getMessage());
            }
        }
        for (int i = 0; i < gaps.size(); i++) {
            problems.add(heads.get(i) + gap.words(records, gaps.get(i)) + "; the others are whole");
        }
        return new Opened<>(records, problems);
    }
}
