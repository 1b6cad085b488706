package takeup.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import takeup.console.CommandFailed;
import takeup.files.Version;
import takeup.order.ExposedRoll;
import takeup.order.Order;
import takeup.order.OrderCsv;
import takeup.order.OrderHtml;
import takeup.order.OrderText;
import takeup.order.OrderTracker;

/** {@code takeup order show}: an order to read, to print, or for another program. Only reads. */
final class OrderShow {
    private final OrderDesk desk;
    private final OrderSubcommands.Show typed;

    OrderShow(OrderDesk desk, OrderSubcommands.Show typed) {
        this.desk = desk;
        this.typed = typed;
    }

    int run() throws IOException {
        if ((typed.text ? 1 : 0) + (typed.json ? 1 : 0) + (typed.csv ? 1 : 0) + (typed.html ? 1 : 0) > 1) {
            throw new CommandFailed(2, "--text, --json, --csv or --html, one of them");
        }
        if (!typed.html && (typed.withFrames || typed.paper != null) || typed.withNotes && !typed.withFrames) {
            throw new CommandFailed(
                    2,
                    !typed.html ? "--paper and --with-frames go with --html" : "--with-notes goes with --with-frames");
        }
        String paper = typed.paper == null
                ? null
                : OrderHtml.PAPERS.stream()
                        .filter(it -> it.equalsIgnoreCase(typed.paper))
                        .findFirst()
                        .orElseThrow(() -> new CommandFailed(
                                2, typed.paper + " is no paper: " + String.join(", ", OrderHtml.PAPERS)));
        Order order = desk.order(typed.number);
        List<ExposedRoll> rolls = desk.rolls(order);
        List<String> corrected = order.withdrawn() ? List.of() : OrderTracker.corrected(order, rolls);
        String text = typed.json
                ? order.json(Version.number())
                : typed.csv
                        ? OrderCsv.of(order)
                        : typed.html
                                ? OrderHtml.of(
                                        order,
                                        paper == null ? order.lab().paper() : paper,
                                        typed.withFrames ? OrderHtml.of(order, rolls) : List.of(),
                                        typed.withNotes)
                                : OrderText.of(order);
        if (typed.file != null) {
            RollsSubcommand.write(Path.of(typed.file), text.getBytes(StandardCharsets.UTF_8));
        } else if (typed.json || typed.csv || typed.html) {
            desk.out().raw(text);
        } else {
            desk.out().lines(text);
        }
        corrected.forEach(desk.out()::error);
        if (typed.withFrames) {
            order.rolls().stream()
                    .map(it -> it.roll())
                    .filter(it -> rolls.stream().noneMatch(roll -> roll.roll().equals(it)))
                    .forEach(it -> desk.out().error(it + " cannot be read, so it has no page of frames"));
        }
        return 0;
    }
}
