package takeup.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.exposure.Light;
import takeup.handoff.Rolls;
import takeup.roll.Exposure;
import takeup.roll.Frame;
import takeup.roll.Roll;

/** What a judged frame has in common with others: regatta day on 400 film rated 200. */
class JudgedFrameTest {
    /**
     * Wilson's bounds for 1 of 20: (0.05 + 0.0960365 ± 1.959964 sqrt(0.05 * 0.95 / 20 + 0.00240091)) / 1.192073, so
     * 0.89 and 23.6 %.
     */
    @Test
    void theShareOfThinFramesHasARange() {
        assertEquals("1 to 24 %", new VerdictCounts.ByVerdict(1, 16, 3).thinShare());
    }

    /** ANSI exposure guide as tabulated (liquisearch.com, "Exposure value"). */
    @ParameterizedTest(name = "EV {0} is {1}")
    @CsvSource({"15, sun", "13, sun", "12, shade", "9, shade", "7, indoors"})
    void theKindOfLightIsThatOfThePrintedGuide(double ev100, String light) {
        assertEquals(light, frame(Rolls.incident(ev100, "15:12:00")).light());
    }

    /**
     * EV 11 at ISO 100 is f/4 at 1/125 s (11 stops by the table of EV 100); for the box speed of 400 that is 2 stops
     * over.
     */
    @Test
    void theLogSaysHowFarAboveBoxSpeedTheFrameIs() {
        JudgedFrame frame = frame(Rolls.incident(11, "15:12:00"));
        assertEquals(20, frame.overTenths(), 1);
        assertEquals("cn400 rated 200", frame.name(JudgedFrame.Factor.RATING));
        assertEquals("645", frame.name(JudgedFrame.Factor.BODY));
        assertEquals("645 80", frame.name(JudgedFrame.Factor.LENS));
        assertEquals("incident", frame.name(JudgedFrame.Factor.METHOD));
    }

    @Test
    void nothingCanBeLearntFromAFrameOfUnknownExposure() {
        Roll roll =
                Rolls.loaded().frame(1, Frame.Kind.UNLOGGED, Exposure.UNKNOWN).roll();
        assertEquals(Optional.empty(), JudgedFrame.of(roll, roll.frames().get(0), Density.THIN));
    }

    @Test
    void aLineSaysAllOfItWhateverLettersAreInIt() {
        JudgedFrame seen = frame(Rolls.incident(11, "15:12:00"));
        assertEquals(seen, JudgedFrame.of(seen.line()));
        JudgedFrame odd = new JudgedFrame(
                new JudgedFrame.Rating("a\tb", 64.5),
                new JudgedFrame.Gear("c\nd", "\\t"),
                "",
                "é",
                "fine, 1+1",
                -12,
                new JudgedFrame.Latitude(0.5, 3),
                Density.DENSE);
        assertEquals(odd, JudgedFrame.of(odd.line()));
        assertThrows(IllegalArgumentException.class, () -> JudgedFrame.of(seen.line() + "\tmore"));
    }

    private static JudgedFrame frame(Light light) {
        Roll roll = Rolls.loaded()
                .frame(1, Frame.Kind.EXPOSED, Rolls.exposure("15:12:40", Rolls.set(4, 1 / 125.0), light))
                .roll();
        return JudgedFrame.of(roll, roll.frames().get(0), Density.GOOD).orElseThrow();
    }
}
