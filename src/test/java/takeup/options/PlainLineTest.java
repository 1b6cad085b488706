package takeup.options;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which command lines are read by hand; that they answer as the others do is shown by the tests of each command. */
class PlainLineTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "rolls",
                "rolls --json",
                "rolls --data ./here",
                "--data /here rolls --json",
                "--data=here roll r7 --json",
                "roll R0001",
                "frames --json",
                "paths --data=/tmp/a",
                "check",
                "day-end --json",
                "keys --json",
                "stock",
                "stock bw400 --json",
                "camera 645",
                "line",
                "line --json --data=/tmp/a",
                "review",
                "review --json",
                "order",
                "order list --json",
                "find bw400 f2.8 1/125 since 2026-05"
            })
    void isReadByHand(String line) {
        assertEquals(true, PlainLine.of(line.split(" ")).isPresent(), line);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "rolls --jsn",
                "rolls --json --json",
                "--json rolls",
                "rolls here",
                "rolls --data",
                "rolls --data --json",
                "--data keys rolls",
                "rolls --data=",
                "rolls --data a --data b",
                "rolls --help",
                "rolls -h",
                "roll",
                "roll 1 2",
                "roll --csv 1",
                "roll -1",
                "paths --json",
                "check backup",
                "keys --data here",
                "frames --partition x",
                "day-end 1-3",
                "line --clock 2026-09-12T15:00+02:00",
                "order --json",
                "order new",
                "order list r7",
                "review --rate",
                "stock new",
                "camera new --data here",
                "stock bw400 cn400",
                "find",
                "find -x",
                "find @words",
                "rolls f2.8",
                "help",
                "--ascii rolls"
            })
    void isLeftToTheOthers(String line) {
        assertEquals(false, PlainLine.of(line.split(" ")).isPresent(), line);
    }
}
