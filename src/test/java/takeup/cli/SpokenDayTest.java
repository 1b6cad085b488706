package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.console.Clock;
import takeup.console.Console;
import takeup.dispatch.CommandTable;
import takeup.files.JournalStore;
import takeup.files.ProfileFiles;
import takeup.files.StartupState;
import takeup.journal.Archive;
import takeup.kit.Kit;

/** The pipe as somebody hears it who cannot see the screen: one sentence or two an event, words and no signs. */
class SpokenDayTest {
    @TempDir
    Path folder;

    @Test
    void aWholeDayIsSpokenInPlainTextOneLineForEachThatIsTyped() throws IOException {
        List<String> typed = new ArrayList<>(demo());
        typed.addAll(List.of("say", "frames", "rolls", "shoot", "why", "help", "m", "big"));
        CommandTable.firstWords().forEach(it -> typed.add("help " + it));
        Installed.resource("whole-roll.txt").stream()
                .filter(it -> it.startsWith("> ") && !it.equals("> quit"))
                .forEach(it -> typed.add(it.substring(2)));
        typed.addAll(List.of("say", "frames", "rolls", "quit"));
        List<String> spoken = speak(typed);
        assertEquals(typed.size(), spoken.size());
        String heard = String.join("\n", typed);
        for (int i = 0; i < spoken.size(); i++) {
            String line = spoken.get(i);
            line.codePoints()
                    .forEach(it -> assertTrue(
                            it >= ' ' && it < 0x7f || heard.indexOf(it) >= 0, Character.toString(it) + " in " + line));
            boolean isWhole = line.endsWith(".") && !line.endsWith("..") || line.endsWith("? y/n");
            assertTrue(isWhole && !line.contains("  "), typed.get(i) + ": " + line);
        }
    }

    @Test
    void everyLineOfTheDemoIsDone() throws IOException {
        assertEquals(
                List.of(),
                speak(demo()).stream().filter(it -> it.startsWith("Not done")).toList());
    }

    @Test
    void aWarningWhoseWordsWereJustSaidIsNotSaidTwice() throws IOException {
        List<String> spoken = speak(List.of("cam 645", "load cn400", "m ev10", "4 125 x11", "."));
        assertEquals("645 reflex, back 1: no film. Warning, no-film: load a stock into 645 back 1.", spoken.get(0));
        assertEquals("Frame 12 on R0001: f/4 1/125, right. 4 left. Warning, frames-left.", spoken.get(4));
    }

    private List<String> demo() throws IOException {
        return new DemoDay(folder, Clock.parse("2026-10-22T16:35+02:00"), Subcommands::run)
                .script().stream()
                        .filter(it -> !it.isBlank() && !it.startsWith("#") && !it.startsWith("$"))
                        .toList();
    }

    private List<String> speak(List<String> lines) throws IOException {
        ByteArrayOutputStream spoken = new ByteArrayOutputStream();
        Archive archive = new Archive(folder);
        Kit kit = new Kit(new ProfileFiles(folder.resolve("profiles"), Path.of("profiles")));
        try (JournalStore disk = JournalStore.take(archive)) {
            new PromptPipe(
                            disk,
                            StartupState.of(archive, kit).state(),
                            Clock.of(Optional.of(Clock.parse("2026-09-12T15:00+02:00"))),
                            new Console(spoken, spoken, Map.of("LC_ALL", "C.UTF-8")),
                            PromptPipe.Format.TEXT)
                    .run(new ByteArrayInputStream(String.join("\n", lines).getBytes(StandardCharsets.UTF_8)));
        }
        return spoken.toString(StandardCharsets.UTF_8).lines().toList();
    }
}
