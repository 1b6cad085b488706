package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.console.Clock;
import takeup.console.Console;
import takeup.files.AllRolls;
import takeup.files.JournalStore;
import takeup.files.ProfileFiles;
import takeup.files.StartupState;
import takeup.handoff.MadeBy;
import takeup.handoff.RollJson;
import takeup.journal.Archive;
import takeup.kit.Kit;
import takeup.roll.Roll;

/** What a clock that is set does to the files of days and rolls: nothing but other dates on them. */
class ClockFilesTest {
    @TempDir
    Path folder;

    @Test
    void rollsAreListedInTheOrderOfLoadingThoughTheClockWentBack() throws IOException {
        run(
                "2026-09-12T15:00+02:00",
                "cam 645 1",
                "load cn400",
                "4 125",
                "clock -3h",
                "back 2",
                "load cn400",
                "clock -1d",
                "cam 35",
                "load bw400");
        assertEquals(
                List.of("R0001", "R0002", "R0003"),
                rolls().stream().map(it -> it.id().toString()).toList());
    }

    @Test
    void theFramesInTheExportStandInTheOrderInWhichTheyWereTypedAndTheFirstAfterTheMoveCarriesTheNote()
            throws IOException {
        run(
                "2026-09-12T15:00+02:00",
                "cam 645",
                "load cn400",
                "m 5.6 125",
                "4 125",
                "clock -2h",
                ". ; bow",
                ".",
                "clock 2026-09-12T14:30+03:00",
                ".",
                "unload yes");
        String json = RollJson.text(rolls().get(0), MadeBy.version("0"));
        int bow = json.indexOf("\"note\" : \"bow\"");
        assertTrue(json.indexOf("\"clock\"") < bow && json.indexOf("the clock went back 2 h since frame 1") > 0, json);
        assertTrue(json.indexOf("changed its zone from +02:00 to +03:00 since frame 3") > bow, json);
        assertEquals(2, json.split("\"clock\"", -1).length - 1, "two frames of four carry it");
    }

    @Test
    void aDayInTheWrongYearIsFoundAgainAndNoStepIsCountedTwice() throws IOException {
        run("2026-09-10T10:00+02:00", "cam 35", "load bw400", "8 125");
        run("2026-09-11T10:00+02:00", "8 125", "m 5.6 125");
        // An empty battery: the clock begins again in another year.
        run("2015-01-01T00:00+02:00", "cam 645", "filter yellow", "m ev12", "hold f8");
        List<String> said = run("2015-01-01T00:05+02:00", "say", "undo", "undo", "undo");
        assertTrue(
                said.get(0).contains("645 reflex")
                        && said.get(0).contains("filter yellow")
                        && said.get(0).contains("hold f/8"),
                said.toString());
        List<String> right = run("2026-09-12T10:00+02:00", "say");
        assertTrue(
                right.get(0).contains("645 reflex") && !right.get(0).contains("filter yellow"),
                "what was undone in the other year stays undone: " + right);
    }

    private List<Roll> rolls() throws IOException {
        return AllRolls.of(new Archive(folder)).rolls();
    }

    private List<String> run(String clock, String... lines) throws IOException {
        Archive archive = new Archive(folder);
        ByteArrayOutputStream answers = new ByteArrayOutputStream();
        try (JournalStore disk = JournalStore.take(archive)) {
            StartupState opening = StartupState.of(
                    archive, new Kit(new ProfileFiles(folder.resolve("profiles"), Path.of("profiles"))));
            assertEquals(List.of(), opening.problems());
            int status = new PromptPipe(
                            disk,
                            opening.state(),
                            Clock.of(Optional.of(Clock.parse(clock))),
                            new Console(answers, answers, Map.of("LC_ALL", "C.UTF-8")),
                            PromptPipe.Format.TEXT)
                    .run(new ByteArrayInputStream(String.join("\n", lines).getBytes(StandardCharsets.UTF_8)));
            assertEquals(0, status, answers.toString(StandardCharsets.UTF_8));
        }
        return answers.toString(StandardCharsets.UTF_8).lines().toList();
    }
}
