package takeup.console;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Consumer;

/** Whether input and output are a terminal, and a yes-or-no question to whoever sits at it. */
public final class InTerminal {
    /** Bytes that an answer has at most. */
    private static final int LONGEST = 2_000;

    private InTerminal() {}

    /** Whether a person answers with yes. False, without a word, where input or output is no terminal. */
    public static boolean saysYes(Console out, String question) {
        return isAnswered() && answersYes(out::line, question);
    }

    /** Whether a person sees a question and can answer it. */
    public static boolean isAnswered() {
        return is("[ -t 0 ] && [ -t 1 ]");
    }

    /** The line that comes back to a question; empty at the end of the input. */
    public static Optional<String> answer(Consumer<String> ask, String question) {
        ask.accept(question);
        try {
            return Optional.of(line(System.in, LONGEST).strip()).filter(it -> !it.isEmpty());
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /**
     * Whether yes is what comes back, from a person or through a pipe; anything else, or no answer at all, is a no.
     *
     * @param ask where the question goes; not to the output where that is one JSON object
     */
    public static boolean answersYes(Consumer<String> ask, String question) {
        ask.accept(question);
        try {
            return line(System.in, 100).strip().equalsIgnoreCase("yes");
        } catch (IOException e) {
            return false;
        }
    }

    /** Whether a person sees the answer. */
    public static boolean isSeen() {
        return is("[ -t 1 ]");
    }

    // Java's own console is there on newer versions also where no terminal is, so the shell is asked (POSIX.1-2017,
    // test -t).
    private static boolean is(String test) {
        try {
            return new ProcessBuilder("/bin/sh", "-c", test).inheritIO().start().waitFor() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static String line(InputStream in, int longest) throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        for (int read = in.read(); read >= 0 && read != '\n' && line.size() < longest; read = in.read()) {
            line.write(read);
        }
        return line.toString(StandardCharsets.UTF_8);
    }
}
