package takeup.framing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import takeup.advice.LoadChecks;
import takeup.command.Arguments;
import takeup.command.CommandContext;
import takeup.command.FrameNumbering;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.day.PaperEvent;
import takeup.history.JournalEntry;
import takeup.prompt.CommandRejected;
import takeup.roll.Exposure;
import takeup.roll.Frame;
import takeup.roll.Place;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.Scene;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/**
 * The lines of a paper form that is being read: {@code 7 5.6 125 veil}. What a line says is taken, and nothing else;
 * times and light are not known. A line that does not fit is set aside as it was typed, and named at the end.
 */
public final class PaperForm {
    private PaperForm() {}

    /** Other words of the prompt are refused, so that none of them is taken for paper. */
    public static CommandRejected isBeingRead(CommandContext context) {
        return new CommandRejected("the paper of "
                + context.state().day().paper().orElseThrow().roll() + " is being read, a line a frame: done ends it");
    }

    public static Outcome line(Arguments arguments, CommandContext context) {
        Roll roll = context.roll(context.state().day().paper().orElseThrow().roll());
        try {
            return fitted(PaperLine.of(arguments, roll, context), roll, context);
        } catch (CommandRejected e) {
            return context.reply(new PaperEvent.PaperLineRejected(arguments.line()))
                    .event("paper")
                    .says("Set aside, kept as it is", ": " + e.getMessage() + ".")
                    .fields(CommandContext.fields(roll).and("fits", false).and("why", e.getMessage()))
                    .accepted();
        }
    }

    private static Outcome fitted(PaperLine line, Roll roll, CommandContext context) {
        int from = line.frames().from();
        int to = line.frames().to();
        int next = roll.next();
        if (to > roll.film().framesNominal() + LoadChecks.PAST + 1 && to >= next) {
            throw new CommandRejected("frame " + to + " is past the end of " + roll.id() + ", which has "
                    + roll.film().framesNominal());
        }
        List<JournalEntry> entries = new ArrayList<>();
        for (int number = next; number < from; number++) {
            entries.addAll(context.on(roll, added(number, SettingPatch.NOTHING, Optional.empty())));
        }
        for (int number = from; number <= to; number++) {
            entries.addAll(context.on(
                    roll,
                    number >= next || roll.isPassed(number)
                            ? added(number, line.change(), line.note())
                            : filled(number, line, roll)));
        }
        Reply reply = context.reply(entries);
        Roll now = reply.roll(roll.id());
        Frame last = now.frames().get(now.indexOf(to));
        Setting setting = last.exposure().setting();
        String gap = next < from ? " " + FrameNumbering.title(next, from - 1) + " not written down yet." : "";
        return reply.event("paper")
                .says(line.frames().title() + " of " + roll.id(), ": " + FrameDescription.of(now, last) + "." + gap)
                .fields(CommandContext.fields(now)
                        .and("frame", to)
                        .and("count", to - from + 1)
                        .and("kind", last.kind())
                        .and("aperture", setting.aperture().map(Object::toString))
                        .and("time", setting.time().map(Object::toString))
                        .and("fits", true))
                .exports(context.rollsToExport(roll))
                .accepted();
    }

    private static RollEvent added(int number, SettingPatch change, Optional<String> note) {
        boolean isSet = change.aperture().isPresent() || change.time().isPresent();
        Frame.Kind kind = change.kind().orElse(isSet ? Frame.Kind.EXPOSED : Frame.Kind.UNLOGGED);
        Setting setting = isSet ? Setting.NONE.with(change) : Setting.NONE;
        Scene scene = Scene.NONE
                .with(change.people().orElse(List.of()))
                .with(change.place().orElse(Place.UNKNOWN));
        Exposure exposure = new Exposure(Optional.empty(), setting, Optional.empty(), Optional.empty());
        return new RollEvent.Added(
                Frame.of(number, kind, exposure, note).showing(scene), RollEvent.Origin.INSERTED, OptionalInt.empty());
    }

    /** A frame that is there and waits for its values, as one that was tallied does. */
    private static RollEvent filled(int number, PaperLine line, Roll roll) {
        int at = roll.indexOf(number);
        if (at < 0) {
            throw new CommandRejected(roll.id() + " has no frame " + number);
        }
        Frame frame = roll.frames().get(at);
        Setting setting = frame.exposure().setting();
        boolean isOpen = frame.kind() == Frame.Kind.UNLOGGED
                || frame.kind() == Frame.Kind.EXPOSED
                        && setting.aperture().isEmpty()
                        && setting.time().isEmpty();
        if (!isOpen) {
            throw new CommandRejected(
                    "frame " + number + " of " + roll.id() + " is logged: " + FrameDescription.of(roll, frame)
                            + "; fix " + roll.id().typed() + " " + number + " puts it right");
        }
        return new RollEvent.Corrected(
                number,
                number,
                line.note().map(it -> line.change().and(SettingPatch.note(it))).orElse(line.change()));
    }
}
