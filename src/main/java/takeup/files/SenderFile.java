package takeup.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import takeup.console.CommandFailed;
import takeup.disk.Folders;
import takeup.json.JsonProblem;
import takeup.kit.Kit;
import takeup.order.Sender;

/**
 * The sender of all orders: {@code sender.json} in the data folder.
 *
 * @param data the data folder
 */
public record SenderFile(Path data) {
    public static final String NAME = "sender.json";
    private static final long LARGEST = 100_000;

    public Path path() {
        return data.resolve(NAME);
    }

    /** The sender; empty where nobody was asked yet. A file that cannot be taken ends the command. */
    public Optional<Sender> read() {
        if (!Files.exists(path(), LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        Kit.File file = InputFile.readOwn(path(), NAME, LARGEST);
        if (file.problem().isPresent()) {
            throw new CommandFailed(1, file.problem().get());
        }
        try {
            return Optional.of(Sender.read(NAME, file.text()));
        } catch (JsonProblem e) {
            throw new CommandFailed(1, e.getMessage());
        }
    }

    /** Keeps it for all orders to come. */
    public void save(Sender sender) throws IOException {
        Folders.make(data);
        Folders.replace(path(), sender.json().getBytes(StandardCharsets.UTF_8));
    }
}
