package takeup.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assertions;

/**
 * The installed program, {@code target/takeup/bin/takeup}, in a process of its own and with an environment that is the
 * same everywhere.
 */
public final class Installed {
    private static final Path HOME =
            Path.of(System.getProperty("takeup.home", "target/takeup")).toAbsolutePath();
    private static final long PATIENCE = 60;

    private Installed() {}

    /** What a run came to. */
    public record Ended(int status, String out, String err) {
        /** Both streams, for what must stand in neither. */
        String all() {
            return out + err;
        }

        @Override
        public String toString() {
            return "status " + status + "\n--- stdout\n" + out + "--- stderr\n" + err;
        }
    }

    /**
     * A child process of the program, in the scratch folder. Without {@code --data} its data folder is
     * {@code nobody/takeup} in there.
     */
    public static ProcessBuilder program(Path scratch, Map<String, String> environment, List<String> arguments) {
        List<String> command =
                new ArrayList<>(List.of(HOME.resolve("bin").resolve("takeup").toString()));
        command.addAll(arguments);
        return process(scratch, environment, command);
    }

    /** Any other child process, such as a shell, in the same environment. */
    public static ProcessBuilder process(Path scratch, Map<String, String> environment, List<String> command) {
        ProcessBuilder builder = new ProcessBuilder(command).directory(scratch.toFile());
        Map<String, String> all = builder.environment();
        all.keySet()
                .removeIf(it -> it.startsWith("JAVA_")
                        || it.startsWith("JDK_")
                        || it.startsWith("LC_")
                        || it.startsWith("XDG_")
                        || it.equals("NO_COLOR"));
        all.putAll(Map.of(
                "JAVA_HOME",
                System.getProperty("java.home"),
                "LC_ALL",
                "C.UTF-8",
                "TERM",
                "xterm-256color",
                "HOME",
                scratch.toString(),
                "XDG_DATA_HOME",
                scratch.resolve("nobody").toString()));
        all.putAll(environment);
        return builder;
    }

    /** Runs the program to its end. */
    public static Ended run(Path scratch, String input, List<String> arguments) {
        return run(program(scratch, Map.of(), arguments), input);
    }

    public static Ended run(ProcessBuilder builder, String input) {
        try {
            Process process = builder.start();
            CompletableFuture<String> out = CompletableFuture.supplyAsync(() -> text(process.getInputStream()));
            CompletableFuture<String> err = CompletableFuture.supplyAsync(() -> text(process.getErrorStream()));
            try (OutputStream in = process.getOutputStream()) {
                in.write(input.getBytes(StandardCharsets.UTF_8));
            } catch (IOException e) {
                // it ended before it read all of it; its status says whether that was right
            }
            if (!process.waitFor(PATIENCE, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                Assertions.fail("not at its end after " + PATIENCE + " s: " + builder.command());
            }
            return new Ended(process.exitValue(), out.join(), err.join());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private static String text(InputStream in) {
        try (in) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A text of {@code src/test/resources/outside}. */
    static List<String> resource(String name) {
        try {
            return Files.readAllLines(Path.of("src/test/resources/outside", name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
