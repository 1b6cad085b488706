package takeup.framing;

import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.json.Json;
import takeup.report.RollText;
import takeup.roll.Roll;
import takeup.roll.RollEvent;

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
        RollArguments typed = RollArguments.of(arguments.rest(), context, "drop r7 3");
        Roll roll = typed.roll();
        FrameRange range = FrameRange.of(Arguments.one("drop", typed.words(), "drop 7"), "drop 7")
                .on(roll);
        Reply reply =
                context.reply(context.on(roll, new RollEvent.Dropped(range.from(), range.to(), Optional.empty())));
        Roll now = reply.roll(roll.id());
        reply.says(
                range.title() + " of " + roll.id() + " dropped",
                "; later ones are renumbered. Next is frame " + now.next() + ", " + RollText.left(now) + ".");
        return Correction.finish(reply, roll, context, Json.object().and("frame", range.from()))
                .accepted();
    }
}
