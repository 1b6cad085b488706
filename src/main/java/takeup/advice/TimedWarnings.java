package takeup.advice;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.history.ShootState;
import takeup.kit.Warning;

/**
 * What becomes true by the clock as much as by a line: a moment draws near, the film gets short for the plan. It is
 * said with the first line after it became true, and not again while it stays so; on the screen it stands as a word all
 * the while.
 */
public final class TimedWarnings {
    private TimedWarnings() {}

    /** What is true after a line and was not when the line before it was written. */
    public static List<Warning> begun(ShootState before, ShootState after, OffsetDateTime now) {
        if (after.day().job().plan().moments().isEmpty()) {
            return List.of();
        }
        OffsetDateTime then = before.history().isEmpty()
                ? now
                : before.history().get(before.history().size() - 1).at();
        List<Warning> begun = new ArrayList<>();
        Optional<NextMoment> was = NextMoment.of(before.asOf(then), then);
        NextMoment.of(after, now)
                .filter(it -> was.isEmpty() || !it.saysAgain(was.get()))
                .flatMap(NextMoment::warning)
                .ifPresent(begun::add);
        FilmBudget enough = FilmBudget.of(after, now);
        if (enough.isShort() && !FilmBudget.of(before.asOf(then), then).isShort()) {
            begun.add(new Warning(Warning.Code.BAG_LOW, enough.words().orElseThrow()));
        }
        begun.removeIf(it -> after.day().quiet().contains(it.code()));
        return begun;
    }
}
