package takeup.framing;

import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;

/** {@code lost 7}: a frame that is fogged or lost. */
public final class LostCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("lost", "frame 7 is fogged or lost")
            .usage("lost 7")
            .needs(Need.FRAME)
            .with(CommandInfo.Trait.TAKES_NOTE);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return Correction.lost(context, arguments.rest(), arguments.note());
    }
}
