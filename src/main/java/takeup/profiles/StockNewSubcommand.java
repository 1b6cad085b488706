package takeup.profiles;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.kit.Kit;

/** {@code takeup stock new}: a file to start a stock of the photographer's own from. */
@Command(
        name = "new",
        description = "Writes a file to start a stock of your own from.",
        footer = {"", "For example:", "  takeup stock new club400 --like cn400"})
final class StockNewSubcommand implements Callable<Integer> {
    @ParentCommand
    StockSubcommand parent;

    @Parameters(paramLabel = "KEY", description = "The key of the new one.")
    String key;

    @Option(names = "--like", paramLabel = "KEY", description = "Starts as a copy of that stock.")
    String like;

    @Override
    public Integer call() {
        return new NewProfile(parent.global, Kit.Sort.STOCKS).write(key, Optional.ofNullable(like));
    }
}
