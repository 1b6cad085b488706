package takeup.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;
import takeup.options.GlobalOptions;
import takeup.shell.ManPage;
import takeup.shell.SubcommandTree;

/** {@code takeup man}: the manual page. */
@Command(
        name = "man",
        description = "Prints the manual page.",
        footer = {"", "For example:", "  takeup man | man -l -", "  takeup man > ~/.local/share/man/man1/takeup.1"})
final class ManSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Override
    public Integer call() {
        global.console().raw(new ManPage(SubcommandTree.of(global.allCommands())).roff());
        return 0;
    }
}
