package takeup.roll;

import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * A roll that was rewound before its end, to be loaded again: after frame 17, with its tongue out.
 *
 * @param at when it was rewound
 * @param next the next frame then, 18
 * @param again when it was loaded again; empty while it is not
 * @param spare frames left blank behind the last one, so that none is exposed twice; 0 while it is not loaded again
 */
public record Rewinding(OffsetDateTime at, int next, Optional<OffsetDateTime> again, int spare) {
    /** The last frame before it, the number written on the cassette; 0 where the counter had not come to 1. */
    public int after() {
        return Math.max(0, next - 1);
    }
}
