package takeup.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import takeup.console.Console;
import takeup.disk.IoErrorText;
import takeup.files.Settings;
import takeup.grid.Theme;
import takeup.terminal.Terminal;
import takeup.terminal.TerminalEnvironment;

/**
 * {@code takeup --warm}: starts the screen once without showing it, on a roll in a temporary folder. The start script
 * has Java write down meanwhile what was loaded, so that later starts find it ready.
 */
final class WarmUp {
    /** A camera, a film, a reading, frames, the views; then the stream ends, and the screen with it. */
    private static final String KEYS =
            "cam 645\nload cn400\nm 5.6 125\n4 125 ; bow seat\n.\nundo\nredo\nframes\nrolls\nhelp\nshoot\nwhy\nquit\n";

    private WarmUp() {}

    static int run(Console out) {
        try {
            Path folder = Files.createTempDirectory("takeup-warm");
            try {
                TerminalEnvironment environment =
                        TerminalEnvironment.of(Map.of("TERM", "xterm-256color", "LANG", "C.UTF-8"), false);
                for (String keys : List.of("", KEYS, "")) {
                    Terminal terminal = Terminal.withoutScreen(
                            new ByteArrayInputStream(keys.getBytes(StandardCharsets.UTF_8)),
                            environment,
                            Theme.named("dark").orElseThrow());
                    int status = new ScreenCommand(folder, Settings.of(folder), out).run(terminal, "dark");
                    if (status != 0) {
                        return status;
                    }
                }
                return 0;
            } finally {
                delete(folder);
            }
        } catch (IOException e) {
            out.error("the warm-up could not be done: " + IoErrorText.words(e));
            return 1;
        }
    }

    private static void delete(Path folder) throws IOException {
        List<Path> deepestFirst;
        try (Stream<Path> all = Files.walk(folder)) {
            deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path path : deepestFirst) {
            Files.delete(path);
        }
    }
}
