package takeup.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.Outside;

/** Orders as a browser prints and shows them. */
class OrderPagesIT {
    private static final long PATIENCE = 60;

    @TempDir
    static Path scratch;

    @BeforeAll
    static void chromium() {
        Outside.needs("chromium");
    }

    private List<ExposedRoll> twenty() {
        List<ExposedRoll> rolls = new ArrayList<>();
        for (int at = 1; at <= 20; at++) {
            Days.Roll roll = at % 3 > 0
                    ? Days.roll("R" + (1000 + at))
                    : Days.roll("R" + (1000 + at))
                            .film("bw-negative", "black-and-white")
                            .rated(1600, 2);
            roll.stock = at % 3 > 0 ? "Colour negative 400" : "Chromogenic black-and-white 400";
            roll.condition = "{\"kind\": \"torn\", \"words\": \"third perforation, and the leader is inside\"}";
            roll.filmSize = "135";
            for (int frame = 1; frame <= (at == 1 ? 36 : 0); frame++) {
                roll.frames.add(Days.frame(
                        frame,
                        frame == 9 ? "lost" : "exposed",
                        "15:12",
                        "\"bow seat, frame " + frame + " of the crew portraits\"",
                        frame % 2 == 0 ? "0.7" : "-0.4"));
            }
            rolls.add(roll.read());
        }
        return rolls;
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"A4", "Letter"})
    void twentyTornRollsAndEveryWishTakeTwoSheetsAndLabelsAndThirtySixFramesAPageEach(String paper)
            throws IOException, InterruptedException {
        List<ExposedRoll> rolls = twenty();
        Wishes wishes = Wishes.NONE;
        for (Wish wish : Wish.values()) {
            wishes = wishes.with(wish, "as the last time, please");
        }
        Order order = Order.of(
                "ORD-001",
                Days.MONDAY,
                Labs.SHIPPED,
                OrderInstructions.of(Optional.of("Regatta crew portraits"), true, wishes),
                rolls,
                List.of(),
                Set.of());
        Path page = scratch.resolve("order.html");
        Path pdf = scratch.resolve("order.pdf");
        Files.writeString(page, OrderHtml.of(order, paper, rolls.subList(0, 1), Set.of(OrderedRoll.Extra.NOTES)));
        chromium("--no-pdf-header-footer", "--print-to-pdf=" + pdf, page.toUri().toString());
        String printed = Files.readString(pdf, StandardCharsets.ISO_8859_1);
        assertEquals(
                4,
                Pattern.compile("/Type\\s*/Page\\b").matcher(printed).results().count(),
                "two sheets, labels, frames");
        // Sheets of 210 x 297 mm and 8.5 x 11 in, in points of 1/72 in, to a whole point.
        Matcher box =
                Pattern.compile("/MediaBox\\s*\\[\\s*0 0 ([0-9.]+) ([0-9.]+)").matcher(printed);
        assertTrue(box.find());
        assertEquals(
                paper.equals("A4") ? "595 842" : "612 792",
                Math.round(Double.parseDouble(box.group(1))) + " " + Math.round(Double.parseDouble(box.group(2))));
    }

    /** Three processes, pushes and pulls, and every condition, none of which the lab's form asks for. */
    private static List<ExposedRoll> forty() {
        List<String> conditions = List.of(
                "",
                "",
                "",
                "{\"kind\": \"torn\", \"words\": \"third perforation, and the leader is inside\"}",
                "",
                "{\"kind\": \"opened\", \"words\": \"back opened at frame 12\"}",
                "{\"kind\": \"other\", \"words\": \"expired 2019-03\"}",
                "",
                "{\"kind\": \"partial\", \"words\": null}",
                "");
        List<ExposedRoll> rolls = new ArrayList<>();
        for (int at = 1; at <= 40; at++) {
            Days.Roll roll = Days.roll("R" + (1000 + at));
            roll.filmSize = at % 2 == 0 ? "120" : "135";
            roll.frameSize = at % 2 == 0 ? "6x4.5" : at % 5 == 0 ? "18x24" : "24x36";
            roll.exposed = at % 2 == 0 ? 16 : at % 5 == 0 ? 72 : 36;
            roll.condition = conditions.get(at % 10);
            if (at % 3 == 0) {
                roll.film("bw-negative", "black-and-white");
                roll.stock = "Black-and-white 400";
            } else if (at % 7 == 0) {
                roll.film("colour-reversal", "E-6");
                roll.stock = "Colour reversal 100";
                roll.box = 100;
                roll.rated(100, 0);
            }
            if (at % 6 == 0) {
                roll.rated(1600, 2);
            } else if (at % 11 == 0) {
                roll.rated(800, 1);
            } else if (at % 13 == 0) {
                roll.rated(200, -1);
            }
            rolls.add(roll.read());
        }
        return rolls;
    }

    private static Order order(List<ExposedRoll> rolls) {
        Wishes wishes = Wishes.NONE
                .with(Wish.SERVICE, "develop, scan, contact sheet")
                .with(Wish.SCAN_SIZE, "medium")
                .with(Wish.FILE_TYPE, "TIFF")
                .with(Wish.NEGATIVES, "returned")
                .with(Wish.MAY_CUT, "no")
                .with(Wish.SLEEVES, "sleeved")
                .with(Wish.WANTED_BY, "2026-09-24")
                .with(Wish.PAYMENT, "invoice")
                .with(Wish.PRICE_LIMIT, "ask above 600");
        Sender sender = new Sender(
                "Mara Lindqvist",
                "4412",
                "+1 212 555 0100",
                "mara@boathouse.example",
                "Boathouse, 3 River Lane, Hollow");
        return Order.of(
                "ORD-001",
                Days.MONDAY,
                Labs.lab("lab", "{\"name\": \"Harbour Lab\", \"asks\": [\"labNumber\", \"stock\"]}"),
                OrderInstructions.of(Optional.of("Regatta crew portraits"), true, wishes)
                        .from(Optional.of(sender)),
                rolls,
                List.of(),
                Set.of());
    }

    /** What a browser prints is looked at as a picture too: the files stay in the build's folder. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"A4", "Letter"})
    void anOrderOfFortyRollsIsParted(String paper) throws IOException, InterruptedException {
        Path page = Path.of("target", "order-of-forty-" + paper + ".html").toAbsolutePath();
        Path pdf = Path.of("target", "order-of-forty-" + paper + ".pdf").toAbsolutePath();
        Files.writeString(page, OrderHtml.of(order(forty()), paper, List.of(), Set.of()));
        chromium("--no-pdf-header-footer", "--print-to-pdf=" + pdf, page.toUri().toString());
        String printed = Files.readString(pdf, StandardCharsets.ISO_8859_1);
        String numbered = Files.readString(page);
        long pages =
                Pattern.compile("/Type\\s*/Page\\b").matcher(printed).results().count();
        for (long at = 1; at <= pages; at++) {
            assertTrue(numbered.contains("<span class=\"page\">" + at + " of " + pages + "</span>"), "page " + at);
        }
        assertEquals(5, pages, "three sheets and two of labels");
    }

    /**
     * Every nasty word in every field of an order, with pages of frames; the browser's own view of it after it had time
     * to run.
     */
    @Test
    void nothingThatSomebodyTypesRunsInThePage() throws IOException, InterruptedException {
        List<ExposedRoll> rolls = new ArrayList<>();
        for (String nasty : Days.NASTY) {
            Days.Roll roll = Days.roll("R" + (1000 + rolls.size()));
            roll.process = nasty;
            roll.camera = nasty;
            roll.stock = nasty;
            roll.note = Days.quoted(nasty);
            roll.client = Days.quoted(nasty);
            roll.condition = "{\"kind\": \"other\", \"words\": " + Days.quoted(nasty) + "}";
            roll.frames.add(Days.frame(1, "exposed", "15:12", Days.quoted(nasty), "-1"));
            rolls.add(roll.read());
        }
        Order order = Order.of(
                "ORD-001",
                Days.MONDAY,
                Labs.SHIPPED,
                OrderInstructions.of(Optional.of(String.join(" ", Days.NASTY)), false, Wishes.NONE),
                rolls,
                List.of(),
                Set.of(OrderedRoll.Extra.NOTES, OrderedRoll.Extra.CLIENT));
        for (Wish wish : Wish.values()) {
            OrderInstructions said = order.instructions();
            order = new Order(
                    order.order(),
                    order.version(),
                    order.lab(),
                    new OrderInstructions(
                            said.reference(),
                            said.client(),
                            false,
                            said.wishes().with(wish, Days.NASTY.get(9 + wish.ordinal() % 5)),
                            Optional.of(new Sender(
                                    Days.NASTY.get(9),
                                    Days.NASTY.get(10),
                                    Days.NASTY.get(11),
                                    Days.NASTY.get(12),
                                    Days.NASTY.get(13)))),
                    order.parcel(),
                    order.rolls(),
                    order.checks(),
                    order.progress());
        }
        Path page = scratch.resolve("order.html");
        Files.writeString(page, OrderHtml.of(order, "A4", rolls, Set.of(OrderedRoll.Extra.NOTES)));
        String dom = chromium(
                "--virtual-time-budget=2000", "--dump-dom", page.toUri().toString());
        assertTrue(dom.contains("<title>ORD-001</title>"), "a script changed the title");
        assertFalse(
                Pattern.compile("<(script|img|base|iframe|link|object|a)\\b", Pattern.CASE_INSENSITIVE)
                        .matcher(dom)
                        .find(),
                "an element that nobody wrote");
        assertFalse(
                Pattern.compile("<[^>]*\\son[a-z]+\\s*=", Pattern.CASE_INSENSITIVE)
                        .matcher(dom)
                        .find(),
                "an attribute that runs");
        assertEquals(
                rolls.size(),
                Pattern.compile("<div class=\"label( full)?\">")
                        .matcher(dom)
                        .results()
                        .count());
        assertTrue(
                dom.contains("&lt;script&gt;document.title='PWNED'&lt;/script&gt;"), "it is printed as it was typed");
    }

    /**
     * The same page without the encoder: the policy alone keeps it from running, and the check above would see it if it
     * did not.
     */
    @Test
    void thePolicyHoldsEvenWhereTheEncoderWouldFail() throws IOException, InterruptedException {
        Order order = Order.of(
                "ORD-001",
                Days.MONDAY,
                Labs.SHIPPED,
                OrderInstructions.of(Optional.empty(), false, Wishes.NONE),
                List.of(Days.roll("R0001").read()),
                List.of(),
                Set.of());
        String page = OrderHtml.of(order, "A4", List.of(), Set.of());
        String broken = page.replace(
                "</body>",
                "<script>document.title='PWNED'</script><img src=x onerror=\"document.title='PWNED'\"></body>");
        Files.writeString(scratch.resolve("kept.html"), broken);
        Files.writeString(scratch.resolve("open.html"), broken.replaceFirst("<meta http-equiv=[^>]*>", ""));
        assertTrue(chromium("--dump-dom", scratch.resolve("kept.html").toUri().toString())
                .contains("<title>ORD-001</title>"));
        assertTrue(chromium("--dump-dom", scratch.resolve("open.html").toUri().toString())
                .contains("<title>PWNED</title>"));
    }

    private String chromium(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                "chromium",
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--no-first-run",
                "--user-data-dir=" + scratch.resolve("profile")));
        command.addAll(List.of(arguments));
        Path out = scratch.resolve("out");
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(scratch.resolve("err").toFile());
        builder.environment().put("HOME", scratch.toString());
        Process process = builder.start();
        if (!process.waitFor(PATIENCE, TimeUnit.SECONDS)) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
            throw new AssertionError("chromium is not at its end after " + PATIENCE + " s");
        }
        return Files.readString(out);
    }
}
