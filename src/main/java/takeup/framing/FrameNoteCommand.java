package takeup.framing;

import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.prompt.Tokens;

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
        return FrameLog.note(
                context,
                this == N ? arguments.textAfterWords(1) : arguments.note().orElse(""));
    }
}
