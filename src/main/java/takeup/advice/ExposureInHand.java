package takeup.advice;

import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.FlashLight;
import takeup.exposure.Light;
import takeup.exposure.LightPath;
import takeup.exposure.Reciprocity;
import takeup.exposure.Stops;
import takeup.history.ShootState;
import takeup.roll.ExposureResult;
import takeup.roll.Setting;

/** What the setting in hand comes to in the light of the day. */
public final class ExposureInHand {
    private ExposureInHand() {}

    /**
     * What reciprocity makes of the aperture in hand.
     *
     * @param meteredSeconds the time before the correction
     * @param correctedSeconds the time after it; empty where no time is long enough
     * @param openStops by how much to open the lens instead
     * @param isBeyondTable whether it is past what the film's maker has published
     */
    public record ReciprocityInHand(
            double meteredSeconds, OptionalDouble correctedSeconds, OptionalDouble openStops, boolean isBeyondTable) {
        private boolean isNeeded() {
            return correctedSeconds.isEmpty()
                    || isBeyondTable
                    || Stops.above(Stops.of(correctedSeconds.getAsDouble() / meteredSeconds), 0);
        }
    }

    /** The error of the setting for the light, or for the flash where one is on, in stops; - is under. */
    public static OptionalDouble error(ShootState s) {
        Setting setting = s.inHand().setting();
        if (!setting.flash()) {
            return daylightError(s);
        }
        Optional<FlashLight> flash = s.day().flash();
        return s.rollInHand().isEmpty() || setting.aperture().isEmpty() || flash.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        path(s).flashError(flash.get(), setting.aperture().get()));
    }

    /**
     * What the light that is there anyway does with the setting while a flash reading stands beside it, in stops; - is
     * under.
     */
    public static OptionalDouble ambientError(ShootState s) {
        return s.day().flash().isPresent() ? daylightError(s) : OptionalDouble.empty();
    }

    private static OptionalDouble daylightError(ShootState s) {
        Setting setting = s.inHand().setting();
        Optional<Light> light = s.day().light();
        return s.rollInHand().isEmpty()
                        || light.isEmpty()
                        || setting.aperture().isEmpty()
                        || setting.time().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(path(s).error(
                                light.get().ev100(),
                                setting.aperture().get(),
                                setting.time().get()));
    }

    /** What reciprocity costs; empty where nothing is lost, and with flash. */
    public static Optional<ReciprocityInHand> reciprocity(ShootState s) {
        Setting setting = s.inHand().setting();
        if (s.rollInHand().isEmpty()
                || s.day().light().isEmpty()
                || setting.aperture().isEmpty()
                || setting.flash()) {
            return Optional.empty();
        }
        Reciprocity film = s.rollInHand().get().film().stock().reciprocity();
        double metered = path(s).metered(
                        s.day().light().get().ev100(), setting.aperture().get());
        return Optional.of(new ReciprocityInHand(
                        metered, film.corrected(metered), film.openStops(metered), film.beyond(metered)))
                .filter(ReciprocityInHand::isNeeded);
    }

    private static LightPath path(ShootState s) {
        return ExposureResult.path(
                s.rollInHand().orElseThrow().film(), s.inHand().setting());
    }
}
