package takeup.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a day remembers beside its rolls: the caution that was given, the timer that runs. */
class DayTest {
    private static final OffsetDateTime NIGHT = OffsetDateTime.parse("2026-09-12T23:59:50+02:00");
    private static final DayEvent STARTED =
            new CameraEvent.TimerStarted("645", new BulbTimer(NIGHT, OptionalDouble.of(30)));

    private static Day of(DayEvent... events) {
        Day day = Day.FIRST;
        for (DayEvent event : events) {
            day = event.appliedTo(day);
        }
        return day;
    }

    @Test
    void aTimerRunsOverMidnightUntilItIsStopped() {
        Day next = of(STARTED).carried(NIGHT.plusSeconds(20));
        assertEquals(20, next.timers().get("645").elapsed(NIGHT.plusSeconds(20)));
        assertTrue(new CameraEvent.TimerStopped("645").appliedTo(next).timers().isEmpty());
        assertEquals(
                Set.of("645"),
                new CameraEvent.TimerStopped("35").appliedTo(next).timers().keySet(),
                "another camera's timer goes on");
    }

    @Test
    void theCautionAboutFlashIsKeptForEachCameraOnAllLaterDays() {
        Day day = of(
                new CameraEvent.FlashCautioned("645"),
                new CameraEvent.FlashCautioned("35"),
                new CameraEvent.FlashCautioned("645"));
        assertEquals(
                Set.of("645", "35"), day.carried(NIGHT.plusDays(9)).cameras().cautioned());
    }

    @Test
    void neitherIsAStepThatUndoTakesBack() {
        for (DayEvent event :
                List.of(STARTED, new CameraEvent.TimerStopped("645"), new CameraEvent.FlashCautioned("645"))) {
            assertFalse(event.isStep(), event.toString());
        }
    }
}
