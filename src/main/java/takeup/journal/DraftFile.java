package takeup.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import takeup.disk.FileSystem;
import takeup.disk.Folders;

/** The file of what is being typed, so that a start after a crash can offer it back; it is never relied on. */
record DraftFile(FileSystem drive, Path file) {
    private static final int LARGEST = 200_000;

    /** What was being typed when the program ended last; empty if nothing was, or it cannot be read. */
    Optional<String> read() {
        try {
            if (drive.kind(file) != FileSystem.Kind.FILE || drive.size(file) > LARGEST) {
                return Optional.empty();
            }
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(drive.read(file)))
                    .toString();
            return Optional.of(text).filter(it -> !it.isBlank());
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Keeps what is being typed; nothing is kept of an empty line. */
    void keep(String text) throws IOException {
        if (!text.isBlank()) {
            Folders.replace(drive, file, text.getBytes(StandardCharsets.UTF_8));
        } else if (Folders.whyLeftAlone(drive, file).isEmpty()) {
            drive.delete(file);
        }
    }
}
