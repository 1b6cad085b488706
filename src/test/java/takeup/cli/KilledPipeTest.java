package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import takeup.command.Outcome;
import takeup.disk.MemoryFileSystem;

/**
 * The program ends without a word in the middle of a line, at some call on the disk and at some byte of what that call
 * writes, and in half of the cases once more in the middle of the next day's start. After the start that ends in order
 * the line is there whole or was never typed, and the day goes on. 40 points of each kind of line, more with
 * {@code -Dkills=1000}. That the disk in memory does as a real one does is for {@link KilledLineIT} to show.
 */
@Tag("slow")
class KilledPipeTest {
    private static final int POINTS = Math.max(40, Integer.getInteger("kills", 40));

    /** What is being done when the program ends, and what was done before. */
    private enum Line {
        LOAD_WITH_A_BAG("load bw400"),
        UNDO_OF_UNLOAD("undo"),
        MOVE("move 2-3 cam 645 1"),
        REWIND("rewind"),
        FIX_OF_A_FINISHED_ROLL("fix r1 2 11 60");

        private final String text;

        Line(String text) {
            this.text = text;
        }

        /** A day before it, another one each time. */
        List<String> before(Random random) {
            List<String> lines =
                    new ArrayList<>(List.of("bag add " + (2 + random.nextInt(3)) + " bw400 135", "cam 35"));
            if (random.nextBoolean()) {
                lines.add("m 5.6 125 @400");
            }
            if (this != LOAD_WITH_A_BAG || random.nextBoolean()) {
                film(lines, random, "35");
            }
            switch (this) {
                case LOAD_WITH_A_BAG -> {
                    if (lines.contains("load bw400")) {
                        lines.add("unload yes");
                    }
                }
                case UNDO_OF_UNLOAD -> lines.add("unload yes");
                case FIX_OF_A_FINISHED_ROLL -> {
                    lines.add("unload yes");
                    if (random.nextBoolean()) {
                        film(lines, random, "35b");
                    }
                }
                case MOVE -> {
                    lines.addAll(List.of("cam 645", "load cn400", "4 60 ; m1", "cam 35"));
                    if (random.nextBoolean()) {
                        lines.add("8 15 ; m2");
                    }
                }
                case REWIND -> {}
            }
            return lines;
        }

        private static void film(List<String> lines, Random random, String notes) {
            lines.add("load bw400");
            for (int frame = 0; frame < 3 + random.nextInt(4); frame++) {
                lines.add("8 125 ; " + notes + " " + frame);
            }
            if (random.nextInt(3) == 0) {
                lines.add("undo");
                lines.add("8 60 ; " + notes + " again");
            }
        }
    }

    /** Ends the program before a call, or within a write after so many of its bytes: nothing works from then on. */
    private static final class Kill implements MemoryFileSystem.Fault {
        private final int at;
        private final double part;
        private int calls;
        private boolean isWriting;

        Kill(int at, double part) {
            this.at = at;
            this.part = part;
        }

        @Override
        public void before(String call, Path path) throws IOException {
            isWriting = calls++ == at && call.equals("write");
            if (calls > at && !isWriting) {
                throw new IOException("killed");
            }
        }

        @Override
        public int takes(int bytes) {
            return isWriting ? (int) (bytes * part) : bytes;
        }
    }

    private static final OffsetDateTime NEXT_DAY = PipeOnMemory.DAY.plusDays(1);

    private final Map<List<String>, String> known = new HashMap<>();
    private final Map<List<String>, Integer> calls = new HashMap<>();
    private final Set<String> points = new HashSet<>();
    private Line line;
    private int whole;
    private int dropped;

    @ParameterizedTest
    @EnumSource(Line.class)
    void aLineIsWholeOrWasNeverTypedAndTheNextDayGoesOn(Line killed) throws IOException {
        line = killed;
        for (int seed = 1; points.size() < POINTS; seed++) {
            Random random = new Random(seed);
            point(line.before(new Random(random.nextInt(12))), random);
        }
        assertTrue(whole > POINTS / 10 && dropped > POINTS / 10, whole + " whole, " + dropped + " dropped");
        System.out.println(line.text + ": ended at " + points.size() + " points, " + whole + " lines whole, " + dropped
                + " dropped, 0 wrong");
    }

    private void point(List<String> before, Random random) throws IOException {
        MemoryFileSystem drive = new MemoryFileSystem();
        PipeOnMemory pipe = typed(drive, before);
        int at = random.nextInt(calls.computeIfAbsent(before, this::callsOfTheLine));
        int bytes = random.nextInt(1000);
        drive.fault(new Kill(at, bytes / 1000.0));
        boolean isAnswered =
                pipe.type(line.text, PipeOnMemory.DAY.plusMinutes(before.size())) instanceof Outcome.Accepted;
        drive.forgetHolds();
        int again = random.nextBoolean() ? random.nextInt(80) : -1;
        if (again >= 0) {
            drive.fault(new Kill(again, random.nextDouble()));
            start(drive);
            drive.forgetHolds();
        }
        drive.fault((call, path) -> {});
        String where =
                before + ", " + line.text + " ended at call " + at + ", " + bytes + " thousandths, again " + again;
        points.add(where);
        List<String> after = new ArrayList<>(before);
        after.add(line.text);
        String found = PipeOnMemory.found(drive, NEXT_DAY, where);
        boolean isWhole = isAnswered || !found.equals(foundAfter(before));
        assertEquals(foundAfter(isWhole ? after : before), found, where);
        whole += isWhole ? 1 : 0;
        dropped += isWhole ? 0 : 1;
        goOn(drive, isWhole ? after : before, where);
    }

    /** One more frame in the other camera, and the same film once more: answered as where nothing was ended. */
    private void goOn(MemoryFileSystem drive, List<String> lines, String where) throws IOException {
        MemoryFileSystem other = new MemoryFileSystem();
        typed(other, lines).end();
        List<String> answers = new ArrayList<>();
        List<String> expected = new ArrayList<>();
        PipeOnMemory here = PipeOnMemory.start(drive, NEXT_DAY);
        PipeOnMemory there = PipeOnMemory.start(other, NEXT_DAY);
        for (String more : List.of("cam 35", "load bw400", "5.6 60 ; the next day", "undo", "redo", "unload yes")) {
            answers.add(here.type(more, NEXT_DAY.plusHours(1)).toString().replaceAll("after=.*", ""));
            expected.add(there.type(more, NEXT_DAY.plusHours(1)).toString().replaceAll("after=.*", ""));
        }
        here.end();
        there.end();
        assertEquals(expected, answers, where);
        OffsetDateTime later = NEXT_DAY.plusDays(1);
        assertEquals(PipeOnMemory.found(other, later, where), PipeOnMemory.found(drive, later, where), where);
    }

    private static void start(MemoryFileSystem drive) {
        try {
            PipeOnMemory.start(drive, NEXT_DAY).end();
        } catch (IOException e) {
            // it was ended in the middle of it
        }
    }

    private static PipeOnMemory typed(MemoryFileSystem drive, List<String> lines) throws IOException {
        PipeOnMemory pipe = PipeOnMemory.start(drive, PipeOnMemory.DAY);
        for (int index = 0; index < lines.size(); index++) {
            Outcome outcome = pipe.type(lines.get(index), PipeOnMemory.DAY.plusMinutes(index));
            assertTrue(outcome instanceof Outcome.Accepted, lines.get(index) + ": " + outcome);
        }
        return pipe;
    }

    private int callsOfTheLine(List<String> before) {
        try {
            MemoryFileSystem drive = new MemoryFileSystem();
            PipeOnMemory pipe = typed(drive, before);
            Kill counter = new Kill(Integer.MAX_VALUE, 0);
            drive.fault(counter);
            pipe.type(line.text, PipeOnMemory.DAY.plusHours(1));
            return counter.calls + 1;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private String foundAfter(List<String> lines) {
        return known.computeIfAbsent(lines, it -> {
            try {
                MemoryFileSystem drive = new MemoryFileSystem();
                typed(drive, it).end();
                return PipeOnMemory.found(drive, NEXT_DAY, "whole");
            } catch (IOException e) {
                throw new AssertionError(e);
            }
        });
    }
}
