package takeup.ordering;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;
import takeup.options.JsonOption;

/** {@code takeup order list}: all orders, where their rolls are, and what is due. Only reads. */
@Command(
        name = "list",
        description = "Lists the orders, where their rolls are, and what is due.",
        footer = {"", "For example:", "  takeup order list", "  takeup order list --json"})
final class OrderListSubcommand implements Callable<Integer> {
    @ParentCommand
    OrderOptions order;

    @Mixin
    JsonOption json;

    @Override
    public Integer call() throws IOException {
        OrderList list = new OrderList(order.desk());
        return json.isAsked() ? list.printJson() : list.print();
    }
}
