package takeup.framing;

import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.prompt.CommandRejected;
import takeup.prompt.Tokens;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.SettingPatch;

/** A note on the newest frame: {@code ; words} or {@code n words}. */
public enum FrameNoteCommand implements Command {
    SEMICOLON(CommandInfo.of(";", "a note on the newest frame")
            .usage("; words")
            .form("; words", "a note on the newest frame")
            .form("4 125 ; words", "a frame and its note in one line")
            .needs(Need.FRAME)
            .with(CommandInfo.Trait.TAKES_NOTE)),
    N(CommandInfo.of("n", "a note on the newest frame")
            .usage("n words")
            .needs(Need.FRAME)
            .with(CommandInfo.Trait.TAKES_NOTE));

    private final CommandInfo info;

    FrameNoteCommand(CommandInfo info) {
        this.info = info;
    }

    @Override
    public CommandInfo info() {
        return info;
    }

    @Override
    public boolean takes(Tokens tokens) {
        return this == N ? Command.super.takes(tokens) : tokens.words().isEmpty();
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        Roll roll = context.roll();
        String words =
                this == N ? arguments.textAfterWords(1) : arguments.note().orElse("");
        if (words.isEmpty()) {
            throw new CommandRejected("the note is empty: ; and the words");
        }
        Frame frame = roll.newest()
                .orElseThrow(() -> new CommandRejected(
                        "no frame on " + roll.id() + " yet to write a note on; a note on the roll is note words"));
        int number = frame.number();
        String joined = Frame.joined(frame.note(), words);
        Reply reply =
                context.reply(context.on(roll, new RollEvent.Corrected(number, number, SettingPatch.note(joined))));
        return reply.event("note")
                .says("Note on frame " + number + " of " + roll.id(), ": " + joined + ".")
                .fields(CommandContext.fields(reply.roll(roll.id()))
                        .and("frame", number)
                        .and("note", joined))
                .accepted();
    }
}
