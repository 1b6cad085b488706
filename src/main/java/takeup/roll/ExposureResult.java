package takeup.roll;

import java.util.List;
import java.util.OptionalDouble;
import takeup.exposure.LightPath;
import takeup.exposure.Stops;

/**
 * What an exposure was worth, worked out from what is known of it. What cannot be known is empty.
 *
 * @param meteredSeconds what the light asked for at the set aperture
 * @param correctedSeconds the same after reciprocity
 * @param errorStops light on the film against light asked for; + is more
 * @param overBoxStops stops above box speed: rating, bias and error added
 */
public record ExposureResult(
        OptionalDouble meteredSeconds,
        OptionalDouble correctedSeconds,
        OptionalDouble errorStops,
        OptionalDouble overBoxStops) {
    private static final ExposureResult NONE = new ExposureResult(
            OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    /** What lies between the light and the film for a setting on that film. */
    public static LightPath path(Film film, Setting setting) {
        return new LightPath(
                film.index(),
                setting.filterStops(),
                setting.extensionStops(),
                setting.biasStops(),
                film.stock().reciprocity());
    }

    /** The verdict on one opening of the shutter. With flash only a flash reading can tell. */
    public static ExposureResult of(Film film, Exposure exposure) {
        Setting setting = exposure.setting();
        LightPath path = path(film, setting);
        OptionalDouble metered = OptionalDouble.empty();
        OptionalDouble corrected = OptionalDouble.empty();
        OptionalDouble error = OptionalDouble.empty();
        if (exposure.light().isPresent() && setting.aperture().isPresent()) {
            metered = OptionalDouble.of(path.metered(
                    exposure.light().get().ev100(), setting.aperture().get()));
            corrected = path.reciprocity().corrected(metered.getAsDouble());
            if (setting.time().isPresent() && !setting.flash()) {
                error = OptionalDouble.of(path.error(
                        exposure.light().get().ev100(),
                        setting.aperture().get(),
                        setting.time().get()));
            }
        }
        if (setting.flash()
                && exposure.flashLight().isPresent()
                && setting.aperture().isPresent()) {
            error = OptionalDouble.of(path.flashError(
                    exposure.flashLight().get(), setting.aperture().get()));
        }
        OptionalDouble overBox = error.isEmpty()
                ? error
                : OptionalDouble.of(
                        film.stock().boxSpeed().stopsOver(film.index()) + setting.biasStops() + error.getAsDouble());
        return new ExposureResult(metered, corrected, error, overBox);
    }

    /** The verdict on a frame: of all its light together; no error while a further exposure is still awaited. */
    public static ExposureResult of(Roll roll, Frame frame) {
        if (frame.kind() != Frame.Kind.EXPOSED && frame.kind() != Frame.Kind.LOST) {
            return NONE;
        }
        ExposureResult first = of(roll.film(), frame.exposure());
        boolean awaited =
                roll.doubleAwaited() && roll.newest().filter(it -> it == frame).isPresent();
        if (awaited) {
            return new ExposureResult(
                    first.meteredSeconds, first.correctedSeconds, OptionalDouble.empty(), OptionalDouble.empty());
        }
        if (frame.further().isEmpty()) {
            return first;
        }
        List<ExposureResult> more =
                frame.further().stream().map(it -> of(roll.film(), it)).toList();
        OptionalDouble error = first.errorStops;
        OptionalDouble over = first.overBoxStops;
        for (ExposureResult verdict : more) {
            error = together(error, verdict.errorStops);
            over = together(over, verdict.overBoxStops);
        }
        return new ExposureResult(first.meteredSeconds, first.correctedSeconds, error, over);
    }

    private static OptionalDouble together(OptionalDouble a, OptionalDouble b) {
        return a.isEmpty() || b.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Stops.of(Stops.factor(a.getAsDouble()) + Stops.factor(b.getAsDouble())));
    }
}
