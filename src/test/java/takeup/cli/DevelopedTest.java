package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A roll is developed, the next of its film in the same way, and what still waits is listed. */
class DevelopedTest {
    @TempDir
    Path folder;

    private TypedLines lines;

    @BeforeEach
    void threeRolls() {
        lines = new TypedLines(folder);
        for (String stock : new String[] {"bw400", "bw400", "cn400"}) {
            TypedRolls.type(folder, "cam 35", "load " + stock, "m 5.6 125", "5.6 125", "unload yes");
        }
    }

    @Test
    void whatIsTypedIsSaidBackExportedAndFoundInTheJournal() throws IOException {
        assertEquals(
                "R0001 developed in fine-grain 1+1, 9m45s at 20C, agitation 10s a minute, by me, on 2026-09-20.",
                lines.last(
                        "developed r1 in \"fine-grain 1+1\" 9m45s at 20C agitation 10s a minute by me on 2026-09-20"));
        String export = Files.readString(folder.resolve("exports/R0001.json"));
        assertTrue(export.contains("\"developer\" : \"fine-grain 1+1\""), export);
        assertTrue(export.contains("\"seconds\" : 585.0"), export);
        assertTrue(export.contains("\"celsius\" : 20.0"), export);
        String journal = Files.readString(folder.resolve("rolls/finished/R0001.journal"));
        assertTrue(
                journal.contains("\"event\":\"developed\",\"developer\":\"fine-grain 1+1\",\"seconds\":585"), journal);
        String undone = lines.last("undo");
        assertTrue(undone.startsWith("Undone: the development of R0001"), undone);
        assertFalse(Files.readString(folder.resolve("exports/R0001.json")).contains("fine-grain"));
    }

    @Test
    void theLastRecipeOfTheFilmIsTakenAgain() {
        lines.words("developed r1 in fine-grain 1+1 9:45 at 68F agitation 10s a minute by me");
        assertEquals(
                "R0002 developed in fine-grain 1+1, 9m45s at 20C, agitation 10s a minute, by the lab.",
                lines.last("developed r2 by the lab"));
        assertEquals(
                "Not done: no earlier roll of cn400 has a recipe: developed r3 in fine-grain 1+1 9m45s at 20C.",
                lines.last("developed r3"));
    }

    @Test
    void aTimeInTwoWordsAndEverySoManySecondsAreRead() {
        assertEquals(
                "R0001 developed in fine-grain 1+1, 9m45s at 20C, agitation every 30s, by me.",
                lines.last("developed r1 in fine-grain 1+1 9m 45s at 20C every 30s by me"));
        String said = lines.last("developed r1 in fine-grain 1+1 9m45s 30s");
        assertTrue(said.startsWith("Not done: two times; 30s is the second."), said);
    }

    @Test
    void whatWaitsIsListed() {
        TypedRolls.run(folder, "developed", "r1", "in", "fine-grain 1+1", "1h");
        assertEquals(
                "R0002  bw400       2026-09-12  black-and-white, NORMAL (rated 400, box 400)\n"
                        + "R0003  cn400       2026-09-12  C-41, NORMAL (rated 200, box 400)\n2 rolls to develop\n",
                TypedRolls.run(folder, "developed"));
        assertEquals("Waiting for development: R0002 (bw400), R0003 (cn400).", lines.last("developed"));
    }

    @Test
    void whatCannotBeIsRefused() {
        assertEquals("Not done: say which roll: developed r7 and how.", lines.last("developed in water"));
        assertTrue(lines.last("developed r1 9m at 20C").contains("name the developer"));
        assertTrue(lines.last("developed r1 in water on soon").contains("soon is no date"));
        assertTrue(lines.last("load bw400", "developed r4 in water").contains("is not finished"));
    }

    @Test
    void aRollIsPaidFor() throws IOException {
        assertEquals("Costs of R0001: film 9.80, scans 8.00.", lines.last("cost r1 film 9.80 scans 8"));
        assertTrue(Files.readString(folder.resolve("rolls/finished/R0001.journal"))
                .contains("\"event\":\"cost\",\"of\":\"film\",\"amount\":9.8"));
        assertTrue(lines.last("cost r1 lunch 8").contains("a roll costs film, development and scans"));
        assertTrue(lines.last("cost r1 film much").contains("much is no amount"));
    }

    @Test
    void whatRollsCostIsAddedUp() {
        lines.words("shoot Regatta day", "load bw400", "cost film 9.80", "unload yes", "cost r4 development 12");
        lines.words("cost r1 film 7,20 scans 8");
        assertEquals(
                "shoot                         rolls      film  development     scans     total\n"
                        + "no shoot                          1      7.20         0.00      8.00     15.20\n"
                        + "Regatta day                       1      9.80        12.00      0.00     21.80\n"
                        + "all                               2     17.00        12.00      8.00     37.00\n",
                TypedRolls.run(folder, "costs"));
        assertEquals(
                "month,rolls,film,development,scans,total\r\n\"2026-09\",2,17.00,12.00,8.00,37.00\r\n",
                TypedRolls.run(folder, "costs", "--by", "month", "--csv"));
        assertTrue(TypedRolls.run(folder, "costs", "--by", "roll", "--json").contains("\"group\" : \"R0004\""));
    }
}
