package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.day.KeyMoment;

/** Key moments on the prompt. It is 15:00. */
class PlanCommandTest {
    private static List<KeyMoment> moments(Shooting shooting) {
        return shooting.situation().day().plan().moments();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            plan 16:30 Prize-giving                                       | 1, 16:30 Prize-giving, in 1 h 30 min.
            plan 1630 Prize-giving wants 12 must                          | 1, 16:30 Prize-giving, wants 12, must, in 1 h 30 min.
            plan 16.30 Prize-giving wants 12                              | 1, 16:30 Prize-giving, wants 12, in 1 h 30 min.
            plan 15:06 Start of the eights cam 645 back 2 wants 8         | 1, 15:06 Start of the eights, wants 8, 645 back 2, in 6 min.
            plan 15:06 Start cam 645 2 wants 8                            | 1, 15:06 Start, wants 8, 645 back 2, in 6 min.
            plan 15:06 Start cam 645 on 2026-09-12                        | 1, 15:06 Start, 645, in 6 min.
            plan 15:06 Start cam 645                                      | 1, 15:06 Start, 645, in 6 min.
            plan 15:06 Start light ev12                                   | 1, 15:06 Start, EV 12, in 6 min.
            plan 15:06 Start light ev 6,5 must                            | 1, 15:06 Start, must, EV 6.5, in 6 min.
            plan 15:06 Start light shade                                  | 1, 15:06 Start, EV 12, in 6 min.
            plan 19:00 Last light on the river wants 10                   | 1, 19:00 Last light on the river, wants 10, in 4 h.
            plan 9:30 Boats on the water on 2026-09-13 wants 10           | 1, 2026-09-13 09:30 Boats on the water, wants 10.
            plan 930 Boats on tomorrow                                    | 1, 2026-09-13 09:30 Boats.
            """)
    void aMomentIsSaidBack(String line, String said) {
        Shooting shooting = Shooting.of();
        assertEquals(said, shooting.type(line));
        assertEquals("plan", shooting.answer().event());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            plan 25:00 Start                          | no time of day
            plan 16:60 Start                          | no time of day
            plan Start at 16:30                       | no time of day
            plan 16:30                                | what happens at 16:30
            plan 16:30 Start wants twelve             | no count of frames
            plan 16:30 Start wants                    | no count of frames
            plan 16:30 Start wants 1000               | up to 999
            plan 16:30 Start cam 654                  | did you mean 645
            plan 16:30 Start cam 645 back 3           | no back of
            plan 16:30 Start cam 35 2                 | no backs to change
            plan 16:30 Start cam                      | which camera
            plan 16:30 Start must light dim           | no light
            plan 16:30 Start light ev50               | no light
            plan 16:30 Start on 2026-02-30            | no date
            plan 16:30 Start wants 12 for the club    | not understood here
            plan 3 16:45                              | there is no plan yet
            plan drop 3                               | there is no plan yet
            plan late                                 | how many minutes
            plan late 20                              | no moment is still to come
            """)
    void whatDoesNotFitIsRefused(String line, String why) {
        String said = Shooting.of().refused(line);
        assertTrue(said.contains(why), said);
    }

    @Test
    void aMomentThatIsPastIsQuestioned() {
        Shooting shooting = Shooting.of();
        assertTrue(shooting.asked("plan 9:00 Boats on the water").contains("09:00 on 2026-09-12 is past"));
        shooting.type("yes");
        assertEquals(1, moments(shooting).size());
    }

    @Test
    void theNightBeforeMomentsAreOnTheDayOfTheShoot() {
        Shooting shooting = Shooting.of("shoot Regatta day on tomorrow", "plan 9:00 Boats on the water wants 20");
        assertEquals("2026-09-13T09:00", moments(shooting).get(0).at().toString());
    }

    @Test
    void aMomentIsMovedAllThatAreToComeAreMovedAndOneIsDropped() {
        Shooting shooting = Shooting.of("plan 14:55 Start", "plan 16:00 Final", "plan 16:30 Prize-giving");
        shooting.type("plan 2 16:10");
        assertEquals("2 moments 20 min later; next 2, 16:30 Final, in 1 h 30 min.", shooting.type("plan late 20"));
        assertEquals(
                List.of("14:55 Start", "16:30 Final", "16:50 Prize-giving"),
                moments(shooting).stream()
                        .map(it -> it.at().toLocalTime() + " " + it.name())
                        .toList());
        shooting.type("undo");
        shooting.type("plan early 5min");
        assertEquals(
                List.of("14:55 Start", "16:05 Final", "16:25 Prize-giving"),
                moments(shooting).stream()
                        .map(it -> it.at().toLocalTime() + " " + it.name())
                        .toList());
        assertEquals("Final is out of the plan.", shooting.type("plan drop 2"));
        shooting.type("plan 17:00 Party");
        assertEquals(
                List.of(1, 3, 4),
                moments(shooting).stream().map(KeyMoment::number).toList(),
                "a number is not given twice");
    }

    @Test
    void thePlanAloneSaysAllOfIt() {
        Shooting shooting = Shooting.medium("plan 16:30 Prize-giving wants 12", "plan 15:30 Start");
        assertEquals(
                "2, 15:30 Start, in 30 min; 1, 16:30 Prize-giving, wants 12, in 1 h 30 min. 15:30 Start in 30 "
                        + "min: 645 back 1 has 16 left.",
                shooting.type("plan"));
        assertTrue(Shooting.of().type("plan").contains("No plan yet"));
    }
}
