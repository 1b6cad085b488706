package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.console.Console;
import takeup.json.Json;
import takeup.json.JsonText;

/**
 * The program is killed ({@code kill -9}) at moments drawn from a seed, and what it had answered must be in the folder.
 * 25 kills by default, more with {@code -Dkills=200}. A kill takes the process and not the machine: that records are
 * forced is seen elsewhere.
 */
@Tag("long")
class KillIT {
    private static final int KILLS = Integer.getInteger("kills", 25);
    private static final int KILLS_IN_A_FOLDER = 8;
    /** How many frames the film in each holds. */
    private static final List<Integer> HELD = List.of(36, 16);

    private static final List<String> ROLLS = List.of("R0001", "R0002");

    @TempDir
    Path scratch;

    /**
     * The notes of the frames of each roll that is there; every frame has a note of its own, a burst one for all of it.
     */
    private record Logged(Map<String, List<String>> rolls) {
        Logged with(String roll, List<String> notes) {
            Map<String, List<String>> all = new TreeMap<>(rolls);
            all.put(roll, List.copyOf(notes));
            return new Logged(all);
        }

        Logged and(String roll, String note, int count) {
            List<String> notes = new ArrayList<>(rolls.getOrDefault(roll, List.of()));
            for (int i = 0; i < count; i++) {
                notes.add(note);
            }
            return with(roll, notes);
        }

        /**
         * Whether it is what was there before and the first frames of a burst: a kill may cut off a write where a page
         * of memory ends.
         */
        boolean isPartOf(Logged before, Logged after) {
            return rolls.keySet().equals(after.rolls.keySet())
                    && rolls.entrySet().stream().allMatch(it -> {
                        List<String> was = before.rolls.getOrDefault(it.getKey(), List.of());
                        List<String> all = after.rolls.get(it.getKey());
                        int now = it.getValue().size();
                        return now >= was.size()
                                && now <= all.size()
                                && all.subList(0, was.size()).equals(was)
                                && all.subList(0, now).equals(it.getValue());
                    });
        }
    }

    /** Lines to type, and what is logged after none, one, two … of them. */
    private static final class Script {
        private final List<String> lines = new ArrayList<>();
        private final List<Logged> after = new ArrayList<>();

        Script(Logged before, Random random, String name) {
            after.add(before);
            Logged logged = before;
            for (int i = 0; i < ROLLS.size(); i++) {
                if (!before.rolls.containsKey(ROLLS.get(i))) {
                    type(i == 0 ? "cam 35" : "cam 645", logged);
                    logged = logged.with(ROLLS.get(i), List.of());
                    type("load bw400", logged);
                    type("m 5.6 125", logged);
                }
            }
            int active = random.nextInt(2);
            type(active == 0 ? "cam 35" : "cam 645", logged);
            for (int i = 0; i < 24; i++) {
                String note = name + "-" + i;
                int what = random.nextInt(10);
                if (what < 5) {
                    Logged without = logged;
                    logged = logged.and(ROLLS.get(active), note, 1);
                    type(". ; " + note, logged);
                    if (what == 0) {
                        logged = without;
                        type("undo", logged);
                    }
                } else if (what < 8) {
                    int count = 2 + random.nextInt(5);
                    int left = HELD.get(active)
                            - logged.rolls.get(ROLLS.get(active)).size();
                    if (left >= 0 && count > left) {
                        count = 1; // more than the film holds would be asked about
                    }
                    logged = logged.and(ROLLS.get(active), note, count);
                    type("8 125 x" + count + " ; " + note, logged);
                } else if (what == 8) {
                    type("m 8 " + (random.nextBoolean() ? "125" : "250"), logged);
                } else {
                    active = 1 - active;
                    type(active == 0 ? "cam 35" : "cam 645", logged);
                }
            }
        }

        private void type(String line, Logged then) {
            lines.add(line);
            after.add(then);
        }
    }

    @Test
    void whatWasAnsweredBeforeAKillIsInTheFolderAndAtMostTheLineInFlightBesides() throws Exception {
        Random random = new Random(20260912);
        int inFlight = 0;
        int answered = 0;
        int torn = 0;
        int halves = 0;
        Logged logged = new Logged(Map.of());
        Path folder = scratch;
        for (int kill = 0; kill < KILLS; kill++) {
            if (kill % KILLS_IN_A_FOLDER == 0) {
                folder = Files.createDirectory(scratch.resolve("folder-" + kill));
                logged = new Logged(Map.of());
            }
            Script script = new Script(logged, random, String.valueOf(kill));
            int acknowledged = typeAndKill(folder, script.lines, random);
            Installed.Ended check = reads("check", folder.toString());
            logged = logged(folder);
            String where = "kill " + kill + ", after " + acknowledged + " answers to " + script.lines;
            Logged before = script.after.get(acknowledged);
            Logged after = script.after.get(Math.min(acknowledged + 1, script.lines.size()));
            if (!logged.equals(before) && !logged.isPartOf(before, after)) {
                assertEquals(after, logged, where);
            }
            inFlight += logged.equals(before) ? 0 : 1;
            halves += logged.equals(before) || logged.equals(after) ? 0 : 1;
            torn += check.status() == 0 ? 0 : 1;
            assertTrue(check.status() == 0 || onlyTellsOfATornTail(check), where + "\n" + check);
            answered += acknowledged;
        }
        assertTrue(answered > KILLS, "the program was killed before it had said anything");
        System.out.println(
                KILLS + " kills, " + answered + " answers, " + inFlight + " times the line in flight was kept too, "
                        + halves + " times a part of its frames, " + torn + " torn tails");
    }

    /**
     * An earlier kill's tail lies aside by now, and what was half written when this one came is swept by the next
     * start.
     */
    private static boolean onlyTellsOfATornTail(Installed.Ended check) {
        List<String> lines = check.out().lines().toList();
        return check.status() == 1
                && lines.subList(0, lines.size() - 1).stream()
                        .allMatch(it -> it.contains("the last line stops in the middle")
                                || it.contains("zeros follow the last line")
                                || it.contains("the end of the last line is damaged")
                                || it.contains("they were never confirmed on screen")
                                || it.contains("left by a program that was stopped"));
    }

    /** Types lines and kills the program somewhere among them; how many had been answered. */
    private int typeAndKill(Path folder, List<String> lines, Random random) throws IOException, InterruptedException {
        Process process = line(folder);
        int before = random.nextInt(lines.size());
        boolean allAtOnce = random.nextBoolean();
        long wait = random.nextInt(allAtOnce ? 40_000_000 : 3_000_000);
        int answers = 0;
        try (BufferedReader reader =
                        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
                OutputStream in = process.getOutputStream()) {
            if (allAtOnce) {
                type(in, String.join("\n", lines));
            }
            for (; answers < before; answers++) {
                if (!allAtOnce) {
                    type(in, lines.get(answers));
                }
                acknowledged(reader.readLine(), lines.get(answers));
            }
            if (!allAtOnce) {
                type(in, lines.get(answers));
            }
            LockSupport.parkNanos(wait);
            process.toHandle().destroyForcibly();
            process.waitFor();
            for (String answer = reader.readLine(); answer != null; answer = reader.readLine()) {
                if (answer.endsWith("}")) {
                    acknowledged(answer, lines.get(answers));
                    answers++;
                }
            }
        }
        return answers;
    }

    private static void type(OutputStream in, String line) throws IOException {
        in.write((line + "\n").getBytes(StandardCharsets.UTF_8));
        in.flush();
    }

    private static void acknowledged(String answer, String line) {
        assertTrue(answer != null && answer.startsWith("{\"ok\":true,"), line + ": " + answer);
    }

    private Process line(Path folder) throws IOException {
        return Installed.program(
                        scratch,
                        Map.of(),
                        List.of("line", "--json", "--data", folder.toString(), "--clock", "2026-09-12T15:00+02:00"))
                .start();
    }

    private static Logged logged(Path folder) {
        Logged logged = new Logged(Map.of());
        for (String id : ROLLS) {
            Installed.Ended roll = roll(folder, id);
            if (!roll.err().contains("there is no roll")) {
                logged = logged.with(id, notes(roll.out()));
            }
        }
        return logged;
    }

    /**
     * A command that only reads, here and not in a process of its own: starting a hundred of those would take minutes.
     */
    private static Installed.Ended reads(String... arguments) {
        ByteArrayOutputStream answers = new ByteArrayOutputStream();
        ByteArrayOutputStream errors = new ByteArrayOutputStream();
        int status = Subcommands.run(arguments, new Console(answers, errors, Map.of("LC_ALL", "C.UTF-8")));
        return new Installed.Ended(
                status, answers.toString(StandardCharsets.UTF_8), errors.toString(StandardCharsets.UTF_8));
    }

    private static Installed.Ended roll(Path folder, String roll) {
        return reads("roll", roll, "--json", "--data", folder.toString());
    }

    private static List<String> notes(String roll) {
        List<String> notes = new ArrayList<>();
        for (Json frame : ((Json.Arr) read(roll).fields().get("frames")).items()) {
            notes.add(((Json.Text) ((Json.Obj) frame).fields().get("note")).value());
        }
        return notes;
    }

    private static Json.Obj read(String json) {
        try {
            return (Json.Obj) JsonText.read(json);
        } catch (JsonText.NotJson e) {
            throw new AssertionError(e.getMessage() + ": " + json, e);
        }
    }

    @Test
    void anUnloadThatWasKilledIsEitherNotBegunOrFinishedByTheNextStart() throws Exception {
        Random random = new Random(36);
        int finished = 0;
        int left = 0;
        int kills = Math.max(1, KILLS * 2 / 5);
        for (int kill = 0; kill < kills; kill++) {
            Path folder = scratch.resolve("unload-" + kill);
            boolean answered = unloadAndKill(folder, random.nextInt(100_000_000));
            String where = "kill " + kill;
            left += Files.exists(folder.resolve("rolls/open/R0001.journal"))
                            && !Files.exists(folder.resolve("rolls/finished/R0001.journal"))
                    ? 1
                    : 0;
            List<String> before = readings(folder);
            Installed.Ended next = Installed.run(
                    scratch,
                    "say\n",
                    List.of("line", "--data", folder.toString(), "--clock", "2026-09-12T16:00+02:00"));
            assertEquals(0, next.status(), where + "\n" + next);
            assertEquals(readings(folder), before, where + ": read before the next start and after it");
            String state = state(folder);
            if (answered) {
                assertEquals("finished", state, where);
            }
            if (state.equals("finished")) {
                finished++;
                settled(folder, where);
            } else {
                assertEquals("open", state, where);
                assertTrue(Files.exists(folder.resolve("rolls/open/R0001.journal")), where);
                assertFalse(
                        Files.exists(folder.resolve("exports/R0001.json")),
                        where + ": an export of a roll that is still in the camera");
            }
            assertEquals(12, notes(roll(folder, "R0001").out()).size(), where);
        }
        System.out.println(kills + " kills at unload, " + finished + " rolls finished, " + left
                + " were still with the open ones");
    }

    /** What commands that only read say of the roll. */
    private List<String> readings(Path folder) {
        String data = folder.toString();
        return List.of(
                roll(folder, "R0001").toString(),
                reads("rolls", "--json", "--data", data).toString(),
                reads("frames", "--data", data).toString(),
                Installed.run(scratch, "", List.of("completion", "--words", "rolls", "--data", data))
                        .toString());
    }

    private boolean unloadAndKill(Path folder, long wait) throws IOException, InterruptedException {
        Process process = line(folder);
        try (BufferedReader reader =
                        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
                OutputStream in = process.getOutputStream()) {
            for (String line : List.of("cam 35", "load bw400", "8 125 x12 ; the eight")) {
                type(in, line);
                acknowledged(reader.readLine(), line);
            }
            type(in, "unload yes");
            LockSupport.parkNanos(wait);
            process.toHandle().destroyForcibly();
            process.waitFor();
            String answer = reader.readLine();
            return answer != null && answer.endsWith("}");
        }
    }

    private static String state(Path folder) {
        return ((Json.Text) read(roll(folder, "R0001").out()).fields().get("state")).value();
    }

    private static void settled(Path folder, String where) throws IOException {
        assertTrue(
                Files.exists(folder.resolve("rolls/finished/R0001.journal")),
                where + ": the journal is with the finished ones");
        assertFalse(
                Files.exists(folder.resolve("rolls/open/R0001.journal")),
                where + ": the journal is still with the open ones");
        assertEquals(roll(folder, "R0001").out(), Files.readString(folder.resolve("exports/R0001.json")), where);
        Installed.Ended check = reads("check", folder.toString());
        assertEquals(0, check.status(), where + "\n" + check);
    }

    /** The moments between the record of an unload and its end, as a kill leaves them. */
    @ParameterizedTest(name = "export {0}")
    @ValueSource(strings = {"not yet written", "half written", "written"})
    void whatAKillLeftOfAnUnloadIsDoneAtTheNextStart(String export) throws IOException {
        Path folder = scratch.resolve("left");
        Installed.run(
                scratch,
                "cam 35\nload bw400\n8 125 x12 ; the eight\nunload yes\n",
                List.of("line", "--data", folder.toString(), "--clock", "2026-09-12T15:00+02:00"));
        Files.move(folder.resolve("rolls/finished/R0001.journal"), folder.resolve("rolls/open/R0001.journal"));
        if (!export.equals("written")) {
            Files.delete(folder.resolve("exports/R0001.json"));
        }
        if (export.equals("half written")) {
            Files.writeString(folder.resolve("exports/.R0001.json.part"), "{\"format\": \"takeup-r");
        }
        Installed.Ended before = reads("check", folder.toString());
        assertEquals(1, before.status(), before.toString());
        assertTrue(before.out().contains("R0001 is finished but lies with the open rolls"), before.toString());
        assertEquals("finished", state(folder));
        assertEquals(
                0,
                Installed.run(scratch, "", List.of("line", "--data", folder.toString()))
                        .status());
        settled(folder, export);
    }
}
