package takeup.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import takeup.command.Shooting;
import takeup.report.MomentText;

/**
 * The one recommendation before a key moment, on hand-made days with the derivation beside each. The day begins at
 * 15:00.
 */
class NextMomentTest {
    private static NextMoment next(Shooting shooting) {
        return NextMoment.of(shooting.situation().asOf(shooting.now()), shooting.now())
                .orElseThrow();
    }

    /**
     * 12 frames at 15:00 leave 4 of 16; a roll of 24.80 has 16 frames, so 4 of them are 4/16 x 24.80 = 6.20. All at one
     * time, so no pace is known.
     */
    private static Shooting fourLeft() {
        return Shooting.of(
                "cam 645",
                "bag add 5 cn400 120 price 24.80",
                "load cn400",
                "m 5.6 125",
                "plan 15:30 Prize-giving wants 12",
                "4 250 x12");
    }

    @Test
    void moreThanAQuarterOfAnHourBeforeNothingIsAdvised() {
        assertEquals(
                "15:30 Prize-giving in 16 min, wants 12: 645 back 1 has 4 left",
                MomentText.line(next(fourLeft().later(14))));
        assertEquals(NextMoment.Advice.NOTHING, next(fourLeft().later(14)).advice());
        assertEquals(NextMoment.Advice.CHANGE, next(fourLeft().later(15)).advice());
    }

    @Test
    void withTooFewFramesLeftItSaysChangeNowAndWhatThatCosts() {
        assertEquals(
                "change now: 4 left, Prize-giving in 6 min wants 12; 4 frames = 6.20",
                MomentText.line(next(fourLeft().later(24))));
    }

    @Test
    void withoutAPriceNoMoneyIsGuessed() {
        Shooting shooting = Shooting.medium("plan 15:06 Prize-giving wants 12", "4 250 x12");
        assertEquals("change now: 4 left, Prize-giving in 6 min wants 12", MomentText.line(next(shooting)));
    }

    /**
     * At 15:20: 12 frames in 60 s behind the first, which is 12 a minute; 3 left take a quarter of a minute, a change 3
     * minutes, together 3.25. With 10 minutes to go there is time to use them up; with 3 there is not. Changed by 15:30
     * - 3 min = 15:27.
     */
    @Test
    void ownPaceSaysWhetherTheRestCanBeUsedUpFirst() {
        Shooting shooting = Shooting.medium("plan 15:30 Prize-giving wants 12").later(19);
        shooting.type("4 250");
        shooting.later(1).type("4 250 x12");
        assertEquals(
                "use up the 3 left and change by 15:27: Prize-giving in 10 min wants 12",
                MomentText.line(next(shooting)));
        assertEquals(NextMoment.Advice.USE_UP, next(shooting.later(6)).advice(), "4 min to go");
        assertEquals("change now: 3 left, Prize-giving in 3 min wants 12", MomentText.line(next(shooting.later(1))));
    }

    /**
     * 4 frames in the minute behind the first: 4 a minute. 11 left, 10 wanted: 1 to spare, gone in a quarter of a
     * minute, with 9 minutes to go.
     */
    @Test
    void withHardlyEnoughItSaysWhatToKeepAndWarnsOfNothing() {
        Shooting shooting = Shooting.medium("plan 15:10 Prize-giving wants 10", "4 250");
        shooting.later(1).type("4 250 x4");
        assertEquals(NextMoment.Advice.NOTHING, next(shooting).advice(), "4 behind another are too few for a pace");
        shooting.type("undo");
        shooting.type("4 250 x5");
        assertEquals("keep 10 for Prize-giving: 0 to spare", MomentText.line(next(shooting)));
        assertFalse(next(shooting).isUrgent());
    }

    @Test
    void anotherBackWithFramesEnoughGoesBeforeAChange() {
        Shooting shooting = Shooting.of(
                "cam 35",
                "load bw400",
                "cam 645 2",
                "load cn400",
                "back 1",
                "load cn400",
                "4 250 x12",
                "plan 15:06 Prize-giving wants 12");
        assertEquals(
                "take 645 back 2: 16 left, here 4; Prize-giving in 6 min wants 12", MomentText.line(next(shooting)));
        assertEquals(
                NextMoment.Advice.CHANGE,
                next(Shooting.of(
                                "cam 645 2",
                                "load cn400",
                                "back 1",
                                "load cn400",
                                "4 250 x12",
                                "plan 15:06 Prize-giving wants 12 cam 645 back 1"))
                        .advice(),
                "the plan wants this back");
        assertEquals(
                "take 35: 36 left, here 4; Prize-giving in 6 min wants 20",
                MomentText.line(next(Shooting.of(
                        "cam 35",
                        "load bw400",
                        "cam 645",
                        "load cn400",
                        "4 250 x12",
                        "plan 15:06 Prize-giving wants 20"))));
        assertEquals(
                NextMoment.Advice.CHANGE,
                next(Shooting.of(
                                "cam 35",
                                "load bw400",
                                "cam 645",
                                "load cn400",
                                "4 250 x12",
                                "plan 15:06 Prize-giving wants 12 cam 645"))
                        .advice(),
                "the plan wants this camera");
    }

    @Test
    void anEmptyCameraIsLoadedFirst() {
        assertEquals(
                "load now: no film in 645 back 1, Prize-giving in 6 min wants 12",
                MomentText.line(next(Shooting.of("cam 645", "plan 15:06 Prize-giving wants 12"))));
        assertEquals(
                "load now: no film in 645 back 1, Prize-giving in 6 min wants 12; the bag has no film for it",
                MomentText.line(
                        next(Shooting.of("cam 645", "bag add 2 bw400 135", "plan 15:06 Prize-giving wants 12"))));
        assertEquals(
                "load now: no film in 35, Start in 6 min",
                MomentText.line(next(Shooting.of("cam 645", "plan 15:06 Start cam 35"))));
    }

    @Test
    void aMomentThatWantsMoreThanARollHoldsAsksForTheNextOneToBeReady() {
        assertEquals(
                "have the next roll ready: Final in 6 min wants 20, a roll holds 16",
                MomentText.line(next(Shooting.medium("plan 15:06 Final wants 20"))));
    }

    @Test
    void onceItHasBegunTheCountdownAloneIsSaid() {
        Shooting shooting = fourLeft().later(30);
        assertEquals("15:30 Prize-giving now, wants 12: 645 back 1 has 4 left", MomentText.line(next(shooting)));
        assertEquals(
                "15:30 Prize-giving now, since 3 min, wants 12: 645 back 1 has 4 left",
                MomentText.line(next(shooting.later(3))));
        assertTrue(NextMoment.of(shooting.situation(), shooting.later(12).now()).isEmpty());
    }

    /**
     * EV 7 through the 80 mm f/2.8 of the 645 reflex. Hand-held limit: 43.27 mm over the diagonal 69.7 mm of 6x4.5 and
     * 80 mm give 1/50 s, so 1/60 serves. f/2.8 at 1/64 s is EV 3 + 6 = 9 at the film's speed: from EV 7 at ISO 100 that
     * takes 2 stops, EI 400. cn400 at EI 200 would need 1/30, cn800 at EI 400 is just right, bw3200 faster than need
     * be.
     */
    @Test
    void theLightThatIsComingChoosesTheSlowestFilmThatServes() {
        Shooting shooting = Shooting.of(
                "cam 645",
                "bag add 2 cn400 120",
                "bag add 2 bw3200 120",
                "bag add 2 cn800 120",
                "load cn400",
                "plan 15:06 Dinner wants 12 light ev7");
        assertEquals(
                "cn400 EI 200 is too slow for EV 7, load cn800; Dinner in 6 min wants 12",
                MomentText.line(next(shooting)));
        shooting.type("4 125 x12");
        assertEquals(
                "change now, load cn800 for EV 7: 4 left, Dinner in 6 min wants 12", MomentText.line(next(shooting)));
        shooting.type("unload yes");
        assertEquals(
                "load cn800 for EV 7 now: no film in 645 back 1, Dinner in 6 min wants 12",
                MomentText.line(next(shooting)));
        shooting.type("load cn800");
        assertEquals(NextMoment.Advice.NOTHING, next(shooting).advice());
    }

    @Test
    void filmThatServesStaysWhatItIs() {
        Shooting shooting = Shooting.of(
                "cam 645",
                "bag add 2 cn400 120",
                "bag add 2 cn160 120",
                "load cn400",
                "plan 15:06 Prize-giving wants 12 light ev12",
                "4 250 x12");
        assertEquals(
                "change now: 4 left, Prize-giving in 6 min wants 12",
                MomentText.line(next(shooting)),
                "cn160 would serve too, but nobody changes what serves");
    }

    @Test
    void whereNothingIsFastEnoughTheFastestIsNamedAsThat() {
        Shooting shooting = Shooting.of(
                "cam 645", "bag add 2 cn160 120", "bag add 1 cn400 120", "plan 15:06 Fireworks wants 12 light ev-2");
        assertEquals(
                "load cn400 for EV -2, the fastest in the bag now: no film in 645 back 1, Fireworks in 6 min wants 12",
                MomentText.line(next(shooting)));
    }

    @Test
    void sayTellsIt() {
        assertTrue(fourLeft()
                .later(24)
                .type("say")
                .contains(" Plan: change now: 4 left, Prize-giving in 6 min wants 12; 4 frames = 6.20."));
        assertTrue(fourLeft()
                .type("say")
                .contains(" Plan: 15:30 Prize-giving in 30 min, wants 12: 645 back 1 has 4 left."));
    }

    // When it is said.

    @Test
    void itIsSaidOnceWhenItBecomesTrueAndThenStandsAsAWord() {
        Shooting shooting = fourLeft();
        assertEquals("frames-left", shooting.warnings());
        shooting.later(14).type("bias +1/3");
        assertEquals("", shooting.warnings(), "16 minutes before");
        shooting.later(1).type("bias 0");
        assertEquals("moment", shooting.warnings(), "15 minutes before");
        shooting.later(1).type("bias +1/3");
        assertEquals("", shooting.warnings());
        assertTrue(shooting.standing().contains("moment"));
        shooting.type("unload yes");
        assertFalse(shooting.warnings().contains("moment"), "it is being followed");
        shooting.type("load cn400");
        assertEquals("", shooting.warnings());
        assertFalse(shooting.standing().contains("moment"));
        shooting.type("4 250 x6");
        assertEquals("moment", shooting.warnings(), "10 left, 12 wanted: true again");
    }

    @Test
    void aLineThatWritesNothingSaysNothingSoThatTheNextOneDoes() {
        Shooting shooting = fourLeft().later(20);
        shooting.type("say");
        assertEquals("", shooting.warnings());
        shooting.type("bias +1/3");
        assertEquals("moment", shooting.warnings());
    }

    @Test
    void itCanBeSilenced() {
        Shooting shooting = fourLeft().later(14);
        shooting.type("quiet moment");
        shooting.later(3).type("bias +1/3");
        assertEquals("", shooting.warnings());
        assertFalse(shooting.standing().contains("moment"));
    }

    @Test
    void withoutAPlanNothingOfItIsSaid() {
        Shooting shooting = Shooting.medium("4 250 x12").later(20);
        shooting.type("bias +1/3");
        assertEquals("", shooting.warnings());
    }
}
