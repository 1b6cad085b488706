package takeup.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.day.DayRecorded;
import takeup.roll.Recorded;
import takeup.roll.RollId;

/**
 * The data folder, to read: {@code rolls/open}, {@code rolls/finished}, {@code days}. Reading changes nothing.
 *
 * @param folder the data folder
 */
public record Archive(Path folder) {
    private static final String ENDING = ".journal";

    /**
     * What a journal held, or what of it could be read.
     *
     * @param records the records, in order
     * @param problems each with file, line and what it means
     */
    public record Opened<T>(List<T> records, List<String> problems) {
    }

    Path open(RollId roll) {
        return folder.resolve("rolls").resolve("open").resolve(roll + ENDING);
    }

    Path finished(RollId roll) {
        return folder.resolve("rolls").resolve("finished").resolve(roll + ENDING);
    }

    Path day(LocalDate date) {
        return folder.resolve("days").resolve(date + ENDING);
    }

    Path draftFile() {
        return folder.resolve("draft");
    }

    /** What was being typed when the program ended last; empty if nothing was, or it cannot be read. */
    public Optional<String> draft() {
        try {
            if (!Files.isRegularFile(draftFile()) || Files.size(draftFile()) > 200_000) {
                return Optional.empty();
            }
            return Optional.of(Files.readString(draftFile())).filter(it -> !it.isBlank());
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

    private static List<RollId> ids(Path in) throws IOException {
        List<RollId> ids = new ArrayList<>();
        for (String name : Folders.names(in, ENDING)) {
            RollId.parse(name).filter(it -> it.toString().equals(name)).ifPresent(ids::add);
        }
        return ids;
    }

    /** The dates of the days that have a journal, oldest first. */
    public List<LocalDate> days() throws IOException {
        List<LocalDate> dates = new ArrayList<>();
        for (String name : Folders.names(folder.resolve("days"), ENDING)) {
            Plainly.date(name).ifPresent(dates::add);
        }
        return dates;
    }

    /** The records of a roll, wherever its journal lies; where it lies twice, of the longer one. */
    public Opened<Recorded> roll(RollId id) {
        Path path = where(id);
        Opened<Recorded> found = roll(path);
        if (!Files.exists(open(id)) || !Files.exists(finished(id))) {
            return found;
        }
        List<String> problems = new ArrayList<>(found.problems);
        problems.addAll(roll(path.equals(open(id)) ? finished(id) : open(id)).problems);
        problems.add(id + ENDING + ":1: it lies with the open and with the finished rolls; the longer one counts");
        return new Opened<>(found.records, problems);
    }

    /** Where a roll's journal lies, or would be begun; where it lies twice, the place of the longer one. */
    Path where(RollId id) {
        if (!Files.exists(finished(id))) {
            return open(id);
        }
        return Files.exists(open(id)) && roll(open(id)).records.size() >= roll(finished(id)).records.size() ? open(id) : finished(id);
    }

    private static Opened<Recorded> roll(Path path) {
        return read(path, it -> new Recorded(it.step(), it.at(), RollEventJson.event(new Fields(it.whole()), it::event)));
    }

    /** The records of a day. */
    public Opened<DayRecorded> dayOf(LocalDate date) {
        return read(day(date), it -> new DayRecorded(it.step(), it.at(), DayEventJson.event(new Fields(it.whole()), it::event)));
    }

    private interface Decoder<T> {
        T decode(Lines.Line line);
    }

    private static <T> Opened<T> read(Path path, Decoder<T> decoder) {
        String name = path.getFileName().toString();
        List<T> records = new ArrayList<>();
        byte[] bytes;
        try {
            bytes = Folders.read(path);
        } catch (IOException e) {
            return new Opened<>(records, List.of(name + ":1: cannot be read: " + Trouble.words(e)));
        }
        Lines.Content content = Lines.read(name, bytes);
        List<String> problems = new ArrayList<>(content.problems());
        if (content.newer()) {
            problems.add(name + ":1: a later version of takeup wrote this file; what this one does not know is passed over, and nothing is written to it");
        }
        int before = 0;
        for (Lines.Line line : content.lines()) {
            if (line.n() > before + 1) {
                problems.add(name + ":" + line.number() + ": in front of this line " + (line.n() - before == 2 ? "record " + (before + 1) + " is"
                        : "records " + (before + 1) + " to " + (line.n() - 1) + " are") + " missing; the others are whole");
            }
            before = line.n();
            try {
                records.add(decoder.decode(line));
            } catch (Fields.Unreadable | IllegalArgumentException e) {
                problems.add(name + ":" + line.number() + ": record " + line.n() + " cannot be understood and is left out: " + e.getMessage());
            }
        }
        return new Opened<>(records, problems);
    }
}
