package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers without a sign, read off the rings in hand (reference-card.md). */
class BareNumbersTest {
    @ParameterizedTest(name = "on {0}, {1} is {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "645  | 4 125    | f/4 1/125",
                "645  | 2.8 8    | f/2.8 1/8",
                "645  | 8 8      | f/8 1/8",
                "645  | 125 8    | f/8 1/125",
                "645  | 2 4      | f/4 1/2",
                "645  | 1 5.6    | f/5.6 1s",
                "645  | 5.6 1    | f/5.6 1s",
                "645  | 5.6 2    | f/5.6 1/2",
                "645  | f8 2     | f/8 1/2",
                "645  | f8 15    | f/8 1/15",
                "645  | 8 1/60   | f/8 1/60",
                "645  | 8        | f/8 .",
                "645  | 4        | f/4 .",
                "645  | 2        | . 1/2",
                "645  | 125      | . 1/125",
                "35   | 2 4      | f/2 1/4",
                "35   | 4 2      | f/4 1/2",
                "35af | 8 0.8    | f/8 0.8s",
                "35af | 0.8 8    | f/8 0.8s",
                "35af | 8 0,3    | f/8 0.3s",
                "35af | 13 13    | f/13 1/13",
                "66   | 8 25     | f/8 1/25",
                "66   | 3.5 5    | f/3.5 1/5"
            })
    void bareNumbersAreReadOffTheRings(String camera, String line, String pair) {
        assertEquals(pair, Shooting.of("cam " + camera, "load bw400", line).pair());
        assertEquals(
                pair, Shooting.of("cam " + camera, "load bw400", "set " + line).pair());
        assertEquals(
                pair,
                Shooting.pair(Shooting.of("cam " + camera, "load bw400", ".", "fix 1 " + line)
                        .frame()));
    }

    // The nearest marks by the rings of the 645 profile: half stops from f/2.8, full stops to 1/1000.
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "8 11    | nearest 8",
                "8 16    | nearest 15",
                "7 125   | nearest 6.7",
                "8 100   | nearest 125",
                "100     | nearest 125",
                "0.5     | nearest 2",
                "8 0.5   | 0.5s",
                "f8 11   | nearest 8",
                "500 125 | nearest aperture is 22",
                "4 125 3 | nearest marks: f/2.8",
                "4,125   | nearest 4",
                "4 5 125 | 125 is one too many",
                "f4 8 125 | 125 is one too many",
                "8.3 125 | nearest 8",
                "0 125   | nearest",
                "32 125  | f32"
            })
    void aNumberThatIsNoMarkIsRefusedWithTheNearest(String line, String nearest) {
        Shooting shooting = Shooting.medium("4 125");
        assertTrue(shooting.refused(line).contains(nearest), shooting.refused(line));
        assertTrue(shooting.refused("set " + line).contains(nearest), line);
        assertTrue(shooting.refused("fix 1 " + line).contains(nearest), line);
    }

    @Test
    void halfASecondOnAFullStopDialIsAskedForWithItsUnit() {
        assertTrue(Shooting.medium().refused("0.5").endsWith("0.5s"));
    }

    @ParameterizedTest
    @CsvSource({
        "hold 8,f/8",
        "hold f2.8,f/2.8",
        "hold f 8,f/8",
        "hold 125,1/125",
        "hold 1/250,1/250",
        "hold 2s,2s",
        "hold 2,1/2",
        "hold 5.6.3,f/5.6+3/10"
    })
    void holdTakesOneOfTheTwo(String line, String held) {
        assertEquals(held, Shooting.medium(line).inHand().hold().orElseThrow().toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "hold 8 125",
                "hold",
                "hold 7",
                "hold 2m",
                "hold 80mm",
                "hold on",
                "hold f8 1/125",
                "hold x5",
                "hold @400"
            })
    void holdTakesNoPairAndNothingElse(String line) {
        Shooting.medium("hold f4").refused(line);
    }

    @Test
    void onACameraThatSetsItselfABareNumberMeansNothingButASignDoes() {
        Shooting shooting = Shooting.of("cam compact", "load cn400");
        assertTrue(shooting.refused("8").contains("automatic camera"));
        shooting.type("f8 1/125");
        assertEquals("f/8 1/125", Shooting.pair(shooting.frame()));
        shooting.type("x2");
        assertEquals(3, shooting.roll().frames().size());
    }

    @Test
    void whatLiesBeyondTheRingsIsLoggedWithAWarning() {
        Shooting shooting = Shooting.medium("f32 1/125");
        assertEquals("out-of-range", shooting.warnings().replace(" no-light", ""));
        assertTrue(Shooting.medium("8 1/2000").warnings().contains("out-of-range"));
        assertTrue(Shooting.medium("8 125").warnings().equals("no-light"));
    }
}
