package takeup.framing;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import takeup.advice.LoadChecks;
import takeup.command.Arguments;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.day.DayEvent;
import takeup.exposure.Light;
import takeup.exposure.Stops;
import takeup.history.ClockShiftDetector;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Camera;
import takeup.kit.Warning;
import takeup.prompt.CommandRejected;
import takeup.prompt.FrameArguments;
import takeup.prompt.Tokens;
import takeup.report.AdviceJson;
import takeup.report.LoadCheckText;
import takeup.report.RollText;
import takeup.roll.ClockShift;
import takeup.roll.Exposure;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.FrameWarnings;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;
import takeup.text.English;

/**
 * Lines that log frames: {@code 4 125 ; bow seat}, {@code .}, {@code x5}, {@code blank x2}, {@code double}, and notes
 * on the newest one.
 */
public final class FrameLog {
    static Outcome read(CommandContext context, Tokens tokens) {
        if (tokens.words().isEmpty()) {
            return note(context, tokens.note().orElse(""));
        }
        Roll roll = context.roll();
        Camera camera = context.camera();
        List<String> words = tokens.words();
        String first = words.get(0);
        boolean again = first.equals(".") || first.equals(",");
        FrameArguments said =
                FrameArguments.ofFrame(again ? words.subList(1, words.size()) : words, camera, context.setting());
        Setting setting = context.setting().with(said.change());
        return logged(context, roll, Frame.Kind.EXPOSED, setting, said.count().orElse(1), tokens.note())
                .unlessDoubted(said.doubt());
    }

    static Outcome wasted(CommandContext context, Frame.Kind kind, List<String> rest, Optional<String> note) {
        return logged(context, context.roll(), kind, Setting.NONE, CommandContext.count(kind.toString(), rest), note);
    }

    /** The slate is photographed as a frame; the setting in hand stays for the frames after it. */
    static Outcome.Accepted slate(CommandContext context, Optional<String> note) {
        return logged(context, context.roll(), Frame.Kind.SLATE, Setting.NONE, 1, note);
    }

    /** A frame with the setting in hand, and what goes with it in the same step. */
    static Outcome.Accepted exposed(
            CommandContext context, Roll roll, Setting setting, String note, List<JournalEntry> more) {
        return logged(context, roll, Frame.Kind.EXPOSED, setting, 1, Optional.of(note), more);
    }

    private static Outcome.Accepted logged(
            CommandContext context, Roll roll, Frame.Kind kind, Setting setting, int count, Optional<String> note) {
        return logged(context, roll, kind, setting, count, note, List.of());
    }

    private static Outcome.Accepted logged(
            CommandContext context,
            Roll roll,
            Frame.Kind kind,
            Setting setting,
            int count,
            Optional<String> note,
            List<JournalEntry> more) {
        List<JournalEntry> entries = new ArrayList<>();
        int number = roll.next();
        int left = count;
        ClockShiftDetector shifts = context.clockShifts();
        shifts.sinceFrameOrReading()
                .ifPresent(it -> entries.add(new JournalEntry.OnDay(new DayEvent.ClockShifted(it))));
        Optional<ClockShift> shift = shifts.sinceFrameOf(roll.id());
        if (roll.doubleAwaited() && kind == Frame.Kind.EXPOSED) {
            entries.add(new JournalEntry.OnRoll(
                    roll.id(),
                    new RollEvent.ExposedAgain(context.exposure(setting).met(shift), note)));
            shift = Optional.empty();
            left--;
        }
        boolean known = kind == Frame.Kind.EXPOSED;
        for (int i = 0; i < left; i++) {
            Exposure exposure = known
                    ? context.exposure(setting)
                    : new Exposure(Optional.of(context.now()), Setting.NONE, Optional.empty(), Optional.empty());
            Frame frame = Frame.of(number + i, kind, exposure.met(shift), note);
            shift = Optional.empty();
            entries.add(new JournalEntry.OnRoll(
                    roll.id(), new RollEvent.Added(frame, RollEvent.Origin.LOGGED, OptionalInt.empty())));
        }
        entries.addAll(more);
        ShootState after = context.after(entries);
        Roll now = after.rolls().get(roll.id());
        Frame last = now.newest().orElseThrow();
        ExposureResult verdict = ExposureResult.of(now, last);
        int from = left < count ? last.number() - left : number;
        String which = left == 0
                ? "Frame " + last.number() + " exposed again"
                : English.capitalised(CommandContext.numbers(from, last.number()));
        String what = known
                ? FrameArguments.words(setting.aperture(), setting.time(), SettingPatch.NOTHING)
                : kind.toString();
        String error = verdict.errorStops().isPresent()
                ? ", " + Stops.error(verdict.errorStops().getAsDouble())
                : "";
        String text = which + " on " + roll.id() + (what.isEmpty() ? "" : ": " + what) + error
                + note.map(it -> "; " + it).orElse("") + ". " + English.capitalised(RollText.left(now)) + ".";
        Json.Obj fields = Json.object()
                .and("roll", now.id())
                .and("frame", last.number())
                .and("count", count)
                .and("framesLeft", now.framesLeft())
                .and("kind", kind)
                .and("aperture", known ? setting.aperture().map(Object::toString) : Optional.empty())
                .and("time", known ? setting.time().map(Object::toString) : Optional.empty())
                .and("errorStops", AdviceJson.exact(verdict.errorStops()))
                .and("overBoxStops", AdviceJson.exact(verdict.overBoxStops()));
        List<Warning> warnings = new ArrayList<>(fresh(context, now, count));
        Optional<LoadChecks> asks = now.framesLeft() < -LoadChecks.PAST ? LoadChecks.of(after) : Optional.empty();
        asks.ifPresent(it -> {
            warnings.removeIf(one -> one.code() == Warning.Code.PAST_END);
            warnings.add(new Warning(Warning.Code.PAST_END, LoadCheckText.question(it)));
        });
        return context.does(
                entries, after, new Outcome.Answer("frame", text, fields, context.unsilenced(warnings)), List.of());
    }

    /**
     * The warnings to be said with the newest frames: an old reading is old for all rolls, and said with one of them.
     */
    private static List<Warning> fresh(CommandContext context, Roll roll, int count) {
        List<Warning> newest =
                newest(roll, count, context.state().kit().fewLeft(roll.film().framesNominal()));
        if (newest.stream().noneMatch(it -> it.code() == Warning.Code.STALE_LIGHT)) {
            return newest;
        }
        Optional<OffsetDateTime> taken = context.state().day().light().map(Light::at);
        boolean said = context.state().rolls().values().stream()
                .filter(it -> !it.id().equals(roll.id()))
                .flatMap(it -> it.frames().stream())
                .map(Frame::exposure)
                .anyMatch(it -> it.light().map(Light::at).equals(taken)
                        && it.at().isPresent()
                        && FrameWarnings.isStale(it.light(), it.at().get()));
        return newest.stream()
                .filter(it -> it.code() != Warning.Code.STALE_LIGHT || !said)
                .toList();
    }

    /** The warnings of the newest frames, each code once, in the words of the last. */
    public static List<Warning> newest(Roll roll, int count, int few) {
        Map<Warning.Code, Warning> last = new LinkedHashMap<>();
        for (List<Warning> one : FrameWarnings.newest(roll, few, count)) {
            one.forEach(it -> last.put(it.code(), it));
        }
        // A burst may run past the frame that the warning was about: what is left then is what counts.
        int left = roll.framesLeft();
        last.computeIfPresent(
                Warning.Code.FRAMES_LEFT,
                (code, it) -> left > 0 ? new Warning(code, left + " left") : left == 0 ? it : null);
        return last.values().stream()
                .sorted(Comparator.comparing(Warning::code))
                .toList();
    }

    static Outcome note(CommandContext context, String words) {
        Roll roll = context.roll();
        if (words.isEmpty()) {
            throw new CommandRejected("the note is empty: ; and the words");
        }
        Frame frame = roll.newest()
                .orElseThrow(() -> new CommandRejected(
                        "no frame on " + roll.id() + " yet to write a note on; a note on the roll is note words"));
        String joined = Frame.joined(frame.note(), words);
        List<JournalEntry> entries =
                context.on(roll, new RollEvent.Corrected(frame.number(), frame.number(), SettingPatch.note(joined)));
        ShootState after = context.after(entries);
        Json.Obj fields = CommandContext.fields(after.rolls().get(roll.id()))
                .and("frame", frame.number())
                .and("note", joined);
        return context.does(
                entries,
                after,
                new Outcome.Answer(
                        "note",
                        "Note on frame " + frame.number() + " of " + roll.id() + ": " + joined + ".",
                        fields,
                        List.of()),
                List.of());
    }

    static Outcome doubled(CommandContext context, List<String> rest) {
        Arguments.alone("double", rest);
        Roll roll = context.roll();
        Frame frame = roll.newest()
                .orElseThrow(() -> new CommandRejected("no frame on " + roll.id() + " yet to expose twice"));
        if (roll.doubleAwaited()) {
            throw new CommandRejected("the next exposure goes on frame " + frame.number() + " already");
        }
        if (frame.kind() == Frame.Kind.BLANK) {
            throw new CommandRejected(
                    "frame " + frame.number() + " is blank: fix " + frame.number() + " exposed, if it was not");
        }
        List<JournalEntry> entries = context.on(roll, new RollEvent.DoubleAnnounced());
        ShootState after = context.after(entries);
        return context.does(
                entries,
                after,
                new Outcome.Answer(
                        "fix",
                        "The next exposure goes on frame " + frame.number() + " of " + roll.id() + " again.",
                        CommandContext.fields(roll)
                                .and("frame", frame.number())
                                .and("errorStops", OptionalDouble.empty()),
                        List.of()),
                List.of());
    }
}
