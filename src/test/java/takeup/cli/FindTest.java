package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.json.Json;
import takeup.json.JsonText;

/** Frames are found again, from the command line and on the prompt. */
class FindTest {
    @TempDir
    Path folder;

    @BeforeEach
    void twoRolls() {
        TypedRolls.type(
                folder,
                "shoot Regatta day",
                "cam 35",
                "load bw400",
                "m 5.6 125",
                "5.6 125 ; the cox, in the rain",
                "2.8 125",
                "unload yes",
                "load cn400",
                "2.8 500 ; cox again");
        TypedRolls.run(folder, "scans", "1", "--dense", "2");
    }

    @Test
    void theCommandListsThemWithRollPlaceSettingAndVerdict() {
        assertEquals(
                List.of(
                        "R0001  frame 2   2 of 2    2026-09-12  bw400    f/2.8 1/125   50mm f/1.8  dense",
                        "R0002  frame 1   1 of 1    2026-09-12  cn400    f/2.8 1/500   50mm f/1.8  cox again",
                        "2 frames on 2 rolls"),
                TypedRolls.run(folder, "find", "f2.8").lines().toList());
        assertEquals(
                "1 frame on 1 roll",
                TypedRolls.run(folder, "find", "in the rain", "bw400")
                        .lines()
                        .skip(1)
                        .findFirst()
                        .orElseThrow());
        assertEquals(
                "No frame meets all of: cn400 judged dense\n",
                TypedRolls.run(folder, "find", "cn400", "judged", "dense"));
    }

    @Test
    void jsonLinesHaveTheFieldsOfTheFramesSchema() throws JsonText.NotJson {
        String line = TypedRolls.run(folder, "find", "--json", "over", "1");
        Json.Obj found = (Json.Obj) JsonText.read(line);
        assertEquals("R0001", TypedLines.text(found, "roll"));
        assertEquals("Regatta day", TypedLines.text(found, "shoot"));
        assertEquals(2.0, TypedLines.number(found, "errorStops"), 1e-9);
        assertEquals("dense", TypedLines.text(found, "verdict"));
        assertEquals(true, line.contains("\"fNumber\":2.8,") && line.contains("\"note\":null,"), line);
    }

    @Test
    void theWordOfThePromptAnswersInWords() throws JsonText.NotJson {
        TypedLines lines = new TypedLines(folder);
        assertEquals("2 frames on 2 rolls: R0002 frame 1, R0001 frame 1.", lines.last("find cox"));
        assertEquals("No frame meets all of: judged thin.", lines.last("find judged thin"));
        assertEquals("Not done: say what to look for, such as bw400 f2.8 lens 28.", lines.last("find"));
        assertEquals(2, TypedLines.number(lines.lastJson("find f2.8"), "framesFound"));
    }
}
