package takeup.framing;

import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.prompt.FrameArguments;
import takeup.prompt.Tokens;

/** A line that logs a frame: its numbers, {@code 4 125}, or a point for the same again. */
public enum FrameLineCommand implements Command {
    NUMBERS(CommandInfo.of("4 125", "one frame at f/4 and 1/125; what is left out stays as set")
            .usage("4 125 ; words")
            .form("4 125 ; bow seat", "f/4 at 1/125, with a note")
            .form("8", "another aperture, the time stays")
            .form("1/60", "another time, the aperture stays")
            .form("f32 1/2000", "beyond the rings: with its sign")
            .form("b12s", "bulb, 12 s by the watch")
            .form("8 4m10s", "long times; also 2min, 1h02m30s")
            .form("4 125 3m x5", "five frames, the subject 3 m away")
            .needs(Need.FILM)
            .with(CommandInfo.Trait.TAKES_NOTE, CommandInfo.Trait.IS_PAPER_LINE)),
    SAME(CommandInfo.of(".", "one more frame, or five, with the setting in hand")
            .usageText(".   or  x5", ".")
            .spelled(",")
            .form(".", "the same again; Space does it too")
            .form(". ; words", "the same again, with a note")
            .form("x5", "five more")
            .needs(Need.FILM)
            .with(CommandInfo.Trait.TAKES_NOTE));

    private final CommandInfo info;

    FrameLineCommand(CommandInfo info) {
        this.info = info;
    }

    @Override
    public CommandInfo info() {
        return info;
    }

    @Override
    public boolean takes(Tokens tokens) {
        return this == SAME ? Command.super.takes(tokens) : isNumbers(tokens);
    }

    private static boolean isNumbers(Tokens tokens) {
        if (tokens.words().isEmpty()) {
            return false;
        }
        String first = tokens.words().get(0);
        char c = first.charAt(0);
        int number = first.startsWith("f/") ? 2 : c == 'f' || c == 'b' || c == 'x' || c == '*' ? 1 : 0;
        boolean begins = first.length() > number && Tokens.isDigit(first.charAt(number));
        boolean point =
                first.length() > number + 1 && first.charAt(number) == '.' && Tokens.isDigit(first.charAt(number + 1));
        return begins || point || (c == '.' || c == ',') && first.length() > 1;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        List<String> words = arguments.tokens().words();
        context.roll();
        FrameArguments said =
                FrameArguments.ofFrame(this == SAME ? arguments.rest() : words, context.camera(), context.setting());
        return NewFrames.exposed(
                        context.setting().with(said.change()), said.count().orElse(1), arguments.note())
                .reply(context)
                .accepted()
                .unlessDoubted(said.doubt());
    }
}
