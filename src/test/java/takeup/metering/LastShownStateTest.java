package takeup.metering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import takeup.command.Shooting;
import takeup.history.JournalStep;
import takeup.history.ShootState;

/** On a morning before the first line the keys of one second see one state. */
class LastShownStateTest {
    private static final OffsetDateTime MORNING = OffsetDateTime.parse("2027-05-01T08:00:00.100+02:00");

    private final Shooting shooting = new Shooting();
    private final LastAdvice last = new LastAdvice();

    private ShootState yesterday() {
        shooting.type("cam 645");
        shooting.type("load cn400");
        shooting.type("m 5.6 125");
        return shooting.situation();
    }

    @Test
    void keysOfOneSecondSeeTheSameState() {
        ShootState state = yesterday();
        ShootState first = last.shown(state, MORNING);
        assertNotSame(state, first);
        assertSame(first, last.shown(state, MORNING.plusNanos(800_000_000)));
        assertEquals(state.asOf(MORNING), first);
    }

    @Test
    void theNextSecondAnotherOffsetAndAnotherStateAreLookedAtAnew() {
        ShootState state = yesterday();
        ShootState first = last.shown(state, MORNING);
        ShootState second = last.shown(state, MORNING.plusSeconds(1));
        assertNotSame(first, second);
        OffsetDateTime elsewhere = MORNING.plusSeconds(1).withOffsetSameInstant(ZoneOffset.ofHours(-8));
        assertNotSame(second, last.shown(state, elsewhere));
        ShootState other = state.withUnreadable(Set.of());
        assertNotSame(last.shown(state, MORNING), last.shown(other, MORNING));
    }

    @Test
    void onTheDayItselfTheStateIsItself() {
        ShootState state = yesterday();
        Optional<OffsetDateTime> at = state.history().newest().map(JournalStep::at);
        assertTrue(at.isPresent());
        assertSame(state, last.shown(state, at.get()));
    }
}
