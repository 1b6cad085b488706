package takeup.scans;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Probabilities as logarithms: a half and a quarter are three quarters, however small both are made. */
class LogSumTest {
    @Test
    void addsProbabilitiesThatAreHeldAsLogarithms() {
        assertEquals(Math.log(0.75), LogSum.add(Math.log(0.5), Math.log(0.25)), 1e-12);
        assertEquals(Math.log(1), LogSum.of(DoubleStream.of(Math.log(0.5), Math.log(0.25), Math.log(0.25))), 1e-12);
    }

    /** e to the power of -2000 is 0 as a plain number. */
    @Test
    void addsWhatIsTooSmallForAPlainNumber() {
        assertEquals(-2000 + Math.log(2), LogSum.add(-2000, -2000), 1e-9);
    }

    @Test
    void whatNeverHappensAddsNothing() {
        assertEquals(Math.log(0.5), LogSum.add(LogSum.NEVER, Math.log(0.5)), 1e-12);
        assertEquals(LogSum.NEVER, LogSum.add(LogSum.NEVER, LogSum.NEVER));
        assertEquals(LogSum.NEVER, LogSum.log(0));
        assertTrue(LogSum.of(DoubleStream.empty()) < LogSum.NEVER);
    }
}
