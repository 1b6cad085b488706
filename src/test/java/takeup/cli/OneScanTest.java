package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A roll of one frame, and its one scan, are spoken of as one. */
class OneScanTest {
    @TempDir
    Path scratch;

    @Test
    void oneFrameAndOneScanAreNoMore() throws IOException {
        String data = scratch.resolve("day").toString();
        String folder = scratch.resolve("back").toString();
        new FakeLab(scratch.resolve("back")).scan("crew_01.jpg", 0.45);
        InProcess.run("cam 645\nload cn400 120\n8 125\nunload yes\n", List.of("line", "--data", data));

        String proposed = InProcess.run("yes\n", List.of("scans", "1", folder, "--accept", "--data", data))
                .out();
        String accepted =
                InProcess.run("", List.of("scans", "1", "--data", data)).out();

        assertTrue(proposed.contains("1 frame may come back · 1 scan in " + folder), proposed);
        assertTrue(accepted.contains("· 1 scan in " + folder), accepted);
    }
}
