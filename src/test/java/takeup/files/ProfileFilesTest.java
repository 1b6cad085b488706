package takeup.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.kit.Kit;

/** Profiles and labs from two folders, the photographer's own first, and files that are none. */
class ProfileFilesTest {
    @TempDir
    Path folder;

    private ProfileFiles shelf;
    private LabFiles labs;

    @BeforeEach
    void folders() throws IOException {
        for (String name : List.of("own/stocks", "own/labs", "shipped/stocks", "shipped/labs")) {
            Files.createDirectories(folder.resolve(name));
        }
        shelf = new ProfileFiles(folder.resolve("own"), folder.resolve("shipped"));
        labs = new LabFiles(folder.resolve("own/labs"), folder.resolve("shipped/labs"));
    }

    private void put(String name, String text, Charset charset) throws IOException {
        Files.write(folder.resolve(name), text.getBytes(charset));
    }

    private String said(String key) {
        Kit.File file = shelf.file(Kit.Sort.STOCKS, key).orElseThrow();
        return file.problem().orElse(file.text());
    }

    @Test
    void theOwnFileWinsAlsoWhereItCannotBeRead() throws IOException {
        put("shipped/stocks/cn400.json", "shipped", StandardCharsets.UTF_8);
        assertEquals("shipped", said("cn400"));
        put("own/stocks/cn400.json", "\ufeffown", StandardCharsets.UTF_8);
        assertEquals("own", said("cn400"));
        put("own/stocks/cn400.json", "schön", StandardCharsets.ISO_8859_1);
        assertEquals("stocks/cn400.json:1: is not UTF-8: save it as UTF-8", said("cn400"));
        Files.delete(folder.resolve("own/stocks/cn400.json"));
        Files.createSymbolicLink(folder.resolve("own/stocks/cn400.json"), Path.of("nowhere"));
        assertEquals(
                "stocks/cn400.json:1: is a link, which is not followed: put the file itself in its place",
                said("cn400"));
        assertEquals(Optional.empty(), shelf.file(Kit.Sort.STOCKS, "bw400"));
        assertEquals(Optional.empty(), shelf.file(Kit.Sort.METERS, "cn400"));
    }

    @ParameterizedTest(name = "{0} bytes")
    @CsvSource({"1048576, false", "1048577, true"})
    void aFileOfAMebibyteIsReadAndALargerOneIsNot(int bytes, boolean refused) throws IOException {
        put("own/stocks/cn400.json", " ".repeat(bytes), StandardCharsets.UTF_8);
        assertEquals(
                refused ? "stocks/cn400.json:1: is larger than any such file can be" : " ".repeat(bytes),
                said("cn400"));
    }

    @Test
    void whatCannotBeTypedIsNoKeyAndIsTold() throws IOException {
        for (String name : List.of("cn400", "CN800", "a b", "notes.txt")) {
            put("own/stocks/" + name + (name.equals("notes.txt") ? "" : ".json"), "{}", StandardCharsets.UTF_8);
        }
        assertEquals(List.of("cn400"), shelf.keys(Kit.Sort.STOCKS));
        List<String> strangers = shelf.strangers(Kit.Sort.STOCKS);
        assertEquals(2, strangers.size());
        assertTrue(strangers.get(0).startsWith("stocks/CN800.json:1: this name cannot be typed"), strangers.get(0));
        assertTrue(strangers.get(1).startsWith("stocks/a b.json:1: this name cannot be typed"), strangers.get(1));
    }

    @Test
    void theOnlyLabOfOnesOwnIsTheUsualOne() throws IOException {
        assertEquals("lab", labs.usual());
        put("own/labs/harbour.json", "{}", StandardCharsets.UTF_8);
        assertEquals("harbour", labs.usual());
        put("own/labs/bridge.json", "{}", StandardCharsets.UTF_8);
        assertEquals("lab", labs.usual());
    }

    @Test
    void aLabThatIsNotKnownOrNotReadIsTold() throws IOException {
        assertEquals(
                List.of("../x is no lab known here; known: none"),
                labs.lab("../x").problems());
        put("own/labs/harbour.json", "schön", StandardCharsets.ISO_8859_1);
        assertEquals(
                List.of("labs/harbour.json:1: is not UTF-8: save it as UTF-8"),
                labs.lab("Harbour").problems());
        assertEquals(List.of("labs/harbour.json:1: is not UTF-8: save it as UTF-8"), labs.problems());
        assertEquals(
                List.of("harbor is no lab known here; did you mean harbour?"),
                labs.lab("harbor").problems());
        assertEquals(
                List.of("quay is no lab known here; known: harbour"),
                labs.lab("quay").problems());
    }
}
