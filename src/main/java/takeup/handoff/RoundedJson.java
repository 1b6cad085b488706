package takeup.handoff;

import java.util.OptionalDouble;
import takeup.json.Json;
import takeup.text.Plain;

/**
 * Numbers of a column of decimals as JSON, to nine significant digits: {@code -0.9} for a sum that came to
 * -0.9000000000000004, and {@code 8.0} for 8, since a reader that samples the first lines would take the column for one
 * of whole numbers.
 */
final class RoundedJson {
    /** What a sum of stops misses zero by is no light. */
    private static final double NOTHING = 1e-9;

    private RoundedJson() {}

    /** Stops or EV; what differs from 0 by less than a billionth is 0. */
    static Json stops(double stops) {
        return Math.abs(stops) < NOTHING ? new Json.Decimal(0, 0) : number(stops);
    }

    /** Stops or EV; not known is null. */
    static Json stops(OptionalDouble stops) {
        return stops.isPresent() ? stops(stops.getAsDouble()) : unknown();
    }

    /** Any other number; JSON has none for what is beyond all bounds, which is null. */
    static Json number(double value) {
        return Double.isFinite(value) ? new Json.Decimal(Plain.rounded(value, 9), 0) : unknown();
    }

    /** A number with all of its digits. */
    static Json exact(double value) {
        return new Json.Decimal(value, 0);
    }

    /** Any other number; not known is null. */
    static Json number(OptionalDouble value) {
        return value.isPresent() ? number(value.getAsDouble()) : unknown();
    }

    private static Json unknown() {
        return Json.of(OptionalDouble.empty());
    }
}
