package takeup.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;
import takeup.files.Version;
import takeup.options.GlobalOptions;

/** {@code takeup version}: the same as {@code takeup --version}. */
@Command(
        name = "version",
        description = "Shows the version, as --version does.",
        footer = {"", "For example:", "  takeup version"})
final class VersionSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Override
    public Integer call() {
        global.console().line(Version.text());
        return 0;
    }
}
