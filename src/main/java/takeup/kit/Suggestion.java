package takeup.kit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.Aperture;
import takeup.exposure.DepthOfField;
import takeup.exposure.ExposureTime;
import takeup.exposure.LightParts;

/**
 * One pair to set: f/2.8 at 1/250.
 *
 * @param aperture a mark of the lens
 * @param time the nearest time the camera can set; empty where it has no dial, or no time is long enough
 * @param asked what the light asks for at that aperture
 * @param light light on the film against light asked for, all of it and its parts
 * @param overBoxStops stops above box speed, all habits added; empty without a stock
 * @param depth what is sharp, where a distance was given
 * @param warnings the reasons not to use it
 */
public record Suggestion(
        Aperture aperture,
        Optional<ExposureTime> time,
        Asked asked,
        LightParts light,
        OptionalDouble overBoxStops,
        Optional<DepthOfField> depth,
        List<Warning> warnings) {
    public Suggestion {
        warnings = List.copyOf(warnings);
    }

    /**
     * What the light asks for.
     *
     * @param meteredSeconds before reciprocity
     * @param correctedSeconds after reciprocity; empty where no time is long enough
     * @param openStops for a film given in stops: what to open instead of exposing longer
     */
    public record Asked(double meteredSeconds, OptionalDouble correctedSeconds, OptionalDouble openStops) {}

    public double meteredSeconds() {
        return asked.meteredSeconds;
    }

    public OptionalDouble correctedSeconds() {
        return asked.correctedSeconds;
    }

    public OptionalDouble openStops() {
        return asked.openStops;
    }

    /** All light on the film against light asked for; + is more. */
    public OptionalDouble errorStops() {
        return light.totalStops();
    }

    /** Whether a warning of that code speaks against it. */
    public boolean has(Warning.Code code) {
        for (Warning warning : warnings) {
            if (warning.code() == code) {
                return true;
            }
        }
        return false;
    }
}
