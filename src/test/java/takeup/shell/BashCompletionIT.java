package takeup.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import takeup.Outside;
import takeup.cli.Installed;

/** A real bash, the printed completion, and words on the line as readline hands them over. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BashCompletionIT {
    @TempDir
    static Path scratch;

    /** What is on the line, the word under the cursor last (~ is an empty one); what is offered. */
    private static final List<List<String>> TABLE = List.of(
            List.of("takeup ro", "rolls roll"),
            List.of("takeup --data day ro", "rolls roll"),
            List.of("takeup schema fr", "frames"),
            List.of("takeup --theme ~", "dark sun night mono"),
            List.of("takeup --theme s", "sun"),
            List.of("takeup meter --st", "--stock"),
            List.of("takeup roll R0001 --t", "--text"),
            List.of("takeup rolls --tripod --t", ""),
            List.of("takeup meter ev10 --stock cn4", "cn400"),
            List.of("takeup meter ev10 --stock = cn4", "cn400"),
            List.of("takeup meter --data day --stock m", "mine"),
            List.of("takeup stock foma", "foma200 foma400"),
            List.of("takeup stock new x --like cr", "cr100 cr50"),
            List.of("takeup camera 6", "645 645leaf 66 66slr 67 69"),
            List.of("takeup --data day roll ~", "R0001 R0002"),
            List.of("takeup roll --data = day R", "R0001 R0002"),
            List.of("takeup check da", "day days\\ off"),
            List.of("takeup roll R0001 -o no", "notes.txt"),
            List.of("takeup scans R0001 da", "day days\\ off"),
            List.of("takeup scans R0001 --sidecars ~", "full short"),
            List.of("takeup --data day review --rate --stock mi", "mine"),
            List.of("takeup stock n", "new"),
            List.of("takeup stock cb", "cbw400"),
            List.of("takeup plan ~", "import"),
            List.of("takeup help ro", "rolls roll"),
            List.of("takeup order new --la", "--lab"),
            List.of("takeup order mark ORD-001 s", "sent scans"),
            List.of("takeup completion ~", "bash zsh fish"),
            List.of("takeup line --clock ~", ""));

    @BeforeAll
    void shoot() throws IOException {
        Outside.needs("bash");
        Installed.run(scratch, "cam 645\nload cn400\nunload yes\nload cn400\n", List.of("line", "--data", "day"));
        Files.createDirectories(scratch.resolve("day/profiles/stocks"));
        Files.writeString(scratch.resolve("day/profiles/stocks/mine.json"), "{}\n");
        Files.createDirectory(scratch.resolve("days off"));
        Files.writeString(scratch.resolve("notes.txt"), "");
    }

    @Test
    void whatIsTypedSoFarIsCompleted() throws IOException {
        StringBuilder script = new StringBuilder("PATH="
                + Installed.program(scratch, Map.of(), List.of())
                        .command()
                        .get(0)
                        .replaceAll("/takeup$", "") + ":$PATH\n"
                + "eval \"$(takeup completion bash)\"\ncomplete -p takeup\n"
                + "try() { COMP_WORDS=(); local word; for word; do COMP_WORDS+=(\"${word#\\~}\"); done; "
                + "COMP_CWORD=$(($# - 1)); _takeup; printf '%q ' \"${COMPREPLY[@]}\"; echo; }\n");
        List<String> expected = new ArrayList<>(List.of("complete -F _takeup takeup"));
        for (List<String> row : TABLE) {
            script.append("try ").append(row.get(0).replace("~", "'~'")).append('\n');
            expected.add(row.get(0) + ": " + row.get(1));
        }
        Installed.Ended ended = Installed.run(
                Installed.process(scratch, Map.of(), List.of("bash", "--norc", "-c", script.toString())), "");
        List<String> offered = ended.out().lines().toList();
        List<String> told = new ArrayList<>(offered.isEmpty() ? List.of() : List.of(offered.get(0)));
        for (int i = 1; i < offered.size(); i++) {
            told.add(TABLE.get(i - 1).get(0) + ": " + offered.get(i).strip().replaceAll("^''$", ""));
        }
        assertEquals(String.join("\n", expected), String.join("\n", told), ended.err());
        assertEquals("", ended.err());
    }
}
