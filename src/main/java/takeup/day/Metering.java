package takeup.day;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Optional;
import takeup.exposure.ExposureTime;
import takeup.exposure.FlashLight;
import takeup.exposure.Light;

/**
 * The meter in hand and what was read last.
 *
 * @param meter the meter in hand
 * @param preset the time that the meter is preset to
 * @param light the last light reading of the day
 * @param flash the last flash reading of the day
 */
public record Metering(
        Optional<String> meter, Optional<ExposureTime> preset, Optional<Light> light, Optional<FlashLight> flash) {
    /** No meter, no light. */
    static final Metering NONE = new Metering(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    Metering with(Light reading) {
        return new Metering(meter, preset, Optional.of(reading), flash);
    }

    Metering with(FlashLight reading) {
        return new Metering(meter, preset, light, Optional.of(reading));
    }

    /** With another meter; with none where its key is empty. */
    Metering with(String key, Optional<ExposureTime> time) {
        return new Metering(Optional.of(key).filter(it -> !it.isEmpty()), time, light, flash);
    }

    /** On a new day: no light, unless the night goes on and the reading is hardly older than the work. */
    Metering carried(OffsetDateTime now) {
        return new Metering(
                meter,
                preset,
                light.filter(it -> isOfThisNight(it.at(), now)),
                flash.filter(it -> isOfThisNight(it.at(), now)));
    }

    private static boolean isOfThisNight(OffsetDateTime taken, OffsetDateTime now) {
        return Duration.between(taken, now).abs().compareTo(Duration.ofHours(3)) < 0;
    }
}
