package takeup.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A JPEG whose Exif part is nothing but blocks that each name the next one (TIFF 6.0, section 2; Exif 2.32, 4.6.3). */
class ChainedExifTest {
    @TempDir
    Path folder;

    @Test
    void noChainOfBlocksIsFollowedToItsEnd() throws IOException {
        for (boolean isFollowed : new boolean[] {false, true}) {
            Path file = folder.resolve("chained.jpg");
            if (isFollowed) {
                ChainedExif.writeFollowing(file);
            } else {
                ChainedExif.writeNested(file);
            }
            assertEquals(Optional.empty(), ExifFile.of(file, "chained.jpg"));
            assertEquals(Optional.empty(), ScanDate.of(file));
        }
    }
}
