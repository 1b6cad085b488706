package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What other programs and hands do to a data folder between two runs of the installed program: links, pipes, devices,
 * removal, a syncing tool's copies. Each is told of in words, nothing outside the folder changes, and the day goes on
 * where it can.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OtherHandsIT {
    static final String DAY = """
            cam 645 1
            load cn400
            4 125
            5.6 125
            unload yes
            cam 35
            load bw400
            8 125 x2 ; bow seat
            """;

    @TempDir
    static Path scratch;

    @BeforeAll
    void aDayUnderWay() {
        Installed.Ended day = line("honest", DAY);
        assertEquals(0, day.status(), day.toString());
    }

    private static Installed.Ended line(String folder, String lines) {
        return line(scratch, folder, lines);
    }

    static Installed.Ended line(Path scratch, String folder, String lines) {
        return Installed.run(scratch, lines, List.of("line", "--data", folder, "--clock", "2026-09-12T15:10+02:00"));
    }

    static void shell(Path in, String script) throws IOException, InterruptedException {
        Process process = new ProcessBuilder("sh", "-ec", script)
                .directory(in.toFile())
                .redirectErrorStream(true)
                .start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), script + ": " + out);
    }

    /** Each file with its content, its rights and when it was changed last; of anything else what it is. */
    static Map<String, String> sums(Path folder) throws IOException {
        Map<String, String> sums = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder, new FileVisitOption[0])) {
            for (Path path : all.toList()) {
                PosixFileAttributes is =
                        Files.readAttributes(path, PosixFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
                String kind = (is.isRegularFile() ? "file " : is.isDirectory() ? "folder " : "other ")
                        + PosixFilePermissions.toString(is.permissions());
                sums.put(
                        folder.relativize(path).toString(),
                        is.isRegularFile()
                                ? kind
                                        + is.lastModifiedTime()
                                        + new String(Files.readAllBytes(path), StandardCharsets.ISO_8859_1)
                                : kind);
            }
        }
        return sums;
    }

    /**
     * Each deed is a script run in the data folder; outside of it, in {@code ../out}, lie files that must not change.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            ln -sf ../out/letter lock                                                  | lock is a link
            ln -f ../out/letter lock                                                   | lock: it has a second name elsewhere
            ln rolls/open/R0002.journal ../out/backup                                  | R0002.journal had a second name elsewhere
            cp -al . ../out/backup                                                     | 2026-09-12.journal had a second name elsewhere
            rm rolls/open/R0002.journal                                                | R0002.journal is gone: put it back into rolls/open
            rm rolls/finished/R0001.journal                                            | exports/R0001.json has its frames still
            rm -r rolls                                                                | R0002.journal is gone, and with it the newest roll
            rm -r days                                                                 | days: the journal of 2026-09-12 is gone
            rm -r exports                                                              | exports/R0001.json is missing; the next start writes it
            : > rolls/open/R0002.journal                                               | R0002 cannot be read
            cp rolls/open/R0002.journal rolls/open/R0002.sync-conflict-20260912.journal | a copy of R0002.journal
            cp days/2026-09-12.journal 'days/2026-09-12 (1).journal'                   | a copy of 2026-09-12.journal
            mv rolls/open/R0002.journal rolls/open/R0002.journal~                      | R0002.journal~: by its name no journal
            rm lock; mkfifo lock                                                       | lock is no plain file
            rm lock; mkdir lock                                                        | lock is no plain file
            ln -sf ../out/nothing lock                                                 | lock is a link
            ln -s ../../out/letter exports/R0002.json                                  | exports/R0002.json: it is a link
            ln -s /dev/full exports/R0002.json                                         | exports/R0002.json: it is a link
            mkfifo exports/R0002.json                                                  | exports/R0002.json: it is no plain file
            mkdir exports/R0002.json                                                   | exports/R0002.json: it is no plain file
            mv exports ../out/exports.$$; ln -s ../out/exports.$$ exports              | exports: it is a link
            mv rolls/open/R0002.journal ../out/j.$$; ln -s ../../../out/j.$$ rolls/open/R0002.journal | R0002.journal is a link
            rm rolls/open/R0002.journal; ln -s /dev/zero rolls/open/R0002.journal      | R0002.journal is a link
            rm rolls/open/R0002.journal; ln -s ../../../out/letter rolls/open/R0002.journal | R0002.journal is a link
            rm rolls/open/R0002.journal; mkfifo rolls/open/R0002.journal               | R0002.journal is no plain file
            mv days/2026-09-12.journal ../out/d.$$; ln -s ../../out/d.$$ days/2026-09-12.journal | 2026-09-12.journal is a link
            mv rolls ../out/rolls.$$; ln -s ../out/rolls.$$ rolls                      | rolls is a link
            mv rolls/open ../out/open.$$; ln -s ../../out/open.$$ rolls/open           | open is a link
            mv days ../out/days.$$; ln -s ../out/days.$$ days                          | days is a link
            ln -sf ../out/letter reserve                                               | reserve: it is a link
            ln -sf ../out/letter draft                                                 | draft: it is a link
            ln -sf ../out/letter went-back-to                                          | went-back-to: it is a link
            ln -s ../out/settings.json settings.json                                   | settings.json:1: this is a link
            mkfifo settings.json                                                       | settings.json:1: this is no plain file
            mkfifo clocks.json                                                         | clocks.json is no plain file
            ln -s /dev/zero clocks.json                                                | clocks.json is a link
            mkdir -p profiles/stocks; mkfifo profiles/stocks/mine.json                 | stocks/mine.json:1: is no plain file
            mkdir -p profiles/stocks; ln -s /dev/zero profiles/stocks/mine.json        | stocks/mine.json:1: is a link
            mkdir -p profiles/labs; mkfifo profiles/labs/mine.json                     | labs/mine.json:1: is no plain file
            mkdir orders; ln -s ../../out/letter orders/ORD-001.json                   | orders/ORD-001.json:1: is a link
            cp rolls/open/R0002.journal 'rolls/open/R0002 (conflicted copy).journal'   | a copy of R0002.journal
            truncate -s -20 rolls/open/R0002.journal                                   | stops in the middle
            truncate -s +4096 rolls/open/R0002.journal                                 | zeros follow the last line
            cp rolls/finished/R0001.journal rolls/open/R0001.journal                   | it lies with the open and with the finished rolls
            cp rolls/finished/R0001.journal rolls/open/R0003.journal                   | by its records this is roll R0001
            """)
    @Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void eachIsToldAndNothingOutsideChanges(String deed, String words) throws Exception {
        Path home = Files.createTempDirectory(scratch, "deed");
        Path folder = home.resolve("day");
        Path out = Files.createDirectory(home.resolve("out"));
        shell(scratch, "cp -a honest " + folder);
        Files.writeString(out.resolve("letter"), "Dear Harriet,\nthe boathouse is booked.\n");
        Files.writeString(out.resolve("settings.json"), "{\"theme\": \"sun\"}");
        shell(folder, deed);
        Map<String, String> before = sums(out);
        Installed.Ended check = InProcess.run("", List.of("check", folder.toString()));
        Installed.Ended line = InProcess.run(
                "cam 645 1\nload cn400\n4 125\ncam 35\n8 125\nunload yes\n",
                List.of("line", "--data", folder.toString(), "--clock", "2026-09-12T15:10+02:00"));
        assertEquals(before, sums(out), deed + ": " + line);
        List<String> said = new ArrayList<>(List.of(check.out(), check.err(), line.out(), line.err()));
        assertTrue(said.stream().anyMatch(it -> it.contains(words)), deed + ": " + check + line);
        assertTrue(check.status() < 2 && line.status() < 2, deed + ": " + check + line);
        assertFalse(String.join("", said).contains("Exception"), deed + ": " + check + line);
        for (String device : List.of("/dev/full", "/dev/zero", "/dev/null")) {
            assertTrue(
                    Files.readAttributes(Path.of(device), BasicFileAttributes.class)
                            .isOther(),
                    device);
        }
    }

    /** Each bit of the record of a loading, a few in each of its parts: the roll is read as if nothing were. */
    @Test
    void noSingleBitOfTheRecordOfALoadingCostsTheRoll() throws Exception {
        shell(scratch, "cp -a honest flipped");
        String folder = scratch.resolve("flipped").toString();
        Path journal = scratch.resolve("flipped/rolls/finished/R0001.journal");
        byte[] honest = Files.readAllBytes(journal);
        String text = new String(honest, StandardCharsets.UTF_8);
        int second = text.indexOf('\n') + 1;
        int third = text.indexOf('\n', second) + 1;
        assertTrue(text.substring(second, third).contains("\"event\":\"loaded\""), text);
        String before = Installed.run(scratch, "", List.of("roll", "1", "--json", "--data", "honest"))
                .out();
        for (int at :
                new int[] {0, 3, second / 2, second - 1, second, second + 40, third - 200, third - 12, third - 1}) {
            byte[] flipped = honest.clone();
            flipped[at] ^= 1;
            Files.write(journal, flipped);
            Installed.Ended roll = InProcess.run("", List.of("roll", "1", "--json", "--data", folder));
            assertEquals(before, roll.out(), "byte " + at + ": " + roll);
            Installed.Ended check = InProcess.run("", List.of("check", folder));
            assertTrue(check.status() == 1 && check.out().contains("R0001.journal:"), "byte " + at + ": " + check);
        }
    }

    /** A journal of version 1.0.0 holds its loading once: a flipped bit of it is turned back, and told. */
    @Test
    void noSingleBitOfAnEarlyJournalCostsTheRollEither() throws Exception {
        Path early = Path.of("src/test/resources/written-by-1.0.0/folder").toAbsolutePath();
        shell(scratch, "cp -r " + early + " early; chmod -R u+w early");
        Path journal = scratch.resolve("early/rolls/finished/R0001.journal");
        byte[] honest = Files.readAllBytes(journal);
        List<String> ask = List.of(
                "roll", "1", "--json", "--data", scratch.resolve("early").toString());
        String before = Installed.run(scratch, "", ask).out();
        assertTrue(before.contains("R0001"), before);
        int second = new String(honest, StandardCharsets.ISO_8859_1).indexOf('\n') + 1;
        for (int at : new int[] {second, second + 4, second + 90, second + 300}) {
            byte[] flipped = honest.clone();
            flipped[at] ^= 4;
            Files.write(journal, flipped);
            Installed.Ended roll = InProcess.run("", ask);
            assertEquals(before, roll.out(), "byte " + at + ": " + roll);
            Installed.Ended check =
                    InProcess.run("", List.of("check", scratch.resolve("early").toString()));
            String words = "R0001.journal:2: one bit of the first record is flipped";
            assertTrue(check.status() == 1 && check.out().contains(words), "byte " + at + ": " + check);
        }
    }

    /** Where the loading is lost altogether, the others go to the lab all the same. */
    @Test
    void aRollThatCannotBeReadKeepsNoOtherFromTheLab() throws Exception {
        shell(scratch, "cp -a honest lost");
        assertEquals(0, line("lost", "cam 35\nunload yes\n").status());
        Files.writeString(scratch.resolve("lost/rolls/finished/R0001.journal"), "nothing\n");
        Installed.Ended order = Installed.run(scratch, "", List.of("order", "new", "--data", "lost"));
        assertEquals(0, order.status(), order.toString());
        assertTrue(order.out().startsWith("ORD-001"), order.toString());
        assertTrue(order.err().contains("R0001.journal: the record of its loading is missing"), order.toString());
        Installed.Ended asked = Installed.run(scratch, "", List.of("order", "new", "1", "--data", "lost"));
        assertEquals(1, asked.status(), asked.toString());
        assertTrue(asked.err().contains("there is no roll R0001 that can be read"), asked.toString());
    }

    /** An export that could not be written is not said to be there, and follows on whatever day the next start is. */
    @Test
    void anExportThatFailedIsNotClaimedAndIsWrittenByTheNextStart() throws Exception {
        shell(scratch, "cp -a honest full; mv full/exports/R0001.json kept.json; mkfifo full/exports/R0001.json");
        shell(scratch, "mkfifo full/exports/R0002.json");
        Installed.Ended fix = Installed.run(
                scratch,
                "cam 35\nunload yes\nfix r1 1 8 60\n",
                List.of("line", "--json", "--data", "full", "--clock", "2026-09-12T18:00+02:00"));
        assertEquals(1, fix.status(), fix.toString());
        assertFalse(fix.out().contains("Its JSON is"), fix.toString());
        assertTrue(fix.err().contains("R0002.json is no plain file"), fix.toString());
        shell(scratch, "rm full/exports/R000?.json");
        allIsWrittenByAStartMonthsLater("full");
        shell(scratch, "rm full/exports/R0002.json; cp -p kept.json full/exports/R0001.json");
        Installed.Ended check = Installed.run(scratch, "", List.of("check", "full"));
        assertTrue(check.out().contains("exports/R0001.json is behind its roll: revision "), check.toString());
        assertTrue(check.out().contains("exports/R0002.json is missing; the next start writes it"), check.toString());
        allIsWrittenByAStartMonthsLater("full");
    }

    private static void allIsWrittenByAStartMonthsLater(String folder) throws IOException {
        Installed.Ended next =
                Installed.run(scratch, "say\n", List.of("line", "--data", folder, "--clock", "2026-11-02T09:00+01:00"));
        assertEquals(0, next.status(), next.toString());
        assertEquals(
                folder + ": 2 rolls, 4 frames, 1 day, all in order\n",
                Installed.run(scratch, "", List.of("check", folder)).out());
        for (int roll = 1; roll <= 2; roll++) {
            assertEquals(
                    Installed.run(scratch, "", List.of("roll", roll + "", "--json", "--data", folder))
                            .out(),
                    Files.readString(scratch.resolve(folder).resolve("exports/R000" + roll + ".json")));
        }
    }

    @Test
    void aDataFolderThatIsReachedByALinkIsOneAsGoodAsAnother() throws Exception {
        shell(scratch, "cp -a honest real; ln -s real linked");
        Installed.Ended line = line("linked", "cam 35\n8 125\nunload yes\n");
        assertEquals(0, line.status(), line.toString());
        Installed.Ended check = Installed.run(scratch, "", List.of("check", "linked"));
        assertEquals("linked: 2 rolls, 5 frames, 1 day, all in order\n", check.out());
    }
}
