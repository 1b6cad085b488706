package takeup.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.roll.Coordinates;

/** Which moment comes next, and for how long it is on. */
class PlanTest {
    private static final Plan DAY = Plan.NONE
            .with(moment(1, "2026-09-12T16:30", "Prize-giving"))
            .with(moment(2, "2026-09-12T15:00", "Start"))
            .with(moment(3, "2026-09-12T16:40", "Crew portrait"))
            .with(moment(4, "2026-09-13T00:30", "Last dance"))
            .with(moment(5, "2026-09-20T10:00", "Next regatta"));

    static KeyMoment moment(int number, String at, String name) {
        return new KeyMoment(
                number,
                LocalDateTime.parse(at),
                name,
                12,
                false,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty());
    }

    /** A moment is on for 15 minutes or until the next begins; what is days away is not next yet. */
    @ParameterizedTest(name = "at {0}: {1}")
    @CsvSource({
        "2026-09-12T09:00, Start",
        "2026-09-12T15:00, Start",
        "2026-09-12T15:14:59, Start",
        "2026-09-12T15:15, Prize-giving",
        "2026-09-12T16:39:59, Prize-giving",
        "2026-09-12T16:40, Crew portrait",
        "2026-09-12T23:00, Last dance",
        "2026-09-13T00:44, Last dance",
        "2026-09-13T00:45, none",
        "2026-09-19T23:00, Next regatta"
    })
    void theNextMomentIsTheOneThatIsOnOrTheFirstToCome(String now, String name) {
        assertEquals(
                name, DAY.next(LocalDateTime.parse(now)).map(KeyMoment::name).orElse("none"));
    }

    @ParameterizedTest(name = "at {0}: in {1} min")
    @CsvSource({"16:24:00, 6", "16:24:01, 6", "16:24:59, 6", "16:29:59, 1", "16:30:00, 0", "16:30:59, 0", "16:31:00, -1"
    })
    void aMinuteThatHasBegunCountsWhole(String now, long minutes) {
        assertEquals(minutes, DAY.moment(1).orElseThrow().minutesFrom(LocalDateTime.parse("2026-09-12T" + now)));
    }

    @Test
    void theyStandInOrderOfTimeAndANumberIsNotGivenTwice() {
        assertEquals(
                List.of(2, 1, 3, 4, 5),
                DAY.moments().stream().map(KeyMoment::number).toList());
        assertEquals(5, DAY.without(5).last());
        assertEquals(
                List.of("Start", "Prize-giving"),
                DAY.with(moment(3, "2026-09-12T14:00", "Start")).without(2).moments().stream()
                        .limit(2)
                        .map(KeyMoment::name)
                        .toList());
    }

    @Test
    void whatIsOverSixHoursAgoStaysBehindWhenTheDayTurns() {
        assertEquals(
                List.of("Last dance", "Next regatta"),
                DAY.carried(LocalDateTime.parse("2026-09-13T00:10")).moments().stream()
                        .filter(it -> it.number() > 3)
                        .map(KeyMoment::name)
                        .toList());
        assertEquals(
                List.of("Next regatta"),
                DAY.carried(LocalDateTime.parse("2026-09-13T08:00")).moments().stream()
                        .map(KeyMoment::name)
                        .toList());
    }

    @Test
    void aShootOfYesterdayIsClosedButForANightThatGoesOn() {
        Day day = Day.FIRST.with(
                new ShootInfo("Regatta day", LocalDate.parse("2026-09-12"), Optional.empty(), Optional.empty()));
        assertEquals(
                1,
                day.carried(OffsetDateTime.parse("2026-09-13T05:59+02:00")).shoot().stream()
                        .count());
        assertEquals(
                Optional.empty(),
                day.carried(OffsetDateTime.parse("2026-09-13T06:00+02:00")).shoot());
        assertEquals(
                1,
                day.carried(OffsetDateTime.parse("2026-09-01T09:00+02:00")).shoot().stream()
                        .count(),
                "one that is to come stays");
    }

    @Test
    void aMomentHasANameAndAPlaceOnEarthItsBounds() {
        assertThrows(IllegalArgumentException.class, () -> moment(0, "2026-09-12T16:30", "Start"));
        assertThrows(IllegalArgumentException.class, () -> moment(1, "2026-09-12T16:30", " "));
        assertThrows(IllegalArgumentException.class, () -> new Coordinates(90.1, 0));
        assertThrows(IllegalArgumentException.class, () -> new Coordinates(0, Double.NaN));
        assertEquals("-33.86,151.2", new Coordinates(-33.86, 151.2).toString());
    }
}
