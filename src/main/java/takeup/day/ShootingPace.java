package takeup.day;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How fast this photographer shoots while shooting: frames a minute in the bursts of a day.
 *
 * <p>Frames that follow each other within two minutes belong to one burst; the time between bursts does not count, so a
 * long lunch does not count as slow. Frames of one line have one time: they fill the time since the frame before them.
 * The limit of two minutes and the least count are rules of our own.
 */
public final class ShootingPace {
    /** A longer time between two frames is a pause. */
    static final Duration PAUSE = Duration.ofMinutes(2);
    /** Fewer frames than this in bursts give no pace. */
    static final int LEAST = 5;

    private ShootingPace() {}

    /** Frames a minute; empty while too few were shot in bursts. The times may be in any order. */
    public static OptionalDouble of(List<OffsetDateTime> frames) {
        List<OffsetDateTime> inOrder = new ArrayList<>(frames);
        inOrder.sort(Comparator.comparing(OffsetDateTime::toInstant));
        int counted = 0;
        long seconds = 0;
        for (int at = 0; at < inOrder.size(); ) {
            int end = at;
            while (end < inOrder.size() && inOrder.get(end).isEqual(inOrder.get(at))) {
                end++;
            }
            Duration since = at == 0 ? Duration.ofDays(1) : Duration.between(inOrder.get(at - 1), inOrder.get(at));
            if (since.compareTo(PAUSE) <= 0) {
                counted += end - at;
                seconds += since.getSeconds();
            }
            at = end;
        }
        return counted < LEAST || seconds == 0 ? OptionalDouble.empty() : OptionalDouble.of(counted * 60.0 / seconds);
    }
}
