package takeup.scans;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * What a digital file says of its exposure: f/4 1/250 ISO 800 at 15:12:40 by the camera's own clock.
 *
 * @param name the file's name
 * @param camera the camera that the file names, with its serial number where there is one
 * @param at DateTimeOriginal, by the camera's clock
 * @param offset OffsetTimeOriginal, where the file has it
 * @param settings aperture, time and ISO as text; "" where nothing is known
 */
public record DigitalShot(String name, String camera, LocalDateTime at, Optional<ZoneOffset> offset, String settings) {}
