package takeup.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

/**
 * The modes and the size of a terminal come by pipes from a process beside Java, which then sets those of the screen.
 */
class SttyTest {
    @Test
    @EnabledOnOs(OS.LINUX)
    void whatTheProcessBesideJavaTellsIsTakenAndItIsAskedForTheModesOfTheScreen() throws Exception {
        assertEquals(List.of("asked", "size Size[columns=132, rows=43]"), told("500:5:bf:8a3b:3:1c", "43 132"));
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void whatAreNoModesIsNotTakenAndNothingIsAskedFor() throws Exception {
        assertEquals(List.of("nothing"), told("raw", "43 132"));
        assertEquals(List.of("nothing"), told("-F:/dev/sda", "43 132"));
        assertEquals(List.of("nothing"), told("500:5:bf:8a3b:3:1c"));
        assertEquals(List.of("nothing"), told());
    }

    /** What is said, in order of the alphabet, when these lines come by pipes as the start script makes them. */
    private static List<String> told(String... lines) throws IOException, InterruptedException {
        String launcher = Files.readString(Path.of("src/main/launch/takeup"));
        int from = launcher.indexOf("exec 6<&0 7<<answers");
        String pipes = launcher.substring(from, launcher.indexOf("stty -g", from))
                + "printf '%s\\n' \"$@\" >&9\nexec 9>&-\nread -r line <&8 && echo asked\n"
                + "} & fi; exec 9>&-; \"$java\" -cp \"$classes\" takeup.terminal.SttyTest $!; exec 8<&-; wait";
        ProcessBuilder builder = new ProcessBuilder("/bin/sh", "-c", pipes, "sh");
        builder.command().addAll(List.of(lines));
        builder.environment()
                .put(
                        "java",
                        Path.of(System.getProperty("java.home"), "bin", "java").toString());
        builder.environment().put("classes", System.getProperty("java.class.path"));
        Process process = builder.redirectErrorStream(true).start();
        process.getOutputStream().close();
        String answer = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return answer.lines().sorted().toList();
    }

    /** Takes what the process with this number tells. */
    public static void main(String[] arguments) {
        System.out.println(
                Stty.handedOver(arguments[0]).map(it -> "size " + it.size()).orElse("nothing"));
    }
}
