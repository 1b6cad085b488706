package takeup.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import takeup.drafting.OrderDraft;
import takeup.drafting.OrderRow;
import takeup.message.Key;
import takeup.order.ExposedRoll;
import takeup.order.OrderText;
import takeup.order.Wish;

/** The lab order, made on the screen: F7, arrows and Enter, and the lines that do the same. */
class HandingOverTest {
    /** Two finished rolls, the second pushed, and one that is still in the camera. */
    private static Playing day() {
        return Playing.of(
                "cam 645",
                "load cn400",
                "5.6 125 x16",
                "unload",
                "load bw400 @800 push 1",
                "5.6 125 x16",
                "unload",
                "load cn400",
                "5.6 125");
    }

    @Test
    void oneKeyShowsTheRollsThatWaitAndEnterWritesTheirSheet() {
        Playing day = day().press(Key.Name.F3).press(Key.Name.F7).pass(10);
        assertEquals(Session.Page.ORDER, day.page());
        assertEquals(List.of("R0001", "R0002"), numbers(draft(day)));
        day.press(Key.Name.ENTER);
        assertEquals(OrderDraft.Step.SHEET, draft(day).step());
        String sheet = OrderText.of(draft(day).order(day.shoot().now()));
        assertTrue(sheet.contains("PUSH 1 STOP"), sheet);
        day.press(Key.Name.ENTER).pass(10);
        assertEquals(1, day.store().ordered().size());
        assertEquals(List.of("R0001", "R0002"), numbers(day.store().ordered().get(0)));
        assertEquals(OrderDraft.Step.WRITTEN, draft(day).step());
        assertEquals("ORD-001 written: the sheet is orders/ORD-001.html", day.said());
    }

    @Test
    void anOrderIsMarkedAsSentAndBackAgain() {
        Playing day = day().press(Key.Name.F7)
                .pass(10)
                .press(Key.Name.ENTER)
                .press(Key.Name.ENTER)
                .pass(10);
        day.press(Key.Name.ESCAPE).press(Key.Name.F7).pass(10);
        row(day, "ORD-001");
        assertTrue(row(day).text().startsWith("ordered, 2 rolls"), row(day).text());
        day.press(Key.Name.ENTER).type("1").pass(10);
        assertEquals("ORD-001: at the lab", day.said());
        assertEquals(Session.Page.ORDER, day.page());
        row(day, "ORD-001");
        assertTrue(row(day).text().startsWith("at the lab since 2026-09-12, 2 rolls"), row(day).text());
        day.lines("order mark 1 ordered").pass(10);
        assertEquals("ORD-001: ordered", day.said());
        row(day, "ORD-001");
        assertTrue(row(day).text().startsWith("ordered, 2 rolls"), row(day).text());
        day.lines("order mark 1 negatives").pass(10);
        assertTrue(
                OrderRow.of(draft(day), day.shoot().now()).stream()
                        .noneMatch(it -> it.name().equals("ORD-001")),
                "what is back needs no row");
        day.lines("order mark 9 sent");
        assertTrue(day.said().startsWith("9 is not an order here"), day.said());
        day.press(Key.Name.ESCAPE).lines("order mark 1 lost");
        assertTrue(day.said().startsWith("lost is not a stage"), day.said());
    }

    @Test
    void aRollStaysHereAndAWishIsPickedWithArrowsAndEnter() {
        Playing day = day().press(Key.Name.F7).pass(10).press(Key.Name.DOWN).press(Key.Name.DOWN);
        day.press(Key.Name.ENTER);
        assertEquals(List.of("R0001"), numbers(draft(day)));
        row(day, "scan size").press(Key.Name.ENTER);
        day.type("3");
        assertEquals(
                "large", draft(day).instructions().wishes().of(Wish.SCAN_SIZE).orElseThrow());
        assertEquals("scan size", row(day).name());
        row(day, "sender's name").press(Key.Name.ENTER).type("Ada Lindqvist").press(Key.Name.ENTER);
        assertEquals(
                "Ada Lindqvist",
                draft(day).instructions().sender().orElseThrow().name());
    }

    @Test
    void linesDoTheSameAndWrongOnesSayWhy() {
        Playing day = day().lines("order").pass(10).lines("order without r2", "order flies yes", "order notes by hand");
        assertEquals(List.of("R0001"), numbers(draft(day)));
        assertTrue(draft(day).instructions().flies());
        day.lines("order scan-size huge");
        assertEquals("huge is no scan size of Harbour Lab: small, medium, large", day.said());
        day.press(Key.Name.ESCAPE).lines("order with r9");
        assertEquals("r9 does not wait for an order; those that do: R0001, R0002", day.said());
    }

    /** A blank roll is charged too, so that one is asked about before it goes. */
    @Test
    void whatStopsAnOrderIsAskedAbout() {
        Playing day = Playing.of("cam 645", "load cn400", "blank x3", "unload", "yes")
                .press(Key.Name.F7)
                .pass(10)
                .press(Key.Name.ENTER)
                .press(Key.Name.ENTER);
        assertTrue(day.said().endsWith("Order it anyway? y/n"), day.said());
        assertEquals(0, day.store().ordered().size());
        day.lines("y").pass(10);
        assertEquals(1, day.store().ordered().size());
    }

    @Test
    void escGoesFromTheSheetToTheRowsAndThenAway() {
        Playing day = day().press(Key.Name.F7).pass(10).press(Key.Name.ENTER).press(Key.Name.ESCAPE);
        assertEquals(OrderDraft.Step.CHOOSING, draft(day).step());
        day.press(Key.Name.ESCAPE);
        assertEquals(Session.Page.SHOOT, day.page());
        day.lines("order write");
        assertEquals("order (or F7) shows the order first", day.said());
    }

    @Test
    void whatWasChosenIsStillChosenAfterAFrame() {
        Playing day =
                day().press(Key.Name.F7).pass(10).lines("order without r1").press(Key.Name.ESCAPE);
        day.space().press(Key.Name.F7).pass(10);
        assertEquals(List.of("R0002"), numbers(draft(day)));
    }

    @Test
    void readOnlyMakesNoOrder() {
        Playing day = day().restartReadOnly().press(Key.Name.F7).pass(10).press(Key.Name.ENTER);
        day.press(Key.Name.ENTER);
        assertTrue(day.said().startsWith("read only"), day.said());
        assertFalse(draft(day).step() == OrderDraft.Step.WRITTEN);
    }

    private static OrderDraft draft(Playing day) {
        return day.shoot().view().draft().orElseThrow();
    }

    private static List<String> numbers(OrderDraft draft) {
        return draft.rolls().stream().map(ExposedRoll::roll).toList();
    }

    private static OrderRow row(Playing day) {
        return OrderRow.of(draft(day), day.shoot().now()).get(day.shoot().view().chosen());
    }

    private static Playing row(Playing day, String name) {
        List<String> names = OrderRow.of(draft(day), day.shoot().now()).stream()
                .map(OrderRow::name)
                .toList();
        day.press(Key.Name.HOME);
        for (int i = 0; i < names.indexOf(name); i++) {
            day.press(Key.Name.DOWN);
        }
        return day;
    }
}
