package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import takeup.kit.Filter;
import takeup.kit.Lens;
import takeup.message.Key;
import takeup.roll.Frame;
import takeup.screen.Screen;
import takeup.session.Playing;

/** What stays on a camera from frame to frame is said where nobody would think of it. */
class StayingOnTest {
    private static final String ALL =
            " Still on: filter red (3 stops), bias +1 stop, hold f/8, flash; clear (Ctrl-O) takes it off.";

    private static Shooting withAll() {
        return Shooting.of("cam 35", "load bw400", "filter red", "bias +1", "hold f8", "flash on");
    }

    private static List<String> filters(Frame frame) {
        return frame.exposure().setting().filters().stream().map(Filter::name).toList();
    }

    @Test
    void loadNamesAllThatIsOn() {
        Shooting shooting = withAll();
        shooting.typeSurely("unload");
        String said = shooting.type("load bw400");
        assertTrue(said.endsWith(ALL), said);
        assertFalse(Shooting.of("cam 35").type("load bw400").contains("Still on"), "where nothing is, nothing is said");
    }

    @Test
    void aDaysFirstFrameNamesWhatTheNightLeftOnAndTheSecondDoesNot() {
        Shooting shooting = withAll();
        assertFalse(shooting.type("8 125").contains("Still on"), "of today");
        shooting.later(20 * 60);
        shooting.type("bias 0");
        String said = shooting.type("8 125");
        assertTrue(
                said.endsWith(" Still on: filter red (3 stops), hold f/8, flash; clear (Ctrl-O) takes it off."), said);
        assertFalse(shooting.type("8 125").contains("Still on"), "once");
        shooting.later(24 * 60);
        assertTrue(shooting.type("8 125").contains("Still on: filter red"), "also where the frame is the first line");
    }

    @Test
    void clearTakesItAllOffAndUndoPutsItOnAgain() {
        Shooting shooting = withAll();
        assertTrue(
                shooting.type("clear").startsWith("Taken off 35: filter red (3 stops), bias +1 stop, hold f/8, flash."),
                shooting.answer().text());
        shooting.type("8 125");
        assertEquals(List.of(), filters(shooting.frame()));
        assertEquals(0, shooting.frame().exposure().setting().biasStops());
        assertFalse(shooting.frame().exposure().setting().flash());
        assertEquals(Optional.empty(), shooting.inHand().hold());
        shooting.type("undo");
        shooting.type("undo");
        shooting.type("8 125");
        assertEquals(List.of("red"), filters(shooting.frame()));
        assertEquals(
                "nothing is on 35: no filter, no tube, no bias, no hold, no flash",
                Shooting.of("cam 35").refused("clear"));
    }

    @Test
    void oneKeyClearsIt() {
        Playing day = Playing.of("cam 35", "load bw400", "filter red").press(Key.ctrl('o'));
        assertTrue(day.said().contains("Taken off 35: filter red (3 stops)"), day.said());
    }

    @Test
    void anotherLensAsksWhetherTheFilterComesAlong() {
        Shooting shooting = Shooting.of("cam 35", "load bw400", "filter red", "bias +1");
        assertEquals(
                "Filter red (3 stops) was on the 50mm f/1.8. Does it come along? y/n", shooting.askedBehind("lens 28"));
        assertTrue(
                shooting.answer().text().contains("Still on: bias +1 stop; clear (Ctrl-O) takes it off."),
                shooting.answer().text());
        shooting.type("n");
        shooting.type("8 125");
        assertEquals(List.of(), filters(shooting.frame()));
        assertEquals(
                "28",
                shooting.frame().exposure().setting().lens().map(Lens::key).orElseThrow());
        Shooting along = Shooting.of("cam 35", "load bw400", "filter red", "lens 28", "y", "8 125");
        assertEquals(List.of("red"), filters(along.frame()));
        Shooting unanswered = Shooting.of("cam 35", "load bw400", "filter red", "lens 28", "8 125");
        assertEquals(List.of("red"), filters(unanswered.frame()), "a frame waits for no answer");
        assertFalse(Shooting.of("cam 35", "filter red").type("lens 50").contains("Still on"), "the lens that was on");
    }

    @Test
    void aFrameLineNamesTheLensWhichStaysOn() {
        Shooting shooting = Shooting.of("cam 35", "load bw400");
        String said = shooting.type("8 125 lens 28");
        assertTrue(said.endsWith(" Lens on 35: 28mm f/2.8."), said);
        shooting.type(".");
        assertEquals(
                "28mm f/2.8",
                shooting.frame().exposure().setting().lens().orElseThrow().name());
        shooting.type("undo");
        shooting.type("undo");
        shooting.type("8 125");
        assertEquals(
                "50mm f/1.8",
                shooting.frame().exposure().setting().lens().orElseThrow().name(),
                "undone as one");
        assertTrue(shooting.refused("8 125 lens 29").contains("29 is no lens of 35mm mechanical reflex"));
        assertTrue(shooting.refused("8 125 lens").contains("something is missing after lens"));
        assertEquals(
                "28",
                Shooting.of("cam 35", "set 8 125 lens 28")
                        .inHand()
                        .setting()
                        .lens()
                        .orElseThrow()
                        .key());
    }

    @Test
    void theFilterOfTheLensBeforeIsAskedAboutAndComesOffTheFramesOfTheLine() {
        Shooting shooting = Shooting.of("cam 35", "load bw400", "filter red", "8 125");
        assertEquals(
                "Filter red (3 stops) was on the 50mm f/1.8. Does it come along? y/n",
                shooting.askedBehind("8 125 lens 28 x2"));
        shooting.type("n");
        shooting.type("8 125");
        assertEquals(
                List.of(List.of("red"), List.of(), List.of(), List.of()),
                shooting.roll().frames().stream().map(StayingOnTest::filters).toList());
        Shooting along = Shooting.of("cam 35", "load bw400", "filter red", "8 125 lens 28", "y");
        assertEquals(List.of("red"), filters(along.frame()));
    }

    @Test
    void theNewestFramesSayLensAndFilter() {
        Playing day = Playing.of("cam 35", "load bw400", "8 125 ; slip", "filter red", "8 125 lens 28 ; bow", "yes");
        String screen = Screen.render(day.shoot(), 120, 40).text();
        assertTrue(screen.contains("28 mm, red  bow"), screen);
        assertTrue(screen.contains("50 mm  slip"), screen);
    }
}
