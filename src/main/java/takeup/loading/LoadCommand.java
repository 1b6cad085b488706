package takeup.loading;

import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.history.ShootState;
import takeup.kit.Kit;

/** {@code load cn400 @200}: puts a film in, or a rewound roll again. */
public final class LoadCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("load", "puts a film in; without a stock the same as before")
            .usage("load cn400 @200", "load bw400 120 @800 push 1 frames 24")
            .form("load cn400", "at its usual index")
            .form("load cn400 @200", "at another index")
            .form("load bw400 @800 push 1", "to be pushed one stop")
            .form("load cn400 120 frames 15", "film size and frames, where they are not the usual ones")
            .form("load", "the same film again as in the roll before")
            .needs(Need.EMPTY_BACK)
            .with(CommandInfo.Trait.TAKES_PROCESS);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return RollCommands.load(context, arguments);
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return Completions.with(state.kit().keys(Kit.Sort.STOCKS), "push", "pull", "process", "frames");
    }
}
