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
import takeup.history.ShootState;
import takeup.prompt.CommandRejected;
import takeup.roll.Condition;
import takeup.roll.NoteEvent;
import takeup.roll.Roll;
import takeup.roll.RollId;

/** {@code condition torn at the rewind}: what the lab must know of a roll. */
public final class ConditionCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of(
                    "condition", "what the lab must know: torn, opened, stuck, partial")
            .usage("condition torn at the rewind")
            .form("condition torn at the rewind", "what the lab must know: torn, opened, stuck, partial")
            .form("condition r7 opened", "of another roll")
            .needs(Need.ANY_ROLL)
            .with(CommandInfo.Trait.TAKES_NOTE);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        Optional<RollId> id = RollWords.named(arguments.rest(), context);
        Roll roll = context.roll(id, "condition r7 torn");
        Optional<Condition.Kind> kind = arguments.rest().stream()
                .skip(id.isPresent() ? 1 : 0)
                .findFirst()
                .flatMap(Condition.Kind::named)
                .filter(it -> it != Condition.Kind.OTHER);
        String words = arguments.textAfterWords(1 + (id.isPresent() ? 1 : 0) + (kind.isPresent() ? 1 : 0));
        if (kind.isEmpty() && words.isEmpty()) {
            throw new CommandRejected("what must the lab know? condition torn, opened, stuck, partial, and words");
        }
        Condition condition = new Condition(
                kind.orElse(Condition.Kind.OTHER), Optional.of(words).filter(it -> !it.isEmpty()));
        Reply reply = context.reply(context.on(roll, new NoteEvent.ConditionNoted(condition)));
        return reply.event("fix")
                .says(
                        "Condition of " + roll.id(),
                        ": " + condition.kind()
                                + condition.words().map(it -> ", " + it).orElse("") + ". It goes to the lab.")
                .fields(CommandContext.fields(reply.roll(roll.id()))
                        .and("condition", condition.kind())
                        .and("words", condition.words()))
                .exports(context.rollsToExport(roll))
                .accepted();
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return List.of("torn", "opened", "stuck", "partial");
    }
}
