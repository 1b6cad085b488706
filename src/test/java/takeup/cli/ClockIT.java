package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.Outside;
import takeup.json.Json;
import takeup.json.JsonText;

/**
 * The wall clock of the running program is really moved between frames, by libfaketime; its running clock is left
 * alone.
 */
class ClockIT {
    @TempDir
    static Path scratch;

    private static String library = "";

    @BeforeAll
    static void needsAClockToMove() {
        Outside.needs("faketime");
        library = Installed.run(
                        Installed.process(
                                scratch,
                                Map.of(),
                                List.of("faketime", "-m", "-f", "+0", "sh", "-c", "echo $LD_PRELOAD")),
                        "")
                .out()
                .strip();
    }

    @Test
    void hoursBackADayAheadAndTheEndOfSummerTimeLeaveOrderAndCountAsTheyWere() throws IOException, JsonText.NotJson {
        // Ten minutes before summer time ends in Berlin (2026-10-25 03:00 becomes 02:00, that is 01:00 UTC).
        Instant start = Instant.parse("2026-10-25T00:50:00Z");
        try (Run run = new Run("day", "Europe/Berlin", start)) {
            run.says("cam 645 1", "-");
            run.says("load cn400", "-");
            run.says("m 5.6 125", "-");
            run.says("4 125 ; one", "-");
            run.move(Duration.ofHours(-2));
            run.says(". ; two", "the clock went back 2 h since frame 1;");
            run.says(". ; three", "-");
            run.move(Duration.ofDays(1));
            run.says(
                    ". ; four",
                    "the clock jumped ahead 1 day (it was set, or the computer slept) and changed its zone from "
                            + "+02:00 to +01:00 since frame 3;");
            run.says(". ; five", "-");
            run.move(Duration.ofHours(-23));
            run.says(". ; six", "the clock went back 23 h and changed its zone from +01:00 to +02:00 since frame 5;");
            run.says(". ; seven", "-");
        }
        assertEquals("1 one, 2 two, 3 three, 4 four, 5 five, 6 six, 7 seven", frames("day"));
        Installed.Ended check = Installed.run(scratch, "", List.of("check", "day"));
        assertEquals(0, check.status(), check.all());
    }

    @Test
    void summerTimeEndsWhileTheProgramRuns() throws IOException, JsonText.NotJson {
        try (Run run = new Run("dst", "Europe/Berlin", Instant.parse("2026-10-25T00:58:32Z"))) {
            run.says("cam 35", "-");
            run.says("load bw400", "-");
            run.says("8 125 ; one", "-");
            run.move(Duration.ofSeconds(100));
            run.says("8 125 ; two", "the clock changed its zone from +02:00 to +01:00 since frame 1");
            run.says("8 125 ; three", "-");
        }
        assertEquals("1 one, 2 two, 3 three", frames("dst"));
        String json = roll("dst");
        assertTrue(
                json.contains("T02:58:3")
                        && json.contains("+02:00\"")
                        && json.contains("T02:00:1")
                        && json.contains("+01:00\""),
                json);
    }

    @Test
    void anotherZoneAfterARestartIsSaidAndTheClockIsNot() throws IOException, JsonText.NotJson {
        Instant start = Instant.parse("2026-09-12T13:00:00Z");
        try (Run run = new Run("travel", "Europe/Berlin", start)) {
            run.says("cam 35", "-");
            run.says("load bw400", "-");
            run.says("8 125 ; one", "-");
        }
        try (Run run = new Run("travel", "America/New_York", start.plusSeconds(9 * 3600))) {
            run.says("8 125 ; two", "the clock changed its zone from +02:00 to -04:00 since frame 1");
            run.says("8 125 ; three", "-");
        }
        try (Run run = new Run("travel", "Europe/London", start.plusSeconds(8 * 3600))) {
            run.says("8 125 ; four", "and changed its zone from -04:00 to +01:00 since frame 3;");
        }
        assertEquals("1 one, 2 two, 3 three, 4 four", frames("travel"));
    }

    private static String roll(String folder) {
        Installed.Ended ended = Installed.run(scratch, "", List.of("roll", "R0001", "--json", "--data", folder));
        assertEquals(0, ended.status(), ended.all());
        return ended.out();
    }

    /** Numbers and notes, in the order of the export; its sequence counts them. */
    private static String frames(String folder) throws JsonText.NotJson {
        List<String> all = new ArrayList<>();
        Json.Arr frames = (Json.Arr)
                ((Json.Obj) JsonText.read(roll(folder))).field("frames").orElseThrow();
        for (Json json : frames.items()) {
            Json.Obj frame = (Json.Obj) json;
            assertEquals(
                    all.size() + 1, (int) ((Json.Num) frame.field("sequence").orElseThrow()).value());
            all.add((int) ((Json.Num) frame.field("frame").orElseThrow()).value() + " "
                    + ((Json.Text) frame.field("note").orElseThrow()).value());
        }
        return String.join(", ", all);
    }

    /** The pipe of the program, under a clock of its own. */
    private static final class Run implements AutoCloseable {
        private final Path offset;
        private final Process process;
        private final Writer in;
        private final BufferedReader out;
        private Duration ahead;

        Run(String folder, String zone, Instant start) throws IOException {
            offset = scratch.resolve(folder + "-clock");
            ahead = Duration.between(Instant.now(), start);
            move(Duration.ZERO);
            // Without the last one timed waits of a Java of our days spin.
            ProcessBuilder program = Installed.program(
                    scratch,
                    Map.of(
                            "TZ",
                            zone,
                            "LD_PRELOAD",
                            library,
                            "FAKETIME_TIMESTAMP_FILE",
                            offset.toString(),
                            "FAKETIME_NO_CACHE",
                            "1",
                            "FAKETIME_DONT_FAKE_MONOTONIC",
                            "1",
                            "FAKETIME_FORCE_MONOTONIC_FIX",
                            "0"),
                    List.of("line", "--json", "--data", folder));
            process = program.redirectErrorStream(true).start();
            in = process.outputWriter();
            out = process.inputReader();
        }

        void move(Duration by) throws IOException {
            ahead = ahead.plus(by);
            Files.writeString(offset, (ahead.isNegative() ? "" : "+") + ahead.toSeconds());
        }

        /** What the answer to a line says about the clock; a dash is nothing. */
        void says(String line, String words) throws IOException, JsonText.NotJson {
            in.write(line + "\n");
            in.flush();
            String text = out.readLine();
            Json.Obj answer = (Json.Obj) JsonText.read(text);
            assertEquals(
                    "true",
                    answer.field("ok")
                            .map(it -> String.valueOf(((Json.Bool) it).value()))
                            .orElse(""),
                    text);
            assertTrue(
                    words.equals("-") ? !text.contains("\"clock\"") : text.contains(words),
                    line + " should say " + words + ": " + text);
        }

        @Override
        public void close() throws IOException {
            in.close();
            try {
                assertEquals(0, process.waitFor());
            } catch (InterruptedException e) {
                throw new IOException(e);
            }
        }
    }
}
