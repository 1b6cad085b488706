package takeup.scans;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which scans of a folder came of one film, by names and shapes. */
class ScanGroupsTest {
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            871_1 871_2 872_1 872_2,          871_1 871_2 | 872_1 872_2
            871_1 871_2 871_3,                871_1 871_2 871_3
            crew1-a crew2-a crew1-b crew2-b,  crew1-a crew2-a | crew1-b crew2-b
            1-871 2-871 3-871,                1-871 2-871 3-871
            bow stroke cox,                   bow stroke cox
            one/01 one/02 two/01,             one/01 one/02 | two/01
            """)
    void theNumberThatRunsOnIsTheCountAndTheRestOfTheNameIsTheFilm(String names, String groups) {
        check(groups, Arrays.stream(names.split(" ")).map(it -> scan(it, 3000)).toList());
    }

    @Test
    void anotherShapeFromSomeScanOnIsAnotherCamera() {
        List<Scan> scans = new ArrayList<>(List.of(scan("1", 3000), scan("2", 3000), scan("3", 3000)));
        scans.addAll(List.of(scan("4", 2000), scan("5", 2000), scan("6", 2000)));
        check("1 2 3 | 4 5 6", scans);
    }

    @Test
    void aSingleScanThatWasCroppedIsNoOtherCamera() {
        check(
                "1 2 3 4 5 6",
                List.of(
                        scan("1", 3000),
                        scan("2", 3000),
                        scan("3", 3000),
                        scan("4", 2400),
                        scan("5", 3000),
                        scan("6", 3000)));
    }

    @Test
    void anUprightPictureHasTheShapeOfOneThatLies() {
        check(
                "1 2 3 4",
                List.of(
                        scan("1", 3000),
                        scan("2", 3000),
                        new Scan("3", 2000, 3000, TONE, Optional.empty()),
                        scan("4", 3000)));
    }

    private static final Tone TONE = new Tone(0.5, 0.2, false);

    private static Scan scan(String name, int width) {
        return new Scan(name, width, 2000, TONE, Optional.empty());
    }

    private static void check(String groups, List<Scan> scans) {
        assertEquals(
                groups,
                String.join(
                        " | ",
                        ScanGroups.of(scans).stream()
                                .map(group -> String.join(
                                        " ", group.stream().map(Scan::name).toList()))
                                .toList()));
    }
}
