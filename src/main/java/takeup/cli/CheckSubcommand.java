package takeup.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.Console;
import takeup.files.FolderCheck;
import takeup.options.GlobalOptions;
import takeup.text.English;

/** {@code takeup check}: what is wrong in data folders. Only reads. */
@Command(
        name = "check",
        description = "Reads everything in data folders and says what is wrong; changes nothing.",
        footer = {"", "For example:", "  takeup check", "  takeup check backup"})
final class CheckSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Parameters(paramLabel = "DIR", arity = "0..*", description = "Data folders; else the usual one.")
    List<String> folders = List.of();

    @Override
    public Integer call() {
        Console console = global.console();
        boolean isBad = false;
        List<Path> chosen = folders.isEmpty()
                ? List.of(global.folder())
                : folders.stream().map(Path::of).toList();
        for (Path folder : chosen) {
            FolderCheck check = FolderCheck.of(folder);
            check.problems().forEach(console::line);
            console.line(folder + ": " + check.counts() + ", "
                    + (check.problems().isEmpty()
                            ? "all in order"
                            : English.count(check.problems().size(), "problem")));
            isBad |= !check.problems().isEmpty();
        }
        return isBad ? 1 : 0;
    }
}
