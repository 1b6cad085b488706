package takeup.shoot;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.day.DayEvent;
import takeup.day.InHand;
import takeup.day.Place;
import takeup.kit.Camera;
import takeup.kit.Hold;
import takeup.kit.Json;
import takeup.kit.Kit;
import takeup.kit.Nearest;
import takeup.kit.Warning;
import takeup.roll.Change;
import takeup.roll.Exposure;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.Setting;

/**
 * Reads one typed line in a situation and works out what it comes to. Pure: nothing is written, so the same reading
 * serves the echo before Enter and the deed after it.
 */
public final class Interpreter {
    private static final int LONGEST_LINE = 1000;
    private static final List<String> TAKE_NOTES =
            List.of("blank", "unlogged", "slate", "tally", "fix", "insert", "lost", "n", "note", "condition");

    final Situation original;
    final Situation s;
    final String line;
    final OffsetDateTime now;
    /** The same to the millisecond, for the bulb timer alone. */
    final OffsetDateTime exact;
    /**
     * By how many seconds the clock was moved against the running time since the last frame or reading, as far as is
     * known.
     */
    final long drift;

    private final String letters;
    private Optional<String> doubt = Optional.empty();

    private Interpreter(Situation situation, String line, OffsetDateTime now, long drift, String letters) {
        this.original = situation;
        this.s = situation.turned(now);
        this.line = line;
        this.now = now.withNano(0);
        this.exact = now;
        this.drift = drift;
        this.letters = letters;
    }

    /** What a line comes to, under a clock that nobody moved while the program runs. */
    public static Outcome read(Situation situation, String line, OffsetDateTime now, String letters) {
        return read(situation, line, now, 0, letters);
    }

    /**
     * What a line comes to.
     *
     * @param situation what is true now
     * @param line as it was typed; not blank
     * @param now the time of day
     * @param drift by how many seconds the clock was moved since the last frame or reading, as a {@link ClockWatch}
     *     tells
     * @param letters the writer's letters for new roll numbers
     */
    public static Outcome read(Situation situation, String line, OffsetDateTime now, long drift, String letters) {
        Interpreter interpreter = new Interpreter(situation, line.strip(), now, drift, letters);
        try {
            Outcome outcome = Notices.with(interpreter.outcome(), situation, interpreter.now);
            return interpreter.doubt.isPresent() && outcome instanceof Outcome.Does does
                    ? new Outcome.Asked(interpreter.doubt.get() + "; yes takes it as typed", does)
                    : outcome;
        } catch (Refusal e) {
            return new Outcome.Refused(e.getMessage());
        } catch (NotReadYet e) {
            return new Outcome.Needs(e.roll);
        }
    }

    /** For lines that were not typed, such as those of a file. */
    static Interpreter apart(Situation situation, OffsetDateTime now, String letters) {
        return new Interpreter(situation, "", now, 0, letters);
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
            throw new Refusal("a line holds up to " + LONGEST_LINE + " characters, this one has " + line.length());
        }
        Tokens tokens = Tokens.of(line);
        if (s.day().paper().isPresent() && new PaperLines(this).takes(tokens)) {
            return new PaperLines(this).line(tokens);
        }
        if (isFrameLine(tokens)) {
            return new FrameLines(this).read(tokens);
        }
        String first = tokens.words().get(0);
        List<String> rest = tokens.words().subList(1, tokens.words().size());
        if (tokens.note().isPresent() && !TAKE_NOTES.contains(first) && !rest.contains("process")) {
            throw new Refusal("a note belongs to a frame or a roll; " + first + " takes none");
        }
        Corrections corrections = new Corrections(this);
        RollLines rolls = new RollLines(this);
        return switch (first) {
            case "m" -> new LightLines(this).reading(rest);
            case "meter" -> new LightLines(this).meter(rest);
            case "n" -> new FrameLines(this).note(raw(1));
            case "set" -> set(rest);
            case "hold" -> hold(rest);
            case "bias", "ext", "tube", "mag", "lens", "tripod" -> state(first, rest);
            case "flash" -> new FlashLines(this).read(rest);
            case "time" -> new TimerLines(this).time(rest);
            case "why" -> new LightLines(this).why(rest);
            case "filter" -> filter(rest);
            case "load" -> rolls.load(rest);
            case "unload" -> rolls.unload(rest);
            case "rewind" -> new RewindLines(this).rewind(rest);
            case "routine" -> new RoutineLines(this).routine(rest);
            case "yes", "no" -> new RoutineLines(this).answer(first, rest);
            case "push", "pull", "normal" -> rolls.push(first, rest);
            case "note" -> rolls.note(rest);
            case "condition" -> rolls.condition(rest);
            case "cam" -> cam(rest);
            case "back" -> back(rest);
            case "blank" -> new FrameLines(this).wasted(Frame.Kind.BLANK, rest, tokens.note());
            case "unlogged" -> new FrameLines(this).wasted(Frame.Kind.UNLOGGED, rest, tokens.note());
            case "slate" -> new SlateLines(this).read(rest, tokens.note());
            case "tally" -> new FrameLines(this).wasted(Frame.Kind.UNLOGGED, rest, tokens.note());
            case "paper" -> new PaperLines(this).begin(rest);
            case "done" -> new PaperLines(this).done(alone(first, rest));
            case "rating" -> new RatingLines(this).read(rest);
            case "double" -> new FrameLines(this).doubled(rest);
            case "lost" -> corrections.lost(rest, tokens.note());
            case "fix" -> corrections.fix(rest, tokens.note());
            case "insert" -> corrections.insert(rest, tokens.note());
            case "drop" -> corrections.drop(rest);
            case "move" -> corrections.move(rest);
            case "counter" -> corrections.counter(rest);
            case "undo", "u" -> new UndoLines(this).undo(alone(first, rest));
            case "redo" -> new UndoLines(this).redo(alone(first, rest));
            case "shoot" -> rest.isEmpty() ? new ScreenLines(this).read(first, rest) : new OccasionLines(this).open();
            case "plan" -> rest.isEmpty() ? new ScreenLines(this).read(first, rest) : new PlanLines(this).read(rest);
            case "bag" -> rest.isEmpty() ? new ScreenLines(this).read(first, rest) : new BagLines(this).read(rest);
            case "day-end" -> new DayEndLines(this).read(rest);
            default -> new ScreenLines(this).read(first, rest);
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
    String raw(int words) {
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
        for (int words = 1; !raw(words).isEmpty(); words++) {
            String left = raw(words);
            if (left.length() > word.length()
                    && left.regionMatches(true, 0, word, 0, word.length())
                    && Tokens.isBlank(left.charAt(word.length()))) {
                return raw(words + 1);
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
            throw new Refusal(word + " stands alone; " + rest.get(0) + " is one word too many");
        }
        return word;
    }

    static String one(String word, List<String> rest, String example) {
        if (rest.size() != 1) {
            throw new Refusal(word + " takes one word, such as " + example);
        }
        return rest.get(0);
    }

    void doubt(Optional<String> question) {
        doubt = question.or(() -> doubt);
    }

    String letters() {
        return letters;
    }

    Camera camera() {
        return s.camera()
                .orElseThrow(() -> new Refusal(
                        s.place().isPresent()
                                ? s.kit()
                                        .whyNot(
                                                Kit.Sort.CAMERAS,
                                                s.place().get().camera())
                                : "no camera in hand: type cam and one of "
                                        + String.join(", ", s.kit().keys(Kit.Sort.CAMERAS))));
    }

    Roll roll() {
        camera();
        return s.roll()
                .orElseThrow(() ->
                        new Refusal("no film in " + s.place().orElseThrow() + ": load a stock first (load cn400)"));
    }

    /** The roll of a typed number, or the one in hand; the example shows how a finished one is named. */
    Roll roll(Optional<RollId> id, String example) {
        return id.map(this::roll)
                .or(s::roll)
                .orElseThrow(() -> new Refusal(
                        "no film in " + s.place().map(Object::toString).orElse("hand")
                                + ": load a stock first, or name the roll (" + example + ")"));
    }

    /** The roll of a typed number; read in first if it is a finished one. */
    Roll roll(RollId id) {
        Roll roll = s.rolls().get(id);
        if (roll != null) {
            return roll;
        }
        if (s.known().contains(id) && !id.letters().equals(letters)) {
            throw new Refusal(id + " is a roll of another laptop, whose numbers begin with " + id.letters()
                    + ": only that one writes to it");
        }
        if (s.known().contains(id)) {
            throw new NotReadYet(id);
        }
        throw new Refusal("there is no roll " + id);
    }

    /** A roll number in front of other words, if one stands there. */
    Optional<RollId> rollNumber(List<String> words) {
        return words.isEmpty() ? Optional.empty() : RollId.parse(words.get(0));
    }

    Setting setting() {
        return s.inHand(camera()).setting();
    }

    Exposure exposure(Setting setting) {
        return new Exposure(
                Optional.of(now),
                setting,
                s.day().light(),
                setting.flash() ? s.day().flash() : Optional.empty());
    }

    /** The entries that change a roll; for a finished one the day notes it, so that it is found again. */
    List<Entry> on(Roll roll, RollEvent event) {
        List<Entry> entries = new ArrayList<>(List.of(new Entry.OnRoll(roll.id(), event)));
        if (roll.state() == Roll.State.FINISHED) {
            entries.add(new Entry.OnDay(new DayEvent.Touched(roll.id(), Situation.place(roll), Optional.empty())));
        }
        return entries;
    }

    List<RollId> settling(Roll roll) {
        return roll.state() == Roll.State.FINISHED ? List.of(roll.id()) : List.of();
    }

    Happened happened(List<Entry> entries) {
        List<Entry> all = new ArrayList<>(original.turningTo(now));
        all.addAll(entries);
        return new Happened(original.nextStep(), now, all);
    }

    Situation after(List<Entry> entries) {
        return entries.isEmpty() ? original : original.and(happened(entries));
    }

    Outcome.Does does(List<Entry> entries, Situation after, Outcome.Answer answer, List<RollId> settle) {
        return new Outcome.Does(
                entries.isEmpty() ? entries : happened(entries).entries(), after, answer, Outcome.Act.NOTHING, settle);
    }

    /** Says what changed in hand. */
    Outcome changed(Camera camera, InHand inHand, String words) {
        List<Entry> entries = List.of(new Entry.OnDay(new DayEvent.Changed(camera.key(), inHand)));
        Situation after = after(entries);
        return does(entries, after, state(after, words + lightNow(after), List.of()), List.of());
    }

    /**
     * What the light makes of the setting in hand, where that is no longer what it was: a filter leaves it a stop
     * under.
     */
    private String lightNow(Situation after) {
        OptionalDouble was = State.errorInHand(s);
        OptionalDouble is = State.errorInHand(after);
        boolean isOther = is.isPresent() && (was.isEmpty() || Math.abs(was.getAsDouble() - is.getAsDouble()) > 0.04);
        return isOther ? " For this light " + takeup.exposure.Stops.error(is.getAsDouble()) + "." : "";
    }

    Outcome.Answer state(Situation after, String words, List<Warning> warnings) {
        return new Outcome.Answer("state", words, State.json(after), loud(warnings));
    }

    List<Warning> loud(List<Warning> warnings) {
        return warnings.stream()
                .filter(it -> !s.day().quiet().contains(it.code()))
                .toList();
    }

    private Outcome set(List<String> words) {
        Camera camera = camera();
        if (words.isEmpty()) {
            throw new Refusal("set what? such as set 4 125");
        }
        FrameWords said = FrameWords.ofFrame(words, camera, setting());
        if (said.count().isPresent()) {
            throw new Refusal("set logs nothing, so it takes no count");
        }
        doubt(said.doubt());
        InHand inHand = s.inHand(camera).with(said.change());
        return changed(camera, inHand, "Set on " + camera.key() + ": " + State.setting(inHand) + ". Nothing logged.");
    }

    private Outcome hold(List<String> words) {
        Camera camera = camera();
        if (words.isEmpty() || words.size() > 1) {
            throw new Refusal("hold one aperture or one time: hold f2.8, hold 1/250, hold off");
        }
        InHand before = s.inHand(camera);
        if (words.get(0).equals("off")) {
            return changed(camera, before.holding(Optional.empty()), "Nothing is held on " + camera.key() + ".");
        }
        Token token = Tokens.token(words.get(0));
        if (!token.is(Token.Kind.APERTURE)
                && !token.is(Token.Kind.TIME)
                && !token.is(Token.Kind.BULB)
                && !token.is(Token.Kind.BARE)) {
            throw new Refusal(words.get(0) + " is no aperture and no time: hold f2.8, hold 1/250, hold off");
        }
        Change change = Rings.of(camera, before.setting().lens()).pair(List.of(token));
        Hold hold = change.aperture()
                .map(Hold::of)
                .orElseGet(() -> Hold.of(change.time().orElseThrow()));
        return changed(
                camera, before.holding(Optional.of(hold)), "Suggestions on " + camera.key() + " keep " + hold + ".");
    }

    private Outcome state(String word, List<String> words) {
        Camera camera = camera();
        InHand before = s.inHand(camera);
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
        Change change = StateWords.read(
                word, value, camera, before.setting().lens(), before.setting().zoomMm());
        InHand inHand = before.with(change);
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
                                        + takeup.exposure.Stops.words(
                                                inHand.setting().biasStops())
                                        + (inHand.setting().biasStops() > 0 ? " more" : " less")
                                        + " light on the film.";
                    case "tripod" -> camera.key() + ": " + word + " " + value + ".";
                    default ->
                        value.equals("off")
                                ? "No extension on " + camera.key() + "."
                                : "On " + camera.key() + ": "
                                        + FrameWords.extensionWords(
                                                inHand.setting().extension(), inHand.setting()) + ".";
                });
    }

    private Outcome filter(List<String> words) {
        Camera camera = camera();
        InHand inHand = s.inHand(camera).with(Change.filters(FilterWords.read(words)));
        Setting setting = inHand.setting();
        if (setting.filters().isEmpty()) {
            return changed(camera, inHand, "No filter on " + camera.key() + ".");
        }
        String each = String.join(
                ", ", setting.filters().stream().map(Interpreter::loss).toList());
        String sum =
                setting.filters().size() > 1 ? ", together " + takeup.exposure.Stops.words(setting.filterStops()) : "";
        return changed(camera, inHand, "On " + camera.key() + ": " + each + sum + ".");
    }

    /** A factor and its stops as one thing: {@code 3x = 1.6 stops}; other filters as they say themselves. */
    private static String loss(takeup.kit.Filter filter) {
        boolean factor =
                filter.name().endsWith("x") && Tokens.isDigit(filter.name().charAt(0));
        return factor ? filter.name() + " = " + takeup.exposure.Stops.words(filter.stops()) : filter.words();
    }

    private Outcome cam(List<String> words) {
        if (words.isEmpty() || words.size() > 2) {
            throw new Refusal(
                    "which camera? one of " + String.join(", ", s.kit().keys(Kit.Sort.CAMERAS)));
        }
        return take(place(words));
    }

    /** The place that a camera's key, and maybe a back, name. */
    Place place(List<String> words) {
        String key = words.get(0).toLowerCase(Locale.ROOT);
        Camera camera = s.camera(key).orElseThrow(() -> new Refusal(s.kit().whyNot(Kit.Sort.CAMERAS, key)));
        if (camera.backs().isEmpty()) {
            if (words.size() > 1) {
                throw new Refusal(camera.name() + " has no backs to change");
            }
            return new Place(key, Optional.empty());
        }
        String typed = words.size() > 1
                ? words.get(1)
                : s.day().lastBack().getOrDefault(key, camera.backs().get(0));
        String back = camera.backs().stream()
                .filter(it -> it.equalsIgnoreCase(typed))
                .findFirst()
                .orElseThrow(() -> new Refusal(typed + " is no back of " + camera.name()
                        + Nearest.question(typed, camera.backs()) + "; it has " + String.join(", ", camera.backs())));
        return new Place(key, Optional.of(back));
    }

    private Outcome back(List<String> words) {
        Camera camera = camera();
        String back = one("back", words, "back 2");
        return take(place(List.of(camera.key(), back)));
    }

    private Outcome take(Place place) {
        List<Entry> entries = List.of(new Entry.OnDay(new DayEvent.Took(place)));
        Situation after = after(entries);
        Optional<Roll> roll = after.roll();
        String words = after.camera().map(Camera::name).orElse(place.camera())
                + place.back().map(it -> ", back " + it).orElse("") + ": "
                + roll.map(it -> it.id() + ", " + it.film().stock().name() + " EI "
                                + it.film().index() + ", next frame " + it.next() + ", " + State.leftWords(it))
                        .orElse("no film")
                + "." + s.kit().remark(Kit.Sort.CAMERAS, place.camera());
        return does(entries, after, state(after, words, Begun.between(s, after, now)), List.of());
    }

    /** A count of frames behind a word, x1 where none is typed. */
    static int count(String word, List<String> rest) {
        if (rest.isEmpty()) {
            return 1;
        }
        Token token = Tokens.token(one(word, rest, word + " x3"));
        if (!token.is(Token.Kind.COUNT)) {
            throw new Refusal(rest.get(0) + " is no count: " + word + " x3");
        }
        return FrameWords.count(token);
    }

    /** A frame number. */
    static int number(String word, String what) {
        return Tokens.number(word)
                .filter(it -> it == Math.rint(it) && it <= 250)
                .map(Double::intValue)
                .orElseThrow(() -> new Refusal(word + " is no frame number: " + what));
    }

    static Json.Obj fields(Roll roll) {
        return Json.object().and("roll", roll.id()).and("framesLeft", roll.framesLeft());
    }

    static String numbers(int from, int to) {
        return from == to ? "frame " + from : "frames " + from + " to " + to;
    }

    static String upper(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
