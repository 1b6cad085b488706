package takeup.terminal;

import java.io.BufferedInputStream;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import takeup.grid.Size;

/**
 * The modes of the terminal, set and restored by {@code stty} (POSIX.1-2017, stty). One process sets them; a further
 * one restores them. What they were the start script has read already, unless Java was started without it.
 */
final class Stty {
    /**
     * Each key at once and unechoed; Ctrl-C, Ctrl-Z, Ctrl-S, Ctrl-Q, Ctrl-\ and Ctrl-V as keys. Enter stays a line
     * feed.
     */
    private static final String RAW = "stty -icanon -echo -isig -ixon -iexten icrnl min 1 time 0";

    // Input and output are the program's own, so that the helper can test them; its answers come by way of the error
    // stream.
    private static final String TAKE =
            "[ -t 0 ] || exit 3; [ -t 1 ] || exit 4; stty -g >&2 && stty size >&2 && exec " + RAW;

    /** A terminal that takes no more output can hold a helper for ever; two seconds are enough for any other. */
    private static final int MOST_MILLIS = 2000;

    private static final long MOST_NANOS = TimeUnit.MILLISECONDS.toNanos(MOST_MILLIS);

    private static final String INSTEAD = ": takeup line reads lines from anywhere.";

    /** Two pipes of the start script: what the process that it left tells, and in which that waits for a line. */
    private static final String ANSWERS = "/dev/fd/7";

    private static final Path REQUESTS = Path.of("/dev/fd/8");

    private final String saved;
    private Size knownSize;
    /** The process that sets the first modes beside everything else; 0 where they are set. */
    private final long setter;

    private final long begun = System.nanoTime();

    /** No terminal at all: nothing is set and nothing restored. */
    static Stty none() {
        return new Stty("", Size.USUAL, 0);
    }

    private Stty(String saved, Size known, long setter) {
        this.saved = saved;
        this.knownSize = known;
        this.setter = setter;
    }

    /**
     * From the process that the start script left beside Java, which told the modes, as {@code stty -g} prints them,
     * and the size, and waits to set the modes of the screen: it is asked to. Empty where it told anything else, and
     * where nobody waits.
     *
     * @param process its number
     */
    static Optional<Stty> handedOver(String process) {
        try {
            long setter = Long.parseLong(process);
            if (!Files.readAttributes(REQUESTS, BasicFileAttributes.class).isOther()) {
                return Optional.empty();
            }
            String[] told;
            // A stream of a file alone, as Java 17 reads it whole, asks for the place in it, which a pipe has not.
            try (InputStream answers = new BufferedInputStream(new FileInputStream(ANSWERS))) {
                told = answer(answers).split("\n");
            }
            if (told.length != 2 || !areModes(told[0])) {
                return Optional.empty();
            }
            Stty stty = new Stty(told[0], size(told[1]), setter);
            try (OutputStream requests = new FileOutputStream(REQUESTS.toFile())) {
                requests.write('\n');
            }
            return Optional.of(stty);
        } catch (NumberFormatException | IOException nobodyWaits) {
            return Optional.empty();
        }
    }

    /** Numbers and names between colons: nothing that {@code stty} would take for anything but modes. */
    static boolean areModes(String text) {
        boolean hasColon = false;
        for (int i = 0; i < text.length(); i++) {
            char one = text.charAt(i);
            boolean isWord =
                    one >= '0' && one <= '9' || one >= 'a' && one <= 'z' || one >= 'A' && one <= 'Z' || one == '=';
            if (!isWord && one != ':') {
                return false;
            }
            hasColon |= one == ':';
        }
        return hasColon;
    }

    /** Remembers the modes and the size, and sets the modes of the screen. */
    static Stty take() throws NoTerminal {
        try {
            Process helper = start(Redirect.PIPE, "/bin/sh", "-c", TAKE);
            String answer = answer(helper.getErrorStream());
            int status = helper.waitFor();
            int line = answer.indexOf('\n');
            if (status == 0 && line > 0) {
                return new Stty(answer.substring(0, line), size(answer.substring(line + 1)), 0);
            }
            throw new NoTerminal(switch (status) {
                        case 3 -> "The screen needs a terminal, and the input is not one";
                        case 4 -> "The screen needs a terminal, and the output is not one";
                        default -> "The terminal could not be set up, stty refused";
                    }
                    + INSTEAD);
        } catch (IOException missing) {
            throw new NoTerminal("The terminal could not be set up, there is no /bin/sh" + INSTEAD);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new NoTerminal("The terminal could not be set up, it was interrupted" + INSTEAD);
        }
    }

    /** The size now; the first answer came with the modes. */
    synchronized Size size() {
        Size known = knownSize;
        knownSize = null;
        if (known != null) {
            return known;
        }
        if (saved.isEmpty()) {
            return Size.USUAL;
        }
        try {
            Process helper = start(Redirect.PIPE, "/bin/sh", "-c", "exec stty size >&2");
            Size size = size(answer(helper.getErrorStream()));
            end(helper);
            return size;
        } catch (IOException gone) {
            return Size.USUAL;
        }
    }

    /** Sets the modes of the screen again, after the shell had the terminal. */
    void setRawModes() {
        run(RAW.split(" "));
    }

    /** Puts the modes back as they were found. */
    void restore() {
        try {
            // Whoever begins and ends within milliseconds: the modes of the screen must not come last.
            while (setter > 0 && System.nanoTime() - begun < MOST_NANOS && isThere(setter)) {
                Thread.sleep(5);
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
        // Without a terminal a process is started all the same, for the classes that this loads.
        run(saved.isEmpty() ? new String[] {"true"} : new String[] {"stty", saved});
    }

    /** One that has ended and is not looked after by anybody has a number still, and runs no program. */
    private static boolean isThere(long process) {
        Optional<ProcessHandle> handle = ProcessHandle.of(process);
        return handle.isPresent() && handle.get().info().command().isPresent();
    }

    private static void run(String... command) {
        try {
            end(start(Redirect.DISCARD, command));
        } catch (IOException gone) {
            // Without a helper nothing can be set; the program goes on or ends as it was about to.
        }
    }

    private static Process start(Redirect errors, String... command) throws IOException {
        return new ProcessBuilder(command)
                .redirectInput(Redirect.INHERIT)
                .redirectOutput(Redirect.INHERIT)
                .redirectError(errors)
                .start();
    }

    private static void end(Process helper) {
        try {
            if (!helper.waitFor(MOST_MILLIS, TimeUnit.MILLISECONDS)) {
                helper.destroyForcibly();
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private static String answer(InputStream from) throws IOException {
        return new String(from.readAllBytes(), StandardCharsets.US_ASCII);
    }

    /**
     * Rows and columns as {@code stty size} prints them, {@code 24 80}; 80x24 for a terminal that says 0 or nothing.
     */
    static Size size(String answer) {
        String trimmed = answer.trim();
        int blank = trimmed.indexOf(' ');
        try {
            return new Size(
                    Integer.parseInt(trimmed.substring(blank + 1)),
                    Integer.parseInt(trimmed.substring(0, Math.max(0, blank))));
        } catch (IllegalArgumentException unknown) {
            return Size.USUAL;
        }
    }
}
