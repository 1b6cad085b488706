package takeup.advice;

import java.time.OffsetDateTime;
import java.util.Optional;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.kit.Warning;

/**
 * What becomes true by the clock as much as by a line: a moment draws near, the film gets short for the plan. It is
 * said with the first line after it became true, and not again while it stays so; on the screen it stands as a word all
 * the while.
 *
 * @param moment the moment that something must be done about now
 * @param budget the film, where it became too little for the plan
 */
public record TimedWarnings(Optional<NextMoment> moment, Optional<FilmBudget> budget) {
    private static final TimedWarnings NONE = new TimedWarnings(Optional.empty(), Optional.empty());

    /** What is true after a line and was not when the line before it was written; silenced warnings left out. */
    public static TimedWarnings begunBetween(ShootState before, ShootState after, OffsetDateTime now) {
        if (after.day().plan().moments().isEmpty()) {
            return NONE;
        }
        OffsetDateTime then = before.history().newest().map(JournalStep::at).orElse(now);
        ShootState was = before.asOf(then);
        Optional<NextMoment> earlier = NextMoment.of(was, then);
        return new TimedWarnings(
                NextMoment.of(after, now)
                        .filter(NextMoment::isUrgent)
                        .filter(it -> earlier.isEmpty() || !it.saysAgain(earlier.get()))
                        .filter(it -> !after.day().silenced().contains(Warning.Code.MOMENT)),
                Optional.of(FilmBudget.of(after, now))
                        .filter(it -> it.isShort() && !FilmBudget.of(was, then).isShort())
                        .filter(it -> !after.day().silenced().contains(Warning.Code.BAG_LOW)));
    }
}
