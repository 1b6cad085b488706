package takeup.cli;

import java.io.IOException;
import java.util.EnumSet;
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
import takeup.handoff.RollCsv;
import takeup.handoff.RollJson;
import takeup.handoff.RollPlainText;
import takeup.options.CsvOptions;
import takeup.options.GlobalOptions;
import takeup.options.OutputOption;
import takeup.options.RollArgument;
import takeup.roll.Roll;
import takeup.text.OpenDocument;

/** {@code takeup roll}: a roll to read and to hand on. Only reads. */
@Command(
        name = "roll",
        description = "Prints a roll, finished or open.",
        footer = {"", "For example:", "  takeup roll 1", "  takeup roll R0001 --csv -o R0001.csv"})
final class RollSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Parameters(paramLabel = "ROLL", description = "Its number: R0007, r7, or 7.")
    RollArgument roll;

    @Option(names = "--json", description = "As JSON (takeup schema roll).")
    boolean json;

    @Option(
            names = "--csv",
            description = "As CSV, a row a frame. JSON is the faithful form: in CSV a text that a spreadsheet "
                    + "would run gets a quote in front.")
    boolean csv;

    @Option(names = "--text", description = "As text to read; this is the default.")
    boolean text;

    @Option(
            names = "--with-client",
            description = "With --json: the words about the client too; otherwise they stay on this machine.")
    boolean withClient;

    @Option(
            names = "--with-releases",
            description = "With --json or as text: who signed a model release; otherwise that stays on this machine.")
    boolean withReleases;

    @Option(
            names = "--ods",
            description = "As an OpenDocument spreadsheet, with -o FILE: numbers are numbers, and words stay as they "
                    + "are.")
    boolean ods;

    @Mixin
    CsvOptions table;

    @Mixin
    OutputOption output;

    /** The command with nothing but these. */
    static RollSubcommand of(GlobalOptions global, RollArgument roll, boolean isJson) {
        RollSubcommand command = new RollSubcommand();
        command.global = global;
        command.roll = roll;
        command.json = isJson;
        command.table = new CsvOptions();
        command.output = new OutputOption();
        return command;
    }

    @Override
    public Integer call() throws IOException {
        if (Stream.of(json, csv, ods, text).filter(it -> it).count() > 1) {
            throw new CommandFailed(2, "--json, --csv, --ods or --text, one of them");
        }
        if (ods && !output.isFile()) {
            throw new CommandFailed(2, "--ods goes to a file: -o FILE.ods");
        }
        if (table.areGiven() && !csv) {
            throw new CommandFailed(2, "--separator, --decimal, --bom and --european go with --csv");
        }
        if (withClient && !json) {
            throw new CommandFailed(2, "--with-client goes with --json");
        }
        if (withReleases && (csv || ods)) {
            throw new CommandFailed(2, "--with-releases goes with --json or text");
        }
        RollArgument.Found found = roll.find(global);
        print(found.roll());
        return found.problems().isEmpty() ? 0 : 1;
    }

    private void print(Roll found) throws IOException {
        Console console = global.console();
        if (json) {
            output.exact(console, RollJson.text(found, Version.madeBy(global.archive()), asked()));
        } else if (ods) {
            output.bytes(OpenDocumentFile.of(RollCsv.of(found, Version.madeBy(global.archive()), new OpenDocument())));
        } else if (csv) {
            output.exact(console, RollCsv.of(found, Version.madeBy(global.archive()), table.format()));
        } else {
            output.text(console, withReleases ? RollPlainText.withReleases(found) : RollPlainText.of(found));
        }
    }

    private Set<RollJson.Private> asked() {
        Set<RollJson.Private> asked = EnumSet.noneOf(RollJson.Private.class);
        if (withClient) {
            asked.add(RollJson.Private.CLIENT);
        }
        if (withReleases) {
            asked.add(RollJson.Private.RELEASES);
        }
        return asked;
    }
}
