package takeup.order;

import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * One frame of a roll, as its file has it.
 *
 * @param frame the number that the counter showed
 * @param kind exposed, blank, unlogged, lost or slate
 * @param at when, if that is known
 * @param aperture f/2.8
 * @param time 1/250
 * @param lens its name
 * @param errorStops light on the film against light asked for; above 0 is more
 * @param note words on the frame
 */
record ExposedFrame(
        int frame,
        String kind,
        Optional<OffsetDateTime> at,
        Optional<String> aperture,
        Optional<String> time,
        Optional<String> lens,
        Optional<Double> errorStops,
        Optional<String> note) {
    /** Whether a picture may come back of it. */
    boolean isPicture() {
        return !kind.equals("blank");
    }

    /** {@code 0.3 over}, {@code on meter}, or nothing where it is not known. */
    String error() {
        if (errorStops.isEmpty()) {
            return "";
        }
        String stops = PrintedText.tenths(errorStops.get());
        if (stops.equals("0")) {
            return "on meter";
        }
        return stops + (errorStops.get() > 0 ? " over" : " under");
    }
}
