package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import takeup.Outside;
import takeup.files.ChainedExif;

/** Mishaps of a day with the installed program, each as it once cost a photographer a frame, a roll or a secret. */
class MishapsIT {
    private static final String TODAY = "2026-09-12T15:10+02:00";
    private static final String TOMORROW = "2026-09-13T09:00+02:00";

    @TempDir
    Path scratch;

    private ProcessBuilder line(String folder, String time, List<String> under) {
        List<String> command = new ArrayList<>(under);
        command.addAll(Installed.program(scratch, Map.of(), List.of("line", "--data", folder, "--clock", time))
                .command());
        return Installed.process(scratch, Map.of(), command);
    }

    private Installed.Ended type(String folder, String time, String lines) {
        return Installed.run(line(folder, time, List.of()), lines);
    }

    private Installed.Ended run(String... arguments) {
        return Installed.run(scratch, "", List.of(arguments));
    }

    /** What a kill left is looked at without a further JVM: there are many kills. */
    private Installed.Ended inProcess(String folder, String lines, String... arguments) {
        List<String> all = new ArrayList<>(List.of(arguments));
        all.addAll(List.of("--data", scratch.resolve(folder).toString()));
        return InProcess.run(lines, all);
    }

    private void day(String folder, String lines) {
        Installed.Ended day = type(folder, TODAY, lines);
        assertEquals(0, day.status(), day.toString());
    }

    private void shell(String script) {
        Installed.Ended ended = Installed.run(Installed.process(scratch, Map.of(), List.of("sh", "-ec", script)), "");
        assertEquals(0, ended.status(), ended.toString());
    }

    private static List<String> failing(String call, String how, String... paths) {
        List<String> strace = new ArrayList<>(List.of("strace", "-f", "-o", "/dev/null"));
        for (String path : paths) {
            strace.addAll(List.of("-P", path));
        }
        strace.addAll(List.of("-e", "trace=" + call, "-e", "inject=" + call + ":" + how));
        return strace;
    }

    /**
     * Wherever it is killed: the film is in the camera and takes frames there, or it is out and another one goes in.
     */
    @Tag("long")
    @Test
    void aFilmWhoseUnloadingWasBeingTakenBackIsInTheCameraOrOutOfItTheNextDay() {
        Outside.needs("strace");
        day("before", "cam 35\nload bw400\n8 125\nunload yes\n");
        int in = 0;
        for (String call : List.of("rename", "link", "unlink", "fsync", "fdatasync")) {
            boolean isKilled = true;
            for (int when = 1; isKilled; when++) {
                String folder = call + when;
                shell("cp -a before " + folder);
                isKilled = Installed.run(line(folder, TODAY, failing(call, "signal=KILL:when=" + when)), "undo\n")
                                .status()
                        != 0;
                boolean isOpen = inProcess(folder, "cam 35\n", "line", "--clock", TOMORROW)
                        .out()
                        .contains("R0001");
                Installed.Ended next =
                        inProcess(folder, isOpen ? "8 60\n" : "load bw400\n", "line", "--clock", TOMORROW);
                assertEquals(0, next.status(), folder + ": " + next);
                assertEquals(
                        isOpen ? 1 : 2,
                        inProcess(folder, "", "rolls", "--json").out().split("\"roll\"").length - 1,
                        folder);
                assertEquals(
                        isOpen ? "open" : "finished",
                        inProcess(folder, "", "roll", "1", "--json")
                                .out()
                                .replaceAll("(?s).*\"state\"\\s*:\\s*\"(\\w+)\".*", "$1"),
                        folder);
                Installed.Ended check = inProcess(folder, "", "check");
                assertEquals(0, check.status(), folder + ": " + check);
                in += isOpen ? 1 : 0;
            }
        }
        assertTrue(in > 5, "only " + in + " times the film was back in");
    }

    /** The journal that the frames leave cannot be written to: they stay there, and are nowhere else. */
    @Test
    void framesThatCouldNotBeMovedOnAFullDiskAreWhereTheyWereAndNowhereElse() {
        Outside.needs("strace");
        day("full", "cam 645\nload cn400\n4 60 ; stays\ncam 35\nload bw400\n8 125 ; one\n8 125 ; two\n8 125 ; three\n");
        String journal = scratch.resolve("full/rolls/open/R0001.journal").toString();
        String other = scratch.resolve("full/rolls/open/R0002.journal").toString();
        Installed.Ended moved = Installed.run(
                line("full", TODAY, failing("write,pwrite64,writev", "error=ENOSPC", other)),
                "move 2 cam 645 1\ncam 645\n5.6 60 ; next\n");
        assertTrue(moved.out().startsWith("Not done: NOT SAVED"), moved.toString());
        assertTrue(Files.exists(Path.of(journal)), journal);
        Installed.Ended next = type("full", TOMORROW, "cam 645\n5.6 60 ; last\ncam 35\n8 125 ; four\n");
        assertEquals(0, next.status(), next.toString());
        assertEquals(List.of("stays", "next", "last"), notes("full", "1"), moved + "" + next);
        assertEquals(List.of("one", "two", "three", "four"), notes("full", "2"), moved + "" + next);
    }

    private List<String> notes(String folder, String roll) {
        return run("roll", roll, "--csv", "--data", folder)
                .out()
                .lines()
                .skip(1)
                .map(it -> it.replaceAll(".*\\b(stays|next|last|one|two|three|four)\\b.*", "$1"))
                .toList();
    }

    /** For one start something else lies in the journal's place; then it is back, with its frames. */
    @Test
    void aRollThatCannotBeReadForOneStartKeepsItsCamera() {
        day("unread", "cam 35\nload bw400\n8 125\n8 60\n");
        shell("cd unread/rolls/open; mv R0001.journal ../../kept; mkdir R0001.journal");
        Installed.Ended unread = type("unread", TODAY, "cam 35\nload bw400\n8 30\n");
        assertTrue(unread.out().contains("R0001 cannot be read"), unread.toString());
        shell("cd unread/rolls/open; rmdir R0001.journal; mv ../../kept R0001.journal");
        Installed.Ended back = type("unread", TODAY, "cam 35\n8 15\n");
        assertTrue(back.out().contains("Frame 3 on R0001"), unread + "" + back);
        assertEquals(
                "unread: 1 roll, 3 frames, 1 day, all in order\n",
                run("check", "unread").out());
    }

    @Test
    void aClientsNameIsNoNameOfAShootAndLeavesWithNoRoll() throws IOException {
        Installed.Ended day = type(
                "secret",
                TODAY,
                "shoot Regatta day\nshoot client Ottoline Brackwater\ncam 35\nload bw400\n8 125\nunload yes\n");
        assertTrue(day.status() < 2, day.toString());
        String export = Files.readString(scratch.resolve("secret/exports/R0001.json"));
        assertFalse(export.contains("Brackwater"), export);
        assertTrue(export.contains("Regatta day"), export);
    }

    @Test
    @Timeout(50)
    void aDigitalPictureThatIsNothingButBlocksAndClocksThatAreAPipeEndWithASentence() throws IOException {
        day("pictures", "cam 35\nload bw400\n8 125\nunload yes\n");
        shell("mkdir nested following");
        ChainedExif.writeNested(scratch.resolve("nested/1.jpg"));
        ChainedExif.writeFollowing(scratch.resolve("following/1.jpg"));
        for (String folder : List.of("nested", "following")) {
            Installed.Ended digital = run("digital", "1", folder, "--data", "pictures");
            assertTrue(digital.status() < 2 && digital.all().contains("1.jpg"), digital.toString());
            assertFalse(digital.all().contains("StackOverflow") || digital.all().contains("mistake"), digital.all());
        }
        for (String clocks : List.of("mkfifo pictures/clocks.json", "ln -sf /dev/zero pictures/clocks.json")) {
            shell(clocks);
            Installed.Ended digital = Installed.run(
                    Installed.process(
                            scratch,
                            Map.of("PROGRAM", program()),
                            List.of("timeout", "8", program(), "digital", "1", "nested", "--data", "pictures")),
                    "");
            assertTrue(digital.status() < 2 && digital.err().contains("clocks.json"), clocks + ": " + digital);
            shell("rm pictures/clocks.json");
        }
    }

    private String program() {
        return Installed.program(scratch, Map.of(), List.of()).command().get(0);
    }

    @Test
    void aQuoteThatAPlansFileNeverClosesSwallowsNoMoment() throws IOException {
        Files.writeString(
                scratch.resolve("plan.csv"), "time,moment\n16:00,\"Launch\n16:30,Prize-giving\n17:00,Crew portraits\n");
        Installed.Ended plan = run("plan", "import", "plan.csv", "--data", "plan", "--clock", TODAY);
        assertEquals(1, plan.status(), plan.toString());
        assertTrue(plan.err().contains("plan.csv:2: a quote is opened here"), plan.toString());
    }

    /** A page for print may run nothing, fetch nothing, and use no style but its own. */
    @Test
    void eachPageAllowsNoStyleButItsOwn() throws IOException {
        day("pages", "cam 35\nload bw400\n8 125\nunload yes\n");
        Installed.Ended paper = run("paper", "-o", "paper.html", "--data", "pages");
        assertEquals(0, paper.status(), paper.toString());
        Installed.Ended lesson = run("review", "--html", "-o", "lesson.html", "--data", "pages");
        assertEquals(0, lesson.status(), lesson.toString());
        for (String page : List.of("paper.html", "lesson.html")) {
            String html = Files.readString(scratch.resolve(page));
            assertTrue(html.contains("Content-Security-Policy\" content=\"default-src 'none'"), html);
            assertFalse(html.contains("unsafe-inline"), html);
        }
    }

    /** The journal is in its new place and cannot leave its old one: told at the next start, which clears it. */
    @Test
    void aNameThatCouldNotBeTakenAwayIsToldOnceAndIsGoneAfterTheNextStart() {
        Outside.needs("strace");
        day("twice", "cam 35\nload bw400\n8 125\nunload yes\n");
        String finished = scratch.resolve("twice/rolls/finished/R0001.journal").toString();
        Installed.run(line("twice", TODAY, failing("unlink,unlinkat", "error=EPERM", finished)), "undo\n");
        String told = "it lies with the open and with the finished rolls";
        Installed.Ended next = type("twice", TODAY, "say\n");
        assertTrue(next.err().contains(told), next.toString());
        Installed.Ended later = type("twice", TODAY, "say\n");
        assertEquals("", later.err());
        assertEquals(
                "twice: 1 roll, 1 frame, 1 day, all in order\n",
                run("check", "twice").out());
    }

    @Test
    void aFolderOnADiskWithoutLocksIsRefusedWithWhatToDo() {
        Outside.needs("strace");
        day("network", "cam 35\n");
        String lock = scratch.resolve("network/lock").toString();
        Installed.Ended refused =
                Installed.run(line("network", TODAY, failing("fcntl", "error=ENOLCK", lock)), "say\n");
        assertEquals(1, refused.status(), refused.toString());
        assertTrue(
                refused.err()
                        .endsWith("this folder's disk cannot lock files, as some network folders; choose a folder on "
                                + "this machine (--data DIR)\n"),
                refused.toString());
    }

    /** What begins with a hyphen is an option to every command: no key of a profile can. */
    @Test
    void aProfileWhoseKeyLooksLikeAnOptionIsNotOfferedAndIsNamed() {
        day("keys", "cam 35\n");
        shell("mkdir -p keys/profiles/stocks; cp "
                + Path.of("profiles/stocks/bw400.json").toAbsolutePath() + " keys/profiles/stocks/-rf.json");
        assertFalse(run("stock", "--data", "keys").out().contains("-rf"));
        Installed.Ended check = run("check", "keys");
        assertTrue(check.out().contains("stocks/-rf.json:1: this name cannot be typed"), check.toString());
    }
}
