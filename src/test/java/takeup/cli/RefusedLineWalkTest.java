package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.command.Outcome;
import takeup.disk.FailingCalls;
import takeup.disk.MemoryFileSystem;

/**
 * Each call on the disk of a day fails in turn, and the photographer goes on in one of four ways. What lies there in
 * the end is what the accepted lines alone come to on a disk that works, and each of them was answered in the same
 * words. By default every fourth call fails, in one of the ways in turn; in all of them with {@code -Dfaults=all}.
 */
@Tag("slow")
class RefusedLineWalkTest {
    private static final boolean ALL = "all".equals(System.getProperty("faults"));
    private static final List<String> LINES = List.of(
            "bag add 3 bw400 135",
            "cam 35",
            "load bw400",
            "8 125 ; f1",
            "8 60 ; f2",
            "5.6 60 ; f3",
            "cam 645",
            "load cn400",
            "4 60 ; f4",
            "cam 35",
            "move 2-3 cam 645 1",
            "11 60 ; f5",
            "undo",
            "8 30 ; f6",
            "unload yes",
            "undo",
            "8 15 ; f7",
            "unload yes",
            "fix r1 1 11 60",
            "load bw400",
            "8 125 ; f8",
            "rewind",
            "load bw400",
            "8 60 ; f10",
            "cam 645",
            "2.8 60 ; f9");

    private enum Way {
        SAME_LINE,
        ANOTHER_LINE,
        RESTART,
        RESTART_THE_NEXT_DAY
    }

    /** Something that counts: a line that was accepted with its answer, or a start on that day. */
    private record Deed(String line, OffsetDateTime at, String answer) {}

    private final Map<List<Deed>, String> known = new HashMap<>();

    @ParameterizedTest(name = "{0} in a row fail, then {1}")
    @CsvSource({
        "1, SAME_LINE", "1, ANOTHER_LINE", "1, RESTART", "1, RESTART_THE_NEXT_DAY",
        "5, SAME_LINE", "5, ANOTHER_LINE", "5, RESTART", "5, RESTART_THE_NEXT_DAY"
    })
    void whatWasAcceptedIsThereAndNothingElse(int count, Way way) throws IOException {
        int refused = 0;
        int days = 0;
        boolean walking = true;
        for (int first = 1; walking; first += ALL ? 1 : 4) {
            walking = false;
            for (FailingCalls.Kind kind : FailingCalls.Kind.values()) {
                if (ALL || kind.ordinal() == first / 4 % FailingCalls.Kind.values().length) {
                    FailingCalls fault = new FailingCalls(first, count, kind);
                    refused += day(fault, way, "call " + first + ", " + count + " " + kind + ", " + way);
                    walking |= fault.calls() >= first;
                    days++;
                }
            }
        }
        assertTrue(refused > 20, "only " + refused + " lines were refused");
        System.out.println(days + " days, " + count + " in a row, " + way + ": " + refused + " lines refused, 0 wrong");
    }

    @Test
    void onADiskThatWorksEachLineIsAccepted() throws IOException {
        PipeOnMemory pipe = PipeOnMemory.start(new MemoryFileSystem(), PipeOnMemory.DAY);
        for (String line : LINES) {
            Outcome outcome = pipe.type(line, PipeOnMemory.DAY);
            assertTrue(outcome instanceof Outcome.Accepted, line + ": " + outcome);
        }
    }

    private int day(FailingCalls fault, Way way, String where) throws IOException {
        MemoryFileSystem drive = new MemoryFileSystem();
        drive.fault(fault);
        List<Deed> deeds = new ArrayList<>();
        PipeOnMemory pipe = start(drive, PipeOnMemory.DAY, deeds);
        int refused = 0;
        OffsetDateTime at = PipeOnMemory.DAY;
        for (String line : LINES) {
            at = at.plusSeconds(40);
            for (int attempt = 0; attempt < 12; attempt++) {
                Outcome outcome = pipe.type(line, at);
                if (!PipeOnMemory.isNotSaved(outcome)) {
                    count(line, at, outcome, deeds);
                    break;
                }
                refused++;
                if (way == Way.ANOTHER_LINE) {
                    String other = "note r1 another line, " + refused;
                    count(other, at, pipe.type(other, at), deeds);
                } else if (way != Way.SAME_LINE) {
                    pipe.end();
                    at = way == Way.RESTART ? at : at.plusDays(1);
                    pipe = start(drive, at, deeds);
                }
            }
        }
        pipe.end();
        drive.fault((call, path) -> {});
        deeds.add(new Deed("", at, ""));
        assertEquals(known.computeIfAbsent(deeds, this::alone), PipeOnMemory.found(drive, at, where), where);
        return refused;
    }

    private static void count(String line, OffsetDateTime at, Outcome outcome, List<Deed> deeds) {
        if (outcome instanceof Outcome.Accepted accepted) {
            deeds.add(new Deed(line, at, words(accepted)));
        }
    }

    /** Where the export failed its file is not spoken of. */
    private static String words(Outcome.Accepted accepted) {
        String text = accepted.answer().text();
        int end = text.indexOf(" Its JSON is");
        return end < 0 ? text : text.substring(0, end);
    }

    private static PipeOnMemory start(MemoryFileSystem drive, OffsetDateTime at, List<Deed> deeds) throws IOException {
        for (int attempt = 0; true; attempt++) {
            try {
                PipeOnMemory pipe = PipeOnMemory.start(drive, at);
                deeds.add(new Deed("", at, ""));
                return pipe;
            } catch (IOException e) {
                if (attempt > 12) {
                    throw e;
                }
            }
        }
    }

    /** The accepted lines alone, on a disk that works: what they come to. */
    private String alone(List<Deed> deeds) {
        try {
            MemoryFileSystem drive = new MemoryFileSystem();
            PipeOnMemory pipe = PipeOnMemory.start(drive, deeds.get(0).at);
            for (Deed deed : deeds.subList(1, deeds.size() - 1)) {
                if (deed.line.isEmpty()) {
                    pipe.end();
                    pipe = PipeOnMemory.start(drive, deed.at);
                } else {
                    Outcome outcome = pipe.type(deed.line, deed.at);
                    assertEquals(
                            deed.answer,
                            outcome instanceof Outcome.Accepted accepted ? words(accepted) : outcome.toString(),
                            deed.line);
                }
            }
            pipe.end();
            return PipeOnMemory.found(drive, deeds.get(deeds.size() - 1).at, "alone");
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
