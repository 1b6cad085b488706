package takeup.profiles;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.cli.Subcommands;
import takeup.console.Console;

/** Files to start from: they read without a problem, and none is ever written over. */
class NewProfileTest {
    @TempDir
    Path folder;

    private final ByteArrayOutputStream answers = new ByteArrayOutputStream();
    private final ByteArrayOutputStream errors = new ByteArrayOutputStream();

    private int run(String... words) {
        answers.reset();
        errors.reset();
        String[] all = new String[words.length + 2];
        System.arraycopy(words, 0, all, 0, words.length);
        all[words.length] = "--data";
        all[words.length + 1] = folder.toString();
        return Subcommands.run(all, new Console(answers, errors, Map.of("LANG", "C.UTF-8")));
    }

    private void check(int status, String piece) {
        String said = answers.toString(StandardCharsets.UTF_8) + errors.toString(StandardCharsets.UTF_8);
        assertTrue(said.contains(piece), said);
        assertEquals(status == 0 ? 0 : said.length(), errors.size(), said);
    }

    @Test
    void aNewStockReadsAsItIsWritten() {
        assertEquals(0, run("stock", "new", "Own"));
        check(0, "own.json is a stock to start from");
        assertEquals(0, run("stock", "own"));
        check(0, "My stock own (own): colour-negative, C-41");
        assertEquals(0, run("check"));
        check(0, "all in order");
    }

    @Test
    void aNewCameraReadsAsItIsWritten() {
        assertEquals(0, run("camera", "new", "own"));
        assertEquals(0, run("camera", "own"));
        check(0, "lens 50: 50mm f/1.8");
        assertEquals(0, run("check"));
        check(0, "all in order");
    }

    @Test
    void aCameraLikeAnotherOneIsItsCopy() {
        assertEquals(0, run("camera", "new", "mine", "--like", "645"));
        assertEquals(0, run("camera", "mine"));
        check(0, "backs 1, 2");
        assertEquals(2, run("camera", "new", "other", "--like", "64"));
        check(2, "did you mean 645?");
    }

    /** A source that speaks of another film would vouch for figures that were changed since. */
    @Test
    void aCopyBringsNeitherNotesNorSourcesOfTheOtherOne() throws IOException {
        assertEquals(0, run("stock", "new", "own", "--like", "cn800t"));
        String text = Files.readString(folder.resolve("profiles/stocks/own.json"));
        assertFalse(text.contains("digitaltruth"), text);
        assertFalse(text.contains("3200 K"), text);
        assertTrue(text.contains("\n \"source\": \"to be filled in\"}"), text);
        assertEquals(0, run("stock", "own"));
        check(0, "box speed 800");
        assertEquals(0, run("check"));
        check(0, "all in order");
    }

    /** The commonest slip in a file written by hand is named, with the line that it stands on. */
    @Test
    void aCommaLeftBehindIsNamedWithItsLine() throws IOException {
        run("stock", "new", "own");
        Path file = folder.resolve("profiles/stocks/own.json");
        Files.writeString(file, "{\"name\": \"Own\",\n \"filmSizes\": [\"135\"],\n}\n");
        assertEquals(2, run("stock", "own"));
        check(2, "own.json:2: a comma stands before a closing bracket, and nothing follows it: take the comma out");
        Files.writeString(file, "{\"name\": \"Own\",\n \"filmSizes\": [\"135\",\n\n ]}\n");
        assertEquals(2, run("stock", "own"));
        check(2, "own.json:2: a comma stands before a closing bracket");
        Files.writeString(file, "{\"name\": \"Own\",\n \"filmSizes\": [\"135\"\n");
        assertEquals(2, run("stock", "own"));
        check(2, "this is not JSON");
    }

    @Test
    void aFileThatIsThereIsNotTouched() throws IOException {
        run("stock", "new", "own");
        Path file = folder.resolve("profiles").resolve("stocks").resolve("own.json");
        String before = Files.readString(file).replace("My stock own", "Boathouse stock");
        Files.writeString(file, before);
        assertEquals(1, run("stock", "new", "own"));
        check(1, "is there already and is not touched");
        assertEquals(before, Files.readString(file));
    }
}
