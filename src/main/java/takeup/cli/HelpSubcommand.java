package takeup.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.options.GlobalOptions;
import takeup.text.Nearest;

/** {@code takeup help order new}: the same as {@code takeup order new --help}. */
@Command(
        name = "help",
        description = "Shows what a command does and what it takes, as --help does.",
        footer = {"", "For example:", "  takeup help roll", "  takeup help order new"})
final class HelpSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Parameters(paramLabel = "COMMAND", arity = "0..*", description = "The command; without one, all are listed.")
    List<String> path = List.of();

    @Override
    public Integer call() {
        CommandLine command = global.allCommands().commandLine();
        for (String word : path) {
            CommandLine below = command.getSubcommands().get(word);
            if (below == null) {
                throw new CommandFailed(
                        2,
                        word + " is no command of "
                                + command.getCommandSpec().qualifiedName()
                                + Nearest.question(
                                        word, command.getSubcommands().keySet()));
            }
            command = below;
        }
        global.console().lines(command.getUsageMessage());
        return 0;
    }
}
