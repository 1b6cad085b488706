package takeup.framing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import takeup.advice.LoadChecks;
import takeup.command.CommandContext;
import takeup.command.FrameNumbering;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.day.DayEvent;
import takeup.exposure.FrameLight;
import takeup.exposure.Light;
import takeup.history.ClockShiftDetector;
import takeup.history.JournalEntry;
import takeup.kit.Warning;
import takeup.prompt.FrameArguments;
import takeup.prompt.SceneWords;
import takeup.report.ExposuresText;
import takeup.report.LoadCheckText;
import takeup.report.RollText;
import takeup.report.StaysOn;
import takeup.roll.ClockShift;
import takeup.roll.Exposure;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.FrameWarnings;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.Scene;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;
import takeup.text.English;

/**
 * New frames on the roll in hand: what each word that logs frames has in common.
 *
 * @param kind what they are
 * @param setting with what they were exposed
 * @param count how many
 * @param note on each of them
 * @param scene who and where, as far as the line says it
 */
record NewFrames(Frame.Kind kind, Setting setting, int count, Optional<String> note, SceneWords scene) {
    static NewFrames exposed(Setting setting, int count, Optional<String> note) {
        return new NewFrames(Frame.Kind.EXPOSED, setting, count, note, SceneWords.NOTHING);
    }

    /** Frames without a setting. */
    static NewFrames bare(Frame.Kind kind, int count, Optional<String> note) {
        return new NewFrames(kind, Setting.NONE, count, note, SceneWords.NOTHING);
    }

    /** With who and where. */
    NewFrames showing(SceneWords other) {
        return new NewFrames(kind, setting, count, note, other);
    }

    /** What they leave in hand: aperture, time, focal length and distance. */
    SettingPatch pair() {
        SettingPatch change = setting.aperture().isPresent()
                ? SettingPatch.aperture(setting.aperture().get())
                : SettingPatch.NOTHING;
        return setting.time().isPresent()
                ? change.and(SettingPatch.time(setting.time().get()))
                : change;
    }

    private boolean isExposed() {
        return kind == Frame.Kind.EXPOSED;
    }

    /** Writes the frames down, and what goes with them in the same step. */
    Reply reply(CommandContext context, List<JournalEntry> more) {
        Roll roll = context.roll();
        int again = isExposed() ? Math.min(count, roll.exposuresAwaited()) : 0;
        List<JournalEntry> entries = entries(roll, again, context);
        entries.addAll(more);
        Reply reply = context.reply(entries);
        Roll now = reply.roll(roll.id());
        Frame last = now.newest().orElseThrow();
        int added = count - again;
        String which = added == 0
                ? "Frame " + last.number() + " exposed again"
                : FrameNumbering.title(again > 0 ? last.number() - added : roll.next(), last.number());
        return reply.event("frame")
                .says(which + " on " + roll.id(), text(now, last) + stays(context))
                .fields(new FrameFields(now, last, this))
                .warnings(warnings(reply, now, context));
    }

    /** Writes the frames down; asked first where that is likely to be a slip of the fingers. */
    Outcome outcome(CommandContext context, Optional<String> question) {
        Roll before = context.roll();
        Reply reply = reply(context, List.of());
        int again = isExposed() ? Math.min(count, before.exposuresAwaited()) : 0;
        return reply.accepted()
                .askedFirst(
                        question.isPresent()
                                ? question
                                : FrameQuestion.of(count - again, before, reply.roll(before.id())));
    }

    Reply reply(CommandContext context) {
        return reply(context, List.of());
    }

    private List<JournalEntry> entries(Roll roll, int again, CommandContext context) {
        List<JournalEntry> entries = new ArrayList<>();
        ClockShiftDetector shifts = context.clockShifts();
        Optional<ClockShift> sinceAny = shifts.sinceFrameOrReading();
        if (sinceAny.isPresent()) {
            entries.add(new JournalEntry.OnDay(new DayEvent.ClockShifted(sinceAny.get())));
        }
        Optional<ClockShift> shift = shifts.sinceFrameOf(roll.id());
        Scene shown = shown(context.scene(roll));
        Setting set = roll.newest().isPresent()
                ? setting.orSame(roll.newest().get().exposure().setting())
                : setting;
        for (int i = 0; i < count; i++) {
            Exposure exposure = exposure(set, context).withClockShift(shift);
            shift = Optional.empty();
            int number = roll.next() + i - again;
            entries.add(new JournalEntry.OnRoll(
                    roll.id(),
                    i < again
                            ? new RollEvent.ExposedAgain(exposure, note)
                            : new RollEvent.Added(
                                    Frame.of(number, kind, exposure, note).showing(shown),
                                    RollEvent.Origin.LOGGED,
                                    OptionalInt.empty())));
        }
        if (again > 0 && !scene.isNothing()) {
            int open = roll.newest().orElseThrow().number();
            entries.add(new JournalEntry.OnRoll(roll.id(), new RollEvent.Corrected(open, open, scene.change())));
        }
        return entries;
    }

    /** A frame that was wasted shows nobody. */
    private Scene shown(Scene kept) {
        return kind == Frame.Kind.BLANK ? Scene.NONE.servingShoot(kept.shoot()) : scene.on(kept);
    }

    private Exposure exposure(Setting set, CommandContext context) {
        return isExposed()
                ? context.exposure(set)
                : new Exposure(Optional.of(context.now()), Setting.NONE, Optional.empty(), Optional.empty());
    }

    private String text(Roll now, Frame last) {
        String what = isExposed()
                ? FrameArguments.words(setting.aperture(), setting.time(), SettingPatch.NOTHING)
                : kind.toString();
        Optional<String> soFar = ExposuresText.soFar(now, last);
        String judged = ExposureResult.of(now, last).light().words();
        String whole = judged.isEmpty() ? missing(last) : judged;
        String words = soFar.isPresent() ? soFar.get() + " so far" : whole;
        String error = words.isEmpty() ? "" : ", " + words;
        return (what.isEmpty() ? "" : ": " + what) + error
                + (scene.isNothing() ? "" : ", " + scene.words())
                + (note.isPresent() ? "; " + note.get() : "") + ". " + English.capitalised(RollText.left(now)) + ".";
    }

    /** What an earlier day left on the camera is said with the first frame of this one. */
    private String stays(CommandContext context) {
        return isExposed() ? StaysOn.sentence(StaysOn.overnight(context.before(), context.state(), context.now())) : "";
    }

    private String missing(Frame last) {
        Exposure exposure = last.further().isEmpty()
                ? last.exposure()
                : last.further().get(last.further().size() - 1);
        return FrameLight.of(exposure.light(), setting.flash(), exposure.flashLight())
                .missing(setting.time());
    }

    private List<Warning> warnings(Reply reply, Roll now, CommandContext context) {
        List<Warning> warnings = new ArrayList<>(fresh(now, context));
        if (now.framesLeft() < -LoadChecks.PAST) {
            Optional<LoadChecks> look = LoadChecks.of(reply.after());
            if (look.isPresent()) {
                warnings.removeIf(one -> one.code() == Warning.Code.PAST_END);
                warnings.add(new Warning(Warning.Code.PAST_END, LoadCheckText.question(look.get())));
            }
        }
        return warnings;
    }

    /**
     * The warnings to be said with the newest frames: an old reading is old for all rolls, and said with one of them.
     */
    private List<Warning> fresh(Roll roll, CommandContext context) {
        List<Warning> newest =
                newest(roll, count, context.state().kit().fewLeft(roll.film().framesNominal()));
        List<Warning> fresh = new ArrayList<>();
        for (Warning warning : newest) {
            if (warning.code() != Warning.Code.STALE_LIGHT || !isStaleOnAnotherRoll(roll, context)) {
                fresh.add(warning);
            }
        }
        return fresh;
    }

    private static boolean isStaleOnAnotherRoll(Roll roll, CommandContext context) {
        Optional<Light> light = context.state().day().light();
        for (Roll other : context.state().rolls().values()) {
            for (Frame frame : other.id().equals(roll.id()) ? List.<Frame>of() : other.frames()) {
                if (isTakenIn(light, frame.exposure())
                        && frame.exposure().at().isPresent()
                        && FrameWarnings.isStale(
                                frame.exposure().light(), frame.exposure().at().get())) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean isTakenIn(Optional<Light> light, Exposure exposure) {
        return light.isPresent()
                && exposure.light().isPresent()
                && exposure.light().get().at().equals(light.get().at());
    }

    /** The warnings of the newest frames, each code once, in the words of the last. */
    static List<Warning> newest(Roll roll, int count, int few) {
        Map<Warning.Code, Warning> last = new EnumMap<>(Warning.Code.class);
        for (List<Warning> ofFrame : FrameWarnings.newest(roll, few, count)) {
            for (Warning warning : ofFrame) {
                last.put(warning.code(), warning);
            }
        }
        // A burst may run past the frame that the warning was about: what is left then is what counts.
        int left = roll.framesLeft();
        if (left < 0) {
            last.remove(Warning.Code.FRAMES_LEFT);
        } else if (left > 0 && last.containsKey(Warning.Code.FRAMES_LEFT)) {
            last.put(Warning.Code.FRAMES_LEFT, new Warning(Warning.Code.FRAMES_LEFT, left + " left"));
        }
        return List.copyOf(last.values());
    }
}
