package takeup.exposure;

import java.util.List;

/**
 * How strong a flash is: guide number 36 in metres at ISO 100.
 *
 * <p>N = GN x sqrt(ISO / 100) x sqrt(power) / distance, the guide number and the distance in the same unit; several
 * heads together have the root of the sum of their squares (openphotographicsociety.org, "Flash guide numbers"; the
 * root rule: everything2.com, "Flash guide number").
 *
 * @param metres the guide number for ISO 100 and metres, above 0 and up to 500
 */
public record GuideNumber(double metres) {
    /** Metres in a foot. */
    public static final double FOOT = 0.3048;

    public GuideNumber {
        if (!(metres > 0 && metres <= 500)) {
            throw new IllegalArgumentException("a guide number lies above 0 and up to 500 in metres");
        }
    }

    /** A guide number that is given for feet: 118 in feet is 36 in metres. */
    public static GuideNumber inFeet(double feet) {
        return new GuideNumber(feet * FOOT);
    }

    /** Several heads that light the same subject from the same distance. */
    public static GuideNumber together(List<GuideNumber> heads) {
        double sum = 0;
        for (GuideNumber head : heads) {
            sum += head.metres * head.metres;
        }
        return new GuideNumber(Math.sqrt(sum));
    }

    /**
     * The f-number that exposes right.
     *
     * @param speed the exposure index
     * @param power the part of full power, above 0 and up to 1
     * @param distanceM from the flash to the subject, in metres
     */
    public double fNumber(FilmSpeed speed, double power, double distanceM) {
        return metres * Math.sqrt(speed.arithmetic() / 100) * Math.sqrt(power) / distanceM;
    }

    /** The distance in metres at which an f-number exposes right. */
    public double distanceM(FilmSpeed speed, double power, double fNumber) {
        return metres * Math.sqrt(speed.arithmetic() / 100) * Math.sqrt(power) / fNumber;
    }

    /**
     * Light that a flash gives at another distance, in stops: twice as far is two stops less (scantips.com, "Flash
     * basics").
     */
    public static double fallOff(double distanceRatio) {
        return -2 * Stops.of(distanceRatio);
    }
}
