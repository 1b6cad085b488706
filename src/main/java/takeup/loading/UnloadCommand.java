package takeup.loading;

import java.util.List;
import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.day.CameraEvent;
import takeup.day.CameraPlace;
import takeup.day.DayEvent;
import takeup.history.JournalEntry;
import takeup.prompt.CommandRejected;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;

/** {@code unload}: finishes a roll. */
public final class UnloadCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("unload", "finishes the roll and writes its JSON")
            .form("unload", "finishes the roll; asks while frames are left")
            .form("unload yes", "the same without the question")
            .needs(Need.FILM);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        Optional<RollId> id = RollWords.named(arguments.rest(), context);
        List<String> rest = arguments
                .rest()
                .subList(id.isPresent() ? 1 : 0, arguments.rest().size());
        boolean isSure = rest.equals(List.of("yes"));
        if (!isSure) {
            Arguments.alone("unload", rest);
        }
        Roll roll = id.map(context::roll).orElseGet(context::roll);
        boolean isHere = context.state().rollInHand().map(Roll::id).equals(Optional.of(roll.id()));
        boolean isShared = roll.state() == Roll.State.OPEN
                && !context.state().rollIn(CameraPlace.of(roll)).equals(Optional.of(roll));
        if (!isHere && !isShared && roll.state() != Roll.State.REWOUND) {
            throw new CommandRejected(roll.id()
                    + (roll.state() == Roll.State.OPEN
                            ? " is in " + roll.place() + ": cam "
                                    + CameraPlace.of(roll).typed() + ", then unload"
                            : " is " + roll.state() + " already"));
        }
        Reply reply = context.reply(List.of(
                new JournalEntry.OnRoll(roll.id(), new RollEvent.Unloaded()),
                new JournalEntry.OnDay(new CameraEvent.CameraSetupChanged(
                        roll.camera().key(), context.state().inHand(roll.camera()))),
                new JournalEntry.OnDay(
                        new DayEvent.RollClosed(roll.id(), CameraPlace.of(roll), Optional.of(roll.film())))));
        Roll now = reply.roll(roll.id());
        Outcome.Accepted accepted = reply.event("unload")
                .says(
                        roll.id() + " finished",
                        ": " + now.framesUsed() + " of " + now.film().framesNominal() + " frames, "
                                + now.film().developmentWords() + ".")
                .saysOnceExported("Its JSON is exports/" + roll.id() + ".json.")
                .fields(RollWords.fields(now))
                .warningsBegun()
                .exports(List.of(roll.id()))
                .accepted();
        return roll.framesLeft() > 0 && !isSure
                ? new Outcome.NeedsConfirmation(
                        roll.framesLeft() + " left on " + roll.id() + ". Unload anyway? y/n", accepted)
                : accepted;
    }
}
