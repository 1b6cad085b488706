package takeup.framing;

import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.KnownNames;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.day.CameraEvent;
import takeup.day.CameraSetup;
import takeup.history.ShootState;
import takeup.prompt.FrameArguments;
import takeup.prompt.SceneWords;
import takeup.prompt.Tokens;
import takeup.report.SetupText;
import takeup.roll.Setting;

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
            .form("8 125 lens 28", "with another lens, which stays on")
            .form("8 125 with Anna, Ben at boathouse", "who is on it, and where")
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

    /** What may stand in front of a number: f/8, f8, b12s, x5, *5. */
    private static final List<String> SIGNS = List.of("f/", "f", "b", "x", "*");

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
        String number = withoutSign(first);
        boolean isPoint = number.startsWith(".") && number.length() > 1 && Tokens.isDigit(number.charAt(1));
        boolean isNumber = !number.isEmpty() && Tokens.isDigit(number.charAt(0));
        return isNumber || isPoint || (first.startsWith(".") || first.startsWith(",")) && first.length() > 1;
    }

    private static String withoutSign(String word) {
        for (String sign : SIGNS) {
            if (word.startsWith(sign)) {
                return word.substring(sign.length());
            }
        }
        return word;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        SceneWords scene = KnownNames.of(arguments.line(), context);
        Arguments head = scene.isNothing() ? arguments : Arguments.of(scene.head());
        context.roll();
        FrameArguments said = FrameArguments.ofFrame(
                this == SAME ? head.rest() : head.tokens().words(), context.camera(), context.setting());
        if (isApertureAlone(said, arguments, context)) {
            return aperture(said, context).accepted();
        }
        NewFrames frames = NewFrames.exposed(
                        context.setting().with(said.change()), said.count().orElse(1), arguments.note())
                .showing(scene);
        boolean isPointAlone = this == SAME && head.rest().isEmpty();
        if (said.change().lens().isPresent()) {
            return LensLine.of(said.change().lens().get(), frames, context).outcome(said.question());
        }
        return isPointAlone ? frames.reply(context).accepted() : frames.outcome(context, said.question());
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return before.get(before.size() - 1).equals("lens") ? Completions.lenses(state) : List.of("lens");
    }

    /** An aperture on a body whose time is not set yet: there is no frame in it. */
    private static boolean isApertureAlone(FrameArguments said, Arguments arguments, CommandContext context) {
        Setting setting = context.setting().with(said.change());
        return arguments.tokens().words().size() == 1
                && said.change().aperture().isPresent()
                && setting.time().isEmpty()
                && arguments.note().isEmpty()
                && !context.camera().isAutomatic();
    }

    private static Reply aperture(FrameArguments said, CommandContext context) {
        CameraSetup setup = context.state().inHand(context.camera()).with(said.change());
        return context.reply(new CameraEvent.CameraSetupChanged(context.camera().key(), setup))
                .says(
                        "Set on " + context.camera().key() + ": " + SetupText.of(setup),
                        ". No time is set yet, so nothing was logged: type the time too, 8 125, or a point for a frame"
                                + " without one.");
    }
}
