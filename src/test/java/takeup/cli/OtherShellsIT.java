package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.Outside;

/** zsh and fish with the printed completions, and mandoc with the printed page. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OtherShellsIT {
    private static final String ZSH =
            "compdef() { }\n. ./_takeup\ncompadd() { local from=${@[-1]}; print -l -- ${(M)${(P)from}:#$typed*} }\n"
                    + "_describe() { local from=${@[-1]}; print -l -- ${(M)${${(P)from}%%:*}:#$typed*} }\n";

    @TempDir
    static Path scratch;

    @BeforeAll
    void print() throws IOException {
        Outside.needs("zsh", "fish", "mandoc");
        Files.writeString(
                scratch.resolve("_takeup"),
                Installed.run(scratch, "", List.of("completion", "zsh")).out());
        Files.writeString(
                scratch.resolve("takeup.fish"),
                Installed.run(scratch, "", List.of("completion", "fish")).out());
        Files.writeString(
                scratch.resolve("takeup.1"),
                Installed.run(scratch, "", List.of("man")).out());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
        takeup ro,               roll rolls
        takeup meter --st,       --stock
        takeup meter --stock cn4, cn400
        takeup stock foma,       foma200 foma400
        takeup order new --la,   --lab
        takeup --theme s,        sun
        takeup completion z,     zsh
        """)
    void bothShellsOfferTheSame(String typed, String offered) {
        String path = "PATH="
                + Installed.program(scratch, Map.of(), List.of())
                        .command()
                        .get(0)
                        .replaceAll("/takeup$", "") + ":" + System.getenv("PATH");
        List<String> words = List.of(typed.split(" "));
        shows(
                offered,
                List.of("env", path, "fish", "--no-config", "-c", "source takeup.fish; complete -C'" + typed + "'"));
        shows(
                offered,
                List.of(
                        "env",
                        path,
                        "zsh",
                        "-f",
                        "-c",
                        ZSH + "words=(" + typed + ") CURRENT=" + words.size() + " typed=" + words.get(words.size() - 1)
                                + "\n_takeup"));
    }

    private static void shows(String offered, List<String> command) {
        Installed.Ended ended = Installed.run(Installed.process(scratch, Map.of(), command), "");
        TreeSet<String> told = new TreeSet<>(ended.out()
                .lines()
                .map(it -> it.split("\t")[0])
                .filter(it -> !it.isBlank())
                .toList());
        assertEquals(new TreeSet<>(List.of(offered.split(" "))), told, command + " " + ended.err());
    }

    @Test
    void theManualPageIsCleanToItsStrictestReader() {
        Installed.Ended ended =
                Installed.run(Installed.process(scratch, Map.of(), List.of("mandoc", "-Tlint", "takeup.1")), "");
        assertEquals("", ended.all());
        String read = Installed.run(Installed.process(scratch, Map.of(), List.of("mandoc", "-Tascii", "takeup.1")), "")
                .out()
                .replaceAll(".\b", "");
        assertTrue(read.contains("takeup order mark ORDER STAGE [ROLL...]") && read.contains("f/4 and 1/125"), read);
    }
}
