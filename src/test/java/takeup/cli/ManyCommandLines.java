package takeup.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import takeup.console.Console;

/**
 * Many command lines, one after the other, in one process of the installed program: to start it for each of them takes
 * longer than all they do.
 */
final class ManyCommandLines {
    private static final long PATIENCE = 60;

    private ManyCommandLines() {}

    /**
     * What each of them came to, in the scratch folder and the environment of {@link Installed}; each reads an empty
     * input.
     */
    static Map<String, Installed.Ended> run(Path scratch, List<String> commands) throws IOException {
        Path home = Path.of(System.getProperty("takeup.home", "target/takeup")).toAbsolutePath();
        Path tests = Path.of(ManyCommandLines.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .getPath());
        Path list = Files.write(Files.createTempFile("command-lines", ".txt"), commands);
        Path answers = Files.createTempFile("command-lines", ".answers");
        ProcessBuilder java = Installed.process(
                scratch,
                Map.of(),
                List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        home.resolve("takeup.jar") + ":" + home.resolve("lib/*") + ":" + tests,
                        ManyCommandLines.class.getName(),
                        list.toString()));
        Process process = java.redirectOutput(answers.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try {
            process.getOutputStream().close();
            if (!process.waitFor(PATIENCE, TimeUnit.SECONDS)) {
                throw new AssertionError("not at their end after " + PATIENCE + " s: " + commands);
            }
            return read(Files.readAllBytes(answers), commands);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        } finally {
            process.destroyForcibly();
            Files.delete(list);
            Files.delete(answers);
        }
    }

    private static Map<String, Installed.Ended> read(byte[] answers, List<String> commands) throws IOException {
        Map<String, Installed.Ended> ended = new HashMap<>();
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(answers))) {
            for (String command : commands) {
                int status = in.readInt();
                List<String> streams = new ArrayList<>();
                for (int stream = 0; stream < 2; stream++) {
                    streams.add(new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8));
                }
                ended.put(command, new Installed.Ended(status, streams.get(0), streams.get(1)));
            }
        }
        return ended;
    }

    /**
     * Goes through a file of command lines; for each prints its status, and length and bytes of what went to stdout and
     * stderr.
     */
    public static void main(String[] arguments) throws IOException {
        DataOutputStream answers = new DataOutputStream(System.out);
        System.setOut(System.err);
        for (String command : Files.readAllLines(Path.of(arguments[0]))) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            answers.writeInt(Main.status(command.split(" "), new Console(out, err, System.getenv())));
            for (ByteArrayOutputStream stream : List.of(out, err)) {
                answers.writeInt(stream.size());
                stream.writeTo(answers);
            }
        }
        answers.flush();
    }
}
