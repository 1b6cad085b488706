package takeup.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Orders of 500 random days: their files against the schema, and every form of them against what must not be in it. */
class OrderFilesTest {
    private static final Schema ROLL = schema("roll");
    private static final Schema ORDER = schema("order");
    /** A sign before a number below ten that a lab could take for a push. */
    private static final Pattern BARE = Pattern.compile("[-+\uff0b\u2212](?<![\\p{L}\\p{N}].)[0-9](?![0-9])");

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
            assertEquals(order, Order.read("ORD-001.json", json), "seed " + seed);
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
                    OrderCsv.of(order).replace("\r\n", "\n"),
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
                    OrderCsv.of(order),
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
        assertTrue(OrderCsv.of(order).contains(",400,800,C-41,PUSH 1 STOP,16,"), OrderCsv.of(order));
        assertTrue(OrderHtml.of(order, "A4", List.of(), Set.of())
                .contains("<b>C-41, PUSH 1 STOP</b> <span>rated 800, box 400</span>"));
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
                OrderCsv.of(order),
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
        Days.Roll roll = Days.roll("R0007");
        roll.frameSize = "18x24";
        Order order = Order.of(
                "ORD-001",
                Days.MONDAY,
                lab,
                OrderInstructions.of(Optional.empty(), false, Wishes.NONE),
                List.of(roll.read()),
                List.of(),
                Set.of());
        String html = OrderHtml.of(order, "A4", List.of(), Set.of());
        assertTrue(html.contains("<b>colour neg., NORMAL</b>"), html);
        assertTrue(html.contains("HALF-FRAME"), "a mask that it must know, asked for or not");
        assertFalse(html.contains("your number") || html.contains(">frames<"), html);
    }

    @Test
    void aSpreadsheetRunsNothing() {
        assertEquals("'=1+1", OrderCsv.cell("=1+1"));
        assertEquals("'@SUM(1)", OrderCsv.cell("  @SUM(1)"));
        assertEquals("'\u00a0=SUM(1)", OrderCsv.cell("\u00a0=SUM(1)"));
        assertEquals("'\uff1d1", OrderCsv.cell("\uff1d1"));
        assertEquals("'-12", OrderCsv.cell("\t-12"));
        assertEquals("\"a, \"\"b\"\"\"", OrderCsv.cell("a, \"b\""));
        assertEquals("'+1", OrderCsv.cell("+1"));
    }

    private static Order order(Days.Roll roll) {
        return Order.of(
                "ORD-001",
                Days.MONDAY,
                Labs.SHIPPED,
                OrderInstructions.of(Optional.empty(), false, Wishes.NONE),
                List.of(roll.read()),
                List.of(),
                Set.of());
    }
}
