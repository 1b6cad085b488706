package takeup.framing;

import java.util.List;
import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.KnownNames;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.history.ShootState;
import takeup.kit.Filter;
import takeup.kit.Kit;
import takeup.loading.RollFix;
import takeup.prompt.CommandRejected;
import takeup.prompt.FrameArguments;
import takeup.prompt.SceneWords;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/** {@code fix 7 4 125}: what was wrong of frames, or of a roll. */
public final class FixCommand implements Command {
    private static final String EXAMPLES = "fix 7 4 125, fix 3-5 filter yellow, fix r7 2 8";

    public static final CommandInfo INFO = CommandInfo.of("fix", "corrects frames, or what was said of the roll")
            .usage("fix 7 4 125", "fix 3-5 filter yellow", "fix roll @400")
            .form("fix 7 4 125", "frame 7 was f/4 at 1/125")
            .form("fix 3-5 filter yellow", "frames 3 to 5 had the yellow filter")
            .form("fix 7 ; stroke seat", "another note")
            .form("fix 7 with Anna at boathouse", "who is on it, and where")
            .form("fix 7 blank", "frame 7 was none; also unlogged, exposed, slate")
            .form("fix r2 7 8", "a frame of another roll, also a finished one")
            .form("fix roll @400", "the roll's index was typed wrong")
            .form("fix roll r1 shoot Castle", "the roll belongs to another shoot")
            .needs(Need.FRAME_OF_ANY_ROLL)
            .with(CommandInfo.Trait.TAKES_NOTE);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        List<String> rest = arguments.rest();
        if (!rest.isEmpty() && rest.get(0).equals("roll")) {
            if (arguments.note().isPresent()) {
                throw new CommandRejected("a note on the roll is note and the words");
            }
            return RollFix.run(arguments, context);
        }
        SceneWords scene = KnownNames.of(arguments.line(), context);
        List<String> words =
                scene.isNothing() ? rest : Arguments.of(scene.head()).rest();
        RollArguments typed = RollArguments.of(words, context, "fix r7 2 8");
        Roll roll = typed.roll();
        FrameRange range = FrameRange.of(typed.word(0, "which frame, and what of it? " + EXAMPLES), EXAMPLES)
                .on(roll);
        Setting setting = frame(roll, range.from()).exposure().setting();
        Setting known = setting.lens().isPresent()
                ? setting
                : Correction.lens(roll, context)
                        .map(it -> setting.with(SettingPatch.lens(it)))
                        .orElse(setting);
        FrameArguments said = FrameArguments.ofCorrection(typed.from(1), roll.camera(), known);
        SettingPatch change = arguments
                .note()
                .map(it -> said.change().and(SettingPatch.note(it)))
                .orElse(said.change())
                .and(scene.change());
        if (change.isNothing()) {
            throw new CommandRejected("what is right for " + range + "? " + EXAMPLES);
        }
        Correction.refuseSettingOfBareFrame(said.change());
        boolean isLensTaken = change.aperture().isPresent()
                && change.lens().isEmpty()
                && setting.lens().isEmpty();
        SettingPatch full =
                isLensTaken ? change.and(known.lens().map(SettingPatch::lens).orElse(SettingPatch.NOTHING)) : change;
        Reply reply = context.reply(context.on(roll, new RollEvent.Corrected(range.from(), range.to(), full)));
        Roll now = reply.roll(roll.id());
        Frame after = frame(now, range.from());
        String right = range.isOne()
                ? FrameDescription.of(now, after)
                        + said.change().lens().map(it -> ", " + it.name()).orElse("")
                : FrameDescription.of(full);
        reply.says(range.title() + " of " + roll.id(), ": " + right + ".")
                .warnings(Correction.freshWarnings(Optional.of(roll), now, range));
        return Correction.finish(
                        reply,
                        roll,
                        context,
                        FrameDescription.fields(now, after).and("frame", range.to()))
                .accepted()
                .askedFirst(said.question());
    }

    private static Frame frame(Roll roll, int number) {
        return roll.frames().get(roll.indexOf(number));
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        String last = before.get(before.size() - 1);
        return switch (last) {
            case "filter" -> Filter.names();
            case "lens" -> Completions.lenses(state);
            case "flash", "tripod" -> Completions.ON_OFF;
            default ->
                Completions.with(
                        last.equals("roll") ? state.kit().keys(Kit.Sort.STOCKS) : List.of(),
                        "roll",
                        "filter",
                        "lens",
                        "bias",
                        "tube",
                        "flash",
                        "tripod",
                        "exposed",
                        "blank",
                        "unlogged",
                        "slate");
        };
    }
}
