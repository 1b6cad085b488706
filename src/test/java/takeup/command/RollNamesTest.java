package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import takeup.dispatch.Completion;
import takeup.handoff.MadeBy;
import takeup.handoff.RollJson;
import takeup.handoff.RollPlainText;
import takeup.kit.FilmSize;
import takeup.roll.RollLabel;

/** Names of the photographer's own for rolls, and the batch of their emulsion. */
class RollNamesTest {
    private static RollLabel label(Shooting shooting, String roll) {
        return shooting.roll(roll).film().label();
    }

    @Test
    void aRollIsCalledByItsOwnName() {
        Shooting shooting = Shooting.of("cam 35");
        String said = shooting.type("load bw400 as B-12 @800");
        assertTrue(said.startsWith("R0001 (B-12) in 35: Black-and-white 400, 135, 36 frames"), said);
        assertTrue(said.contains("Write B-12 on the film."), said);
        shooting.type("8 125");
        shooting.type("fix b-12 1 5.6");
        assertEquals(
                "f/5.6",
                shooting.frame().exposure().setting().aperture().orElseThrow().toString());
        shooting.type("note b-12 the eight in two rows");
        shooting.typeSurely("unload B-12");
        shooting.type("fix roll b-12 push 1");
        assertEquals(1, shooting.roll("R0001").film().development().pushStops());
        assertTrue(RollPlainText.of(shooting.roll("R0001")).contains("B-12"));
        assertTrue(RollJson.text(shooting.roll("R0001"), MadeBy.version("1")).contains("\"name\" : \"B-12\""));
    }

    @Test
    void aNameIsGivenOnceAndIsNoRollNumber() {
        Shooting shooting = Shooting.of("cam 35", "load bw400 as B-12", "cam 645");
        assertTrue(shooting.refused("load cn400 as b-12").contains("b-12 is the name of R0001 already"));
        assertTrue(shooting.refused("load cn400 as R7").contains("R7 is a roll number here"));
        assertTrue(shooting.refused("load cn400 as").contains("something is missing after as"));
        shooting.type("load cn400");
        assertEquals(RollLabel.NONE, label(shooting, "R0002"), "the next roll has none");
        assertTrue(shooting.type("fix roll r2 as C-1").contains(", named C-1"));
        assertEquals(Optional.of("C-1"), label(shooting, "R0002").name());
        shooting.type("undo");
        assertEquals(Optional.empty(), label(shooting, "R0002").name());
        assertTrue(Shooting.of("cam 35").type("load bw400 as B-12").contains("(B-12)"), "undone names are free");
    }

    @Test
    void theBatchComesFromTheBag() {
        Shooting shooting = Shooting.of(
                "cam 645",
                "bag add 2 cn400 120 batch 4711 expires 2027-03",
                "bag add 1 cn400 120 batch K2 expires 2028-01");
        assertTrue(shooting.type("load cn400").contains(", 120, batch 4711, 16 frames"));
        assertEquals(Optional.of("4711"), label(shooting, "R0001").batch());
        shooting.type("unload yes");
        assertTrue(shooting.type("load cn400 batch k2").contains("batch k2"), "another one is taken where it is said");
        assertEquals(1, shooting.situation().day().bag().rolls("cn400", FilmSize.F120));
        shooting.type("unload yes");
        shooting.type("load cn400");
        assertEquals(Optional.of("4711"), label(shooting, "R0003").batch());
        assertTrue(RollPlainText.of(shooting.roll("R0003")).contains("Colour negative 400, 120, batch 4711"));
        assertFalse(RollJson.text(shooting.roll("R0003"), MadeBy.version("1")).contains("\"name\" : \"B"));
        shooting.type("fix roll batch 4712");
        assertEquals(Optional.of("4712"), label(shooting, "R0003").batch());
    }

    @Test
    void tabKnowsThemWhereARollIsNamed() {
        Shooting shooting = Shooting.of("cam 645", "load cn400 as B-12", "unload yes", "load cn400 as Boat");
        assertEquals(List.of("B-12"), Completion.of(shooting.situation(), "note b-"));
        assertEquals(List.of("B-12", "Boat"), Completion.of(shooting.situation(), "day-end r1 b"));
        assertEquals(List.of(), Completion.of(shooting.situation(), "note b-12 b"));
        shooting.type("fix roll r1 as C-1");
        assertEquals(List.of("C-1"), Completion.of(shooting.situation(), "condition c-"));
    }
}
