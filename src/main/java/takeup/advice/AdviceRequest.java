package takeup.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.FilmSpeed;
import takeup.exposure.FlashLight;
import takeup.exposure.FrameLight;
import takeup.exposure.Light;
import takeup.exposure.LightPath;
import takeup.exposure.Reciprocity;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.ExposureWarnings;
import takeup.kit.Hold;
import takeup.kit.Meter;
import takeup.kit.MeteredPair;
import takeup.kit.Shutter;
import takeup.kit.Stock;
import takeup.kit.Suggestions;
import takeup.kit.Warning;
import takeup.roll.Film;
import takeup.roll.Setting;

/**
 * All that an advice is asked for: which camera, how it is set, which film at which index.
 *
 * @param camera the camera; without one there are no suggestions
 * @param setting the lens, what is on it, and the aperture in hand
 * @param hold what suggestions keep
 * @param stock the film; without one it counts as negative
 * @param index the exposure index
 * @param pushStops development of the roll
 * @param meter the meter in hand
 * @param flash what is known of the flash
 */
public record AdviceRequest(
        Optional<Camera> camera,
        Setting setting,
        Optional<Hold> hold,
        Optional<Stock> stock,
        FilmSpeed index,
        double pushStops,
        Meter meter,
        Optional<FlashLight> flash) {
    /** What an advice is asked for now; empty without a film. */
    public static Optional<AdviceRequest> inHand(ShootState s) {
        if (s.rollInHand().isEmpty()) {
            return Optional.empty();
        }
        Film film = s.rollInHand().get().film();
        return Optional.of(new AdviceRequest(
                s.cameraInHand(),
                s.inHand().setting(),
                s.inHand().hold(),
                Optional.of(film.stock()),
                film.index(),
                film.development().pushStops(),
                s.meterInHand(),
                s.day().flash()));
    }

    /** The dial that times are set on: that of the body, or of a lens with a shutter of its own. */
    public Optional<Shutter> shutter() {
        return camera.flatMap(it -> it.withLens(setting.lens()).shutter());
    }

    /** The same with another setting. */
    AdviceRequest with(Setting other) {
        return new AdviceRequest(camera, other, hold, stock, index, pushStops, meter, flash);
    }

    /** The same with no aperture and no time in hand. */
    AdviceRequest withNothingInHand() {
        return with(setting.withoutPair());
    }

    /** The path of the light to the film. */
    public LightPath path() {
        return new LightPath(
                index,
                setting.filterStops(),
                setting.extensionStops(),
                setting.biasStops(),
                stock.isPresent() ? stock.get().reciprocity() : new Reciprocity.None(OptionalDouble.empty()));
    }

    /**
     * Whether the film tolerates more light rather than less, as negative film does; one that is not known counts as
     * such.
     */
    public boolean prefersOverexposure() {
        return stock.isEmpty() || stock.get().kind().isNegative();
    }

    /** So many stops more than the light asks for are right all the same: two thirds on negative film, else one. */
    public double toleratedOverStops() {
        return prefersOverexposure() ? 2 / 3.0 : 1 / 3.0;
    }

    /** The advice for a light. */
    public Suggestions advice(Light light) {
        return advice(light, Optional.empty());
    }

    /** The advice for a light for which the meter showed a pair. */
    public Suggestions advice(Light light, Optional<MeteredPair> shown) {
        if (camera.isEmpty()) {
            return Suggestions.NONE;
        }
        Optional<Suggestions.PairInHand> inHand = setting.aperture().isPresent()
                ? Optional.of(new Suggestions.PairInHand(setting.aperture().get(), setting.time()))
                : Optional.empty();
        return Suggestions.of(new Suggestions.Request(
                camera.get(),
                new Suggestions.LensInUse(setting.lens(), setting.focalMm(), setting.distanceM()),
                new Suggestions.FilmInUse(stock, pushStops),
                path(),
                light(light),
                new Suggestions.Wishes(hold, inHand, shown),
                new Suggestions.Support(setting.flash(), setting.tripod())));
    }

    /** All light that there is for a reading of the ambient light. */
    public FrameLight light(Light light) {
        return FrameLight.of(Optional.of(light), setting.flash(), flash);
    }

    /** The cautions about the reading itself. */
    public List<Warning> warnings(Light light) {
        List<Warning> warnings = new ArrayList<>();
        ExposureWarnings.span(light.spanStops(), stock).ifPresent(warnings::add);
        ExposureWarnings.cameraMeter(light, stock).ifPresent(warnings::add);
        ExposureWarnings.midGrey(light, stock).ifPresent(warnings::add);
        ExposureWarnings.sun(light.ev100()).ifPresent(warnings::add);
        return warnings;
    }
}
