package takeup.exposure;

import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * The light of a flash as the aperture that is right for it: f/8 at EI 200.
 *
 * @param aperture the aperture that is right
 * @param index the film speed that it is right for
 * @param measured what a flash meter held besides; empty where a guide number gave the aperture, which knows the flash
 *     alone
 * @param typed the line as it was typed
 * @param at when it was taken
 */
public record FlashLight(
        Aperture aperture, FilmSpeed index, Optional<Measured> measured, String typed, OffsetDateTime at) {
    /**
     * What goes with a flash meter's reading, which holds the room's light too.
     *
     * @param time the time that it was taken with; empty where it is not known
     * @param fill what a second light gave, measured alone as the first was
     * @param room the room's light as it was metered by then
     */
    public record Measured(Optional<ExposureTime> time, Optional<Aperture> fill, Optional<ExposureValue> room) {
        /** Of a time that nobody knows. */
        public static final Measured ANY_TIME = new Measured(Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** The second light, where there is one. */
    public Optional<Aperture> fill() {
        return measured.isPresent() ? measured.get().fill() : Optional.empty();
    }

    /** The room's light that the reading holds, where it was metered. */
    public Optional<ExposureValue> room() {
        return measured.isPresent() ? measured.get().room() : Optional.empty();
    }

    /** The aperture that is right for all of it: where two lights meet, the film gets the sum of both. */
    public double stops() {
        Optional<Aperture> fill = fill();
        return fill.isPresent() ? Stops.sum(aperture.stops(), fill.get().stops()) : aperture.stops();
    }

    /** What a flash meter showed at a time that is not known. */
    public FlashLight(Aperture aperture, FilmSpeed index, String typed, OffsetDateTime at) {
        this(aperture, index, Optional.of(Measured.ANY_TIME), typed, at);
    }
}
