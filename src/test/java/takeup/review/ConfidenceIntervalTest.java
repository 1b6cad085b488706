package takeup.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples of the NIST/SEMATECH e-Handbook of Statistical Methods, with the figures that it prints. */
class ConfidenceIntervalTest {
    @Test
    void theMeanOfTheHeatFlowData() {
        // 1.3.5.2, ZARR13.DAT: N 195, mean 9.261460, standard deviation 0.022789; limits 9.258242 and 9.264679, t
        // 1.9723.
        ConfidenceInterval interval = ConfidenceInterval.mean(9.261460, 0.022789, 195, 0.95);
        assertEquals(9.258242, interval.low(), 2e-6);
        assertEquals(9.264679, interval.high(), 2e-6);
        assertEquals(1.9723, ConfidenceInterval.t(0.975, 194), 5e-5);
    }

    @Test
    void theDeviationOfTheGearDiameters() {
        // 1.3.5.8, GEAR.DAT: N 100, standard deviation 0.6278908E-02; critical values 73.361 and 128.422 at 99 degrees
        // of freedom;
        // 0.1 is no deviation of these gears (test statistic 0.3903).
        assertEquals(73.361, ConfidenceInterval.chiSquared(0.025, 99), 5e-4);
        assertEquals(128.422, ConfidenceInterval.chiSquared(0.975, 99), 5e-4);
        assertEquals(0.3903, 99 * Math.pow(0.006278908 / 0.1, 2), 5e-5);
        ConfidenceInterval interval = ConfidenceInterval.deviation(0.006278908, 100, 0.95);
        assertEquals(Math.sqrt(99 / 128.422) * 0.006278908, interval.low(), 1e-8);
        assertTrue(interval.high() < 0.1);
    }

    /** 1.3.6.7.2 to 1.3.6.7.4, tables of critical values. */
    @ParameterizedTest(name = "{0} with {1} degrees of freedom: {2}")
    @CsvSource(textBlock = """
        t,   0.975,  10,   2.228
        t,   0.95,    5,   2.015
        chi, 0.95,    1,   3.841
        chi, 0.99,   10,  23.209
        """)
    void theTablesOfCriticalValues(String distribution, double share, double freedom, double printed) {
        assertEquals(
                printed,
                distribution.equals("t")
                        ? ConfidenceInterval.t(share, freedom)
                        : ConfidenceInterval.chiSquared(share, freedom),
                5e-4);
    }

    @Test
    void twoCeramicBatchesScatterAlike() {
        // 1.3.5.9, JAHANMI2.DAT: deviations 65.54909 and 61.85425, N 240 each; F 1.123037, critical values 0.7756 and
        // 1.2894.
        assertEquals(1.123037, Math.pow(65.54909 / 61.85425, 2), 5e-6);
        assertEquals(0.7756, ConfidenceInterval.f(0.025, 239, 239), 5e-5);
        assertEquals(1.2894, ConfidenceInterval.f(0.975, 239, 239), 5e-5);
    }

    @Test
    void aShareByWilsonsMethod() {
        // By hand for 4 of 20 with z = 1.959964: (0.2 + 0.0960365) / 1.192073 = 0.248338; the reach is
        // 1.959964 sqrt(0.008 + 0.00240091) / 1.192073 = 0.167679; so 0.080658 to 0.416017.
        ConfidenceInterval interval = ConfidenceInterval.share(4, 20, 0.95);
        assertEquals(0.080658, interval.low(), 5e-6);
        assertEquals(0.416017, interval.high(), 5e-6);
        assertEquals(0, ConfidenceInterval.share(0, 9, 0.95).low(), 1e-12);
        assertEquals(1, ConfidenceInterval.share(9, 9, 0.95).high(), 1e-12);
    }

    @Test
    void theNewSpeedIsTheNearestThirdOfAStop() {
        assertEquals(200, newIndex(400, -1));
        assertEquals(250, newIndex(400, -0.6));
        assertEquals(12, newIndex(50, -2));
        assertEquals(1250, newIndex(3200, -1.3));
        assertEquals(800, newIndex(400, 1));
    }

    private static double newIndex(double index, double stops) {
        return new Finding(
                        Finding.Kind.RATING,
                        JudgedFrame.Factor.RATING,
                        "bw400",
                        Optional.of(new JudgedFrame.Rating("bw400", index)),
                        20,
                        new ConfidenceInterval(stops, stops, stops),
                        List.of())
                .newIndex()
                .orElseThrow();
    }
}
