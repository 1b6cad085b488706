package takeup.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import takeup.console.Console;

/**
 * The program as a command line, but in this process, with a time zone and a locale that are the same everywhere. Of
 * the program's classes this names as few as can be, and the tests that use it name none.
 */
final class InProcess {
    private static final TimeZone ZONE = TimeZone.getTimeZone("Europe/Stockholm");

    private InProcess() {}

    /** Runs a command to its end. */
    static Installed.Ended run(String input, List<String> arguments) {
        ByteArrayOutputStream answers = new ByteArrayOutputStream();
        ByteArrayOutputStream errors = new ByteArrayOutputStream();
        TimeZone zone = TimeZone.getDefault();
        InputStream in = System.in;
        try {
            TimeZone.setDefault(ZONE);
            System.setIn(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)));
            int status = Main.status(
                    arguments.toArray(String[]::new), new Console(answers, errors, Map.of("LC_ALL", "C.UTF-8")));
            return new Installed.Ended(
                    status, answers.toString(StandardCharsets.UTF_8), errors.toString(StandardCharsets.UTF_8));
        } finally {
            System.setIn(in);
            TimeZone.setDefault(zone);
        }
    }
}
