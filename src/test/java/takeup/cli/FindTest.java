package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.index.CopiedJournal;
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

    /** A journal that find reads is read for frames --json too: the lines come from the index, without the journals. */
    @Test
    void whatFindReadsFramesNeedsNotReadAgain() throws IOException {
        Path finished = folder.resolve("rolls/finished");
        String journal = Files.readString(finished.resolve("R0001.journal"));
        for (int roll = 3; roll <= 210; roll++) {
            String name = String.format(Locale.ROOT, "R%04d", roll);
            Files.writeString(finished.resolve(name + ".journal"), CopiedJournal.of(journal, name, 100 + roll));
        }
        String frames = TypedRolls.run(folder, "frames", "--json");
        try (Stream<Path> index = Files.list(folder.resolve("index"))) {
            for (Path part : index.toList()) {
                Files.delete(part);
            }
        }
        TypedRolls.run(folder, "find", "cox");
        Path part = folder.resolve("index/R-1.frames");
        FileTime made = FileTime.fromMillis(1000);
        Files.setLastModifiedTime(part, made);
        assertEquals(frames, TypedRolls.run(folder, "frames", "--json"));
        assertEquals(made, Files.getLastModifiedTime(part), "nothing in it was made anew");
    }
}
