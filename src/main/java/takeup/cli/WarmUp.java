package takeup.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import takeup.console.Clock;
import takeup.console.Console;
import takeup.disk.IoErrorText;
import takeup.files.JournalStore;
import takeup.files.Settings;
import takeup.grid.Theme;
import takeup.journal.Archive;
import takeup.review.Density;
import takeup.review.FrameKey;
import takeup.review.ReviewEvent;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.terminal.Terminal;
import takeup.terminal.TerminalEnvironment;

/**
 * {@code takeup --warm}: starts the screen without showing it, on a roll in a temporary folder, and asks the quick
 * commands about it. The start script has Java write down meanwhile what was loaded, so that later starts find it
 * ready.
 */
final class WarmUp {
    /** A word completed and cleared, a camera, a film, a reading, frames, the views; then the screen ends. */
    private static final String KEYS = "fr\t\u0015"
            + "cam 645\nload cn400\nm 5.6 125\n4 125 ; bow seat\nm 5.6 1\nm 5.6 125\n"
            + ".\nundo\nredo\nframes\nrolls\nhelp\nshoot\nwhy\nquit\n";

    /** What they answer is read by nobody. */
    private static final Console NOBODY =
            new Console(OutputStream.nullOutputStream(), OutputStream.nullOutputStream(), Map.of());

    /** None that needs picocli: Java 17 fails on classes as old as its own in an archive. */
    private static final List<String> QUICK = List.of(
            "paths",
            "rolls",
            "rolls --json",
            "frames",
            "frames --json",
            "review",
            "review --json",
            "order list",
            "order list --json",
            "roll 1",
            "roll 1 --json",
            "day-end",
            "day-end --json",
            "check",
            "stock bw400",
            "camera 645",
            "find cn400 f4");

    /** So many more that the next list is that of an index. */
    private static final String FURTHER = "load cn400\n8 125 x6\nunload yes\n".repeat(20);

    /** The roll is finished: the next start finds no film in the camera, and offers some. */
    private static final String FINISH = "unload yes\nquit\n";

    /** A planned day with film from the bag, read again by the start after it. */
    private static final String PLANNED = "bag add 4 cn400 120\nshoot Regatta at 59.33,18.07\n"
            + "plan 23:59 Prize-giving wants 12 must\ncam 645\nload cn400\nm 5.6 125\nfilter yellow\n. ; bow\n"
            + "flash 8\n.\nquit\n";

    /**
     * Keys as somebody types them: each is drawn before the next. All at once they would be a paste, and what the very
     * first key of a later start needs would not be among what was loaded.
     */
    private static final class Typed extends InputStream {
        private static final int MILLIS_BETWEEN = 10;

        private final byte[] keys;
        private int at;

        Typed(String keys) {
            this.keys = keys.getBytes(StandardCharsets.UTF_8);
        }

        @Override
        public int read() throws IOException {
            try {
                Thread.sleep(MILLIS_BETWEEN);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new InterruptedIOException("interrupted between two keys");
            }
            return at < keys.length ? keys[at++] : -1;
        }

        @Override
        public int read(byte[] bytes, int offset, int length) throws IOException {
            int key = read();
            if (key >= 0) {
                bytes[offset] = (byte) key;
            }
            return key >= 0 ? 1 : -1;
        }
    }

    private WarmUp() {}

    static int run(Console out) {
        try {
            Path folder = Files.createTempDirectory("takeup-warm");
            try {
                TerminalEnvironment environment =
                        TerminalEnvironment.of(Map.of("TERM", "xterm-256color", "LANG", "C.UTF-8"), false);
                for (String keys : List.of("", KEYS, "", FINISH, "", PLANNED, "")) {
                    Terminal terminal = Terminal.withoutScreen(
                            new Typed(keys), environment, Theme.named("dark").orElseThrow());
                    int status = new ScreenCommand(folder, Settings.of(folder), out).run(terminal, "dark");
                    if (status != 0) {
                        return status;
                    }
                }
                judge(new Archive(folder));
                ask(folder);
                System.setIn(new ByteArrayInputStream(FURTHER.getBytes(StandardCharsets.UTF_8)));
                quickly("line", folder);
                judge(new Archive(folder));
                ask(folder);
                ask(folder);
                return 0;
            } finally {
                delete(folder);
            }
        } catch (IOException e) {
            out.error("the warm-up could not be done: " + IoErrorText.words(e));
            return 1;
        }
    }

    /** The scans of all rolls are back, and thin. */
    private static void judge(Archive archive) throws IOException {
        try (JournalStore disk = JournalStore.take(archive)) {
            for (RollId id : archive.finishedRolls()) {
                List<ReviewEvent> verdicts = new ArrayList<>();
                for (Frame frame :
                        Roll.of(archive.roll(id).records()).orElseThrow().frames()) {
                    verdicts.add(new ReviewEvent.Judged(FrameKey.of(frame), Optional.of(Density.THIN)));
                }
                disk.keep(id, Clock.wall(), verdicts);
            }
        }
    }

    private static void ask(Path folder) {
        QUICK.forEach(it -> quickly(it, folder));
        QuickCommands.run(new String[] {"keys"}, NOBODY);
    }

    private static void quickly(String line, Path folder) {
        QuickCommands.run((line + " --data=" + folder).split(" "), NOBODY);
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
