package takeup.files;

import java.io.IOException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import takeup.day.DayRecord;
import takeup.disk.IoErrorText;
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
 * @param situation what all of it adds up to
 * @param problems what could not be read
 * @param halfMoves moves of frames that a crash cut short
 */
public record StartupState(ShootState situation, List<String> problems, List<InterruptedMove> halfMoves) {
    public static StartupState of(Archive archive, Kit kit) throws IOException {
        return of(archive, kit, archive.rolls());
    }

    /**
     * The same as the one who may write sees it, and without a second look at all the names: what lies there is its own
     * to change.
     */
    public static StartupState of(JournalStore disk, Kit kit) throws IOException {
        return of(disk.archive(), kit, disk.rolls());
    }

    private static StartupState of(Archive archive, Kit kit, RollNumbers all) throws IOException {
        List<String> problems = new ArrayList<>();
        List<JournalStep> steps = new ArrayList<>();
        Map<RollId, List<RollRecord>> rolls = new TreeMap<>();
        Optional<LocalDate> date = day(archive, steps, problems);
        for (RollId id : archive.openRolls()) {
            if (!id.letters().equals(archive.writer())) {
                // Another laptop appends to it, and its steps are counted apart.
                continue;
            }
            JournalRecords<RollRecord> roll = archive.roll(id);
            problems.addAll(roll.problems());
            steps.addAll(steps(id, roll.records()));
            rolls.put(id, roll.records());
        }
        return new StartupState(ShootState.of(kit, steps, date, all), problems, InterruptedMove.among(rolls));
    }

    /** The same with what a crash cut short said, and made whole where there is a disk to write to. */
    public StartupState mended(Optional<JournalStore> disk) {
        ShootState after = situation;
        List<String> all = new ArrayList<>(problems);
        for (InterruptedMove half : halfMoves) {
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
        ShootState all = situation;
        for (RollId id : RollsOfDay.finishedUnread(situation, now)) {
            JournalRecords<RollRecord> roll = archive.roll(id);
            // One that has a problem stays out until a line speaks of it, and the problem is said then.
            all = roll.problems().isEmpty() ? all.with(steps(id, roll.records())) : all;
        }
        return all;
    }

    /** The day that was written last: the newest, but where the clock went back. */
    private static Optional<LocalDate> day(Archive archive, List<JournalStep> steps, List<String> problems)
            throws IOException {
        List<LocalDate> dates = archive.days();
        Optional<LocalDate> best = Optional.empty();
        List<DayRecord> records = List.of();
        List<String> remarks = List.of();
        long bestStep = -1;
        Set<LocalDate> candidates = new LinkedHashSet<>(dates.subList(Math.max(0, dates.size() - 2), dates.size()));
        archive.wentBackTo().filter(dates::contains).ifPresent(candidates::add);
        for (LocalDate date : candidates) {
            JournalRecords<DayRecord> day = archive.dayOf(date);
            long last = day.records().stream().mapToLong(DayRecord::step).max().orElse(0);
            if (last >= bestStep) {
                bestStep = last;
                best = Optional.of(date);
                records = day.records();
                remarks = day.problems();
            }
        }
        problems.addAll(remarks);
        for (DayRecord record : records) {
            steps.add(new JournalStep(record.step(), record.at(), List.of(new JournalEntry.OnDay(record.event()))));
        }
        return best;
    }

    /** A roll's records as steps. */
    public static List<JournalStep> steps(RollId id, List<RollRecord> records) {
        List<JournalStep> steps = new ArrayList<>();
        for (RollRecord record : records) {
            steps.add(
                    new JournalStep(record.step(), record.at(), List.of(new JournalEntry.OnRoll(id, record.event()))));
        }
        return steps;
    }

    /** Every roll there is, in the order of loading, with what could not be read. */
    public static List<Roll> allRolls(Archive archive, List<String> problems) throws IOException {
        return allRolls(archive, it -> it, problems);
    }

    /**
     * The same with of each roll only what is made of it, so that an archive of years is never held with all its
     * frames.
     */
    public static <T> List<T> allRolls(Archive archive, Function<Roll, T> made, List<String> problems)
            throws IOException {
        Set<RollId> ids = new TreeSet<>(archive.finishedRolls());
        ids.addAll(archive.openRolls());
        List<Placed<T>> rolls = new ArrayList<>();
        ReadAhead.inOrder(ids, id -> placed(archive, id, made), it -> {
            problems.addAll(it.problems);
            return it.made.isEmpty() || rolls.add(it);
        });
        // Steps are counted by each writer apart.
        rolls.sort(Comparator.comparing((Placed<T> it) -> it.id.letters())
                .thenComparing(it -> it.loading)
                .thenComparing(it -> it.id));
        List<T> all = new ArrayList<>();
        for (Placed<T> roll : rolls) {
            all.add(roll.made.orElseThrow());
        }
        return all;
    }

    private static <T> Placed<T> placed(Archive archive, RollId id, Function<Roll, T> made) {
        JournalRecords<RollRecord> opened = archive.roll(id);
        Optional<Roll> roll = Roll.of(opened.records());
        if (roll.isPresent()) {
            return new Placed<>(roll.get().id(), opened.records().get(0).step(), roll.map(made), opened.problems());
        }
        List<String> problems = new ArrayList<>(opened.problems());
        if (problems.isEmpty() || !opened.records().isEmpty()) {
            problems.add(id + ".journal:1: the record of its loading is missing, so the roll cannot be shown");
        }
        return new Placed<>(id, 0, Optional.empty(), problems);
    }

    /** What was made of a roll, with what it is put in order by, and what could not be read. */
    private record Placed<T>(RollId id, long loading, Optional<T> made, List<String> problems) {}
}
