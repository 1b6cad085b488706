package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.Outside;

/** Tables of a roll in LibreOffice, set to English and to German: numbers are numbers, words stay words. */
class SpreadsheetIT {
    private static final Pattern CELL =
            Pattern.compile("<table:table-cell([^>]*?)(?:/>|>(.*?)</table:table-cell>)", Pattern.DOTALL);

    @TempDir
    static Path scratch;

    @BeforeAll
    static void shoot() {
        Outside.needs("soffice");
        InProcess.run(
                "cam 645 1\nload cn400 120\nm ev 11\n5.6 1/8 ; 3-4\nyes\n8 125 ; =4412+1\n5.6 125 ; 5.6\n",
                List.of("line", "--clock", "2026-09-12T15:00+02:00", "--data", data()));
    }

    @Test
    void englishReadsThePlainTable() throws IOException, InterruptedException {
        assertRead("44,34,76,1,,1033,true", List.of());
    }

    @Test
    void germanReadsTheEuropeanTable() throws IOException, InterruptedException {
        assertRead("59,34,76,1,,1031,true", List.of("--european"));
    }

    /** No word needs a sign in front: each cell says what it holds. */
    @Test
    void anOpenDocumentHoldsNumbersAndWordsAsTheyAre() throws IOException, InterruptedException {
        InProcess.run(
                "",
                List.of("roll", "1", "--ods", "-o", scratch.resolve("roll.ods").toString(), "--data", data()));
        assertHolds(converted("roll.ods", List.of()), "text =4412+1");
    }

    /** In the import dialog a person ticks that quoted fields are text: the seventh word of the filter. */
    private void assertRead(String filter, List<String> options) throws IOException, InterruptedException {
        List<String> arguments = new ArrayList<>(List.of("roll", "1", "--csv", "--data", data()));
        arguments.addAll(options);
        Files.writeString(
                scratch.resolve("roll.csv"), InProcess.run("", arguments).out());
        assertHolds(converted("roll.csv", List.of("--infilter=CSV:" + filter)), "text &apos;=4412+1");
    }

    /** The sheet as LibreOffice has read it. */
    private static String converted(String file, List<String> options) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                "soffice", "-env:UserInstallation=" + scratch.resolve("office").toUri(), "--headless"));
        command.addAll(options);
        command.addAll(List.of("--convert-to", "fods", file));
        Process office = new ProcessBuilder(command)
                .directory(scratch.toFile())
                .redirectErrorStream(true)
                .redirectOutput(scratch.resolve("office.log").toFile())
                .start();
        assertEquals(0, office.waitFor());
        return Files.readString(scratch.resolve("roll.fods"));
    }

    private static void assertHolds(String sheet, String telephone) {
        List<String> cells = new ArrayList<>();
        Matcher cell = CELL.matcher(sheet);
        while (cell.find()) {
            String value = cell.group(1).replaceAll("(?s).*office:value=\"([^\"]*)\".*|.*", "$1");
            boolean isText = cell.group(1).contains("value-type=\"string\"");
            cells.add(isText ? "text " + cell.group(2).replaceAll("<[^>]*>", "").strip() : value);
        }
        for (String expected : List.of("5.6", "0.125", "text 1/8", "text 3-4", "text f/5.6", telephone, "text 5.6")) {
            assertTrue(cells.contains(expected), expected + " is not among " + cells);
        }
        assertTrue(
                !sheet.contains("table:formula") && !sheet.contains("value-type=\"date\""),
                "nothing is made of a word");
    }

    private static String data() {
        return scratch.resolve("day").toString();
    }
}
