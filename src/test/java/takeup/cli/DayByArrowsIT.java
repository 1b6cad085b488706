package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.Outside;
import takeup.action.Choice;
import takeup.action.Menu;
import takeup.message.Key;
import takeup.session.Playing;
import takeup.session.Session;

/**
 * A whole day with arrows, digits, Enter, Space and Tab alone, on the installed screen in a real terminal: bag, plan,
 * two bodies, five rolls, the lab order. The same day typed as lines exports the same.
 *
 * <p>Which keys lead to a row is worked out on a session in memory, as a person reads it off the screen.
 */
@Tag("long")
class DayByArrowsIT {
    private static final String DOWN = "\u001b[B";
    private static final String UP = "\u001b[A";
    /** Longer than what takes two presses of the space bar for a held one. */
    private static final int APART = 900;
    /** It is past noon here whenever the test runs, so that what is planned for the afternoon is still to come. */
    private static final Map<String, String> AT_NOON = Map.of("TZ", zoneAtNoon());

    @TempDir
    Path scratch;

    private final Playing day = Playing.of();
    private final List<String> steps = new ArrayList<>();
    private final List<String> lines = new ArrayList<>();

    @BeforeAll
    static void needs() {
        Outside.needs("python3");
    }

    @Test
    void theDayIsDoneWithoutALetterAndExportsWhatLinesExport() throws IOException {
        pick("take up a camera", "645");
        pick("film into the bag", "4", "cn400 120");
        pick("plan a moment", "16:30", "Prize-giving", "wants 12", "must");
        load("cn400", "");
        checked();
        pick("new reading", "aperture and time, as the meter shows them", "f5.6", "1/125");
        frames(15);
        pick("a frame with another setting", "f8", "1/60", "no note");
        pick("finish the roll");
        pick("another camera or back", "35");
        load("bw400", "");
        checked();
        pick("new reading", "an exposure value", "11.0");
        frames(2);
        tab("cam 645 1");
        load("cn400", "@400");
        checked();
        frames(2);
        pick("flash", "the frames that follow are with flash");
        frames(1);
        unload();
        load("cn400", "");
        checked();
        frames(1);
        unload();
        tab("cam 35");
        unload();
        load("cn100", "");
        checked();
        frames(1);
        unload();
        enter();
        row("hand over: the lab order");
        key("\r", Key.of(Key.Name.ENTER));
        day.pass(10);
        pause(1500);
        enter();
        enter();
        day.pass(10);
        pause(1500);
        assertEquals(Session.Page.ORDER, day.page());

        String out = onScreen();
        assertTrue(out.endsWith("status 0\n") || out.contains("status"), out);
        byLines();
        for (int roll = 1; roll <= 5; roll++) {
            String name = "exports/R000" + roll + ".json";
            assertEquals(export("lines", name), export("screen", name), name + " after " + lines);
        }
        assertEquals(5, ordered());
    }

    /** Frames come one by one, each with its own press. */
    private void frames(int many) {
        for (int i = 0; i < many; i++) {
            pause(APART);
            day.pass(APART);
            key(" ", Key.typed(" "));
            day.pass(APART);
            lines.add(".");
        }
        pause(APART);
    }

    private void load(String typed, String rating) {
        pick("load a film", typed, rating.isEmpty() ? "as usual" : rating);
    }

    /** The three looks after loading, each answered with Enter. */
    private void checked() {
        for (int i = 0; i < 3; i++) {
            enter();
            lines.add("yes");
        }
    }

    /** A roll with frames left is asked about, and the answer is picked too. */
    private void unload() {
        pick("finish the roll");
        enter();
        row("yes");
        key("\r", Key.of(Key.Name.ENTER));
        lines.add("yes");
    }

    private void tab(String same) {
        key("\t", Key.of(Key.Name.TAB));
        lines.add(same);
    }

    /** Enter, and then a row after the other. */
    private void pick(String... rows) {
        enter();
        for (int i = 0; i < rows.length; i++) {
            row(rows[i]);
            Menu menu = menu();
            if (menu.isLast()) {
                lines.add(menu.preview());
            }
            assertEquals(i == rows.length - 1, menu.isLast(), menu.preview() + " of " + List.of(rows));
            key("\r", Key.of(Key.Name.ENTER));
        }
        assertFalse(day.said().startsWith("!"), day.said());
    }

    private Menu menu() {
        return day.shoot().view().menu().orElseThrow(() -> new AssertionError("no actions after " + lines));
    }

    /** Goes to the row of a name, or that types it. */
    private void row(String wanted) {
        List<Choice> rows = menu().field().choices();
        int row = -1;
        for (int i = 0; i < rows.size() && row < 0; i++) {
            boolean isIt =
                    rows.get(i).name().equals(wanted) || rows.get(i).typed().equals(wanted);
            row = isIt || wanted.equals("as usual") && rows.get(i).name().endsWith(wanted) ? i : -1;
        }
        assertTrue(
                row >= 0,
                wanted + " is not in " + rows.stream().map(Choice::name).toList());
        while (menu().chosen() < row) {
            key(DOWN, Key.of(Key.Name.DOWN));
        }
        while (menu().chosen() > row) {
            key(UP, Key.of(Key.Name.UP));
        }
    }

    private void enter() {
        key("\r", Key.of(Key.Name.ENTER));
    }

    private void key(String bytes, Key key) {
        day.press(key);
        day.pass(5);
        steps.add("bytes " + HexFormat.of().formatHex(bytes.getBytes(StandardCharsets.UTF_8)));
        steps.add("pause 25");
    }

    private void pause(int milliseconds) {
        steps.add("pause " + milliseconds);
    }

    /** POSIX counts to the west: {@code Etc/GMT-2} is two hours ahead. */
    private static String zoneAtNoon() {
        int ahead = 12 - OffsetDateTime.now(ZoneOffset.UTC).getHour();
        return "Etc/GMT" + (ahead > 0 ? "-" + ahead : "+" + -ahead);
    }

    private String onScreen() {
        List<String> command = new ArrayList<>(List.of(
                "python3",
                Path.of("src/test/outside/manners.py").toAbsolutePath().toString(),
                "80x24"));
        command.addAll(
                Installed.program(scratch, AT_NOON, List.of("--data", "screen")).command());
        String all = "see which camera\npause 500\n" + String.join("\n", steps)
                + "\nsee ORD-001\nbytes 03\npause 300\nbytes 03\npause 2000\n";
        Installed.Ended ended = Installed.run(Installed.process(scratch, AT_NOON, command), all);
        assertFalse(ended.out().contains("waited in vain"), ended.out());
        return ended.out();
    }

    private void byLines() {
        Installed.Ended typed = Installed.run(
                Installed.program(scratch, AT_NOON, List.of("line", "--data", "lines")),
                String.join("\n", lines) + "\n");
        assertFalse(typed.out().contains("Not done"), typed.out());
    }

    /** An export without what differs from one run to the next: times, and the ids that stay for good. */
    private String export(String folder, String file) throws IOException {
        return Files.readString(scratch.resolve(folder).resolve(file))
                .replaceAll("\"[0-9]{4}-[0-9]{2}-[0-9]{2}T[^\"]*\"", "\"a time\"")
                .replaceAll("\"[0-9a-f]{16,}\"", "\"an id\"")
                .replaceAll("\"ageSeconds\" : [0-9]+", "\"ageSeconds\" : 0");
    }

    /** How many rolls the order on the screen holds. */
    private long ordered() throws IOException {
        String order = Files.readString(scratch.resolve("screen/orders/ORD-001.json"));
        return Stream.iterate(1, it -> it + 1)
                .limit(9)
                .filter(it -> order.contains("\"roll\" : \"R000" + it + "\""))
                .count();
    }
}
