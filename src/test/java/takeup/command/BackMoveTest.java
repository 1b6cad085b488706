package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import takeup.handoff.RollPlainText;
import takeup.kit.Camera;

/** A back that goes on another body, with the roll in it. */
class BackMoveTest {
    @Test
    void theRollAndItsCounterGoAlong() {
        Shooting shooting = Shooting.medium("4 125 x3");
        assertEquals(
                "Back 1 is on 645leaf, and R0001 in it: next frame 4, 13 left.",
                shooting.type("move back 1 645 to 645leaf"));
        assertEquals("645leaf back 1", shooting.roll("R0001").place());
        shooting.type("5.6 250");
        assertEquals(4, shooting.frame().number(), "the other body is in hand");
        assertEquals(
                List.of("645", "645", "645", "645leaf"),
                shooting.roll("R0001").frames().stream()
                        .map(it -> shooting.roll("R0001").camera(it))
                        .map(Camera::key)
                        .toList());
        assertTrue(RollPlainText.of(shooting.roll("R0001")).contains("on 645 reflex"), "each frame keeps its camera");
        assertTrue(shooting.type("cam 645 1").contains("no film"), "the place is free again");
    }

    @Test
    void undoPutsItBack() {
        Shooting shooting = Shooting.medium("4 125 x3", "move back 1 to 645leaf");
        assertEquals("Undone: moving back 1 of R0001 in 645 back 1. Next is frame 4, 13 left.", shooting.type("undo"));
        assertEquals("645 back 1", shooting.roll("R0001").place());
    }

    @Test
    void aBackThatCannotBeTheSameIsRefused() {
        Shooting shooting = Shooting.medium("4 125");
        assertTrue(shooting.refused("move back 1 645 to 66slr").contains("takes 6x4.5 on 645 and 6x6 on 66slr"));
        assertTrue(shooting.refused("move back 2 645 to 645leaf").contains("no film in 645 back 2"));
        assertTrue(shooting.refused("move back 1 645 to 35").contains("has no backs to change"));
        assertTrue(shooting.refused("move back 1 645 to 645").contains("is on 645 already"));
        assertTrue(shooting.refused("move back 1").contains("which back, and to which body?"));
        shooting.type("cam 645leaf 1");
        shooting.type("load cn400");
        assertTrue(shooting.refused("move back 1 645 to 645leaf").contains("R0002 is in 645leaf back 1"));
    }
}
