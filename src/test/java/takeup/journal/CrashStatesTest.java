package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import takeup.disk.MemoryFileSystem;
import takeup.history.JournalEntry;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.roll.NoteEvent;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/**
 * The power goes at any moment of a day. 300 states of the disk by default, drawn from a seed; another number with
 * {@code -Dstates=10000}, and every one with {@code -Dstates=all}.
 */
@Tag("slow")
class CrashStatesTest {
    private static final String STATES = System.getProperty("states", "300");
    /** Of an export, which nobody reads before it has its name, each so-many-th byte is enough. */
    private static final int LONG = 4000;

    private static final int STRIDE = 97;

    private final RegattaDay day = RegattaDay.whole();
    private final List<MemoryFileSystem.Deed> deeds = new ArrayList<>();
    private int torn;
    private int takenBack;

    /** A moment of the day, and the states of the disk that it may leave, by their numbers. */
    private record Moment(int after, int bytes, int stride, int names, boolean nameGoing) {
        int states() {
            return (bytes == 0 ? 1 : (bytes / stride + 1) * 3) << names;
        }
    }

    @Test
    void inEachStateThatAPowerCutLeavesNothingIsLostNothingInventedAndTheNextStartGoesOn() throws IOException {
        record();
        List<Moment> moments = new ArrayList<>();
        int all = 0;
        PowerCut cut = new PowerCut(deeds, 0);
        for (int after = 0; after <= deeds.size(); after++) {
            if (after > 0) {
                cut.follow(deeds.get(after - 1));
            }
            assertTrue(cut.filesWaiting() <= 1, "two files wait for their force after deed " + after);
            assertTrue(cut.namesWaiting() <= 4, "more names wait than were thought of after deed " + after);
            Moment moment = new Moment(
                    after,
                    cut.bytesWaiting(),
                    cut.bytesWaiting() > LONG ? STRIDE : 1,
                    cut.namesWaiting(),
                    cut.isNameGoing());
            moments.add(moment);
            all += moment.states();
        }
        int looked = 0;
        boolean every = STATES.equals("all");
        for (Moment moment : moments) {
            for (int state = 0; state < moment.states() && (every || moment.nameGoing); state++) {
                look(moment, state);
                looked++;
            }
        }
        // Each moment is as likely as any other: at most of them only names are at stake, in few states.
        Random random = new Random(36);
        for (; !every && looked < Integer.parseInt(STATES); looked++) {
            Moment moment = moments.get(random.nextInt(moments.size()));
            look(moment, random.nextInt(moment.states()));
        }
        System.out.println(looked + " states of " + all + " after " + deeds.size() + " deeds, " + torn
                + " with a torn tail, " + takenBack + " with a line taken back");
    }

    private void record() throws IOException {
        MemoryFileSystem drive = new MemoryFileSystem();
        int safe = 0;
        try (Writer writer = Writer.take(drive, RegattaDay.FOLDER)) {
            for (RegattaDay.Line line : day.lines()) {
                writer.draft("what is being typed");
                writer.append(line.batch());
                drive.said(++safe);
                for (Roll roll : line.settle()) {
                    writer.export(roll.id(), RegattaDay.export(roll));
                    if (roll.state() == Roll.State.FINISHED) {
                        writer.settleFinished(roll.id());
                    } else {
                        writer.settleOpen(roll.id());
                    }
                }
            }
        }
        deeds.addAll(drive.deeds());
        List<String> problems = new ArrayList<>();
        RegattaDay.same(day.records(day.lines().size()), RegattaDay.read(drive, problems), "with the power on");
        assertEquals(List.of(), problems);
        assertEquals(36, day.end().rolls().get(new RollId("R", 1)).frames().size());
    }

    private void look(Moment moment, int state) throws IOException {
        int kept = state & (1 << moment.names) - 1;
        int bytes = Math.min(moment.bytes, (state >> moment.names) / 3 * moment.stride);
        PowerCut.Rest rest = PowerCut.Rest.values()[(state >> moment.names) % 3];
        PowerCut cut = new PowerCut(deeds, moment.after);
        String where = "after deed " + moment.after + ", " + bytes + " bytes of the last write, then " + rest
                + ", names " + Integer.toBinaryString(kept);
        check(cut.disk(bytes, rest, kept, new Random(state)), cut.said(), where);
    }

    /** The next start: read, put right, go on with each roll and the day. */
    private void check(MemoryFileSystem disk, int said, String where) throws IOException {
        List<String> problems = new ArrayList<>();
        Map<String, List<Object>> found = RegattaDay.read(disk, problems);
        day.holds(found, said, where);
        problems.forEach(it -> assertTrue(
                it.contains("the last line stops in the middle")
                        || it.contains("zeros follow the last line")
                        || it.contains("the end of the last line is damaged")
                        || it.contains("this line is damaged and is left out")
                        || it.contains("it lies with the open and with the finished rolls"),
                where + ": " + it));
        torn += problems.isEmpty() ? 0 : 1;
        try (Writer writer = Writer.take(disk, RegattaDay.FOLDER)) {
            takenBack += writer.remarks().size();
            found = RegattaDay.read(disk, new ArrayList<>());
            day.wholeOrNothing(found, said, where);
            Map<RollId, List<RollRecord>> rolls = rolls(found);
            assertEquals(List.of(), InterruptedMove.among(rolls), where);
            ShootState situation = ShootState.of(day.kit(), steps(rolls), Optional.of(RegattaDay.DATE), rolls.keySet());
            for (Roll roll : situation.rolls().values()) {
                if (roll.state() == Roll.State.FINISHED) {
                    writer.export(roll.id(), RegattaDay.export(roll));
                    writer.settleFinished(roll.id());
                }
            }
            Batch next = new Batch(1000, day.lines().get(0).at());
            for (RollId id : rolls.keySet()) {
                next.add(id, new NoteEvent.Noted("after the power cut"));
                found.get(id.toString())
                        .add(new RollRecord(1000, day.lines().get(0).at(), new NoteEvent.Noted("after the power cut")));
            }
            writer.append(next);
            for (Roll roll : situation.rolls().values()) {
                if (roll.state() == Roll.State.FINISHED) {
                    writer.settleFinished(roll.id());
                }
            }
            assertEquals(List.of(), writer.remarks(), where);
            finished(disk, rolls, where);
        }
        List<String> after = new ArrayList<>();
        RegattaDay.same(found, RegattaDay.read(disk, after), where);
        after.forEach(it -> assertTrue(
                it.contains("this line is damaged and is left out") || it.startsWith(RegattaDay.DATE.toString()),
                where + ", at last: " + it));
    }

    private static void finished(MemoryFileSystem disk, Map<RollId, List<RollRecord>> rolls, String where)
            throws IOException {
        Archive archive = new Archive(disk, RegattaDay.FOLDER);
        for (Map.Entry<RollId, List<RollRecord>> entry : rolls.entrySet()) {
            Optional<Roll> roll = Roll.of(entry.getValue());
            boolean isFinished = roll.isPresent() && roll.get().state() == Roll.State.FINISHED;
            assertEquals(isFinished, archive.finishedRolls().contains(entry.getKey()), where);
            assertEquals(!isFinished, archive.openRolls().contains(entry.getKey()), where);
            if (isFinished) {
                String export = new String(
                        disk.read(RegattaDay.FOLDER.resolve("exports/" + entry.getKey() + ".json")),
                        StandardCharsets.UTF_8);
                assertEquals(RegattaDay.export(roll.get()), export, where);
            }
        }
    }

    private static Map<RollId, List<RollRecord>> rolls(Map<String, List<Object>> found) {
        Map<RollId, List<RollRecord>> rolls = new TreeMap<>();
        found.forEach((name, records) -> RollId.parse(name).ifPresent(id -> {
            List<RollRecord> all = new ArrayList<>();
            records.forEach(it -> all.add((RollRecord) it));
            rolls.put(id, all);
        }));
        return rolls;
    }

    private static List<JournalStep> steps(Map<RollId, List<RollRecord>> rolls) {
        List<JournalStep> steps = new ArrayList<>();
        rolls.forEach((id, records) -> records.forEach(it ->
                steps.add(new JournalStep(it.step(), it.at(), List.of(new JournalEntry.OnRoll(id, it.event()))))));
        return steps;
    }
}
