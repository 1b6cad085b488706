package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.Outside;
import takeup.scans.ScreenClock;

/**
 * Digital files of regatta day beside the frames of a roll, once the digital camera's clock was compared with the
 * screen's.
 */
class DigitalIT {
    private static final String ROLL = """
            cam 645 1
            load bw400 120 @400
            5.6 125
            clock +5min
            4 250 ; cox
            clock +20s
            4 250
            clock +1h
            insert 2 8 125
            unload yes
            """;

    @TempDir
    Path scratch;

    @Test
    void theOffsetIsFoundOnceAndAppliedAndAFrameOfUnknownTimeIsLeftOut() throws IOException {
        Installed.Ended line = run(ROLL, "line", "--data", "day", "--clock", "2026-09-12T15:00:00+02:00");
        assertEquals(0, line.status(), line.toString());
        Path files = Files.createDirectories(scratch.resolve("files"));
        // The digital camera is 2 h 3 min 10 s slow: at 15:00:00 by the screen it says 12:56:50.
        DigitalFile.write(files.resolve("D_0001.jpg"), small(), "Digital reflex", "2026:09:12 12:56:52", "");
        DigitalFile.write(files.resolve("D_0002.jpg"), small(), "Digital reflex", "2026:09:12 13:01:49", "");
        DigitalFile.write(files.resolve("D_0003.jpg"), small(), "Digital reflex", "2026:09:12 13:02:20", "");
        DigitalFile.write(files.resolve("D_0004.jpg"), small(), "Digital reflex", "2026:09:12 15:05:20", "");
        Files.writeString(files.resolve("D_0005.jpg"), "no picture");
        Installed.Ended before = run("", "digital", "1", "files", "--data", "day");
        assertEquals(1, before.status(), before.toString());
        assertTrue(before.err().contains("D_0005.jpg cannot be read"), before.err());
        assertTrue(
                before.out().contains("its clock was never compared")
                        && before.out().contains("D_0004.jpg"),
                before.out());
        Files.delete(files.resolve("D_0005.jpg"));

        DigitalFile.write(
                scratch.resolve("clock.jpg"),
                FakeLab.code(new ScreenClock(OffsetDateTime.parse("2026-09-12T14:00:00+02:00")).text(), 9),
                "Digital reflex",
                "2026:09:12 11:56:50",
                "");
        Installed.Ended set = run("", "digital", "--clock-picture", "clock.jpg", "--data", "day");
        assertEquals(0, set.status(), set.toString());
        assertTrue(set.out().contains("Digital reflex: its clock is 2 h 3 min 10 s slow"), set.out());
        Installed.Ended ended = run("", "digital", "1", "files", "--data", "day", "--json");
        assertEquals(0, ended.status(), ended.toString());
        String json = ended.out().replaceAll("\\s", "");
        // 12:56:52 + 2:03:10 = 15:00:02; 13:01:49 becomes 15:04:59, 13:02:20 becomes 15:05:30: between 15:05:00 and
        // 15:05:20.
        assertTrue(
                json.contains(
                        "{\"frame\":1,\"at\":\"2026-09-12T15:00:00+02:00\",\"files\":[{\"file\":\"D_0001.jpg\",\"at\":\"2026-09-12T15:00:02+02:00\",\"afterSeconds\":2.0,\"set\":\"f/41/250ISO800\"}]}"),
                json);
        assertTrue(
                json.contains(
                        "{\"frame\":3,\"at\":\"2026-09-12T15:05:00+02:00\",\"files\":[{\"file\":\"D_0002.jpg\",\"at\":\"2026-09-12T15:04:59+02:00\",\"afterSeconds\":-1.0"),
                json);
        assertTrue(
                json.contains(
                        "{\"frame\":4,\"at\":\"2026-09-12T15:05:20+02:00\",\"files\":[{\"file\":\"D_0003.jpg\",\"at\":\"2026-09-12T15:05:30+02:00\",\"afterSeconds\":10.0"),
                json);
        assertFalse(json.contains("\"frame\":2,"), "it was inserted, and nobody knows when it was");
        assertTrue(json.contains("\"unknownTimes\":1,\"apart\":[\"D_0004.jpg\"]"), json);
        String text = run("", "digital", "1", "files", "--data", "day").out();
        assertTrue(text.contains("   3  15:05:00  f/4 1/250       D_0002.jpg  1 s before  f/4 1/250 ISO 800"), text);
        assertTrue(text.contains("1 frame is left out: the time is not known"), text);
        assertEquals(0, run("", "check", "day").status());
    }

    @Test
    void whereTheCodeCannotBeReadTheTimeIsTyped() throws IOException {
        DigitalFile.write(scratch.resolve("dark.jpg"), small(), "Digital reflex", "2026:09:12 15:04:05", "+02:00");
        Installed.Ended ended = run("", "digital", "--clock-picture", "dark.jpg", "--data", "day");
        assertEquals(1, ended.status());
        assertTrue(ended.err().contains("--shows 15:04:05"), ended.err());
        // The process runs in UTC: 13:04:15 there is 15:04:15 at +02:00.
        Installed.Ended typed = Installed.run(
                Installed.program(
                        scratch,
                        Map.of("TZ", "UTC"),
                        List.of("digital", "--clock-picture", "dark.jpg", "--shows", "13:04:15", "--data", "day")),
                "");
        assertEquals(0, typed.status(), typed.toString());
        assertTrue(typed.out().contains("its clock is 10 s slow"), typed.out());
    }

    @Test
    void filesThatAnotherProgramWroteAreReadAlike() throws IOException {
        Outside.needs("exiftool");
        assertEquals(
                0,
                run(ROLL, "line", "--data", "day", "--clock", "2026-09-12T15:00:00+02:00")
                        .status());
        Path file = Files.createDirectories(scratch.resolve("files")).resolve("D_0001.jpg");
        javax.imageio.ImageIO.write(small(), "jpg", file.toFile());
        Installed.Ended written = Installed.run(
                Installed.process(
                        scratch,
                        Map.of(),
                        List.of(
                                "exiftool",
                                "-q",
                                "-DateTimeOriginal=2026:09:12 13:05:21",
                                "-OffsetTimeOriginal=+00:00",
                                "-FNumber=2.8",
                                "-ExposureTime=1/60",
                                "-ISO=1600",
                                "-Model=Digital reflex",
                                "-SerialNumber=0012",
                                file.toString())),
                "");
        assertEquals(0, written.status(), written.toString());
        String json = run("", "digital", "1", "files", "--data", "day", "--json")
                .out()
                .replaceAll("\\s", "");
        assertTrue(
                json.contains("\"camera\":\"Digitalreflexno.0012\"")
                        && json.contains("\"afterSeconds\":1.0,\"set\":\"f/2.81/60ISO1600\""),
                json);
    }

    /** The library that reads Exif is loaded by this command alone. */
    @Test
    void theLibraryIsLoadedOnlyOnceAFileIsRead() throws IOException {
        SlateIT.logged(scratch, "line.txt", ROLL, "line", "--data", "day");
        SlateIT.logged(scratch, "none.txt", "", "digital", "1", "nowhere", "--data", "day");
        Path files = Files.createDirectories(scratch.resolve("files"));
        DigitalFile.write(files.resolve("D_0001.jpg"), small(), "Digital reflex", "2026:09:12 12:56:52", "");
        SlateIT.logged(scratch, "read.txt", "", "digital", "1", "files", "--data", "day");
        assertFalse(Files.readString(scratch.resolve("line.txt")).contains("com.drew"));
        assertFalse(Files.readString(scratch.resolve("none.txt")).contains("com.drew"));
        assertTrue(Files.readString(scratch.resolve("read.txt")).contains("com.drew"), "the check would see it");
    }

    private static BufferedImage small() {
        return new BufferedImage(30, 20, BufferedImage.TYPE_INT_RGB);
    }

    private Installed.Ended run(String input, String... arguments) {
        return Installed.run(Installed.program(scratch, Map.of(), List.of(arguments)), input);
    }
}
