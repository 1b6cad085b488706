package takeup.framing;

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
import takeup.command.Arguments;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.day.CameraPlace;
import takeup.day.CameraSetup;
import takeup.exposure.Stops;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Filter;
import takeup.kit.Lens;
import takeup.kit.Warning;
import takeup.loading.RollCommands;
import takeup.prompt.CommandRejected;
import takeup.prompt.FrameArguments;
import takeup.report.AdviceJson;
import takeup.report.RollText;
import takeup.report.SetupText;
import takeup.roll.Exposure;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.FrameWarnings;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;
import takeup.text.ClockText;
import takeup.text.English;

/** Lines that put frames right: fix, insert, drop, move, lost, counter. */
public final class Correction {
    private static final Set<Warning.Code> ABOUT_SETTINGS = EnumSet.of(
            Warning.Code.SYNC_SPEED,
            Warning.Code.OUT_OF_RANGE,
            Warning.Code.THIN,
            Warning.Code.DENSE,
            Warning.Code.RECIPROCITY_BEYOND,
            Warning.Code.RECIPROCITY,
            Warning.Code.HAND_HELD);

    /** A frame or a row of frames: {@code 7}, {@code 3-5}. */
    private static record Range(int from, int to) {
        static Range of(String word, String what) {
            int dash = word.indexOf('-');
            if (dash <= 0) {
                int number = CommandContext.number(word, what);
                return new Range(number, number);
            }
            int from = CommandContext.number(word.substring(0, dash), what);
            int to = CommandContext.number(word.substring(dash + 1), what);
            if (to < from) {
                throw new CommandRejected(word + " runs backwards: " + to + "-" + from);
            }
            return new Range(from, to);
        }
    }

    private static String word(List<String> words, int at, String what) {
        if (words.size() <= at) {
            throw new CommandRejected(what);
        }
        return words.get(at);
    }

    private static void must(Roll roll, Range range) {
        for (int number = range.from; number <= range.to; number++) {
            if (roll.indexOf(number) < 0) {
                throw new CommandRejected(roll.id() + " has no frame " + number
                        + (roll.isPassed(number)
                                ? ", which the counter went past: insert " + number + " and what was set writes it down"
                                : roll.frames().isEmpty()
                                        ? ": none is logged yet"
                                        : "; it holds "
                                                + CommandContext.numbers(
                                                        roll.frames().get(0).number(),
                                                        roll.frames()
                                                                .get(roll.frames()
                                                                                .size()
                                                                        - 1)
                                                                .number())));
            }
        }
    }

    private static Outcome.Accepted done(
            CommandContext context,
            Roll roll,
            List<JournalEntry> entries,
            String text,
            Json.Obj more,
            List<Warning> warnings) {
        ShootState after = context.after(entries);
        Roll now = after.rolls().get(roll.id());
        Json.Obj fields = CommandContext.fields(now);
        more.fields().forEach(fields::and);
        return context.does(
                entries,
                after,
                new Outcome.Answer("fix", text, fields, context.unsilenced(warnings)),
                context.rollsToExport(roll));
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

    static Outcome fix(CommandContext context, Arguments arguments, List<String> rest, Optional<String> note) {
        if (!rest.isEmpty() && rest.get(0).equals("roll")) {
            if (note.isPresent()) {
                throw new CommandRejected("a note on the roll is note and the words");
            }
            return RollCommands.fix(context, arguments, rest.subList(1, rest.size()));
        }
        String what = "fix 7 4 125, fix 3-5 filter yellow, fix r7 2 8";
        Optional<RollId> id = context.rollNumber(rest);
        Roll roll = context.roll(id, "fix r7 2 8");
        List<String> words = rest.subList(id.isPresent() ? 1 : 0, rest.size());
        Range range = Range.of(word(words, 0, "which frame, and what of it? " + what), what);
        must(roll, range);
        Frame first = roll.frames().get(roll.indexOf(range.from));
        Setting setting = first.exposure().setting();
        Setting known = setting.lens().isPresent() || roll.camera().lenses().isEmpty()
                ? setting
                : setting.with(SettingPatch.lens(lensOf(context, roll)));
        FrameArguments said = FrameArguments.ofCorrection(words.subList(1, words.size()), roll.camera(), known);
        SettingPatch change = note.isPresent() ? said.change().and(SettingPatch.note(note.get())) : said.change();
        if (change.isNothing()) {
            throw new CommandRejected(
                    "what is right for " + CommandContext.numbers(range.from, range.to) + "? " + what);
        }
        if (change.aperture().isPresent()
                && change.lens().isEmpty()
                && setting.lens().isEmpty()) {
            change = change.and(known.lens().map(SettingPatch::lens).orElse(SettingPatch.NOTHING));
        }
        wasted(said.change());
        List<JournalEntry> entries = context.on(roll, new RollEvent.Corrected(range.from, range.to, change));
        Roll now = context.after(entries).rolls().get(roll.id());
        Frame after = now.frames().get(now.indexOf(range.from));
        String right = range.from == range.to
                ? words(now, after)
                        + said.change().lens().map(it -> ", " + it.name()).orElse("")
                : words(change);
        return done(
                        context,
                        roll,
                        entries,
                        English.capitalised(CommandContext.numbers(range.from, range.to)) + " of " + roll.id() + ": "
                                + right + ".",
                        frameFields(now, after).and("frame", range.to),
                        fresh(Optional.of(roll), now, range))
                .unlessDoubted(said.doubt());
    }

    /** A frame that was wasted, or of which nothing is known, has no setting. */
    private static void wasted(SettingPatch said) {
        boolean bare = said.kind().equals(Optional.of(Frame.Kind.BLANK))
                || said.kind().equals(Optional.of(Frame.Kind.UNLOGGED));
        if (bare && !said.equals(SettingPatch.kind(said.kind().get()))) {
            throw new CommandRejected(said.kind().get() + " says that there is no setting; leave out one of the two");
        }
    }

    static Lens lensOf(CommandContext context, Roll roll) {
        return context.state()
                .inHand(roll.camera())
                .setting()
                .lens()
                .flatMap(it -> roll.camera().lens(it.key()))
                .orElse(roll.camera().lenses().get(0));
    }

    /** A frame in words. */
    public static String words(Roll roll, Frame frame) {
        Setting setting = frame.exposure().setting();
        String pair = FrameArguments.words(setting.aperture(), setting.time(), SettingPatch.NOTHING);
        String error = ExposureResult.of(roll, frame).errorStops().stream()
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
        SetupText.marks(new CameraSetup(setting, Optional.empty()))
                .forEach(it -> parts.add(it.toLowerCase(Locale.ROOT)));
        if (!error.isEmpty()) {
            parts.add(error);
        }
        frame.note().ifPresent(parts::add);
        return String.join(", ", parts);
    }

    /** What was put right, in words: of several frames it says nothing else. */
    private static String words(SettingPatch change) {
        List<String> parts = new ArrayList<>();
        change.kind().ifPresent(it -> parts.add(it.toString()));
        parts.add(FrameArguments.words(change.aperture(), change.time(), change));
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
        change.biasStops().ifPresent(it -> parts.add(it == 0 ? "no bias" : "bias " + SetupText.bias(it)));
        change.flash().ifPresent(it -> parts.add(it ? "flash on" : "flash off"));
        change.tripod().ifPresent(it -> parts.add(it ? "tripod on" : "tripod off"));
        change.note().ifPresent(parts::add);
        parts.removeIf(String::isEmpty);
        return String.join(", ", parts);
    }

    private static Json.Obj frameFields(Roll roll, Frame frame) {
        Setting setting = frame.exposure().setting();
        ExposureResult verdict = ExposureResult.of(roll, frame);
        return Json.object()
                .and("frame", frame.number())
                .and("kind", frame.kind())
                .and("aperture", setting.aperture().map(Object::toString))
                .and("time", setting.time().map(Object::toString))
                .and("errorStops", AdviceJson.exact(verdict.errorStops()));
    }

    static Outcome lost(CommandContext context, List<String> rest, Optional<String> note) {
        Optional<RollId> id = context.rollNumber(rest);
        Roll roll = context.roll(id, "lost r7 3");
        Range range =
                Range.of(Arguments.one("lost", rest.subList(id.isPresent() ? 1 : 0, rest.size()), "lost 7"), "lost 7");
        must(roll, range);
        SettingPatch change = note.map(it -> SettingPatch.kind(Frame.Kind.LOST).and(SettingPatch.note(it)))
                .orElse(SettingPatch.kind(Frame.Kind.LOST));
        List<JournalEntry> entries = context.on(roll, new RollEvent.Corrected(range.from, range.to, change));
        return done(
                context,
                roll,
                entries,
                English.capitalised(CommandContext.numbers(range.from, range.to)) + " of " + roll.id()
                        + " marked lost; what was set is kept.",
                Json.object().and("frame", range.to).and("kind", Frame.Kind.LOST),
                List.of());
    }

    static Outcome insert(CommandContext context, List<String> rest, Optional<String> note) {
        String what = "insert 7 4 125";
        Optional<RollId> id = context.rollNumber(rest);
        Roll roll = context.roll(id, "insert r7 3 4 125");
        List<String> words = rest.subList(id.isPresent() ? 1 : 0, rest.size());
        int number = CommandContext.number(word(words, 0, "before which frame? " + what), what);
        boolean isPassed = roll.isPassed(number);
        if (roll.indexOf(number) < 0 && number != roll.next() && !isPassed) {
            must(roll, new Range(number, number));
        }
        Setting blank = roll.camera().lenses().isEmpty()
                ? Setting.NONE
                : Setting.NONE.with(SettingPatch.lens(lensOf(context, roll)));
        FrameArguments said = FrameArguments.ofInsertion(words.subList(1, words.size()), roll.camera(), blank);
        wasted(said.change());
        Frame.Kind kind = said.change().kind().orElse(Frame.Kind.EXPOSED);
        Setting setting = kind == Frame.Kind.EXPOSED ? blank.with(said.change()) : Setting.NONE;
        int count = said.count().orElse(1);
        List<JournalEntry> entries = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            if (isPassed && !roll.isPassed(number + i)) {
                throw new CommandRejected(
                        "the counter went past " + English.count(i, "frame") + " from " + number + " on, not " + count);
            }
            Frame frame = Frame.of(
                    number + i,
                    kind,
                    new Exposure(Optional.empty(), setting, Optional.empty(), Optional.empty()),
                    note);
            OptionalInt before = roll.indexOf(number) < 0 ? OptionalInt.empty() : OptionalInt.of(number + i);
            entries.addAll(context.on(roll, new RollEvent.Added(frame, RollEvent.Origin.INSERTED, before)));
        }
        Roll now = context.after(entries).rolls().get(roll.id());
        Frame frame = now.frames().get(now.indexOf(number));
        return done(
                        context,
                        roll,
                        entries,
                        English.capitalised(CommandContext.numbers(number, number + count - 1)) + " put into "
                                + roll.id()
                                + ": " + words(now, frame) + ". Next is frame " + now.next() + ", "
                                + RollText.left(now)
                                + ".",
                        frameFields(now, frame),
                        fresh(Optional.empty(), now, new Range(number, number + count - 1)))
                .unlessDoubted(said.doubt());
    }

    static Outcome drop(CommandContext context, List<String> rest) {
        Optional<RollId> id = context.rollNumber(rest);
        Roll roll = context.roll(id, "drop r7 3");
        List<String> words = rest.subList(id.isPresent() ? 1 : 0, rest.size());
        Range range = Range.of(Arguments.one("drop", words, "drop 7"), "drop 7");
        must(roll, range);
        List<JournalEntry> entries = context.on(roll, new RollEvent.Dropped(range.from, range.to, Optional.empty()));
        Roll now = context.after(entries).rolls().get(roll.id());
        return done(
                context,
                roll,
                entries,
                English.capitalised(CommandContext.numbers(range.from, range.to)) + " of " + roll.id()
                        + " dropped; later ones are renumbered. Next is frame " + now.next() + ", "
                        + RollText.left(now) + ".",
                Json.object().and("frame", range.from),
                List.of());
    }

    static Outcome move(CommandContext context, List<String> rest) {
        String what = "move 3-5 cam 645 2";
        Roll roll = context.roll();
        Range range = Range.of(word(rest, 0, "which frames, and to which camera? " + what), what);
        if (!word(rest, 1, what).equals("cam") || rest.size() < 3 || rest.size() > 4) {
            throw new CommandRejected("to which camera? " + what);
        }
        CameraPlace place = context.place(rest.subList(2, rest.size()));
        if (place.equals(CameraPlace.of(roll))) {
            throw new CommandRejected(roll.id() + " is in " + place + " already");
        }
        must(roll, range);
        Roll other = context.state()
                .rollIn(place)
                .orElseThrow(() -> new CommandRejected("no roll is in " + place + ": load one first, then move"));
        List<JournalEntry> entries = new ArrayList<>();
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
            entries.addAll(context.on(other, new RollEvent.Added(moved, RollEvent.Origin.MOVED, OptionalInt.empty())));
            number++;
        }
        entries.addAll(context.on(roll, new RollEvent.Dropped(range.from, range.to, Optional.of(other.id()))));
        ShootState after = context.after(entries);
        Roll now = after.rolls().get(other.id());
        Json.Obj fields = Json.object()
                .and("roll", roll.id())
                .and("framesLeft", after.rolls().get(roll.id()).framesLeft())
                .and("to", other.id())
                .and("frame", number - 1)
                .and("count", number - first);
        String text =
                English.capitalised(CommandContext.numbers(range.from, range.to)) + " of " + roll.id() + " moved to "
                        + place + " as "
                        + CommandContext.numbers(first, number - 1) + " of " + other.id() + ". " + roll.id() + ": "
                        + RollText.left(after.rolls().get(roll.id())) + ", "
                        + other.id() + ": " + RollText.left(now) + ".";
        return context.does(entries, after, new Outcome.Answer("fix", text, fields, List.of()), List.of());
    }

    /** When a difference came about: since the counter was looked at last, or since the loading. */
    private static String between(CommandContext context, Roll roll) {
        int last = roll.counterChecks().size() - 1;
        OffsetDateTime since =
                last < 0 ? roll.loadedAt() : roll.counterChecks().get(last).at();
        boolean isToday = since.toLocalDate().equals(context.now().toLocalDate());
        return "; it came about between " + (isToday ? "" : since.toLocalDate() + " ")
                + ClockText.clock(since) + (last < 0 ? " (loaded)" : " (the check before)") + " and "
                + ClockText.clock(context.now());
    }

    static Outcome counter(CommandContext context, List<String> rest) {
        Roll roll = context.roll();
        int shown = CommandContext.number(Arguments.one("counter", rest, "counter 9"), "counter 9");
        List<JournalEntry> entries = context.on(roll, new RollEvent.CounterShown(shown));
        int difference = shown - roll.next();
        String text = difference == 0
                ? "The camera shows " + shown + ", as the log does."
                : "The camera shows " + shown + ", the log came to " + roll.next() + ": " + Math.abs(difference)
                        + (difference > 0 ? " more" : " fewer") + " on the camera, recorded" + between(context, roll)
                        + ". Next is frame " + shown + ".";
        return done(
                context,
                roll,
                entries,
                text,
                Json.object().and("frame", shown).and("shown", shown).and("expected", roll.next()),
                List.of());
    }
}
