package takeup.console;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/** Whether input and output are a terminal, and a yes-or-no question to whoever sits at it. */
public final class InTerminal {
    private InTerminal() {}

    /** Whether a person answers with yes. False, without a word, where input or output is no terminal. */
    public static boolean saysYes(Console out, String question) {
        return is("[ -t 0 ] && [ -t 1 ]") && answersYes(out::line, question);
    }

    /**
     * Whether yes is what comes back, from a person or through a pipe; anything else, or no answer at all, is a no.
     *
     * @param ask where the question goes; not to the output where that is one JSON object
     */
    public static boolean answersYes(Consumer<String> ask, String question) {
        ask.accept(question);
        try {
            return line(System.in).strip().equalsIgnoreCase("yes");
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

    private static String line(InputStream in) throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        for (int read = in.read(); read >= 0 && read != '\n' && line.size() < 100; read = in.read()) {
            line.write(read);
        }
        return line.toString(StandardCharsets.UTF_8);
    }
}
