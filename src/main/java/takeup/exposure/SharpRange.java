package takeup.exposure;

import java.util.OptionalDouble;

/**
 * What is to be sharp, from a near to a far distance in metres: 2 m to infinity.
 *
 * <p>From the formulas of {@link DepthOfField}: 1/near + 1/far = 2/s, so s = 2 near far / (near + far), twice the near
 * distance where the far one is infinite; 1/near - 1/far = 2 (s - f) / (s (H - f)), where s (H - f) is what H follows
 * from; for infinity s = H.
 *
 * @param nearM above 0
 * @param farM beyond the near one; empty where it is infinite
 */
public record SharpRange(double nearM, OptionalDouble farM) {
    public SharpRange {
        if (!(nearM > 0) || farM.isPresent() && !(farM.getAsDouble() > nearM)) {
            throw new IllegalArgumentException("what is sharp begins above 0 m and ends farther off");
        }
    }

    /** The distance to focus at, in metres. */
    public double focusM() {
        return farM.isEmpty() ? 2 * nearM : 2 * nearM * farM.getAsDouble() / (nearM + farM.getAsDouble());
    }

    /** The f-number, on the exact scale, at which just that is sharp; for a focal length and a circle in mm. */
    public double fNumber(double focalMm, double circleMm) {
        double f = focalMm;
        double s = focusM() * 1000;
        double difference = 1 / (nearM * 1000) - (farM.isEmpty() ? 0 : 1 / (farM.getAsDouble() * 1000));
        double beyondFocal = farM.isEmpty() ? s - f : 2 * (s - f) / (s * difference);
        return f * f / (circleMm * beyondFocal);
    }
}
