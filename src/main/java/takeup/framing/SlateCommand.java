package takeup.framing;

import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.ScreenAction;
import takeup.json.Json;
import takeup.prompt.CommandRejected;
import takeup.roll.Frame;
import takeup.roll.Roll;

/**
 * Lines about the slate: {@code slate} logs the frame that it is photographed on and shows it, {@code slate show} shows
 * it again.
 */
public final class SlateCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of(
                    "slate", "a sheet with the roll's number, to photograph as a frame")
            .usage("slate", "slate clock")
            .form("slate", "logs a frame and shows the sheet to photograph as it")
            .form("slate ; stroke side", "with a note")
            .form("slate show", "shows it again, logs nothing")
            .form("slate clock", "the time of day, for the digital camera to photograph; logs nothing")
            .needs(Need.FILM)
            .with(CommandInfo.Trait.TAKES_NOTE);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        if (arguments.rest().isEmpty()) {
            Outcome.Accepted logged = NewFrames.bare(Frame.Kind.SLATE, 1, arguments.note())
                    .reply(context)
                    .accepted();
            return logged.answering(logged.answer()
                            .saying(logged.answer().text() + " Photograph this sheet; undo takes it back."))
                    .showing(new ScreenAction.ShowSheet(ScreenAction.Sheet.SLATE));
        }
        String word = arguments.one("slate show");
        if (!word.equals("show") && !word.equals("clock")) {
            throw new CommandRejected(
                    "slate alone logs a frame and shows the sheet to photograph; slate show shows it again, "
                            + "slate clock the time of day");
        }
        if (arguments.note().isPresent()) {
            throw new CommandRejected("slate " + word + " logs nothing, so it takes no note");
        }
        if (word.equals("clock")) {
            return context.shows(
                    new ScreenAction.ShowSheet(ScreenAction.Sheet.CLOCK),
                    "state",
                    "The clock is on the screen for the digital camera; later: takeup digital --clock-picture FILE.",
                    Json.object().and("at", context.now()));
        }
        Roll roll = context.roll();
        Frame slate = roll.newest(Frame.Kind.SLATE)
                .orElseThrow(() -> new CommandRejected("no slate on " + roll.id() + " yet: slate logs one"));
        return context.shows(
                new ScreenAction.ShowSheet(ScreenAction.Sheet.SLATE),
                "state",
                "The slate of " + roll.id() + " is frame " + slate.number() + ".",
                Json.object().and("roll", roll.id()).and("frame", slate.number()));
    }
}
