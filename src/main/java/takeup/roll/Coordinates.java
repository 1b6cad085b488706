package takeup.roll;

import takeup.text.Plain;

/**
 * A place on earth, in degrees: 59.33 north, 18.07 east. South and west are negative.
 *
 * @param latitude -90 to 90
 * @param longitude -180 to 180
 */
public record Coordinates(double latitude, double longitude) {
    public Coordinates {
        if (!(Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180)) {
            throw new IllegalArgumentException("a latitude is -90 to 90, a longitude -180 to 180");
        }
    }

    @Override
    public String toString() {
        return Plain.number(latitude) + "," + Plain.number(longitude);
    }
}
