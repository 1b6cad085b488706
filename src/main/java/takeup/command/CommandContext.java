package takeup.command;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.advice.EntryWarnings;
import takeup.advice.TimedWarnings;
import takeup.day.CameraPlace;
import takeup.day.CameraSetup;
import takeup.day.DayEvent;
import takeup.exposure.Stops;
import takeup.history.JournalEntry;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Camera;
import takeup.kit.Filter;
import takeup.kit.Hold;
import takeup.kit.Kit;
import takeup.kit.Warning;
import takeup.prompt.CameraStateParser;
import takeup.prompt.CommandRejected;
import takeup.prompt.DialNumbers;
import takeup.prompt.FilterParser;
import takeup.prompt.FrameArguments;
import takeup.prompt.Token;
import takeup.prompt.Tokens;
import takeup.report.StatusText;
import takeup.roll.Exposure;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;
import takeup.text.Nearest;

/**
 * Reads one typed line in a situation and works out what it comes to. Pure: nothing is written, so the same reading
 * serves the echo before Enter and the deed after it.
 */
public final class CommandContext {
    private static final int LONGEST_LINE = 1000;
    private static final List<String> TAKE_NOTES =
            List.of("blank", "unlogged", "slate", "tally", "fix", "insert", "lost", "n", "note", "condition");

    public final ShootState before;
    final ShootState state;
    final String line;
    public final OffsetDateTime now;
    /** The same to the millisecond, for the bulb timer alone. */
    final OffsetDateTime nowMillis;
    /**
     * By how many seconds the clock was moved against the running time since the last frame or reading, as far as is
     * known.
     */
    public final long drift;

    private final String letters;
    private Optional<String> confirm = Optional.empty();

    private CommandContext(ShootState situation, String line, OffsetDateTime now, long drift, String letters) {
        this.before = situation;
        this.state = situation.asOf(now);
        this.line = line;
        this.now = now.withNano(0);
        this.nowMillis = now;
        this.drift = drift;
        this.letters = letters;
    }

    /** What a line comes to, under a clock that nobody moved while the program runs. */
    public static Outcome read(ShootState situation, String line, OffsetDateTime now, String letters) {
        return read(situation, line, now, 0, letters);
    }

    /**
     * What a line comes to.
     *
     * @param situation what is true now
     * @param line as it was typed; not blank
     * @param now the time of day
     * @param drift by how many seconds the clock was moved since the last frame or reading, as a
     *     {@code ClockShiftDetector} tells
     * @param letters the writer's letters for new roll numbers
     */
    public static Outcome read(ShootState situation, String line, OffsetDateTime now, long drift, String letters) {
        CommandContext interpreter = new CommandContext(situation, line.strip(), now, drift, letters);
        try {
            Outcome outcome = TimedWarnings.with(interpreter.outcome(), situation, interpreter.now);
            return interpreter.confirm.isPresent() && outcome instanceof Outcome.Accepted does
                    ? new Outcome.NeedsConfirmation(interpreter.confirm.get() + "; yes takes it as typed", does)
                    : outcome;
        } catch (CommandRejected e) {
            return new Outcome.Rejected(e.getMessage());
        } catch (NotReadYet e) {
            return new Outcome.NeedsRoll(e.roll);
        }
    }

    /** For lines that were not typed, such as those of a file. */
    static CommandContext apart(ShootState situation, OffsetDateTime now, String letters) {
        return new CommandContext(situation, "", now, 0, letters);
    }

    /** Thrown within the room when a line speaks of a finished roll that is not in memory. */
    static final class NotReadYet extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final RollId roll;

        NotReadYet(RollId roll) {
            super("", null, false, false);
            this.roll = roll;
        }
    }

    private Outcome outcome() {
        if (line.length() > LONGEST_LINE) {
            throw new CommandRejected(
                    "a line holds up to " + LONGEST_LINE + " characters, this one has " + line.length());
        }
        Tokens tokens = Tokens.of(line);
        if (state.day().paper().isPresent() && new PaperCommand(this).takes(tokens)) {
            return new PaperCommand(this).line(tokens);
        }
        if (isFrameLine(tokens)) {
            return new FrameCommands(this).read(tokens);
        }
        String first = tokens.words().get(0);
        List<String> rest = tokens.words().subList(1, tokens.words().size());
        if (tokens.note().isPresent() && !TAKE_NOTES.contains(first) && !rest.contains("process")) {
            throw new CommandRejected("a note belongs to a frame or a roll; " + first + " takes none");
        }
        CorrectionCommands corrections = new CorrectionCommands(this);
        RollCommands rolls = new RollCommands(this);
        return switch (first) {
            case "m" -> new LightCommands(this).reading(rest);
            case "meter" -> new LightCommands(this).meter(rest);
            case "n" -> new FrameCommands(this).note(textAfterWords(1));
            case "set" -> set(rest);
            case "hold" -> hold(rest);
            case "bias", "ext", "tube", "mag", "lens", "tripod" -> state(first, rest);
            case "flash" -> new FlashCommand(this).read(rest);
            case "time" -> new TimeCommand(this).time(rest);
            case "why" -> new LightCommands(this).why(rest);
            case "filter" -> filter(rest);
            case "load" -> rolls.load(rest);
            case "unload" -> rolls.unload(rest);
            case "rewind" -> new RewindCommand(this).rewind(rest);
            case "routine" -> new LoadChecksCommand(this).routine(rest);
            case "yes", "no" -> new LoadChecksCommand(this).answer(first, rest);
            case "push", "pull", "normal" -> rolls.push(first, rest);
            case "note" -> rolls.note(rest);
            case "condition" -> rolls.condition(rest);
            case "cam" -> cam(rest);
            case "back" -> back(rest);
            case "blank" -> new FrameCommands(this).wasted(Frame.Kind.BLANK, rest, tokens.note());
            case "unlogged" -> new FrameCommands(this).wasted(Frame.Kind.UNLOGGED, rest, tokens.note());
            case "slate" -> new SlateCommand(this).read(rest, tokens.note());
            case "tally" -> new FrameCommands(this).wasted(Frame.Kind.UNLOGGED, rest, tokens.note());
            case "paper" -> new PaperCommand(this).begin(rest);
            case "done" -> new PaperCommand(this).done(alone(first, rest));
            case "rating" -> new RatingCommand(this).read(rest);
            case "double" -> new FrameCommands(this).doubled(rest);
            case "lost" -> corrections.lost(rest, tokens.note());
            case "fix" -> corrections.fix(rest, tokens.note());
            case "insert" -> corrections.insert(rest, tokens.note());
            case "drop" -> corrections.drop(rest);
            case "move" -> corrections.move(rest);
            case "counter" -> corrections.counter(rest);
            case "undo", "u" -> new UndoCommands(this).undo(alone(first, rest));
            case "redo" -> new UndoCommands(this).redo(alone(first, rest));
            case "shoot" -> rest.isEmpty() ? new ViewCommands(this).read(first, rest) : new ShootCommand(this).open();
            case "plan" -> rest.isEmpty() ? new ViewCommands(this).read(first, rest) : new PlanCommand(this).read(rest);
            case "bag" -> rest.isEmpty() ? new ViewCommands(this).read(first, rest) : new BagCommand(this).read(rest);
            case "day-end" -> new DayEndCommand(this).read(rest);
            default -> new ViewCommands(this).read(first, rest);
        };
    }

    private static boolean isFrameLine(Tokens tokens) {
        if (tokens.words().isEmpty()) {
            return true;
        }
        String first = tokens.words().get(0);
        char c = first.charAt(0);
        int number = first.startsWith("f/") ? 2 : c == 'f' || c == 'b' || c == 'x' || c == '*' ? 1 : 0;
        boolean begins = first.length() > number && Tokens.isDigit(first.charAt(number));
        boolean point =
                first.length() > number + 1 && first.charAt(number) == '.' && Tokens.isDigit(first.charAt(number + 1));
        return begins || point || c == '.' || c == ',';
    }

    /** The line behind so many words, letter for letter; a semicolon in front of it is dropped. */
    String textAfterWords(int words) {
        String left = line;
        for (int i = 0; i < words; i++) {
            int end = 0;
            while (end < left.length() && !Tokens.isBlank(left.charAt(end)) && left.charAt(end) != ';') {
                end++;
            }
            left = stripped(left.substring(end));
        }
        return left.startsWith(";") ? stripped(left.substring(1)) : left;
    }

    /** All that stands behind a word, letter for letter. */
    String rawAfter(String word) {
        for (int words = 1; !textAfterWords(words).isEmpty(); words++) {
            String left = textAfterWords(words);
            if (left.length() > word.length()
                    && left.regionMatches(true, 0, word, 0, word.length())
                    && Tokens.isBlank(left.charAt(word.length()))) {
                return textAfterWords(words + 1);
            }
        }
        return "";
    }

    private static String stripped(String text) {
        int from = 0;
        while (from < text.length() && Tokens.isBlank(text.charAt(from))) {
            from++;
        }
        return text.substring(from).stripTrailing();
    }

    static String alone(String word, List<String> rest) {
        if (!rest.isEmpty()) {
            throw new CommandRejected(word + " stands alone; " + rest.get(0) + " is one word too many");
        }
        return word;
    }

    static String one(String word, List<String> rest, String example) {
        if (rest.size() != 1) {
            throw new CommandRejected(word + " takes one word, such as " + example);
        }
        return rest.get(0);
    }

    void confirm(Optional<String> question) {
        confirm = question.or(() -> confirm);
    }

    String letters() {
        return letters;
    }

    Camera camera() {
        return state.cameraInHand()
                .orElseThrow(() -> new CommandRejected(
                        state.placeInHand().isPresent()
                                ? state.kit()
                                        .whyNot(
                                                Kit.Sort.CAMERAS,
                                                state.placeInHand().get().camera())
                                : "no camera in hand: type cam and one of "
                                        + String.join(", ", state.kit().keys(Kit.Sort.CAMERAS))));
    }

    Roll roll() {
        camera();
        return state.rollInHand()
                .orElseThrow(() -> new CommandRejected(
                        "no film in " + state.placeInHand().orElseThrow() + ": load a stock first (load cn400)"));
    }

    /** The roll of a typed number, or the one in hand; the example shows how a finished one is named. */
    Roll roll(Optional<RollId> id, String example) {
        return id.map(this::roll)
                .or(state::rollInHand)
                .orElseThrow(() -> new CommandRejected("no film in "
                        + state.placeInHand().map(Object::toString).orElse("hand")
                        + ": load a stock first, or name the roll (" + example + ")"));
    }

    /** The roll of a typed number; read in first if it is a finished one. */
    Roll roll(RollId id) {
        Roll roll = state.rolls().get(id);
        if (roll != null) {
            return roll;
        }
        if (state.known().contains(id) && !id.letters().equals(letters)) {
            throw new CommandRejected(id + " is a roll of another laptop, whose numbers begin with " + id.letters()
                    + ": only that one writes to it");
        }
        if (state.known().contains(id)) {
            throw new NotReadYet(id);
        }
        throw new CommandRejected("there is no roll " + id);
    }

    /** A roll number in front of other words, if one stands there. */
    Optional<RollId> rollNumber(List<String> words) {
        return words.isEmpty() ? Optional.empty() : RollId.parse(words.get(0));
    }

    Setting setting() {
        return state.inHand(camera()).setting();
    }

    Exposure exposure(Setting setting) {
        return new Exposure(
                Optional.of(now),
                setting,
                state.day().light(),
                setting.flash() ? state.day().flash() : Optional.empty());
    }

    /** The entries that change a roll; for a finished one the day notes it, so that it is found again. */
    List<JournalEntry> on(Roll roll, RollEvent event) {
        List<JournalEntry> entries = new ArrayList<>(List.of(new JournalEntry.OnRoll(roll.id(), event)));
        if (roll.state() == Roll.State.FINISHED) {
            entries.add(
                    new JournalEntry.OnDay(new DayEvent.RollClosed(roll.id(), CameraPlace.of(roll), Optional.empty())));
        }
        return entries;
    }

    List<RollId> rollsToExport(Roll roll) {
        return roll.state() == Roll.State.FINISHED ? List.of(roll.id()) : List.of();
    }

    JournalStep happened(List<JournalEntry> entries) {
        List<JournalEntry> all = new ArrayList<>(before.carryOverEntries(now));
        all.addAll(entries);
        return new JournalStep(before.nextStep(), now, all);
    }

    ShootState after(List<JournalEntry> entries) {
        return entries.isEmpty() ? before : before.and(happened(entries));
    }

    Outcome.Accepted does(List<JournalEntry> entries, ShootState after, Outcome.Answer answer, List<RollId> settle) {
        return new Outcome.Accepted(
                entries.isEmpty() ? entries : happened(entries).entries(),
                after,
                answer,
                Outcome.ScreenAction.NOTHING,
                settle);
    }

    /** Says what changed in hand. */
    Outcome changed(Camera camera, CameraSetup inHand, String words) {
        List<JournalEntry> entries =
                List.of(new JournalEntry.OnDay(new DayEvent.CameraSetupChanged(camera.key(), inHand)));
        ShootState after = after(entries);
        return does(entries, after, state(after, words + lightNow(after), List.of()), List.of());
    }

    /**
     * What the light makes of the setting in hand, where that is no longer what it was: a filter leaves it a stop
     * under.
     */
    private String lightNow(ShootState after) {
        OptionalDouble was = StatusText.errorInHand(state);
        OptionalDouble is = StatusText.errorInHand(after);
        boolean isOther = is.isPresent() && (was.isEmpty() || Math.abs(was.getAsDouble() - is.getAsDouble()) > 0.04);
        return isOther ? " For this light " + Stops.error(is.getAsDouble()) + "." : "";
    }

    Outcome.Answer state(ShootState after, String words, List<Warning> warnings) {
        return new Outcome.Answer("state", words, StatusText.json(after), unsilenced(warnings));
    }

    List<Warning> unsilenced(List<Warning> warnings) {
        return warnings.stream()
                .filter(it -> !state.day().quiet().contains(it.code()))
                .toList();
    }

    private Outcome set(List<String> words) {
        Camera camera = camera();
        if (words.isEmpty()) {
            throw new CommandRejected("set what? such as set 4 125");
        }
        FrameArguments said = FrameArguments.ofFrame(words, camera, setting());
        if (said.count().isPresent()) {
            throw new CommandRejected("set logs nothing, so it takes no count");
        }
        confirm(said.doubt());
        CameraSetup inHand = state.inHand(camera).with(said.change());
        return changed(
                camera, inHand, "Set on " + camera.key() + ": " + StatusText.setting(inHand) + ". Nothing logged.");
    }

    private Outcome hold(List<String> words) {
        Camera camera = camera();
        if (words.isEmpty() || words.size() > 1) {
            throw new CommandRejected("hold one aperture or one time: hold f2.8, hold 1/250, hold off");
        }
        CameraSetup before = state.inHand(camera);
        if (words.get(0).equals("off")) {
            return changed(camera, before.holding(Optional.empty()), "Nothing is held on " + camera.key() + ".");
        }
        Token token = Tokens.token(words.get(0));
        if (!token.is(Token.Kind.APERTURE)
                && !token.is(Token.Kind.TIME)
                && !token.is(Token.Kind.BULB)
                && !token.is(Token.Kind.BARE)) {
            throw new CommandRejected(words.get(0) + " is no aperture and no time: hold f2.8, hold 1/250, hold off");
        }
        SettingPatch change = DialNumbers.of(camera, before.setting().lens()).pair(List.of(token));
        Hold hold = change.aperture()
                .map(Hold::of)
                .orElseGet(() -> Hold.of(change.time().orElseThrow()));
        return changed(
                camera, before.holding(Optional.of(hold)), "Suggestions on " + camera.key() + " keep " + hold + ".");
    }

    private Outcome state(String word, List<String> words) {
        Camera camera = camera();
        CameraSetup before = state.inHand(camera);
        String value = one(
                word,
                words,
                switch (word) {
                    case "lens" -> "lens 80";
                    case "bias" -> "bias +1/3";
                    case "ext" -> "ext 110mm";
                    case "tube" -> "tube 30mm";
                    case "mag" -> "mag 0.5";
                    default -> word + " on";
                });
        SettingPatch change = CameraStateParser.read(
                word, value, camera, before.setting().lens(), before.setting().zoomMm());
        CameraSetup inHand = before.with(change);
        return changed(
                camera,
                inHand,
                switch (word) {
                    case "lens" ->
                        "Lens on " + camera.key() + ": "
                                + inHand.setting().lens().orElseThrow().name() + ".";
                    case "bias" ->
                        inHand.setting().biasStops() == 0
                                ? "No bias on " + camera.key() + "."
                                : "Bias on " + camera.key() + ": "
                                        + Stops.words(inHand.setting().biasStops())
                                        + (inHand.setting().biasStops() > 0 ? " more" : " less")
                                        + " light on the film.";
                    case "tripod" -> camera.key() + ": " + word + " " + value + ".";
                    default ->
                        value.equals("off")
                                ? "No extension on " + camera.key() + "."
                                : "On " + camera.key() + ": "
                                        + FrameArguments.extensionWords(
                                                inHand.setting().extension(), inHand.setting()) + ".";
                });
    }

    private Outcome filter(List<String> words) {
        Camera camera = camera();
        CameraSetup inHand = state.inHand(camera).with(SettingPatch.filters(FilterParser.read(words)));
        Setting setting = inHand.setting();
        if (setting.filters().isEmpty()) {
            return changed(camera, inHand, "No filter on " + camera.key() + ".");
        }
        String each = String.join(
                ", ", setting.filters().stream().map(CommandContext::loss).toList());
        String sum = setting.filters().size() > 1 ? ", together " + Stops.words(setting.filterStops()) : "";
        return changed(camera, inHand, "On " + camera.key() + ": " + each + sum + ".");
    }

    /** A factor and its stops as one thing: {@code 3x = 1.6 stops}; other filters as they say themselves. */
    private static String loss(Filter filter) {
        boolean factor =
                filter.name().endsWith("x") && Tokens.isDigit(filter.name().charAt(0));
        return factor ? filter.name() + " = " + Stops.words(filter.stops()) : filter.words();
    }

    private Outcome cam(List<String> words) {
        if (words.isEmpty() || words.size() > 2) {
            throw new CommandRejected(
                    "which camera? one of " + String.join(", ", state.kit().keys(Kit.Sort.CAMERAS)));
        }
        return take(place(words));
    }

    /** The place that a camera's key, and maybe a back, name. */
    CameraPlace place(List<String> words) {
        String key = words.get(0).toLowerCase(Locale.ROOT);
        Camera camera = state.camera(key)
                .orElseThrow(() -> new CommandRejected(state.kit().whyNot(Kit.Sort.CAMERAS, key)));
        if (camera.backs().isEmpty()) {
            if (words.size() > 1) {
                throw new CommandRejected(camera.name() + " has no backs to change");
            }
            return new CameraPlace(key, Optional.empty());
        }
        String typed = words.size() > 1
                ? words.get(1)
                : state.day().lastBack().getOrDefault(key, camera.backs().get(0));
        String back = camera.backs().stream()
                .filter(it -> it.equalsIgnoreCase(typed))
                .findFirst()
                .orElseThrow(() -> new CommandRejected(typed + " is no back of " + camera.name()
                        + Nearest.question(typed, camera.backs()) + "; it has " + String.join(", ", camera.backs())));
        return new CameraPlace(key, Optional.of(back));
    }

    private Outcome back(List<String> words) {
        Camera camera = camera();
        String back = one("back", words, "back 2");
        return take(place(List.of(camera.key(), back)));
    }

    private Outcome take(CameraPlace place) {
        List<JournalEntry> entries = List.of(new JournalEntry.OnDay(new DayEvent.CameraSelected(place)));
        ShootState after = after(entries);
        Optional<Roll> roll = after.rollInHand();
        String words = after.cameraInHand().map(Camera::name).orElse(place.camera())
                + place.back().map(it -> ", back " + it).orElse("") + ": "
                + roll.map(it -> it.id() + ", " + it.film().stock().name() + " EI "
                                + it.film().index() + ", next frame " + it.next() + ", " + StatusText.leftWords(it))
                        .orElse("no film")
                + "." + state.kit().remark(Kit.Sort.CAMERAS, place.camera());
        return does(entries, after, state(after, words, EntryWarnings.between(state, after, now)), List.of());
    }

    /** A count of frames behind a word, x1 where none is typed. */
    static int count(String word, List<String> rest) {
        if (rest.isEmpty()) {
            return 1;
        }
        Token token = Tokens.token(one(word, rest, word + " x3"));
        if (!token.is(Token.Kind.COUNT)) {
            throw new CommandRejected(rest.get(0) + " is no count: " + word + " x3");
        }
        return FrameArguments.count(token);
    }

    /** A frame number. */
    static int number(String word, String what) {
        return Tokens.number(word)
                .filter(it -> it == Math.rint(it) && it <= 250)
                .map(Double::intValue)
                .orElseThrow(() -> new CommandRejected(word + " is no frame number: " + what));
    }

    static Json.Obj fields(Roll roll) {
        return Json.object().and("roll", roll.id()).and("framesLeft", roll.framesLeft());
    }

    static String numbers(int from, int to) {
        return from == to ? "frame " + from : "frames " + from + " to " + to;
    }
}
