package takeup.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;
import takeup.console.Console;
import takeup.files.CameraClocks;
import takeup.files.DataFolder;
import takeup.files.Settings;
import takeup.options.GlobalOptions;

/** {@code takeup paths}: where files lie. */
@Command(
        name = "paths",
        description = "Says where things are.",
        footer = {"", "For example:", "  takeup paths"})
final class PathsSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Override
    public Integer call() {
        Path folder = global.folder();
        Console console = global.console();
        console.line("data folder        " + folder);
        console.line("open rolls         " + folder.resolve("rolls").resolve("open"));
        console.line("finished rolls     " + folder.resolve("rolls").resolve("finished"));
        console.line("days               " + folder.resolve("days"));
        console.line("exports            " + folder.resolve("exports"));
        console.line("orders             " + folder.resolve("orders"));
        console.line("reviews of scans   " + folder.resolve("reviews"));
        console.line("camera clocks      " + folder.resolve(CameraClocks.NAME));
        console.line("settings           " + folder.resolve(Settings.NAME));
        console.line("your own profiles  " + folder.resolve("profiles"));
        console.line("shipped profiles   " + DataFolder.profiles());
        return 0;
    }
}
