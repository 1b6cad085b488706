package takeup.loading;

import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.history.JournalEntry;
import takeup.kit.FilmSize;
import takeup.prompt.CommandRejected;
import takeup.report.RollText;
import takeup.roll.Roll;
import takeup.roll.RollEvent;

/** {@code rewind}: a 35mm roll comes out before its end; {@link Reloading} goes on with it. */
public final class RewindCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of(
                    "rewind", "a 35mm roll comes out before its end; load r3 goes on with it")
            .form("rewind", "out of the camera with its tongue out; says what to write on the cassette")
            .form("load r3", "goes on with it: winds past what was exposed: cap the lens")
            .form("unload r3", "or closes it")
            .needs(Need.FILM);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        boolean isSure = arguments.rest().equals(List.of("yes"));
        if (!isSure) {
            arguments.alone();
        }
        Roll roll = context.roll();
        if (roll.film().size() != FilmSize.F135) {
            throw new CommandRejected(roll.id() + " is " + roll.film().size()
                    + ", which is wound on to its end and never back: unload finishes it");
        }
        Reply reply = context.reply(List.of(new JournalEntry.OnRoll(roll.id(), new RollEvent.Rewound())));
        Roll now = reply.roll(roll.id());
        int last = now.lastPassed();
        Outcome.Accepted accepted = reply.event("rewind")
                .says(
                        now.id() + " rewound after frame " + last + ", " + RollText.left(now),
                        ". Leave the tongue out, and write " + now.id() + " and " + last
                                + " on the cassette. Loaded again (load "
                                + now.id().typed() + "), it wants "
                                + Reloading.blanks(now) + " blank frames first.")
                .fields(CommandContext.fields(now)
                        .and("camera", now.camera().key())
                        .and("back", now.back())
                        .and("write", last)
                        .and("blanks", Reloading.blanks(now))
                        .and("state", now.state()))
                .warningsBegun()
                .accepted();
        return roll.framesLeft() <= 0 && !isSure
                ? new Outcome.NeedsConfirmation(
                        roll.id() + " is at its end: unload finishes it; yes rewinds it to be loaded again", accepted)
                : accepted;
    }
}
