package takeup.cli;

import java.io.IOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.order.Wish;

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
        footer = {"", "A day's film: takeup order new, print the page it names, then takeup order mark ORD-001 sent."},
        subcommands = {
            OrderSubcommands.New.class,
            OrderSubcommands.AllOrders.class,
            OrderSubcommands.Show.class,
            OrderSubcommands.Parted.class,
            OrderSubcommands.Mark.class,
            OrderSubcommands.Number.class,
            OrderSubcommands.Withdraw.class,
            OrderSubcommands.Labs.class
        })
final class OrderSubcommands implements Callable<Integer> {
    @ParentCommand
    Subcommands commands;

    @Option(
            names = "--from",
            paramLabel = "DIR",
            scope = CommandLine.ScopeType.INHERIT,
            description = "A folder with roll JSON files instead of the data folder; its orders lie in orders in it.")
    String from;

    @Option(
            names = "--clock",
            paramLabel = "TIME",
            scope = CommandLine.ScopeType.INHERIT,
            description = "A time instead of now, such as 2026-09-14T09:30+02:00.")
    String clock;

    private OrderDesk desk() {
        return OrderDesk.of(commands, from, clock);
    }

    @Override
    public Integer call() throws IOException {
        return new OrderList(desk()).run(false);
    }

    @Command(
            name = "new",
            sortOptions = false,
            description = {
                "Collects finished rolls into an order, all that are in none if no ROLL is named, and writes "
                        + "its JSON and a page to print.",
                "It is looked at first. A roll without frames, a roll number that is there twice, a process "
                        + "that the film does not belong in and an index above the box speed without a push "
                        + "stop it until yes."
            },
            footer = {"", "A wish of the lab's profile is taken back with no words: --border \"\"."})
    static final class New implements Callable<Integer> {
        @ParentCommand
        OrderSubcommands order;

        @Parameters(paramLabel = "ROLL", arity = "0..*", description = "Rolls: R0007, r7, or 7.")
        List<String> rolls;

        @Option(names = "--without", paramLabel = "ROLL", description = "Leaves a roll out.")
        List<String> without;

        @Option(
                names = "--lab",
                paramLabel = "KEY",
                description = "The lab; else that of the last order, or your only one.")
        String lab;

        @Option(names = "--reference", paramLabel = "WORDS", description = "Your own words for the order.")
        String reference;

        @Option(names = "--scan-size", paramLabel = "WORDS", description = "One of the lab's scan sizes.")
        String scanSize;

        @Option(names = "--file-type", paramLabel = "WORDS", description = "One of the lab's file types.")
        String fileType;

        @Option(names = "--border", paramLabel = "WORDS", description = "The border of the scans: none, black.")
        String border;

        @Option(names = "--colour", paramLabel = "WORDS", description = "A preference in colour.")
        String colour;

        @Option(names = "--density", paramLabel = "WORDS", description = "A preference in density.")
        String density;

        @Option(
                names = "--test",
                description = "A test order: no density correction, so that the scans show the exposure.")
        boolean test;

        @Option(names = "--negatives", paramLabel = "WORDS", description = "What becomes of them: returned.")
        String negatives;

        @Option(names = "--cutting", paramLabel = "WORDS", description = "uncut, cut in sixes.")
        String cutting;

        @Option(names = "--sleeves", paramLabel = "WORDS", description = "sleeved, rolled.")
        String sleeves;

        @Option(names = "--prints", paramLabel = "WORDS", description = "Prints, and how many.")
        String prints;

        @Option(names = "--delivery", paramLabel = "WORDS", description = "How it comes back.")
        String delivery;

        @Option(names = "--notes", paramLabel = "WORDS", description = "Anything else.")
        String notes;

        @Option(
                names = "--flies",
                description = "The film travels by air: it is said on the sheet, and what to look out for here.")
        boolean flies;

        @Option(names = "--with-notes", description = "Your notes on the rolls go with the order; else they stay here.")
        boolean withNotes;

        @Option(names = "--with-client", description = "The client goes with the order; else it stays here.")
        boolean withClient;

        @Option(names = "--yes", description = "Orders all the same what would stop.")
        boolean yes;

        @Option(names = "--json", description = "The answer is the order as JSON (takeup schema order).")
        boolean json;

        Map<Wish, String> wishes() {
            Map<Wish, String> said = new EnumMap<>(Wish.class);
            String[] typed = {
                scanSize, fileType, border, colour, density, negatives, cutting, sleeves, prints, delivery, notes
            };
            for (Wish wish : Wish.values()) {
                if (typed[wish.ordinal()] != null) {
                    said.put(wish, typed[wish.ordinal()]);
                }
            }
            return said;
        }

        @Override
        public Integer call() throws IOException {
            return new OrderNew(order.desk(), this).run();
        }
    }

    @Command(name = "list", description = "Lists the orders, where their rolls are, and what is due.")
    static final class AllOrders implements Callable<Integer> {
        @ParentCommand
        OrderSubcommands order;

        @Option(names = "--json", description = "The answer is a JSON object.")
        boolean json;

        @Override
        public Integer call() throws IOException {
            return new OrderList(order.desk()).run(json);
        }
    }

    @Command(name = "show", sortOptions = false, description = "Prints an order.")
    static final class Show implements Callable<Integer> {
        @ParentCommand
        OrderSubcommands order;

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

        @Option(
                names = "--paper",
                paramLabel = "SIZE",
                description = "With --html: A4 or Letter; else as the lab's profile says.")
        String paper;

        @Option(names = "--with-frames", description = "With --html: a page for each roll with its frames.")
        boolean withFrames;

        @Option(names = "--with-notes", description = "With --with-frames: your notes on the frames too.")
        boolean withNotes;

        @Option(names = "-o", paramLabel = "FILE", description = "Writes it to a file.")
        String file;

        @Override
        public Integer call() throws IOException {
            return new OrderShow(order.desk(), this).run();
        }
    }

    @Command(
            name = "split",
            sortOptions = false,
            description = {
                "Parts the rolls of an order into two, to go in two parcels, best on two days.",
                "With moments, rolls that hold the same one travel apart; else odd and even rolls do, or the cameras."
            })
    static final class Parted implements Callable<Integer> {
        @ParentCommand
        OrderSubcommands order;

        @Parameters(paramLabel = "ORDER", description = "Its number: ORD-001, or 1.")
        String number;

        @Option(
                names = "--moment",
                paramLabel = "TIMES",
                description = "A moment that must not be lost, by the clock: \"16:30-16:45 prize-giving\", or with "
                        + "its date in front.")
        List<String> moments;

        @Option(
                names = "--by",
                paramLabel = "WHAT",
                description = "number: odd and even rolls travel apart. body: the cameras do.")
        String by;

        @Option(names = "--json", description = "The answer is a JSON object.")
        boolean json;

        @Override
        public Integer call() throws IOException {
            return new OrderSplit(order.desk(), this).run();
        }
    }

    @Command(
            name = "mark",
            description = "Says where an order is: sent, scans (they are back), negatives (they are back), or ordered "
                    + "(it is still here).")
    static final class Mark implements Callable<Integer> {
        @ParentCommand
        OrderSubcommands order;

        @Parameters(index = "0", paramLabel = "ORDER", description = "Its number: ORD-001, or 1.")
        String number;

        @Parameters(index = "1", paramLabel = "STAGE", description = "sent, scans, negatives, or ordered.")
        String stage;

        @Parameters(index = "2..*", paramLabel = "ROLL", description = "Some of its rolls; else all.")
        List<String> rolls;

        @Option(names = "--on", paramLabel = "DATE", description = "The day, such as 2026-09-14; else today.")
        String on;

        @Override
        public Integer call() throws IOException {
            return new OrderMark(order.desk()).mark(number, stage, rolls, on);
        }
    }

    @Command(name = "number", description = "Writes down the lab's own number of a roll.")
    static final class Number implements Callable<Integer> {
        @ParentCommand
        OrderSubcommands order;

        @Parameters(index = "0", paramLabel = "ORDER", description = "Its number: ORD-001, or 1.")
        String number;

        @Parameters(index = "1", paramLabel = "ROLL", description = "The roll: R0007, r7, or 7.")
        String roll;

        @Parameters(index = "2", paramLabel = "NUMBER", description = "The lab's number; \"\" takes it away.")
        String lab;

        @Override
        public Integer call() throws IOException {
            return new OrderMark(order.desk()).number(number, roll, lab);
        }
    }

    @Command(
            name = "withdraw",
            description = "Takes an order back that has not gone: its rolls are free for another. Its number is never "
                    + "given again.")
    static final class Withdraw implements Callable<Integer> {
        @ParentCommand
        OrderSubcommands order;

        @Parameters(paramLabel = "ORDER", description = "Its number: ORD-001, or 1.")
        String number;

        @Option(names = "--yes", description = "Also if it has gone to the lab.")
        boolean yes;

        @Override
        public Integer call() throws IOException {
            return new OrderMark(order.desk()).withdraw(number, yes);
        }
    }

    @Command(
            name = "labs",
            description = "Lists the labs that profiles describe: labs/KEY.json among your own profiles, and the "
                    + "shipped example.")
    static final class Labs implements Callable<Integer> {
        @ParentCommand
        OrderSubcommands order;

        @Override
        public Integer call() {
            return new OrderList(order.desk()).labs();
        }
    }
}
