package takeup.framing;

import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.history.ShootState;
import takeup.kit.Filter;
import takeup.kit.Kit;

/** {@code fix 7 4 125}: what was wrong of frames, or of a roll. */
public final class FixCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("fix", "corrects frames, or what was said of the roll")
            .usage("fix 7 4 125", "fix 3-5 filter yellow", "fix roll @400")
            .form("fix 7 4 125", "frame 7 was f/4 at 1/125")
            .form("fix 3-5 filter yellow", "frames 3 to 5 had the yellow filter")
            .form("fix 7 ; stroke seat", "another note")
            .form("fix 7 blank", "frame 7 was none; also unlogged, exposed, slate")
            .form("fix r2 7 8", "a frame of another roll, also a finished one")
            .form("fix roll @400", "the roll's index was typed wrong")
            .needs(Need.FRAME_OF_ANY_ROLL)
            .with(CommandInfo.Trait.TAKES_NOTE);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return Correction.fix(context, arguments, arguments.rest(), arguments.note());
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        String last = before.get(before.size() - 1);
        return switch (last) {
            case "filter" -> Filter.names();
            case "lens" -> Completions.lenses(state);
            case "flash", "tripod" -> Completions.ON_OFF;
            default ->
                Completions.with(
                        last.equals("roll") ? state.kit().keys(Kit.Sort.STOCKS) : List.of(),
                        "roll",
                        "filter",
                        "lens",
                        "bias",
                        "tube",
                        "flash",
                        "tripod",
                        "exposed",
                        "blank",
                        "unlogged",
                        "slate");
        };
    }
}
