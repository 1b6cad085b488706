package takeup.prompt;

/**
 * One word of a line, read for what its sign says: {@code f5.6}, {@code 1/125}, {@code 85mm}, {@code @400}.
 *
 * @param kind what its sign says it is
 * @param value the number, in the unit of the kind
 * @param tenths tenths of a stop past an aperture, 0 to 9; -1 where none were typed
 * @param text as it was typed
 */
public record Token(Kind kind, double value, int tenths, String text) {
    public enum Kind {
        /** An f-number with its sign. */
        APERTURE,
        /** A time in seconds as printed. */
        TIME,
        /** A time in seconds by the watch. */
        BULB,
        /** A number without a sign. */
        BARE,
        /** A focal length or a draw in mm. */
        MILLIMETRES,
        /** A distance in metres. */
        METRES,
        /** How many. */
        COUNT,
        /** A film speed. */
        INDEX,
        /** An exposure value. */
        EV,
        /** Illuminance in lux. */
        LUX,
        /** Luminance in cd/m2. */
        CANDELAS,
        /** Anything else. */
        WORD
    }

    public boolean is(Kind other) {
        return kind == other;
    }
}
