package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Words are planted in a shoot, and looked for in every file that leaves the program and every answer that could. */
class PrivateWordsTest {
    private static final String CLIENT = "Zebedee";
    private static final String SIGNED = "Ysolde";
    private static final String KEPT = "Folderol";
    private static final String PERSON = "Ottilie";
    private static final String PLACE = "Heronsgate";
    private static final String NOTE = "Quillwort";
    /** As they are typed, and as degrees and minutes. */
    private static final List<String> COORDINATES = List.of("12.3456", "45.6789", "12,20.736", "45,40.734");

    @TempDir
    Path scratch;

    private Path data;
    private Path scans;

    private String run(String input, String... words) {
        List<String> all = new ArrayList<>(Arrays.asList(words));
        all.addAll(List.of("--data", data.toString()));
        if (List.of("line", "order", "plan", "prepare", "day-end").contains(words[0])) {
            all.addAll(List.of("--clock", "2026-09-12T18:30+02:00"));
        }
        Installed.Ended ended = InProcess.run(input, all);
        assertTrue(ended.status() == 0, String.join(" ", words) + ": " + ended);
        return ended.out();
    }

    @BeforeEach
    void shoot() throws IOException {
        data = scratch.resolve("data");
        scans = Files.createDirectory(scratch.resolve("scans"));
        run("""
                shoot Regatta day at %s 12.3456,-45.6789 client %s Quill
                plan 19:00 Prize-giving wants 4
                bag add 2 bw400 135
                cam 35
                load bw400
                m 5.6 125
                8 125 with %s Marsh, Ben ; %s
                with %s Marsh
                8 60
                8 30
                note %s on the roll
                release %s, %s Marsh ; %s 12
                unload yes
                load bw400
                8 125
                """.formatted(PLACE, CLIENT, PERSON, NOTE, PERSON, NOTE, SIGNED, PERSON, KEPT), "line");
    }

    private void comeBack() throws IOException {
        for (int scan = 1; scan <= 3; scan++) {
            BufferedImage picture = new BufferedImage(60, 40, BufferedImage.TYPE_BYTE_GRAY);
            for (int i = 0; i < 2400; i++) {
                picture.getRaster().setSample(i % 60, i / 60, 0, (40 * scan + i * 7 % 90) % 250);
            }
            ImageIO.write(
                    picture, "jpg", scans.resolve("crew_0" + scan + ".jpg").toFile());
        }
        run("yes\n", "scans", "1", scans.toString(), "--accept");
        run("", "scans", "1", "--sidecars", "short");
        run(
                "",
                "scans",
                "1",
                scans.toString(),
                "--html",
                "-o",
                scans.resolve("page.html").toString());
    }

    /** Everything that leaves the program, by its name. */
    private Map<String, String> leaving() throws IOException {
        Map<String, String> all = new TreeMap<>();
        for (String line : List.of(
                "roll 1 --json",
                "roll 1 --csv",
                "roll 1 --text",
                "roll 2 --json",
                "rolls --json",
                "rolls",
                "frames --json",
                "find roll r1",
                "find released --json",
                "find unreleased",
                "costs --csv",
                "frames",
                "day-end --json",
                "day-end",
                "plan --json",
                "plan",
                "prepare --json",
                "prepare",
                "order list --json",
                "order show 1",
                "order show 1 --json",
                "order show 1 --csv",
                "order show 1 --html",
                "paper 2 --html",
                "paper 2",
                "review --json",
                "scans 1 --json")) {
            all.put("takeup " + line, run("", line.split(" ")));
        }
        for (Path folder : List.of(data.resolve("exports"), data.resolve("orders"), scans)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    all.put(
                            scratch.relativize(file).toString(),
                            new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
                }
            }
        }
        return all;
    }

    private static List<String> holding(Map<String, String> all, String word) {
        return all.entrySet().stream()
                .filter(it -> it.getValue().contains(word))
                .map(Map.Entry::getKey)
                .toList();
    }

    @Test
    void aClientAndCoordinatesAreInNoneOfThemAndPeopleWhereTheFramesAre() throws IOException {
        run("", "order", "new", "1", "--yes");
        comeBack();
        Map<String, String> all = leaving();
        for (String word : List.of(CLIENT, SIGNED, KEPT)) {
            assertEquals(List.of(), holding(all, word), word);
        }
        for (String digits : COORDINATES) {
            assertEquals(List.of(), holding(all, digits), digits);
        }
        List<String> ofFrames = List.of(
                "data/exports/R0001.json",
                "scans/crew_01.xmp",
                "scans/crew_02.xmp",
                "scans/crew_03.xmp",
                "takeup frames",
                "takeup frames --json",
                "takeup roll 1 --csv",
                "takeup roll 1 --json",
                "takeup roll 1 --text",
                "takeup roll 2 --json");
        assertEquals(
                ofFrames,
                holding(all, PERSON).stream()
                        .filter(it -> !it.startsWith("takeup find"))
                        .toList(),
                "and in no order, plan, list or paper form");
        assertEquals(
                ofFrames,
                holding(all, PLACE).stream()
                        .filter(it -> !it.startsWith("takeup p") && !it.startsWith("takeup find"))
                        .toList());
        assertEquals(
                List.of(),
                holding(all, NOTE).stream().filter(it -> it.contains("order")).toList(),
                "notes go to the lab only where they are asked for");
        assertFalse(holding(all, NOTE).isEmpty());
    }

    @Test
    void whatIsAskedForIsThere() throws IOException {
        run("", "order", "new", "1", "--yes", "--with-notes", "--with-client");
        comeBack();
        assertTrue(run("", "roll", "1", "--json", "--with-client").contains(CLIENT));
        assertTrue(run("", "prepare", "--json", "--with-client").contains(CLIENT));
        for (String form : List.of("--json", "--text")) {
            String asked = run("", "roll", "1", form, "--with-releases");
            assertTrue(asked.contains(SIGNED) && asked.contains(KEPT), asked);
            assertFalse(asked.contains(CLIENT), asked);
        }
        assertTrue(run("", "order", "show", "1").contains(NOTE));
        assertTrue(run("", "order", "show", "1").contains(CLIENT));
    }

    @Test
    void coordinatesAreThereOnceTheyAreShared() throws IOException {
        run("place share\n", "line");
        run("", "order", "new", "1", "--yes");
        comeBack();
        Map<String, String> all = leaving();
        for (String coordinate : List.of("12.3456", "-45.6789")) {
            assertEquals(
                    List.of(
                            "data/exports/R0001.json",
                            "takeup frames --json",
                            "takeup plan --json",
                            "takeup prepare --json",
                            "takeup roll 1 --csv",
                            "takeup roll 1 --json",
                            "takeup roll 2 --json"),
                    holding(all, coordinate));
        }
        String sidecar = all.get("scans/crew_01.xmp");
        assertTrue(sidecar.contains("<exif:GPSLatitude>12,20.7360N</exif:GPSLatitude>"), sidecar);
        assertTrue(sidecar.contains("<exif:GPSLongitude>45,40.7340W</exif:GPSLongitude>"), sidecar);
        assertTrue(sidecar.contains("<Iptc4xmpCore:Location>" + PLACE), sidecar);
        run("place private\n", "line");
        assertEquals(
                List.of(), holding(Map.of("export", Files.readString(data.resolve("exports/R0001.json"))), "12.34"));
    }
}
