package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.handoff.MadeBy;
import takeup.handoff.RollJson;
import takeup.message.Key;
import takeup.roll.Assignment;
import takeup.roll.Frame;
import takeup.roll.Place;
import takeup.screen.Screen;
import takeup.session.Playing;

/** Who is on a frame, and where it was. */
class PeopleAndPlacesTest {
    private static String shown(Frame frame) {
        return String.join("+", frame.scene().people()) + " @ "
                + frame.scene().place().name().orElse("-");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            8 125 with Anna, Ben at boathouse          | Anna+Ben @ boathouse
            8 125 at the old Boat house                | @ the old Boat house
            8 125 with Anna and Ben ; laughing at me   | Anna+Ben @ -
            8 125 lens 50 with Anna                    | Anna @ -
            . with Anna van der Meer                   | Anna van der Meer @ -
            8 WITH Anna, Anna AT jetty                 | Anna @ jetty
            """)
    void aFrameLineSaysThem(String line, String words) {
        Shooting shooting = Shooting.of("cam 35", "load bw400", "8 125", line);
        assertEquals(words.strip(), shown(shooting.frame()).strip());
        shooting.type("8 125");
        assertEquals("@ -", shown(shooting.frame()).strip(), "for that line alone");
    }

    @Test
    void theyAreKeptWhereThatIsAsked() {
        Shooting shooting = Shooting.of("cam 35", "load bw400");
        assertEquals("Frames to come: with Anna, Ben.", shooting.type("with Anna, Ben"));
        assertEquals("Frames to come: with Anna, Ben at boathouse.", shooting.type("at boathouse"));
        shooting.type("8 125 x2");
        assertEquals("Anna+Ben @ boathouse", shown(shooting.frame()));
        shooting.type("8 125 with Carl");
        assertEquals("Carl @ boathouse", shown(shooting.frame()));
        shooting.type(".");
        assertEquals("Anna+Ben @ boathouse", shown(shooting.frame()));
        shooting.type("blank");
        assertEquals("@ -", shown(shooting.frame()).strip(), "a wasted frame shows nobody");
        assertEquals("Frames to come: with Anna, Ben at boathouse.", shooting.type("with"));
        shooting.type("with nobody");
        shooting.type("at nowhere");
        shooting.type("8 125");
        assertEquals("@ -", shown(shooting.frame()).strip());
        assertEquals("Undone: frame 6 of R0001 in 35. Next is frame 6, 31 left.", shooting.type("undo"));
        assertTrue(shooting.type("undo").contains("who and where"));
    }

    @Test
    void theyLastThroughTheNightOfAShootAndNoLonger() {
        Shooting night =
                Shooting.of("cam 35", "load bw400", "shoot Party", "with Anna").later(10 * 60);
        night.type("8 125");
        assertEquals("Anna @ -", shown(night.frame()), "01:00 is still that evening");
        night.later(24 * 60);
        night.type("8 125");
        assertEquals("@ -", shown(night.frame()).strip());
    }

    @Test
    void aCorrectionSaysThemToo() {
        Shooting shooting = Shooting.of("cam 35", "load bw400", "8 125", "8 125", "8 125");
        String said = shooting.type("fix 2 with Anna at jetty");
        assertTrue(said.contains("with Anna, at jetty"), said);
        assertEquals(
                "with Anna at jetty",
                shooting.type("fix 1-3 with Anna at jetty").split(": ", 2)[1].replace(".", ""));
        shooting.type("fix 2 with nobody");
        assertEquals(
                List.of("Anna @ jetty", " @ jetty", "Anna @ jetty"),
                shooting.roll().frames().stream()
                        .map(PeopleAndPlacesTest::shown)
                        .toList());
        assertTrue(shooting.refused("fix 2 with").contains("who? such as with Anna, Ben"));
        assertTrue(shooting.refused("8 125 at").contains("where? such as at boathouse"));
        assertTrue(shooting.refused("8 125 at a at b").contains("at is said twice"));
    }

    @Test
    void namesAreSpelledAsBefore() {
        Shooting shooting = Shooting.of("cam 35", "load bw400", "8 125 with Anna Berg at Boathouse");
        shooting.type("8 125 with anna berg at boathouse");
        assertEquals("Anna Berg @ Boathouse", shown(shooting.frame()));
    }

    @Test
    void tabCompletesThemFromTheDay() {
        Playing day = Playing.of("cam 35", "load bw400", "8 125 with Anna Berg, Ben at Boathouse");
        day.type("8 125 with an").press(Key.Name.TAB);
        assertEquals("8 125 with anna Berg", day.prompt());
        day.type(", b").press(Key.Name.TAB).type(" at b").press(Key.Name.TAB);
        assertEquals("8 125 with anna Berg, ben at boathouse", day.prompt());
        assertEquals(
                "8 125 lens ",
                Playing.of("cam 35").type("8 125 le").press(Key.Name.TAB).prompt());
    }

    private static Place place(Shooting shooting) {
        return shooting.situation().day().shoot().orElseThrow().place();
    }

    @Test
    void aShootHasAPlaceByNameAndOnEarth() {
        Shooting shooting = Shooting.of("cam 35", "shoot Regatta day at the boathouse 59.33,18.07", "load bw400");
        assertEquals(Optional.of("the boathouse"), place(shooting).name());
        assertEquals("59.33,18.07", place(shooting).coordinates().orElseThrow().toString());
        assertEquals(
                "Regatta day", shooting.situation().day().shoot().orElseThrow().name());
        assertTrue(shooting.type("place Old jetty").startsWith("Regatta day, at Old jetty (59.33,18.07)."));
        shooting.type("place Slip at 59.5 18.25");
        assertEquals("59.5,18.25", place(shooting).coordinates().orElseThrow().toString());
        assertEquals(
                Optional.of("Slip"),
                shooting.roll("R0001").assignment().map(Assignment::place).flatMap(Place::name),
                "its rolls know it");
        assertTrue(Shooting.of().refused("place boathouse").contains("no shoot is open"));
        assertTrue(Shooting.of("shoot Party").refused("place share").contains("not known yet"));
        assertTrue(shooting.refused("place Slip at 95,18").contains("no place on earth"));
    }

    @Test
    void coordinatesLeaveTheFolderOnlyOnceTheyAreShared() {
        Shooting shooting = Shooting.of(
                "cam 35",
                "shoot Regatta day at boathouse 59.33,18.07",
                "load bw400",
                "8 125",
                "unload yes",
                "load bw400");
        assertTrue(json(shooting, "R0001").contains("\"place\" : \"boathouse\""));
        assertTrue(!json(shooting, "R0001").contains("59.33")
                && !json(shooting, "R0002").contains("59.33"));
        assertTrue(shooting.type("place share").contains("Exports and sidecars hold the coordinates"));
        assertTrue(json(shooting, "R0001").contains("\"latitude\" : 59.33"), "a roll that was unloaded before, too");
        assertTrue(json(shooting, "R0002").contains("\"longitude\" : 18.07"));
        shooting.type("shoot Regatta day client Harriet");
        assertTrue(json(shooting, "R0002").contains("59.33"), "it stays said");
        shooting.type("place private");
        assertTrue(!json(shooting, "R0001").contains("59.33")
                && !json(shooting, "R0002").contains("59.33"));
    }

    private static String json(Shooting shooting, String roll) {
        return RollJson.text(shooting.roll(roll), MadeBy.version("1"));
    }

    @Test
    void theScreenShowsThem() {
        Playing day = Playing.of(
                "cam 35",
                "shoot Church",
                "load bw400",
                "8 125 with Carl ; slip",
                "shoot Castle",
                "with Anna, Ben",
                "at keep");
        day.lines("8 60");
        String shoot = Screen.render(day.shoot(), 120, 40).text();
        assertTrue(shoot.contains("WITH Anna, Ben") && shoot.contains("AT keep"), shoot);
        String frames = Screen.render(day.press(Key.Name.F2).shoot(), 120, 40).text();
        assertTrue(frames.contains("with Anna, Ben, at keep, for Castle"), frames);
        assertTrue(frames.contains("with Carl  slip"), frames);
    }
}
