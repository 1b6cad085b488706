package takeup.journal;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import takeup.day.Bag;
import takeup.day.BulbTimer;
import takeup.day.CameraEvent;
import takeup.day.CameraPlace;
import takeup.day.CameraSetup;
import takeup.day.CamerasInUse;
import takeup.day.Day;
import takeup.day.DayEvent;
import takeup.day.FilmLot;
import takeup.day.Fridge;
import takeup.day.KeyMoment;
import takeup.day.Metering;
import takeup.day.PaperEvent;
import takeup.day.Plan;
import takeup.day.PlanEvent;
import takeup.day.ShootInfo;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.ExposureValue;
import takeup.exposure.Extension;
import takeup.exposure.FilmSpeed;
import takeup.exposure.FlashLight;
import takeup.exposure.Light;
import takeup.exposure.Scale;
import takeup.kit.Camera;
import takeup.kit.FilmSize;
import takeup.kit.Filter;
import takeup.kit.Hold;
import takeup.kit.Lens;
import takeup.kit.ProfileReader;
import takeup.kit.Stock;
import takeup.kit.Warning;
import takeup.roll.Assignment;
import takeup.roll.ClockShift;
import takeup.roll.Condition;
import takeup.roll.Coordinates;
import takeup.roll.Costs;
import takeup.roll.DevelopedIn;
import takeup.roll.Development;
import takeup.roll.Exposure;
import takeup.roll.Film;
import takeup.roll.Frame;
import takeup.roll.LoadCheck;
import takeup.roll.NoteEvent;
import takeup.roll.Place;
import takeup.roll.RollChange;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.RollLabel;
import takeup.roll.Scene;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/** Events of every kind with every field now there and now missing, the same for the same seed. */
public final class RandomEvents {
    private static final List<Camera> CAMERAS =
            List.of(camera("645", """
                    {"name": "645 reflex", "frameSize": "6x4.5", "frames": {"120": 16, "220": 32}, "backs": ["a", "b"],
                     "times": {"step": "full", "longest": "8s", "fastest": "1/1000", "bulb": true}, "syncTime": "1/60",
                     "lenses": [{"key": "80", "name": "80mm f/2.8", "focalMm": 80, "widest": 2.8, "narrowest": 22, "step": "half"},
                                {"key": "zoom", "name": "105-210mm f/4.5", "focalMm": [105, 210], "marks": [4.5, 5.6, 8, 11, 16, 22, 32]}]}"""), camera("Press-9", """
                    {"name": "Folding camera \\"Old Anna\\"", "frameSize": "6x9", "frames": {"120": 8},
                     "times": {"marks": ["1s", "1/2", "1/5", "1/10", "1/25", "1/50", "1/100", "1/300"], "bulb": true},
                     "lenses": [{"key": "105", "name": "105mm f/4.5", "focalMm": 105, "marks": [4.5, 6.3, 9, 12.5, 18, 25, 36]}]}"""), camera("pocket", """
                    {"name": "Pocket compact", "frameSize": "24x36", "frames": {"135": 36}}"""));
    private static final List<Stock> STOCKS = List.of(stock("cn400", """
                    {"name": "Colour negative 400", "kind": "colour-negative", "process": "C-41", "boxSpeed": 400, "usualEI": 200,
                     "filmSizes": ["135", "120", "220"], "latitude": {"underStops": 1, "overStops": 3},
                     "reciprocity": {"model": "none", "upToSeconds": 1}}"""), stock("bw400", """
                    {"name": "Black-and-white 400", "kind": "bw-negative", "process": "black-and-white", "boxSpeed": 400, "usualEI": 320,
                     "filmSizes": ["120"], "latitude": {"underStops": 1.5, "overStops": 2.5},
                     "reciprocity": {"model": "power", "exponent": 1.31, "fromSeconds": 1}}"""), stock("slide", """
                    {"name": "Colour reversal 100", "kind": "colour-reversal", "process": "E-6", "boxSpeed": 100, "usualEI": 100,
                     "filmSizes": ["120", "135"], "latitude": {"underStops": 0.3, "overStops": 0.5},
                     "reciprocity": {"model": "stops", "points": [[1, 0], [10, 0.5], [100, 1.3]]}}"""));
    private static final List<String> WORDS = List.of(
            "bow seat",
            "",
            "Mia \"the cox\" \\ stroke",
            "née Søren, 8+ \uD83D\uDEA3",
            "a\ttab\nand a line\r\n",
            "\u0000\u001b[2J\u0085\u202e",
            "{\"n\":7,\"step\":1",
            "x\",\"crc\":\"00000000\"}",
            "=1+1",
            "\u2028\u2029\uFEFF",
            "x".repeat(4000));

    private final Random random;

    public RandomEvents(long seed) {
        random = new Random(seed);
    }

    private static Camera camera(String key, String text) {
        return ProfileReader.camera(key, key + ".json", text).profile().orElseThrow();
    }

    private static Stock stock(String key, String text) {
        return ProfileReader.stock(key, key + ".json", text).profile().orElseThrow();
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private <T> Optional<T> maybe(Supplier<T> value) {
        return random.nextInt(3) == 0 ? Optional.empty() : Optional.of(value.get());
    }

    private OptionalDouble maybeNumber(double from, double to) {
        return random.nextInt(3) == 0 ? OptionalDouble.empty() : OptionalDouble.of(number(from, to));
    }

    private OptionalInt maybeCount() {
        return random.nextInt(3) == 0 ? OptionalInt.empty() : OptionalInt.of(random.nextInt(40));
    }

    /** Now a round number, now one with all the digits that a double has; never minus zero, which is written as 0. */
    private double number(double from, double to) {
        double number = from + random.nextDouble() * (to - from);
        return random.nextBoolean() ? number : Math.min(to, Math.max(from, Math.rint(number))) + 0.0;
    }

    String words() {
        return one(WORDS);
    }

    public OffsetDateTime at() {
        LocalTime time = LocalTime.ofNanoOfDay(Math.floorMod(random.nextLong(), 86_400_000_000_000L));
        LocalTime cut = switch (random.nextInt(3)) {
            case 0 -> time;
            case 1 -> time.withNano(0);
            default -> LocalTime.of(time.getHour(), time.getMinute());
        };
        return OffsetDateTime.of(
                LocalDate.of(2026, 9, 1 + random.nextInt(30)),
                cut,
                ZoneOffset.ofTotalSeconds(900 * (random.nextInt(105) - 48)));
    }

    private Aperture aperture() {
        Aperture mark = one(one(List.of(Scale.values())).apertures());
        return switch (random.nextInt(4)) {
            case 0 -> Aperture.literal(number(1, 64));
            case 1 -> mark.plusTenths(random.nextInt(10));
            default -> mark;
        };
    }

    private ExposureTime time() {
        return random.nextInt(4) == 0
                ? ExposureTime.literal(number(0.0001, 3600))
                : one(one(List.of(Scale.values())).times());
    }

    private Lens lens() {
        return one(CAMERAS.get(random.nextInt(2)).lenses());
    }

    private List<Filter> filters() {
        return one(List.of(
                List.of(),
                List.of(Filter.named("yellow").orElseThrow()),
                List.of(new Filter("nd0.9", number(0, 20)), Filter.factor("3x", 3))));
    }

    private Extension extension() {
        Extension.Kind kind = one(List.of(Extension.Kind.values()));
        return kind == Extension.Kind.NONE ? Extension.NONE : new Extension(kind, number(1, 50));
    }

    private Setting setting() {
        return new Setting(
                maybe(this::aperture),
                maybe(this::time),
                new Setting.LensSetup(
                        maybe(this::lens), maybeNumber(20, 300), maybeNumber(0.3, 100), filters(), extension()),
                number(-3, 3),
                random.nextBoolean(),
                random.nextBoolean());
    }

    private Light light() {
        return new Light(
                new ExposureValue(number(-6, 20)),
                one(List.of(Light.Method.values())),
                words(),
                maybeNumber(0, 5),
                maybeCount(),
                maybeNumber(25, 3200),
                at(),
                10 + random.nextInt(21));
    }

    private FlashLight flash() {
        return new FlashLight(
                aperture(),
                new FilmSpeed(number(25, 3200)),
                maybe(() -> new FlashLight.Measured(
                        maybe(this::time), maybe(this::aperture), maybe(() -> new ExposureValue(number(-6, 20))))),
                words(),
                at());
    }

    private Exposure exposure() {
        return new Exposure(maybe(this::at), setting(), maybe(this::light), maybe(this::flash), maybe(this::shift));
    }

    private ClockShift shift() {
        return new ClockShift(
                1 + random.nextInt(100_000) - 200_000L * random.nextInt(2),
                ZoneOffset.ofHours(random.nextInt(13)),
                ZoneOffset.ofHoursMinutes(5, 45));
    }

    private Frame frame() {
        List<Exposure> further = new ArrayList<>();
        for (int more = random.nextInt(3); more > 1; more--) {
            further.add(exposure());
        }
        return new Frame(
                random.nextInt(40),
                maybeCount(),
                one(List.of(Frame.Kind.values())),
                exposure(),
                further,
                maybe(this::words),
                new Scene(people(), shootPlace(), maybe(this::assignment)),
                maybe(this::words));
    }

    private List<String> people() {
        return random.nextBoolean() ? List.of() : List.of(words(), words());
    }

    private Place shootPlace() {
        return random.nextBoolean()
                ? Place.UNKNOWN
                : new Place(
                        maybe(this::words),
                        maybe(() -> new Coordinates(number(-90, 90), number(-180, 180))),
                        random.nextBoolean());
    }

    private Assignment assignment() {
        return new Assignment(words(), at().toLocalDate(), maybe(this::words), shootPlace());
    }

    private SettingPatch change() {
        return new SettingPatch(
                maybe(this::aperture),
                maybe(this::time),
                new SettingPatch.LensPatch(
                        maybe(this::lens),
                        maybeNumber(20, 300),
                        maybeNumber(0.3, 100),
                        maybe(this::filters),
                        maybe(this::extension)),
                maybeNumber(-3, 3),
                maybe(random::nextBoolean),
                maybe(random::nextBoolean),
                new SettingPatch.FramePatch(
                        maybe(() -> one(List.of(Frame.Kind.values()))),
                        maybe(this::words),
                        maybe(this::people),
                        maybe(this::shootPlace)));
    }

    Film film() {
        return new Film(
                one(STOCKS),
                one(List.of(FilmSize.values())),
                new FilmSpeed(number(12, 6400)),
                new Development(words(), number(-2, 3)),
                1 + random.nextInt(250),
                label());
    }

    private RollLabel label() {
        return new RollLabel(maybe(this::words), maybe(this::words));
    }

    private RollId roll() {
        return new RollId(one(List.of("R", "AB", "XYZ")), 1 + random.nextInt(99_999));
    }

    private CameraPlace place() {
        return new CameraPlace(one(CAMERAS).key(), maybe(() -> one(List.of("a", "b"))));
    }

    private CameraSetup inHand() {
        return new CameraSetup(setting(), maybe(() -> random.nextBoolean() ? Hold.of(aperture()) : Hold.of(time())));
    }

    private long step() {
        return 1 + random.nextInt(1_000_000);
    }

    RollEvent ofRoll() {
        return switch (random.nextInt(22)) {
            case 0 -> new RollEvent.Loaded(roll(), one(CAMERAS), maybe(() -> one(List.of("a", "b"))), film());
            case 1 -> new RollEvent.DoubleAnnounced(1 + random.nextInt(4));
            case 2 -> new RollEvent.ExposedAgain(exposure(), maybe(this::words));
            case 3 -> new RollEvent.Corrected(random.nextInt(40), random.nextInt(40), change());
            case 4 -> new RollEvent.Dropped(random.nextInt(40), random.nextInt(40), maybe(this::roll));
            case 5 -> new RollEvent.CounterShown(random.nextInt(40));
            case 6 ->
                new RollEvent.RollCorrected(new RollChange(
                        maybe(() -> one(STOCKS)),
                        maybe(() -> one(List.of(FilmSize.values()))),
                        maybe(() -> new FilmSpeed(number(12, 6400))),
                        maybeNumber(-2, 3),
                        maybe(this::words),
                        maybeCount(),
                        label()));
            case 7 -> new NoteEvent.Noted(words());
            case 8 ->
                new NoteEvent.ConditionNoted(new Condition(one(List.of(Condition.Kind.values())), maybe(this::words)));
            case 9 -> new RollEvent.Unloaded();
            case 10 -> new RollEvent.Undone(step());
            case 11 -> new RollEvent.Redone(step());
            case 12 ->
                new RollEvent.Unknown(
                        "slate",
                        "{\"event\":\"slate\",\"board\":[1.0,1e3,12345678901234567890,\"\\u00e9\\/\"],\"of\":{\"n\":null}}");
            case 13 -> new NoteEvent.ShootAssigned(assignment());
            case 14 ->
                new RollEvent.LoadChecked(
                        one(List.of(LoadCheck.What.values())), one(List.of(LoadCheck.Answer.values())));
            case 17 -> new RollEvent.BackMoved(one(CAMERAS), one(List.of("a", "b")));
            case 15 -> new RollEvent.Rewound();
            case 16 -> new RollEvent.Reloaded(one(CAMERAS), maybe(() -> one(List.of("a", "b"))), random.nextInt(5));
            case 18 ->
                new NoteEvent.Developed(new DevelopedIn(
                        "d" + words(),
                        maybeCount(),
                        maybeNumber(15, 30),
                        maybe(this::words),
                        maybe(this::words),
                        maybe(() -> at().toLocalDate())));
            case 19 ->
                new NoteEvent.CostNoted(
                        one(List.of(Costs.Kind.values())), BigDecimal.valueOf(random.nextInt(100_000), 2));
            case 20 -> new NoteEvent.Released(people(), maybe(this::words));
            default -> new RollEvent.Added(frame(), one(List.of(RollEvent.Origin.values())), maybeCount());
        };
    }

    DayEvent ofDay() {
        return switch (random.nextInt(27)) {
            case 0 -> new CameraEvent.CameraSelected(place());
            case 1 -> new CameraEvent.MeterSelected(words(), maybe(this::time));
            case 2 ->
                new CameraEvent.LightMetered(
                        light(),
                        words(),
                        List.of(one(List.of(Warning.Code.values())), one(List.of(Warning.Code.values()))));
            case 3 -> new CameraEvent.FlashMetered(flash());
            case 4 -> new DayEvent.WarningSilenced(one(List.of(Warning.Code.values())));
            case 5 -> new DayEvent.RollClosed(roll(), place(), maybe(this::film));
            case 6 -> new DayEvent.Carried(day());
            case 7 -> new DayEvent.Undone(step());
            case 8 -> new DayEvent.Redone(step());
            case 9 ->
                new DayEvent.Unknown(
                        "bag", "{\"event\":\"bag\",\"rolls\":{\"cn400\":12.50},\"words\":\"left \\u0041nd right\"}");
            case 10 -> new CameraEvent.FlashCautioned(one(CAMERAS).key());
            case 11 -> new CameraEvent.TimerStarted(one(CAMERAS).key(), timer());
            case 12 -> new CameraEvent.TimerStopped(one(CAMERAS).key());
            case 13 -> new DayEvent.GuideDismissed();
            case 14 -> new DayEvent.ClockShifted(shift());
            case 17 -> new PlanEvent.ShootOpened(shoot());
            case 24 -> new PlanEvent.SceneSet(people(), shootPlace());
            case 18 -> new PlanEvent.MomentPlanned(moment());
            case 15 -> new PlanEvent.MomentDropped(1 + random.nextInt(99));
            case 16 -> new PlanEvent.BagChanged(lot(), random.nextInt(40) - 20, maybe(this::roll));
            case 26 -> new DayEvent.RollNamed(roll(), "B-" + random.nextInt(99));
            case 25 -> new PlanEvent.FridgeChanged(lot(), random.nextInt(40) - 20);
            case 19 -> new DayEvent.RoutineSet(random.nextBoolean());
            case 20 -> new PaperEvent.PaperStarted(roll());
            case 21 -> new PaperEvent.PaperLineRejected(words());
            case 22 -> new PaperEvent.PaperFinished();
            default -> new CameraEvent.CameraSetupChanged(one(CAMERAS).key(), inHand());
        };
    }

    private BulbTimer timer() {
        return new BulbTimer(at(), maybeNumber(1, 3600));
    }

    /** A day as it is carried over: nothing is silenced on it. */
    private Day day() {
        Map<String, CameraSetup> hands = new LinkedHashMap<>();
        Map<String, String> backs = new LinkedHashMap<>();
        Set<CameraPlace> used = new LinkedHashSet<>();
        Map<CameraPlace, Film> films = new LinkedHashMap<>();
        Set<String> flashed = new LinkedHashSet<>();
        Map<String, BulbTimer> timers = new LinkedHashMap<>();
        for (int more = random.nextInt(4); more > 0; more--) {
            hands.put(one(CAMERAS).key(), inHand());
            backs.put(one(CAMERAS).key(), one(List.of("a", "b")));
            used.add(place());
            films.put(place(), film());
            flashed.add(one(CAMERAS).key());
            timers.put(one(CAMERAS).key(), timer());
        }
        Map<String, RollId> names = new LinkedHashMap<>();
        for (int more = random.nextInt(4); more > 0; more--) {
            names.put("B-" + random.nextInt(1000), roll());
        }
        CamerasInUse cameras = new CamerasInUse(maybe(this::place), used, backs, hands, films, flashed, timers, names);
        Metering metering = new Metering(maybe(this::words), maybe(this::time), maybe(this::light), maybe(this::flash));
        Plan plan = Plan.NONE;
        Bag bag = Bag.NONE;
        for (int more = random.nextInt(4); more > 0; more--) {
            plan = plan.with(moment()).without(1 + random.nextInt(99));
            bag = bag.plus(lot(), random.nextInt(12)).into(roll(), lot());
        }
        return new Day(
                cameras,
                metering,
                new Day.Showing(
                        maybe(this::shoot),
                        maybe(() -> Scene.NONE.with(List.of(words())).with(shootPlace()))),
                plan,
                new Day.Supply(
                        bag, random.nextBoolean() ? Fridge.NONE : Fridge.NONE.plus(lot(), 3 + random.nextInt(9))),
                Set.of(),
                random.nextBoolean(),
                Optional.empty());
    }

    private ShootInfo shoot() {
        return new ShootInfo("Regatta " + words(), at().toLocalDate(), shootPlace(), maybe(this::words));
    }

    private KeyMoment moment() {
        return new KeyMoment(
                1 + random.nextInt(99),
                at().toLocalDateTime(),
                "Start " + words(),
                random.nextInt(100),
                random.nextBoolean(),
                maybe(() -> one(CAMERAS).key()),
                maybe(() -> one(List.of("a", "b"))),
                maybeNumber(-6, 20));
    }

    private FilmLot lot() {
        return new FilmLot(
                one(STOCKS).key(),
                one(List.of(FilmSize.values())),
                maybe(() -> YearMonth.of(2020 + random.nextInt(9), 1 + random.nextInt(12))),
                maybe(() -> new BigDecimal(one(List.of("6.20", "0", "12", "1e2", "7.005")))),
                maybe(this::words));
    }
}
