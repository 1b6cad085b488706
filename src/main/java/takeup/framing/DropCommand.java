package takeup.framing;

import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;

/** {@code drop 7}: a frame that never happened. */
public final class DropCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("drop", "frame 7 never happened; later ones are renumbered")
            .usage("drop 7")
            .form("drop 7", "frame 7 never happened; later ones are renumbered")
            .form("drop r2 7", "the same on another roll")
            .needs(Need.FRAME_OF_ANY_ROLL);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return Correction.drop(context, arguments.rest());
    }
}
