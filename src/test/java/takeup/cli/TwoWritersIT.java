package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.Outside;
import takeup.json.Json;
import takeup.json.JsonText;

/**
 * A photographer's laptop (R) and an assistant's (AB) on one day, their folders carried both ways: every roll is there
 * once, nothing conflicts.
 */
class TwoWritersIT {
    private static final List<String> OWN = List.of(
            "lock", "draft", "reserve", "went-back-to", "last-roll", "last-roll-AB", "settings.json", "reports");

    @TempDir
    Path scratch;

    @BeforeEach
    void twoLaptops() throws IOException {
        Files.createDirectories(scratch.resolve("ours"));
        Files.createDirectories(scratch.resolve("theirs"));
        Files.writeString(scratch.resolve("theirs/settings.json"), "{\"writer\": \"AB\"}\n");
    }

    private Installed.Ended takeup(String input, String... arguments) {
        return Installed.run(scratch, input, List.of(arguments));
    }

    private void type(String folder, String clock, String... lines) {
        Installed.Ended ended = takeup(String.join("\n", lines) + "\n", "line", "--data", folder, "--clock", clock);
        assertEquals(0, ended.status(), ended.toString());
        assertEquals("", ended.err());
    }

    private void morning() {
        type("ours", "2026-09-12T10:00+02:00", "cam 645 1", "load cn400", "m 8 250", "8 250 x3");
        type(
                "theirs",
                "2026-09-12T10:05+02:00",
                "cam 35",
                "load bw400",
                "m 11 250",
                "11 250 x5",
                "unload yes",
                "load bw400");
    }

    private void afternoon() {
        type("ours", "2026-09-12T15:00+02:00", "m 8 250", "8 250 x13", "unload");
        type("theirs", "2026-09-12T15:05+02:00", "m 11 250", "11 250 x2");
    }

    /** By hand: R0001 3 + 13 frames; AB0001 5; AB0002 2, in the camera. */
    private void everyRollIsThereOnce() throws JsonText.NotJson {
        // A start clears up what came back of a roll that was finished meanwhile.
        for (String folder : List.of("ours", "theirs")) {
            Installed.Ended start = takeup("say\n", "line", "--data", folder, "--clock", "2026-09-12T18:00+02:00");
            assertEquals(0, start.status(), start.toString());
            assertTrue(
                    start.err()
                            .lines()
                            .allMatch(it -> it.contains(
                                    "it lies with the open and with the finished rolls; the longer one counts")),
                    start.toString());
        }
        for (String folder : List.of("ours", "theirs")) {
            Installed.Ended rolls = takeup("", "rolls", "--json", "--data", folder);
            assertEquals("", rolls.err(), folder);
            List<String> found = new ArrayList<>();
            for (Json roll :
                    ((Json.Arr) ((Json.Obj) JsonText.read(rolls.out())).fields().get("rolls")).items()) {
                Map<String, Json> fields = ((Json.Obj) roll).fields();
                found.add(((Json.Text) fields.get("roll")).value() + " "
                        + (int) ((Json.Num) fields.get("framesUsed")).value() + " "
                        + ((Json.Text) fields.get("state")).value());
            }
            assertEquals(List.of("AB0001 5 finished", "AB0002 2 open", "R0001 16 finished"), found, folder);
            Installed.Ended check = takeup("", "check", folder);
            assertEquals(0, check.status(), check.toString());
        }
        Installed.Ended end = takeup("", "day-end", "--data", "ours", "--clock", "2026-09-12T18:00+02:00");
        assertTrue(end.out().contains("AB0002  in 35") && end.out().contains("AB0001  out of 35"), end.toString());
    }

    private void rsync(String from, String to) throws IOException {
        List<String> command = new ArrayList<>(List.of("rsync", "-a", "--update"));
        OWN.forEach(it -> command.add("--exclude=/" + it));
        command.addAll(List.of(from + "/", to + "/"));
        Installed.Ended ended = Installed.run(Installed.process(scratch, Map.of(), command), "");
        assertEquals(0, ended.status(), ended.toString());
    }

    /** With --update rsync goes by whole seconds, and a morning here may take less than one. */
    private void hoursPass() throws IOException {
        for (String folder : List.of("ours", "theirs")) {
            try (Stream<Path> all = Files.walk(scratch.resolve(folder))) {
                for (Path file : all.filter(Files::isRegularFile).toList()) {
                    FileTime written = Files.getLastModifiedTime(file);
                    Files.setLastModifiedTime(
                            file, FileTime.from(written.toInstant().minus(4, ChronoUnit.HOURS)));
                }
            }
        }
    }

    @Test
    void rsyncBothWaysAndAgain() throws IOException, JsonText.NotJson {
        Outside.needs("rsync");
        morning();
        rsync("ours", "theirs");
        rsync("theirs", "ours");
        hoursPass();
        afternoon();
        for (int again = 0; again < 2; again++) {
            rsync("ours", "theirs");
            rsync("theirs", "ours");
        }
        everyRollIsThereOnce();
    }

    private void git(String folder, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                "git",
                "-C",
                folder,
                "-c",
                "user.name=crew",
                "-c",
                "user.email=crew@boathouse.example",
                "-c",
                "init.defaultBranch=main",
                "-c",
                "pull.rebase=false"));
        command.addAll(List.of(arguments));
        Installed.Ended ended = Installed.run(Installed.process(scratch, Map.of(), command), "");
        assertEquals(0, ended.status(), String.join(" ", arguments) + ": " + ended);
    }

    private void keep(String folder) {
        git(folder, "add", "-A");
        git(folder, "commit", "-q", "--allow-empty", "-m", "the day so far");
    }

    @Test
    void gitMergeBothWaysAndAgain() throws IOException, JsonText.NotJson {
        Outside.needs("git");
        for (String folder : List.of("ours", "theirs")) {
            git(folder, "init", "-q");
            Files.writeString(scratch.resolve(folder).resolve(".gitignore"), String.join("\n", OWN) + "\n");
        }
        morning();
        keep("ours");
        keep("theirs");
        git("ours", "pull", "-q", "--no-edit", "--allow-unrelated-histories", "../theirs", "HEAD");
        git("theirs", "pull", "-q", "--no-edit", "--allow-unrelated-histories", "../ours", "HEAD");
        afternoon();
        for (int again = 0; again < 2; again++) {
            keep("ours");
            keep("theirs");
            git("ours", "pull", "-q", "--no-edit", "../theirs", "HEAD");
            git("theirs", "pull", "-q", "--no-edit", "../ours", "HEAD");
        }
        everyRollIsThereOnce();
    }

    @Test
    void onlyTheLaptopThatLoadedARollWritesToIt() throws IOException {
        morning();
        Files.copy(
                scratch.resolve("theirs/rolls/finished/AB0001.journal"),
                scratch.resolve("ours/rolls/finished/AB0001.journal"));
        Installed.Ended refused = takeup(
                "note ab1 the cox\nlost ab1 2\nload ab1\nload cn400\n",
                "line",
                "--data",
                "ours",
                "--clock",
                "2026-09-12T16:00+02:00");
        assertEquals(
                3,
                refused.out()
                        .lines()
                        .filter(it -> it.contains("AB0001 is a roll of another laptop, whose numbers begin with AB"))
                        .count(),
                refused.toString());
    }

    @Test
    void aCopyThatConflictsIsNamed() throws IOException {
        morning();
        Path open = scratch.resolve("ours/rolls/open");
        Files.copy(open.resolve("R0001.journal"), open.resolve("R0001 (conflicted copy).journal"));
        Files.writeString(open.resolve("R0001.sync-conflict-20260912-1000.journal"), "something else\n");
        Files.copy(scratch.resolve("ours/days/2026-09-12.journal"), scratch.resolve("ours/days/2026-09-12 2.journal"));
        Installed.Ended check = takeup("", "check", "ours");
        assertEquals(1, check.status());
        for (String words : List.of(
                "R0001 (conflicted copy).journal: a copy of R0001.journal, which holds all that is in it",
                "R0001.sync-conflict-20260912-1000.journal: a conflicting copy of R0001.journal, which differs",
                "2026-09-12 2.journal: a copy of 2026-09-12.journal")) {
            assertTrue(check.out().contains(words), words + " is missing in " + check);
        }
    }
}
