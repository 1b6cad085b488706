package takeup.framing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.FrameNumbering;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.day.CameraPlace;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Kit;
import takeup.loading.BackMove;
import takeup.prompt.CommandRejected;
import takeup.report.RollText;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollEvent;

/** {@code move 3-5 cam 645 2}: frames that were shot on another roll. */
public final class MoveCommand implements Command {
    private static final String EXAMPLE = "move 3-5 cam 645 2";

    public static final CommandInfo INFO = CommandInfo.of("move", "these frames were shot on that camera's roll")
            .usage("move 3-5 cam 645 2")
            .form("move 3 cam 645", "frame 3 was shot on the 645")
            .form("move 3-5 cam 645 2", "frames 3 to 5 were shot on that back")
            .form("move back 1 645 to 645leaf", "the back goes on another body, its roll and counter with it")
            .needs(Need.FRAME_OF_ANY_ROLL);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        if (!arguments.rest().isEmpty() && arguments.rest().get(0).equals("back")) {
            return BackMove.run(arguments.rest().subList(1, arguments.rest().size()), context);
        }
        Roll roll = context.roll();
        RollArguments typed = new RollArguments(roll, arguments.rest());
        FrameRange range = FrameRange.of(typed.word(0, "which frames, and to which camera? " + EXAMPLE), EXAMPLE);
        int size = typed.words().size();
        if (!typed.word(1, EXAMPLE).equals("cam") || size < 3 || size > 4) {
            throw new CommandRejected("to which camera? " + EXAMPLE);
        }
        CameraPlace place = context.place(typed.from(2));
        if (place.equals(CameraPlace.of(roll))) {
            throw new CommandRejected(roll.id() + " is in " + place + " already");
        }
        range.on(roll);
        Roll other = context.state()
                .rollIn(place)
                .orElseThrow(() -> new CommandRejected("no roll is in " + place + ": load one first, then move"));
        List<JournalEntry> entries = new ArrayList<>();
        int number = other.next();
        for (Frame frame : roll.frames().subList(roll.indexOf(range.from()), roll.indexOf(range.to()) + 1)) {
            entries.addAll(context.on(
                    other,
                    new RollEvent.Added(
                            frame.renumbered(number).showing(frame.scene().onRoll()),
                            RollEvent.Origin.MOVED,
                            OptionalInt.empty())));
            number++;
        }
        entries.addAll(context.on(roll, new RollEvent.Dropped(range.from(), range.to(), Optional.of(other.id()))));
        Reply reply = context.reply(entries);
        Roll left = reply.roll(roll.id());
        Roll now = reply.roll(other.id());
        Json.Obj fields = Json.object()
                .and("roll", roll.id())
                .and("framesLeft", left.framesLeft())
                .and("to", other.id())
                .and("frame", number - 1)
                .and("count", number - other.next());
        return reply.event("fix")
                .says(
                        range.title() + " of " + roll.id() + " moved to " + place + " as "
                                + FrameNumbering.words(other.next(), number - 1) + " of " + other.id(),
                        ". " + roll.id() + ": " + RollText.left(left) + ", " + other.id() + ": " + RollText.left(now)
                                + ".")
                .fields(fields)
                .accepted();
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        String last = before.get(before.size() - 1);
        if (last.equals("cam")
                || last.equals("to")
                || before.size() == 3 && before.get(1).equals("back")) {
            return state.kit().keys(Kit.Sort.CAMERAS);
        }
        return before.contains("back") ? List.of("to") : List.of("cam", "back");
    }
}
