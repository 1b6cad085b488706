package takeup.loading;

import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.day.DayEvent;
import takeup.prompt.LoadArguments;
import takeup.roll.Roll;
import takeup.roll.RollChange;
import takeup.roll.RollId;
import takeup.text.ClockText;
import takeup.text.Plain;

/** How the whole roll is developed: {@code push 1}, {@code pull 1}, {@code normal}. */
public enum DevelopmentCommand implements Command {
    PUSH(CommandInfo.of("push", "development of the whole roll, longer")
            .usage("push 1")
            .needs(Need.ANY_ROLL)),
    PULL(CommandInfo.of("pull", "development of the whole roll, shorter")
            .usage("pull 1")
            .needs(Need.ANY_ROLL)),
    NORMAL(CommandInfo.of("normal", "development as usual").needs(Need.ANY_ROLL));

    private final CommandInfo info;

    DevelopmentCommand(CommandInfo info) {
        this.info = info;
    }

    @Override
    public CommandInfo info() {
        return info;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        String word = info.word();
        if (this == NORMAL) {
            arguments.alone();
        }
        double stops = LoadArguments.push(word, this == NORMAL ? "" : arguments.one(word + " 1"));
        if (context.state().rollInHand().isEmpty()) {
            return ofUnloaded(stops, context);
        }
        return developed(context.roll(), stops, context);
    }

    private static Outcome.Accepted developed(Roll roll, double stops, CommandContext context) {
        return RollWords.corrected(
                roll,
                RollChange.push(stops),
                it -> ", the whole roll: " + it.film().developmentWords() + ".",
                context);
    }

    /** With no film in hand it is likely about the one that was unloaded just now: that is asked. */
    private Outcome ofUnloaded(double stops, CommandContext context) {
        Roll roll = lastUnloaded(context).map(context::roll).orElseGet(context::roll);
        String typed = info.word() + (this == NORMAL ? "" : " " + Plain.number(Math.abs(stops)));
        String since = roll.finishedAt().map(it -> " at " + ClockText.clock(it)).orElse("");
        return new Outcome.NeedsConfirmation(
                "No film in " + roll.place() + "; " + roll.id() + " was unloaded" + since + ". Is \"fix roll "
                        + roll.id() + " " + typed + "\" meant? y/n",
                developed(roll, stops, context));
    }

    /** The roll that came out of the place in hand last. */
    private static Optional<RollId> lastUnloaded(CommandContext context) {
        return context.state().history().withoutUndone().newestFirst().stream()
                .flatMap(it -> it.events(DayEvent.RollClosed.class))
                .filter(it ->
                        it.film().isPresent() && context.state().placeInHand().equals(Optional.of(it.place())))
                .map(DayEvent.RollClosed::roll)
                .findFirst();
    }
}
