package takeup.framing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.FrameNumbering;
import takeup.command.KnownNames;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.history.JournalEntry;
import takeup.prompt.CommandRejected;
import takeup.prompt.FrameArguments;
import takeup.prompt.SceneWords;
import takeup.report.RollText;
import takeup.roll.Exposure;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.Scene;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;
import takeup.text.English;

/** {@code insert 7 4 125}: a frame that was forgotten. */
public final class InsertCommand implements Command {
    private static final String EXAMPLE = "insert 7 4 125";

    public static final CommandInfo INFO = CommandInfo.of("insert", "a frame was forgotten before frame 7")
            .usage("insert 7 4 125")
            .form("insert 7 4 125", "a frame was forgotten before frame 7")
            .form("insert r2 7 4 125", "the same on another roll")
            .form("insert 7 4 125 with Anna at boathouse", "who is on it, and where")
            .needs(Need.FRAME_OF_ANY_ROLL)
            .with(CommandInfo.Trait.TAKES_NOTE);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        SceneWords scene = KnownNames.of(arguments.line(), context);
        List<String> words = scene.isNothing()
                ? arguments.rest()
                : Arguments.of(scene.head()).rest();
        RollArguments typed = RollArguments.of(words, context, "insert r7 3 4 125");
        Roll roll = typed.roll();
        int number = FrameNumbering.number(typed.word(0, "before which frame? " + EXAMPLE), EXAMPLE);
        boolean isPassed = roll.isPassed(number);
        if (number != roll.next() && !isPassed) {
            new FrameRange(number, number).on(roll);
        }
        Setting bare = Correction.lens(roll, context)
                .map(it -> Setting.NONE.with(SettingPatch.lens(it)))
                .orElse(Setting.NONE);
        FrameArguments said = FrameArguments.ofInsertion(typed.from(1), roll.camera(), bare);
        Correction.refuseSettingOfBareFrame(said.change());
        Frame.Kind kind = said.change().kind().orElse(Frame.Kind.EXPOSED);
        Setting setting = kind == Frame.Kind.EXPOSED ? bare.with(said.change()) : Setting.NONE;
        int count = said.count().orElse(1);
        List<JournalEntry> entries = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            if (isPassed && !roll.isPassed(number + i)) {
                throw new CommandRejected(
                        "the counter went past " + English.count(i, "frame") + " from " + number + " on, not " + count);
            }
            Exposure exposure = new Exposure(Optional.empty(), setting, Optional.empty(), Optional.empty());
            OptionalInt before = roll.indexOf(number) < 0 ? OptionalInt.empty() : OptionalInt.of(number + i);
            entries.addAll(context.on(
                    roll,
                    new RollEvent.Added(
                            Frame.of(number + i, kind, exposure, arguments.note())
                                    .showing(scene.on(Scene.NONE)),
                            RollEvent.Origin.INSERTED,
                            before)));
        }
        Reply reply = context.reply(entries);
        Roll now = reply.roll(roll.id());
        Frame first = now.frames().get(now.indexOf(number));
        FrameRange range = new FrameRange(number, number + count - 1);
        reply.says(
                        range.title() + " put into " + roll.id(),
                        ": " + FrameDescription.of(now, first) + ". Next is frame " + now.next() + ", "
                                + RollText.left(now) + ".")
                .warnings(Correction.freshWarnings(Optional.empty(), now, range));
        return Correction.finish(reply, roll, context, FrameDescription.fields(now, first))
                .accepted()
                .askedFirst(said.question());
    }
}
