package takeup.ordering;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import takeup.console.Console;
import takeup.files.OrderFolder;
import takeup.json.Json;
import takeup.json.JsonListText;
import takeup.order.Order;
import takeup.order.OrderTracker;
import takeup.text.IsoTime;

/** All orders, where their rolls are, and what is due. Only reads. */
final class OrderList {
    private final OrderDesk desk;
    /** Whether all could be read so far. */
    private boolean isWhole = true;

    OrderList(OrderDesk desk) {
        this.desk = desk;
    }

    /** Prints it for people; the exit status. */
    int print() throws IOException {
        List<Order> orders = orders();
        Console console = desk.console();
        if (orders.isEmpty()) {
            console.line("no order yet in " + desk.folder().orders());
        }
        for (Order order : orders) {
            console.line(order.order() + "  " + order.madeAt().toLocalDate() + "  "
                    + order.lab().name() + "  " + order.summary() + "  " + OrderDesk.where(order)
                    + order.reference().map(it -> "  " + it).orElse(""));
        }
        OrderTracker.FirstFew notOrdered = new OrderTracker.FirstFew();
        List<String> due = due(orders, notOrdered::add);
        notOrdered.words().ifPresent(it -> console.line("exposed, in no order: " + it));
        due.forEach(console::line);
        return isWhole ? 0 : 1;
    }

    /** Prints it as a JSON object; the exit status. */
    int printJson() throws IOException {
        List<Order> orders = orders();
        JsonListText notOrdered = desk.console()
                .json(
                        "orders",
                        Json.object()
                                .and(
                                        "orders",
                                        orders.stream().map(OrderList::json).toList()),
                        "notOrdered");
        List<String> due = due(orders, notOrdered::item);
        notOrdered.end(Json.object().and("due", due));
        return isWhole ? 0 : 1;
    }

    private List<Order> orders() {
        OrderFolder.Found<Order> found = desk.folder().allOrders();
        report(found.problems());
        return found.all();
    }

    private void report(List<String> problems) {
        problems.forEach(desk.console()::error);
        isWhole = isWhole && problems.isEmpty();
    }

    /**
     * What is due.
     *
     * @param notOrdered takes the number of each exposed roll that is in no order
     */
    private List<String> due(List<Order> orders, Consumer<String> notOrdered) throws IOException {
        OrderTracker where = new OrderTracker(orders);
        OrderTracker.Waiting waiting = where.waiting(desk.clock().now().toLocalDate());
        List<String> problems = desk.folder()
                .unloaded(desk.global().index(), it -> where.order(it).isEmpty(), roll -> {
                    notOrdered.accept(roll.roll());
                    roll.on().ifPresent(it -> waiting.add(roll.roll(), it));
                });
        report(problems);
        List<String> due = new ArrayList<>(desk.due(orders));
        waiting.sentence().ifPresent(due::add);
        return due;
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
