package takeup.exposure;

import java.time.OffsetDateTime;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What the meter showed, reduced to one value: EV 11.3 at ISO 100, incident, typed {@code m 5.6 125}.
 *
 * @param ev100 the light as EV at ISO 100; of several readings their mean, or the lowest or highest
 * @param method how it was read
 * @param typed the line as it was typed
 * @param spanStops how far several readings lie apart, in stops; empty for a single one
 * @param zone the zone that a spot reading was placed on, 0 to 10
 * @param index the film speed that the meter was set to, where the reading depended on it
 * @param at when it was taken
 * @param freshMinutes how long it is called fresh: 30 as a rule, less where the light goes fast; common practice, no
 *     source
 */
public record Light(
        ExposureValue ev100,
        Method method,
        String typed,
        OptionalDouble spanStops,
        OptionalInt zone,
        OptionalDouble index,
        OffsetDateTime at,
        int freshMinutes) {
    /** After so many minutes a reading is called old, as a rule. */
    public static final int FRESH = 30;

    /** A reading of steady light. */
    public Light(
            ExposureValue ev100,
            Method method,
            String typed,
            OptionalDouble spanStops,
            OptionalInt zone,
            OptionalDouble index,
            OffsetDateTime at) {
        this(ev100, method, typed, spanStops, zone, index, at, FRESH);
    }

    /** The same reading, fresh for another while. */
    public Light fresh(int minutes) {
        return new Light(ev100, method, typed, spanStops, zone, index, at, minutes);
    }

    /** The same with a reading of so much light on a zone: a stop each from zone 5, the middle. */
    public Light placed(ExposureValue read, int onZone) {
        return new Light(
                new ExposureValue(read.stops() + 5 - onZone),
                method,
                typed,
                spanStops,
                OptionalInt.of(onZone),
                index,
                at,
                freshMinutes);
    }

    /** How light was read. */
    public enum Method {
        INCIDENT("incident"),
        REFLECTED("reflected"),
        SPOT("spot"),
        CAMERA("camera"),
        SKY("sky"),
        LUX("lux");

        private final String word;

        Method(String word) {
            this.word = word;
        }

        /** The word in files. */
        public String word() {
            return word;
        }
    }
}
