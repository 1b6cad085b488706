package takeup.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.handoff.Schemas;
import takeup.options.GlobalOptions;
import takeup.text.Nearest;

/** {@code takeup schema}: the JSON Schema of what takeup writes. */
@Command(
        name = "schema",
        description = "Prints the JSON Schema of a document that takeup writes.",
        footer = {"", "For example:", "  takeup schema roll > roll.schema.json"})
final class SchemaSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Parameters(paramLabel = "NAME", description = "Which document: roll, order, frames.")
    String name;

    @Override
    public Integer call() {
        String schema = Schemas.named(name)
                .orElseThrow(() -> new CommandFailed(
                        2,
                        name + " is no document known here (" + String.join(", ", Schemas.names()) + ")"
                                + Nearest.question(name, Schemas.names())));
        global.console().raw(schema);
        return 0;
    }
}
