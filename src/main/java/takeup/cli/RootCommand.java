package takeup.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.function.ToIntBiFunction;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import takeup.console.CommandFailed;
import takeup.console.Console;
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
    private final Supplier<CommandSpec> allCommands;
    private final ToIntBiFunction<String[], Console> answerer;

    @Option(
            names = "--warm",
            description = "Alone: makes the archive that lets takeup start quickly; again after a move or a new Java.")
    boolean warm;

    RootCommand(Console console, Supplier<CommandSpec> allCommands, ToIntBiFunction<String[], Console> answerer) {
        super(console);
        this.allCommands = allCommands;
        this.answerer = answerer;
    }

    @Override
    public CommandSpec allCommands() {
        return allCommands.get();
    }

    @Override
    public int answer(String[] arguments, Console into) {
        return answerer.applyAsInt(arguments, into);
    }

    /** Where a crash report goes, also where what was typed as the data folder cannot be one. */
    Path folderForReports() {
        return DataFolder.data(typedFolder().filter(it -> !it.isBlank()));
    }

    @Override
    public Integer call() {
        if (warm) {
            throw new CommandFailed(2, "--warm stands alone: takeup --warm");
        }
        return new ScreenCommand(folder(), settings(), console()).run(terminal(), theme());
    }
}
