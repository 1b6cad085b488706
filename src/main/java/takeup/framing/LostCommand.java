package takeup.framing;

import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.json.Json;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.SettingPatch;

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
        RollArguments typed = RollArguments.of(arguments.rest(), context, "lost r7 3");
        Roll roll = typed.roll();
        FrameRange range = FrameRange.of(Arguments.one("lost", typed.words(), "lost 7"), "lost 7")
                .on(roll);
        SettingPatch lost = SettingPatch.kind(Frame.Kind.LOST);
        SettingPatch change =
                arguments.note().map(it -> lost.and(SettingPatch.note(it))).orElse(lost);
        Reply reply = context.reply(context.on(roll, new RollEvent.Corrected(range.from(), range.to(), change)))
                .says(range.title() + " of " + roll.id() + " marked lost", "; what was set is kept.");
        Json.Obj fields = Json.object().and("frame", range.to()).and("kind", Frame.Kind.LOST);
        return Correction.finish(reply, roll, context, fields).accepted();
    }
}
