package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import takeup.ShippedShelf;
import takeup.command.Outcome;
import takeup.day.CameraPlace;
import takeup.disk.MemoryFileSystem;
import takeup.files.JournalStore;
import takeup.files.StartupState;
import takeup.files.StepFiles;
import takeup.files.Version;
import takeup.handoff.RollJson;
import takeup.history.ShootState;
import takeup.journal.Archive;
import takeup.journal.MemoryArchive;
import takeup.kit.Kit;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.session.PromptSession;

/** The program from the typed line to the disk, started and ended as {@code takeup line} is, on a disk in memory. */
final class PipeOnMemory {
    static final OffsetDateTime DAY = OffsetDateTime.parse("2026-09-12T15:00+02:00");
    private static final Kit KIT = new Kit(new ShippedShelf());

    private final JournalStore disk;
    private final PromptSession session;

    private PipeOnMemory(JournalStore disk, OffsetDateTime now) throws IOException {
        this.disk = disk;
        disk.sweep();
        ShootState state =
                StartupState.of(disk, KIT).withMovesCompleted(Optional.of(disk)).withToday(disk.archive(), now);
        try {
            disk.settleLeftOvers(state.rolls().values());
        } catch (IOException e) {
            // said, and done by the next start
        }
        session = new PromptSession(state, new StepFiles(disk.archive(), Optional.of(disk)), "R", now, 0);
    }

    /** Starts the program in the folder of that disk. */
    static PipeOnMemory start(MemoryFileSystem drive, OffsetDateTime now) throws IOException {
        JournalStore disk = JournalStore.take(MemoryArchive.on(drive));
        try {
            return new PipeOnMemory(disk, now);
        } catch (IOException e) {
            try {
                disk.close();
            } catch (IOException again) {
                e.addSuppressed(again);
            }
            throw e;
        }
    }

    /** What a line came to at that time. */
    Outcome type(String line, OffsetDateTime at) {
        Outcome outcome = session.read(line, at, 0).outcome();
        session.remarks();
        return outcome;
    }

    /** Whether a line was refused because it could not be saved. */
    static boolean isNotSaved(Outcome outcome) {
        return outcome instanceof Outcome.Rejected rejected && rejected.why().startsWith("NOT SAVED");
    }

    /** Ends it in order. */
    void end() {
        try {
            disk.close();
        } catch (IOException e) {
            // what was acknowledged is on the disk
        }
    }

    /**
     * What a start finds on a disk that works, roll by roll and frame by frame, with the bag; before it is answered,
     * all that must hold of any disk is asked of it.
     */
    static String found(MemoryFileSystem drive, OffsetDateTime at, String where) throws IOException {
        PipeOnMemory next = start(drive, at);
        next.end();
        List<String> problems = new ArrayList<>(MemoryArchive.problems(drive));
        // Half a line at a journal's end is told of until it is cut off, and then that it was kept aside.
        problems.removeIf(it -> it.contains("never confirmed on screen"));
        assertEquals(List.of(), problems, where);
        StringBuilder all = new StringBuilder();
        Archive archive = MemoryArchive.on(drive);
        Set<CameraPlace> places = new HashSet<>();
        List<String> notes = new ArrayList<>();
        int loaded = 0;
        Set<RollId> ids = new TreeSet<>(archive.openRolls());
        ids.addAll(archive.finishedRolls());
        for (RollId id : ids) {
            Roll roll = Roll.of(archive.roll(id).records()).orElseThrow();
            boolean isIn = roll.state() == Roll.State.OPEN;
            assertTrue(!isIn || places.add(CameraPlace.of(roll)), where + ": two rolls in " + CameraPlace.of(roll));
            assertEquals(
                    roll.state() != Roll.State.FINISHED, archive.openRolls().contains(id), where + ": place of " + id);
            all.append(id)
                    .append(' ')
                    .append(roll.state())
                    .append(' ')
                    .append(CameraPlace.of(roll))
                    .append('\n');
            int number = 1;
            for (Frame frame : roll.frames()) {
                assertEquals(number++, frame.number(), where + ": " + id + " has its frames numbered otherwise");
                frame.note().ifPresent(notes::add);
                all.append(frame.number())
                        .append(' ')
                        .append(frame.was())
                        .append(' ')
                        .append(frame.kind())
                        .append(' ')
                        .append(frame.exposure().at())
                        .append(' ')
                        .append(frame.exposure().setting().aperture())
                        .append(frame.exposure().setting().time())
                        .append(frame.note())
                        .append('\n');
            }
            loaded += roll.state() == Roll.State.WITHDRAWN
                            || !roll.film().stock().key().equals("bw400")
                    ? 0
                    : 1;
            Optional<String> export = MemoryArchive.text(drive, "exports/" + id + ".json");
            if (roll.state() == Roll.State.FINISHED || export.isPresent()) {
                assertEquals(
                        RollJson.text(roll, Version.madeBy(archive)), export.orElse("no export"), where + ": " + id);
            }
        }
        assertEquals(new HashSet<>(notes).size(), notes.size(), where + ": a frame is there twice: " + notes);
        int inBag = next.session.state().day().bag().lots().values().stream()
                .mapToInt(Integer::intValue)
                .sum();
        int added = next.session.state().day().bag().kept() ? inBag + loaded : 0;
        return all.append("bag ")
                .append(inBag)
                .append(", came with ")
                .append(added)
                .append('\n')
                .toString();
    }
}
