package takeup.ordering;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import takeup.console.Console;
import takeup.files.OrderFolder;
import takeup.json.Json;
import takeup.order.Order;
import takeup.order.OrderTracker;
import takeup.text.IsoTime;

/** All orders, where their rolls are, and what is due. Only reads. */
final class OrderList {
    private final OrderDesk desk;

    OrderList(OrderDesk desk) {
        this.desk = desk;
    }

    /** Prints it for people; the exit status. */
    int print() throws IOException {
        Listed listed = read();
        Console console = desk.console();
        if (listed.orders.isEmpty()) {
            console.line("no order yet in " + desk.folder().orders());
        }
        for (Order order : listed.orders) {
            console.line(order.order() + "  " + order.madeAt().toLocalDate() + "  "
                    + order.lab().name() + "  " + order.summary() + "  " + OrderDesk.where(order)
                    + order.reference().map(it -> "  " + it).orElse(""));
        }
        if (!listed.notOrdered.isEmpty()) {
            console.line("exposed, in no order: " + OrderTracker.first(listed.notOrdered));
        }
        listed.due.forEach(console::line);
        return listed.status();
    }

    /** Prints it as a JSON object; the exit status. */
    int printJson() throws IOException {
        Listed listed = read();
        desk.console()
                .json(
                        "orders",
                        Json.object()
                                .and(
                                        "orders",
                                        listed.orders.stream()
                                                .map(OrderList::json)
                                                .toList())
                                .and("notOrdered", listed.notOrdered)
                                .and("due", listed.due));
        return listed.status();
    }

    /** What there is: orders, exposed rolls in none of them, what is due, and whether all could be read. */
    private record Listed(List<Order> orders, List<String> notOrdered, List<String> due, boolean isWhole) {
        int status() {
            return isWhole ? 0 : 1;
        }
    }

    private Listed read() throws IOException {
        OrderFolder.Found<Order> found = desk.folder().allOrders();
        found.problems().forEach(desk.console()::error);
        OrderTracker where = new OrderTracker(found.all());
        List<String> due = new ArrayList<>(desk.due(found.all()));
        OrderFolder.Found<OrderFolder.Unloaded> free = desk.folder()
                .unloaded(desk.global().index(), it -> where.order(it).isEmpty());
        free.problems().forEach(desk.console()::error);
        Map<String, LocalDate> since = new LinkedHashMap<>();
        List<String> notOrdered = new ArrayList<>();
        for (OrderFolder.Unloaded roll : free.all()) {
            notOrdered.add(roll.roll());
            roll.on().ifPresent(it -> since.put(roll.roll(), it));
        }
        where.waiting(since, desk.clock().now().toLocalDate()).ifPresent(due::add);
        return new Listed(
                found.all(),
                notOrdered,
                due,
                found.problems().isEmpty() && free.problems().isEmpty());
    }

    private static Json.Obj json(Order order) {
        return Json.object()
                .and("order", order.order())
                .and("revision", order.revision())
                .and("madeAt", IsoTime.of(order.madeAt()))
                .and("withdrawn", order.withdrawn())
                .and("lab", order.lab().key())
                .and("reference", order.reference())
                .and(
                        "rolls",
                        order.rolls().stream()
                                .map(it -> Json.object()
                                        .and("roll", it.roll())
                                        .and("stage", order.stage(it.roll()).word())
                                        .and(
                                                "since",
                                                order.last(it.roll())
                                                        .map(step -> step.on().toString()))
                                        .and("labNumber", it.labNumber()))
                                .toList());
    }
}
