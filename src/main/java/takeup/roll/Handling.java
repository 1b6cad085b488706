package takeup.roll;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a roll was handled in its camera.
 *
 * @param counterChecks the camera's counter against the log
 * @param loadChecks what was looked at after loading, as far as it was answered
 * @param rewindings when it was rewound before its end and loaded again
 */
public record Handling(List<CounterCheck> counterChecks, List<LoadCheck> loadChecks, List<Rewinding> rewindings) {
    /** Of a roll that was just loaded. */
    static final Handling NONE = new Handling(List.of(), List.of(), List.of());

    public Handling {
        counterChecks = List.copyOf(counterChecks);
        loadChecks = List.copyOf(loadChecks);
        rewindings = List.copyOf(rewindings);
    }

    Handling with(CounterCheck check) {
        return new Handling(and(counterChecks, check), loadChecks, rewindings);
    }

    Handling with(LoadCheck check) {
        return new Handling(counterChecks, and(loadChecks, check), rewindings);
    }

    /** Rewound before its end. */
    Handling rewound(OffsetDateTime at, int next) {
        return new Handling(counterChecks, loadChecks, and(rewindings, new Rewinding(at, next, Optional.empty(), 0)));
    }

    /** Loaded again after the last rewinding. */
    Handling reloaded(OffsetDateTime at, int spare) {
        if (rewindings.isEmpty()) {
            return this;
        }
        int last = rewindings.size() - 1;
        Rewinding before = rewindings.get(last);
        Rewinding ended = new Rewinding(before.at(), before.next(), Optional.of(at), spare);
        return new Handling(counterChecks, loadChecks, and(rewindings.subList(0, last), ended));
    }

    static <T> List<T> and(List<T> before, T more) {
        List<T> all = new ArrayList<>(before);
        all.add(more);
        return all;
    }
}
