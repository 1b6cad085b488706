package takeup.loading;

import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;

/** {@code unload}: finishes a roll. */
public final class UnloadCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("unload", "finishes the roll and writes its JSON")
            .form("unload", "finishes the roll; asks while frames are left")
            .form("unload yes", "the same without the question")
            .needs(Need.FILM);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return RollCommands.unload(context, arguments.rest());
    }
}
