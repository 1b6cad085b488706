package takeup.order;

import java.util.Locale;

/**
 * What the lab is asked to do with a whole roll.
 *
 * @param process as the photographer calls it, such as C-41
 * @param pushStops longer development in stops, -5 to 5; pull is negative
 * @param index the speed that the roll was rated at
 * @param boxSpeed the speed on the box
 */
public record LabDevelopment(String process, double pushStops, double index, double boxSpeed) {
    /** {@code NORMAL}, {@code PUSH 1 STOP} or {@code PULL 0.5 STOPS}. */
    String order() {
        String stops = PrintedText.tenths(pushStops);
        if (stops.equals("0")) {
            return "NORMAL";
        }
        return (pushStops > 0 ? "PUSH " : "PULL ") + stops + (stops.equals("1") ? " STOP" : " STOPS");
    }

    /** Development and speeds: {@code NORMAL (rated 200, box 400)}. */
    String words() {
        return order() + " (" + speeds() + ")";
    }

    /** {@code rated 200, box 400}. */
    String speeds() {
        return "rated " + PrintedText.number(index) + ", box " + PrintedText.number(boxSpeed);
    }

    /** Stops that the index lies above the box speed; below 0 is more light. */
    double aboveBox() {
        return Math.log(index / boxSpeed) / Math.log(2);
    }

    /** The chemistry that the process names, as far as it is known: C-41, c41 and C 41 are one. */
    Chemistry chemistry() {
        return chemistry(process);
    }

    /** The chemistry that the words for a process name. */
    static Chemistry chemistry(String process) {
        StringBuilder letters = new StringBuilder();
        process.toLowerCase(Locale.ROOT)
                .chars()
                .filter(it -> it >= 'a' && it <= 'z' || it >= '0' && it <= '9')
                .forEach(it -> letters.append((char) it));
        String word = letters.toString();
        if (word.startsWith("c41")) {
            return Chemistry.C41;
        }
        if (word.startsWith("ecn2")) {
            return Chemistry.ECN2;
        }
        if (word.startsWith("e6")) {
            return Chemistry.E6;
        }
        if (word.contains("reversal")) {
            return Chemistry.BW_REVERSAL;
        }
        return word.contains("blackandwhite")
                        || word.contains("blackwhite")
                        || word.startsWith("bw")
                        || word.equals("b")
                ? Chemistry.BW
                : Chemistry.UNKNOWN;
    }

    /** What is in the tank. */
    enum Chemistry {
        C41,
        ECN2,
        E6,
        BW,
        BW_REVERSAL,
        UNKNOWN
    }

    /** Whether film of that kind belongs in it; chromogenic black-and-white is a bw-negative that belongs in C-41. */
    boolean fits(String kind) {
        Chemistry chemistry = chemistry();
        return switch (kind) {
            case "colour-negative" -> chemistry == Chemistry.C41 || chemistry == Chemistry.ECN2;
            case "bw-negative" -> chemistry == Chemistry.BW || chemistry == Chemistry.C41;
            case "colour-reversal" -> chemistry == Chemistry.E6;
            default -> chemistry == Chemistry.BW_REVERSAL;
        };
    }
}
