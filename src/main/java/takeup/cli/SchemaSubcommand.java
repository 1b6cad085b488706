package takeup.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.handoff.FramesDdl;
import takeup.handoff.Schemas;
import takeup.options.GlobalOptions;
import takeup.text.Nearest;
import takeup.text.Padding;

/** {@code takeup schema}: the JSON Schema of what takeup writes. */
@Command(
        name = "schema",
        description = "Prints the JSON Schema of a document that takeup writes.",
        footer = {"", "For example:", "  takeup schema roll > roll.schema.json"})
final class SchemaSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Parameters(paramLabel = "NAME", arity = "0..1", description = "Which document; --list names them.")
    String name;

    @Option(names = "--list", description = "Lists all documents, each with its version.")
    boolean list;

    @Option(names = "--ddl", description = "With frames: its columns as the DDL of a table, for a query engine.")
    boolean ddl;

    @Override
    public Integer call() {
        if (list == (name != null)) {
            throw new CommandFailed(2, "takeup schema takes the name of a document, or --list");
        }
        if (list) {
            int widest = Schemas.names().stream().mapToInt(String::length).max().orElse(0);
            Schemas.names()
                    .forEach(it -> global.console()
                            .line(Padding.cell(it, widest + 2)
                                    + Padding.cell(Schemas.version(it), 5)
                                    + Schemas.purpose(it)));
            return 0;
        }
        if (ddl) {
            if (!name.equals("frames")) {
                throw new CommandFailed(2, "--ddl goes with frames: the other documents are no tables");
            }
            global.console().raw(FramesDdl.text());
            return 0;
        }
        String schema = Schemas.named(name)
                .orElseThrow(() -> new CommandFailed(
                        2,
                        name + " is no document known here" + Nearest.question(name, Schemas.names())
                                + "; takeup schema --list names them"));
        global.console().raw(schema);
        return 0;
    }
}
