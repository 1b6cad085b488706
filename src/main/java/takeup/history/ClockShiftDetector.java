package takeup.history;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Optional;
import takeup.day.DayEvent;
import takeup.roll.ClockShift;
import takeup.roll.Exposure;
import takeup.roll.RollEvent;
import takeup.roll.RollId;

/**
 * Finds out that the clock of the computer was moved between two things that were logged. While the program runs, a
 * second clock that only runs forward tells it; across a restart only a time that lies before the last one, and another
 * offset, can be known. Steps are ordered by number, so nothing else follows from it.
 */
public final class ClockShiftDetector {
    /** The time of day may gain so much, in milliseconds, before it counts as moved: a slow line, a paused program. */
    private static final long AHEAD = 120_000;

    private static final long BACK = 1000;
    /** Times are written down in whole seconds, so one second less may be none. */
    private static final long ROUNDING = 1;

    private final History history;
    private final OffsetDateTime now;
    private final long drift;

    /**
     * What is to be logged now, behind all that was.
     *
     * @param now the time of day
     * @param drift by how many seconds the clock was moved since the last frame or reading, as far as the running
     *     program saw it
     */
    public ClockShiftDetector(History history, OffsetDateTime now, long drift) {
        this.history = history;
        this.now = now;
        this.drift = drift;
    }

    /**
     * By how many seconds the time of day jumped between two looks at both clocks: 0 for no jump, negative for back.
     *
     * @param before the time of day at the first look
     * @param ticksBefore milliseconds on the other clock at the first look
     * @param now the time of day at the second look
     * @param ticks milliseconds on the other clock at the second look
     */
    public static long jump(OffsetDateTime before, long ticksBefore, OffsetDateTime now, long ticks) {
        long moved = Duration.between(before, now).toMillis() - (ticks - ticksBefore);
        return moved > AHEAD || moved < -BACK ? Math.floorDiv(moved + 500, 1000L) : 0;
    }

    /** Whether the last step carries the remark that the clock was moved before it. */
    public static boolean isNoted(History history) {
        if (history.isEmpty()) {
            return false;
        }
        for (JournalEntry entry : history.newest().get().entries()) {
            Optional<Exposure> logged = exposure(entry);
            if (entry.is(DayEvent.ClockShifted.class)
                    || logged.isPresent() && logged.get().clock().isPresent()) {
                return true;
            }
        }
        return false;
    }

    /** How the clock was moved since the last frame or reading, whichever camera it was with. */
    public Optional<ClockShift> sinceFrameOrReading() {
        for (JournalStep step : history.newestFirst()) {
            if (step.isFrameOrReading()) {
                return since(step.at(), drift);
            }
        }
        return shift(drift, now);
    }

    /** How the clock was moved since a roll's last frame that stands, or its loading. */
    public Optional<ClockShift> sinceFrameOf(RollId roll) {
        Optional<ClockShift> newest = sinceFrameOrReading();
        long seconds = newest.isPresent() ? newest.get().seconds() : 0;
        StandingSteps standing = new StandingSteps();
        for (JournalStep step : history.newestFirst()) {
            if (standing.isStanding(step) && hasFrameOrLoading(step, roll)) {
                return since(step.at(), seconds);
            }
            for (JournalEntry entry : step.entries()) {
                if (entry.event() instanceof DayEvent.ClockShifted shifted) {
                    seconds += shifted.shift().seconds();
                }
            }
        }
        return newest;
    }

    private Optional<ClockShift> since(OffsetDateTime then, long known) {
        long back = Duration.between(now, then).toSeconds();
        return shift(back > ROUNDING && known > -back ? -back : known, then);
    }

    private Optional<ClockShift> shift(long seconds, OffsetDateTime then) {
        return seconds == 0 && then.getOffset().equals(now.getOffset())
                ? Optional.empty()
                : Optional.of(new ClockShift(seconds, then.getOffset(), now.getOffset()));
    }

    private static Optional<Exposure> exposure(JournalEntry entry) {
        if (entry.event() instanceof RollEvent.ExposedAgain again) {
            return Optional.of(again.exposure());
        }
        return entry.event() instanceof RollEvent.Added added && added.origin() == RollEvent.Origin.LOGGED
                ? Optional.of(added.frame().exposure())
                : Optional.empty();
    }

    private static boolean hasFrameOrLoading(JournalStep step, RollId roll) {
        for (JournalEntry entry : step.entries()) {
            if (entry.isOn(roll) && (entry.is(RollEvent.Loaded.class) || JournalStep.isFrame(entry))) {
                return true;
            }
        }
        return false;
    }
}
