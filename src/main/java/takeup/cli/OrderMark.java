package takeup.cli;

import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import takeup.console.CommandFailed;
import takeup.console.InTerminal;
import takeup.order.Order;
import takeup.order.Stage;
import takeup.text.Nearest;

/** {@code takeup order mark}, {@code number} and {@code withdraw}: what became of an order. */
final class OrderMark {
    private final OrderDesk desk;

    OrderMark(OrderDesk desk) {
        this.desk = desk;
    }

    int mark(String number, String word, List<String> typed, String on) throws IOException {
        Stage stage = Stage.named(word)
                .orElseThrow(() -> new CommandFailed(
                        2,
                        word + " is no stage: " + String.join(", ", Stage.all())
                                + Nearest.question(word, Stage.all())));
        LocalDate day = day(on);
        OrderDesk.rollsOf(desk.order(number), typed);
        return desk.alone(() -> {
            Order order = standing(number);
            List<String> rolls = OrderDesk.rollsOf(order, typed);
            Order marked = order.with(new Order.Progress(stage, day, rolls));
            desk.folder().save(marked);
            desk.out()
                    .line(marked.order() + (rolls.isEmpty() ? "" : ", " + String.join(", ", rolls)) + ": "
                            + stage.where() + " since " + day);
            desk.due(List.of(marked)).forEach(desk.out()::line);
            return 0;
        });
    }

    private LocalDate day(String on) {
        try {
            return on == null ? desk.clock().now().toLocalDate() : LocalDate.parse(on);
        } catch (DateTimeException e) {
            throw new CommandFailed(2, on + " is no date, such as 2026-09-14");
        }
    }

    int number(String typed, String roll, String number) throws IOException {
        if (number.length() > 40) {
            throw new CommandFailed(2, "a lab's number has up to 40 characters");
        }
        OrderDesk.rollsOf(desk.order(typed), List.of(roll));
        return desk.alone(() -> {
            Order order = standing(typed);
            String id = OrderDesk.rollsOf(order, List.of(roll)).get(0);
            desk.folder().save(order.withLabNumber(id, number.strip()));
            desk.out()
                    .line(id
                            + (number.isBlank()
                                    ? " has no number of the lab's"
                                    : " is " + number.strip() + " at "
                                            + order.lab().name()));
            return 0;
        });
    }

    int withdraw(String typed, boolean yes) throws IOException {
        desk.order(typed);
        return desk.alone(() -> {
            Order order = standing(typed);
            if (order.isSent()
                    && !yes
                    && !InTerminal.saysYes(
                            desk.out(),
                            order.order()
                                    + " has gone to the lab. Withdraw it all the same? Type yes, or Enter for no.")) {
                throw new CommandFailed(1, order.order() + " has gone to the lab: tell the lab, then say --yes");
            }
            desk.folder().save(order.asWithdrawn());
            desk.out().line(order.order() + " is withdrawn; its rolls can be ordered again");
            return 0;
        });
    }

    private Order standing(String number) {
        Order order = desk.order(number);
        if (order.withdrawn()) {
            throw new CommandFailed(1, order.order() + " was withdrawn");
        }
        return order;
    }
}
