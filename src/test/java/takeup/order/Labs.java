package takeup.order;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Labs for tests: the one that is shipped, and others from text. */
final class Labs {
    static final Lab SHIPPED = shipped();

    private Labs() {}

    private static Lab shipped() {
        try {
            return lab("lab", Files.readString(Path.of("profiles", "labs", "lab.json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Lab lab(String key, String json) {
        Lab.Read read = Lab.of(key, "labs/" + key + ".json", json);
        return read.lab().orElseThrow(() -> new AssertionError(read.problems().toString()));
    }
}
