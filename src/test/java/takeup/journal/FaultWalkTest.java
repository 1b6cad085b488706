package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.disk.FailingCalls;
import takeup.disk.IoErrorText;
import takeup.disk.MemoryFileSystem;
import takeup.history.JournalEntry;
import takeup.roll.NoteEvent;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * Each call of a short day in turn fails, with each fault that a disk gives, for once or for some time. By default one
 * fault for each call, in turn; every fault at every call with {@code -Dfaults=all}.
 */
@Tag("slow")
class FaultWalkTest {
    private static final boolean ALL = "all".equals(System.getProperty("faults"));
    /** A step is tried so often: the faults are over by then. */
    private static final int TRIES = 9;

    private final RegattaDay day = RegattaDay.brief();

    @ParameterizedTest(name = "{0} calls in a row fail")
    @ValueSource(ints = {1, 5})
    void whicheverCallFailsNothingThatWasAcknowledgedIsLostAndTheNextTrySucceedsOnceTheFaultIsOver(int count)
            throws IOException {
        int calls = 0;
        int refusals = 0;
        boolean walking = true;
        for (int first = 1; walking; first += ALL ? 1 : count) {
            walking = false;
            for (FailingCalls.Kind kind : FailingCalls.Kind.values()) {
                if (ALL || kind.ordinal() == first / count % FailingCalls.Kind.values().length) {
                    FailingCalls fault = new FailingCalls(first, count, kind);
                    refusals += walk(fault, "call " + first + ", " + kind);
                    walking |= fault.calls() >= first;
                }
            }
            calls = first;
        }
        assertTrue(calls > 400, "only " + calls + " calls");
        assertTrue(refusals > calls / 5, "of " + calls + " failing calls only " + refusals + " were noticed");
        System.out.println(calls + " calls failed in turn, " + count + " in a row, " + refusals + " refusals in words");
    }

    /** A day with that fault; how often something was refused, or said to be wrong with the disk. */
    private int walk(FailingCalls fault, String where) throws IOException {
        MemoryFileSystem drive = new MemoryFileSystem();
        drive.fault(fault);
        int refusals = 0;
        int safe = 0;
        Writer writer = null;
        for (int attempt = 0; writer == null; attempt++) {
            try {
                writer = Writer.take(drive, RegattaDay.FOLDER);
            } catch (IOException e) {
                refusals += refused(e, attempt, where);
            }
        }
        for (RegattaDay.Line line : day.lines()) {
            boolean written = false;
            for (int attempt = 0; !written; attempt++) {
                try {
                    writer.append(line.batch());
                    written = true;
                } catch (IOException e) {
                    refusals += refused(e, attempt, where);
                    drive.fault((call, path) -> {});
                    look(drive, safe, where);
                    drive.fault(fault);
                }
            }
            safe++;
            for (String remark : writer.remarks()) {
                assertFalse(remark.contains("Exception"), remark);
                refusals += remark.startsWith("the disk reported an error") ? 1 : 0;
            }
            for (Roll roll : line.settle()) {
                refusals += settle(writer, roll, where);
            }
        }
        try {
            writer.close();
        } catch (IOException e) {
            refusals++;
        }
        drive.fault((call, path) -> {});
        look(drive, safe, where);
        afterAPowerCut(drive, where);
        return refusals;
    }

    /** How the photographer goes on after a line was refused. */
    private enum Way {
        SAME_LINE,
        ANOTHER_LINE,
        RESTART,
        RESTART_THE_NEXT_DAY
    }

    @ParameterizedTest(name = "{0} in a row fail, then {1}")
    @CsvSource({
        "1, SAME_LINE", "1, ANOTHER_LINE", "1, RESTART", "1, RESTART_THE_NEXT_DAY",
        "5, SAME_LINE", "5, ANOTHER_LINE", "5, RESTART", "5, RESTART_THE_NEXT_DAY"
    })
    void aRefusedLineLeavesNothingBehindHoweverThePhotographerGoesOn(int count, Way way) throws IOException {
        int refusals = 0;
        boolean walking = true;
        for (int first = 1; walking; first += ALL ? 1 : count + 2) {
            walking = false;
            for (FailingCalls.Kind kind : FailingCalls.Kind.values()) {
                if (ALL || kind.ordinal() == first % FailingCalls.Kind.values().length) {
                    FailingCalls fault = new FailingCalls(first, count, kind);
                    refusals += goOn(fault, way, "call " + first + ", " + kind + ", " + way);
                    walking |= fault.calls() >= first;
                }
            }
        }
        assertTrue(refusals > 20, "only " + refusals + " lines were refused");
        System.out.println(count + " in a row, " + way + ": " + refusals + " lines refused");
    }

    /**
     * A day with that fault; after each line that is accepted the disk holds those, and of the refused ones nothing.
     */
    private int goOn(FailingCalls fault, Way way, String where) throws IOException {
        MemoryFileSystem drive = new MemoryFileSystem();
        List<RegattaDay.Line> accepted = new ArrayList<>();
        int refused = 0;
        drive.fault(fault);
        Writer writer = start(drive, where);
        for (RegattaDay.Line line : day.lines()) {
            RegattaDay.Line next = line;
            for (int attempt = 0; next != null; attempt++) {
                try {
                    writer.append(next.batch());
                    accepted.add(next);
                    next = null;
                } catch (IOException e) {
                    refused += refused(e, attempt, where);
                    boolean isRestart = way == Way.RESTART || way == Way.RESTART_THE_NEXT_DAY;
                    if (isRestart) {
                        close(writer);
                        writer = start(drive, where);
                        exact(drive, fault, accepted, where + ", after the start");
                    }
                    next = way == Way.SAME_LINE ? line : another(line, way);
                }
            }
            exact(drive, fault, accepted, where + ", step " + line.step());
            if (accepted.get(accepted.size() - 1).equals(line)) {
                for (Roll roll : line.settle()) {
                    settle(writer, roll, where);
                }
            }
        }
        close(writer);
        exact(drive, fault, accepted, where + ", at the end");
        return refused;
    }

    private static Writer start(MemoryFileSystem drive, String where) {
        for (int attempt = 0; true; attempt++) {
            try {
                return Writer.take(drive, RegattaDay.FOLDER);
            } catch (IOException e) {
                refused(e, attempt, where);
            }
        }
    }

    private static void close(Writer writer) {
        try {
            writer.close();
        } catch (IOException e) {
            // what was accepted is on the disk
        }
    }

    /** Something else, which gets the number that the refused line would have had. */
    private static RegattaDay.Line another(RegattaDay.Line line, Way way) {
        return new RegattaDay.Line(
                line.step(),
                way == Way.RESTART_THE_NEXT_DAY ? line.at().plusDays(1) : line.at(),
                List.of(new JournalEntry.OnRoll(new RollId("R", 9), new NoteEvent.Noted("another line"))),
                List.of());
    }

    private void exact(MemoryFileSystem drive, FailingCalls fault, List<RegattaDay.Line> accepted, String where)
            throws IOException {
        drive.fault((call, path) -> {});
        RegattaDay.same(RegattaDay.records(accepted), RegattaDay.read(drive, new ArrayList<>()), where);
        drive.fault(fault);
    }

    private static int settle(Writer writer, Roll roll, String where) {
        int refusals = 0;
        for (boolean settled = false; !settled; ) {
            try {
                writer.export(roll.id(), RegattaDay.export(roll));
                if (roll.state() == Roll.State.FINISHED) {
                    writer.settleFinished(roll.id());
                } else {
                    writer.settleOpen(roll.id());
                }
                settled = true;
            } catch (IOException e) {
                refusals += refused(e, refusals, where);
            }
        }
        return refusals;
    }

    private static int refused(IOException e, int attempt, String where) {
        String words = IoErrorText.words(e);
        assertFalse(words.isBlank() || words.contains("Exception") || words.contains("null"), where + ": " + words);
        assertTrue(attempt < TRIES, where + ": still refused: " + words);
        return 1;
    }

    private void look(MemoryFileSystem drive, int safe, String where) throws IOException {
        day.holds(RegattaDay.read(drive, new ArrayList<>()), safe, where);
    }

    /** Of what was never forced nothing is left, and all is there all the same. */
    private void afterAPowerCut(MemoryFileSystem drive, String where) throws IOException {
        MemoryFileSystem disk =
                new PowerCut(drive.deeds(), drive.deeds().size()).disk(0, PowerCut.Rest.END, 0, new Random(1));
        List<String> problems = new ArrayList<>();
        RegattaDay.same(day.records(day.lines().size()), RegattaDay.read(disk, problems), where);
        assertEquals(List.of(), problems, where);
        assertEquals(1, new Archive(disk, RegattaDay.FOLDER).finishedRolls().size(), where);
        assertEquals(Optional.empty(), new Archive(disk, RegattaDay.FOLDER).draft(), where);
    }

    @Test
    void withNoFaultNothingIsRefused() throws IOException {
        assertEquals(0, walk(new FailingCalls(Integer.MAX_VALUE - 9, 1, FailingCalls.Kind.BROKEN), "no fault"));
    }
}
