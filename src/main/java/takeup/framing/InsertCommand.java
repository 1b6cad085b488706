package takeup.framing;

import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;

/** {@code insert 7 4 125}: a frame that was forgotten. */
public final class InsertCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("insert", "a frame was forgotten before frame 7")
            .usage("insert 7 4 125")
            .form("insert 7 4 125", "a frame was forgotten before frame 7")
            .form("insert r2 7 4 125", "the same on another roll")
            .needs(Need.FRAME_OF_ANY_ROLL)
            .with(CommandInfo.Trait.TAKES_NOTE);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return Correction.insert(context, arguments.rest(), arguments.note());
    }
}
