package takeup;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import takeup.kit.Kit;

/** The shipped profiles on their shelf, for tests that need whole cameras and stocks. */
public record ShippedShelf() implements Kit.ProfileSource {
    private static Path folder(Kit.Sort sort) {
        return Path.of("profiles", sort.name().toLowerCase(Locale.ROOT));
    }

    @Override
    public List<String> keys(Kit.Sort sort) {
        try (Stream<Path> files = Files.list(folder(sort))) {
            return files.map(it -> it.getFileName().toString().replace(".json", ""))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public Optional<Kit.File> file(Kit.Sort sort, String key) {
        Path path = folder(sort).resolve(key + ".json");
        try {
            return Files.exists(path)
                    ? Optional.of(new Kit.File(path.toString(), Files.readString(path), Optional.empty()))
                    : Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
