package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.history.ShootState;

/**
 * Why a setting was chosen, and what would fit where none does. 80 mm on 6x4.5 is held down to 1/50; the dial ends at
 * 1/1000.
 */
class WhyCommandTest {
    private static String why(String... lines) {
        return Shooting.medium(lines).type("why");
    }

    @Test
    void thePairThatTheMeterShowedIsTheReasonNotThatItIsInHandSince() {
        // f/4.8 asks for 2^-7.5 s and f/6.7 for 2^-6.5 s, each halfway: negative film takes the longer.
        assertEquals(
                "f/5.6 1/125: the meter showed this pair. Beside it f/4.8 1/125 is 0.5 over, f/6.7 1/60 is 0.5 over.",
                why("m 5.6 125"));
    }

    @Test
    void withNothingInHandTheHandAndTheMiddleOfTheLensDecide() {
        // EV 9 is EV 10 at EI 200: f/2.8 1/125 and f/4 1/64 can be held; the middle of f/2.8 to f/22 is f/8.
        String why = why("m ev9");
        assertTrue(
                why.startsWith("f/4 1/60: of the pairs that come as near to the light it is nearest to the middle"),
                why);
        assertTrue(why.contains("f/4.8 1/30 is 0.5 over"), why);
    }

    @Test
    void whatWasInHandBeforeTheReadingIsTheReason() {
        // EV 12 at EI 200 is right at f/16 1/32 and f/11 1/64; from f/16 1/125 both are two stops away.
        String why = why("tripod on", "set 16 125", "m ev12");
        assertTrue(why.startsWith("f/16 1/30: f/16 was in hand, and no other pair comes nearer to the light"), why);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hold f2.8 | f/2.8 1/500: f/2.8 is held",
                "hold 1/250 | at this aperture the light asks for nearest to 1/250, which is held"
            })
    void whatIsHeldIsTheReason(String hold, String reason) {
        String why = why(hold, "m 5.6 125");
        assertTrue(why.contains(reason) && why.contains("does not keep what is held"), why);
    }

    @Test
    void aTieLeansToLightOnNegativeAndAwayFromItOnReversal() {
        // EV 11.5 at EI 100, f/5.6: 2^-6.5 s, halfway between 1/64 and 1/128. Held, as f/4.8 1/125 would be right.
        assertTrue(Shooting.of("cam 645", "load cn400 @100", "hold f5.6", "m ev11.5")
                .type("why")
                .startsWith("f/5.6 1/60: f/5.6 is held; halfway between 1/125 and 1/60 negative film"));
        assertTrue(Shooting.of("cam 645", "load cr100 @100", "hold f5.6", "m ev11.5")
                .type("why")
                .startsWith("f/5.6 1/125: f/5.6 is held; halfway between 1/125 and 1/60 reversal film"));
    }

    @Test
    void inTooMuchLightAGreyFilterIsNamedWithWhatItBrings() {
        // EV 20 is EV 21 at EI 200: f/5.6 asks for 2^-16 s, six stops past 1/1024.
        String why = why("set 5.6", "m ev20");
        assertTrue(why.contains("nd64 brings f/5.6 1/1000"), why);
        assertFalse(why.contains("tripod"), why);
        // A held f/2.8 at EV 16: 2^-13 s, three stops past it.
        assertTrue(why("hold f2.8", "m ev15").contains("nd8 brings f/2.8 1/1000"));
    }

    // f/2.8 asks for 2^(3 - EV at EI 200); the longest held time is 1/64.
    @ParameterizedTest(name = "EV {0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "7 | EI 400: no push",
                "6 | EI 800: push 1, or 1 stop thin",
                "5 | EI 1600: push 2, or 2 stops thin",
                "4 | EI 3200: push 3, or 3 stops thin",
                "3 | EI 6400: 4 stops thin, further than a push reaches"
            })
    void inTooLittleLightThePushIsNamedWithItsPrice(String ev, String price) {
        String why = why("m ev" + ev);
        assertTrue(why.contains("for f/2.8 1/60 the whole roll would need " + price), why);
        assertTrue(why.contains("a tripod brings f/2.8"), why);
    }

    @Test
    void anotherStockOfTheRightSizeIsNamedWithItsReason() {
        // bw3200 is four stops faster than EI 200; at EV 6 it can be held, and 35 mm film does not go in this camera.
        String why = why("m ev6");
        assertTrue(why.contains("another stock serves: "), why);
        assertFalse(why.contains("cn400 at"), why);
    }

    @Test
    void whereSomethingServesNoRemedyIsOffered() {
        assertFalse(why("m 5.6 125").contains("What would fit"));
        assertFalse(why("m ev5", "tripod on").contains("What would fit"));
    }

    @Test
    void withoutLightFilmOrChoiceItIsRefused() {
        Shooting.medium().refused("why");
        Shooting.of("cam 645").refused("why");
        Shooting.of("cam compact", "load cn400", "m ev10").refused("why");
        Shooting.medium("m ev10").refused("why not");
    }

    @Test
    void itChangesNothing() {
        Shooting shooting = Shooting.medium("m ev10");
        ShootState before = shooting.situation();
        shooting.type("why");
        assertEquals(before, shooting.situation());
    }

    // cn400 at EI 200 lies 1 over box, and in the highlights colour negative tolerates 4. EV 9 is EV 10 there: f/4 1/64
    // is
    // the best that can be held. With
    // nothing in hand EV 11, EV 12 there, is f/8 1/64.
    @Test
    void twoReadingsSayWhatTheShadowsAskForAndWhatTheHighlightsGet() {
        String text = Shooting.medium().type("m ev 9 13");
        assertTrue(
                text.contains("Shadows at EV 9.0 ask for f/4 1/60; the highlights, 4 stops up, then get 5 stops over "
                        + "box speed, and this film tolerates 4 stops: 1 stop too much."),
                text);
        String two = Shooting.medium().type("m 5.6 125 and 8 125");
        assertTrue(
                two.endsWith("Shadows at EV 11.0 ask for f/8 1/60; the highlights, 1 stop up, then get 2 stops "
                        + "over box speed, and this film tolerates 4 stops."),
                two);
        assertFalse(Shooting.medium().type("m ev 9").contains("Shadows"));
    }

    // 80 mm at f/2.8 and 3 m on 6x4.5: near 2.83, far 3.19 (the textbook formula of depth of field).
    @Test
    void withADistanceTheAnswerSaysWhatIsSharp() {
        assertTrue(Shooting.medium("set 3m", "hold f2.8").type("m ev10").contains(" Sharp from 2.83 m to 3.19 m."));
        assertTrue(Shooting.medium("set 60m", "hold f2.8").type("m ev10").contains(" m to infinity."));
        assertFalse(Shooting.medium("hold f2.8").type("m ev10").contains("Sharp"));
    }
}
