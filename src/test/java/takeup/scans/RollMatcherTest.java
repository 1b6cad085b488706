package takeup.scans;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import takeup.roll.Frame;
import takeup.roll.RollId;

/** Several films in one folder: by names, by one count over all, and by the shape of the pictures. */
class RollMatcherTest {
    private static final RollId FIRST = new RollId("R", 1);
    private static final RollId SECOND = new RollId("R", 2);
    private static final RollId THIRD = new RollId("R", 3);

    @Test
    void filmsThatTheLabKeptApartGoToTheirRolls() {
        for (long seed = 0; seed < 10; seed++) {
            List<ScansByRoll.Candidate> rolls = List.of(
                    roll(FIRST, 16, 1.35, seed), roll(SECOND, 36, 1.5, seed + 100), roll(THIRD, 12, 1, seed + 200));
            List<Scan> scans = new ArrayList<>();
            scans.addAll(scans("000871_%", rolls.get(0), seed));
            scans.addAll(scans("000872_%", rolls.get(1), seed));
            scans.addAll(scans("000873_%", rolls.get(2), seed));
            ScansByRoll sorted = RollMatcher.of(scans, rolls, SECOND);
            assertEquals(IntStream.range(0, 36).boxed().toList(), sorted.asked().slotOf(), "seed " + seed);
            assertTrue(sorted.asked().scans().get(0).name().startsWith("000872"));
            assertEquals(
                    List.of(FIRST, THIRD),
                    sorted.others().stream().map(ScansByRoll.Other::roll).toList());
            assertEquals(List.of(), sorted.unmatched());
        }
    }

    @Test
    void oneCountOverTwoFilmsIsCutWhereTheSecondBegins() {
        for (long seed = 0; seed < 10; seed++) {
            List<ScansByRoll.Candidate> rolls =
                    List.of(roll(FIRST, 16, 1.35, seed), roll(SECOND, 16, 1.35, seed + 100));
            List<Scan> scans = new ArrayList<>();
            for (ScansByRoll.Candidate roll : rolls) {
                for (Scan scan : scans("x%", roll, seed)) {
                    scans.add(new Scan(
                            "boathouse_" + (scans.size() + 1) + ".jpg", scan.width(), scan.height(), scan.tone()));
                }
            }
            ScansByRoll sorted = RollMatcher.of(scans, rolls, SECOND);
            assertEquals(16, sorted.asked().scans().size(), "seed " + seed);
            assertEquals("boathouse_17.jpg", sorted.asked().scans().get(0).name());
            assertEquals(IntStream.range(0, 16).boxed().toList(), sorted.asked().slotOf());
            assertEquals(16, sorted.others().get(0).proposal().scans().size());
        }
    }

    @Test
    void anotherShapeOfPictureFromSomeScanOnIsAnotherCamera() {
        List<ScansByRoll.Candidate> rolls = List.of(roll(FIRST, 12, 1, 5), roll(SECOND, 16, 1.35, 6));
        List<Scan> scans = new ArrayList<>();
        for (ScansByRoll.Candidate roll : rolls) {
            for (Scan scan : scans("x%", roll, 7)) {
                scans.add(new Scan("img" + (scans.size() + 1) + ".tif", scan.width(), scan.height(), scan.tone()));
            }
        }
        assertEquals(
                "img13.tif",
                RollMatcher.of(scans, rolls, SECOND).asked().scans().get(0).name());
    }

    @Test
    void filmsThatCannotBeToldApartAreAskedAbout() {
        List<ScansByRoll.Candidate> rolls = List.of(flat(FIRST), flat(SECOND));
        List<Scan> scans = new ArrayList<>();
        for (String film : List.of("a_", "b_")) {
            IntStream.rangeClosed(1, 12)
                    .forEach(it -> scans.add(new Scan(film + it + ".jpg", 3000, 2222, new Tone(0.45, 0.2, false))));
        }
        assertTrue(!RollMatcher.of(scans, rolls, FIRST).asked().isSure());
    }

    private static ScansByRoll.Candidate flat(RollId id) {
        return new ScansByRoll.Candidate(
                id, IntStream.range(0, 12).mapToObj(it -> slot(id, it, 0, 1.35)).toList());
    }

    private static ScansByRoll.Candidate roll(RollId id, int frames, double aspect, long seed) {
        Random random = new Random(seed * 0x9E3779B97F4A7C15L);
        return new ScansByRoll.Candidate(
                id,
                IntStream.range(0, frames)
                        .mapToObj(it -> slot(id, it, 0.5 + 0.8 * random.nextGaussian(), aspect))
                        .toList());
    }

    private static Slot slot(RollId id, int place, double over, double aspect) {
        return new Slot(
                id,
                List.of(place),
                place + 1,
                Frame.Kind.EXPOSED,
                OptionalDouble.of(over),
                false,
                aspect,
                Optional.empty());
    }

    private static List<Scan> scans(String pattern, ScansByRoll.Candidate roll, long seed) {
        Random random = new Random(seed + 31);
        List<Scan> scans = new ArrayList<>();
        for (Slot slot : roll.slots()) {
            String number = (slot.number() < 10 ? "0" : "") + slot.number();
            scans.add(new Scan(
                    pattern.replace("%", number) + ".jpg",
                    (int) Math.round(2000 * slot.aspect()),
                    2000,
                    new Tone(
                            0.45 + 0.1 * (slot.overStops().getAsDouble() - 0.5) + 0.04 * random.nextGaussian(),
                            0.2 + 0.02 * random.nextGaussian(),
                            false)));
        }
        return scans;
    }
}
