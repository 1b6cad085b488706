package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.day.BulbTimer;
import takeup.dispatch.Dispatcher;
import takeup.exposure.ExposureTime;
import takeup.history.ShootState;
import takeup.message.Effect;
import takeup.message.Key;
import takeup.message.Message;
import takeup.session.Playing;

/** The bulb timer: started and stopped by one word, its time in hand, the bell. */
class TimeCommandTest {
    private static final OffsetDateTime THEN = OffsetDateTime.parse("2026-09-12T15:00+02:00");

    private static ShootState at(ShootState before, String line, long millis) {
        Outcome outcome = Dispatcher.read(before, line, THEN.plusNanos(millis * 1_000_000), "R");
        return ((Outcome.Accepted) outcome).after();
    }

    @ParameterizedTest(name = "{0} ms are {1}")
    @CsvSource({"2340,2.3s", "50,1/10", "0,1/10", "9940,9.9s", "12400,12s", "27000,27s", "250000,4m10s"})
    void whatItShowedIsInHand(long millis, String time) {
        ShootState running = at(Shooting.medium().situation(), "time", 0);
        ShootState stopped = at(running, "time", millis);
        assertEquals(time, stopped.inHand().setting().time().orElseThrow().toString());
        assertTrue(stopped.day().timers().isEmpty());
        ShootState logged = at(stopped, ".", millis + 5000);
        assertEquals(
                time,
                logged.rollInHand()
                        .orElseThrow()
                        .newest()
                        .orElseThrow()
                        .exposure()
                        .setting()
                        .time()
                        .orElseThrow()
                        .toString());
    }

    // EV -2 at ISO 100 is EV 0 at EI 400; f/5.6 is 5 stops: 2^5 s metered.
    @Test
    void theBellIsSetToTheCorrectedTimeOfTheApertureInHand() {
        Shooting shooting = Shooting.of("cam 645", "load bw400 @400", "m ev-2", "set 5.6");
        double metered = Math.pow(2, 5);
        double corrected =
                shooting.roll().film().stock().reciprocity().corrected(metered).orElseThrow();
        shooting.type("time");
        assertTrue(corrected > metered);
        // Past a minute one counts by five seconds; what is said is what rings.
        double counted = 5 * Math.floor(corrected / 5 + 0.5);
        assertTrue(corrected > 60);
        assertEquals(
                counted,
                shooting.situation().day().timers().get("645").targetSeconds().orElseThrow(),
                1e-6);
        assertTrue(
                shooting.answer().text().contains("the bell rings at " + ExposureTime.literal(counted) + ";"),
                shooting.answer().text());
    }

    /** The light was read before the doors were shut: what was set since is meant. */
    @Test
    void aLongTimeInHandIsMeantWhereTheLightAsksForAShortOne() {
        assertEquals(
                OptionalDouble.of(30),
                Shooting.medium("m 5.6 125", "set b30s", "time")
                        .situation()
                        .day()
                        .timers()
                        .get("645")
                        .targetSeconds());
    }

    @Test
    void withoutLightItIsSetToTheTimeInHandFromASecondOn() {
        assertEquals(
                OptionalDouble.of(4),
                Shooting.medium("set 8 4s", "time")
                        .situation()
                        .day()
                        .timers()
                        .get("645")
                        .targetSeconds());
        assertEquals(
                OptionalDouble.empty(),
                Shooting.medium("set 8 125", "time")
                        .situation()
                        .day()
                        .timers()
                        .get("645")
                        .targetSeconds());
    }

    @Test
    void stoppingIsAStepAndStartingIsNone() {
        Shooting shooting = Shooting.medium("set 8 125", "set 11", "time");
        assertTrue(shooting.situation().day().timers().containsKey("645"));
        shooting.later(1);
        shooting.type("time");
        assertEquals("f/11 1min", shooting.pair().replace("60s", "1min"));
        shooting.type("undo");
        assertEquals("f/11 1/125", shooting.pair());
        assertTrue(shooting.situation().day().timers().isEmpty(), "a timer is not started again by undo");
        Shooting started = Shooting.medium("set 8 125", "time", "undo");
        assertEquals(". .", started.pair());
        assertTrue(started.situation().day().timers().containsKey("645"), "undo takes back the line before");
    }

    @Test
    void eachCameraHasItsOwn() {
        Shooting shooting = Shooting.of("cam 35", "load bw400", "time", "cam 645", "time");
        assertEquals(2, shooting.situation().day().timers().size());
        Shooting.of().refused("time");
    }

    @Test
    void itRunsOverMidnightAndOverARestart() {
        Playing day = Playing.medium("set 8 b30s", "time").later(9 * 60 + 5).restart();
        assertEquals(
                new BulbTimer(THEN, OptionalDouble.of(30)).targetSeconds(),
                day.shoot().shown().day().timers().get("645").targetSeconds());
        day.lines("time");
        assertTrue(day.pair().startsWith("f/8 9h05m"), day.pair());
    }

    @Test
    void theBellRingsOnceWhenTheTimeIsReached() {
        Playing day = Playing.medium("set 8 b30s", "time");
        day.pass(20_000).send(new Message.Ticked(day.now(), day.ticks()));
        assertEquals(0, bells(day));
        day.pass(11_000).send(new Message.Ticked(day.now(), day.ticks()));
        assertEquals(1, bells(day));
        day.pass(1_000).send(new Message.Ticked(day.now(), day.ticks()));
        day.type("time");
        assertEquals(1, bells(day));
    }

    @Test
    void aKeyPressedAtThatMomentDoesNotSwallowTheBell() {
        Playing day = Playing.medium("set 8 b30s", "time");
        day.pass(29_900).press(Key.typed("t"));
        assertEquals(1, bells(day));
    }

    @Test
    void itAsksToBeWokenForTheLastSecond() {
        Playing day = Playing.medium("set 8 b30s", "time").pass(29_300);
        day.forget();
        day.send(new Message.Ticked(day.now(), day.ticks()));
        List<Effect> wakes =
                day.seen().stream().filter(it -> it instanceof Effect.Wake).toList();
        assertEquals(1, wakes.size());
        assertTrue(((Effect.Wake) wakes.get(0)).milliseconds() <= 1000);
    }

    private static long bells(Playing day) {
        return day.seen().stream().filter(it -> it instanceof Effect.Bell).count();
    }

    @Test
    void aClockThatWasPutBackShowsNothingAndPutsNoTimeInHand() {
        assertEquals(0, new BulbTimer(THEN, OptionalDouble.empty()).elapsed(THEN.minusMinutes(5)));
        assertEquals(
                Optional.empty(),
                at(at(Shooting.medium().situation(), "time", 0), "time", -5000)
                        .inHand()
                        .setting()
                        .time());
    }
}
