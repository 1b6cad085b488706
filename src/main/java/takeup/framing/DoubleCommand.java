package takeup.framing;

import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;

/** {@code double}: the next exposure goes on the same frame. */
public final class DoubleCommand implements Command {
    public static final CommandInfo INFO =
            CommandInfo.of("double", "the next exposure goes on the same frame").needs(Need.FILM);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return FrameLog.doubled(context, arguments.rest());
    }
}
