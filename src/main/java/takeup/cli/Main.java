package takeup.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.files.DataFolder;
import takeup.files.ProcessEnvironment;
import takeup.files.Settings;
import takeup.terminal.TerminalEnvironment;

/** Where the program begins. The way to the screen reads its few arguments by hand, so that nothing else is loaded. */
public final class Main {
    private Main() {}

    /** Starts the screen (no arguments, or a data folder alone), or one of the commands. */
    public static void main(String[] arguments) {
        System.exit(status(
                arguments,
                new Console(
                        new FileOutputStream(FileDescriptor.out),
                        new FileOutputStream(FileDescriptor.err),
                        ProcessEnvironment.variables())));
    }

    /** Does what the arguments ask for; the exit status. */
    static int status(String[] arguments, Console out) {
        int status;
        try {
            UsageErrors.refuseUnreadable(arguments);
            status = run(arguments, out);
        } catch (InvalidPathException e) {
            out.error(UsageErrors.noPath(e));
            status = 2;
        } catch (CommandFailed e) {
            out.error(e.getMessage());
            status = e.status();
        }
        return status == 0 && out.failed() ? 1 : status;
    }

    private static int run(String[] arguments, Console out) {
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
            Path folder = DataFolder.data(data);
            Settings settings = Settings.of(folder);
            return new ScreenCommand(folder, settings, out)
                    .run(
                            TerminalEnvironment.of(ProcessEnvironment.variables(), settings.ascii()),
                            settings.startTheme(ProcessEnvironment.variables()));
        }
        if (arguments.length == 1 && arguments[0].equals("--warm")) {
            return WarmUp.run(out);
        }
        Optional<Integer> quick = QuickCommands.run(arguments, out);
        return quick.isPresent() ? quick.get() : Subcommands.parse(arguments, out);
    }
}
