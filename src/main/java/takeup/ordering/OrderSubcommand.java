package takeup.ordering;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import takeup.options.GlobalOptions;
import takeup.options.JsonOption;

/**
 * {@code takeup order}: from exposed rolls to a parcel for the lab, and where it is. Without a word of its own it lists
 * the orders.
 */
@Command(
        name = "order",
        sortOptions = false,
        synopsisSubcommandLabel = "[COMMAND]",
        description = {
            "Orders for the lab: from exposed rolls to a sheet that goes with the film, and where each roll is.",
            "Alone it lists the orders."
        },
        footer = {
            "",
            "A day's film: takeup order new, print the page it names, then takeup order mark ORD-001 sent.",
            "",
            "For example:",
            "  takeup order",
            "  takeup order new --lab lab"
        },
        subcommands = {
            OrderNewSubcommand.class,
            OrderListSubcommand.class,
            OrderShowSubcommand.class,
            OrderSplitSubcommand.class,
            OrderMarkSubcommand.class,
            OrderNumberSubcommand.class,
            OrderWithdrawSubcommand.class,
            OrderSenderSubcommand.class,
            OrderLabsSubcommand.class
        })
public final class OrderSubcommand extends OrderOptions implements Callable<Integer> {
    /** The list of the orders with nothing but this. */
    public static Callable<Integer> list(GlobalOptions global, boolean isJson) {
        OrderListSubcommand list = new OrderListSubcommand();
        list.order = new OrderSubcommand();
        list.order.global = global;
        list.json = JsonOption.asked(isJson);
        return list;
    }

    @Override
    public Integer call() throws IOException {
        return new OrderList(desk()).print();
    }
}
