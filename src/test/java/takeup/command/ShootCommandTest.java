package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.day.ShootInfo;
import takeup.kit.FilmSize;
import takeup.message.Key;
import takeup.roll.Assignment;
import takeup.screen.Screen;
import takeup.session.Playing;

/** Opening a shoot, and the rolls that belong to it. */
class ShootCommandTest {
    private static ShootInfo shoot(Shooting shooting) {
        return shooting.situation().day().shoot().orElseThrow();
    }

    private static String words(ShootInfo it) {
        return it.name() + " / " + it.date() + " / "
                + it.position().map(Object::toString).orElse("-") + " / "
                + it.client().orElse("-");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            shoot Regatta day                                                   | Regatta day / 2026-09-12 / - / -
            shoot Regatta day on 2026-09-13                                     | Regatta day / 2026-09-13 / - / -
            shoot Regatta day on tomorrow at 59.33,18.07                        | Regatta day / 2026-09-13 / 59.33,18.07 / -
            shoot Regatta day at 59.33 18.07 on 2026-09-13                      | Regatta day / 2026-09-13 / 59.33,18.07 / -
            shoot Regatta day at 59,33 18,07                                    | Regatta day / 2026-09-12 / 59.33,18.07 / -
            shoot Regatta day at 59.33, -18.07                                  | Regatta day / 2026-09-12 / 59.33,-18.07 / -
            shoot Portraits at the boathouse on the river                       | Portraits at the boathouse on the river / 2026-09-12 / - / -
            shoot Crews client Harriet Ruder on 2026-09-13, before eight        | Crews / 2026-09-12 / - / Harriet Ruder on 2026-09-13, before eight
            SHOOT Crews AT -33.86,151.2 CLIENT Harriet                          | Crews / 2026-09-12 / -33.86,151.2 / Harriet
            """)
    void nameDatePlaceAndClientAreTold(String line, String words) {
        assertEquals(words, words(shoot(Shooting.of(line))));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            shoot Regatta at 95,18                | no place on earth
            shoot Regatta at 59.33                | no place on earth
            shoot Regatta at 59.33,18,07          | no place on earth
            shoot Regatta on 2026-13-40           | no date
            shoot on 2026-09-12                   | no name
            shoot Regatta on 2026-09-12 rain      | one word too many
            shoot 645                             | cam 645 takes it up
            shoot client Harriet                  | client stands behind the name of the shoot
            shoot on 2026-09-12 client Harriet    | client stands behind the name of the shoot
            """)
    void whatDoesNotFitIsRefused(String line, String why) {
        String said = Shooting.of().refused(line);
        assertTrue(said.contains(why), said);
    }

    @Test
    void whatIsNotSaidAgainOfTheSameShootStays() {
        Shooting shooting =
                Shooting.of("shoot Regatta day on 2026-09-13 client Harriet", "shoot regatta day at 59.33,18.07");
        assertEquals("regatta day / 2026-09-13 / 59.33,18.07 / Harriet", words(shoot(shooting)));
        shooting.type("shoot Portraits");
        assertEquals("Portraits / 2026-09-12 / - / -", words(shoot(shooting)));
    }

    /**
     * Cologne, 2017-08-10 in the table of SunTest: golden hour from 18:15:49 UTC, sunset 19:02:20 UTC, two hours later
     * on the wall.
     */
    @Test
    void withAPlaceTheAnswerTellsTheEveningsLight() {
        String said = Shooting.of().type("shoot Regatta on 2017-08-10 at 50.93806,6.956944");
        assertTrue(said.contains("golden hour from 20:16, sunset 21:02"), said);
        assertTrue(Shooting.of()
                .type("shoot Regatta on 2026-06-01 at 69.6489,18.95508")
                .contains("the sun does not set"));
        // 69.65 north is past the polar circle: at the winter solstice the sun is up to 3 degrees below the horizon.
        assertTrue(
                Shooting.of().type("shoot Regatta on 2026-12-21 at 69.65,18.96").contains("the sun does not rise"));
    }

    @Test
    void rollsLoadedForAShootBelongToItAndThoseOfEarlierDaysDoNot() {
        Shooting shooting = Shooting.of("cam 35", "load bw400", "8 250").later(24 * 60);
        shooting.type("cam 645");
        shooting.type("load cn400");
        shooting.type("shoot Regatta day client Harriet");
        shooting.type("back 2");
        shooting.type("load cn400");
        Optional<Assignment> regatta =
                Optional.of(new Assignment("Regatta day", LocalDate.parse("2026-09-13"), Optional.of("Harriet")));
        assertEquals(Optional.empty(), shooting.roll("R0001").assignment(), "begun yesterday for something else");
        assertEquals(regatta, shooting.roll("R0002").assignment(), "loaded this morning, before the shoot had a name");
        assertEquals(regatta, shooting.roll("R0003").assignment());
        shooting.type("shoot Regatta, second day");
        assertEquals(regatta, shooting.roll("R0003").assignment(), "until it is said that it was meant for this one");
        shooting.type("y");
        assertEquals(
                "Regatta, second day",
                shooting.roll("R0003").assignment().orElseThrow().name(),
                "the same day under a better name");
        shooting.type("undo");
        assertEquals(regatta, shooting.roll("R0003").assignment());
    }

    @Test
    void halfUsedRollsOfEarlierDaysAreNamedWithAgeStockIndexAndCounter() {
        Shooting shooting = Shooting.medium("4 125 x6").later(22 * 24 * 60);
        String said = shooting.type("shoot Regatta day");
        assertTrue(said.contains("R0001 in 645 back 1 since 2026-09-12, cn400 EI 200, next frame 7, 10 left"), said);
        assertFalse(
                Shooting.medium("4 125").type("shoot Regatta day").contains("since"), "a roll of today is no surprise");
    }

    @Test
    void theScreenSaysThemFirst() {
        Playing day = Playing.medium("4 125 x6").later(26 * 60).restart();
        assertTrue(
                day.said().contains("R0001 in 645 back 1 since 2026-09-12, cn400 EI 200, next frame 7, 10 left"),
                day.said());
        assertEquals("", Playing.medium("4 125").restart().said());
    }

    @Test
    void undoingAShootTakesUpNoOtherCamera() {
        Shooting shooting = Shooting.of("cam 645", "load cn400", "cam 35", "load bw400", "shoot Regatta day");
        assertEquals("Undone: shoot Regatta day.", shooting.type("undo"));
        assertEquals("35", shooting.situation().placeInHand().orElseThrow().toString());
        assertEquals(Optional.empty(), shooting.situation().day().shoot());
        assertEquals(Optional.empty(), shooting.roll("R0001").assignment());
    }

    @Test
    void aShootThatIsOverIsClosedOnTheNextDayAndTheBagIsNot() {
        Shooting shooting = Shooting.of("cam 35", "shoot Regatta day", "bag add 3 cn400 120")
                .later(24 * 60);
        shooting.type("load bw400");
        assertEquals(Optional.empty(), shooting.situation().day().shoot());
        assertEquals(Optional.empty(), shooting.roll("R0001").assignment());
        assertEquals(3, shooting.situation().day().bag().rolls("cn400", FilmSize.F120));
    }

    /**
     * Sunset at Cologne on 2026-09-12 is some minutes before 20:00 by summer time. A reading of 19:20 is old after 10
     * minutes, one of 15:00 after 30. Without a place nothing is known of the sun.
     */
    @Test
    void aReadingGrowsOldSoonerNearSunset() {
        String place = "shoot Regatta day at 50.93806,6.956944";
        assertEquals("", staleAfter(Shooting.medium(place).later(4 * 60 + 20), 10));
        assertEquals("stale-light", staleAfter(Shooting.medium(place).later(4 * 60 + 20), 11));
        assertEquals("", staleAfter(Shooting.medium(place), 30));
        assertEquals("stale-light", staleAfter(Shooting.medium(place), 31));
        assertEquals("", staleAfter(Shooting.medium().later(4 * 60 + 20), 30));
    }

    private static String staleAfter(Shooting shooting, int minutes) {
        shooting.type("m 5.6 125");
        shooting.later(minutes).type(".");
        assertEquals(shooting.standing(), shooting.warnings(), "what is said stands");
        return shooting.warnings();
    }

    private static String shootOf(Shooting shooting, String roll) {
        return shooting.roll(roll).assignment().map(Assignment::name).orElse("-");
    }

    private static String shootsOfFrames(Shooting shooting, String roll) {
        return shooting.roll(roll).frames().stream()
                .map(it -> it.scene().shoot().map(Assignment::name).orElse("-"))
                .toList()
                .toString();
    }

    @Test
    void aRollThatWasBegunStaysWithTheShootItWasLoadedFor() {
        Shooting shooting = Shooting.of("cam 35", "shoot Church client Harriet", "load bw400", "5.6 125");
        String said = shooting.type("shoot Castle");
        assertTrue(said.contains("R0001 in 35 stays with Church; frames from now on are noted as Castle"), said);
        shooting.type("8 125");
        shooting.typeSurely("unload");
        assertEquals("Church", shootOf(shooting, "R0001"));
        assertEquals(
                Optional.of("Harriet"),
                shooting.roll("R0001").assignment().orElseThrow().client());
        assertEquals("[-, Castle]", shootsOfFrames(shooting, "R0001"), "it served two shoots, and says so by frame");
    }

    @Test
    void aRollWithoutAFrameIsAskedAboutOnce() {
        Shooting shooting = Shooting.of("cam 35", "shoot Church", "load bw400");
        assertEquals(
                "R0001 in 35 was loaded for Church and has no frame yet. Is it for Castle now? y/n",
                shooting.askedBehind("shoot Castle"));
        assertEquals("Castle", shoot(shooting).name(), "the shoot is open whatever the answer");
        assertEquals("R0001 for Castle.", shooting.type("y"));
        assertEquals("Castle", shootOf(shooting, "R0001"));
        assertTrue(shooting.refused("yes").contains("nothing was asked"), "once");
    }

    @Test
    void anyOtherLineLeavesTheRollWhereItWas() {
        Shooting no = Shooting.of("cam 35", "shoot Church", "load bw400", "shoot Castle", "n");
        assertEquals("Church", shootOf(no, "R0001"));
        Shooting frame = Shooting.of("cam 35", "shoot Church", "load bw400", "shoot Castle", "8 125");
        assertEquals("Church", shootOf(frame, "R0001"));
        assertEquals("[Castle]", shootsOfFrames(frame, "R0001"));
    }

    @Test
    void aMistypedNameIsAskedAboutToo() {
        Shooting shooting = Shooting.of("cam 35", "shoot Regata day", "load bw400", "8 125");
        assertEquals(
                "R0001 in 35 was loaded for Regata day and has 1 frame. Is it for Regatta day now? y/n",
                shooting.askedBehind("shoot Regatta day"));
        shooting.type("y");
        assertEquals("Regatta day", shootOf(shooting, "R0001"));
    }

    @Test
    void whatIsSaidMoreOfTheSameShootIsSaidOfItsRolls() {
        Shooting shooting = Shooting.of("cam 35", "shoot Church", "load bw400", "8 125");
        shooting.type("shoot Church client Harriet");
        assertEquals(
                Optional.of("Harriet"),
                shooting.roll("R0001").assignment().orElseThrow().client());
        shooting.type("shoot Church on 2026-09-13");
        assertEquals(
                LocalDate.parse("2026-09-13"),
                shooting.roll("R0001").assignment().orElseThrow().date());
    }

    @Test
    void oneRollIsMovedToAnotherShoot() {
        Shooting shooting = Shooting.of("cam 35", "shoot Church client Harriet", "load bw400", "5.6 125");
        shooting.type("shoot Castle client Rowing club");
        shooting.type("8 125");
        assertEquals("R0001 belongs to Castle, 2026-09-12.", shooting.type("fix roll r1 shoot castle"));
        assertEquals(
                Optional.of("Rowing club"),
                shooting.roll("R0001").assignment().orElseThrow().client(),
                "the client of that shoot");
        assertEquals("R0001 belongs to Old Harbour, 2026-09-12.", shooting.type("fix roll shoot Old Harbour"));
        assertEquals(
                Optional.empty(),
                shooting.roll("R0001").assignment().orElseThrow().client());
        assertTrue(shooting.refused("fix roll r1 shoot").contains("to which shoot?"));
    }

    @Test
    void onTheScreenEnterSaysYesAndEscNo() {
        Playing day = Playing.of("cam 35", "shoot Church", "load bw400").lines("shoot Castle");
        assertTrue(
                day.said().contains("Shoot: Castle") && day.said().contains("Is it for Castle now? y/n"), day.said());
        assertTrue(Screen.render(day.shoot(), 100, 30).text().contains("Enter yes  n no"), day.said());
        day.press(Key.Name.ENTER);
        assertEquals("Castle", day.roll("R0001").assignment().orElseThrow().name());
        Playing left = Playing.of("cam 35", "shoot Church", "load bw400", "shoot Castle");
        left.press(Key.Name.ESCAPE);
        assertEquals("Church", left.roll("R0001").assignment().orElseThrow().name());
    }
}
