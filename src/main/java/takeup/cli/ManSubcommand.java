package takeup.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;
import takeup.shell.ManPage;

/** {@code takeup man}: the manual page. */
@Command(
        name = "man",
        description = "Prints the manual page: takeup man | man -l -",
        footer = {"", "To keep it: takeup man > ~/.local/share/man/man1/takeup.1"})
final class ManSubcommand implements Callable<Integer> {
    @ParentCommand
    Subcommands commands;

    @Override
    public Integer call() {
        commands.out().raw(new ManPage(commands.tree()).roff());
        return 0;
    }
}
