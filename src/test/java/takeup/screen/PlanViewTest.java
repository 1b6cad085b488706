package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import takeup.message.Key;
import takeup.session.Playing;
import takeup.session.Session;

/** The plan and the bag on the screen, and the next moment on the shoot screen. The day begins at 15:00. */
class PlanViewTest {
    private static Playing day() {
        return States.busy()
                .lines(
                        "bag add 3 cn400 120 expires 2027-03 price 6.20",
                        "bag add 1 bw400 120 expires 2021-03",
                        "shoot Regatta day at 50.93806,6.956944",
                        "plan 16:30 Prize-giving wants 12 must cam 645 light ev12",
                        "plan 15:06 Start of the eights wants 20");
    }

    private static String text(Session shoot, int columns, int rows) {
        return Screen.render(shoot, columns, rows).text();
    }

    private static void shows(Session shoot, int columns, int rows, String... facts) {
        String text = text(shoot, columns, rows);
        for (String fact : facts) {
            assertTrue(text.contains(fact), "\"" + fact + "\" is missing at " + columns + "x" + rows + ":\n" + text);
        }
    }

    @Test
    void theNextMomentStandsOnTheShootScreenWithItsCountdownAndOneRecommendation() {
        Session shoot = Playing.medium("plan 15:06 Start wants 12 must", "4 125 x12")
                .press(Key.Name.F9)
                .shoot();
        shows(shoot, 80, 24, "change now: 4 left, Start in 6 min wants 12 · MUST", "MOMENT", "newest frames");
        shows(shoot, 120, 40, "change now: 4 left, Start in 6 min wants 12");
        Session read = Playing.medium("plan 15:06 Start wants 12 must", "4 125 x12", "m 4 125")
                .press(Key.ctrl('l'))
                .shoot();
        shows(read, 40, 12, "change now: 4 left", "FEW LEFT");
        LargeLetters.assertDrawn(Screen.render(read, 40, 12), "6 MIN");
        shows(
                Playing.medium("plan 16:30 Prize-giving wants 12 must").shoot(),
                80,
                24,
                "16:30 Prize-giving in 1 h 30 min, wants 12, MUST: 645 back 1 has 16 left");
        assertFalse(
                text(
                                Playing.medium("plan 16:30 Prize-giving")
                                        .press(Key.Name.F9)
                                        .shoot(),
                                40,
                                12)
                        .contains("16:30 Prize"),
                "where there is little room it comes when it is near");
        shows(Playing.of("cam 645", "plan 15:06 Start wants 12").shoot(), 80, 24, "load now: no film in 645 back 1");
    }

    @Test
    void theCountdownRunsWithTheClock() {
        Playing day = Playing.medium("plan 16:30 Prize-giving");
        shows(day.later(60).shoot(), 80, 24, "Prize-giving in 30 min");
        shows(day.later(30).shoot(), 80, 24, "Prize-giving now");
        assertFalse(text(day.press(Key.Name.F9).later(16).shoot(), 80, 24).contains("16:30 Prize"));
    }

    /** All that must be found at 80 columns and 24 rows without a plan is found with one too. */
    @Test
    void withAPlanTheScreenStillSaysEverythingAt80By24() {
        shows(
                day().shoot(),
                80,
                24,
                "645 reflex",
                "back 1",
                "150mm f/3.5",
                "Colour negative 400",
                "meter at 200",
                "C-41, NORMAL (rated 200, box 400)",
                "R0003",
                "next frame",
                "10 left",
                "EV 11.3",
                "over box",
                "35 · bw400 EI 800 · 36 left",
                "645 back 2 · bw100 EI 80 · 16 left",
                "FILTER yellow",
                "BIAS +1/3",
                "HOLD f/5.6",
                "TUBE 30mm",
                "TRIPOD",
                "15:00",
                "\n>",
                "Space same again",
                "f/5.6",
                "newest frames");
    }

    @Test
    void thePlanShowsItsMomentsAndTheSunsInOrderOfTime() {
        Playing day = day().press(Key.Name.F4);
        assertEquals(Session.Page.PLAN, day.shoot().view().page());
        shows(
                day.shoot(),
                80,
                24,
                "Plan · Regatta day, 2026-09-12",
                "►  2  15:06  in 6 min",
                "Start of the eights",
                "wants 20",
                "1  16:30  in 1 h 30 min",
                "wants 12 MUST  645  EV 12",
                "golden hour begins",
                "sunset",
                "civil twilight ends",
                "The plan wants 32, 62 are left in the cameras");
        String text = text(day.shoot(), 80, 40);
        assertTrue(
                text.indexOf("Prize-giving  ") < text.indexOf("sunset")
                        && text.indexOf("Start of the eights  ") > text.indexOf("sunrise"),
                text);
        shows(Playing.of().press(Key.Name.F4).shoot(), 80, 24, "No plan yet", "For sunrise and sunset, give the place");
    }

    @Test
    void aLineAboutThePlanStaysInThePlanAndAFrameGoesBack() {
        Playing day = day().press(Key.Name.F4).lines("plan 17:00 Crew portrait");
        shows(day.shoot(), 80, 24, "3  17:00", "Crew portrait");
        assertEquals(Session.Page.SHOOT, day.lines("4 125").shoot().view().page());
        assertEquals(
                Session.Page.BAG,
                day.press(Key.Name.F5)
                        .lines("bag add 1 cn800 120")
                        .shoot()
                        .view()
                        .page());
        assertEquals(Session.Page.PLAN, day.lines("plan").shoot().view().page());
        assertEquals(Session.Page.BAG, day.lines("bag").shoot().view().page());
    }

    @Test
    void theBagShowsTheNightBeforeList() {
        Session shoot = day().press(Key.Name.F5).shoot();
        shows(
                shoot,
                120,
                40,
                "Bag · for Regatta day",
                "3 × cn400 120, expires 2027-03, 6.20 a roll",
                "1 × bw400 120, expires 2021-03: EXPIRED",
                "645 back 1: R0003, cn400 EI 200, next frame 7, 10 left",
                "batteries",
                "200 for R0003 in 645 back 1",
                "enough, ");
    }

    @Test
    void theClientStandsOnNoScreen() {
        Playing day = Playing.medium("shoot Regatta day client Harriet Ruder");
        for (Key.Name page : new Key.Name[] {Key.Name.F4, Key.Name.F5, Key.Name.F3, Key.Name.F2}) {
            assertFalse(text(day.press(page).shoot(), 100, 40).contains("Harriet"));
        }
    }

    @Test
    void aMustThatIsOnOneRollOnlyIsSaidInThePlan() {
        Playing day = Playing.medium("plan 15:01 Start must")
                .later(2)
                .lines("4 125 x3")
                .later(30)
                .press(Key.Name.F4);
        shows(day.shoot(), 80, 24, "Start is a must, and on R0001 only: guard that roll");
        shows(
                Playing.medium("plan 15:01 Start must")
                        .later(40)
                        .press(Key.Name.F4)
                        .shoot(),
                80,
                24,
                "Start is a must, and no frame is from it");
    }
}
