package takeup.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import takeup.screen.Environment;

/** Where the program begins. The way to the screen reads its few arguments by hand, so that nothing else is loaded. */
public final class Main {
    private Main() {}

    /** Starts the screen (no arguments, or a data folder alone), or one of the commands. */
    public static void main(String[] arguments) {
        System.exit(status(
                arguments,
                new Out(
                        new FileOutputStream(FileDescriptor.out),
                        new FileOutputStream(FileDescriptor.err),
                        Surroundings.variables())));
    }

    /** Does what the arguments ask for; the exit status. */
    static int status(String[] arguments, Out out) {
        int status;
        try {
            status = run(arguments, out);
        } catch (InvalidPathException e) {
            out.error(Commands.noPath(e));
            status = 2;
        } catch (Commands.Unfit e) {
            out.error(e.getMessage());
            status = e.status;
        }
        return status == 0 && out.failed() ? 1 : status;
    }

    private static int run(String[] arguments, Out out) {
        Optional<String> data = Optional.empty();
        int at = 0;
        if (arguments.length == 2 && arguments[0].equals("--data") && !arguments[1].isBlank()) {
            data = Optional.of(arguments[1]);
            at = 2;
        } else if (arguments.length == 1
                && arguments[0].startsWith("--data=")
                && !arguments[0].substring(7).isBlank()) {
            data = Optional.of(arguments[0].substring(7));
            at = 1;
        }
        if (at == arguments.length) {
            Path folder = Folder.data(data);
            Settings settings = Settings.of(folder);
            return new ScreenCommand(folder, settings, out)
                    .run(Environment.of(Surroundings.variables(), settings.ascii()), theme(settings));
        }
        if (arguments.length == 1 && arguments[0].equals("--warm")) {
            return WarmUp.run(out);
        }
        return Commands.run(arguments, out);
    }

    /** Without colour where NO_COLOR asks for none; else the one of the settings. */
    static String theme(Settings settings) {
        String noColour = System.getenv("NO_COLOR");
        return noColour == null || noColour.isEmpty() ? settings.theme().orElse("dark") : "mono";
    }
}
