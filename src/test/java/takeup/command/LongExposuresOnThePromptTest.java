package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import takeup.advice.ExposureInHand;
import takeup.kit.Warning;
import takeup.roll.ExposureResult;
import takeup.roll.FrameWarnings;
import takeup.roll.Roll;

/** What is said of long exposures as they are typed and logged. */
class LongExposuresOnThePromptTest {
    private static Shooting evening(String... lines) {
        Shooting shooting = Shooting.of("cam 645", "load bw100", "tripod on");
        for (String line : lines) {
            shooting.type(line);
        }
        return shooting;
    }

    private static List<String> reciprocity(Shooting shooting) {
        return shooting.answer().warnings().stream()
                .filter(it -> it.code() == Warning.Code.RECIPROCITY)
                .map(Warning::text)
                .toList();
    }

    /** EV 8 at EI 100: f/16 asks for 1 s and by the table gets 2 s, developed 10 % less; f/22 for 2 s, 5.6 s, 13 %. */
    @Test
    void theDevelopmentIsSaidOnceARollAsAdviceForAllOfIt() {
        Shooting shooting = evening("m ev8", "8 1/4", "16 2s");
        assertEquals(
                List.of("metered 1s, this film needs 2s; generic: yours may differ by up to 2 stops; give its maker's "
                        + "figures; if the whole roll is exposed so long, develop 10 % less"),
                reciprocity(shooting));
        shooting.type("22 b5.5s");
        assertEquals(1, reciprocity(shooting).size());
        assertTrue(reciprocity(shooting).get(0).endsWith("give its maker's figures"));
        assertEquals(
                1,
                FrameWarnings.of(shooting.situation().rollInHand().orElseThrow()).stream()
                        .flatMap(List::stream)
                        .filter(it -> it.text().contains("develop"))
                        .count());
        assertTrue(evening("m ev8", "hold f16", "m").answer().warnings().stream()
                .noneMatch(it -> it.text().contains("develop")));
    }

    /** EV -8 at EI 100: f/2.8 (3) is metered at 2^11 = 2048 s, past ten times the 100 s of the table. */
    @Test
    void farPastTheTableNothingIsSetAndTheAdviceIsToBracket() {
        Shooting shooting = evening("set 4 125");
        String text = shooting.type("m ev-8");
        assertTrue(text.contains("the one in hand stays"), text);
        assertTrue(
                shooting.answer().warnings().stream()
                        .anyMatch(it -> it.code() == Warning.Code.RECIPROCITY_BEYOND
                                && it.text().contains("bracket")),
                () -> shooting.answer().warnings().toString());
        String why = shooting.type("why");
        assertTrue(why.contains("no time is known") && !why.contains("nearest"), why);
    }

    /** EV -9 at f/16: a film of figures without an end would get days, which nobody waits for. */
    @Test
    void nothingOverAnHourIsOfferedInstead() {
        String text = evening("hold f16").type("m ev-9");
        assertTrue(text.contains("stays") && !text.contains("another stock serves"), text);
    }

    /**
     * EV -8 at EI 100, f/2.8: 2048 s metered, far past the table of 100 s. 1 h is past it too, and a figure would be
     * made up; of 1/8 s it is known what it is worth: log2(2048 x 8) = 14 under. In light of EV 8 an hour is grossly
     * over, whatever the film makes of it.
     */
    @Test
    void aFrameFarPastTheTableBearsNoFigure() {
        Shooting shooting = evening("set 4 125", "m ev-8", "2.8 b1h");
        assertTrue(shooting.error().isEmpty(), shooting.answer().text());
        assertFalse(
                shooting.answer().text().contains("under"), shooting.answer().text());
        Roll roll = shooting.situation().rollInHand().orElseThrow();
        ExposureResult result = ExposureResult.of(roll, roll.newest().orElseThrow());
        assertEquals(2048, result.meteredSeconds().orElseThrow(), 1e-6);
        assertTrue(result.correctedSeconds().isEmpty());
        assertTrue(result.errorStops().isEmpty());
        assertTrue(result.overBoxStops().isEmpty());
        shooting.type("set 2.8 8");
        assertEquals(-14, ExposureInHand.error(shooting.situation()).orElseThrow(), 0.01);
        shooting.type("m ev8");
        shooting.type("set 2.8 b1h");
        assertTrue(ExposureInHand.error(shooting.situation()).orElseThrow() > 5);
    }
}
