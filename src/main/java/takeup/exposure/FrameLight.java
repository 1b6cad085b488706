package takeup.exposure;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * All light there is while the shutter is open once: the light that is there anyway, and a flash. Light adds up: the
 * film counts the sum of both, not the stronger one.
 *
 * @param ambient the light that is there anyway; empty where nobody metered it
 * @param isFlashOn whether flash is on
 * @param flash what is known of the flash
 * @param isAmbientNewer whether the ambient light was metered after the flash
 */
public record FrameLight(
        Optional<ExposureValue> ambient, boolean isFlashOn, Optional<FlashLight> flash, boolean isAmbientNewer) {
    /** From the last readings. */
    public static FrameLight of(Optional<Light> light, boolean isFlashOn, Optional<FlashLight> flash) {
        if (light.isEmpty()) {
            return new FrameLight(Optional.empty(), isFlashOn, flash, false);
        }
        Optional<ExposureValue> ambient = Optional.of(light.get().ev100());
        if (flash.isEmpty()) {
            return new FrameLight(ambient, isFlashOn, flash, false);
        }
        Optional<ExposureValue> room = flash.get().room();
        boolean isOther = room.isPresent() && !room.equals(ambient);
        boolean isNewer = isOther || light.get().at().isAfter(flash.get().at());
        return new FrameLight(ambient, isFlashOn, flash, isNewer);
    }

    /** What is known of it: without a flash that is on and was not metered. */
    public FrameLight known() {
        return new FrameLight(ambient, isFlashOn && flash.isPresent(), flash, isAmbientNewer);
    }

    /** What a setting makes of it. */
    public LightParts through(LightPath path, Optional<Aperture> aperture, Optional<ExposureTime> time) {
        if (aperture.isEmpty()) {
            return LightParts.UNKNOWN;
        }
        OptionalDouble now = ambient(path, aperture.get(), time);
        if (!isFlashOn) {
            return new LightParts(now, OptionalDouble.empty(), now);
        }
        if (flash.isEmpty()) {
            return new LightParts(now, OptionalDouble.empty(), OptionalDouble.empty());
        }
        double read = path.flashError(flash.get(), aperture.get());
        if (flash.get().measured().isPresent()) {
            return measured(read, now, path, aperture.get(), time);
        }
        OptionalDouble alone = OptionalDouble.of(read);
        return new LightParts(now, alone, LightParts.together(now, alone));
    }

    private OptionalDouble ambient(LightPath path, Aperture aperture, Optional<ExposureTime> time) {
        return error(ambient, path, aperture, time);
    }

    private static OptionalDouble error(
            Optional<ExposureValue> light, LightPath path, Aperture aperture, Optional<ExposureTime> time) {
        return light.isEmpty() || time.isEmpty() || path.isMadeUp(light.get(), aperture, time.get())
                ? OptionalDouble.empty()
                : OptionalDouble.of(path.error(light.get(), aperture, time.get()));
    }

    /** The time that the flash meter's reading was taken with. */
    private Optional<ExposureTime> taken() {
        return flash.flatMap(FlashLight::measured).flatMap(FlashLight.Measured::time);
    }

    private boolean isAtAnotherTime(Optional<ExposureTime> time) {
        return time.isPresent()
                && taken().isPresent()
                && Math.abs(time.get().stops() - taken().get().stops()) >= 1e-6;
    }

    /**
     * What is missing where a flash meter's reading cannot be judged at another time, in words; "" where nothing is.
     */
    public String missing(Optional<ExposureTime> time) {
        return isFlashOn && isAtAnotherTime(time)
                ? "the room's light at " + time.get() + " is not known: meter it (m READING)"
                : "";
    }

    /**
     * A flash meter's reading is all the light at the time that it was taken with. Another time changes the ambient
     * part alone, and what that part was is known only where it was metered too. An ambient light that was more than
     * the flash meter saw is another one than it stood in: the newer of the two readings counts. Key and fill that are
     * metered one after the other both hold it.
     */
    private LightParts measured(
            double read, OptionalDouble now, LightPath path, Aperture aperture, Optional<ExposureTime> time) {
        LightParts unsplit = isAtAnotherTime(time)
                ? LightParts.UNKNOWN
                : new LightParts(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(read));
        OptionalDouble then =
                error(flash.flatMap(FlashLight::room).or(() -> ambient), path, aperture, taken().or(() -> time));
        if (now.isEmpty() || then.isEmpty()) {
            return unsplit;
        }
        int readings = flash.flatMap(FlashLight::fill).isPresent() ? 2 : 1;
        double alone = Stops.factor(read) - readings * Stops.factor(then.getAsDouble());
        if (alone > 0) {
            OptionalDouble flashAlone = OptionalDouble.of(Stops.of(alone));
            return new LightParts(now, flashAlone, LightParts.together(now, flashAlone));
        }
        return isAmbientNewer ? new LightParts(now, OptionalDouble.empty(), now) : unsplit;
    }
}
