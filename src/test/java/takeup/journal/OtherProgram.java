package takeup.journal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import takeup.disk.IoErrorText;
import takeup.roll.NoteEvent;
import takeup.roll.RollId;

/** A second program that writes in a data folder, with a life of its own: it can be killed, starved and lied to. */
final class OtherProgram implements AutoCloseable {
    static final RollId ROLL = new RollId("R", 1);
    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-09-12T15:10:03+02:00");

    private final Process process;
    private final BufferedReader says;

    private OtherProgram(Process process) {
        this.process = process;
        this.says = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    /** Starts it on a folder, to write so many records, behind the words of another program that runs it. */
    static OtherProgram start(Path folder, int records, String... behind) throws IOException {
        List<String> command = new ArrayList<>(List.of(behind));
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:-UsePerfData",
                "-Duser.language=en",
                "-cp",
                System.getProperty("java.class.path"),
                OtherProgram.class.getName(),
                folder.toString(),
                Integer.toString(records)));
        return new OtherProgram(new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start());
    }

    /** What it says next; null at its end. */
    String line() throws IOException {
        return says.readLine();
    }

    /** All that it still says. */
    List<String> lines() throws IOException {
        List<String> all = new ArrayList<>();
        for (String line = line(); line != null; line = line()) {
            all.add(line);
        }
        return all;
    }

    /** Waits until it is gone; behind another program, until that one has seen it go. */
    void awaitEnd() throws InterruptedException {
        process.waitFor();
    }

    /** Lets it end by itself once it has written all. */
    void endInput() throws IOException {
        process.getOutputStream().close();
    }

    long pid() {
        return process.pid();
    }

    /** As {@code kill -9} does; returns once it is gone. What it said can still be read. */
    void kill() throws InterruptedException {
        process.toHandle().destroyForcibly();
        process.waitFor();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }

    /**
     * Says each number once it was acknowledged, and each refusal; then waits to be killed, or for its input to end.
     */
    public static void main(String[] arguments) throws IOException {
        try (Writer writer = Writer.take(Path.of(arguments[0]))) {
            System.out.println("taken");
            int refusals = 0;
            for (int number = 1; number <= Integer.parseInt(arguments[1]) && refusals < 3; number++) {
                Batch batch = new Batch(number, AT);
                batch.add(ROLL, new NoteEvent.Noted("record " + number));
                try {
                    writer.append(batch);
                    System.out.println(number);
                    writer.remarks().forEach(System.out::println);
                    refusals = 0;
                } catch (IOException e) {
                    System.out.println("not saved: " + IoErrorText.words(e));
                    refusals++;
                    number--;
                }
            }
            System.out.println("done");
            System.in.read();
        }
    }
}
