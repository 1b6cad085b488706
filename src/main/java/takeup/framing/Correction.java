package takeup.framing;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import takeup.command.CommandContext;
import takeup.command.Reply;
import takeup.json.Json;
import takeup.kit.Lens;
import takeup.kit.Warning;
import takeup.prompt.CommandRejected;
import takeup.roll.Frame;
import takeup.roll.FrameWarnings;
import takeup.roll.Roll;
import takeup.roll.SettingPatch;

/** What the words that put frames right have in common. */
final class Correction {
    private static final Set<Warning.Code> ABOUT_SETTINGS = EnumSet.of(
            Warning.Code.SYNC_SPEED,
            Warning.Code.OUT_OF_RANGE,
            Warning.Code.THIN,
            Warning.Code.DENSE,
            Warning.Code.DARK,
            Warning.Code.LIGHT,
            Warning.Code.RECIPROCITY_BEYOND,
            Warning.Code.RECIPROCITY,
            Warning.Code.HAND_HELD);

    private Correction() {}

    /** The answer about a roll, with its number and frames left before the other fields. */
    static Reply finish(Reply reply, Roll roll, CommandContext context, Json.Obj more) {
        Json.Obj fields = CommandContext.fields(reply.roll(roll.id()));
        more.fields().forEach(fields::and);
        return reply.event("fix").fields(fields).exports(context.rollsToExport(roll));
    }

    /** What must be said of frames that were put right, and was not true of them before; each code once. */
    static List<Warning> freshWarnings(Optional<Roll> before, Roll now, FrameRange range) {
        Map<Warning.Code, Warning> fresh = new EnumMap<>(Warning.Code.class);
        List<List<Warning>> old = before.map(FrameWarnings::of).orElse(List.of());
        List<List<Warning>> all = FrameWarnings.of(now);
        for (int number = range.from(); number <= range.to(); number++) {
            int at = number;
            int was = before.map(it -> it.indexOf(at)).orElse(-1);
            for (Warning warning : all.get(now.indexOf(number))) {
                if (ABOUT_SETTINGS.contains(warning.code())
                        && (was < 0 || !old.get(was).contains(warning))) {
                    fresh.put(warning.code(), warning);
                }
            }
        }
        return List.copyOf(fresh.values());
    }

    /** A frame that was wasted, or of which nothing is known, has no setting. */
    static void refuseSettingOfBareFrame(SettingPatch typed) {
        boolean isBare = typed.kind().equals(Optional.of(Frame.Kind.BLANK))
                || typed.kind().equals(Optional.of(Frame.Kind.UNLOGGED));
        if (isBare && !typed.equals(SettingPatch.kind(typed.kind().get()))) {
            throw new CommandRejected(typed.kind().get() + " says that there is no setting; leave out one of the two");
        }
    }

    /** The lens that is on the camera of a roll now, or the first that it has; empty for a camera without lenses. */
    static Optional<Lens> lens(Roll roll, CommandContext context) {
        return context.state()
                .inHand(roll.camera())
                .setting()
                .lens()
                .flatMap(it -> roll.camera().lens(it.key()))
                .or(() -> roll.camera().lenses().stream().findFirst());
    }
}
