package takeup.framing;

import java.time.OffsetDateTime;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.FrameNumbering;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.json.Json;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.text.ClockText;

/** {@code counter 9}: what the counter of the camera shows. */
public final class CounterCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("counter", "the camera's counter shows 9 for the next frame")
            .usage("counter 9")
            .needs(Need.FILM);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        Roll roll = context.roll();
        int shown = FrameNumbering.number(arguments.one("counter 9"), "counter 9");
        int difference = shown - roll.next();
        Reply reply = context.reply(context.on(roll, new RollEvent.CounterShown(shown)))
                .says(
                        "The camera shows " + shown + ", "
                                + (difference == 0 ? "as the log does" : "the log came to " + roll.next()),
                        difference == 0
                                ? "."
                                : ": " + Math.abs(difference) + (difference > 0 ? " more" : " fewer")
                                        + " on the camera" + between(roll, context) + ". Next is frame "
                                        + shown + ".");
        Json.Obj fields = Json.object().and("frame", shown).and("shown", shown).and("expected", roll.next());
        return Correction.finish(reply, roll, context, fields).accepted();
    }

    /** When a difference came about: since the counter was looked at last, or since the loading. */
    private static String between(Roll roll, CommandContext context) {
        int last = roll.counterChecks().size() - 1;
        OffsetDateTime since =
                last < 0 ? roll.loadedAt() : roll.counterChecks().get(last).at();
        boolean isToday = since.toLocalDate().equals(context.now().toLocalDate());
        return "; it came about between " + (isToday ? "" : since.toLocalDate() + " ") + ClockText.clock(since)
                + (last < 0 ? " (loaded)" : " (the check before)") + " and " + ClockText.clock(context.now());
    }
}
