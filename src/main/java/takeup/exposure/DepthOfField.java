package takeup.exposure;

import java.util.OptionalDouble;

/**
 * From where to where a picture is sharp, in metres: near 2.83, far 3.19, hyperfocal 48.8.
 *
 * <p>H = f^2 / (N c) + f; near = s (H - f) / (H + s - 2f); far = s (H - f) / (H - s), infinite from s = H on (after
 * Greenleaf, "Photographic Optics", second hand), N on the exact scale.
 *
 * @param nearM the nearest sharp distance
 * @param farM the farthest; empty where it is infinite
 * @param hyperfocalM the distance that makes everything from its half to infinity sharp
 */
public record DepthOfField(double nearM, OptionalDouble farM, double hyperfocalM) {
    /** For a focal length and a circle of confusion in mm, and a distance in metres, all above 0. */
    public static DepthOfField of(double focalMm, Aperture aperture, double circleMm, double distanceM) {
        double f = focalMm;
        double s = distanceM * 1000;
        double h = f * f / (aperture.exactFNumber() * circleMm) + f;
        double near = s * (h - f) / (h + s - 2 * f);
        OptionalDouble far = s >= h ? OptionalDouble.empty() : OptionalDouble.of(s * (h - f) / (h - s) / 1000);
        return new DepthOfField(near / 1000, far, h / 1000);
    }
}
