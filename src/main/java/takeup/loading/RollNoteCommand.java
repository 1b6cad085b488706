package takeup.loading;

import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.prompt.CommandRejected;
import takeup.roll.NoteEvent;
import takeup.roll.Roll;
import takeup.roll.RollId;

/** {@code note the eight in two rows}: a note on a roll. */
public final class RollNoteCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("note", "a note on the roll")
            .usage("note the eight in two rows", "note r7 words")
            .form("note the eight in two rows", "a note on the roll in hand")
            .form("note r7 words", "on another roll")
            .needs(Need.ANY_ROLL)
            .with(CommandInfo.Trait.TAKES_NOTE);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        Optional<RollId> id = RollWords.named(arguments.rest(), context);
        Roll roll = context.roll(id, "note r7 words");
        String note = arguments.textAfterWords(id.isPresent() ? 2 : 1);
        if (note.isEmpty()) {
            throw new CommandRejected("the note is empty: note and the words");
        }
        Reply reply = context.reply(context.on(roll, new NoteEvent.Noted(note)));
        Roll now = reply.roll(roll.id());
        return reply.event("note")
                .says("Note on " + roll.id(), ": " + now.note().orElse("") + ".")
                .fields(CommandContext.fields(now).and("note", now.note()))
                .exports(context.rollsToExport(roll))
                .accepted();
    }
}
