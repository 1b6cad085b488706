package takeup.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.Scale;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Filter;
import takeup.kit.Lens;
import takeup.kit.Meter;
import takeup.kit.Ring;
import takeup.kit.Shutter;
import takeup.prompt.Sky;
import takeup.roll.Setting;

/** What is asked for a setting, a reading, a filter, flash: lists of what stands on the rings. */
final class ExposureFields {
    private static final Ring ANY_RING = Ring.between(1, 64, Scale.THIRD);
    private static final Shutter ANY_DIAL = Shutter.between(60, 1 / 8000.0, Scale.THIRD, false);

    private ExposureFields() {}

    private static Setting setting(ShootState s) {
        return s.cameraInHand().map(it -> s.inHand(it).setting()).orElse(Setting.NONE);
    }

    /** The apertures of the lens in hand, at the one that is set. */
    static Field aperture(ShootState s) {
        Ring ring = setting(s).lens().map(Lens::ring).orElse(ANY_RING);
        return apertures("Aperture", ring, setting(s).aperture());
    }

    /** The times of the dial in hand, at the one that is set. */
    static Field time(ShootState s) {
        Shutter dial = s.shutterInHand().orElse(ANY_DIAL);
        return times("Time", dial, setting(s).time());
    }

    /** Without a film the speed that the meter is set to is asked too. */
    private static Field[] asked(ShootState s, Field... fields) {
        List<Field> all = new ArrayList<>(List.of(fields));
        if (s.rollInHand().isEmpty()) {
            all.add(speed());
        }
        return all.toArray(Field[]::new);
    }

    private static Field metered(ShootState s) {
        return apertures("What the meter shows: aperture", ANY_RING, setting(s).aperture());
    }

    private static Field meteredTime(ShootState s) {
        return times("What the meter shows: time", ANY_DIAL, setting(s).time());
    }

    private static Field apertures(String title, Ring ring, Optional<Aperture> at) {
        List<String> marks = ring.marks().stream().map(it -> "f" + it.print()).toList();
        return Field.digits(title, "f", marks, nearest(at.map(ring.marks()::indexOf), marks));
    }

    private static Field times(String title, Shutter dial, Optional<ExposureTime> at) {
        List<String> marks = dial.marks().stream().map(ExposureFields::typed).toList();
        return Field.digits(title, "1/", marks, nearest(at.map(dial.marks()::indexOf), marks));
    }

    private static int nearest(Optional<Integer> at, List<String> marks) {
        return at.filter(it -> it >= 0).orElse(marks.size() / 2);
    }

    private static String typed(ExposureTime time) {
        return time.toString().replace(" ", "");
    }

    /** The number in a list, at its own place or in the middle. */
    private static Field ev(String title) {
        return Field.digits(
                title,
                "",
                IntStream.rangeClosed(0, 170)
                        .mapToObj(it -> String.format(Locale.ROOT, "%.1f", it / 10.0))
                        .toList(),
                120);
    }

    /** The kinds of reading, the one of the meter in hand first. */
    static List<Field> reading(ShootState s) {
        Choice pair = Choice.of("", "aperture and time, as the meter shows them", asked(s, metered(s), meteredTime(s)));
        Choice ev = Choice.of("ev", "an exposure value", ev("EV"));
        List<Choice> kinds = new ArrayList<>();
        Meter meter = s.meterInHand();
        if (meter.shows() == Meter.Shows.APERTURE && s.day().preset().isPresent()) {
            kinds.add(Choice.of("", "the aperture, at the preset time", asked(s, metered(s))));
        } else if (meter.shows() == Meter.Shows.EV) {
            kinds.add(ev);
        }
        kinds.add(pair);
        if (!kinds.contains(ev)) {
            kinds.add(ev);
        }
        kinds.add(Choice.of("sky", "no meter: the daylight rule", sky()));
        kinds.add(Choice.of("spot", "spot, placed on a zone", ev("EV"), zone()));
        kinds.add(Choice.of("reflected", "reflected, as an exposure value", ev("EV")));
        kinds.add(Choice.of("camera", "a digital camera's own meter", metered(s), meteredTime(s), speed()));
        if (s.rollInHand().isPresent()) {
            kinds.add(Choice.of("flash", "flash meter", asked(s, metered(s))));
        }
        return List.of(Field.list("New reading: which kind?", kinds));
    }

    private static Field sky() {
        return Field.list(
                "The sky", Sky.words().stream().map(it -> Choice.of(it, "")).toList());
    }

    private static Field zone() {
        return Field.list(
                "On which zone?",
                IntStream.rangeClosed(0, 10)
                        .mapToObj(it -> Choice.value("z" + it))
                        .toList());
    }

    private static Field speed() {
        return Field.digits(
                "The speed that it is set to",
                "@",
                List.of("@100", "@125", "@160", "@200", "@250", "@320", "@400", "@800", "@1600", "@3200"),
                0);
    }

    static List<Field> filter(ShootState s) {
        List<Choice> all = new ArrayList<>();
        if (!setting(s).filters().isEmpty()) {
            all.add(Choice.of("off", "no filter"));
        }
        Filter.names()
                .forEach(it ->
                        all.add(Choice.of(it, Filter.named(it).orElseThrow().words())));
        List.of("nd2", "nd4", "nd8", "nd64", "nd1000").forEach(it -> all.add(Choice.of(it, "neutral density")));
        return List.of(Field.list("Filter", all));
    }

    static List<Field> flash(ShootState s) {
        List<Choice> all = new ArrayList<>(
                List.of(Choice.of("on", "the frames that follow are with flash"), Choice.of("off", "without flash")));
        if (s.rollInHand().isPresent()) {
            all.add(Choice.of(
                    "",
                    "by its guide number and the distance",
                    Field.digits("Guide number in metres", "gn", guideNumbers(), 14),
                    Field.digits("Distance to the subject", "", distances(), 4)));
        }
        return List.of(Field.list("Flash", all));
    }

    private static List<String> guideNumbers() {
        return IntStream.rangeClosed(8, 80).mapToObj(it -> "gn" + it + "m").toList();
    }

    private static List<String> distances() {
        return List.of("1m", "1.5m", "2m", "2.5m", "3m", "4m", "5m", "6m", "7m", "8m", "10m", "12m", "15m");
    }

    static List<Field> hold(ShootState s) {
        return List.of(Field.list(
                "Hold what?",
                List.of(
                        Choice.of("", "the aperture", aperture(s)),
                        Choice.of("", "the time", time(s)),
                        Choice.of("off", "nothing"))));
    }

    static List<Field> sharp(ShootState s) {
        return List.of(Field.list(
                "Sharp from where to where?",
                List.of(
                        Choice.of("1m-inf", "1 m to infinity"),
                        Choice.of("2m-inf", "2 m to infinity"),
                        Choice.of("5m-inf", "5 m to infinity"),
                        Choice.of("1m-2m", "1 m to 2 m"),
                        Choice.of("2m-5m", "2 m to 5 m"))));
    }

    static List<Field> bias(ShootState s) {
        return List.of(Field.list(
                "Bias",
                Stream.of("0", "+1/3", "+2/3", "+1", "+2", "-1/3", "-2/3", "-1", "-2")
                        .map(it -> Choice.of(it, it.equals("0") ? "none" : words(it)))
                        .toList()));
    }

    private static String words(String stops) {
        return stops.startsWith("+") ? "more light on the film" : "less light on the film";
    }

    static List<Field> magnification(ShootState s) {
        return List.of(Field.digits(
                "Magnification on the film",
                "",
                List.of("off", "0.1", "0.2", "0.25", "0.33", "0.5", "0.75", "1", "1.5", "2"),
                5));
    }

    static List<Field> tube(ShootState s) {
        return List.of(Field.digits("What is between lens and body", "", millimetres(5, 100), 6));
    }

    static List<Field> draw(ShootState s) {
        return List.of(Field.digits("From lens to film", "", millimetres(50, 300), 15));
    }

    /** Every five from one length to another, below what takes it off. */
    private static List<String> millimetres(int from, int to) {
        List<String> all = new ArrayList<>(List.of("off"));
        for (int it = from; it <= to; it += 5) {
            all.add(it + "mm");
        }
        return all;
    }

    static List<Field> lens(ShootState s) {
        return List.of(Field.list(
                "Lens",
                s.cameraInHand().map(Camera::lenses).orElse(List.of()).stream()
                        .map(it -> Choice.of(it.key(), it.name()))
                        .toList()));
    }

    static List<Field> onOff(ShootState s) {
        return List.of(Field.list("On or off?", List.of(Choice.value("on"), Choice.value("off"))));
    }

    static List<Field> stops(ShootState s) {
        return List.of(Field.digits("Stops", "", List.of("1", "2", "3", "0.5", "1.5"), 0));
    }
}
