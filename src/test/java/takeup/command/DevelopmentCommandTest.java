package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Push, pull and normal, also for the roll that came out of the camera just now. */
class DevelopmentCommandTest {
    private static double push(Shooting shooting) {
        return shooting.roll("R0001").film().development().pushStops();
    }

    @Test
    void theRollInTheCameraIsMeantAtOnce() {
        Shooting shooting = Shooting.of("cam 35", "load bw400", "8 125", "push 1");
        assertEquals(1, push(shooting));
    }

    @Test
    void afterUnloadItIsAskedWithTheLineThatDoesIt() {
        Shooting shooting = Shooting.of("cam 35", "load bw400", "8 125", "unload yes");
        assertEquals(
                "No film in 35; R0001 was unloaded at 15:00. Is \"fix roll R0001 push 1\" meant? y/n",
                shooting.asked("push 1"));
        shooting.type("y");
        assertEquals(1, push(shooting));
        assertEquals(
                "No film in 35; R0001 was unloaded at 15:00. Is \"fix roll R0001 normal\" meant? y/n",
                shooting.asked("normal"));
        shooting.type("fix roll R0001 pull 1");
        assertEquals(-1, push(shooting), "the line works as it is named");
    }

    @Test
    void onlyTheRollThatWasInTheCameraInHandIsMeant() {
        Shooting shooting = Shooting.of("cam 35", "load bw400", "8 125", "unload yes", "cam 645");
        assertTrue(shooting.refused("push 1").contains("no film in 645"));
    }
}
