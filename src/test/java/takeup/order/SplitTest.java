package takeup.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which roll goes in which parcel. */
@Tag("slow")
class SplitTest {
    @Test
    void rollsThatHoldTheSameMomentTravelApart() {
        List<ExposedRoll> rolls = List.of(
                Days.roll("R0001").at("15:05").read(),
                Days.roll("R0002").at("15:06", "16:30").read(),
                Days.roll("R0003").at("16:40").read(),
                Days.roll("R0004").at("17:30").read());
        check(rolls, List.of("15:00-15:15 start", "16:30-16:45 prize-giving"), "[R0001, R0003] [R0002, R0004] []");
    }

    @Test
    void aChainOfSharedMomentsIsPartedAllTheWay() {
        List<ExposedRoll> rolls = new ArrayList<>();
        List<String> moments = new ArrayList<>();
        for (int at = 0; at < 20; at++) {
            rolls.add(Days.roll("R" + (1000 + at))
                    .at(String.format(Locale.ROOT, "%02d:30", at), String.format(Locale.ROOT, "%02d:30", at + 1))
                    .read());
            moments.add(String.format(Locale.ROOT, "%02d:25-%02d:35", at + 1, at + 1));
        }
        Split split = Split.byMoments(
                rolls,
                moments.stream()
                        .map(it -> MustHaveMoment.parse(it).orElseThrow())
                        .toList());
        assertEquals(
                rolls.stream()
                        .map(ExposedRoll::roll)
                        .filter(it -> it.charAt(4) % 2 == 0)
                        .toList(),
                split.first());
        assertEquals(List.of("20:25-20:35 is on R1019 alone"), split.remarks());
    }

    @Test
    void threeMomentsOfThreeRollsCannotAllBePartedAndTheOneThatIsNotIsTold() {
        List<ExposedRoll> rolls = List.of(
                Days.roll("R0001").at("10:00", "12:00").read(),
                Days.roll("R0002").at("10:00", "11:00").read(),
                Days.roll("R0003").at("11:00", "12:00").read());
        Split split = Split.byMoments(
                rolls,
                List.of(
                        MustHaveMoment.parse("10:00-10:01 a").orElseThrow(),
                        MustHaveMoment.parse("11:00-11:01 b").orElseThrow(),
                        MustHaveMoment.parse("12:00-12:01 c").orElseThrow()));
        assertEquals(1, split.remarks().size());
        assertTrue(
                split.remarks().get(0).contains(" stays in one parcel: R000"),
                split.remarks().get(0));
    }

    @Test
    void aMomentThatNoRollOrOneRollHoldsIsTold() {
        check(
                List.of(
                        Days.roll("R0001").at("15:05").read(),
                        Days.roll("R0002").read()),
                List.of("15:00-15:10 start", "19:00-19:10 dinner"),
                "[R0001] [R0002] [start is on R0001 alone, no roll holds a picture of dinner]");
    }

    @Test
    void withoutMomentsNeighboursTravelApartOrTheCamerasDo() {
        List<ExposedRoll> rolls = List.of(
                Days.roll("R0001").from("645 reflex").read(),
                Days.roll("R0002").from("35mm reflex").read(),
                Days.roll("R0003").from("645 reflex").read());
        assertEquals(new Split(List.of("R0001", "R0003"), List.of("R0002"), List.of()), Split.byNumber(rolls));
        assertEquals(new Split(List.of("R0001", "R0003"), List.of("R0002"), List.of()), Split.byBody(rolls));
        assertEquals(List.of(), Split.byBody(rolls.subList(0, 1)).second());
    }

    /** Against a plain count over all ways of parting ten rolls. */
    @Test
    void noOtherWayPartsMoreMoments() {
        for (long seed = 1; seed <= 60; seed++) {
            Random random = new Random(seed);
            List<MustHaveMoment> moments = List.of(moment(10), moment(11), moment(12), moment(13), moment(14));
            List<ExposedRoll> rolls = new ArrayList<>();
            for (int at = 0; at < 10; at++) {
                Days.Roll roll = Days.roll("R" + (1000 + at));
                for (int hour = 10; hour < 15; hour++) {
                    roll = random.nextInt(4) == 0 ? roll.at(hour + ":02") : roll;
                }
                rolls.add(roll.read());
            }
            int best = Integer.MAX_VALUE;
            for (int way = 0; way < 1 << 10; way++) {
                best = Math.min(best, together(rolls, moments, way));
            }
            Split split = Split.byMoments(rolls, moments);
            int chosen = 0;
            for (int at = 0; at < 10; at++) {
                chosen |= split.second().contains(rolls.get(at).roll()) ? 1 << at : 0;
            }
            assertEquals(best, together(rolls, moments, chosen), "seed " + seed);
            assertEquals(10, split.first().size() + split.second().size());
            assertEquals(
                    best,
                    split.remarks().stream()
                            .filter(it -> it.contains("stays in one parcel"))
                            .count(),
                    "seed " + seed);
        }
    }

    private static MustHaveMoment moment(int hour) {
        return MustHaveMoment.parse(hour + ":00-" + hour + ":10").orElseThrow();
    }

    private static int together(List<ExposedRoll> rolls, List<MustHaveMoment> moments, int way) {
        int count = 0;
        for (MustHaveMoment moment : moments) {
            int first = 0;
            int second = 0;
            for (int at = 0; at < rolls.size(); at++) {
                if (moment.isOn(rolls.get(at))) {
                    first += way >> at & 1 ^ 1;
                    second += way >> at & 1;
                }
            }
            count += first + second > 1 && (first == 0 || second == 0) ? 1 : 0;
        }
        return count;
    }

    @ParameterizedTest(name = "a frame of 2026-09-12 at {1}, moment {0}: {2}")
    @CsvSource(textBlock = """
        16:30-16:45 prizes,            16:30, true
        16:30-16:45 prizes,            16:45, true
        16:30-16:45 prizes,            16:46, false
        16:30-16:45 prizes,            16:29, false
        23:30-00:30 last dance,        00:10, true
        23:30-00:30 last dance,        23:40, true
        23:30-00:30 last dance,        22:00, false
        2026-09-12 16:30-16:45 prizes, 16:40, true
        2026-09-13 16:30-16:45 prizes, 16:40, false
        2026-09-11 23:30-00:30,        00:10, true
        2026-09-12 23:30-00:30,        00:10, false
        """)
    void aMomentHoldsWhatWasTakenInItByTheTimeOfThePlace(String moment, String time, boolean holds) {
        assertEquals(
                holds,
                MustHaveMoment.parse(moment)
                        .orElseThrow()
                        .isOn(Days.roll("R0001").at(time).read()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "prizes", "16:30", "16:30-", "25:00-26:00", "2026-09-31 16:30-16:45", "16:30-16:45-17:00"})
    void whatIsNoMomentIsNoneHere(String typed) {
        assertEquals(Optional.empty(), MustHaveMoment.parse(typed));
    }

    @Test
    void aBlankFrameHoldsNoMoment() {
        Days.Roll roll = Days.roll("R0001");
        roll.frames.add(Days.frame(1, "blank", "15:05", "null", "null"));
        assertEquals(false, MustHaveMoment.parse("15:00-15:10").orElseThrow().isOn(roll.read()));
    }

    private static void check(List<ExposedRoll> rolls, List<String> moments, String parcels) {
        Split split = Split.byMoments(
                rolls,
                moments.stream()
                        .map(it -> MustHaveMoment.parse(it).orElseThrow())
                        .toList());
        assertEquals(parcels, split.first() + " " + split.second() + " " + split.remarks());
    }
}
