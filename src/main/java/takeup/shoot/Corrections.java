package takeup.shoot;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import takeup.day.Place;
import takeup.exposure.Stops;
import takeup.kit.Filter;
import takeup.kit.Json;
import takeup.kit.Lens;
import takeup.kit.Warning;
import takeup.roll.Change;
import takeup.roll.Exposure;
import takeup.roll.Frame;
import takeup.roll.FrameWarnings;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.Setting;
import takeup.roll.Verdict;

/** Lines that put frames right: fix, insert, drop, move, lost, counter. */
final class Corrections {
    private static final Set<Warning.Code> ABOUT_SETTINGS = EnumSet.of(
            Warning.Code.SYNC_SPEED,
            Warning.Code.OUT_OF_RANGE,
            Warning.Code.THIN,
            Warning.Code.DENSE,
            Warning.Code.RECIPROCITY_BEYOND,
            Warning.Code.RECIPROCITY,
            Warning.Code.HAND_HELD);

    private final Interpreter in;

    Corrections(Interpreter in) {
        this.in = in;
    }

    /** A frame or a row of frames: {@code 7}, {@code 3-5}. */
    private record Range(int from, int to) {
        static Range of(String word, String what) {
            int dash = word.indexOf('-');
            if (dash <= 0) {
                int number = Interpreter.number(word, what);
                return new Range(number, number);
            }
            int from = Interpreter.number(word.substring(0, dash), what);
            int to = Interpreter.number(word.substring(dash + 1), what);
            if (to < from) {
                throw new Refusal(word + " runs backwards: " + to + "-" + from);
            }
            return new Range(from, to);
        }
    }

    private static String word(List<String> words, int at, String what) {
        if (words.size() <= at) {
            throw new Refusal(what);
        }
        return words.get(at);
    }

    private static void must(Roll roll, Range range) {
        for (int number = range.from; number <= range.to; number++) {
            if (roll.indexOf(number) < 0) {
                throw new Refusal(roll.id() + " has no frame " + number
                        + (roll.isPassed(number)
                                ? ", which the counter went past: insert " + number + " and what was set writes it down"
                                : roll.frames().isEmpty()
                                        ? ": none is logged yet"
                                        : "; it holds "
                                                + Interpreter.numbers(
                                                        roll.frames().get(0).number(),
                                                        roll.frames()
                                                                .get(roll.frames()
                                                                                .size()
                                                                        - 1)
                                                                .number())));
            }
        }
    }

    private Outcome done(Roll roll, List<Entry> entries, String text, Json.Obj more, List<Warning> warnings) {
        Situation after = in.after(entries);
        Roll now = after.rolls().get(roll.id());
        Json.Obj fields = Interpreter.fields(now);
        more.fields().forEach(fields::and);
        return in.does(entries, after, new Outcome.Answer("fix", text, fields, in.loud(warnings)), in.settling(roll));
    }

    /** What is to be said of frames that were put right, and was not said of them before; each code once. */
    private static List<Warning> fresh(Optional<Roll> before, Roll now, Range range) {
        Map<Warning.Code, Warning> fresh = new EnumMap<>(Warning.Code.class);
        List<List<Warning>> old = before.map(FrameWarnings::of).orElse(List.of());
        List<List<Warning>> all = FrameWarnings.of(now);
        for (int number = range.from; number <= range.to; number++) {
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

    Outcome fix(List<String> rest, Optional<String> note) {
        if (!rest.isEmpty() && rest.get(0).equals("roll")) {
            if (note.isPresent()) {
                throw new Refusal("a note on the roll is note and the words");
            }
            return new RollLines(in).fix(rest.subList(1, rest.size()));
        }
        String what = "fix 7 4 125, fix 3-5 filter yellow, fix r7 2 8";
        Optional<RollId> id = in.rollNumber(rest);
        Roll roll = in.roll(id, "fix r7 2 8");
        List<String> words = rest.subList(id.isPresent() ? 1 : 0, rest.size());
        Range range = Range.of(word(words, 0, "which frame, and what of it? " + what), what);
        must(roll, range);
        Frame first = roll.frames().get(roll.indexOf(range.from));
        Setting setting = first.exposure().setting();
        Setting known = setting.lens().isPresent() || roll.camera().lenses().isEmpty()
                ? setting
                : setting.with(Change.lens(lensOf(roll)));
        FrameWords said = FrameWords.ofCorrection(words.subList(1, words.size()), roll.camera(), known);
        in.doubt(said.doubt());
        Change change = note.isPresent() ? said.change().and(Change.note(note.get())) : said.change();
        if (change.isNothing()) {
            throw new Refusal("what is right for " + Interpreter.numbers(range.from, range.to) + "? " + what);
        }
        if (change.aperture().isPresent()
                && change.lens().isEmpty()
                && setting.lens().isEmpty()) {
            change = change.and(known.lens().map(Change::lens).orElse(Change.NOTHING));
        }
        wasted(said.change());
        List<Entry> entries = in.on(roll, new RollEvent.Corrected(range.from, range.to, change));
        Roll now = in.after(entries).rolls().get(roll.id());
        Frame after = now.frames().get(now.indexOf(range.from));
        String right = range.from == range.to
                ? words(now, after)
                        + said.change().lens().map(it -> ", " + it.name()).orElse("")
                : words(change);
        return done(
                roll,
                entries,
                Interpreter.upper(Interpreter.numbers(range.from, range.to)) + " of " + roll.id() + ": " + right + ".",
                frameFields(now, after).and("frame", range.to),
                fresh(Optional.of(roll), now, range));
    }

    /** A frame that was wasted, or of which nothing is known, has no setting. */
    private static void wasted(Change said) {
        boolean bare = said.kind().equals(Optional.of(Frame.Kind.BLANK))
                || said.kind().equals(Optional.of(Frame.Kind.UNLOGGED));
        if (bare && !said.equals(Change.kind(said.kind().get()))) {
            throw new Refusal(said.kind().get() + " says that there is no setting; leave out one of the two");
        }
    }

    Lens lensOf(Roll roll) {
        return in.s.inHand(roll.camera())
                .setting()
                .lens()
                .flatMap(it -> roll.camera().lens(it.key()))
                .orElse(roll.camera().lenses().get(0));
    }

    /** A frame in words. */
    static String words(Roll roll, Frame frame) {
        Setting setting = frame.exposure().setting();
        String pair = FrameWords.words(setting.aperture(), setting.time(), Change.NOTHING);
        String error = Verdict.of(roll, frame).errorStops().stream()
                .mapToObj(Stops::error)
                .findFirst()
                .orElse("");
        List<String> parts = new ArrayList<>();
        if (frame.kind() != Frame.Kind.EXPOSED) {
            parts.add(frame.kind().toString());
        }
        if (!pair.isEmpty()) {
            parts.add(pair);
        } else if (frame.kind() == Frame.Kind.EXPOSED) {
            parts.add("setting not known");
        }
        State.words(new takeup.day.InHand(setting, Optional.empty()))
                .forEach(it -> parts.add(it.toLowerCase(Locale.ROOT)));
        if (!error.isEmpty()) {
            parts.add(error);
        }
        frame.note().ifPresent(parts::add);
        return String.join(", ", parts);
    }

    /** What was put right, in words: of several frames it says nothing else. */
    private static String words(Change change) {
        List<String> parts = new ArrayList<>();
        change.kind().ifPresent(it -> parts.add(it.toString()));
        parts.add(FrameWords.words(change.aperture(), change.time(), change));
        change.lens().ifPresent(it -> parts.add(it.name()));
        change.filters()
                .ifPresent(it -> parts.add(
                        it.isEmpty()
                                ? "no filter"
                                : "filter "
                                        + String.join(
                                                " and ",
                                                it.stream().map(Filter::name).toList())));
        change.extension().ifPresent(it -> parts.add(it.toString()));
        change.biasStops().ifPresent(it -> parts.add(it == 0 ? "no bias" : "bias " + State.bias(it)));
        change.flash().ifPresent(it -> parts.add(it ? "flash on" : "flash off"));
        change.tripod().ifPresent(it -> parts.add(it ? "tripod on" : "tripod off"));
        change.note().ifPresent(parts::add);
        parts.removeIf(String::isEmpty);
        return String.join(", ", parts);
    }

    private static Json.Obj frameFields(Roll roll, Frame frame) {
        Setting setting = frame.exposure().setting();
        Verdict verdict = Verdict.of(roll, frame);
        return Json.object()
                .and("frame", frame.number())
                .and("kind", frame.kind())
                .and("aperture", setting.aperture().map(Object::toString))
                .and("time", setting.time().map(Object::toString))
                .and("errorStops", Asking.exact(verdict.errorStops()));
    }

    Outcome lost(List<String> rest, Optional<String> note) {
        Optional<RollId> id = in.rollNumber(rest);
        Roll roll = in.roll(id, "lost r7 3");
        Range range = Range.of(
                Interpreter.one("lost", rest.subList(id.isPresent() ? 1 : 0, rest.size()), "lost 7"), "lost 7");
        must(roll, range);
        Change change = note.map(it -> Change.kind(Frame.Kind.LOST).and(Change.note(it)))
                .orElse(Change.kind(Frame.Kind.LOST));
        List<Entry> entries = in.on(roll, new RollEvent.Corrected(range.from, range.to, change));
        return done(
                roll,
                entries,
                Interpreter.upper(Interpreter.numbers(range.from, range.to)) + " of " + roll.id()
                        + " marked lost; what was set is kept.",
                Json.object().and("frame", range.to).and("kind", Frame.Kind.LOST),
                List.of());
    }

    Outcome insert(List<String> rest, Optional<String> note) {
        String what = "insert 7 4 125";
        Optional<RollId> id = in.rollNumber(rest);
        Roll roll = in.roll(id, "insert r7 3 4 125");
        List<String> words = rest.subList(id.isPresent() ? 1 : 0, rest.size());
        int number = Interpreter.number(word(words, 0, "before which frame? " + what), what);
        boolean isPassed = roll.isPassed(number);
        if (roll.indexOf(number) < 0 && number != roll.next() && !isPassed) {
            must(roll, new Range(number, number));
        }
        Setting blank = roll.camera().lenses().isEmpty() ? Setting.NONE : Setting.NONE.with(Change.lens(lensOf(roll)));
        FrameWords said = FrameWords.ofInsertion(words.subList(1, words.size()), roll.camera(), blank);
        in.doubt(said.doubt());
        wasted(said.change());
        Frame.Kind kind = said.change().kind().orElse(Frame.Kind.EXPOSED);
        Setting setting = kind == Frame.Kind.EXPOSED ? blank.with(said.change()) : Setting.NONE;
        int count = said.count().orElse(1);
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            if (isPassed && !roll.isPassed(number + i)) {
                throw new Refusal("the counter went past " + i + (i == 1 ? " frame" : " frames") + " from " + number
                        + " on, not " + count);
            }
            Frame frame = Frame.of(
                    number + i,
                    kind,
                    new Exposure(Optional.empty(), setting, Optional.empty(), Optional.empty()),
                    note);
            OptionalInt before = roll.indexOf(number) < 0 ? OptionalInt.empty() : OptionalInt.of(number + i);
            entries.addAll(in.on(roll, new RollEvent.Added(frame, RollEvent.How.INSERTED, before)));
        }
        Roll now = in.after(entries).rolls().get(roll.id());
        Frame frame = now.frames().get(now.indexOf(number));
        return done(
                roll,
                entries,
                Interpreter.upper(Interpreter.numbers(number, number + count - 1)) + " put into " + roll.id() + ": "
                        + words(now, frame) + ". Next is frame " + now.next() + ", " + State.leftWords(now) + ".",
                frameFields(now, frame),
                fresh(Optional.empty(), now, new Range(number, number + count - 1)));
    }

    Outcome drop(List<String> rest) {
        Optional<RollId> id = in.rollNumber(rest);
        Roll roll = in.roll(id, "drop r7 3");
        List<String> words = rest.subList(id.isPresent() ? 1 : 0, rest.size());
        Range range = Range.of(Interpreter.one("drop", words, "drop 7"), "drop 7");
        must(roll, range);
        List<Entry> entries = in.on(roll, new RollEvent.Dropped(range.from, range.to, Optional.empty()));
        Roll now = in.after(entries).rolls().get(roll.id());
        return done(
                roll,
                entries,
                Interpreter.upper(Interpreter.numbers(range.from, range.to)) + " of " + roll.id()
                        + " dropped; later ones are renumbered. Next is frame " + now.next() + ", "
                        + State.leftWords(now) + ".",
                Json.object().and("frame", range.from),
                List.of());
    }

    Outcome move(List<String> rest) {
        String what = "move 3-5 cam 645 2";
        Roll roll = in.roll();
        Range range = Range.of(word(rest, 0, "which frames, and to which camera? " + what), what);
        if (!word(rest, 1, what).equals("cam") || rest.size() < 3 || rest.size() > 4) {
            throw new Refusal("to which camera? " + what);
        }
        Place place = in.place(rest.subList(2, rest.size()));
        if (place.equals(Situation.place(roll))) {
            throw new Refusal(roll.id() + " is in " + place + " already");
        }
        must(roll, range);
        Roll other = in.s.rollIn(place)
                .orElseThrow(() -> new Refusal("no roll is in " + place + ": load one first, then move"));
        List<Entry> entries = new ArrayList<>();
        int number = other.next();
        int first = number;
        for (Frame frame : roll.frames().subList(roll.indexOf(range.from), roll.indexOf(range.to) + 1)) {
            Frame moved = new Frame(
                    number,
                    frame.loggedAs() == number ? OptionalInt.empty() : OptionalInt.of(frame.loggedAs()),
                    frame.kind(),
                    frame.exposure(),
                    frame.further(),
                    frame.note());
            entries.addAll(in.on(other, new RollEvent.Added(moved, RollEvent.How.MOVED, OptionalInt.empty())));
            number++;
        }
        entries.addAll(in.on(roll, new RollEvent.Dropped(range.from, range.to, Optional.of(other.id()))));
        Situation after = in.after(entries);
        Roll now = after.rolls().get(other.id());
        Json.Obj fields = Json.object()
                .and("roll", roll.id())
                .and("framesLeft", after.rolls().get(roll.id()).framesLeft())
                .and("to", other.id())
                .and("frame", number - 1)
                .and("count", number - first);
        String text = Interpreter.upper(Interpreter.numbers(range.from, range.to)) + " of " + roll.id() + " moved to "
                + place + " as "
                + Interpreter.numbers(first, number - 1) + " of " + other.id() + ". " + roll.id() + ": "
                + State.leftWords(after.rolls().get(roll.id())) + ", "
                + other.id() + ": " + State.leftWords(now) + ".";
        return in.does(entries, after, new Outcome.Answer("fix", text, fields, List.of()), List.of());
    }

    /** When a difference came about: since the counter was looked at last, or since the loading. */
    private String between(Roll roll) {
        int last = roll.counterChecks().size() - 1;
        OffsetDateTime since =
                last < 0 ? roll.loadedAt() : roll.counterChecks().get(last).at();
        boolean isToday = since.toLocalDate().equals(in.now.toLocalDate());
        return "; it came about between " + (isToday ? "" : since.toLocalDate() + " ")
                + RawWords.clock(since.toLocalTime()) + (last < 0 ? " (loaded)" : " (the check before)") + " and "
                + RawWords.clock(in.now.toLocalTime());
    }

    Outcome counter(List<String> rest) {
        Roll roll = in.roll();
        int shown = Interpreter.number(Interpreter.one("counter", rest, "counter 9"), "counter 9");
        List<Entry> entries = in.on(roll, new RollEvent.CounterShown(shown));
        int difference = shown - roll.next();
        String text = difference == 0
                ? "The camera shows " + shown + ", as the log does."
                : "The camera shows " + shown + ", the log came to " + roll.next() + ": " + Math.abs(difference)
                        + (difference > 0 ? " more" : " fewer") + " on the camera, recorded" + between(roll)
                        + ". Next is frame " + shown + ".";
        return done(
                roll,
                entries,
                text,
                Json.object().and("frame", shown).and("shown", shown).and("expected", roll.next()),
                List.of());
    }
}
