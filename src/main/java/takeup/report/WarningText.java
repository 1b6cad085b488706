package takeup.report;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.advice.EntryWarnings;
import takeup.advice.TimedWarnings;
import takeup.exposure.FilmSpeed;
import takeup.history.ShootState;
import takeup.kit.Warning;
import takeup.roll.ClockShift;
import takeup.text.Plain;

/** The warnings that begin with a line, each as a sentence: what, and what to do. */
public final class WarningText {
    private WarningText() {}

    /** What is wrong after a line with the camera, back or roll that came in hand, and was not before it. */
    public static List<Warning> begunBetween(ShootState before, ShootState after, OffsetDateTime now) {
        return of(EntryWarnings.begunBetween(before, after, now));
    }

    /** What begins to be wrong when another camera, back or roll comes in hand. */
    private static List<Warning> of(EntryWarnings begun) {
        List<Warning> warnings = new ArrayList<>();
        if (begun.noFilm().isPresent()) {
            warnings.add(new Warning(
                    Warning.Code.NO_FILM, "load a stock into " + begun.noFilm().get()));
        }
        if (begun.meterSpeed().isPresent()) {
            warnings.add(meterSpeed(begun.meterSpeed().get()));
        }
        return warnings;
    }

    /** The meter at another speed than a roll is rated at. */
    public static Warning meterSpeed(EntryWarnings.MeterSpeed other) {
        FilmSpeed rated = other.roll().film().index();
        return new Warning(
                Warning.Code.METER_SPEED,
                "the meter was set to " + Plain.number(other.light().index().orElseThrow()) + ", "
                        + other.roll().id() + " is rated " + rated + ": set it to " + rated);
    }

    /** What becomes true by the clock. */
    public static List<Warning> of(TimedWarnings begun) {
        List<Warning> warnings = new ArrayList<>();
        Optional<String> advice = begun.moment().isPresent()
                ? MomentText.recommendation(begun.moment().get())
                : Optional.empty();
        if (advice.isPresent()) {
            warnings.add(new Warning(Warning.Code.MOMENT, advice.get()));
        }
        if (begun.budget().isPresent()) {
            warnings.add(new Warning(
                    Warning.Code.BAG_LOW, FilmBudgetText.sum(begun.budget().get())));
        }
        return warnings;
    }

    /** The clock that was moved before a reading. */
    public static Warning clockBeforeReading(ClockShift shift) {
        return new Warning(Warning.Code.CLOCK, shift.words("the last frame or reading"));
    }
}
