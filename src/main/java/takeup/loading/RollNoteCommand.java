package takeup.loading;

import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;

/** {@code note the eight in two rows}: a note on a roll. */
public final class RollNoteCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("note", "a note on the roll")
            .usage("note the eight in two rows", "note r7 words")
            .form("note the eight in two rows", "a note on the roll in hand")
            .form("note r7 words", "on another roll")
            .needs(Need.ANY_ROLL)
            .with(CommandInfo.Trait.TAKES_NOTE);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return RollCommands.note(context, arguments);
    }
}
