package takeup.handoff;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.ExposureValue;
import takeup.exposure.Extension;
import takeup.exposure.FilmSpeed;
import takeup.exposure.FlashLight;
import takeup.exposure.Light;
import takeup.exposure.Reciprocity;
import takeup.exposure.Scale;
import takeup.kit.Camera;
import takeup.kit.FilmSize;
import takeup.kit.Filter;
import takeup.kit.Lens;
import takeup.kit.Stock;
import takeup.roll.Condition;
import takeup.roll.Development;
import takeup.roll.Exposure;
import takeup.roll.Film;
import takeup.roll.Frame;
import takeup.roll.LoadCheck;
import takeup.roll.NoteEvent;
import takeup.roll.Roll;
import takeup.roll.RollChange;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.RollRecord;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/** Rolls to which anything may have happened, the same for the same seed. */
final class RandomRolls {
    private static final List<Stock> STOCKS = List.of(
            Rolls.NEGATIVE,
            Rolls.stock(
                    "bw400",
                    "Black-and-white 400",
                    Stock.Kind.BW_NEGATIVE,
                    "black-and-white",
                    400,
                    new Reciprocity.Power(1.31, 1)),
            Rolls.stock(
                    "cr50",
                    "Colour reversal 50",
                    Stock.Kind.COLOUR_REVERSAL,
                    "E-6",
                    50,
                    new Reciprocity.None(OptionalDouble.of(128))),
            Rolls.stock(
                    "bw100",
                    "Black-and-white 100",
                    Stock.Kind.BW_REVERSAL,
                    "reversal",
                    100,
                    new Reciprocity.Table(List.of(
                            new Reciprocity.Point(1, 1),
                            new Reciprocity.Point(10, 50),
                            new Reciprocity.Point(100, 1200)))),
            Rolls.stock(
                    "steep",
                    "Steep 100",
                    Stock.Kind.BW_NEGATIVE,
                    "black-and-white",
                    100,
                    new Reciprocity.Opening(List.of(
                            new Reciprocity.Point(1, 0), new Reciprocity.Point(2, 1), new Reciprocity.Point(4, 2)))));

    private final Random random;
    private final List<String> words;
    private OffsetDateTime now = Rolls.at("09:00:00.25");

    private RandomRolls(long seed, List<String> words) {
        this.random = new Random(seed);
        this.words = words;
    }

    /** A roll whose notes and other words are taken from a list. */
    static Roll of(long seed, List<String> words) {
        return new RandomRolls(seed, words).rolls().roll();
    }

    /** All that happened to the same roll. */
    static List<RollRecord> records(long seed, List<String> words) {
        return new RandomRolls(seed, words).rolls().records();
    }

    /**
     * Whether no number is below 0, which comes of dropping frames from in front of a counter that was set back to 0.
     */
    static boolean countsFromNought(Roll roll) {
        return roll.next() >= 0
                && roll.frames().stream().allMatch(it -> it.number() >= 0 && it.loggedAs() >= 0)
                && roll.counterChecks().stream().allMatch(it -> it.expected() >= 0);
    }

    private Rolls rolls() {
        Camera camera = random.nextInt(5) == 0 ? Rolls.COMPACT : Rolls.REFLEX;
        Film film = new Film(
                any(STOCKS),
                any(List.of(FilmSize.values())),
                new FilmSpeed(any(List.of(25.0, 80.0, 200.0, 400.0, 1600.0))),
                new Development(maybe(words).orElse("C-41"), any(List.of(-1.0, 0.0, 0.5, 1.0, 2.0))),
                any(List.of(1, 12, 16, 36)));
        Rolls rolls = new Rolls()
                .then(
                        now,
                        new RollEvent.Loaded(
                                new RollId(any(List.of("R", "ABC")), 1 + random.nextInt(99_999_999)),
                                camera,
                                camera.backs().isEmpty() ? Optional.empty() : maybe(List.of("1", "2")),
                                film));
        for (int more = random.nextInt(40); more > 0; more--) {
            now = now.plusSeconds(random.nextInt(2400)).plusNanos(random.nextInt(1_000_000_000));
            rolls.then(now, event(rolls.roll().next(), rolls.steps()));
        }
        return rolls;
    }

    private RollEvent event(int next, int steps) {
        int some = random.nextInt(Math.max(1, next)) + random.nextInt(2);
        return switch (random.nextInt(22)) {
            case 0 -> new RollEvent.DoubleAnnounced(1);
            case 1, 2 -> new RollEvent.ExposedAgain(exposure(), maybe(words));
            case 3, 4 -> new RollEvent.Corrected(some, some + random.nextInt(3), change());
            case 5 -> new RollEvent.Dropped(some, some + random.nextInt(2), Optional.empty());
            case 6 -> new RollEvent.CounterShown(random.nextInt(40));
            case 7 ->
                new RollEvent.RollCorrected(new RollChange(
                        maybe(STOCKS),
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.of(random.nextInt(11) - 5),
                        maybe(words),
                        OptionalInt.empty()));
            case 8 -> new NoteEvent.Noted(any(words));
            case 9 -> new NoteEvent.ConditionNoted(new Condition(any(List.of(Condition.Kind.values())), maybe(words)));
            case 10 -> new RollEvent.Unloaded();
            case 11 -> new RollEvent.Undone(random.nextInt(20) == 0 ? 1 : 1 + random.nextInt(steps));
            case 12 -> new RollEvent.Redone(1 + random.nextInt(steps));
            case 13 -> new RollEvent.Unknown("later", "{\"event\":\"later\"}");
            case 14 -> new RollEvent.Added(frame(some), RollEvent.Origin.INSERTED, OptionalInt.of(some));
            case 15 ->
                new RollEvent.LoadChecked(
                        any(List.of(LoadCheck.What.values())), any(List.of(LoadCheck.Answer.values())));
            case 16 -> new RollEvent.Rewound();
            default -> new RollEvent.Added(frame(next), RollEvent.Origin.LOGGED, OptionalInt.empty());
        };
    }

    private Frame frame(int number) {
        return Frame.of(
                number,
                random.nextInt(3) > 0 ? Frame.Kind.EXPOSED : any(List.of(Frame.Kind.values())),
                random.nextInt(8) == 0 ? Exposure.UNKNOWN : exposure(),
                maybe(words));
    }

    private Exposure exposure() {
        Optional<OffsetDateTime> at = random.nextInt(6) == 0 ? Optional.empty() : Optional.of(now);
        return new Exposure(
                at,
                Setting.NONE.with(change()).with(change()),
                random.nextBoolean() ? Optional.of(light()) : Optional.empty(),
                random.nextInt(4) == 0
                        ? Optional.of(new FlashLight(aperture(), new FilmSpeed(200), "m flash 8", now))
                        : Optional.empty());
    }

    private Light light() {
        // Whole and round values on purpose: that is where a sum comes to a whole stop.
        double ev = random.nextBoolean() ? random.nextInt(20) - 2 : random.nextDouble() * 40 - 20;
        return new Light(
                new ExposureValue(ev),
                any(List.of(Light.Method.values())),
                any(List.of("m 5.6 125", "m ev11.3")),
                random.nextBoolean() ? OptionalDouble.of(random.nextDouble() * 5) : OptionalDouble.empty(),
                random.nextBoolean() ? OptionalInt.of(random.nextInt(11)) : OptionalInt.empty(),
                random.nextBoolean() ? OptionalDouble.of(200) : OptionalDouble.empty(),
                now.minusMinutes(random.nextInt(50)));
    }

    private SettingPatch change() {
        List<SettingPatch> all = new ArrayList<>(List.of(
                SettingPatch.aperture(aperture()),
                SettingPatch.time(time()),
                SettingPatch.lens(any(lenses())),
                SettingPatch.zoom(75 + random.nextInt(75)),
                SettingPatch.distance(10 * 0.3048 * random.nextDouble() + 0.1),
                SettingPatch.filters(
                        random.nextBoolean() ? List.of() : List.of(new Filter("yellow", 1), new Filter("+1", 1))),
                SettingPatch.extension(any(List.of(
                        Extension.NONE,
                        new Extension(Extension.Kind.TUBE, 30),
                        new Extension(Extension.Kind.DRAW, 160),
                        new Extension(Extension.Kind.MAGNIFICATION, 0.5)))),
                SettingPatch.bias(any(List.of(-1.0, 0.0, 1 / 3.0, 1.0))),
                SettingPatch.flash(random.nextInt(3) == 0),
                SettingPatch.tripod(random.nextBoolean()),
                SettingPatch.kind(any(List.of(Frame.Kind.values()))),
                SettingPatch.note(any(words))));
        SettingPatch change = SettingPatch.NOTHING;
        for (SettingPatch one : all) {
            change = random.nextInt(3) == 0 ? change.and(one) : change;
        }
        return change;
    }

    private static List<Lens> lenses() {
        return Rolls.REFLEX.lenses();
    }

    private Aperture aperture() {
        return switch (random.nextInt(3)) {
            case 0 -> any(Scale.FULL.apertures());
            case 1 -> any(Scale.THIRD.apertures()).plusTenths(random.nextInt(10));
            default -> Aperture.literal(7.7);
        };
    }

    private ExposureTime time() {
        return switch (random.nextInt(4)) {
            case 0 -> any(Scale.HALF.times());
            case 1 -> ExposureTime.literal(any(List.of(1 / 300.0, 0.7, 12.5, 60.5, 61.0, 250.0, 3600.0, 7205.0)));
            default -> any(Scale.FULL.times());
        };
    }

    private <T> T any(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    private <T> Optional<T> maybe(List<T> list) {
        return random.nextBoolean() ? Optional.of(any(list)) : Optional.empty();
    }
}
