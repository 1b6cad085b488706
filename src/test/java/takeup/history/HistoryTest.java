package takeup.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import takeup.day.CameraEvent;
import takeup.day.CameraPlace;
import takeup.day.DayEvent;
import takeup.kit.Warning;

/** What the list of all steps answers: an evening, and the morning after it. */
class HistoryTest {
    private static final OffsetDateTime EVENING = OffsetDateTime.parse("2026-09-12T19:00+02:00");
    private static final OffsetDateTime MORNING = OffsetDateTime.parse("2026-09-13T08:00+02:00");

    private static JournalStep step(long number, OffsetDateTime at, DayEvent... events) {
        return new JournalStep(
                number,
                at,
                List.of(events).stream()
                        .map(it -> (JournalEntry) new JournalEntry.OnDay(it))
                        .toList());
    }

    private static DayEvent silenced() {
        return new DayEvent.WarningSilenced(Warning.Code.SUN);
    }

    private static DayEvent selected(String camera) {
        return new CameraEvent.CameraSelected(new CameraPlace(camera, Optional.empty()));
    }

    private static List<Long> numbers(History history) {
        return history.steps().stream().map(JournalStep::step).toList();
    }

    @Test
    void stepsOfSeveralFilesComeInTheOrderOfTheirNumbers() {
        assertEquals(List.of(1L, 2L), numbers(History.of(List.of(step(2, EVENING), step(1, MORNING)))));
    }

    @Test
    void theHalvesOfOneStepBecomeOneAgain() {
        History history =
                History.of(List.of(step(1, EVENING, silenced()), step(1, EVENING, new DayEvent.GuideDismissed())));
        assertEquals(1, history.steps().size());
        assertEquals(2, history.entries().count());
    }

    @Test
    void aStepThatWasTakenBackDoesNotStandUntilItIsBroughtBack() {
        History undone = History.EMPTY.and(step(1, EVENING, silenced())).and(step(2, EVENING, new DayEvent.Undone(1)));
        assertEquals(Set.of(1L), undone.undone());
        assertEquals(List.of(2L), numbers(undone.withoutUndone()));
        History redone = undone.and(step(3, EVENING, new DayEvent.Redone(1)));
        assertEquals(List.of(1L, 2L, 3L), numbers(redone.withoutUndone()));
    }

    @Test
    void backwardsTheSameStepsStandAsForwards() {
        Random random = new Random(36);
        for (int run = 0; run < 200; run++) {
            History history = History.EMPTY;
            for (int number = 1; number <= 12; number++) {
                long earlier = 1 + random.nextInt(number);
                int kind = earlier == number ? 0 : random.nextInt(3);
                history = history.and(step(
                        number,
                        EVENING,
                        List.of(silenced(), new DayEvent.Undone(earlier), new DayEvent.Redone(earlier))
                                .get(kind)));
            }
            List<JournalStep> standing = new ArrayList<>(history.withoutUndone().steps());
            Collections.reverse(standing);
            assertEquals(standing, history.standingNewestFirst().toList());
        }
    }

    @Test
    void eachDayHasItsOwnSteps() {
        History history = History.of(List.of(step(1, EVENING), step(2, MORNING), step(3, MORNING)));
        LocalDate regatta = LocalDate.of(2026, 9, 12);
        assertEquals(List.of(1L), numbers(history.on(regatta)));
        assertEquals(List.of(1L, 2L, 3L), numbers(history.since(regatta)));
        assertEquals(List.of(2L, 3L), numbers(history.since(regatta.plusDays(1))));
    }

    @Test
    void backwardsTheLastEntryOfTheLastStepComesFirst() {
        History history = History.of(
                List.of(step(1, EVENING, selected("35")), step(2, EVENING, selected("645"), selected("66"))));
        assertEquals(
                List.of("66", "645", "35"),
                history.entriesNewestFirst()
                        .flatMap(it -> it.as(CameraEvent.CameraSelected.class).stream())
                        .map(it -> it.place().camera())
                        .toList());
    }

    @Test
    void undoTakesBackTheNewestChangeAndPassesOverTheTakingUpOfACamera() {
        History history = History.of(List.of(step(1, EVENING, silenced()), step(2, EVENING, selected("35"))));
        assertEquals(Optional.of(1L), new UndoHistory(history).undo());
        UndoHistory after = new UndoHistory(history.and(step(3, EVENING, new DayEvent.Undone(1))));
        assertEquals(Optional.empty(), after.undo());
        assertEquals(Optional.of(1L), after.redo());
    }
}
