package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Rolls in a data folder for tests of other rooms, made as a photographer makes them. */
public final class TypedRolls {
    private TypedRolls() {}

    /** Types lines into {@code takeup line}; none may be refused. */
    public static void type(Path folder, String... lines) {
        new TypedLines(folder)
                .words(lines)
                .forEach(it -> assertEquals(false, it.startsWith("Not done"), Arrays.toString(lines) + " " + it));
    }

    /** What a command prints; it must succeed in silence. */
    public static String run(Path folder, String... arguments) {
        List<String> all = Stream.concat(Stream.of(arguments), Stream.of("--data", folder.toString()))
                .toList();
        Installed.Ended ended = InProcess.run("", all);
        assertEquals("0 ", ended.status() + " " + ended.err());
        return ended.out();
    }
}
