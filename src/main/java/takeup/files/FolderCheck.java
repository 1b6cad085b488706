package takeup.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import takeup.console.CommandFailed;
import takeup.disk.IoErrorText;
import takeup.journal.Archive;
import takeup.journal.InterruptedMove;
import takeup.journal.JournalRecords;
import takeup.kit.Kit;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.RollRecord;
import takeup.text.English;

/** Reads every journal, profile, order and setting of a data folder, and holds what is wrong with them. */
public final class FolderCheck {
    private final Path folder;
    private final List<String> problems = new ArrayList<>();
    private int rolls;
    private int frames;
    private int days;

    private FolderCheck(Path folder) {
        this.folder = folder;
    }

    public static FolderCheck of(Path folder) {
        FolderCheck check = new FolderCheck(folder);
        if (Files.isDirectory(folder)) {
            check.read();
        } else {
            check.problems.add(folder + " is no folder");
        }
        return check;
    }

    /** Each one sentence; empty if all is in order. */
    public List<String> problems() {
        return problems;
    }

    /** How much was read: {@code 2 rolls, 31 frames, 1 day}. */
    public String counts() {
        return Files.isDirectory(folder)
                ? English.count(rolls, "roll") + ", " + English.count(frames, "frame") + ", "
                        + English.count(days, "day")
                : "nothing read";
    }

    private void read() {
        Archive archive = new Archive(folder, Settings.of(folder).writer());
        try {
            readRolls(archive);
            readDays(archive);
            if (archive.holdsUnfinishedStep()) {
                problems.add("unfinished: the last line before the program ended was not written whole; "
                        + "the next start takes it back");
            }
            problems.addAll(archive.leftOvers());
            for (RollId id : archive.reviewedRolls()) {
                archive.reviewOf(id).problems().forEach(it -> problems.add("reviews/" + it));
            }
        } catch (IOException e) {
            problems.add(folder + ": " + IoErrorText.words(e));
        }
        problems.addAll(Settings.of(folder).problems());
        try {
            CameraClocks.of(folder);
        } catch (IOException | CommandFailed e) {
            problems.add(e.getMessage());
        }
        problems.addAll(new Kit(ProfileFiles.of(folder)).allProblems());
        problems.addAll(LabFiles.of(folder).problems());
        problems.addAll(new OrderFolder(folder, false).allOrders().problems());
    }

    private void readRolls(Archive archive) throws IOException {
        Map<RollId, List<RollRecord>> all = new TreeMap<>();
        Map<String, List<String>> inPlace = new TreeMap<>();
        List<RollId> open = archive.openRolls();
        open.forEach(it -> all.put(it, List.of()));
        archive.finishedRolls().forEach(it -> all.put(it, List.of()));
        rolls = all.size();
        for (RollId id : List.copyOf(all.keySet())) {
            JournalRecords<RollRecord> opened = archive.roll(id);
            problems.addAll(opened.problems());
            all.put(id, opened.records());
            Optional<Roll> roll = Roll.of(opened.records());
            frames += roll.map(it -> it.frames().size()).orElse(0);
            boolean isOwn = id.letters().equals(archive.writer());
            if (roll.isEmpty()
                    && !(opened.records().isEmpty() && !opened.problems().isEmpty())) {
                problems.add(id + ".journal:1: the record of its loading is missing, so the roll cannot be shown");
            } else if (roll.filter(it -> it.state() == Roll.State.FINISHED).isPresent()
                    && open.contains(id)
                    && isOwn
                    && !archive.isLater(id)) {
                problems.add(id
                        + " is finished but lies with the open rolls: the next start moves it and writes its export");
            }
            boolean isIn = roll.filter(it -> it.state() == Roll.State.OPEN).isPresent();
            if (isIn && isOwn) {
                inPlace.computeIfAbsent(roll.get().place(), it -> new ArrayList<>())
                        .add(id.toString());
            }
            if ((isIn || roll.filter(it -> it.state() == Roll.State.REWOUND).isPresent())
                    && !open.contains(id)
                    && isOwn
                    && !archive.isLater(id)) {
                problems.add(
                        id + " is " + roll.get().state() + " but lies with the finished rolls, where no start looks "
                                + "for it: move its journal from rolls/finished to rolls/open");
            }
        }
        inPlace.forEach((place, ids) -> {
            if (ids.size() > 1) {
                problems.add(English.list(ids) + " are all in " + place + ": unload what is not in it (unload r1)");
            }
        });
        checkExports(archive, all);
        checkForGone(archive, all);
        InterruptedMove.among(all)
                .forEach(it -> problems.add(it.words() + ": a move was cut short; the next start puts that right"));
    }

    private void checkExports(Archive archive, Map<RollId, List<RollRecord>> all) throws IOException {
        for (RollId id : archive.finishedRolls()) {
            Optional<Roll> roll = Roll.of(all.get(id)).filter(it -> it.state() == Roll.State.FINISHED);
            if (roll.isPresent() && id.letters().equals(archive.writer()) && !archive.isLater(id)) {
                RollExports.whyBehind(archive, roll.get())
                        .ifPresent(it -> problems.add(it + "; the next start writes it"));
            }
        }
    }

    /** What the other files know of, and somebody removed. */
    private void checkForGone(Archive archive, Map<RollId, List<RollRecord>> all) throws IOException {
        TreeSet<RollId> read = new TreeSet<>();
        archive.lastRoll().ifPresent(read::add);
        all.forEach((id, records) -> {
            if (id.letters().equals(archive.writer()) && Roll.of(records).isPresent()) {
                read.add(id);
            }
        });
        for (int number = 1; !read.isEmpty() && number <= read.last().number(); number++) {
            RollId id = new RollId(archive.writer(), number);
            boolean isExported = !all.containsKey(id) && Files.exists(archive.export(id));
            // The oldest ones may have been taken to another disk on purpose, exports and all.
            if (!all.containsKey(id) && (isExported || number >= read.first().number())) {
                problems.add(id + ".journal is gone: put it back into rolls/" + (isExported ? "finished" : "open")
                        + " from a copy" + (isExported ? "; exports/" + id + ".json has its frames still" : ""));
            }
        }
        Set<LocalDate> dates = new TreeSet<>();
        all.forEach((id, records) -> {
            if (id.letters().equals(archive.writer())) {
                records.forEach(it -> dates.add(it.at().toLocalDate()));
            }
        });
        archive.days().forEach(dates::remove);
        dates.forEach(it -> problems.add("days: the journal of " + it
                + " is gone, with the readings, plan and cameras of that day: put it back from a copy"));
    }

    private void readDays(Archive archive) throws IOException {
        for (String writer : archive.writers()) {
            Archive of = new Archive(folder, writer);
            for (LocalDate date : of.days()) {
                days++;
                problems.addAll(of.dayOf(date).problems());
            }
        }
    }
}
