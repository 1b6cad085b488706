package takeup.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import takeup.exposure.ExposureTime;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Light;
import takeup.exposure.Reciprocity;
import takeup.exposure.Scale;
import takeup.json.Json;
import takeup.json.JsonProblem;
import takeup.json.JsonText;

/** Profiles of cameras, stocks and meters from the text of their files. */
public final class ProfileReader {
    private ProfileReader() {}

    /**
     * What came of one file.
     *
     * @param profile the profile, unless something in the file was wrong
     * @param problems each with file, line, field and what is allowed; with a profile they are remarks only
     */
    public record Read<T>(Optional<T> profile, List<String> problems) {}

    /** A camera from the text of {@code cameras/KEY.json}. */
    public static Read<Camera> camera(String key, String file, String text) {
        return read(key, file, text, ProfileReader::camera);
    }

    /** A stock from the text of {@code stocks/KEY.json}. */
    public static Read<Stock> stock(String key, String file, String text) {
        return read(key, file, text, ProfileReader::stock);
    }

    /** A meter from the text of {@code meters/KEY.json}. */
    public static Read<Meter> meter(String key, String file, String text) {
        return read(key, file, text, ProfileReader::meter);
    }

    private static <T> Read<T> read(String key, String file, String text, BiFunction<String, ProfileFields, T> reader) {
        List<String> notes = new ArrayList<>();
        try {
            if (!(JsonText.read(text) instanceof Json.Obj object)) {
                return new Read<>(Optional.empty(), List.of(file + ":1: a profile is one object in braces"));
            }
            return new Read<>(Optional.of(reader.apply(key, new ProfileFields(file, object, notes))), notes);
        } catch (JsonText.NotJson e) {
            return new Read<>(Optional.empty(), List.of(file + ":" + e.line() + ": " + e.getMessage()));
        } catch (JsonProblem e) {
            notes.add(e.getMessage());
            return new Read<>(Optional.empty(), notes);
        }
    }

    static Camera camera(String key, ProfileFields fields) {
        String name = fields.text("name");
        FrameSize frameSize = fields.word(
                "frameSize", FrameSize::named, "18x24, 24x36, 24x65, 6x4.5, 6x6, 6x7, 6x8, 6x9, 6x12, 6x17");
        ProfileFields framesIn = fields.inside("frames");
        Map<FilmSize, Integer> frames = new LinkedHashMap<>();
        for (String size : framesIn.object().fields().keySet()) {
            if (size.equals("source") || size.equals("note")) {
                continue;
            }
            FilmSize filmSize = FilmSize.named(size)
                    .orElseThrow(() -> framesIn.wrong(
                            framesIn.object().fields().get(size),
                            "frames",
                            "names film sizes: 135, 120 or 220, not " + size));
            frames.put(filmSize, framesIn.whole(size, 1, 250));
        }
        if (frames.isEmpty()) {
            throw fields.wrong("frames", "names at least one film size");
        }
        List<String> backs = new ArrayList<>();
        if (fields.has("backs")) {
            for (Json back : fields.list("backs", 20)) {
                if (!(back instanceof Json.Text text) || !isKey(text.value())) {
                    throw fields.wrong(back, "backs", "holds names of letters and digits in quotes");
                }
                if (backs.contains(text.value().toLowerCase(Locale.ROOT))) {
                    throw fields.wrong(back, "backs", "holds " + text.value() + " twice");
                }
                backs.add(text.value().toLowerCase(Locale.ROOT));
            }
        }
        Optional<Shutter> shutter =
                fields.has("times") ? Optional.of(shutter(fields.inside("times"), fields)) : Optional.empty();
        Optional<ExposureTime> sync = Optional.empty();
        if (fields.has("syncTime")) {
            double seconds = fields.seconds("syncTime");
            sync = Optional.of(shutter.map(it -> it.read(seconds)).orElseGet(() -> Scale.anyTime(seconds)));
        }
        List<Lens> lenses = new ArrayList<>();
        if (fields.has("lenses")) {
            for (Json item : fields.list("lenses", 40)) {
                Lens lens = lens(fields.inside(item, "lenses"));
                if (lenses.stream().anyMatch(it -> it.key().equals(lens.key()))) {
                    throw fields.wrong(item, "lenses", "holds the key " + lens.key() + " twice");
                }
                lenses.add(lens);
            }
        }
        OptionalDouble circle = fields.has("circleOfConfusionMm")
                ? OptionalDouble.of(fields.number("circleOfConfusionMm", 0.001, 1))
                : OptionalDouble.empty();
        Camera.HandHeldRule handHeld = fields.has("handHeld")
                ? fields.word("handHeld", Camera.HandHeldRule::named, "scaled, unscaled")
                : Camera.HandHeldRule.SCALED;
        fields.done();
        return new Camera(
                key, name, new Camera.Picture(frameSize, circle, handHeld), frames, backs, shutter, sync, lenses);
    }

    private static Shutter shutter(ProfileFields fields, ProfileFields around) {
        boolean bulb = fields.flag("bulb");
        Optional<Scale> step = fields.step();
        boolean marks = fields.has("marks");
        try {
            if (marks) {
                List<Double> prints = new ArrayList<>();
                for (Json mark : fields.list("marks", 80)) {
                    prints.add(fields.seconds(mark, "marks"));
                }
                return Shutter.of(prints, bulb);
            }
            if (step.isEmpty()) {
                throw around.wrong("times", "has a step (full, half, third) with longest and fastest, or marks");
            }
            return Shutter.between(fields.seconds("longest"), fields.seconds("fastest"), step.get(), bulb);
        } catch (IllegalArgumentException e) {
            throw around.wrong(fields.object(), "times:", e.getMessage());
        } finally {
            fields.ask("longest");
            fields.ask("fastest");
            fields.done();
        }
    }

    static Lens lens(ProfileFields fields) {
        String key = fields.text("key").toLowerCase(Locale.ROOT);
        if (!isKey(key)) {
            throw fields.wrong("key", "is made of letters, digits, - and _");
        }
        String name = fields.text("name");
        double shortest;
        double longest;
        if (fields.has("focalMm") && fields.object().field("focalMm").get() instanceof Json.Arr zoom) {
            if (zoom.items().size() != 2
                    || !(zoom.items().get(0) instanceof Json.Num a)
                    || !(zoom.items().get(1) instanceof Json.Num b)) {
                throw fields.wrong(zoom, "focalMm", "is a number of mm, or for a zoom two in brackets");
            }
            shortest = a.value();
            longest = b.value();
        } else {
            shortest = fields.number("focalMm", 1, 5000);
            longest = shortest;
        }
        Optional<Scale> step = fields.step();
        try {
            Ring ring;
            if (fields.has("marks")) {
                List<Double> prints = new ArrayList<>();
                for (Json mark : fields.list("marks", 60)) {
                    if (!(mark instanceof Json.Num number) || !(number.value() >= 0.5 && number.value() <= 1000)) {
                        throw fields.wrong(mark, "marks", "holds f-numbers from 0.5 to 1000");
                    }
                    prints.add(number.value());
                }
                ring = Ring.of(prints);
            } else {
                double widest = fields.number("widest", 0.5, 1000);
                ring = Ring.between(
                        widest,
                        fields.number("narrowest", 0.5, 1000),
                        step.orElseThrow(() -> fields.wrong(fields.object(), "step", "is one of full, half, third")));
            }
            fields.ask("widest");
            fields.ask("narrowest");
            fields.done();
            return new Lens(key, name, shortest, longest, ring);
        } catch (IllegalArgumentException e) {
            throw fields.wrong(fields.object(), "lens " + key + ":", e.getMessage());
        }
    }

    static Stock stock(String key, ProfileFields fields) {
        String name = fields.text("name");
        Stock.Kind kind =
                fields.word("kind", Stock.Kind::named, "colour-negative, bw-negative, colour-reversal, bw-reversal");
        String process = fields.text("process");
        double box = fields.number("boxSpeed", 0.1, 1_000_000);
        double usual = fields.number("usualEI", 0.1, 1_000_000, box);
        List<FilmSize> sizes = new ArrayList<>();
        for (Json size : fields.list("filmSizes", 3)) {
            FilmSize known = size instanceof Json.Text text
                    ? FilmSize.named(text.value()).orElse(null)
                    : null;
            if (known == null) {
                throw fields.wrong(size, "filmSizes", "holds \"135\", \"120\" or \"220\"");
            }
            sizes.add(known);
        }
        ProfileFields latitude = fields.inside("latitude");
        double under = latitude.number("underStops", 0, 10);
        double over = latitude.number("overStops", 0, 10);
        latitude.done();
        Reciprocity reciprocity = fields.has("reciprocity")
                ? ReciprocityReader.reciprocity(fields.inside("reciprocity"), fields)
                : new Reciprocity.None(OptionalDouble.empty());
        OptionalDouble mostPush = fields.has("mostPushStops")
                ? OptionalDouble.of(fields.number("mostPushStops", 0, 5))
                : OptionalDouble.empty();
        fields.done();
        return new Stock(
                key,
                name,
                kind,
                process,
                new FilmSpeed(box),
                new FilmSpeed(usual),
                sizes,
                new Stock.Response(under, over, reciprocity, mostPush));
    }

    static Meter meter(String key, ProfileFields fields) {
        String name = fields.text("name");
        Meter.Shows shows = fields.word(
                "shows",
                word -> switch (word) {
                    case "pair" -> Optional.of(Meter.Shows.PAIR);
                    case "aperture" -> Optional.of(Meter.Shows.APERTURE);
                    case "ev" -> Optional.of(Meter.Shows.EV);
                    default -> Optional.empty();
                },
                "pair, aperture, ev");
        boolean tenths = fields.flag("tenths");
        Scale step = fields.step().orElse(Scale.THIRD);
        boolean setSpeed = fields.has("evShown")
                && fields.word(
                        "evShown",
                        word -> switch (word) {
                            case "iso100" -> Optional.of(false);
                            case "set-speed" -> Optional.of(true);
                            default -> Optional.empty();
                        },
                        "iso100, set-speed");
        double incident = fields.number("incidentConstant", 100, 1000, Meter.NONE.incidentConstant());
        double reflected = fields.number("reflectedConstant", 5, 30, Meter.NONE.reflectedConstant());
        Light.Method method = fields.has("method")
                ? fields.word(
                        "method",
                        word -> switch (word) {
                            case "incident" -> Optional.of(Light.Method.INCIDENT);
                            case "reflected" -> Optional.of(Light.Method.REFLECTED);
                            case "spot" -> Optional.of(Light.Method.SPOT);
                            default -> Optional.empty();
                        },
                        "incident, reflected, spot")
                : Light.Method.INCIDENT;
        fields.done();
        return new Meter(key, name, new Meter.Display(shows, tenths, step, setSpeed), incident, reflected, method);
    }

    /** Whether a word can be a key: letters, digits, - and _. */
    public static boolean isKey(String word) {
        for (int at = 0; at < word.length(); at++) {
            char c = word.charAt(at);
            if (!(c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '-' || c == '_')) {
                return false;
            }
        }
        // What begins with a stroke would be an option to every command that it is handed to.
        return !word.isEmpty() && word.length() <= 40 && word.charAt(0) != '-';
    }
}
