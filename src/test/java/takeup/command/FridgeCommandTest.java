package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.json.JsonText;

/** Film into the fridge, from it into the bag for the plan, and back. It is 15:00 on 12 September 2026. */
class FridgeCommandTest {
    private static Shooting stocked(String... lines) {
        Shooting shooting = Shooting.of(
                "fridge add 10 cn400 120 expires 2027-03 batch 4711",
                "fridge add 3 cn400 120 expires 2026-12",
                "fridge add 2 cn400 120 expires 2025-01",
                "cam 645");
        for (String line : lines) {
            shooting.type(line);
        }
        return shooting;
    }

    private static String fridge(Shooting shooting) {
        return shooting.situation().day().fridge().filled().toString();
    }

    private static String bag(Shooting shooting) {
        return shooting.situation().day().bag().filled().toString();
    }

    @Test
    void theFridgeAloneSaysWhatIsInItWithBatchesAndDates() {
        assertEquals(
                "In the fridge: 2 × cn400 120, expires 2025-01: EXPIRED, test a roll first; 3 × cn400 120, expires "
                        + "2026-12; 10 × cn400 120, batch 4711, expires 2027-03.",
                stocked().type("fridge"));
        assertTrue(Shooting.of().type("fridge").startsWith("No fridge is kept: fridge add"));
    }

    /** 16 frames a roll of 120 in the 645: 40 frames are 3 rolls, 8 frames are left over for what comes next. */
    @Test
    void thePlanIsPackedForTheOldestDateFirstAndWhatIsPastItLast() {
        Shooting shooting = stocked("plan 16:30 Portraits wants 40", "plan 17:00 Group wants 8");
        assertEquals(
                "Packed 3 rolls from the fridge: 3 × cn400 120, expires 2026-12. Enough for the plan.",
                shooting.type("bag pack"));
        shooting.type("plan 18:00 Prize-giving wants 160");
        assertEquals(
                "Packed 10 rolls from the fridge: 10 × cn400 120, batch 4711, expires 2027-03. Enough for the plan.",
                shooting.type("bag pack"));
        shooting.type("plan 19:00 Dinner wants 1");
        String said = shooting.type("bag pack");
        assertTrue(said.startsWith("Packed 1 roll from the fridge: 1 × cn400 120, expires 2025-01."), said);
        assertTrue(said.contains("test a roll first"), said);
    }

    /** 15 rolls of 16 frames lie in the fridge. */
    @Test
    void otherProgramsReadWhatWasPackedAndWhichMomentIsShort() {
        Shooting shooting = stocked("plan 16:30 Portraits wants 300");
        assertTrue(
                shooting.type("bag pack").contains("MISSING: 60 frames"),
                shooting.answer().toString());
        assertEquals(
                "[{\"moment\":1,\"frames\":60,\"camera\":\"645\"}]",
                JsonText.line(shooting.answer().fields().json().field("short").orElseThrow()));
    }

    @Test
    void whatIsLeftInCameraAndBagCountsFirst() {
        Shooting shooting = stocked("bag add 1 cn400 120", "load cn400", "bag add 1 cn400 120");
        shooting.type("plan 16:30 Portraits wants 32");
        assertEquals("Nothing packed: bag and cameras have enough for the plan.", shooting.type("bag pack"));
        shooting.type("plan 17:00 Group wants 1");
        assertTrue(shooting.type("bag pack").startsWith("Packed 1 roll from the fridge"));
    }

    @Test
    void whatIsMissingIsSaidByMoment() {
        Shooting shooting = stocked("plan 16:30 Portraits wants 12 cam 35", "plan 17:00 Group wants 250");
        assertEquals(
                "Packed 15 rolls from the fridge: 3 × cn400 120, expires 2026-12; 10 × cn400 120, batch 4711, expires "
                        + "2027-03; 2 × cn400 120, expires 2025-01. MISSING: 12 frames for 16:30 Portraits, neither "
                        + "bag nor fridge has more film for 35; 10 frames for 17:00 Group, neither bag nor fridge has "
                        + "more film for 645.",
                shooting.type("bag pack").replaceAll(" Cn400 expired.*", ""));
        assertEquals(
                "Nothing packed. MISSING: 8 frames for 16:30 Start, no camera is named for it or in use (cam).",
                Shooting.of("fridge add 1 cn400 120", "plan 16:30 Start wants 8")
                        .type("bag pack"));
    }

    /** EV 5 at ISO 100 is 1/4 s at f/2.8: not for the hand with a film of 100, well with one of 3200. */
    @Test
    void theLightThatIsExpectedChoosesTheFilm() {
        Shooting shooting = Shooting.of("cam 35", "fridge add 5 bw100 135", "fridge add 5 bw3200 135");
        shooting.type("plan 16:30 Finish wants 20 light ev14");
        assertTrue(
                shooting.type("bag pack").contains("1 × bw100 135."),
                shooting.answer().text());
        shooting.type("plan 23:00 Dinner wants 20 light ev5");
        assertTrue(
                shooting.type("bag pack").contains("1 × bw3200 135."),
                shooting.answer().text());
    }

    @Test
    void whatIsNotUsedGoesBackAndOneLineIsOneStep() {
        Shooting shooting = stocked("plan 16:30 Portraits wants 70", "bag pack");
        String before = fridge(shooting);
        assertEquals("Undone: packing the bag.", shooting.type("undo"));
        assertEquals("[]", bag(shooting));
        shooting.type("redo");
        assertEquals(before, fridge(shooting));
        shooting.type("load cn400");
        assertEquals(
                "Back to the fridge: 2 × cn400 120, expires 2026-12; 2 × cn400 120, batch 4711, expires 2027-03.",
                shooting.type("bag unpack"));
        assertEquals("[]", bag(shooting));
        assertTrue(
                fridge(shooting).contains("cn400 120, expires 2026-12=2, cn400 120, batch 4711, expires 2027-03=10"));
        assertEquals("Undone: unpacking the bag.", shooting.type("undo"));
        shooting.type("bag unpack 1 cn400 120 batch 4711");
        assertTrue(bag(shooting).contains("batch 4711, expires 2027-03=1"), bag(shooting));
    }

    @Test
    void soManyOfOneFilmArePackedWithoutAPlan() {
        Shooting shooting = stocked();
        assertTrue(shooting.type("bag pack 1 cn400 120 batch 4711").contains("1 × cn400 120, batch 4711"));
        assertTrue(shooting.type("bag pack 2 cn400 120").contains("2 × cn400 120, expires 2025-01"));
        assertTrue(shooting.type("fridge take 1 cn400 120").endsWith("it holds 11 rolls of cn400 120."));
    }

    @Test
    void theFridgeOutlivesTheDay() {
        Shooting shooting = stocked().later(24 * 60);
        shooting.type("cam 35");
        assertEquals(3, shooting.situation().day().fridge().filled().size());
        assertFalse(shooting.situation().day().bag().kept());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            bag pack                      | no fridge is kept
            fridge add cn400 120          | how many rolls? fridge add 10 cn400 120
            fridge tkae 1 cn400 120       | did you mean take
            fridge batch 4711             | a batch alone
            fridge take 1 cn400 120       | the fridge holds 0 rolls
            bag unpack                    | the bag is empty
            """)
    void whatDoesNotFitIsRefused(String line, String why) {
        String said = Shooting.of().refused(line);
        assertTrue(said.contains(why), said);
    }

    @Test
    void withoutAPlanPackingAsksForOne() {
        assertTrue(stocked().refused("bag pack").contains("no moment of the plan says how many frames it wants"));
        assertTrue(stocked().refused("bag pack 20 cn400 120").contains("the fridge holds 15 rolls"));
    }
}
