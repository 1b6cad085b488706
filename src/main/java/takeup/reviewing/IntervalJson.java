package takeup.reviewing;

import takeup.json.Json;
import takeup.review.ConfidenceInterval;

/** A number with its range, as JSON: {@code {"estimate": 0.31, "low": 0.1, "high": 0.52}}. */
final class IntervalJson {
    private IntervalJson() {}

    static Json.Obj of(ConfidenceInterval interval) {
        return Json.object()
                .and("estimate", Json.digits(interval.estimate(), 4))
                .and("low", Json.digits(interval.low(), 4))
                .and("high", Json.digits(interval.high(), 4));
    }
}
