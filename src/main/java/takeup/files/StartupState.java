package takeup.files;

import java.io.IOException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import takeup.day.CameraPlace;
import takeup.day.DayEvent;
import takeup.day.DayRecord;
import takeup.disk.IoErrorText;
import takeup.history.History;
import takeup.history.JournalEntry;
import takeup.history.JournalStep;
import takeup.history.RollsOfDay;
import takeup.history.ShootState;
import takeup.journal.Archive;
import takeup.journal.InterruptedMove;
import takeup.journal.JournalRecords;
import takeup.kit.Kit;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.RollNumbers;
import takeup.roll.RollRecord;

/**
 * What a data folder holds at the start: open rolls and the newest day. Finished rolls are read when they are asked
 * for.
 *
 * @param state what all of it adds up to
 * @param problems what could not be read
 * @param interruptedMoves moves of frames that a crash cut short
 */
public record StartupState(ShootState state, List<String> problems, List<InterruptedMove> interruptedMoves) {
    public static StartupState of(Archive archive, Kit kit) throws IOException {
        return of(archive, kit, archive.rolls());
    }

    /**
     * The same as the one who may write sees it, and without a second look at all the names: what lies there is its own
     * to change.
     */
    public static StartupState of(JournalStore disk, Kit kit) throws IOException {
        StartupState start = of(disk.archive(), kit, disk.rolls());
        List<String> problems = new ArrayList<>(disk.remarks());
        problems.addAll(start.problems);
        return new StartupState(start.state, problems, start.interruptedMoves);
    }

    private static StartupState of(Archive archive, Kit kit, RollNumbers all) throws IOException {
        LastDay day = LastDay.of(archive);
        List<String> problems = new ArrayList<>(day.records.problems());
        List<JournalStep> steps = new ArrayList<>(day.steps());
        Map<RollId, List<RollRecord>> rolls = new TreeMap<>();
        List<RollId> open = new ArrayList<>(archive.openRolls());
        open.addAll(reopened(archive, day.steps(), open));
        for (RollId id : open) {
            if (!id.letters().equals(archive.writer())) {
                // Another laptop appends to it, and its steps are counted apart.
                continue;
            }
            JournalRecords<RollRecord> roll = archive.roll(id);
            problems.addAll(roll.problems());
            steps.addAll(stepsOf(id, roll.records()));
            rolls.put(id, roll.records());
        }
        Set<RollId> unreadable = new TreeSet<>();
        for (Map.Entry<RollId, List<RollRecord>> roll : rolls.entrySet()) {
            if (Roll.of(roll.getValue()).isEmpty()) {
                unreadable.add(roll.getKey());
            }
        }
        RollNumbers known = all;
        Optional<RollId> last = archive.lastRoll();
        if (last.isPresent()
                && !archive.holds(last.get())
                && last.get().number() > all.highest(last.get().letters())) {
            problems.add(last.get() + ".journal is gone, and with it the newest roll: put it back into "
                    + "rolls/open from a copy. Its number is given to no other film");
            known = all.and(List.of(last.get()));
        }
        ShootState state = ShootState.of(kit, steps, day.date, known).withUnreadable(unreadable);
        problems.addAll(sharedPlaces(state));
        return new StartupState(state, problems, InterruptedMove.among(rolls));
    }

    /** Places that two rolls are in by their records: one of them could not be read when the other was loaded. */
    private static List<String> sharedPlaces(ShootState state) {
        List<String> problems = new ArrayList<>();
        for (Roll roll : state.openRolls()) {
            RollId inIt = state.rollIn(CameraPlace.of(roll)).orElseThrow().id();
            if (!inIt.equals(roll.id())) {
                problems.add(roll.id() + " is in " + roll.place() + " by its record, and " + inIt
                        + " was loaded there since and takes the frames: unload what is not in it (unload "
                        + roll.id().typed() + ")");
            }
        }
        return problems;
    }

    /**
     * Rolls whose unloading was taken back on the day, and whose journals lie with the finished ones all the same: the
     * program was ended before it could move them.
     */
    private static List<RollId> reopened(Archive archive, List<JournalStep> day, List<RollId> open) {
        Set<Long> undone = History.of(day).undone();
        Set<RollId> closed = new LinkedHashSet<>();
        for (JournalStep step : day) {
            if (undone.contains(step.step())) {
                step.events(DayEvent.RollClosed.class).forEach(it -> closed.add(it.roll()));
            }
        }
        List<RollId> reopened = new ArrayList<>();
        for (RollId id : closed) {
            if (!open.contains(id) && isInCamera(archive, id)) {
                reopened.add(id);
            }
        }
        return reopened;
    }

    private static boolean isInCamera(Archive archive, RollId id) {
        Optional<Roll> roll = Roll.of(archive.roll(id).records());
        return roll.isPresent()
                && (roll.get().state() == Roll.State.OPEN || roll.get().state() == Roll.State.REWOUND);
    }

    /** The same with what a crash cut short said, and made whole where there is a disk to write to. */
    public StartupState withMovesCompleted(Optional<JournalStore> disk) {
        ShootState after = state;
        List<String> all = new ArrayList<>(problems);
        for (InterruptedMove half : interruptedMoves) {
            String words =
                    half.words() + ": moving " + (half.first() == half.last() ? "it" : "them") + " was cut short";
            if (disk.isEmpty()) {
                all.add(words + "; the next start that can write puts that right");
                continue;
            }
            JournalStep rest = new JournalStep(
                    half.rest().step(),
                    half.rest().at(),
                    List.of(new JournalEntry.OnRoll(half.roll(), half.rest().event())));
            try {
                disk.get().keep(rest);
                after = after.with(List.of(rest));
                all.add(words + ", and is done now");
            } catch (IOException e) {
                all.add(words + ", and cannot be put right: " + IoErrorText.words(e));
            }
        }
        return new StartupState(after, all, List.of());
    }

    /**
     * The same with the rolls read in that were finished today: pace, must-have moments and the end of the day look at
     * them.
     */
    public ShootState withToday(Archive archive, OffsetDateTime now) {
        ShootState all = state;
        for (RollId id : RollsOfDay.finishedUnread(state, now)) {
            JournalRecords<RollRecord> roll = archive.roll(id);
            // One that has a problem stays out until a line speaks of it, and the problem is said then.
            all = roll.problems().isEmpty() ? all.with(stepsOf(id, roll.records())) : all;
        }
        return all;
    }

    /** The day that was written last: the newest, unless the clock went back. */
    private record LastDay(Optional<LocalDate> date, JournalRecords<DayRecord> records) {
        static LastDay of(Archive archive) throws IOException {
            List<LocalDate> dates = archive.days();
            Set<LocalDate> candidates = new LinkedHashSet<>(dates.subList(Math.max(0, dates.size() - 2), dates.size()));
            Optional<LocalDate> wentBackTo = archive.wentBackTo();
            if (wentBackTo.isPresent() && dates.contains(wentBackTo.get())) {
                candidates.add(wentBackTo.get());
            }
            LastDay last = new LastDay(Optional.empty(), new JournalRecords<>(List.of(), List.of()));
            for (LocalDate date : candidates) {
                LastDay day = new LastDay(Optional.of(date), archive.dayOf(date));
                last = last.date.isEmpty() || day.lastStep() >= last.lastStep() ? day : last;
            }
            return last;
        }

        private long lastStep() {
            long last = 0;
            for (DayRecord record : records.records()) {
                last = Math.max(last, record.step());
            }
            return last;
        }

        List<JournalStep> steps() {
            List<JournalStep> steps = new ArrayList<>();
            for (DayRecord record : records.records()) {
                steps.add(new JournalStep(record.step(), record.at(), List.of(new JournalEntry.OnDay(record.event()))));
            }
            return steps;
        }
    }

    /** A roll's records as steps. */
    public static List<JournalStep> stepsOf(RollId id, List<RollRecord> records) {
        List<JournalStep> steps = new ArrayList<>();
        for (RollRecord record : records) {
            steps.add(
                    new JournalStep(record.step(), record.at(), List.of(new JournalEntry.OnRoll(id, record.event()))));
        }
        return steps;
    }
}
