package takeup.advice;

import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.FrameLight;
import takeup.exposure.LightParts;
import takeup.exposure.LightPath;
import takeup.exposure.LongExposure;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.ExposureWarnings;
import takeup.kit.Warning;
import takeup.roll.ExposureResult;
import takeup.roll.Film;
import takeup.roll.Roll;
import takeup.roll.Setting;

/** What the setting in hand comes to in the light of the day. */
public final class ExposureInHand {
    private ExposureInHand() {}

    /** The error of the setting for all light there is, in stops; - is under. */
    public static OptionalDouble error(ShootState s) {
        return light(s).totalStops();
    }

    /** What the setting makes of all light there is, and of its parts. */
    public static LightParts light(ShootState s) {
        Setting setting = s.inHand().setting();
        return s.rollInHand().isEmpty()
                ? LightParts.UNKNOWN
                : FrameLight.of(s.day().light(), setting.flash(), s.day().flash())
                        .through(path(s), setting.aperture(), setting.time());
    }

    /** The first thing by which the pair in hand would spoil the next frame: past the rings, the sync or the film. */
    public static Optional<Warning> fault(ShootState state) {
        Setting setting = state.inHand().setting();
        if (state.rollInHand().isEmpty() || state.cameraInHand().isEmpty()) {
            return Optional.empty();
        }
        Camera camera = state.cameraInHand().get().withLens(setting.lens());
        Optional<Warning> fault =
                ExposureWarnings.beyondRings(setting.aperture(), setting.time(), camera, setting.lens());
        if (fault.isEmpty() && setting.flash() && setting.time().isPresent()) {
            fault = ExposureWarnings.sync(setting.time().get(), camera);
        }
        return fault.isPresent() ? fault : latitude(state);
    }

    private static Optional<Warning> latitude(ShootState state) {
        Film film = state.rollInHand().orElseThrow().film();
        OptionalDouble sum = overBox(state);
        return sum.isEmpty()
                ? Optional.empty()
                : ExposureWarnings.latitude(
                        sum.getAsDouble() + film.development().pushStops(), film.stock());
    }

    /** Stops above box speed that the setting in hand comes to; empty without a roll or a reading. */
    public static OptionalDouble overBox(ShootState state) {
        OptionalDouble error = error(state);
        if (error.isEmpty() || state.rollInHand().isEmpty()) {
            return OptionalDouble.empty();
        }
        Film film = state.rollInHand().get().film();
        double rating = film.stock().stopsOverBox(film.index());
        return OptionalDouble.of(rating + state.inHand().setting().biasStops() + error.getAsDouble());
    }

    /** What the setting would make of a frame that is still open, with what is on it by now; empty without one. */
    public static OptionalDouble withFrame(ShootState s) {
        Optional<Roll> roll = s.rollInHand();
        return roll.isEmpty() || !roll.get().doubleAwaited()
                ? OptionalDouble.empty()
                : ExposureResult.soFarAnd(
                                roll.get(),
                                roll.get().newest().orElseThrow(),
                                light(s),
                                s.inHand().setting().biasStops())
                        .totalStops();
    }

    /** What is missing to judge the setting, in words; "" where nothing is. */
    public static String missing(ShootState s) {
        Setting setting = s.inHand().setting();
        return FrameLight.of(s.day().light(), setting.flash(), s.day().flash()).missing(setting.time());
    }

    /** What reciprocity costs; empty where nothing is lost, and with flash. */
    public static Optional<LongExposure> reciprocity(ShootState s) {
        Setting setting = s.inHand().setting();
        if (s.rollInHand().isEmpty()
                || s.day().light().isEmpty()
                || setting.aperture().isEmpty()
                || setting.flash()) {
            return Optional.empty();
        }
        double metered = path(s).metered(
                        s.day().light().get().ev100(), setting.aperture().get());
        LongExposure exposure =
                new LongExposure(metered, s.rollInHand().get().film().stock().reciprocity());
        return exposure.isNeeded() ? Optional.of(exposure) : Optional.empty();
    }

    /** Whether the time in hand is too long for the hand, no tripod is there, and nobody silenced that. */
    public static Optional<Warning> handHeld(ShootState s) {
        Setting setting = s.inHand().setting();
        boolean isSilenced = s.day().silenced().contains(Warning.Code.HAND_HELD);
        Optional<Camera> camera = s.cameraInHand();
        return isSilenced
                        || setting.tripod()
                        || setting.time().isEmpty()
                        || s.rollInHand().isEmpty()
                        || camera.isEmpty()
                ? Optional.empty()
                : ExposureWarnings.handHeld(setting.time().get(), camera.get(), setting.focalMm());
    }

    private static LightPath path(ShootState s) {
        return ExposureResult.path(
                s.rollInHand().orElseThrow().film(), s.inHand().setting());
    }
}
