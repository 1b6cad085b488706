package takeup.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import takeup.history.ShootState;
import takeup.roll.CounterCheck;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * Something odd about a roll at the end of the day, that should be asked about.
 *
 * @param kind what is odd
 * @param id the roll's number
 * @param roll the roll, as far as it is known on this day
 * @param check the look at the camera's counter that differed from the log
 */
public record Oddity(Kind kind, RollId id, Optional<Roll> roll, Optional<CounterCheck> check) {
    /** What is odd. */
    public enum Kind {
        STILL_IN_CAMERA,
        WITHOUT_FRAME,
        REWOUND,
        FRAMES_NOT_LOGGED,
        DOUBLE_AWAITED,
        COUNTER_AHEAD,
        COUNTER_BEHIND,
        HELD_AND_UNKNOWN,
        HELD_OF_ANOTHER_DAY,
        HELD_AND_IN_CAMERA,
        HELD_AND_WITHDRAWN
    }

    /** What is odd about a roll of the day. */
    static List<Oddity> of(Roll roll) {
        List<Oddity> all = new ArrayList<>();
        if (roll.state() == Roll.State.WITHDRAWN) {
            return all;
        }
        if (roll.state() == Roll.State.OPEN) {
            all.add(of(Kind.STILL_IN_CAMERA, roll));
        } else if (roll.frames().isEmpty()) {
            all.add(of(Kind.WITHOUT_FRAME, roll));
        }
        if (roll.state() == Roll.State.REWOUND) {
            all.add(of(Kind.REWOUND, roll));
        }
        if (framesNotLogged(roll) > 0) {
            all.add(of(Kind.FRAMES_NOT_LOGGED, roll));
        }
        if (roll.doubleAwaited()) {
            all.add(of(Kind.DOUBLE_AWAITED, roll));
        }
        for (CounterCheck check : roll.counterChecks()) {
            if (framesPassed(roll, check) > 0) {
                all.add(new Oddity(Kind.COUNTER_AHEAD, roll.id(), Optional.of(roll), Optional.of(check)));
            } else if (check.shown() < check.expected()) {
                all.add(new Oddity(Kind.COUNTER_BEHIND, roll.id(), Optional.of(roll), Optional.of(check)));
            }
        }
        return all;
    }

    private static Oddity of(Kind kind, Roll roll) {
        return new Oddity(kind, roll.id(), Optional.of(roll), Optional.empty());
    }

    /** What is odd about a roll that is held in the hand; empty where it may well be. */
    static Optional<Oddity> ofHeld(RollId id, List<Roll> day, ShootState s) {
        Optional<Roll> roll = day.stream().filter(it -> it.id().equals(id)).findFirst();
        if (roll.isEmpty()) {
            return Optional.of(new Oddity(
                    s.known().contains(id) ? Kind.HELD_OF_ANOTHER_DAY : Kind.HELD_AND_UNKNOWN,
                    id,
                    roll,
                    Optional.empty()));
        }
        return switch (roll.get().state()) {
            case OPEN -> Optional.of(of(Kind.HELD_AND_IN_CAMERA, roll.get()));
            case WITHDRAWN -> Optional.of(of(Kind.HELD_AND_WITHDRAWN, roll.get()));
            case FINISHED, REWOUND -> Optional.empty();
        };
    }

    static int framesNotLogged(Roll roll) {
        return (int) roll.frames().stream()
                .filter(it -> it.kind() == Frame.Kind.UNLOGGED)
                .count();
    }

    /** How many frames went past the camera's counter that are still not in the log. */
    static int framesPassed(Roll roll, CounterCheck check) {
        return (int) IntStream.range(check.expected(), check.shown())
                .filter(roll::isPassed)
                .count();
    }
}
