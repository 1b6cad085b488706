package takeup.ordering;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.files.Version;
import takeup.handoff.OpenDocumentFile;
import takeup.options.CsvOptions;
import takeup.options.OutputOption;
import takeup.options.PaperOption;
import takeup.order.ExposedRoll;
import takeup.order.Order;
import takeup.order.OrderCsv;
import takeup.order.OrderHtml;
import takeup.order.OrderText;
import takeup.order.OrderTracker;
import takeup.order.OrderedRoll;
import takeup.text.OpenDocument;

/** {@code takeup order show}: an order to read, to print, or for another program. Only reads. */
@Command(
        name = "show",
        sortOptions = false,
        description = "Prints an order.",
        footer = {
            "",
            "For example:",
            "  takeup order show 1",
            "  takeup order show 1 --html --with-frames -o order.html"
        })
final class OrderShowSubcommand implements Callable<Integer> {
    @ParentCommand
    OrderOptions order;

    @Parameters(paramLabel = "ORDER", description = "Its number: ORD-001, or 1.")
    String number;

    @Option(names = "--text", description = "As text to read; this is the default.")
    boolean text;

    @Option(names = "--json", description = "As JSON (takeup schema order).")
    boolean json;

    @Option(
            names = "--csv",
            description = "As CSV, a row a roll. JSON is the faithful form: in CSV a text that a spreadsheet "
                    + "would run gets a quote in front.")
    boolean csv;

    @Option(names = "--html", description = "As a page to print: the sheet, and labels for the rolls.")
    boolean html;

    @Mixin
    PaperOption paper;

    @Option(names = "--with-frames", description = "With --html: a page for each roll with its frames.")
    boolean withFrames;

    @Option(names = "--with-notes", description = "With --with-frames: your notes on the frames too.")
    boolean withNotes;

    @Option(
            names = "--ods",
            description = "As an OpenDocument spreadsheet, with -o FILE: numbers are numbers, and words stay as they "
                    + "are.")
    boolean ods;

    @Mixin
    CsvOptions table;

    @Mixin
    OutputOption output;

    @Override
    public Integer call() throws IOException {
        refuseWhatDoesNotGoTogether();
        paper.size();
        OrderDesk desk = order.desk();
        Console console = desk.console();
        Order shown = desk.order(number);
        List<ExposedRoll> rolls = desk.rolls(shown);
        if (json) {
            output.exact(console, shown.json(Version.number()));
        } else if (ods) {
            output.bytes(OpenDocumentFile.of(OrderCsv.of(shown, new OpenDocument())));
        } else if (csv) {
            output.exact(console, OrderCsv.of(shown, table.format()));
        } else if (html) {
            List<ExposedRoll> pages = withFrames ? shown.rollsAmong(rolls) : List.of();
            output.exact(
                    console,
                    OrderHtml.of(shown, paper(shown), pages, withNotes ? Set.of(OrderedRoll.Extra.NOTES) : Set.of()));
        } else {
            output.text(console, OrderText.of(shown));
        }
        if (!shown.withdrawn()) {
            OrderTracker.corrected(shown, rolls).forEach(console::error);
        }
        if (withFrames) {
            shown.rolls().stream()
                    .map(OrderedRoll::roll)
                    .filter(it -> rolls.stream().noneMatch(roll -> roll.roll().equals(it)))
                    .forEach(it -> console.error(it + " cannot be read, so it has no page of frames"));
        }
        return 0;
    }

    private void refuseWhatDoesNotGoTogether() {
        if (Stream.of(text, json, csv, ods, html).filter(it -> it).count() > 1) {
            throw new CommandFailed(2, "--text, --json, --csv, --ods or --html, one of them");
        }
        if (ods && !output.isFile()) {
            throw new CommandFailed(2, "--ods goes to a file: -o FILE.ods");
        }
        if (table.areGiven() && !csv) {
            throw new CommandFailed(2, "--separator, --decimal, --bom and --european go with --csv");
        }
        if (!html && (withFrames || paper.isGiven())) {
            throw new CommandFailed(2, "--paper and --with-frames go with --html");
        }
        if (withNotes && !withFrames) {
            throw new CommandFailed(
                    2, html ? "--with-notes goes with --with-frames" : "--paper and --with-frames go with --html");
        }
    }

    private String paper(Order shown) {
        return paper.size().orElse(shown.lab().paper());
    }
}
