package takeup.exposure;

import java.time.OffsetDateTime;

/**
 * What a flash meter said: the aperture for a film speed, f/8 at EI 200.
 *
 * @param aperture the aperture that the meter asked for
 * @param index the film speed that the meter was set to
 * @param typed the line as it was typed
 * @param at when it was taken
 */
public record FlashLight(Aperture aperture, FilmSpeed index, String typed, OffsetDateTime at) {}
