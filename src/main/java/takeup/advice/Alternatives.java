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
import takeup.kit.Filter;
import takeup.kit.Hold;
import takeup.kit.Kit;
import takeup.kit.Shutter;
import takeup.kit.Stock;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;
import takeup.kit.Warning;
import takeup.roll.SettingPatch;

/**
 * What would fit where nothing does: a grey filter, a tripod, another stock, a push for the whole roll with its price.
 *
 * @param filter the weakest grey filter that helps
 * @param tripod the best suggestion with a tripod
 * @param stocks other stocks that serve, at most three
 * @param push what the whole roll would have to be rated at
 */
public record Alternatives(
        Optional<GreyFilter> filter, Optional<Suggestion> tripod, List<OtherStock> stocks, Optional<Push> push) {
    private static final int[] GREY = {2, 4, 8, 16, 32, 64, 128, 256, 512, 1000};
    /** A push beyond so many stops is no offer. */
    private static final double MOST_PUSH = 3;

    private static final int MOST_STOCKS = 3;
    /** A time over an hour is no offer, in seconds. */
    private static final double LONGEST = 3600;

    /** A grey filter by its name, and what it brings. */
    public record GreyFilter(String filter, Suggestion suggestion) {}

    /** Another stock at its usual index, and what it brings. */
    public record OtherStock(Stock stock, Suggestion suggestion) {}

    /**
     * The rating that a setting would need.
     *
     * @param index the exposure index
     * @param stops by how much that is above box speed
     */
    public record Push(Aperture aperture, ExposureTime time, double index, double stops) {
        /** Whether a lab can do it. */
        public enum Verdict {
            NOT_NEEDED,
            POSSIBLE,
            TOO_FAR
        }

        /** Whether a lab can do it. */
        public Verdict verdict() {
            if (!Stops.above(stops, 0.1)) {
                return Verdict.NOT_NEEDED;
            }
            return stops > MOST_PUSH + Stops.TOLERANCE ? Verdict.TOO_FAR : Verdict.POSSIBLE;
        }
    }

    public Alternatives {
        stocks = List.copyOf(stocks);
    }

    /** All that would fit. */
    public static Alternatives of(AdviceRequest request, Light light, Kit kit) {
        return new Alternatives(
                filter(request, light), tripod(request, light), stocks(request, light, kit), push(request, light));
    }

    /**
     * Whether no suggestion is free of what speaks against it and comes within a stop; a held aperture must be that
     * one.
     */
    public static boolean areNeeded(AdviceRequest request, Suggestions advice) {
        Optional<Aperture> held = request.hold().flatMap(Hold::aperture);
        return !advice.suggestions().isEmpty()
                && advice.suggestions().stream()
                        .noneMatch(it -> serves(it, request)
                                && held.map(at -> at.isSameMark(it.aperture())).orElse(true));
    }

    static boolean serves(Suggestion row, AdviceRequest request) {
        boolean isByHand = !request.setting().tripod();
        return row.errorStops().isPresent()
                && !Stops.above(Math.abs(row.errorStops().getAsDouble()), 1)
                && !row.has(Warning.Code.OUT_OF_RANGE)
                && !row.has(Warning.Code.HAND_HELD)
                && row.time().filter(it -> it.exactSeconds() <= LONGEST).isPresent()
                && row.time()
                        .filter(it -> isByHand && Stops.above(it.stops(), 0))
                        .isEmpty();
    }

    private static Optional<GreyFilter> filter(AdviceRequest request, Light light) {
        Optional<Shutter> shutter = request.shutter();
        if (shutter.isEmpty() || request.setting().lens().isEmpty()) {
            return Optional.empty();
        }
        Aperture wanted = request.hold()
                .flatMap(Hold::aperture)
                .or(() -> request.setting().aperture())
                .orElseGet(() -> request.setting().lens().get().ring().nearest(5));
        double tooMuch =
                shutter.get().fastest().stops() - Stops.of(request.path().metered(light.ev100(), wanted));
        if (!Stops.above(tooMuch, 0.5)) {
            return Optional.empty();
        }
        for (int grey : GREY) {
            List<Filter> filters = new ArrayList<>(request.setting().filters());
            filters.add(Filter.factor("nd" + grey, grey));
            Optional<Suggestion> row =
                    request
                            .with(request.setting().with(SettingPatch.filters(filters)))
                            .advice(light)
                            .suggestions()
                            .stream()
                            .filter(it -> serves(it, request) && it.aperture().isSameMark(wanted))
                            .findFirst();
            if (row.isPresent()) {
                return Optional.of(new GreyFilter("nd" + grey, row.get()));
            }
        }
        return Optional.empty();
    }

    private static Optional<Suggestion> tripod(AdviceRequest request, Light light) {
        return request.setting().tripod()
                ? Optional.empty()
                : best(request.with(request.setting().with(SettingPatch.tripod(true))), light);
    }

    private static Optional<Suggestion> best(AdviceRequest request, Light light) {
        Suggestions advice = request.advice(light);
        return advice.bestOne().filter(it -> serves(it, request));
    }

    private static List<OtherStock> stocks(AdviceRequest request, Light light, Kit kit) {
        List<OtherStock> found = new ArrayList<>();
        for (String key : kit.keys(Kit.Sort.STOCKS)) {
            Optional<Stock> stock = kit.stock(key)
                    .filter(it -> request.camera()
                            .map(camera -> it.filmSizes().stream().anyMatch(camera.frames()::containsKey))
                            .orElse(false));
            if (stock.isEmpty() || stock.map(Stock::key).equals(request.stock().map(Stock::key))) {
                continue;
            }
            AdviceRequest other = new AdviceRequest(
                    request.camera(),
                    request.setting(),
                    request.hold(),
                    stock,
                    stock.get().usualIndex(),
                    0,
                    request.meter(),
                    request.flash());
            best(other, light).ifPresent(it -> found.add(new OtherStock(stock.get(), it)));
        }
        return found.size() > MOST_STOCKS ? found.subList(0, MOST_STOCKS) : found;
    }

    /** The rating that the widest aperture would need at the longest time that serves. */
    private static Optional<Push> push(AdviceRequest request, Light light) {
        Optional<Shutter> shutter = request.shutter();
        if (shutter.isEmpty()
                || request.setting().lens().isEmpty()
                || request.stock().isEmpty()) {
            return Optional.empty();
        }
        Aperture aperture = request.hold()
                .flatMap(Hold::aperture)
                .orElseGet(() -> request.setting().lens().get().ring().widest());
        OptionalDouble focal = request.setting().focalMm();
        double limit = request.setting().tripod() || focal.isEmpty()
                ? Double.POSITIVE_INFINITY
                : request.camera().get().handHeldLimit(focal.getAsDouble());
        Optional<ExposureTime> longest = shutter.get().marks().stream()
                .filter(it -> !Stops.above(it.stops(), Stops.of(limit)))
                .findFirst();
        if (longest.isEmpty()) {
            return Optional.empty();
        }
        double missing = Math.ceil(Stops.of(request.path().metered(light.ev100(), aperture))
                - longest.get().stops()
                - Stops.TOLERANCE);
        if (missing < 1) {
            return Optional.empty();
        }
        FilmSpeed box = request.stock().get().boxSpeed();
        double index = request.index().arithmetic() * Stops.factor(missing);
        double push = Stops.of(index / box.arithmetic());
        return Optional.of(new Push(aperture, longest.get(), index, push));
    }
}
