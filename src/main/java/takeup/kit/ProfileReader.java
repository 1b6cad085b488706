package takeup.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Light;
import takeup.exposure.Reciprocity;
import takeup.exposure.Scale;
import takeup.json.Json;
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
        return read(Kit.Sort.CAMERAS, key, file, text, CameraReader::camera);
    }

    /** A stock from the text of {@code stocks/KEY.json}. */
    public static Read<Stock> stock(String key, String file, String text) {
        return read(Kit.Sort.STOCKS, key, file, text, ProfileReader::stock);
    }

    /** A meter from the text of {@code meters/KEY.json}. */
    public static Read<Meter> meter(String key, String file, String text) {
        return read(Kit.Sort.METERS, key, file, text, ProfileReader::meter);
    }

    private static <T> Read<T> read(
            Kit.Sort sort, String key, String file, String text, BiFunction<String, ProfileFields, T> reader) {
        try {
            if (!(JsonText.read(text) instanceof Json.Obj object)) {
                return new Read<>(Optional.empty(), List.of(file + ":1: a profile is one object in braces"));
            }
            return AllMistakes.read(
                    sort, file, object, (it, notes) -> reader.apply(key, new ProfileFields(file, it, notes)));
        } catch (JsonText.NotJson e) {
            return new Read<>(Optional.empty(), List.of(file + ":" + e.line() + ": " + e.getMessage()));
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
        for (Json size : fields.list("filmSizes", FilmSize.values().length)) {
            FilmSize known = size instanceof Json.Text text
                    ? FilmSize.named(text.value()).orElse(null)
                    : null;
            if (known == null) {
                throw fields.wrong(size, "filmSizes", "holds names out of " + FilmSize.words() + ", in quotes");
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
        Optional<Filter> filter =
                fields.has("filter") ? Optional.of(filter(fields.inside("filter"))) : Optional.empty();
        fields.done();
        return new Stock(
                key,
                name,
                kind,
                process,
                new FilmSpeed(box),
                new FilmSpeed(usual),
                sizes,
                new Stock.Response(under, over, reciprocity, mostPush, filter));
    }

    private static Filter filter(ProfileFields fields) {
        Filter filter = new Filter(fields.text("name"), fields.number("stops", 0, 30));
        fields.done();
        return filter;
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
