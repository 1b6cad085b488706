package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import takeup.Outside;
import takeup.json.JsonText;

/**
 * A roll of regatta day comes back from the lab: laid beside the log, accepted, judged, with sidecars beside the scans.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ScansIT {
    /** Stops over box, by frame, of the roll below: at EV 11 and EI 400, f/5.6 at 1/250 is right (2^13/2^13). */
    private static final double[] OVER = {1, 0, -2, 2, 3, 1, -2, -3, 1, 2, 1, 4, 0, 1, 2, 1};

    private static final String ROLL = """
            cam 645 1
            load bw400 120 @400
            m ev 11
            5.6 125 ; Ines & Tarek <bow>
            5.6 250
            8 500
            5.6 60
            4 60
            5.6 125
            11 250
            11 500 ; last of the sun
            5.6 125
            4 125
            5.6 125
            4 30
            5.6 250
            5.6 125
            5.6 60
            5.6 125
            unload yes
            """;

    @TempDir
    static Path scratch;

    @BeforeAll
    void shoot() {
        assertEquals(
                0,
                takeup(ROLL, "line", "--data", "day", "--clock", "2026-09-12T15:00+02:00")
                        .status());
    }

    @Test
    void findsTheTwoFramesThatTheLabLeftOutAndChangesNoScan() throws IOException {
        Path folder = folder("back", 3, 8);
        Map<String, String> before = sums(folder);
        Installed.Ended ended = takeup("", "scans", "1", "back", "--data", "day", "--json");
        assertEquals(0, ended.status(), ended.toString());
        assertTrue(ended.out().replaceAll("\\s", "").contains("\"missing\":[3,8]"), ended.out());
        Installed.Ended accepted =
                takeup("yes\n", "scans", "1", "back", "--data", "day", "--accept", "--thin", "8,7", "--good", "1-2");
        assertEquals(0, accepted.status(), accepted.toString());
        Installed.Ended shown = takeup("", "scans", "1", "--data", "day");
        assertTrue(shown.out().contains("   4  crew_03.jpg"), shown.out());
        assertTrue(
                shown.out().lines().anyMatch(it -> it.startsWith("   7  crew_06.jpg") && it.contains("thin")),
                shown.out());
        assertEquals(before, sums(folder), "scans were changed");
        assertEquals(0, takeup("", "check", "day").status());
    }

    @Test
    void keepsNothingWithoutAYesWhereItIsNotSure() throws IOException {
        folder("unsure", 3, 8);
        Installed.Ended ended = takeup("no\n", "scans", "1", "unsure", "--data", "day", "--accept");
        assertEquals(1, ended.status(), ended.toString());
        assertTrue(ended.err().contains("not accepted, and nothing was written"), ended.err());
        assertFalse(takeup("", "scans", "1", "--data", "day").out().contains("unsure"));
    }

    @Test
    void whatIsPutRightByHandIsKeptAsItIs() throws IOException {
        takeup(ROLL, "line", "--data", "hand", "--clock", "2026-09-12T15:00+02:00");
        folder("turned");
        Installed.Ended ended = takeup(
                "",
                "scans",
                "1",
                "turned",
                "--data",
                "hand",
                "--reverse",
                "--swap",
                "1,2",
                "--place",
                "3=none",
                "--accept");
        assertEquals(0, ended.status(), ended.toString());
        String shown = takeup("", "scans", "1", "--data", "hand").out();
        assertTrue(
                shown.contains("  16  crew_02.jpg")
                        && shown.contains("  15  crew_01.jpg")
                        && shown.contains("  14  –")
                        && shown.contains("   1  crew_16.jpg"),
                shown);
    }

    @Test
    void aDamagedScanIsNamedAndTheOthersGoOn() throws IOException {
        Path folder = folder("damaged");
        Files.write(folder.resolve("crew_05.jpg"), "no picture".getBytes(StandardCharsets.UTF_8));
        Installed.Ended ended = takeup("", "scans", "1", "damaged", "--data", "day");
        assertEquals(1, ended.status());
        assertTrue(ended.err().contains("crew_05.jpg cannot be read"), ended.err());
        assertTrue(ended.out().contains("15 scans, R0001 has 16"), ended.out());
    }

    @Test
    void exiftoolReadsEachSidecarAsTheLogHasIt() throws IOException {
        Outside.needs("exiftool");
        takeup(ROLL, "line", "--data", "cars", "--clock", "2026-09-12T15:00+02:00");
        Path folder = folder("cars-back");
        Files.writeString(folder.resolve("crew_02.xmp"), "mine");
        takeup("yes\n", "scans", "1", "cars-back", "--data", "cars", "--accept");
        assertEquals(
                0,
                takeup("", "scans", "1", "--data", "cars", "--sidecars", "full").status());
        Installed.Ended twice = takeup("", "scans", "1", "--data", "cars", "--sidecars", "short");
        assertEquals(0, twice.status(), twice.toString());
        assertTrue(
                twice.out()
                        .contains("crew_02.xmp is another program's and is not touched: takeup's facts are in "
                                + "crew_02.takeup.xmp"),
                twice.out());
        assertTrue(Files.exists(folder.resolve("crew_02.takeup.xmp")));
        assertEquals("mine", Files.readString(folder.resolve("crew_02.xmp")));
        String[] marks = {
            "5.6", "5.6", "8", "5.6", "4", "5.6", "11", "11", "5.6", "4", "5.6", "4", "5.6", "5.6", "5.6", "5.6"
        };
        String[] wanted = {
            "125", "250", "500", "60", "60", "125", "250", "500", "125", "125", "125", "30", "250", "125", "60", "125"
        };
        List<String> line = new ArrayList<>(List.of(
                "exiftool",
                "-q",
                "-n",
                "-p",
                "$FNumber;$ExposureTime;$ISO;$FocalLength;$LightValue;$DateTimeOriginal;$Description"));
        for (int i = 0; i < OVER.length; i++) {
            line.add(folder.resolve("crew_" + (i < 9 ? "0" : "") + (i + 1) + ".jpg.xmp")
                    .toString());
        }
        List<String> all = Installed.run(Installed.process(scratch, Map.of(), line), "")
                .out()
                .lines()
                .toList();
        assertEquals(OVER.length, all.size(), all.toString());
        for (int i = 0; i < OVER.length; i++) {
            String said = all.get(i);
            String[] cells = said.split(";", -1);
            assertEquals(Double.parseDouble(marks[i]), Double.parseDouble(cells[0]), said);
            assertEquals(1.0 / Integer.parseInt(wanted[i]), Double.parseDouble(cells[1]), 1e-6, said);
            assertEquals(400, Double.parseDouble(cells[2]), said);
            assertEquals(80, Double.parseDouble(cells[3]), said);
            // The light is EV 11; what was set is right for 11 less what it is over.
            assertEquals(11 - OVER[i], Double.parseDouble(cells[4]), 0.2, said);
            assertEquals("2026:09:12 15:00:00+02:00", cells[5], said);
            assertTrue(
                    cells[6].startsWith("Roll R0001, frame " + (i + 1))
                            && (i > 0 || cells[6].endsWith("Ines & Tarek <bow>")),
                    said);
        }
    }

    @Test
    void sidecarsThatAreBehindTheLogAreNamedAndRenewed() throws IOException {
        takeup(ROLL, "line", "--data", "behind", "--clock", "2026-09-12T15:00+02:00");
        Path folder = folder("behind-back");
        takeup("yes\n", "scans", "1", "behind-back", "--data", "behind", "--accept", "--sidecars", "full");
        takeup("fix r1 3 f/11\n", "line", "--data", "behind", "--clock", "2026-09-12T16:00+02:00");
        String shown = takeup("", "scans", "1", "--data", "behind").out();
        assertTrue(shown.contains("sidecars that are behind the log: crew_03.jpg.xmp; --sidecars renews them"), shown);
        Installed.Ended renewed = takeup("", "scans", "1", "--data", "behind", "--sidecars", "full");
        assertTrue(renewed.out().contains("0 sidecars written, 1 renewed, 15 up to date"), renewed.toString());
        assertTrue(Files.readString(folder.resolve("crew_03.jpg.xmp")).contains("<exif:FNumber>11/1<"));
        assertFalse(takeup("", "scans", "1", "--data", "behind").out().contains("behind the log"));
    }

    /** The roll scanned without these frames, brighter by 0.08 for each stop. */
    private static Path folder(String name, int... missing) throws IOException {
        FakeLab lab = new FakeLab(scratch.resolve(name));
        int count = 0;
        for (int i = 0; i < OVER.length; i++) {
            int frame = i + 1;
            if (Arrays.stream(missing).noneMatch(it -> it == frame)) {
                count++;
                lab.scan(
                        "crew_" + (count < 10 ? "0" : "") + count + ".jpg",
                        0.4 + 0.08 * (OVER[i] - 1),
                        0.15,
                        80,
                        60,
                        i);
            }
        }
        return lab.folder();
    }

    private static Map<String, String> sums(Path folder) throws IOException {
        Map<String, String> sums = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                sums.put(
                        file.getFileName().toString(),
                        HexFormat.of()
                                        .formatHex(MessageDigest.getInstance("SHA-256")
                                                .digest(Files.readAllBytes(file)))
                                + Files.getLastModifiedTime(file));
            }
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
        return sums;
    }

    private static Installed.Ended takeup(String input, String... arguments) {
        return Installed.run(scratch, input, List.of(arguments));
    }

    @Test
    void whatIsAskedDoesNotSpoilTheJson() throws Exception {
        takeup(ROLL, "line", "--data", "asked", "--clock", "2026-09-12T15:00+02:00");
        folder("in-doubt", 3, 8);
        Installed.Ended ended = takeup("no\n", "scans", "1", "in-doubt", "--data", "asked", "--accept", "--json");
        assertEquals(1, ended.status(), ended.toString());
        assertEquals("", ended.out().strip(), "nothing was accepted, so there is no answer");
        assertTrue(ended.err().contains("Accept it all the same? Type yes."), ended.err());
        Installed.Ended kept = takeup("yes\n", "scans", "1", "in-doubt", "--data", "asked", "--accept", "--json");
        assertEquals(0, kept.status(), kept.toString());
        assertTrue(kept.out().startsWith("{"), kept.out());
        JsonText.read(kept.out());
    }
}
