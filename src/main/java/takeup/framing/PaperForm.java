package takeup.framing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import takeup.advice.LoadChecks;
import takeup.command.Arguments;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.day.DayEvent;
import takeup.day.PaperInput;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Lens;
import takeup.prompt.CommandRejected;
import takeup.prompt.DateTimeParser;
import takeup.prompt.FrameArguments;
import takeup.prompt.Token;
import takeup.prompt.Tokens;
import takeup.roll.Exposure;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;
import takeup.text.English;

/**
 * A paper form read back: {@code paper r7}, a line a frame, {@code done}. What a line says is taken, and nothing else;
 * times and light are not known. A line that does not fit is set aside as it was typed, and told of at the end.
 */
public final class PaperForm {
    static Outcome begin(CommandContext context, List<String> words) {
        Optional<RollId> id = context.rollNumber(words);
        Arguments.alone("paper", words.subList(id.isPresent() ? 1 : 0, words.size()));
        Roll roll = context.roll(id, "paper r7");
        if (roll.state() == Roll.State.WITHDRAWN) {
            throw new CommandRejected(
                    "the loading of " + roll.id() + " was taken back: load it first, then read its paper");
        }
        List<JournalEntry> entries = List.of(new JournalEntry.OnDay(new DayEvent.PaperStarted(roll.id())));
        String text =
                "Reading the paper of " + roll.id() + ", " + roll.film().stock().name() + ", next frame " + roll.next()
                        + ": a line a frame, 7 5.6 125 and words; \" is the same as above. done ends it."
                        + before(context).map(it -> " " + it).orElse("");
        return answered(context, entries, text, CommandContext.fields(roll).and("frame", roll.next()));
    }

    /** What was set aside of a form that this one follows. */
    private static Optional<String> before(CommandContext context) {
        return context.state().day().paper().filter(it -> !it.aside().isEmpty()).map(PaperForm::asideWords);
    }

    static Outcome done(CommandContext context) {
        PaperInput paper = context.state()
                .day()
                .paper()
                .orElseThrow(() -> new CommandRejected("no paper is being read: paper r7 begins"));
        Roll roll = context.roll(paper.roll());
        int open = (int) roll.frames().stream()
                .filter(it -> it.kind() == Frame.Kind.UNLOGGED)
                .count();
        List<JournalEntry> entries = List.of(new JournalEntry.OnDay(new DayEvent.PaperFinished()));
        String text = "The paper of " + roll.id() + " is read: " + roll.framesUsed() + " of "
                + roll.film().framesNominal() + " frames" + (open == 0 ? "" : ", " + open + " of them not written down")
                + ". " + (paper.aside().isEmpty() ? "Every line fitted." : asideWords(paper));
        return answered(
                context,
                entries,
                text,
                CommandContext.fields(roll).and("aside", paper.aside()).and("unlogged", open));
    }

    private static String asideWords(PaperInput paper) {
        int count = paper.aside().size();
        return English.count(count, "line") + " did not fit, and " + English.agree(count, "is", "are")
                + " kept in the day's journal: " + String.join(" / ", paper.aside()) + ". Type "
                + English.agree(count, "it", "them") + " right behind paper "
                + paper.roll().typed() + ".";
    }

    private static Outcome answered(CommandContext context, List<JournalEntry> entries, String text, Json.Obj fields) {
        return context.does(
                entries, context.after(entries), new Outcome.Answer("paper", text, fields, List.of()), List.of());
    }

    /** Other words of the prompt are refused, so that none of them is taken for paper. */
    public static CommandRejected isBeingRead(CommandContext context) {
        return new CommandRejected("the paper of "
                + context.state().day().paper().orElseThrow().roll() + " is being read, a line a frame: done ends it");
    }

    public static Outcome line(CommandContext context, Arguments arguments) {
        Roll roll = context.roll(context.state().day().paper().orElseThrow().roll());
        try {
            return fitted(context, roll, arguments);
        } catch (CommandRejected e) {
            Json.Obj fields = CommandContext.fields(roll).and("fits", false).and("why", e.getMessage());
            return answered(
                    context,
                    List.of(new JournalEntry.OnDay(new DayEvent.PaperLineRejected(arguments.line()))),
                    "Set aside, kept as it is: " + e.getMessage() + ".",
                    fields);
        }
    }

    /** The words of a line letter for letter: those of the setting, and what comes behind them. */
    private static record Read(int from, int to, SettingPatch change, Optional<String> note) {}

    private static Outcome fitted(CommandContext context, Roll roll, Arguments arguments) {
        Read read = read(context, roll, arguments);
        int most = roll.film().framesNominal() + LoadChecks.PAST + 1;
        if (read.to > most && read.to >= roll.next()) {
            throw new CommandRejected("frame " + read.to + " is past the end of " + roll.id() + ", which has "
                    + roll.film().framesNominal());
        }
        List<JournalEntry> entries = new ArrayList<>();
        int next = roll.next();
        for (int number = next; number < read.from; number++) {
            entries.addAll(context.on(roll, added(number, SettingPatch.NOTHING, Optional.empty(), roll)));
        }
        for (int number = read.from; number <= read.to; number++) {
            entries.addAll(context.on(
                    roll,
                    number >= next || roll.isPassed(number)
                            ? added(number, read.change, read.note, roll)
                            : filled(number, read, roll)));
        }
        ShootState after = context.after(entries);
        Roll now = after.rolls().get(roll.id());
        Frame last = now.frames().get(now.indexOf(read.to));
        String gap = next < read.from
                ? " " + English.capitalised(CommandContext.numbers(next, read.from - 1)) + " not written down yet."
                : "";
        Json.Obj fields = CommandContext.fields(now)
                .and("frame", read.to)
                .and("count", read.to - read.from + 1)
                .and("kind", last.kind())
                .and("aperture", last.exposure().setting().aperture().map(Object::toString))
                .and("time", last.exposure().setting().time().map(Object::toString))
                .and("fits", true);
        return context.does(
                entries,
                after,
                new Outcome.Answer(
                        "paper",
                        English.capitalised(CommandContext.numbers(read.from, read.to)) + " of " + roll.id() + ": "
                                + Correction.words(now, last) + "." + gap,
                        fields,
                        List.of()),
                context.rollsToExport(roll));
    }

    private static RollEvent added(int number, SettingPatch change, Optional<String> note, Roll roll) {
        boolean isSet = change.aperture().isPresent() || change.time().isPresent();
        Frame.Kind kind = change.kind().orElse(isSet ? Frame.Kind.EXPOSED : Frame.Kind.UNLOGGED);
        Setting setting = isSet ? Setting.NONE.with(change) : Setting.NONE;
        return new RollEvent.Added(
                Frame.of(
                        number,
                        kind,
                        new Exposure(Optional.empty(), setting, Optional.empty(), Optional.empty()),
                        note),
                RollEvent.Origin.INSERTED,
                OptionalInt.empty());
    }

    /** A frame that is there and waits for its values, as one that was tallied does. */
    private static RollEvent filled(int number, Read read, Roll roll) {
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
            throw new CommandRejected("frame " + number + " of " + roll.id() + " is logged: "
                    + Correction.words(roll, frame) + "; fix " + roll.id().typed() + " " + number + " puts it right");
        }
        return new RollEvent.Corrected(
                number,
                number,
                read.note.map(it -> read.change.and(SettingPatch.note(it))).orElse(read.change));
    }

    private static Read read(CommandContext context, Roll roll, Arguments arguments) {
        int semicolon = arguments.line().indexOf(';');
        List<String> words = DateTimeParser.of(
                semicolon < 0 ? arguments.line() : arguments.line().substring(0, semicolon));
        String first = bare(words.get(0));
        int dash = first.indexOf('-');
        String what = "a line of the form begins with the frame's number: 7 5.6 125 and words";
        int from = CommandContext.number(dash > 0 ? first.substring(0, dash) : first, what);
        int to = dash > 0 ? CommandContext.number(first.substring(dash + 1), what) : from;
        if (to < from) {
            throw new CommandRejected(first + " runs backwards");
        }
        int at = 1;
        List<String> set = new ArrayList<>();
        int same = 0;
        while (at < words.size()
                && (isSame(words.get(at)) || !Tokens.token(point(words.get(at))).is(Token.Kind.WORD))) {
            if (isSame(words.get(at))) {
                same++;
            } else {
                set.add(point(words.get(at)));
            }
            at++;
        }
        Optional<Lens> lens =
                roll.camera().lenses().isEmpty() ? Optional.empty() : Optional.of(Correction.lensOf(context, roll));
        Setting bare = lens.map(it -> Setting.NONE.with(SettingPatch.lens(it))).orElse(Setting.NONE);
        FrameArguments said = FrameArguments.ofFrame(set, roll.camera(), bare);
        if (said.count().isPresent() || said.doubt().isPresent()) {
            throw new CommandRejected(said.doubt().orElse("a count is not taken here; several frames are 7-9 5.6 125"));
        }
        SettingPatch change = same == 0 ? said.change() : above(roll, from, same, said.change());
        Optional<Frame.Kind> kind = at < words.size()
                ? Frame.Kind.named(DateTimeParser.small(words.get(at)))
                        .filter(it -> it != Frame.Kind.EXPOSED && it != Frame.Kind.SLATE)
                : Optional.empty();
        if (kind.isPresent()) {
            if (kind.get() != Frame.Kind.LOST && !change.isNothing()) {
                throw new CommandRejected(kind.get() + " says that there is no setting; leave out one of the two");
            }
            change = change.and(SettingPatch.kind(kind.get()));
            at++;
        }
        boolean isSet = change.aperture().isPresent() || change.time().isPresent();
        if (isSet && lens.isPresent()) {
            change = SettingPatch.lens(lens.get()).and(change);
        }
        String note = String.join(" ", words.subList(at, words.size()));
        String all = note
                + (note.isEmpty() || arguments.note().isEmpty() ? "" : "; ")
                + arguments.note().orElse("");
        return new Read(from, to, change, Optional.of(all).filter(it -> !it.isEmpty()));
    }

    private static String bare(String word) {
        boolean isMarked = word.length() > 1
                && (word.endsWith(".") || word.endsWith(")") || word.endsWith(":") || word.endsWith(","));
        return isMarked ? word.substring(0, word.length() - 1) : word;
    }

    /** A word as a setting is typed: small, a decimal comma as a point. */
    private static String point(String word) {
        return DateTimeParser.small(word).replace(',', '.');
    }

    private static boolean isSame(String word) {
        return word.equals("\"")
                || word.equals("''")
                || word.equals("\u2033")
                || word.equals("\u201d")
                || word.equals("\u3003");
    }

    /**
     * What a ditto mark stands for: both values of the frame above where it stands alone, else the one that is not
     * written.
     */
    private static SettingPatch above(Roll roll, int number, int same, SettingPatch said) {
        int at = roll.indexOf(number - 1);
        Setting above = at < 0 ? Setting.NONE : roll.frames().get(at).exposure().setting();
        boolean both = said.aperture().isEmpty() && said.time().isEmpty();
        boolean aperture = both || said.aperture().isEmpty();
        boolean time = both || said.time().isEmpty();
        if (same > 2
                || !aperture && !time
                || aperture && above.aperture().isEmpty()
                || time && above.time().isEmpty()) {
            throw new CommandRejected("nothing stands above that \" could repeat");
        }
        SettingPatch change = said;
        change = aperture ? change.and(SettingPatch.aperture(above.aperture().orElseThrow())) : change;
        return time ? change.and(SettingPatch.time(above.time().orElseThrow())) : change;
    }
}
