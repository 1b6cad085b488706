package takeup.ordering;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;
import takeup.console.Console;
import takeup.files.LabFiles;
import takeup.order.Lab;

/** {@code takeup order labs}: the labs that profiles describe. Only reads. */
@Command(
        name = "labs",
        description = "Lists the labs that profiles describe: labs/KEY.json among your own profiles, and the "
                + "shipped example.",
        footer = {"", "For example:", "  takeup order labs"})
final class OrderLabsSubcommand implements Callable<Integer> {
    @ParentCommand
    OrderOptions order;

    @Override
    public Integer call() {
        OrderDesk desk = order.desk();
        Console console = desk.console();
        LabFiles labs = desk.labs();
        boolean isBad = false;
        for (String key : labs.keys()) {
            Lab.Read read = labs.lab(key);
            read.lab().ifPresent(it -> console.line(line(key, it)));
            read.problems().forEach(console::error);
            isBad |= read.lab().isEmpty();
        }
        console.line("a lab of your own is a file " + labs.own().resolve("KEY.json") + "; start from a copy of "
                + labs.shipped().resolve("lab.json"));
        return isBad ? 1 : 0;
    }

    private static String line(String key, Lab lab) {
        String scans = lab.scanSizes().isEmpty() ? "" : "  scans " + String.join(", ", lab.scanSizes());
        String processes = lab.processes().isEmpty()
                ? ""
                : "  processes " + String.join(", ", lab.processes().keySet());
        return key + "  " + lab.name() + scans + processes;
    }
}
