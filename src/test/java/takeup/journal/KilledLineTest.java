package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.disk.MemoryFileSystem;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * Whatever call ends the program: a line is whole or not there after the next start, and a roll that is in a camera by
 * its records lies where the next start looks.
 */
class KilledLineTest {
    private static final RollId R1 = new RollId("R", 1);

    private final RegattaDay day = RegattaDay.typed(List.of("cam 35", "load bw400", "8 125", "unload yes", "undo"));

    @Test
    void aRollInACameraNeverLiesWithTheFinishedOnesAlone() throws IOException {
        int calls = 0;
        int open = 0;
        boolean walking = true;
        for (int first = 0; walking; first++) {
            MemoryFileSystem drive = new MemoryFileSystem();
            calls = killed(drive, first, day.lines());
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

    @ParameterizedTest
    @ValueSource(
            strings = {
                "cam 35;bag add 2 bw400;load bw400",
                "cam 35;load bw400;8 125;unload yes",
                "cam 35;load bw400;8 125;unload yes;undo",
                "cam 35;load bw400;8 125;8 60;cam 645;load cn400;cam 35;move 1 cam 645 1",
                "cam 35;load bw400;8 125;8 60;cam 645;load cn400;cam 35;move 1 cam 645 1;undo",
                "cam 35;load bw400;8 125;rewind",
                "cam 35;load bw400;8 125;unload yes;fix r1 1 11 60"
            })
    void aLineThatAKillCutsShortIsWholeOrNotThereAfterTheNextStart(String lines) throws IOException {
        RegattaDay typed = RegattaDay.typed(List.of(lines.split(";")));
        int before = typed.lines().size() - 1;
        int nothing = 0;
        int whole = 0;
        boolean walking = true;
        for (int first = 0; walking; first++) {
            MemoryFileSystem drive = new MemoryFileSystem();
            walking = killed(drive, first, typed.lines()) > first;
            drive.forgetHolds();
            Map<String, List<Object>> seen = RegattaDay.read(drive, new ArrayList<>());
            List<String> remarks;
            try (Writer writer = Writer.take(drive, RegattaDay.FOLDER)) {
                remarks = writer.remarks();
            }
            Map<String, List<Object>> found = RegattaDay.read(drive, new ArrayList<>());
            RegattaDay.same(found, seen, lines + ", read before the next start, ended by call " + first);
            boolean isNothing = found.equals(typed.records(before));
            if (!isNothing) {
                RegattaDay.same(typed.records(before + 1), found, lines + ", ended by call " + first);
            }
            nothing += isNothing ? 1 : 0;
            whole += isNothing ? 0 : 1;
            assertTrue(
                    remarks.isEmpty() || isNothing && remarks.get(0).contains("it is taken back"), remarks::toString);
        }
        assertTrue(nothing > 3 && whole > 0, nothing + " times nothing, " + whole + " times all of it");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "cam 35;bag add 2 bw400;load bw400",
                "cam 35;load bw400;8 125;unload yes",
                "cam 35;load bw400;8 125;unload yes;fix r1 1 11 60"
            })
    void whoReadsBesideARunningProgramSeesALineWholeOrNotYet(String lines) throws IOException {
        RegattaDay typed = RegattaDay.typed(List.of(lines.split(";")));
        int before = typed.lines().size() - 1;
        MemoryFileSystem drive = new MemoryFileSystem();
        Writer writer = Writer.take(drive, RegattaDay.FOLDER);
        for (RegattaDay.Line line : typed.lines().subList(0, before)) {
            write(writer, line);
        }
        Set<String> indexed = new HashSet<>();
        int[] looks = {0, 0};
        boolean[] isLooking = {false};
        drive.fault((call, path) -> {
            if (!isLooking[0]) {
                isLooking[0] = true;
                Map<String, List<Object>> seen = RegattaDay.read(drive, new ArrayList<>());
                boolean isWhole = seen.equals(typed.records(before + 1));
                if (!isWhole) {
                    RegattaDay.same(typed.records(before), seen, lines + ", beside " + call + " " + path);
                }
                looks[isWhole ? 1 : 0]++;
                RollStamps stamps = new Archive(drive, RegattaDay.FOLDER).stamps();
                String stamp = stamps.rolls().contains(R1) ? stamps.of(R1) : "";
                if (!stamp.isEmpty() && !isWhole) {
                    indexed.add(stamp);
                } else {
                    assertFalse(
                            indexed.contains(stamp), "the index would keep of " + stamp + " what was read too early");
                }
                isLooking[0] = false;
            }
        });
        write(writer, typed.lines().get(before));
        drive.fault((call, path) -> {});
        writer.close();
        assertTrue(looks[0] > 3 && looks[1] > 0, looks[0] + " looks before the line is whole, " + looks[1] + " after");
    }

    @Test
    void whatWasChangedBesideAnUnfinishedStepIsRead() throws IOException {
        MemoryFileSystem drive = new MemoryFileSystem();
        Writer writer = Writer.take(drive, RegattaDay.FOLDER);
        for (RegattaDay.Line line : day.lines().subList(0, 3)) {
            write(writer, line);
        }
        writer.close();
        Map<String, List<Object>> whole = RegattaDay.read(drive, new ArrayList<>());
        String open = "rolls/open/R0001.journal";
        for (String note : List.of(
                "takeup-unfinished 1\n" + open + " 0\n{\"n\":1,\"crc\":\"00000000\"}\n",
                "takeup-unfinished 2\n" + open + " 0\n",
                "takeup-unfinished 1\n" + open + " none\n",
                "takeup-unfinished 1\nexports/R0001.json 0\n",
                "")) {
            drive.put(RegattaDay.FOLDER.resolve("unfinished"), note.getBytes(StandardCharsets.UTF_8));
            RegattaDay.same(whole, RegattaDay.read(drive, new ArrayList<>()), note);
        }
    }

    /** Writes all lines but the last, then that one, of which no call works from one on; how many it makes. */
    private int killed(MemoryFileSystem drive, int first, List<RegattaDay.Line> lines) throws IOException {
        int[] calls = {0};
        Writer writer = Writer.take(drive, RegattaDay.FOLDER);
        for (RegattaDay.Line line : lines.subList(0, lines.size() - 1)) {
            write(writer, line);
        }
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
