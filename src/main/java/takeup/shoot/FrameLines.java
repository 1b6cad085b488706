package takeup.shoot;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import takeup.exposure.Light;
import takeup.exposure.Stops;
import takeup.kit.Camera;
import takeup.kit.Json;
import takeup.kit.Warning;
import takeup.roll.Change;
import takeup.roll.ClockShift;
import takeup.roll.Exposure;
import takeup.roll.Frame;
import takeup.roll.FrameWarnings;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.Setting;
import takeup.roll.Verdict;

/**
 * Lines that log frames: {@code 4 125 ; bow seat}, {@code .}, {@code x5}, {@code blank x2}, {@code double}, and notes
 * on the newest one.
 */
final class FrameLines {
    private final Interpreter in;

    FrameLines(Interpreter in) {
        this.in = in;
    }

    Outcome read(Tokens tokens) {
        if (tokens.words().isEmpty()) {
            return note(tokens.note().orElse(""));
        }
        Roll roll = in.roll();
        Camera camera = in.camera();
        List<String> words = tokens.words();
        String first = words.get(0);
        boolean again = first.equals(".") || first.equals(",");
        FrameWords said = FrameWords.ofFrame(again ? words.subList(1, words.size()) : words, camera, in.setting());
        in.doubt(said.doubt());
        Setting setting = in.setting().with(said.change());
        return logged(roll, Frame.Kind.EXPOSED, setting, said.count().orElse(1), tokens.note());
    }

    Outcome wasted(Frame.Kind kind, List<String> rest, Optional<String> note) {
        return logged(in.roll(), kind, Setting.NONE, Interpreter.count(kind.toString(), rest), note);
    }

    /** The slate is photographed as a frame; the setting in hand stays for the frames after it. */
    Outcome.Does slate(Optional<String> note) {
        return logged(in.roll(), Frame.Kind.SLATE, Setting.NONE, 1, note);
    }

    /** A frame with the setting in hand, and what goes with it in the same step. */
    Outcome.Does exposed(Roll roll, Setting setting, String note, List<Entry> more) {
        return logged(roll, Frame.Kind.EXPOSED, setting, 1, Optional.of(note), more);
    }

    private Outcome.Does logged(Roll roll, Frame.Kind kind, Setting setting, int count, Optional<String> note) {
        return logged(roll, kind, setting, count, note, List.of());
    }

    private Outcome.Does logged(
            Roll roll, Frame.Kind kind, Setting setting, int count, Optional<String> note, List<Entry> more) {
        List<Entry> entries = new ArrayList<>();
        int number = roll.next();
        int left = count;
        Optional<ClockShift> shift = new ClockNotes(in).frame(roll, entries);
        if (roll.doubleAwaited() && kind == Frame.Kind.EXPOSED) {
            entries.add(new Entry.OnRoll(
                    roll.id(), new RollEvent.ExposedAgain(in.exposure(setting).met(shift), note)));
            shift = Optional.empty();
            left--;
        }
        boolean known = kind == Frame.Kind.EXPOSED;
        for (int i = 0; i < left; i++) {
            Exposure exposure = known
                    ? in.exposure(setting)
                    : new Exposure(Optional.of(in.now), Setting.NONE, Optional.empty(), Optional.empty());
            Frame frame = Frame.of(number + i, kind, exposure.met(shift), note);
            shift = Optional.empty();
            entries.add(
                    new Entry.OnRoll(roll.id(), new RollEvent.Added(frame, RollEvent.How.LOGGED, OptionalInt.empty())));
        }
        entries.addAll(more);
        Situation after = in.after(entries);
        Roll now = after.rolls().get(roll.id());
        Frame last = now.newest().orElseThrow();
        Verdict verdict = Verdict.of(now, last);
        int from = left < count ? last.number() - left : number;
        String which = left == 0
                ? "Frame " + last.number() + " exposed again"
                : Interpreter.upper(Interpreter.numbers(from, last.number()));
        String what = known ? FrameWords.words(setting.aperture(), setting.time(), Change.NOTHING) : kind.toString();
        String error = verdict.errorStops().isPresent()
                ? ", " + Stops.error(verdict.errorStops().getAsDouble())
                : "";
        String text = which + " on " + roll.id() + (what.isEmpty() ? "" : ": " + what) + error
                + note.map(it -> "; " + it).orElse("") + ". " + Interpreter.upper(State.leftWords(now)) + ".";
        Json.Obj fields = Json.object()
                .and("roll", now.id())
                .and("frame", last.number())
                .and("count", count)
                .and("framesLeft", now.framesLeft())
                .and("kind", kind)
                .and("aperture", known ? setting.aperture().map(Object::toString) : Optional.empty())
                .and("time", known ? setting.time().map(Object::toString) : Optional.empty())
                .and("errorStops", Asking.exact(verdict.errorStops()))
                .and("overBoxStops", Asking.exact(verdict.overBoxStops()));
        List<Warning> warnings = new ArrayList<>(fresh(now, count));
        Optional<Routine> asks = now.framesLeft() < -Routine.PAST ? Routine.of(after) : Optional.empty();
        asks.ifPresent(it -> {
            warnings.removeIf(one -> one.code() == Warning.Code.PAST_END);
            warnings.add(new Warning(Warning.Code.PAST_END, it.question()));
        });
        return in.does(entries, after, new Outcome.Answer("frame", text, fields, in.loud(warnings)), List.of());
    }

    /**
     * The warnings to be said with the newest frames: an old reading is old for all rolls, and said with one of them.
     */
    private List<Warning> fresh(Roll roll, int count) {
        List<Warning> newest =
                newest(roll, count, in.s.kit().fewLeft(roll.film().framesNominal()));
        if (newest.stream().noneMatch(it -> it.code() == Warning.Code.STALE_LIGHT)) {
            return newest;
        }
        Optional<OffsetDateTime> taken = in.s.day().light().map(Light::at);
        boolean said = in.s.rolls().values().stream()
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
    static List<Warning> newest(Roll roll, int count, int few) {
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
                .sorted(java.util.Comparator.comparing(Warning::code))
                .toList();
    }

    Outcome note(String words) {
        Roll roll = in.roll();
        if (words.isEmpty()) {
            throw new Refusal("the note is empty: ; and the words");
        }
        Frame frame = roll.newest()
                .orElseThrow(() -> new Refusal(
                        "no frame on " + roll.id() + " yet to write a note on; a note on the roll is note words"));
        String joined = Frame.joined(frame.note(), words);
        List<Entry> entries = in.on(roll, new RollEvent.Corrected(frame.number(), frame.number(), Change.note(joined)));
        Situation after = in.after(entries);
        Json.Obj fields = Interpreter.fields(after.rolls().get(roll.id()))
                .and("frame", frame.number())
                .and("note", joined);
        return in.does(
                entries,
                after,
                new Outcome.Answer(
                        "note",
                        "Note on frame " + frame.number() + " of " + roll.id() + ": " + joined + ".",
                        fields,
                        List.of()),
                List.of());
    }

    Outcome doubled(List<String> rest) {
        Interpreter.alone("double", rest);
        Roll roll = in.roll();
        Frame frame = roll.newest().orElseThrow(() -> new Refusal("no frame on " + roll.id() + " yet to expose twice"));
        if (roll.doubleAwaited()) {
            throw new Refusal("the next exposure goes on frame " + frame.number() + " already");
        }
        if (frame.kind() == Frame.Kind.BLANK) {
            throw new Refusal(
                    "frame " + frame.number() + " is blank: fix " + frame.number() + " exposed, if it was not");
        }
        List<Entry> entries = in.on(roll, new RollEvent.Doubled());
        Situation after = in.after(entries);
        return in.does(
                entries,
                after,
                new Outcome.Answer(
                        "fix",
                        "The next exposure goes on frame " + frame.number() + " of " + roll.id() + " again.",
                        Interpreter.fields(roll).and("frame", frame.number()).and("errorStops", OptionalDouble.empty()),
                        List.of()),
                List.of());
    }
}
