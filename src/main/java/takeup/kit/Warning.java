package takeup.kit;

import java.util.List;
import java.util.Optional;
import takeup.json.Json;

/**
 * Something that a photographer wants to be told once, with the code that other programs know it by.
 *
 * @param code which one
 * @param text a sentence: what, and what to do
 */
public record Warning(Code code, String text) {
    /** The codes, most urgent first. */
    public enum Code {
        NO_FILM("no-film", "NO FILM"),
        PAST_END("past-end", "PAST THE END"),
        SYNC_SPEED("sync-speed", "SYNC"),
        PUSH_MISMATCH("push-mismatch", "PUSH?"),
        OUT_OF_RANGE("out-of-range", "BEYOND THE RINGS"),
        THIN("thin", "THIN"),
        DENSE("dense", "DENSE"),
        DARK("dark", "DARK"),
        LIGHT("light", "LIGHT"),
        FRAMES_LEFT("frames-left", "FEW LEFT"),
        RECIPROCITY_BEYOND("reciprocity-beyond", "PAST THE TABLE"),
        RECIPROCITY("reciprocity", "RECIPROCITY"),
        HAND_HELD("hand-held", "HAND-HELD"),
        METER_SPEED("meter-speed", "METER SPEED"),
        SPAN("span", "SPAN"),
        STALE_LIGHT("stale-light", "OLD LIGHT"),
        NO_LIGHT("no-light", "NO READING"),
        CAMERA_METER("camera-meter", "CAMERA'S METER"),
        MID_GREY("mid-grey", "MID-GREY"),
        SUN("sun", "SUN"),
        FLASH_VOLTAGE("flash-voltage", "FLASH VOLTAGE"),
        EXPIRED("expired", "EXPIRED"),
        MOMENT("moment", "MOMENT"),
        BAG_LOW("bag-low", "BAG"),
        CLOCK("clock", "CLOCK");

        private final String word;
        private final String standing;

        Code(String word, String standing) {
            this.word = word;
            this.standing = standing;
        }

        /** The code of that name. */
        public static Optional<Code> named(String word) {
            for (Code code : values()) {
                if (code.word.equals(word)) {
                    return Optional.of(code);
                }
            }
            return Optional.empty();
        }

        /** The short form that stands on the screen while the state lasts. */
        public String standing() {
            return standing;
        }

        @Override
        public String toString() {
            return word;
        }
    }

    /** Adds one to others, if there is one. */
    public static void add(Optional<Warning> warning, List<Warning> into) {
        if (warning.isPresent()) {
            into.add(warning.get());
        }
    }

    /** The JSON form: code and text. */
    public Json json() {
        return Json.object().and("code", code).and("text", text);
    }
}
