package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import takeup.disk.MemoryFileSystem;
import takeup.roll.Roll;
import takeup.roll.RollId;

/** Whatever call ends the program, a roll that is in a camera by its records lies where the next start looks. */
class PlaceOfJournalTest {
    private static final RollId R1 = new RollId("R", 1);

    private final RegattaDay day = RegattaDay.reopened();

    @Test
    void aRollInACameraNeverLiesWithTheFinishedOnesAlone() throws IOException {
        int calls = 0;
        int open = 0;
        boolean walking = true;
        for (int first = 0; walking; first++) {
            MemoryFileSystem drive = new MemoryFileSystem();
            calls = killed(drive, first);
            walking = calls > first;
            Archive archive = new Archive(drive, RegattaDay.FOLDER);
            Roll.State state = Roll.of(archive.roll(R1).records()).orElseThrow().state();
            open += state == Roll.State.OPEN ? 1 : 0;
            assertTrue(
                    state == Roll.State.FINISHED || archive.openRolls().contains(R1),
                    "ended by call " + first + " of the last line: " + state);
        }
        assertTrue(open > 5, "only " + open + " of " + calls + " calls ended the program with the film back in");
    }

    /** Writes all lines but the last, then that one, of which no call works from one on; how many it makes. */
    private int killed(MemoryFileSystem drive, int first) throws IOException {
        List<RegattaDay.Line> lines = day.lines();
        int[] calls = {0};
        Writer writer = Writer.take(drive, RegattaDay.FOLDER);
        for (RegattaDay.Line line : lines.subList(0, lines.size() - 1)) {
            write(writer, line);
        }
        assertEquals(List.of(R1), new Archive(drive, RegattaDay.FOLDER).finishedRolls());
        drive.fault((call, path) -> {
            if (calls[0]++ >= first) {
                throw new IOException("killed");
            }
        });
        try {
            write(writer, lines.get(lines.size() - 1));
        } catch (IOException e) {
            assertEquals("killed", e.getMessage());
        }
        drive.fault((call, path) -> {});
        return calls[0];
    }

    private static void write(Writer writer, RegattaDay.Line line) throws IOException {
        writer.append(line.batch());
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
