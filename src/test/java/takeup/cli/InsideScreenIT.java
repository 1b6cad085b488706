package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.Outside;

/** The installed screen inside {@code screen}, which many people keep their shells in. */
class InsideScreenIT {
    @TempDir
    Path scratch;

    @BeforeAll
    static void needs() {
        Outside.needs("python3", "screen");
    }

    @Test
    void aFrameIsLoggedAndAnArrowIsAnArrow() throws IOException {
        Installed.run(scratch, "cam 645\nload cn400\n4 125\n", List.of("--data", "day", "line"));
        Path sockets = Files.createDirectory(
                scratch.resolve("sockets"),
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
        List<String> command = new ArrayList<>(List.of(
                "python3",
                Path.of("src/test/outside/manners.py").toAbsolutePath().toString(),
                "80x24",
                "screen",
                "-q",
                "-c",
                "/dev/null"));
        command.addAll(
                Installed.program(scratch, Map.of(), List.of("--data", "day")).command());
        String steps = "see 15 left\npause 200\nbytes " + hex("8 25") + "\nbytes " + hex("\u001b[D\u001b[F0\r")
                + "\nsee Frame 2 on R0001: f/8 1/250\nbytes " + hex("quit\r") + "\npause 5000\n";
        Installed.Ended ended =
                Installed.run(Installed.process(scratch, Map.of("SCREENDIR", sockets.toString()), command), steps);
        assertTrue(!ended.out().contains("waited in vain") && ended.out().endsWith("status 0\n"), ended.out());
        Installed.Ended said = Installed.run(scratch, "say\n", List.of("--data", "day", "line"));
        assertTrue(said.out().contains("Next frame 3, 14 left"), said.out());
    }

    private static String hex(String text) {
        return HexFormat.of().formatHex(text.getBytes(StandardCharsets.UTF_8));
    }
}
