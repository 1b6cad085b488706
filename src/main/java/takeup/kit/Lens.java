package takeup.kit;

import java.util.Objects;
import java.util.Optional;
import takeup.exposure.ExposureTime;
import takeup.text.Plain;

/**
 * A lens of a camera: 80mm f/2.8.
 *
 * @param key what is typed after {@code lens}
 * @param name as it is written in the log
 * @param shortestMm the focal length in mm, or the short end of a zoom
 * @param longestMm the same, or the long end
 * @param ring the aperture ring
 * @param shutter the dial of its own leaf shutter; empty where the body's dial counts
 * @param syncTime the fastest time for flash with this lens; empty where that of the body counts
 */
public record Lens(
        String key,
        String name,
        double shortestMm,
        double longestMm,
        Ring ring,
        Optional<Shutter> shutter,
        Optional<ExposureTime> syncTime) {
    /** A lens that leaves times and sync to the body. */
    public Lens(String key, String name, double shortestMm, double longestMm, Ring ring) {
        this(key, name, shortestMm, longestMm, ring, Optional.empty(), Optional.empty());
    }

    public Lens {
        if (!(shortestMm > 0 && longestMm >= shortestMm && longestMm <= 5000)) {
            throw new IllegalArgumentException(
                    "a focal length lies above 0 and up to 5000 mm, the short end of a zoom first");
        }
    }

    /** Whether its focal length can be changed. */
    public boolean isZoom() {
        return longestMm > shortestMm;
    }

    /** Whether the lens can be set to that focal length. */
    public boolean reaches(double focalMm) {
        return focalMm >= shortestMm - 0.05 && focalMm <= longestMm + 0.05;
    }

    /** The focal lengths in words: {@code 80 mm} or {@code 28 to 90 mm}. */
    public String focalWords() {
        return Plain.number(shortestMm) + (isZoom() ? " to " + Plain.number(longestMm) : "") + " mm";
    }

    // Written by hand as in RollId: the generated equals costs time at its first use, before the first paint.
    @Override
    public boolean equals(Object other) {
        return other instanceof Lens lens
                && key.equals(lens.key)
                && name.equals(lens.name)
                && Double.compare(shortestMm, lens.shortestMm) == 0
                && Double.compare(longestMm, lens.longestMm) == 0
                && ring.equals(lens.ring)
                && shutter.equals(lens.shutter)
                && syncTime.equals(lens.syncTime);
    }

    @Override
    public int hashCode() {
        return Objects.hash(key, name, shortestMm, longestMm, ring, shutter, syncTime);
    }
}
