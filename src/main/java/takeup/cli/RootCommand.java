package takeup.cli;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.temporal.ChronoUnit;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import takeup.console.Clock;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.disk.IoErrorText;
import takeup.files.DataFolder;
import takeup.options.GlobalOptions;

/** {@code takeup} without the name of a command: the screen, with what its options ask for. */
@Command(
        name = "takeup",
        sortOptions = false,
        synopsisSubcommandLabel = "[COMMAND]",
        description = {
            "A full-screen companion for the shoot day of a photographer who shoots film beside digital.",
            "Without a command it opens the shoot screen."
        },
        footer = {
            "",
            "First roll: cam 645, load cn400, m 5.6 125, then the space bar for each frame.",
            "Exit status: 0 done; 1 it could not be done, or problems were found; 2 the command line was wrong.",
            "",
            "For example:",
            "  takeup demo",
            "  takeup help order new"
        })
final class RootCommand extends GlobalOptions implements Callable<Integer> {
    @Option(
            names = "--warm",
            description = "Alone: makes the archive that lets takeup start quickly; again after a move or a new Java.")
    boolean warm;

    RootCommand(Console console) {
        super(console);
    }

    @Override
    public CommandSpec allCommands() {
        return Subcommands.all(console()).getCommandSpec();
    }

    @Override
    public int answer(String[] arguments, Console into) {
        return Subcommands.run(arguments, into);
    }

    /** Says why a command failed; its exit status. */
    int failed(Throwable problem) {
        if (problem instanceof IOException io) {
            console().error(IoErrorText.words(io));
            return 1;
        }
        if (problem instanceof InvalidPathException path) {
            console().error(UsageErrors.noPath(path));
            return 2;
        }
        if (problem instanceof CommandFailed why) {
            console().error(why.getMessage());
            return why.status();
        }
        // Also where what was typed as the data folder cannot be one.
        Path folder = DataFolder.data(typedFolder().filter(it -> !it.isBlank()));
        CrashReport.write(problem, folder, Clock.wall().truncatedTo(ChronoUnit.SECONDS))
                .forConsole()
                .forEach(console()::error);
        return 1;
    }

    @Override
    public Integer call() {
        if (warm) {
            throw new CommandFailed(2, "--warm stands alone: takeup --warm");
        }
        return new ScreenCommand(folder(), settings(), console()).run(terminal(), theme());
    }
}
