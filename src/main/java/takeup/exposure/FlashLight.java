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
     */
    public record Measured(Optional<ExposureTime> time) {
        /** Of a time that nobody knows. */
        public static final Measured ANY_TIME = new Measured(Optional.empty());
    }

    /** What a flash meter showed at a time that is not known. */
    public FlashLight(Aperture aperture, FilmSpeed index, String typed, OffsetDateTime at) {
        this(aperture, index, Optional.of(Measured.ANY_TIME), typed, at);
    }
}
