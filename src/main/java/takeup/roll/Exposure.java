package takeup.roll;

import java.time.OffsetDateTime;
import java.util.Optional;
import takeup.exposure.FlashLight;
import takeup.exposure.Light;

/**
 * One opening of the shutter: when, how the camera was set, and what light was known then.
 *
 * @param at when; empty where it is not known
 * @param setting how the camera was set
 * @param light the last light reading
 * @param flashLight the last flash reading, while flash was on
 * @param clock how the clock was moved since the frame before it on this roll
 */
public record Exposure(
        Optional<OffsetDateTime> at,
        Setting setting,
        Optional<Light> light,
        Optional<FlashLight> flashLight,
        Optional<ClockShift> clock) {
    /** Nothing known. */
    public static final Exposure UNKNOWN =
            new Exposure(Optional.empty(), Setting.NONE, Optional.empty(), Optional.empty());

    /** An exposure while the clock ran on unchanged. */
    public Exposure(
            Optional<OffsetDateTime> at, Setting setting, Optional<Light> light, Optional<FlashLight> flashLight) {
        this(at, setting, light, flashLight, Optional.empty());
    }

    /** The exposure with its setting corrected. */
    public Exposure with(SettingPatch change) {
        return new Exposure(at, setting.with(change), light, flashLight, clock);
    }

    /** The same, with how the clock was moved before it, if it was. */
    public Exposure withClockShift(Optional<ClockShift> shift) {
        return new Exposure(at, setting, light, flashLight, shift);
    }

    /** Nothing known of it but when it was. */
    Exposure timeOnly() {
        return new Exposure(at, Setting.NONE, Optional.empty(), Optional.empty(), clock);
    }
}
