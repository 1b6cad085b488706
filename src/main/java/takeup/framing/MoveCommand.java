package takeup.framing;

import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.history.ShootState;
import takeup.kit.Kit;

/** {@code move 3-5 cam 645 2}: frames that were shot on another roll. */
public final class MoveCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("move", "these frames were shot on that camera's roll")
            .usage("move 3-5 cam 645 2")
            .form("move 3 cam 645", "frame 3 was shot on the 645")
            .form("move 3-5 cam 645 2", "frames 3 to 5 were shot on that back")
            .needs(Need.FRAME_OF_ANY_ROLL);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return Correction.move(context, arguments.rest());
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return before.get(before.size() - 1).equals("cam") ? state.kit().keys(Kit.Sort.CAMERAS) : List.of("cam");
    }
}
