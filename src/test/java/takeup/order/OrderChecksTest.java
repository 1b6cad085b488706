package takeup.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said before an order goes, and what of it stops. */
class OrderChecksTest {
    private static final ExposedRoll PLAIN = Days.roll("R0001").read();

    @Test
    void ofAPlainRollNothingIsSaid() {
        check(List.of(PLAIN), "");
    }

    /** A third of a stop is borne: 500 on a film of 400; log2(640/400) is 0.68. */
    @ParameterizedTest(name = "box {0}, rated {1}, pushed {2}: {3}")
    @CsvSource(textBlock = """
        400,  400,  0, ''
        400,  500,  0, ''
        400,  640,  0, no-push!
        400, 1600,  0, no-push!
        400,  800, -1, no-push!
        400,  800,  1, ''
        400, 1600,  1, push-mismatch
        400, 1600,  2, ''
        400,  400,  1, push-mismatch
        400,  200,  1, push-mismatch
        400,  200, -1, ''
        400,  400, -1, push-mismatch
        400,  100,  0, ''
        """)
    void anIndexAboveTheBoxSpeedWithoutAPushStops(double box, double index, double push, String codes) {
        Days.Roll roll = Days.roll("R0001").rated(index, push);
        roll.box = box;
        check(List.of(roll.read()), codes);
    }

    @ParameterizedTest(name = "{0} in {1}: {2}")
    @CsvSource(textBlock = """
        colour-negative, C-41,            ''
        colour-negative, c 41,            ''
        colour-negative, ECN-2,           lab-process
        colour-negative, E-6,             process!
        colour-negative, black-and-white, process!
        colour-negative, stand in soup,   process! lab-process
        bw-negative,     black-and-white, ''
        bw-negative,     C-41,            bw-in-c41
        bw-negative,     E-6,             process!
        colour-reversal, E-6,             ''
        colour-reversal, C-41,            process!
        bw-reversal,     bw reversal,     lab-process
        bw-reversal,     black-and-white, process!
        """)
    void aProcessThatTheFilmDoesNotBelongInStops(String kind, String process, String codes) {
        check(List.of(Days.roll("R0001").film(kind, process).read()), codes);
    }

    @Test
    void aRollWithoutAFrameStops() {
        Days.Roll blank = Days.roll("R0001");
        blank.exposed = 0;
        check(List.of(blank.read()), "no-frames!");
    }

    @Test
    void aRollNumberThatIsThereTwiceStops() {
        check(List.of(PLAIN, PLAIN), "duplicate!");
        assertEquals(
                "duplicate! many-at-first",
                codes(OrderChecks.of(
                        List.of(PLAIN),
                        List.of(),
                        Labs.SHIPPED,
                        List.of(order("ORD-001", PLAIN, PLAIN, PLAIN, PLAIN)),
                        OrderInstructions.of(Optional.empty(), false, Labs.SHIPPED.usual()))));
    }

    @Test
    void anOrderThatWasWithdrawnHoldsNoRollAnyMore() {
        Order withdrawn = order("ORD-001", PLAIN, PLAIN, PLAIN, PLAIN).asWithdrawn();
        assertEquals(
                "",
                codes(OrderChecks.of(
                        List.of(PLAIN),
                        List.of(),
                        Labs.SHIPPED,
                        List.of(withdrawn),
                        OrderInstructions.of(Optional.empty(), false, Labs.SHIPPED.usual()))));
    }

    @Test
    void aRollInACameraIsALine() {
        Days.Roll open = Days.roll("R0002");
        open.state = "open";
        check(List.of(open.read()), "in-camera");
        List<OrderCheck> left = OrderChecks.of(
                List.of(PLAIN),
                List.of(new LeftInCamera(open.read(), Optional.empty())),
                Labs.SHIPPED,
                List.of(),
                OrderInstructions.of(Optional.empty(), false, Labs.SHIPPED.usual()));
        assertEquals(
                "R0002 is still in 645 reflex, and not in this order",
                left.get(0).text());
    }

    @Test
    void aCameraThatWasLoadedSinceDoesNotHoldTheRoll() {
        Days.Roll open = Days.roll("R0002");
        open.state = "open";
        assertEquals(
                "is not in this order and was never unloaded, but R0003 was loaded into 645 reflex since: look for it, "
                        + "and unload it",
                new LeftInCamera(open.read(), Optional.of("R0003")).words());
        open.state = "rewound";
        assertEquals(
                "was rewound in 645 reflex to be loaded again, and is not in this order; R0003 was loaded since",
                new LeftInCamera(open.read(), Optional.of("R0003")).words());
    }

    @Test
    void traditionalBlackAndWhiteAmongColourIsToBeBaggedApart() {
        check(
                List.of(
                        PLAIN,
                        Days.roll("R0002")
                                .film("bw-negative", "black-and-white")
                                .read()),
                "bw-among-c41");
    }

    @ParameterizedTest(name = "box {0}, rated {1}, pushed {2}")
    @CsvSource({"400, 200, 0, false", "400, 800, 1, true", "800, 400, 0, true", "3200, 1600, 0, true"})
    void fastOrPushedFilmThatFliesIsNamed(double box, double index, double push, boolean isNamed) {
        Days.Roll roll = Days.roll("R0001").rated(index, push);
        roll.box = box;
        List<OrderCheck> said = OrderChecks.of(
                List.of(roll.read()),
                List.of(),
                Labs.SHIPPED,
                List.of(),
                OrderInstructions.of(Optional.empty(), true, Labs.SHIPPED.usual()));
        assertEquals("flies", codes(said));
        assertEquals(
                isNamed,
                said.get(0).text().startsWith("R0001 is fast or pushed"),
                said.get(0).text());
    }

    @Test
    void aFirstOrderOfMoreThanFourRollsIsALineUntilScansAreBack() {
        List<ExposedRoll> five = rolls(1, 2, 3, 4, 5);
        check(five.subList(0, 4), "");
        check(five, "many-at-first");
        Order before = order("ORD-001", rolls(6).get(0));
        assertEquals("many-at-first", codes(with(five.subList(0, 4), before)), "four more, and nothing is back");
        assertEquals(
                "",
                codes(with(five, before.with(new Order.Progress(Stage.SCANS, Days.MONDAY.toLocalDate(), List.of())))));
    }

    @Test
    void anotherLabThanLastTimeIsALineUntilScansAreBack() {
        Lab other = Labs.lab("other", "{\"name\": \"Other lab\"}");
        Order before = Order.of(
                "ORD-001",
                Days.MONDAY,
                other,
                OrderInstructions.of(Optional.empty(), false, Wishes.NONE),
                rolls(6),
                List.of(),
                Set.of());
        assertEquals("another-lab", codes(with(List.of(PLAIN), before)));
        assertEquals(
                "",
                codes(with(
                        List.of(PLAIN),
                        before.with(new Order.Progress(Stage.SCANS, Days.MONDAY.toLocalDate(), List.of())))));
    }

    @Test
    void whatTheLabWantsToKnowIsAskedFor() {
        List<OrderCheck> said = OrderChecks.of(
                List.of(PLAIN),
                List.of(),
                Labs.SHIPPED,
                List.of(),
                OrderInstructions.of(
                        Optional.empty(), false, Labs.SHIPPED.usual().with(Wish.SCAN_SIZE, "")));
        assertEquals(
                "The lab wants to know the scan size: say it with --scan-size",
                said.get(0).text());
    }

    @Test
    void eachIsOneSentenceOnOneLineAndThoseThatStopComeFirst() {
        Days.Roll blank = Days.roll("R0002").film("bw-negative", "C-41").rated(1600, 0);
        blank.exposed = 0;
        List<OrderCheck> all = OrderChecks.of(
                List.of(PLAIN, blank.read(), PLAIN),
                List.of(),
                Labs.SHIPPED,
                List.of(),
                OrderInstructions.of(Optional.empty(), true, Wishes.NONE));
        assertTrue(all.size() > 6, all.toString());
        assertTrue(
                all.stream()
                        .allMatch(it ->
                                it.text().lines().count() == 1 && !it.text().endsWith(".")),
                all.toString());
        assertEquals(3, all.stream().takeWhile(OrderCheck::isBlocking).count());
        assertEquals(3, all.stream().filter(OrderCheck::isBlocking).count());
    }

    private static List<OrderCheck> with(List<ExposedRoll> rolls, Order earlier) {
        return OrderChecks.of(
                rolls,
                List.of(),
                Labs.SHIPPED,
                List.of(earlier),
                OrderInstructions.of(Optional.empty(), false, Labs.SHIPPED.usual()));
    }

    private static List<ExposedRoll> rolls(int... numbers) {
        return Arrays.stream(numbers)
                .mapToObj(it -> Days.roll("R000" + it).read())
                .toList();
    }

    private static Order order(String number, ExposedRoll... rolls) {
        return Order.of(
                number,
                Days.MONDAY,
                Labs.SHIPPED,
                OrderInstructions.of(Optional.empty(), false, Wishes.NONE),
                List.of(rolls),
                List.of(),
                Set.of());
    }

    private static String codes(List<OrderCheck> checks) {
        return String.join(
                " ",
                checks.stream()
                        .map(it -> it.code() + (it.isBlocking() ? "!" : ""))
                        .toList());
    }

    /** The codes in order, those that stop with an exclamation mark. */
    private static void check(List<ExposedRoll> rolls, String codes) {
        assertEquals(
                codes,
                codes(OrderChecks.of(
                        rolls,
                        List.of(),
                        Labs.SHIPPED,
                        List.of(),
                        OrderInstructions.of(Optional.empty(), false, Labs.SHIPPED.usual()))));
    }
}
