package takeup.day;

import java.util.Optional;
import takeup.kit.Hold;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/**
 * What belongs to a camera and comes back with it: how it is set, and what suggestions are to keep.
 *
 * @param setting aperture, time, lens and what is on it
 * @param hold the aperture or time that suggestions keep
 */
public record CameraSetup(Setting setting, Optional<Hold> hold) {
    /** A camera that was not set yet. */
    public static final CameraSetup NOTHING = new CameraSetup(Setting.NONE, Optional.empty());

    /** After a change of the setting. */
    public CameraSetup with(SettingPatch change) {
        return new CameraSetup(setting.with(change), hold);
    }

    /** Keeping another aperture or time, or none. */
    public CameraSetup holding(Optional<Hold> other) {
        return new CameraSetup(setting, other);
    }
}
