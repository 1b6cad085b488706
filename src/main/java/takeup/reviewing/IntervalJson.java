package takeup.reviewing;

import takeup.json.Json;
import takeup.review.ConfidenceInterval;

/** A number with its range, as JSON: {@code {"estimate": 0.31, "low": 0.1, "high": 0.52}}. */
final class IntervalJson {
    private IntervalJson() {}

    static Json.Obj of(ConfidenceInterval interval) {
        return Json.object()
                .and("estimate", figure(interval.estimate()))
                .and("low", figure(interval.low()))
                .and("high", figure(interval.high()));
    }

    /** What a sum left of nothing is nothing. */
    private static Json figure(double value) {
        return Json.digits(Math.abs(value) < 1e-9 ? 0 : value, 4);
    }
}
