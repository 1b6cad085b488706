package takeup.kit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The profiles that go out with the program, read as anybody's would be. */
final class Shipped {
    private static final Path PROFILES = Path.of("profiles");

    private Shipped() {}

    static Stream<String> cameras() {
        return keys("cameras").stream();
    }

    static Stream<String> stocks() {
        return keys("stocks").stream();
    }

    static Stream<String> meters() {
        return keys("meters").stream();
    }

    static ProfileReader.Read<Camera> readCamera(String key) {
        return ProfileReader.camera(key, "cameras/" + key + ".json", text("cameras", key));
    }

    static ProfileReader.Read<Stock> readStock(String key) {
        return ProfileReader.stock(key, "stocks/" + key + ".json", text("stocks", key));
    }

    static ProfileReader.Read<Meter> readMeter(String key) {
        return ProfileReader.meter(key, "meters/" + key + ".json", text("meters", key));
    }

    static Camera camera(String key) {
        return readCamera(key).profile().orElseThrow();
    }

    static Stock stock(String key) {
        return readStock(key).profile().orElseThrow();
    }

    static String text(String folder, String key) {
        try {
            return Files.readString(PROFILES.resolve(folder).resolve(key + ".json"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<String> keys(String folder) {
        try (Stream<Path> files = Files.list(PROFILES.resolve(folder))) {
            return files.map(it -> it.getFileName().toString())
                    .filter(it -> it.endsWith(".json"))
                    .map(it -> it.substring(0, it.length() - 5))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
