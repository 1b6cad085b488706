package takeup.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import takeup.files.OrderFolder;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.order.ExposedRoll;
import takeup.order.Lab;
import takeup.order.Order;
import takeup.order.OrderTracker;
import takeup.text.IsoTime;

/** {@code takeup order list} and {@code labs}: what there is, and what is due. Only reads. */
final class OrderList {
    private final OrderDesk desk;

    OrderList(OrderDesk desk) {
        this.desk = desk;
    }

    int run(boolean json) throws IOException {
        OrderFolder.Found<Order> found = desk.folder().allOrders();
        found.problems().forEach(desk.out()::error);
        OrderTracker where = new OrderTracker(found.all());
        List<String> due = new ArrayList<>(desk.due(found.all()));
        OrderFolder.Found<ExposedRoll> free =
                desk.folder().rolls(it -> where.order(it).isEmpty());
        free.problems().forEach(desk.out()::error);
        int days = found.all().isEmpty()
                ? Lab.WAIT
                : found.all().get(found.all().size() - 1).lab().sendWithinDays();
        Map<String, LocalDate> since = new LinkedHashMap<>();
        free.all().stream()
                .filter(ExposedRoll::isFinished)
                .forEach(it -> it.finishedAt().ifPresent(at -> since.put(it.roll(), at.toLocalDate())));
        where.waiting(since, desk.clock().now().toLocalDate(), days).ifPresent(due::add);
        List<String> exposed = free.all().stream()
                .filter(ExposedRoll::isFinished)
                .map(ExposedRoll::roll)
                .toList();
        if (json) {
            desk.out()
                    .raw(JsonText.pretty(Json.object()
                            .and(
                                    "orders",
                                    found.all().stream().map(OrderList::json).toList())
                            .and("notOrdered", exposed)
                            .and("due", due)));
        } else {
            if (found.all().isEmpty()) {
                desk.out().line("no order yet in " + desk.folder().orders());
            }
            for (Order order : found.all()) {
                desk.out()
                        .line(order.order() + "  " + order.madeAt().toLocalDate() + "  "
                                + order.lab().name() + "  " + order.summary() + "  " + OrderDesk.where(order)
                                + order.reference().map(it -> "  " + it).orElse(""));
            }
            if (!exposed.isEmpty()) {
                desk.out().line("exposed, in no order: " + String.join(", ", exposed));
            }
            due.forEach(desk.out()::line);
        }
        return found.problems().isEmpty() && free.problems().isEmpty() ? 0 : 1;
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

    int labs() {
        boolean bad = false;
        for (String key : desk.labs().keys()) {
            Lab.Read read = desk.labs().lab(key);
            read.lab()
                    .ifPresent(it -> desk.out()
                            .line(key + "  " + it.name()
                                    + (it.scanSizes().isEmpty() ? "" : "  scans " + String.join(", ", it.scanSizes()))
                                    + (it.processes().isEmpty()
                                            ? ""
                                            : "  processes "
                                                    + String.join(
                                                            ", ", it.processes().keySet()))));
            read.problems().forEach(desk.out()::error);
            bad |= read.lab().isEmpty();
        }
        desk.out()
                .line("a lab of your own is a file " + desk.labs().own().resolve("KEY.json") + "; start from a copy of "
                        + desk.labs().shipped().resolve("lab.json"));
        return bad ? 1 : 0;
    }
}
