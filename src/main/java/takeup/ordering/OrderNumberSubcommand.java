package takeup.ordering;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.options.RollArgument;
import takeup.order.Order;

/** {@code takeup order number}: the number under which the lab keeps a roll. */
@Command(
        name = "number",
        description = "Writes down the lab's own number of a roll.",
        footer = {"", "For example:", "  takeup order number 1 R0001 4711"})
final class OrderNumberSubcommand implements Callable<Integer> {
    private static final int LONGEST = 40;

    @ParentCommand
    OrderOptions order;

    @Parameters(index = "0", paramLabel = "ORDER", description = "Its number: ORD-001, or 1.")
    String number;

    @Parameters(index = "1", paramLabel = "ROLL", description = "The roll: R0007, r7, or 7.")
    RollArgument roll;

    @Parameters(index = "2", paramLabel = "NUMBER", description = "The lab's number; \"\" takes it away.")
    String lab;

    @Override
    public Integer call() throws IOException {
        if (lab.length() > LONGEST) {
            throw new CommandFailed(2, "a lab's number has up to " + LONGEST + " characters");
        }
        OrderDesk desk = order.desk();
        desk.rollsOf(desk.order(number), List.of(roll));
        return desk.alone(() -> {
            Order found = desk.standing(number);
            String id = desk.rollsOf(found, List.of(roll)).get(0);
            desk.folder().save(found.withLabNumber(id, lab.strip()));
            desk.console()
                    .line(
                            lab.isBlank()
                                    ? id + " has no number of the lab's"
                                    : id + " is " + lab.strip() + " at "
                                            + found.lab().name());
            return 0;
        });
    }
}
