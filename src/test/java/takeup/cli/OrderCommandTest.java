package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.console.Clock;
import takeup.console.Console;
import takeup.files.DataFolder;
import takeup.files.JournalStore;
import takeup.files.ProfileFiles;
import takeup.files.StartupState;
import takeup.journal.Archive;
import takeup.kit.Kit;

/** Orders made from a folder of files that somebody wrote by hand after the schema, and from a data folder. */
class OrderCommandTest {
    @TempDir
    Path scratch;

    private Path loose;
    private final ByteArrayOutputStream answers = new ByteArrayOutputStream();
    private final ByteArrayOutputStream errors = new ByteArrayOutputStream();

    @BeforeEach
    void writeARoll() throws IOException {
        loose = scratch.resolve("rolls");
        Files.createDirectory(loose);
        roll("R0007", it -> it);
    }

    private interface Change {
        String of(String json);
    }

    private void roll(String number, Change change) throws IOException {
        String sample = Files.readString(Path.of("src/test/resources/handoff/R0007.json"));
        Files.writeString(
                loose.resolve(number + ".json"), change.of(sample.replace("\"R0007\"", "\"" + number + "\"")));
    }

    private int run(String... words) {
        answers.reset();
        errors.reset();
        List<String> all = new ArrayList<>(List.of(
                "order",
                "--clock",
                "2026-09-14T09:30+02:00",
                "--data",
                scratch.resolve("data").toString()));
        all.addAll(Arrays.asList(words));
        return Subcommands.run(all.toArray(String[]::new), new Console(answers, errors, Map.of("LC_ALL", "C.UTF-8")));
    }

    private int from(String... words) {
        List<String> all = new ArrayList<>(List.of("--from", loose.toString()));
        all.addAll(Arrays.asList(words));
        return run(all.toArray(String[]::new));
    }

    private String said() {
        return answers.toString(StandardCharsets.UTF_8);
    }

    private String wrong() {
        return errors.toString(StandardCharsets.UTF_8);
    }

    private void check(int status, int expected, String piece) {
        assertEquals(expected, status, said() + wrong());
        assertTrue((said() + wrong()).contains(piece), "nothing says " + piece + " in " + said() + wrong());
        assertFalse(wrong().contains("made a mistake"), wrong());
    }

    /** What lies under the scratch folder, by name and content. */
    private Map<String, String> everything() throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(scratch)) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                all.put(path.toString(), Files.size(path) > 1_000_000 ? "large" : Files.readString(path));
            }
        }
        return all;
    }

    @Test
    void expiredFilmOfTheBagIsToldToTheLab() throws IOException {
        written(
                scratch.resolve("data"),
                "bag add 2 cn400 120 expires 2019-03\ncam 645 1\nload cn400\nm 5.6 125\n4 125\nunload yes\n");
        check(run("new"), 0, "ORD-001");
        check(run("show", "1"), 0, "· EXPIRED 2019-03");
    }

    @Test
    void aFolderOfFilesIsEnoughForAnOrder() throws IOException {
        check(from("new", "--reference", "Regatta crew portraits"), 0, "ORD-001 for The lab, 1 roll: 1 C-41, NORMAL");
        assertTrue(
                said().contains("R0007  120 6x4.5  Colour negative 400  C-41, NORMAL (rated 200, box 400)  3 frames"),
                said());
        assertFalse(Files.exists(scratch.resolve("data")), "no data folder is made");
        for (String file : List.of("ORD-001.json", "ORD-001.html")) {
            assertEquals(
                    "rw-------",
                    PosixFilePermissions.toString(Files.getPosixFilePermissions(
                            loose.resolve("orders").resolve(file))));
        }
        check(from("show", "1"), 0, "reference    Regatta crew portraits");
        check(from("new"), 1, "no finished roll waits for an order");
        check(from("list"), 0, "ORD-001  2026-09-14  The lab  1 roll: 1 C-41, NORMAL  ordered");
    }

    @Test
    void whatStopsAnOrderChangesNothingUntilYes() throws IOException {
        roll("R0008", it -> it.replace("\"framesExposed\": 3", "\"framesExposed\": 0"));
        roll("R0009", it -> it.replace("\"exposureIndex\": 200", "\"exposureIndex\": 1600"));
        Map<String, String> before = everything();
        check(from("new"), 1, "R0008 holds no exposed frame");
        assertTrue(
                wrong().contains("R0009 was rated 2 stops above its box speed")
                        && wrong().contains("nothing was ordered"),
                wrong());
        Map<String, String> after = everything();
        after.keySet().removeIf(it -> it.endsWith("lock"));
        assertEquals(before, after);
        check(from("new", "--without", "8", "--without", "r9"), 0, "1 roll");
        check(from("new", "--yes"), 0, "to know: R0008 holds no exposed frame");
        assertEquals("", wrong());
        check(from("show", "2", "--json"), 0, "\"code\" : \"no-push\"");
    }

    @Test
    void aRollOrderedTwiceStopsAndAWithdrawnOrderFreesIt() {
        check(from("new"), 0, "ORD-001");
        check(from("new", "7"), 1, "R0007 is in ORD-001 already");
        check(from("withdraw", "1"), 0, "its rolls can be ordered again");
        check(from("new"), 0, "ORD-002");
        check(from("mark", "1", "sent"), 1, "ORD-001 was withdrawn");
        check(from("list"), 0, "withdrawn");
    }

    @Test
    void aFileThatCannotBeTakenIsOneSentenceAndNothingIsOrdered() throws IOException {
        for (Change change : List.<Change>of(
                it -> it.replace("\"version\": 1,", "\"version\": 2,"),
                it -> it.replace("\"filmSize\": \"120\",", ""),
                it -> it.replace("\"process\": \"C-41\"", "\"process\": \"soup\""),
                it -> it.substring(0, it.length() / 2),
                it -> "",
                it -> "\u0000\u001b[2J")) {
            roll("R0008", change);
            assertEquals(1, from("new"), said());
            assertEquals(2, wrong().lines().count(), wrong());
            assertTrue(wrong().startsWith("takeup: R0008") && wrong().indexOf('\u001b') < 0, wrong());
            assertFalse(Files.exists(loose.resolve("orders").resolve("ORD-001.json")));
        }
        try (RandomAccessFile large =
                new RandomAccessFile(loose.resolve("R0008.json").toFile(), "rw")) {
            large.setLength(50_000_000);
        }
        check(from("new"), 1, "R0008.json:1: is larger than any such file can be");
        assertFalse(Files.exists(loose.resolve("orders").resolve("ORD-001.json")));
    }

    @Test
    void nothingIsDoneWhileAnOrderCannotBeRead() throws IOException {
        check(from("new"), 0, "ORD-001");
        Path order = loose.resolve("orders").resolve("ORD-001.json");
        String text = Files.readString(order);
        Files.writeString(order, text.replace("\"rolls\" : [", "\"rolls\" : \"gone\", \"was\" : ["));
        check(from("new", "7", "--yes"), 1, "nothing was done: an order cannot be read");
        assertTrue(wrong().contains("orders/ORD-001.json:"), wrong());
        check(from("list"), 1, "orders/ORD-001.json:");
        check(from("show", "1"), 1, "orders/ORD-001.json:");
        Files.writeString(order, text.replace("ORD-001", "ORD-002"));
        check(from("list"), 1, "it holds ORD-002: give the file its own name back");
    }

    @Test
    void twoParcelsShareTheRollsAndNameEachOther() throws IOException {
        roll("R0008", it -> it.replace("T15:12:40", "T16:40:00"));
        roll("R0009", it -> it);
        check(from("new"), 0, "3 rolls");
        check(from("split", "1", "--moment", "15:10-15:15 start"), 0, "ORD-001, parcel 1 of 2: R0007");
        assertTrue(
                said().contains("ORD-002, parcel 2 of 2: R0008, R0009")
                        || said().contains("ORD-002, parcel 2 of 2: R0009"),
                said());
        check(from("show", "2"), 0, "parcel       2 of 2; the other is ORD-001");
        check(from("split", "1"), 1, "is one of several parcels already");
        check(from("new"), 1, "no finished roll waits");
        assertTrue(Files.readString(loose.resolve("orders").resolve("ORD-002.html"))
                .contains("R0009"));
    }

    @Test
    void whatTheLabSaysIsWrittenDown() {
        check(from("new"), 0, "ORD-001");
        check(from("number", "1", "7", "44-12"), 0, "R0007 is 44-12 at The lab");
        check(from("show", "1"), 0, "lab's number 44-12");
        check(from("mark", "1", "sent", "--on", "2026-09-13"), 0, "at the lab since 2026-09-13");
        check(from("split", "1"), 1, "has gone to the lab");
        check(from("withdraw", "1"), 1, "tell the lab, then say --yes");
        check(from("mark", "1", "scans"), 0, "the scans are deleted on 2026-10-14, in 30 days");
        check(from("mark", "1", "negatives", "7"), 0, "negatives back since 2026-09-14");
        check(from("list", "--json"), 0, "\"stage\" : \"negatives\"");
    }

    @Test
    void aCorrectionAfterTheOrderIsTold() throws IOException {
        check(from("new"), 0, "ORD-001");
        roll(
                "R0007",
                it -> it.replace("\"revision\": 12", "\"revision\": 13")
                        .replace("\"pushStops\": 0", "\"pushStops\": 1"));
        check(
                from("list"),
                0,
                "R0007 was corrected after it was ordered (revision 12, now 13): it says C-41, PUSH 1 STOP");
        check(from("show", "1", "--html"), 0, "R0007 was corrected after it was ordered");
    }

    @Test
    void theDataFolderIsOrderedFromAndRollsSayWhereTheyAre() throws IOException {
        String day = "cam 645 1\nload cn400\nm 5.6 125\n4 125 ; bow seat\nunload yes\ncam 35\nload bw400\n8 125\n";
        Path data = scratch.resolve("data");
        try (JournalStore disk = JournalStore.take(new Archive(data))) {
            new PromptPipe(
                            disk,
                            StartupState.of(
                                            disk.archive(),
                                            new Kit(new ProfileFiles(data.resolve("profiles"), DataFolder.profiles())))
                                    .state(),
                            Clock.of(Optional.of(Clock.parse("2026-09-12T15:00+02:00"))),
                            new Console(answers, errors, Map.of()),
                            PromptPipe.Format.TEXT)
                    .run(new ByteArrayInputStream(day.getBytes(StandardCharsets.UTF_8)));
            check(run("new"), 1, "is writing in this folder");
            errors.reset();
            assertEquals(
                    1,
                    Subcommands.run(new String[] {"line", "--data=" + data}, new Console(answers, errors, Map.of())));
            assertTrue(errors.toString().contains("writing in this folder. Type it on its screen"), errors.toString());
            errors.reset();
        }
        check(run("new"), 0, "to know: R0002 is still in 35mm");
        assertFalse(
                Files.readString(data.resolve("orders").resolve("ORD-001.json")).contains("bow seat"));
        check(run("mark", "1", "sent"), 0, "at the lab since 2026-09-14");
        answers.reset();
        assertEquals(
                0,
                Subcommands.run(
                        new String[] {"rolls", "--data", data.toString()},
                        new Console(answers, errors, Map.of("LC_ALL", "C.UTF-8"))));
        assertTrue(said().contains("at the lab since 2026-09-14 (ORD-001)"), said());
        answers.reset();
        assertEquals(
                0,
                Subcommands.run(
                        new String[] {"rolls", "--json", "--data", data.toString()},
                        new Console(answers, errors, Map.of("LC_ALL", "C.UTF-8"))));
        assertTrue(
                said().contains("\"where\" : \"at the lab\"") && said().contains("\"where\" : \"in camera\""), said());
        check(run("new", "2"), 0, "to know: R0002 is still in a camera: unload it before it goes");
    }

    @Test
    void noStageIsEarlierThanTheOneBefore() {
        check(from("new"), 0, "ORD-001");
        check(from("mark", "1", "sent", "--on", "2026-09-15"), 0, "at the lab since 2026-09-15");
        check(
                from("mark", "1", "scans", "--on", "2026-09-14"),
                1,
                "2026-09-14 is before 2026-09-15, when R0007 was marked sent: give a later day");
        check(from("mark", "1", "scans", "--on", "2026-09-20"), 0, "scans back since 2026-09-20");
        check(from("mark", "1", "scans", "--on", "2026-09-18"), 0, "scans back since 2026-09-18");
        check(from("mark", "1", "negatives", "7", "--on", "2026-09-17"), 1, "is before 2026-09-18");
        check(from("mark", "1", "sent", "--on", "2026-09-14"), 1, "is before 2026-09-18");
    }

    @Test
    void theClientOfADataFolderGoesAlongWhereItIsAskedFor() throws IOException {
        Path data = scratch.resolve("data");
        written(data, "shoot Regatta client Rowing club\ncam 645 1\nload cn400\nm 5.6 125\n4 125\nunload yes\n");
        check(run("new"), 0, "ORD-001");
        check(run("show", "1", "--json"), 0, "\"client\" : null");
        assertFalse(
                Files.readString(data.resolve("orders").resolve("ORD-001.html")).contains("Rowing club"));
        check(run("withdraw", "1"), 0, "withdrawn");
        check(run("new", "--with-client"), 0, "ORD-002");
        check(run("show", "2"), 0, "client       Rowing club");
    }

    @Test
    void aRollThatWasRewoundIsNotStillInTheCamera() throws IOException {
        written(
                scratch.resolve("data"),
                "cam 35\nload cn400\nm 5.6 125\n8 125\nrewind yes\nload bw400\n8 125\nunload yes\n");
        check(
                run("new"),
                0,
                "to know: R0001 was rewound in 35mm mechanical reflex to be loaded again, and is not in this order; R0002 was loaded since");
    }

    private void written(Path data, String lines) throws IOException {
        try (JournalStore disk = JournalStore.take(new Archive(data))) {
            new PromptPipe(
                            disk,
                            StartupState.of(
                                            disk.archive(),
                                            new Kit(new ProfileFiles(data.resolve("profiles"), DataFolder.profiles())))
                                    .state(),
                            Clock.of(Optional.of(Clock.parse("2026-09-12T15:00+02:00"))),
                            new Console(answers, errors, Map.of()),
                            PromptPipe.Format.TEXT)
                    .run(new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)));
        }
    }

    @Test
    void theSenderIsKeptAndStandsOnEveryOrderToCome() {
        check(run("sender"), 0, "Nobody is named yet in");
        check(from("new"), 0, "nobody is named as the sender: takeup order sender --name NAME");
        check(
                run("sender", "--name", "Mara Lindqvist", "--telephone", "+1 212 555 0100"),
                0,
                "from       Mara Lindqvist");
        check(run("sender", "--account", "4412", "--telephone", ""), 0, "account    4412");
        assertFalse(said().contains("555"), said());
        check(run("sender", "--json"), 0, "\"telephone\" : null");
        check(from("withdraw", "1"), 0, "withdrawn");
        check(
                from("new", "--service", "develop, scan", "--wanted-by", "2026-09-24", "--may-be-cut", "no"),
                0,
                "ORD-002");
        assertFalse(said().contains("nobody is named"), said());
        check(from("show", "2"), 0, "from         Mara Lindqvist");
        for (String words : List.of(
                "account      4412", "wanted by    2026-09-24", "service      develop, scan", "may be cut   no")) {
            assertTrue(said().contains(words), said());
        }
        check(from("show", "2", "--json"), 0, "\"name\" : \"Mara Lindqvist\"");
    }

    @Test
    void aSenderThatCannotBeReadStopsTheOrderAndSaysWhere() throws IOException {
        Files.createDirectories(scratch.resolve("data"));
        Files.writeString(
                scratch.resolve("data").resolve("sender.json"), "{\"name\": \"Mara\",\n \"acount\": \"4412\"}");
        check(from("new"), 1, "sender.json:2: acount is not a field of the sender; known: name, account");
        assertFalse(Files.exists(loose.resolve("orders").resolve("ORD-001.json")));
    }

    @ParameterizedTest(name = "order {0}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
        new R9                                | 1 | there is no roll R0009
        new bow                               | 2 | bow is no roll number
        new --lab lib                         | 2 | lib is no lab known here; did you mean lab?
        new --scan-size huge                  | 2 | huge is no scan size of The lab: small, medium, large
        show 1                                | 1 | there is no order ORD-001
        show one                              | 2 | one is no order number
        show 1 --csv --json                   | 2 | one of them
        show 1 --with-frames                  | 2 | go with --html
        show 1 --html --paper A5              | 2 | A5 is no paper known here: A4, Letter
        mark 1 send                           | 2 | send is no stage: ordered, sent, scans, negatives; did you mean sent?
        mark 1 sent --on tomorrow             | 2 | tomorrow is no date
        split 1 --by colour                   | 2 | colour is nothing to part rolls by
        split 1 --moment soon                 | 2 | soon is no moment
        frob                                  | 2 | frob is no command of takeup order
        list more                             | 2 | more is one word too many for takeup order list
        """)
    void aWrongLineIsToldInOneSentence(String words, int status, String piece) {
        check(from(words.split(" ")), status, piece);
    }

    @Test
    void aFolderThatIsNotThereIsTold() {
        check(run("new", "--from", scratch.resolve("nowhere").toString()), 1, "nowhere is no folder");
        check(run("new"), 1, "there is no roll yet in");
    }
}
