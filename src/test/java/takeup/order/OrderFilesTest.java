package takeup.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.json.JsonProblem;
import takeup.text.CsvFormat;

/** Orders of 500 random days: their files against the schema, and every form of them against what must not be in it. */
class OrderFilesTest {
    private static final Schema ROLL = schema("roll");
    private static final Schema ORDER = schema("order");
    /** A sign before a number below ten that a lab could take for a push. */
    private static final Pattern BARE = Pattern.compile("[-+\uff0b\u2212](?<![\\p{L}\\p{N}].)[0-9](?![0-9])");

    private static final Lab ASKS_NOTHING = Labs.lab("small", "{\"name\": \"Small lab\", \"asks\": []}");
    private static final Sender MARA = new Sender(
            "Mara Lindqvist", "4412", "+1 212 555 0100", "mara@boathouse.example", "Boathouse, 3 River Lane");

    private static Schema schema(String name) {
        try {
            String text = Files.readString(Path.of("src/main/resources/takeup/schema/" + name + ".json"));
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(text.replace(
                            "\"type\": \"object\",", "\"type\": \"object\", \"unevaluatedProperties\": false,"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> check(Schema schema, String json) {
        return schema.validate(json, InputFormat.JSON).stream()
                .map(Error::toString)
                .toList();
    }

    @Test
    void whateverTheDayWasTheOrderIsAsTheSchemaSaysAndReadsBackTheSame() {
        for (long seed = 1; seed <= 500; seed++) {
            List<Days.Roll> day = Days.random(seed);
            for (Days.Roll roll : seed % 10 == 0 ? day : List.<Days.Roll>of()) {
                assertEquals(List.of(), check(ROLL, roll.json()), "the roll itself, seed " + seed);
            }
            Order order = Days.order(seed, day.stream().map(Days.Roll::read).toList(), Labs.SHIPPED);
            String json = order.json("1.0.0");
            assertEquals(List.of(), check(ORDER, json), "seed " + seed);
            Order read = Order.read("ORD-001.json", json);
            assertEquals(order, read, "seed " + seed);
            assertEquals(json, read.json("1.0.0"), "seed " + seed);
        }
    }

    @Test
    void noPaperOfAnyDayHoldsAControlCharacter() {
        for (long seed = 1; seed <= 500; seed++) {
            List<ExposedRoll> rolls =
                    Days.random(seed).stream().map(Days.Roll::read).toList();
            Order order = Days.order(seed, rolls, Labs.SHIPPED);
            for (String paper : List.of(
                    OrderText.of(order),
                    OrderCsv.of(order, CsvFormat.PLAIN).replace("\r\n", "\n"),
                    body(OrderHtml.of(order, "A4", rolls, Set.of(OrderedRoll.Extra.NOTES))))) {
                assertTrue(paper.chars().allMatch(it -> it == '\n' || it >= ' ' && it != 0x7f && it != 0x202e), paper);
            }
        }
    }

    /** Where nobody typed a sign, none is printed: a push is told in words. */
    @Test
    void whatTheProgramSaysOfAPushHasNoSign() {
        for (double push : List.of(-2.0, -1.0, -0.5, 0.0, 0.5, 1.0, 2.0)) {
            Days.Roll roll = Days.roll("R0007").rated(400 * Math.pow(2, push), push);
            roll.frames.add(Days.frame(1, "exposed", "15:12", "null", "-1").replace("+1/10", ""));
            Order order = order(roll);
            for (String paper : List.of(
                    OrderText.of(order),
                    OrderCsv.of(order, CsvFormat.PLAIN),
                    body(OrderHtml.of(order, "A4", List.of(roll.read()), Set.of())))) {
                Matcher bare = BARE.matcher(paper);
                assertFalse(bare.find(), () -> "a bare " + bare.group() + " in " + paper);
            }
        }
    }

    private static String body(String html) {
        return html.substring(html.indexOf("<body>"));
    }

    @Test
    void theTextAndTheFileAndTheTableSayTheSameOfARoll() {
        Order order = order(Days.roll("R0007").rated(800, 1));
        String words = "C-41, PUSH 1 STOP (rated 800, box 400)";
        assertTrue(OrderText.of(order).contains("R0007      " + words), OrderText.of(order));
        assertTrue(order.json("1.0.0").contains("\"words\" : \"" + words + "\""));
        assertTrue(
                OrderCsv.of(order, CsvFormat.PLAIN).contains(",400,800,\"C-41\",\"PUSH 1 STOP\",16,"),
                OrderCsv.of(order, CsvFormat.PLAIN));
        assertTrue(OrderHtml.of(order, "A4", List.of(), Set.of())
                .contains("<b class=\"push\">▲ PUSH 1 STOP</b><br><span>rated 800, box 400</span>"));
    }

    @Test
    void notesAndClientStayHereUnlessAskedFor() {
        Days.Roll roll = Days.roll("R0007");
        roll.note = "\"argued with the cox\"";
        roll.client = "\"Rowing club\"";
        Order order = order(roll);
        for (String form : List.of(
                order.json("1.0.0"),
                OrderText.of(order),
                OrderCsv.of(order, CsvFormat.PLAIN),
                OrderHtml.of(order, "A4", List.of(roll.read()), Set.of()))) {
            assertFalse(form.contains("cox") || form.contains("Rowing club"), form);
        }
        Order told = Order.of(
                "ORD-001",
                Days.MONDAY,
                Labs.SHIPPED,
                OrderInstructions.of(Optional.empty(), false, Wishes.NONE),
                List.of(roll.read()),
                List.of(),
                Set.of(OrderedRoll.Extra.NOTES, OrderedRoll.Extra.CLIENT));
        for (String form :
                List.of(told.json("1.0.0"), OrderText.of(told), OrderHtml.of(told, "A4", List.of(), Set.of()))) {
            assertTrue(form.contains("argued with the cox") && form.contains("Rowing club"), form);
        }
    }

    @Test
    void anOrderTellsTheLabInItsOwnWordsAndWithTheFieldsThatItAsksFor() {
        Lab lab = Labs.lab(
                "small", "{\"name\": \"Small lab\", \"processes\": {\"c41\": \"colour neg.\"}, \"asks\": [\"stock\"]}");
        String html = html(order(lab, Days.roll("R0007").read()));
        assertTrue(html.contains("<td class=\"process\">colour neg.</td>"), html);
        assertFalse(html.contains("your number") || html.contains("16 frames") || html.contains("6x4.5</span>"), html);
    }

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource(textBlock = """
        torn,    third perforation, TORN
        opened,  '',                OPENED
        stuck,   at frame 12,       STUCK
        partial, '',                PARTIAL
        other,   expired 2019-03,   EXPIRED 2019-03
        other,   leader inside,     leader inside
        other,   the band is loose and its glue came off, SEE NOTE
        """)
    void whatALabMustSeeIsOnSheetAndLabelAndInTheTextWhateverItAsksFor(String kind, String words, String seen) {
        Days.Roll roll = Days.roll("R0007");
        roll.condition =
                "{\"kind\": \"" + kind + "\", \"words\": " + (words.isEmpty() ? "null" : Days.quoted(words)) + "}";
        Order order = order(ASKS_NOTHING, roll.read());
        String html = html(order);
        boolean isWord = !seen.equals("SEE NOTE");
        assertTrue(html.contains(isWord ? "<b>" + seen + "</b>" : "<span>" + words + "</span>"), html);
        assertTrue(html.contains("<p class=\"flags\">" + seen + "</p>"), html);
        assertTrue(OrderText.of(order).contains("(rated 200, box 400) · " + seen), OrderText.of(order));
    }

    @Test
    void halfFrameIsOnSheetAndLabelWhateverTheLabAsksFor() {
        Days.Roll roll = Days.roll("R0007");
        roll.filmSize = "135";
        roll.frameSize = "18x24";
        String html = html(order(ASKS_NOTHING, roll.read()));
        assertTrue(html.contains("<b>HALF-FRAME</b>") && html.contains("<p class=\"flags\">HALF-FRAME</p>"), html);
        assertTrue(html.contains("135 18x24"), html);
    }

    @Test
    void pushAndPullStandInBoxesThatNormalHasNot() {
        String html = html(order(
                Labs.SHIPPED,
                Days.roll("R0001").rated(800, 1).read(),
                Days.roll("R0002").rated(200, -1).read(),
                Days.roll("R0003").read()));
        assertEquals(2, count(html, "<b class=\"push\">▲ PUSH 1 STOP</b>"), "sheet and label");
        assertEquals(2, count(html, "<b class=\"pull\">▼ PULL 1 STOP</b>"), "sheet and label");
        assertEquals(2, count(html, "<span class=\"normal\">NORMAL</span>"), "sheet and label");
    }

    private static long count(String text, String piece) {
        return Pattern.compile(Pattern.quote(piece)).matcher(text).results().count();
    }

    @Test
    void rollsOfOneProcessAreTogetherAndThenInTheOrderOfTheirNumbers() {
        Order order = order(
                Labs.SHIPPED,
                Days.roll("R0010").film("colour-reversal", "E-6").read(),
                Days.roll("R10000").read(),
                Days.roll("R0011").film("bw-negative", "black-and-white").read(),
                Days.roll("R0009").read(),
                Days.roll("B0012").read());
        String sorted = "R0011 B0012 R0009 R10000 R0010";
        assertEquals(sorted, rolls(OrderText.of(order)));
        assertEquals(sorted + " " + sorted, rolls(body(html(order))), "sheet and labels");
        assertTrue(order.summary().endsWith("1 black-and-white, NORMAL · 3 C-41, NORMAL · 1 E-6, NORMAL"));
    }

    private static String rolls(String paper) {
        return Pattern.compile("\\b[A-Z]{1,3}[0-9]{4,8}\\b")
                .matcher(paper)
                .results()
                .map(MatchResult::group)
                .collect(Collectors.joining(" "));
    }

    @Test
    void eachPageBeginsWithOrderReferenceSenderAndItsNumber() {
        Order order = Order.of(
                "ORD-001",
                Days.MONDAY,
                ASKS_NOTHING,
                OrderInstructions.of(Optional.of("Regatta crew portraits"), false, Wishes.NONE)
                        .from(Optional.of(MARA)),
                List.of(Days.roll("R0007").read()),
                List.of(),
                Set.of());
        String html = OrderHtml.of(order, "A4", List.of(Days.roll("R0007").read()), Set.of());
        for (String page : List.of("1 of 3", "2 of 3", "3 of 3")) {
            assertTrue(
                    html.contains("<span class=\"order\">ORD-001</span> <span class=\"words\">Regatta crew portraits · "
                            + "Mara Lindqvist</span> <span class=\"page\">" + page + "</span>"),
                    page);
        }
    }

    @Test
    void theSenderIsOnSheetLabelTextAndFileAndReadsBack() {
        Order order = Order.of(
                "ORD-001",
                Days.MONDAY,
                Labs.SHIPPED,
                OrderInstructions.of(Optional.empty(), false, Wishes.NONE).from(Optional.of(MARA)),
                List.of(Days.roll("R0007").read()),
                List.of(),
                Set.of());
        for (String words :
                List.of("Mara Lindqvist", "4412", "+1 212 555 0100", "mara@boathouse.example", "3 River Lane")) {
            assertTrue(html(order).contains(words), words);
            assertTrue(OrderText.of(order).contains(words), words);
        }
        assertTrue(html(order).contains("<p class=\"sender\">Mara Lindqvist · account 4412</p>"));
        assertEquals(List.of(), check(ORDER, order.json("1.0.0")));
        assertEquals(order, Order.read("ORD-001.json", order.json("1.0.0")));
        assertEquals(MARA, Sender.read("sender.json", MARA.json()));
        JsonProblem wrong = assertThrows(JsonProblem.class, () -> Sender.read("sender.json", "{\"nmae\": \"Mara\"}"));
        assertTrue(wrong.getMessage().contains("nmae is not a field of the sender"), wrong.getMessage());
    }

    @Test
    void aSpreadsheetRunsNothing() {
        assertEquals("\"'=1+1\"", CsvFormat.PLAIN.text(PrintedText.of("=1+1")));
        assertEquals("\"'@SUM(1)\"", CsvFormat.PLAIN.text(PrintedText.of("  @SUM(1)")));
        assertEquals("\"'\u00a0=SUM(1)\"", CsvFormat.PLAIN.text(PrintedText.of("\u00a0=SUM(1)")));
        assertEquals("\"'\uff1d1\"", CsvFormat.PLAIN.text(PrintedText.of("\uff1d1")));
        assertEquals("\"'-12\"", CsvFormat.PLAIN.text(PrintedText.of("\t-12")));
        assertEquals("\"a, \"\"b\"\"\"", CsvFormat.PLAIN.text(PrintedText.of("a, \"b\"")));
        assertEquals("\"'+1\"", CsvFormat.PLAIN.text(PrintedText.of("+1")));
    }

    private static Order order(Days.Roll roll) {
        return order(Labs.SHIPPED, roll.read());
    }

    private static Order order(Lab lab, ExposedRoll... rolls) {
        return Order.of(
                "ORD-001",
                Days.MONDAY,
                lab,
                OrderInstructions.of(Optional.empty(), false, Wishes.NONE),
                List.of(rolls),
                List.of(),
                Set.of());
    }

    private static String html(Order order) {
        return OrderHtml.of(order, "A4", List.of(), Set.of());
    }
}
