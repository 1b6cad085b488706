package takeup.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Light;
import takeup.exposure.Stops;
import takeup.kit.Camera;
import takeup.kit.Filter;
import takeup.kit.Hold;
import takeup.kit.Kit;
import takeup.kit.Shutter;
import takeup.kit.Stock;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;
import takeup.kit.Warning;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;
import takeup.text.Plain;

/**
 * What would fit where nothing does: a grey filter, a tripod, another stock, a push for the whole roll with its price.
 */
public final class Alternatives {
    private static final int[] GREY = {2, 4, 8, 16, 32, 64, 128, 256, 512, 1000};
    /** A push beyond so many stops is no offer. */
    private static final double MOST_PUSH = 3;

    private Alternatives() {}

    /**
     * Whether no suggestion is free of what speaks against it and comes within a stop; a held aperture must be that
     * one.
     */
    public static boolean areNeeded(AdviceRequest asking, Suggestions advice) {
        Optional<Aperture> held = asking.hold().flatMap(Hold::aperture);
        return !advice.suggestions().isEmpty()
                && advice.suggestions().stream()
                        .noneMatch(it -> serves(it)
                                && held.map(at -> AdviceExplanation.same(at, it.aperture()))
                                        .orElse(true));
    }

    static boolean serves(Suggestion row) {
        return row.errorStops().isPresent()
                && !Stops.above(Math.abs(row.errorStops().getAsDouble()), 1)
                && !row.has(Warning.Code.OUT_OF_RANGE)
                && !row.has(Warning.Code.HAND_HELD);
    }

    /** The remedies in words, the least trouble first. */
    public static List<String> of(AdviceRequest asking, Light light, Kit kit) {
        List<String> all = new ArrayList<>();
        filter(asking, light).ifPresent(all::add);
        tripod(asking, light).ifPresent(all::add);
        stocks(asking, light, kit).ifPresent(all::add);
        push(asking, light).ifPresent(all::add);
        return all;
    }

    private static Optional<String> filter(AdviceRequest asking, Light light) {
        Optional<Shutter> shutter = asking.camera().flatMap(Camera::shutter);
        if (shutter.isEmpty() || asking.setting().lens().isEmpty()) {
            return Optional.empty();
        }
        Aperture wanted = asking.hold()
                .flatMap(Hold::aperture)
                .or(() -> asking.setting().aperture())
                .orElseGet(() -> asking.setting().lens().get().ring().nearest(5));
        double tooMuch =
                shutter.get().fastest().stops() - Stops.of(asking.path().metered(light.ev100(), wanted));
        if (!Stops.above(tooMuch, 0.5)) {
            return Optional.empty();
        }
        for (int grey : GREY) {
            List<Filter> filters = new ArrayList<>(asking.setting().filters());
            filters.add(Filter.factor("nd" + grey, grey));
            Optional<Suggestion> row =
                    with(asking, asking.setting().with(SettingPatch.filters(filters)))
                            .advice(light)
                            .suggestions()
                            .stream()
                            .filter(it -> serves(it) && AdviceExplanation.same(it.aperture(), wanted))
                            .findFirst();
            if (row.isPresent()) {
                return Optional.of("nd" + grey + " brings " + AdviceExplanation.pair(row.get()));
            }
        }
        return Optional.empty();
    }

    private static Optional<String> tripod(AdviceRequest asking, Light light) {
        return asking.setting().tripod()
                ? Optional.empty()
                : best(with(asking, asking.setting().with(SettingPatch.tripod(true))), light)
                        .map(it -> "a tripod brings " + AdviceExplanation.pair(it));
    }

    private static Optional<Suggestion> best(AdviceRequest asking, Light light) {
        Suggestions advice = asking.advice(light);
        return advice.bestOne().filter(Alternatives::serves);
    }

    private static Optional<String> stocks(AdviceRequest asking, Light light, Kit kit) {
        List<String> found = new ArrayList<>();
        for (String key : kit.keys(Kit.Sort.STOCKS)) {
            Optional<Stock> stock = kit.stock(key)
                    .filter(it -> asking.camera()
                            .map(camera -> it.filmSizes().stream().anyMatch(camera.frames()::containsKey))
                            .orElse(false));
            if (stock.isEmpty() || stock.map(Stock::key).equals(asking.stock().map(Stock::key))) {
                continue;
            }
            AdviceRequest other = new AdviceRequest(
                    asking.camera(),
                    asking.setting(),
                    asking.hold(),
                    stock,
                    stock.get().usualIndex(),
                    0,
                    asking.meter());
            best(other, light)
                    .ifPresent(it -> found.add(
                            key + " at EI " + stock.get().usualIndex() + " (" + AdviceExplanation.pair(it) + ")"));
        }
        return found.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "another stock serves: " + String.join(", ", found.size() > 3 ? found.subList(0, 3) : found));
    }

    /** The rating that the widest aperture would need at the longest time that serves. */
    private static Optional<String> push(AdviceRequest asking, Light light) {
        Optional<Shutter> shutter = asking.camera().flatMap(Camera::shutter);
        if (shutter.isEmpty()
                || asking.setting().lens().isEmpty()
                || asking.stock().isEmpty()) {
            return Optional.empty();
        }
        Aperture aperture = asking.hold()
                .flatMap(Hold::aperture)
                .orElseGet(() -> asking.setting().lens().get().ring().widest());
        OptionalDouble focal = asking.setting().focalMm();
        double limit = asking.setting().tripod() || focal.isEmpty()
                ? Double.POSITIVE_INFINITY
                : asking.camera().get().frameSize().handHeldLimit(focal.getAsDouble());
        Optional<ExposureTime> longest = shutter.get().marks().stream()
                .filter(it -> !Stops.above(it.stops(), Stops.of(limit)))
                .findFirst();
        if (longest.isEmpty()) {
            return Optional.empty();
        }
        double missing = Math.ceil(Stops.of(asking.path().metered(light.ev100(), aperture))
                - longest.get().stops()
                - Stops.TOLERANCE);
        if (missing < 1) {
            return Optional.empty();
        }
        FilmSpeed box = asking.stock().get().boxSpeed();
        double index = asking.index().arithmetic() * Stops.factor(missing);
        double push = Stops.of(index / box.arithmetic());
        String rated = "for " + aperture + " " + longest.get() + " the whole roll would need EI "
                + Plain.number(Plain.rounded(index, 4)) + ": ";
        if (!Stops.above(push, 0.1)) {
            return Optional.of(rated + "no push, it is not above box speed");
        }
        String stops = Plain.digits(Math.rint(push * 10) / 10, 3);
        return Optional.of(rated
                + (push > MOST_PUSH + Stops.TOLERANCE
                        ? stops + " stops thin, further than a push reaches"
                        : "push " + stops + ", or " + Stops.words(push) + " thin"));
    }

    private static AdviceRequest with(AdviceRequest asking, Setting setting) {
        return new AdviceRequest(
                asking.camera(),
                setting,
                asking.hold(),
                asking.stock(),
                asking.index(),
                asking.pushStops(),
                asking.meter());
    }
}
