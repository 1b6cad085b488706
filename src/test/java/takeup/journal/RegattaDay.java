package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Assertions;
import takeup.ShippedShelf;
import takeup.command.Outcome;
import takeup.day.DayRecord;
import takeup.disk.FileSystem;
import takeup.dispatch.Dispatcher;
import takeup.handoff.MadeBy;
import takeup.handoff.RollJson;
import takeup.history.JournalEntry;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.kit.Kit;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/**
 * Regatta day as steps for a writer: a roll of 36 frames with undo, notes and corrections, a second roll to which
 * frames are moved, an unload with its export, and a correction of the finished roll.
 */
final class RegattaDay {
    static final Path FOLDER = Path.of("/takeup");
    static final LocalDate DATE = LocalDate.of(2026, 9, 12);
    private static final List<String> BEGIN = List.of(
            "cam 35",
            "load bw400 @400",
            "meter hand",
            "m 5.6 125",
            "5.6 125 ; boathouse doors",
            "x3",
            "8 125",
            "undo",
            "redo",
            "n the eight, J\u00f8rn at bow",
            "fix 3 8 60",
            "cam 645",
            "load cn400",
            "4 60 ; bow seat",
            ".",
            "cam 35",
            "8 60 ; the coach",
            "move 2-4 cam 645 1",
            "undo",
            "redo");
    private static final List<String> END = List.of(
            "unload yes", "fix r1 1 11 60", "note r1 regatta, before noon", "cam 645", "2.8 125 ; last light", "undo");

    /**
     * What one line did.
     *
     * @param at its time
     * @param step its number
     * @param entries what is written down
     * @param settle rolls whose export and place follow, as they stand then
     */
    record Line(long step, OffsetDateTime at, List<JournalEntry> entries, List<Roll> settle) {
        Batch batch() {
            Batch batch = new Batch(step, at);
            for (JournalEntry entry : entries) {
                if (entry instanceof JournalEntry.OnRoll onRoll) {
                    batch.add(onRoll.roll(), onRoll.event());
                } else if (entry instanceof JournalEntry.OnDay onDay) {
                    batch.add(onDay.event());
                }
            }
            return batch;
        }

        /**
         * What each journal gets, in the order in which they are written: the day, then the rolls; of a loading the
         * roll first.
         */
        Map<String, List<Object>> records() {
            Map<String, List<Object>> records = new LinkedHashMap<>();
            boolean isLoading = entries.stream().anyMatch(it -> it.is(RollEvent.Loaded.class));
            if (!isLoading) {
                addDay(records);
            }
            for (JournalEntry entry : entries) {
                if (entry instanceof JournalEntry.OnRoll onRoll) {
                    records.computeIfAbsent(onRoll.roll().toString(), it -> new ArrayList<>())
                            .add(new RollRecord(step, at, onRoll.event()));
                }
            }
            if (isLoading) {
                addDay(records);
            }
            return records;
        }

        private void addDay(Map<String, List<Object>> records) {
            for (JournalEntry entry : entries) {
                if (entry instanceof JournalEntry.OnDay onDay) {
                    records.computeIfAbsent(DATE.toString(), it -> new ArrayList<>())
                            .add(new DayRecord(step, at, onDay.event()));
                }
            }
        }
    }

    private final Kit kit = new Kit(new ShippedShelf());
    private final List<Line> lines = new ArrayList<>();
    private ShootState situation = ShootState.of(kit, List.of(), Optional.empty(), Set.of());
    private OffsetDateTime now = OffsetDateTime.parse("2026-09-12T09:00+02:00");

    private RegattaDay() {}

    /** The whole day, 36 frames on the first roll. */
    static RegattaDay whole() {
        return new RegattaDay().of(29);
    }

    /** A short one: each kind of line once, fewer frames. */
    static RegattaDay brief() {
        return new RegattaDay().of(2);
    }

    /** Other lines. */
    static RegattaDay typed(List<String> lines) {
        RegattaDay day = new RegattaDay();
        lines.forEach(day::type);
        return day;
    }

    private RegattaDay of(int more) {
        BEGIN.forEach(this::type);
        for (int frame = 0; frame < more; frame++) {
            type(frame % 5 == 4 ? ". ; crew " + frame : ".");
        }
        while (situation.rollInHand().orElseThrow().framesUsed() < 7 + more) {
            type(".");
        }
        END.forEach(this::type);
        return this;
    }

    private void type(String text) {
        now = now.plusSeconds(40);
        Outcome outcome = Dispatcher.read(situation, text, now, "R");
        Outcome.Accepted does = outcome instanceof Outcome.Accepted it ? it : Assertions.fail(text + ": " + outcome);
        JournalStep step = new JournalStep(situation.nextStep(), now, does.entries());
        situation = situation.and(step);
        lines.add(new Line(
                step.step(),
                step.at(),
                step.entries(),
                does.export().stream().map(it -> situation.rolls().get(it)).toList()));
    }

    List<Line> lines() {
        return lines;
    }

    ShootState end() {
        return situation;
    }

    static String export(Roll roll) {
        return RollJson.text(roll, MadeBy.version("1"));
    }

    /** What the journals hold after so many lines. */
    Map<String, List<Object>> records(int after) {
        return records(lines.subList(0, after));
    }

    /** What the journals hold after those lines. */
    static Map<String, List<Object>> records(List<Line> lines) {
        Map<String, List<Object>> all = new TreeMap<>();
        for (Line line : lines) {
            line.records()
                    .forEach((name, records) ->
                            all.computeIfAbsent(name, it -> new ArrayList<>()).addAll(records));
        }
        return all;
    }

    /** What the journals on a disk hold, by their names; whatever is wrong with them is added to the problems. */
    static Map<String, List<Object>> read(FileSystem drive, List<String> problems) throws IOException {
        Archive archive = new Archive(drive, FOLDER);
        Map<String, List<Object>> all = new TreeMap<>();
        Set<RollId> rolls = new TreeSet<>(archive.openRolls());
        rolls.addAll(archive.finishedRolls());
        for (RollId id : rolls) {
            JournalRecords<RollRecord> opened = archive.roll(id);
            problems.addAll(opened.problems());
            all.put(id.toString(), new ArrayList<>(opened.records()));
        }
        for (LocalDate date : archive.days()) {
            JournalRecords<DayRecord> opened = archive.dayOf(date);
            problems.addAll(opened.problems());
            all.put(date.toString(), new ArrayList<>(opened.records()));
        }
        return all;
    }

    /**
     * All that was said to be safe is there, of the line in flight a beginning, in the order of writing, and nothing
     * else.
     */
    void holds(Map<String, List<Object>> found, int said, String where) {
        Map<String, List<Object>> safe = records(said);
        Map<String, List<Object>> flying = said < lines.size() ? lines.get(said).records() : Map.of();
        boolean whole = true;
        Map<String, List<Object>> rest = new TreeMap<>(found);
        for (Map.Entry<String, List<Object>> journal : flying.entrySet()) {
            List<Object> before = safe.getOrDefault(journal.getKey(), List.of());
            List<Object> now = rest.getOrDefault(journal.getKey(), List.of());
            rest.remove(journal.getKey());
            assertTrue(
                    now.size() >= before.size() && now.subList(0, before.size()).equals(before),
                    where + ": " + journal.getKey() + " lost a record");
            List<Object> more = now.subList(before.size(), now.size());
            assertTrue(
                    more.size() <= journal.getValue().size()
                            && journal.getValue().subList(0, more.size()).equals(more),
                    where + ": " + journal.getKey() + " invented a record");
            assertTrue(whole || more.isEmpty(), where + ": " + journal.getKey() + " was written too early");
            whole &= more.size() == journal.getValue().size();
        }
        for (Map.Entry<String, List<Object>> journal : safe.entrySet()) {
            if (!flying.containsKey(journal.getKey())) {
                same(
                        Map.of(journal.getKey(), journal.getValue()),
                        Map.of(journal.getKey(), rest.getOrDefault(journal.getKey(), List.of())),
                        where);
                rest.remove(journal.getKey());
            }
        }
        rest.values().removeIf(List::isEmpty);
        assertEquals(Map.of(), rest, where + ": a journal out of nowhere");
    }

    /** The same after a start: a line in flight that goes to several journals is in all of them or in none. */
    void wholeOrNothing(Map<String, List<Object>> found, int said, String where) {
        holds(found, said, where);
        boolean isOverSeveral = said < lines.size() && lines.get(said).records().size() > 1;
        if (isOverSeveral && !found.equals(records(said))) {
            same(records(said + 1), found, where);
        }
    }

    /** The same journals with the same records; a difference is told by its place, since a record fills a screen. */
    static void same(Map<String, List<Object>> expected, Map<String, List<Object>> found, String where) {
        assertEquals(expected.keySet(), found.keySet(), where);
        expected.forEach((name, records) -> {
            int at = 0;
            while (at < Math.min(records.size(), found.get(name).size())
                    && records.get(at).equals(found.get(name).get(at))) {
                at++;
            }
            assertEquals(
                    records.size() + " records",
                    at + " records",
                    where + ": " + name + ", where " + found.get(name).size() + " are found, is the same up to");
            assertEquals(records.size(), found.get(name).size(), where + ": " + name);
        });
    }

    Kit kit() {
        return kit;
    }
}
