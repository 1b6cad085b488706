package takeup.handoff;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.ExposureValue;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Light;
import takeup.exposure.Reciprocity;
import takeup.exposure.Scale;
import takeup.kit.Camera;
import takeup.kit.FilmSize;
import takeup.kit.Filter;
import takeup.kit.FrameSize;
import takeup.kit.Lens;
import takeup.kit.Ring;
import takeup.kit.Shutter;
import takeup.kit.Stock;
import takeup.roll.Condition;
import takeup.roll.Development;
import takeup.roll.Exposure;
import takeup.roll.Film;
import takeup.roll.Frame;
import takeup.roll.NoteEvent;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.RollRecord;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/** Regatta day at the boathouse: what happens to a roll, one event after the other. */
public final class Rolls {
    public static final Lens EIGHTY = new Lens("80", "80mm f/2.8", 80, 80, Ring.between(2.8, 22, Scale.HALF));
    public static final Lens LONG = new Lens("150", "150mm f/3.5", 150, 150, Ring.between(3.5, 22, Scale.HALF));
    public static final Lens ZOOM = new Lens("zoom", "75-150mm f/4.5", 75, 150, Ring.between(4.5, 22, Scale.HALF));
    public static final Camera REFLEX = new Camera(
            "645",
            "645 reflex",
            FrameSize.SIX_BY_FOUR_AND_A_HALF,
            Map.of(FilmSize.F120, 16),
            List.of("1", "2"),
            Optional.of(Shutter.between(8, 0.001, Scale.FULL, true)),
            Optional.of(Scale.anyTime(1 / 60.0)),
            List.of(EIGHTY, LONG, ZOOM));
    public static final Camera COMPACT = new Camera(
            "compact",
            "35 compact",
            FrameSize.SMALL,
            Map.of(FilmSize.F135, 36),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            List.of());
    public static final Stock NEGATIVE = stock(
            "cn400",
            "Colour negative 400",
            Stock.Kind.COLOUR_NEGATIVE,
            "C-41",
            400,
            new Reciprocity.Opening(
                    List.of(new Reciprocity.Point(0.5, 0), new Reciprocity.Point(1, 1), new Reciprocity.Point(10, 2))));
    public static final Film FILM =
            new Film(NEGATIVE, FilmSize.F120, new FilmSpeed(200), new Development("C-41", 0), 16);

    private final List<RollRecord> records = new ArrayList<>();

    /** A roll that was loaded at 15:10:03. */
    public static Rolls loaded(Camera camera, Film film) {
        return new Rolls()
                .then(
                        "15:10:03",
                        new RollEvent.Loaded(
                                new RollId("R", 7),
                                camera,
                                camera.backNames().stream().findFirst(),
                                film));
    }

    public static Rolls loaded() {
        return loaded(REFLEX, FILM);
    }

    public static Stock stock(
            String key, String name, Stock.Kind kind, String process, double box, Reciprocity reciprocity) {
        return new Stock(
                key,
                name,
                kind,
                process,
                new FilmSpeed(box),
                new FilmSpeed(box),
                List.of(FilmSize.F120, FilmSize.F135),
                new Stock.Response(1, 3, reciprocity));
    }

    public Rolls then(String clock, RollEvent event) {
        return then(at(clock), event);
    }

    public Rolls then(OffsetDateTime at, RollEvent event) {
        records.add(new RollRecord(records.size() + 1, at, event));
        return this;
    }

    public Rolls frame(int number, Frame.Kind kind, Exposure exposure) {
        return then(
                "15:30:00",
                new RollEvent.Added(
                        Frame.of(number, kind, exposure, Optional.empty()),
                        RollEvent.Origin.LOGGED,
                        OptionalInt.empty()));
    }

    public Rolls noted(int number, Exposure exposure, String note) {
        return then(
                "15:30:00",
                new RollEvent.Added(
                        Frame.of(number, Frame.Kind.EXPOSED, exposure, Optional.of(note)),
                        RollEvent.Origin.LOGGED,
                        OptionalInt.empty()));
    }

    public Rolls corrected(int number, SettingPatch change) {
        return then("15:31:00", new RollEvent.Corrected(number, number, change));
    }

    int steps() {
        return records.size();
    }

    List<RollRecord> records() {
        return List.copyOf(records);
    }

    public Roll roll() {
        return Roll.of(records).orElseThrow();
    }

    public static OffsetDateTime at(String clock) {
        return OffsetDateTime.parse("2026-09-12T" + clock + "+02:00");
    }

    public static Exposure exposure(String clock, Setting setting, Light light) {
        return new Exposure(Optional.of(at(clock)), setting, Optional.of(light), Optional.empty());
    }

    public static Light incident(double ev100, String clock) {
        return new Light(
                new ExposureValue(ev100),
                Light.Method.INCIDENT,
                "m 4.1 125",
                OptionalDouble.empty(),
                OptionalInt.empty(),
                OptionalDouble.of(200),
                at(clock));
    }

    /** f/2.8 at 1/250 and so on, with the 80 mm lens and nothing on it. */
    public static Setting set(Aperture aperture, double seconds) {
        return Setting.NONE.with(SettingPatch.aperture(aperture)
                .and(SettingPatch.time(time(seconds)))
                .and(SettingPatch.lens(EIGHTY)));
    }

    public static Setting set(double fNumber, double seconds) {
        return set(Scale.anyAperture(fNumber), seconds);
    }

    public static ExposureTime time(double seconds) {
        return Scale.anyTime(seconds);
    }

    /** The frame of the published sample: f/2.8 at 1/250 behind a yellow filter in EV 10.1, film rated 200. */
    public static Exposure sample() {
        return exposure(
                "15:12:40",
                set(2.8, 1 / 250.0).with(SettingPatch.filters(List.of(new Filter("yellow", 1)))),
                incident(10.1, "15:12:00"));
    }

    /** A roll with a blank, a double exposure, a jump of the counter and a torn end. */
    public static Roll regatta() {
        Light spot = new Light(
                new ExposureValue(10),
                Light.Method.SPOT,
                "m spot 8 z3",
                OptionalDouble.empty(),
                OptionalInt.of(3),
                OptionalDouble.empty(),
                at("15:14:00"));
        Setting tenths = set(Scale.anyAperture(5.6).plusTenths(3), 1 / 60.0).with(SettingPatch.tripod(true));
        Exposure first = new Exposure(
                Optional.empty(), tenths.with(SettingPatch.distance(3)), Optional.of(spot), Optional.empty());
        Exposure blank = new Exposure(Optional.of(at("15:13:00")), Setting.NONE, Optional.empty(), Optional.empty());
        return loaded().frame(1, Frame.Kind.EXPOSED, sample())
                .frame(2, Frame.Kind.BLANK, blank)
                .noted(3, first, "bow seat")
                .then("15:16:00", new RollEvent.DoubleAnnounced(1))
                .then(
                        "15:16:30",
                        new RollEvent.ExposedAgain(
                                exposure("15:16:30", set(8, 1 / 125.0).with(SettingPatch.tripod(true)), spot),
                                Optional.of("with the cox")))
                .then("15:20:00", new RollEvent.CounterShown(5))
                .frame(5, Frame.Kind.UNLOGGED, Exposure.UNKNOWN)
                .then("15:35:00", new NoteEvent.ConditionNoted(new Condition(Condition.Kind.TORN, Optional.empty())))
                .then("15:36:00", new NoteEvent.Noted("crew portraits at the boathouse"))
                .then("15:39:00", new RollEvent.Unknown("weighed", "{}"))
                .then("15:40:00", new RollEvent.Unloaded())
                .roll();
    }
}
