package takeup.ordering;

import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import takeup.console.Clock;
import takeup.console.CommandFailed;
import takeup.files.OrderFolder;
import takeup.options.GlobalOptions;

/** The options of {@code takeup order} that go with each of its commands, and the desk that they lead to. */
abstract class OrderOptions {
    @ParentCommand
    GlobalOptions global;

    @Option(
            names = "--from",
            paramLabel = "DIR",
            scope = CommandLine.ScopeType.INHERIT,
            description = "A folder with roll JSON files instead of the data folder; its orders lie in orders in it.")
    String from;

    @Option(
            names = "--clock",
            paramLabel = "TIME",
            scope = CommandLine.ScopeType.INHERIT,
            description = "Another time than now: 2026-09-14T09:30+02:00.")
    String clock;

    final OrderDesk desk() {
        Clock time = Clock.ofOption(clock);
        if (from == null) {
            return new OrderDesk(global, new OrderFolder(global.folder(), false), time);
        }
        if (from.isBlank()) {
            throw new CommandFailed(2, "--from names no folder");
        }
        Path base = Path.of(from).toAbsolutePath().normalize();
        if (!Files.isDirectory(base)) {
            throw new CommandFailed(1, base + " is no folder");
        }
        return new OrderDesk(global, new OrderFolder(base, true), time);
    }
}
