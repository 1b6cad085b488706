package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Days with flash as they are typed: no answer false, no warning that helps nobody. */
class FlashDaysTest {
    private static void logs(Shooting shooting, String line, double error, String warned) {
        shooting.type(line);
        assertEquals(
                error, shooting.error().orElseThrow(), 0.01, shooting.answer().text());
        assertEquals(warned, shooting.warnings(), shooting.answer().text());
    }

    /**
     * Crew portraits in the boathouse by a flash meter alone, colour negative 400 at EI 200, f/8 (Av 6) at the sync.
     * f/5.6 is Av 5: a stop over. Nobody metered the room, so what 1/8 adds is not known.
     */
    @Test
    void aStudioDayIsJudgedByTheFlashMeter() {
        Shooting shooting = Shooting.medium("set 8 60");
        assertEquals("Flash: f/8 at 200. Set: f/8, right.", shooting.type("m flash 8"));
        assertEquals("flash-voltage", shooting.warnings());
        assertFalse(shooting.standing().contains("LIGHT"), shooting.standing());
        for (int frame = 1; frame <= 10; frame++) {
            logs(shooting, ". ", 0, "");
        }
        logs(shooting, "5.6", 1, "");
        assertTrue(
                shooting.type("say").contains("Flash read f/8 at EI 200, just now. For this light 1.0 over."),
                shooting.answer().text());
        shooting.type("m flash 11");
        logs(shooting, "11 60", 0, "frames-left");
        assertTrue(
                shooting.type("set 1/8").contains("The room's light at 1/8 is not known: meter it (m READING)."),
                shooting.answer().text());
        assertTrue(
                shooting.type(". ").contains("f/11 1/8, the room's light at 1/8 is not known"),
                shooting.answer().text());
        assertTrue(shooting.error().isEmpty());
    }

    /**
     * A wedding hour on the jetty: EV 12 at EI 200 asks for EV 13, f/11 (7) at 1/60 (6) is right. Fill a stop under:
     * log2(1 + 0.5) = 0.585. Two stops under: log2(1.25) = 0.32. Without flash: right.
     */
    @Test
    void aWeddingHourWithFillIsALittleOverAndNobodyIsWarned() {
        Shooting shooting = Shooting.medium("m ev12", "set 11 60");
        assertTrue(shooting.type("flash gn36m 3m fill -1").contains("1.0 under at f/11"));
        assertEquals("flash-voltage", shooting.warnings());
        logs(shooting, ". ", 0.585, "");
        assertTrue(shooting.answer().text().contains("0.6 over (ambient right, flash 1.0 under)"));
        shooting.type("flash gn36m 3m fill -2");
        logs(shooting, ". ", 0.322, "");
        shooting.type("flash off");
        logs(shooting, ". ", 0, "");
    }

    /** Sync of the 35 is 1/60. A held 1/500 would be set by the next reading: it is said now, whichever comes first. */
    @Test
    void aHeldTimeThatIsTooFastForFlashIsSaidAtOnce() {
        Shooting flashLast = Shooting.of("cam 35", "load cn400", "set 8 60", "hold 1/500");
        assertTrue(flashLast.type("flash on").contains("flash on"));
        assertEquals("sync-speed flash-voltage", flashLast.warnings());
        Shooting holdLast = Shooting.of("cam 35", "load cn400", "set 8 60", "flash on");
        holdLast.type("hold 1/500");
        assertEquals("sync-speed", holdLast.warnings());
        holdLast.type("hold 1/30");
        assertEquals("", holdLast.warnings());
        holdLast.type("hold f8");
        assertEquals("", holdLast.warnings());
        Shooting metered = Shooting.of("cam 35", "load cn400", "set 8 60", "hold 1/500");
        metered.type("m flash 8");
        assertEquals("sync-speed flash-voltage", metered.warnings());
    }

    /** With the flash metered and on, nothing says that the light was not read; without it, it was not. */
    @Test
    void nobodyIsToldToReadTheLightWhereTheFlashWasRead() {
        Shooting shooting = Shooting.medium("set 8 60", "m flash 8");
        assertFalse(
                shooting.type("say").contains("No light reading"),
                shooting.answer().text());
        assertTrue(shooting.answer().text().contains("Flash read f/8 at EI 200"));
        assertTrue(shooting.refused("why").startsWith("the aperture follows from the flash, f/8 at EI 200"));
        for (String line : new String[] {". ", "x3", "unload"}) {
            shooting.typeSurely(line);
            assertFalse(shooting.warnings().contains("no-light"), line);
        }
    }

    /** A time that is set by hand while flash is on stays, since it was asked for, and what it does is said there. */
    @Test
    void aTimeThatIsSetTooFastForFlashIsSaidThere() {
        Shooting shooting = Shooting.of("cam 35", "load cn400", "flash on", "m flash 8");
        shooting.type("set 8 500");
        assertEquals("sync-speed", shooting.warnings());
        shooting.type("set 8 60");
        assertEquals("", shooting.warnings());
        Shooting leaf = Shooting.of("cam 66slr", "load cn400", "flash on", "lens 150leaf", "set 8 500");
        assertEquals("", leaf.warnings());
        leaf.type("lens 80");
        leaf.type("set 8 500");
        assertEquals("sync-speed", leaf.warnings());
    }
}
