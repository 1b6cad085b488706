package takeup.ordering;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.console.InTerminal;
import takeup.order.Order;

/** {@code takeup order withdraw}: takes an order back, so that its rolls can be ordered again. */
@Command(
        name = "withdraw",
        description = "Takes an order back that has not gone: its rolls are free for another. Its number is never "
                + "given again.",
        footer = {"", "For example:", "  takeup order withdraw 1"})
final class OrderWithdrawSubcommand implements Callable<Integer> {
    @ParentCommand
    OrderOptions order;

    @Parameters(paramLabel = "ORDER", description = "Its number: ORD-001, or 1.")
    String number;

    @Option(names = "--yes", description = "Also if it has gone to the lab.")
    boolean yes;

    @Override
    public Integer call() throws IOException {
        OrderDesk desk = order.desk();
        desk.order(number);
        return desk.alone(() -> {
            Order found = desk.standing(number);
            if (found.isSent() && !yes && !isConfirmed(desk, found)) {
                throw new CommandFailed(1, found.order() + " has gone to the lab: tell the lab, then say --yes");
            }
            desk.folder().save(found.asWithdrawn());
            desk.console().line(found.order() + " is withdrawn; its rolls can be ordered again");
            return 0;
        });
    }

    private static boolean isConfirmed(OrderDesk desk, Order found) {
        return InTerminal.saysYes(
                desk.console(),
                found.order() + " has gone to the lab. Withdraw it all the same? Type yes, or Enter for no.");
    }
}
