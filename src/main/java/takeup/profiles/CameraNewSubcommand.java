package takeup.profiles;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.kit.Kit;

/** {@code takeup camera new}: a file to start a camera of the photographer's own from. */
@Command(
        name = "new",
        description = "Writes a file to start a camera of your own from.",
        footer = {"", "For example:", "  takeup camera new club35 --like 35"})
final class CameraNewSubcommand implements Callable<Integer> {
    @ParentCommand
    CameraSubcommand parent;

    @Parameters(paramLabel = "KEY", description = "The key of the new one.")
    String key;

    @Option(names = "--like", paramLabel = "KEY", description = "Starts as a copy of that camera.")
    String like;

    @Override
    public Integer call() {
        return new NewProfile(parent.global, Kit.Sort.CAMERAS).write(key, Optional.ofNullable(like));
    }
}
