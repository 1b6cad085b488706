package takeup.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Where each roll is, and what is due. The shipped lab keeps scans for 30 days and wants film within 14. */
class OrderTrackerTest {
    private static final Order MADE = Order.of(
            "ORD-001",
            Days.MONDAY,
            Labs.SHIPPED,
            OrderInstructions.of(Optional.empty(), false, Labs.SHIPPED.usual()),
            List.of(Days.roll("R0001").read(), Days.roll("R0002").read()),
            List.of(),
            Set.of());

    private static LocalDate day(String date) {
        return LocalDate.parse(date);
    }

    private static Order marked(Order order, Stage stage, String on, String... rolls) {
        return order.with(new Order.Progress(stage, day(on), List.of(rolls)));
    }

    @Test
    void aRollGoesFromExposedToNegativesBack() {
        assertEquals("exposed", new OrderTracker(List.of()).words("R0001"));
        assertEquals("ordered (ORD-001)", new OrderTracker(List.of(MADE)).words("R0001"));
        Order sent = marked(MADE, Stage.SENT, "2026-09-15");
        assertEquals("at the lab since 2026-09-15 (ORD-001)", new OrderTracker(List.of(sent)).words("R0001"));
        Order one = marked(sent, Stage.SCANS, "2026-09-20", "R0002");
        assertEquals("at the lab since 2026-09-15 (ORD-001)", new OrderTracker(List.of(one)).words("R0001"));
        assertEquals("scans back since 2026-09-20 (ORD-001)", new OrderTracker(List.of(one)).words("R0002"));
        assertEquals(
                "negatives back since 2026-10-01 (ORD-001)",
                new OrderTracker(List.of(marked(one, Stage.NEGATIVES, "2026-10-01"))).words("R0001"));
        assertEquals("exposed", new OrderTracker(List.of(MADE.asWithdrawn())).words("R0001"));
        assertEquals(
                "ordered (ORD-001)",
                new OrderTracker(List.of(marked(sent, Stage.ORDERED, "2026-09-15"))).words("R0001"),
                "a wrong word is taken back");
    }

    @Test
    void theScansAreCountedDownToTheDayOnWhichTheLabDeletesThem() {
        Order scans = marked(MADE, Stage.SCANS, "2026-09-20");
        check(scans, "2026-09-25", "[ORD-001: the scans are deleted on 2026-10-20, in 25 days: save them before]");
        check(scans, "2026-10-19", "[ORD-001: the scans are deleted on 2026-10-20, in 1 day: save them before]");
        check(scans, "2026-10-20", "[ORD-001: the scans are deleted on 2026-10-20, today: save them now]");
        check(scans, "2026-10-21", "[ORD-001: the scans are deleted on 2026-10-20, 1 day ago; ask at once]");
        check(marked(scans, Stage.NEGATIVES, "2026-10-01"), "2026-10-19", "[]");
    }

    @Test
    void anOrderThatDoesNotGoIsNamedAfterAFortnight() {
        check(MADE, "2026-09-28", "[]");
        assertTrue(new OrderTracker(List.of(MADE))
                .due(day("2026-09-29"))
                .get(0)
                .startsWith("ORD-001 was made 15 days ago and has not gone to the lab"));
        check(MADE.asWithdrawn(), "2026-12-01", "[]");
    }

    @Test
    void negativesThatNobodyAskedForAreToBeAskedFor() {
        Order order = Order.of(
                "ORD-001",
                Days.MONDAY,
                Labs.SHIPPED,
                OrderInstructions.of(Optional.empty(), false, Wishes.NONE),
                List.of(Days.roll("R0001").read()),
                List.of(),
                Set.of());
        assertEquals(
                "ORD-001: negatives that nobody asked for are destroyed on 2026-10-04, in 4 days: ask for them before",
                new OrderTracker(List.of(marked(order, Stage.SCANS, "2026-09-20")))
                        .due(day("2026-09-30"))
                        .get(1));
    }

    private static Optional<String> waiting(OrderTracker where, Map<String, LocalDate> finished, String today) {
        OrderTracker.Waiting waiting = where.waiting(day(today));
        finished.forEach(waiting::add);
        return waiting.sentence();
    }

    @Test
    void exposedRollsThatWaitTooLongAreNamedTogether() {
        OrderTracker where = new OrderTracker(List.of(MADE));
        Map<String, LocalDate> finished = new TreeMap<>(
                Map.of("R0001", day("2026-09-01"), "R0007", day("2026-09-01"), "R0008", day("2026-09-12")));
        assertEquals(
                Optional.of("exposed and in no order: R0007 for 15 days; exposed film fades with time and heat, so "
                        + "send it soon"),
                waiting(where, finished, "2026-09-16"));
        assertEquals(Optional.empty(), waiting(where, finished, "2026-09-15"));
    }

    /** An archive of years of which nothing was ever ordered: the line stays one that can be read. */
    @Test
    void ofManyRollsThatWaitTheFirstAreNamedAndTheOthersCounted() {
        Map<String, LocalDate> finished = new TreeMap<>();
        for (int roll = 1; roll <= 9_999; roll++) {
            finished.put(String.format(Locale.ROOT, "R%04d", roll), day("2026-09-01"));
        }
        String said =
                waiting(new OrderTracker(List.of()), finished, "2026-09-16").orElseThrow();
        assertTrue(said.length() < 400, said);
        assertTrue(said.startsWith("exposed and in no order: R0001 for 15 days, R0002 for 15 days"), said);
        assertTrue(said.contains("R0010 for 15 days and 9989 more (takeup order list --json names all)"), said);
        OrderTracker.FirstFew few = new OrderTracker.FirstFew();
        assertEquals(Optional.empty(), few.words());
        few.add("R0001");
        assertEquals(Optional.of("R0001"), few.words());
        finished.keySet().forEach(few::add);
        assertTrue(few.words().orElseThrow().length() < 400);
    }

    @Test
    void aRollIsInTheNewestOrderThatWasNotWithdrawn() {
        Order again = MADE.asParcel("ORD-002", new Order.Parcel(1, 1, List.of()), List.of("R0002"));
        OrderTracker where = new OrderTracker(List.of(MADE, again, MADE.asWithdrawn()));
        assertEquals(Optional.of(again), where.order("R0002"));
        assertEquals(Optional.of(MADE), where.order("R0001"));
        assertEquals(Optional.empty(), where.order("R0003"));
    }

    @Test
    void aRollThatWasCorrectedAfterItWasOrderedIsTold() {
        Days.Roll pushed = Days.roll("R0002").rated(200, 1);
        assertEquals(
                List.of(), OrderTracker.corrected(MADE, List.of(pushed.read())), "the same revision is the same roll");
        pushed.revision = 22;
        assertEquals(
                List.of("R0002 was corrected after it was ordered (revision 21, now 22): it says C-41, PUSH 1 "
                        + "STOP (rated 200, box 400) now, and the order says "
                        + "C-41, NORMAL (rated 200, box 400)"),
                OrderTracker.corrected(MADE, List.of(pushed.read())));
        assertEquals(
                List.of("R0002 was corrected after it was ordered (revision 21, now 22)"),
                OrderTracker.corrected(MADE, List.of(same(22))));
    }

    private static ExposedRoll same(int revision) {
        Days.Roll roll = Days.roll("R0002");
        roll.revision = revision;
        return roll.read();
    }

    @Test
    void numbersAreTypedShortAndCountedOn() {
        assertEquals(Optional.of("ORD-001"), OrderNumbers.parse("1"));
        assertEquals(Optional.of("ORD-012"), OrderNumbers.parse("ord12"));
        assertEquals(Optional.of("ORD-1234"), OrderNumbers.parse("ORD-1234"));
        for (String none : List.of("", "0", "ORD-", "R0001", "ORD-1x", "ORD-1234567", "-1")) {
            assertEquals(Optional.empty(), OrderNumbers.parse(none), none);
        }
        assertEquals("ORD-001", OrderNumbers.next(List.of()));
        assertEquals("ORD-1000", OrderNumbers.next(List.of("ORD-002", "ORD-999")));
    }

    private static void check(Order order, String today, String due) {
        assertEquals(due, new OrderTracker(List.of(order)).due(day(today)).toString());
    }
}
