package takeup.metering;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.advice.AdviceRequest;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Light;
import takeup.exposure.SharpRange;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Camera;
import takeup.kit.Filter;
import takeup.kit.Hold;
import takeup.kit.Kit;
import takeup.kit.Lens;
import takeup.kit.Meter;
import takeup.kit.SharpSetting;
import takeup.kit.Stock;
import takeup.kit.Suggestions;
import takeup.kit.Warning;
import takeup.prompt.CameraStateParser;
import takeup.prompt.CommandRejected;
import takeup.prompt.DialNumbers;
import takeup.prompt.FilterParser;
import takeup.prompt.Fractions;
import takeup.prompt.LoadArguments;
import takeup.prompt.Reading;
import takeup.prompt.ReadingParser;
import takeup.prompt.SharpRangeParser;
import takeup.prompt.Token;
import takeup.prompt.Tokens;
import takeup.report.SharpText;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/** A reading with its camera and film given as options, outside the screen: the same words, the same sums. */
public final class MeterQuery {
    private MeterQuery() {}

    /**
     * The options as they were typed; what is empty was not given.
     *
     * @param reading the words behind the command
     * @param keys which camera, lens, stock and meter
     * @param wanted what the photographer wants of the exposure
     * @param filters a filter each
     * @param optics distances and what is sharp
     * @param flash whether flash is on
     * @param tripod whether the camera stands on a tripod
     */
    public record Options(
            List<String> reading,
            Keys keys,
            Wanted wanted,
            List<String> filters,
            Optics optics,
            boolean flash,
            boolean tripod) {}

    /** Keys of profiles. */
    public record Keys(
            Optional<String> camera, Optional<String> lens, Optional<String> stock, Optional<String> meter) {}

    /** The exposure index, an aperture or a time to hold, and a deliberate deviation. */
    public record Wanted(Optional<String> index, Optional<String> hold, Optional<String> bias) {}

    /**
     * What the light passes, and what is to be sharp.
     *
     * @param extension the draw from lens to film
     * @param magnification the size on film against that in life
     * @param distance of the subject, or from near to far
     * @param circle the circle of confusion
     */
    public record Optics(
            Optional<String> extension,
            Optional<String> magnification,
            Optional<String> distance,
            Optional<String> circle) {}

    /**
     * The answer.
     *
     * @param remarks what is to be said of the reading itself, in sentences; "" where there is nothing
     * @param zones where each of several readings falls that have their zones, for other programs
     * @param sharp what makes the wanted range sharp; empty where none was given
     */
    public record Answer(
            AdviceRequest asking,
            Light light,
            Suggestions advice,
            List<Warning> warnings,
            String remarks,
            List<Json> zones,
            Optional<SharpSetting> sharp) {}

    /** Something that cannot be understood, with what to do. */
    public static final class Unclear extends Exception {
        private static final long serialVersionUID = 1;

        Unclear(String why) {
            super(why);
        }
    }

    /**
     * The answer for the options, in a situation. With a camera or a stock named it starts clean; with neither it takes
     * what is in use.
     */
    public static Answer answer(ShootState s, Options options, OffsetDateTime now) throws Unclear {
        try {
            return read(s, options, now);
        } catch (CommandRejected e) {
            throw new Unclear(e.getMessage());
        }
    }

    private static Answer read(ShootState s, Options options, OffsetDateTime now) {
        boolean clean = options.keys.camera.isPresent() || options.keys.stock.isPresent();
        Optional<Roll> roll = clean ? Optional.empty() : s.rollInHand();
        Optional<Camera> named = options.keys.camera.map(key -> s.kit()
                .camera(key)
                .orElseThrow(() -> new CommandRejected(s.kit().whyNot(Kit.Sort.CAMERAS, key))));
        OptionalDouble circle = SharpRangeParser.circle(options.optics.circle);
        Optional<Camera> camera = (clean ? named : s.cameraInHand()).map(it -> it.withCircle(circle));
        Optional<Stock> stock = options.keys
                .stock
                .map(key -> s.kit()
                        .stock(key)
                        .orElseThrow(() -> new CommandRejected(s.kit().whyNot(Kit.Sort.STOCKS, key))))
                .or(() -> roll.map(it -> it.film().stock()));
        Meter meter = options.keys
                .meter
                .map(key -> s.kit()
                        .meter(key)
                        .orElseThrow(() -> new CommandRejected(s.kit().whyNot(Kit.Sort.METERS, key))))
                .orElseGet(s::meterInHand);
        Optional<FilmSpeed> given =
                options.wanted.index.map(it -> LoadArguments.speed(Tokens.token(it.startsWith("@") ? it : "@" + it)));
        Optional<FilmSpeed> known =
                given.or(() -> roll.map(it -> it.film().index())).or(() -> stock.map(it -> usualIndex(it, camera)));
        Setting setting = setting(clean ? Setting.NONE : s.inHand().setting(), camera, options);
        Optional<SharpRange> range = range(options);
        Optional<SharpSetting> sharp = range.map(it -> SharpCommand.setting(
                it,
                camera.orElseThrow(() -> new CommandRejected("what is sharp depends on the lens: --camera K")),
                setting));
        Optional<Hold> hold = options.wanted
                .hold
                .flatMap(it -> hold(it, camera, setting.lens()))
                .or(() -> sharp.map(it -> Hold.of(it.aperture())))
                .or(() -> clean ? Optional.empty() : s.inHand().hold());
        List<String> words = Tokens.of(String.join(" ", options.reading)).words();
        Reading reading = ReadingParser.read(
                        "m " + String.join(" ", options.reading),
                        words,
                        meter,
                        s.day().preset(),
                        known,
                        now)
                .on(stock);
        Light light = reading.light()
                .orElseThrow(() -> new CommandRejected("a flash reading belongs to a roll: type it on the prompt"));
        AdviceRequest asking = new AdviceRequest(
                camera,
                setting,
                hold,
                stock,
                known.orElse(FilmSpeed.ISO_100),
                roll.map(it -> it.film().development().pushStops()).orElse(0.0),
                meter,
                clean ? Optional.empty() : s.day().flash());
        return new Answer(
                asking,
                light,
                asking.advice(light, reading.shown()),
                asking.warnings(light),
                (Zones.remarks(reading, stock)
                                + sharp.map(it ->
                                                " " + SharpText.of(range.orElseThrow(), it, camera.orElseThrow()) + ".")
                                        .orElse(""))
                        .trim(),
                Zones.json(reading, stock),
                sharp);
    }

    /** A camera that sets itself takes the box speed. */
    private static FilmSpeed usualIndex(Stock stock, Optional<Camera> camera) {
        return camera.filter(Camera::isAutomatic).isPresent() ? stock.boxSpeed() : stock.usualIndex();
    }

    private static Setting setting(Setting before, Optional<Camera> camera, Options options) {
        Setting setting = before;
        if (options.keys.lens.isPresent()) {
            Camera on = camera.orElseThrow(() -> new CommandRejected("--lens needs its camera: --camera K"));
            setting = setting.with(CameraStateParser.read(
                    "lens",
                    options.keys.lens.get().toLowerCase(Locale.ROOT),
                    on,
                    setting.lens(),
                    OptionalDouble.empty()));
        } else if (setting.lens().isEmpty()
                && camera.isPresent()
                && !camera.get().lenses().isEmpty()) {
            setting = setting.with(SettingPatch.lens(camera.get().lenses().get(0)));
        }
        if (options.wanted.bias.isPresent()) {
            setting = setting.with(SettingPatch.bias(Fractions.signed(options.wanted.bias.get())));
        }
        if (!options.filters.isEmpty()) {
            List<Filter> filters = new ArrayList<>();
            for (String filter : options.filters) {
                filters.addAll(FilterParser.read(Tokens.of(filter).words()));
            }
            setting = setting.with(SettingPatch.filters(filters));
        }
        if (options.optics.extension.isPresent() && options.optics.magnification.isPresent()) {
            throw new CommandRejected("--extension or --magnification, one of the two");
        }
        if (options.optics.distance.isPresent()) {
            String word = options.optics.distance.get().toLowerCase(Locale.ROOT);
            Token token = SharpRangeParser.isRange(word)
                    ? new Token(Token.Kind.METRES, SharpRangeParser.read(word).focusM(), -1, word)
                    : Tokens.token(word);
            if (!token.is(Token.Kind.METRES) || !(token.value() >= 0.01 && token.value() <= 100_000)) {
                throw new CommandRejected(options.optics.distance.get() + " is no distance: 3m, 10ft, 2m-inf");
            }
            setting = setting.with(SettingPatch.distance(token.value()));
        }
        String extension = options.optics
                .extension
                .map(it -> it.endsWith("mm") ? it : it + "mm")
                .orElse("");
        if (!extension.isEmpty() || options.optics.magnification.isPresent()) {
            Camera on =
                    camera.orElseThrow(() -> new CommandRejected("an extension needs its camera and lens: --camera K"));
            setting = setting.with(CameraStateParser.read(
                    extension.isEmpty() ? "mag" : "ext",
                    extension.isEmpty() ? options.optics.magnification.get() : extension,
                    on,
                    setting.lens(),
                    setting.zoomMm()));
        }
        return setting.with(SettingPatch.flash(options.flash || setting.flash()))
                .with(SettingPatch.tripod(options.tripod || setting.tripod()));
    }

    /** What is to be sharp, where the distance is given from near to far. */
    private static Optional<SharpRange> range(Options options) {
        return options.optics
                .distance
                .map(it -> it.toLowerCase(Locale.ROOT))
                .filter(SharpRangeParser::isRange)
                .map(SharpRangeParser::read);
    }

    private static Optional<Hold> hold(String word, Optional<Camera> camera, Optional<Lens> lens) {
        Camera on = camera.orElseThrow(() -> new CommandRejected("--hold needs its camera: --camera K"));
        SettingPatch change = DialNumbers.of(on, lens).pair(List.of(Tokens.token(word.toLowerCase(Locale.ROOT))));
        return change.aperture().map(Hold::of).or(() -> change.time().map(Hold::of));
    }
}
