package takeup.roll;

import java.util.OptionalDouble;
import takeup.exposure.FrameLight;
import takeup.exposure.LightParts;
import takeup.exposure.LightPath;
import takeup.exposure.LongExposure;

/**
 * What an exposure was worth, worked out from what is known of it. What cannot be known is empty.
 *
 * @param meteredSeconds what the light asked for at the set aperture
 * @param correctedSeconds the same after reciprocity
 * @param light light on the film against light asked for, all of it and its parts
 * @param overBoxStops stops above box speed: rating, bias and error added
 */
public record ExposureResult(
        OptionalDouble meteredSeconds, OptionalDouble correctedSeconds, LightParts light, OptionalDouble overBoxStops) {
    private static final ExposureResult NONE = new ExposureResult(
            OptionalDouble.empty(), OptionalDouble.empty(), LightParts.UNKNOWN, OptionalDouble.empty());

    /** Light on the film against light asked for, in stops; + is more. */
    public OptionalDouble errorStops() {
        return light.totalStops();
    }

    /** What lies between the light and the film for a setting on that film. */
    public static LightPath path(Film film, Setting setting) {
        return new LightPath(
                film.index(),
                setting.filterStops(),
                setting.extensionStops(),
                setting.biasStops(),
                film.stock().reciprocity());
    }

    /** The result of one opening of the shutter. */
    public static ExposureResult of(Film film, Exposure exposure) {
        Setting setting = exposure.setting();
        LightPath path = path(film, setting);
        OptionalDouble metered = OptionalDouble.empty();
        OptionalDouble corrected = OptionalDouble.empty();
        if (exposure.light().isPresent() && setting.aperture().isPresent()) {
            metered = OptionalDouble.of(path.metered(
                    exposure.light().get().ev100(), setting.aperture().get()));
            corrected = new LongExposure(metered.getAsDouble(), path.reciprocity()).seconds();
        }
        LightParts light = FrameLight.of(exposure.light(), setting.flash(), exposure.flashLight())
                .through(path, setting.aperture(), setting.time());
        return new ExposureResult(metered, corrected, light, overBox(film, light.plus(setting.biasStops())));
    }

    /** The result of a frame: of all its light together; no error while a further exposure is still awaited. */
    public static ExposureResult of(Roll roll, Frame frame) {
        ExposureResult soFar = soFar(roll, frame);
        boolean isAwaited =
                roll.doubleAwaited() && roll.newest().filter(it -> it == frame).isPresent();
        return isAwaited
                ? new ExposureResult(
                        soFar.meteredSeconds, soFar.correctedSeconds, LightParts.UNKNOWN, OptionalDouble.empty())
                : soFar;
    }

    /** What all exposures of a frame come to that are on it by now. */
    public static ExposureResult soFar(Roll roll, Frame frame) {
        if (frame.kind() != Frame.Kind.EXPOSED && frame.kind() != Frame.Kind.LOST) {
            return NONE;
        }
        ExposureResult first = of(roll.film(), frame.exposure());
        if (frame.further().isEmpty()) {
            return first;
        }
        LightParts sum = biased(roll.film(), frame.exposure());
        for (Exposure more : frame.further()) {
            sum = sum.and(biased(roll.film(), more));
        }
        return new ExposureResult(first.meteredSeconds, first.correctedSeconds, sum, overBox(roll.film(), sum));
    }

    /** A part of a frame counts against what the whole frame needs: a bias of one stop less makes it half of that. */
    private static LightParts biased(Film film, Exposure exposure) {
        return of(film, exposure).light.plus(exposure.setting().biasStops());
    }

    /**
     * What a further exposure makes of a frame, against what the whole frame needs: what is on it by now and the new
     * light together.
     */
    public static LightParts soFarAnd(Roll roll, Frame frame, LightParts light, double biasStops) {
        LightParts before =
                frame.further().isEmpty() ? biased(roll.film(), frame.exposure()) : soFar(roll, frame).light;
        return before.and(light.plus(biasStops));
    }

    /** What is on a frame of several exposures by now, against what the whole frame needs. */
    public static OptionalDouble part(Roll roll, Frame frame) {
        return frame.further().isEmpty()
                ? biased(roll.film(), frame.exposure()).totalStops()
                : soFar(roll, frame).errorStops();
    }

    private static OptionalDouble overBox(Film film, LightParts light) {
        return light.plus(film.stock().stopsOverBox(film.index())).totalStops();
    }
}
