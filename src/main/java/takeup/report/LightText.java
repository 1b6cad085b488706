package takeup.report;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import takeup.exposure.Light;
import takeup.exposure.Stops;
import takeup.roll.FrameWarnings;

/** Light readings in words: {@code EV 11.3 at ISO 100, incident, 12 min old}. */
public final class LightText {
    private LightText() {}

    /** A light reading in words: {@code EV 11.3 at ISO 100, incident, 12 min old}. */
    public static String of(Light light, OffsetDateTime now) {
        return light.ev100() + " at ISO 100, " + how(light) + ", " + age(light.at(), now);
    }

    /** The way it was read: {@code incident}, {@code spot on zone 3}. */
    public static String how(Light light) {
        return light.method().word()
                + (light.zone().isPresent() && light.zone().getAsInt() != 5
                        ? " on zone " + light.zone().getAsInt()
                        : "")
                + (light.spanStops().isPresent()
                        ? ", span " + Stops.words(light.spanStops().getAsDouble())
                        : "");
    }

    /**
     * How a light was read, where the way of reading is a habit that shifts exposures: {@code read low}, {@code zone
     * 3}, {@code camera meter}. Empty for an incident reading as it is.
     */
    public static Optional<String> habit(Light light) {
        String kind = switch (light.method()) {
            case CAMERA -> "camera meter";
            case SKY -> "daylight rule";
            case REFLECTED -> "reflected";
            case SPOT -> "spot on zone " + light.zone().orElse(5);
            case INCIDENT, LUX -> "";
        };
        String which = light.spanStops().isPresent() ? endOfSpan(light) : "";
        String habit = which + (which.isEmpty() || kind.isEmpty() ? "" : ", ") + kind;
        return habit.isEmpty() ? Optional.empty() : Optional.of(habit);
    }

    private static String endOfSpan(Light light) {
        List<String> typed = List.of(light.typed().toLowerCase(Locale.ROOT).split(" "));
        if (typed.contains("low")) {
            return "read low";
        }
        return typed.contains("high") ? "read high" : "";
    }

    /**
     * How old something is: {@code just now}, {@code 12 min old}, {@code 2 h 5 min old}; of unknown age where the clock
     * went back since.
     */
    public static String age(OffsetDateTime then, OffsetDateTime now) {
        if (FrameWarnings.isAhead(then, now)) {
            return "of unknown age";
        }
        long minutes = Duration.between(then, now).toMinutes();
        if (minutes < 1) {
            return "just now";
        }
        return minutes < 60 ? minutes + " min old" : minutes / 60 + " h " + minutes % 60 + " min old";
    }
}
