package takeup.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.cli.Subcommands;
import takeup.console.Console;

class SettingsTest {
    private static final String ALL = "{\n  \"theme\": \"night\",\n  \"ascii\": true,\n  \"framesLeft\": 8\n}\n";

    @TempDir
    Path folder;

    @Test
    void allThatIsSaidIsTaken() throws IOException {
        Files.writeString(folder.resolve(Settings.NAME), ALL);
        assertEquals(new Settings(Optional.of("night"), true, OptionalInt.of(8), "R", List.of()), Settings.of(folder));
    }

    @Test
    void aSecondLaptopHasLettersOfItsOwn() {
        assertEquals("AB", Settings.read("{\"writer\": \"AB\"}").writer());
        assertEquals("R", Settings.NONE.writer());
    }

    @Test
    void withoutAFileThereIsNothingToTell() {
        assertEquals(Settings.NONE, Settings.of(folder));
        assertEquals(Settings.NONE, Settings.of(folder.resolve("nowhere")));
        assertEquals(Settings.NONE, Settings.read("{}"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        {"themes": "sun"}                    | settings.json:1: themes is no setting known here, and is left out; did you mean theme?
        {"theme": "sun",~ "Ascii": true}     | settings.json:2: Ascii is no setting known here, and is left out; did you mean ascii?
        {~~ "frames": 4}                     | settings.json:3: frames is no setting known here, and is left out; known: theme, ascii, framesLeft, writer
        {"theme": "nigth"}                   | settings.json:1: theme is one of dark, sun, night, mono; dark is used; did you mean night?
        {"theme": "Sun"}                     | settings.json:1: theme is one of dark, sun, night, mono; dark is used; did you mean sun?
        {"theme": 3}                         | settings.json:1: theme is one of dark, sun, night, mono; dark is used
        {"theme": null}                      | settings.json:1: theme is one of dark, sun, night, mono; dark is used
        {"ascii": "yes"}                     | settings.json:1: ascii is true or false; false is used
        {"ascii": null}                      | settings.json:1: ascii is true or false; false is used
        {"framesLeft": 37}                   | settings.json:1: framesLeft is a whole number from 0 to 36; a quarter of the roll, at most 5, is used
        {"framesLeft": -1}                   | settings.json:1: framesLeft is a whole number from 0 to 36; a quarter of the roll, at most 5, is used
        {"framesLeft": 2.5}                  | settings.json:1: framesLeft is a whole number from 0 to 36; a quarter of the roll, at most 5, is used
        {"framesLeft": "4"}                  | settings.json:1: framesLeft is a whole number from 0 to 36; a quarter of the roll, at most 5, is used
        {"writer": "ab"}                     | settings.json:1: writer is one to three capital letters, such as AB; R is used: put it right before a film is loaded
        {"writer": "ABCD"}                   | settings.json:1: writer is one to three capital letters
        {"writer": ""}                       | settings.json:1: writer is one to three capital letters
        {"writer": 7}                        | settings.json:1: writer is one to three capital letters
        ["theme"]                            | settings.json:1: settings are one object in braces, such as {"theme": "sun"}; takeup goes on without its settings
        {"theme": "sun",                     | settings.json:1: this is not JSON
        {"theme": "sun", "theme": "dark"}    | settings.json:1: this is not JSON: Duplicate field 'theme'
        """)
    void aMistakeIsToldWithItsLineAndWhatIsTakenInstead(String text, String problem) {
        List<String> problems = Settings.read(text.replace('~', '\n')).problems();
        assertEquals(1, problems.size());
        assertTrue(problems.get(0).startsWith(problem), problems.toString());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        {"ascii": false}   | false | -1
        {"framesLeft": 0}  | false | 0
        {"framesLeft": 36} | false | 36
        """)
    void theFirstAndTheLastValueAreTaken(String text, boolean ascii, int framesLeft) {
        assertEquals(
                new Settings(
                        Optional.empty(),
                        ascii,
                        framesLeft < 0 ? OptionalInt.empty() : OptionalInt.of(framesLeft),
                        "R",
                        List.of()),
                Settings.read(text));
    }

    @Test
    void aMarkInFrontAsSomeEditorsLeaveItIsPassedOverAndAFileOf64KiBIsRead() throws IOException {
        Files.writeString(folder.resolve(Settings.NAME), "\ufeff" + ALL);
        assertEquals(OptionalInt.of(8), Settings.of(folder).framesLeft());
        for (int more = 0; more < 2; more++) {
            Files.writeString(folder.resolve(Settings.NAME), ALL + " ".repeat(65_536 - ALL.length() + more));
            assertEquals(
                    more == 0
                            ? List.of()
                            : List.of("settings.json:1: this is larger than any settings can be; takeup goes on "
                                    + "without its settings"),
                    Settings.of(folder).problems());
        }
    }

    /** A link to nothing, or to itself, stands for settings that somebody meant to be there. */
    @ParameterizedTest
    @ValueSource(strings = {"nowhere", Settings.NAME})
    void aLinkThatLeadsNowhereIsTold(String target) throws IOException {
        Files.createSymbolicLink(folder.resolve(Settings.NAME), Path.of(target));
        assertEquals(
                List.of("settings.json:1: this is a link, which is not followed: put the file itself in its place; "
                        + "takeup goes on without its settings"),
                Settings.of(folder).problems());
    }

    @Test
    void oneMistakeCostsItsOwnLineAlone() {
        Settings settings = Settings.read("{\"theme\": \"nihgt\", \"colour\": 1, \"framesLeft\": 4}");
        assertEquals(Optional.empty(), settings.theme());
        assertEquals(OptionalInt.of(4), settings.framesLeft());
        assertEquals(2, settings.problems().size());
    }

    /** Files as accidents leave them: cut short, letters changed, bytes that are no text. */
    @Test
    void whateverIsInTheFileTheProgramStartsAndSaysWhere() throws IOException {
        Random random = new Random(30);
        for (int i = 0; i < 60; i++) {
            byte[] bytes = ALL.getBytes(StandardCharsets.UTF_8);
            byte[] broken = i < 30 ? Arrays.copyOf(bytes, random.nextInt(bytes.length - 2)) : bytes;
            if (i >= 30) {
                broken[random.nextInt(broken.length)] = (byte) random.nextInt(256);
            }
            Files.write(folder.resolve(Settings.NAME), broken);
            Settings settings = Settings.of(folder);
            assertTrue(
                    settings.problems().stream().allMatch(it -> it.matches("(?s)settings\\.json:[1-9][0-9]*: .*")),
                    settings.problems().toString());
            assertTrue(i >= 30 || !settings.problems().isEmpty(), "nothing is said of a file that was cut");
        }
    }

    @Test
    void aFolderOfThatNameIsToldAndLeft() throws IOException {
        Files.createDirectory(folder.resolve(Settings.NAME));
        assertEquals(
                List.of("settings.json:1: this is no plain file; takeup goes on without its settings"),
                Settings.of(folder).problems());
    }

    @Test
    void checkTellsOfThemToo() throws IOException {
        Files.writeString(folder.resolve(Settings.NAME), "{\"them\": 1}");
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        assertEquals(1, Subcommands.run(new String[] {"check", folder.toString()}, new Console(said, said, Map.of())));
        assertTrue(
                said.toString(StandardCharsets.UTF_8).startsWith("settings.json:1: them is no setting"),
                said.toString(StandardCharsets.UTF_8));
    }
}
