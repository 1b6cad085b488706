package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/** A move that a crash cut short, with frames on two rolls: seen, and what is missing to make it whole. */
class InterruptedMoveTest {
    private static final RollId R1 = new RollId("R", 1);
    private static final RollId R2 = new RollId("R", 2);

    private final RegattaDay day = RegattaDay.brief();
    private final int move = lineOf(0);
    private final int undo = lineOf(1);
    private final int redo = lineOf(2);

    /** The line that moves frames, and the two after it. */
    private int lineOf(int after) {
        int at = 0;
        while (day.lines().get(at).records().getOrDefault("R0002", List.of()).stream()
                .noneMatch(it -> ((RollRecord) it).event() instanceof RollEvent.Added added
                        && added.origin() == RollEvent.Origin.MOVED)) {
            at++;
        }
        return at + after;
    }

    /** All rolls after so many whole lines, and of the next one what goes to one of the rolls. */
    private Map<RollId, List<RollRecord>> rolls(int whole, RollId half) {
        Map<RollId, List<RollRecord>> rolls = new TreeMap<>();
        for (RollId id : List.of(R1, R2)) {
            List<RollRecord> records = new ArrayList<>();
            day.records(whole).get(id.toString()).forEach(it -> records.add((RollRecord) it));
            if (id.equals(half)) {
                day.lines().get(whole).records().get(id.toString()).forEach(it -> records.add((RollRecord) it));
            }
            rolls.put(id, records);
        }
        return rolls;
    }

    private static List<Integer> counts(Map<RollId, List<RollRecord>> rolls) {
        return List.of(
                Roll.of(rolls.get(R1)).orElseThrow().frames().size(),
                Roll.of(rolls.get(R2)).orElseThrow().frames().size());
    }

    /** R0001 holds 6 frames and R0002 two before frames 2 to 4 are moved. */
    private static void check(
            Map<RollId, List<RollRecord>> rolls, RollId roll, List<Integer> before, List<Integer> after) {
        assertEquals(before, counts(rolls));
        List<InterruptedMove> found = InterruptedMove.among(rolls);
        assertEquals(1, found.size());
        assertEquals("frames 2 to 4 of R0001 are on R0002 too", found.get(0).words());
        assertEquals(roll, found.get(0).roll());
        rolls.get(roll).add(found.get(0).rest());
        assertEquals(List.of(), InterruptedMove.among(rolls));
        assertEquals(after, counts(rolls));
    }

    @Test
    void framesThatHaveArrivedAndNotLeftYetLeave() {
        check(rolls(move, R2), R1, List.of(6, 5), List.of(3, 5));
        RollRecord written =
                (RollRecord) day.lines().get(move).records().get("R0001").get(0);
        assertEquals(written, InterruptedMove.among(rolls(move, R2)).get(0).rest());
    }

    @Test
    void framesThatAreBackWhereTheyWereLeaveTheOtherRoll() {
        check(rolls(undo, R1), R2, List.of(6, 5), List.of(6, 2));
    }

    @Test
    void framesThatAreMovedOnceMoreAreNeverOnNoRoll() {
        assertEquals(
                List.of("R0002", "R0001"),
                List.copyOf(day.lines().get(redo).records().keySet()));
        check(rolls(redo, R2), R1, List.of(6, 5), List.of(3, 5));
    }

    @Test
    void aMoveThatIsWholeOrUndoneOrGoesBackIsNoHalfOne() {
        for (int whole = move; whole <= day.lines().size(); whole++) {
            assertEquals(
                    List.of(), InterruptedMove.among(rolls(whole, new RollId("R", 9))), "after " + whole + " lines");
        }
        Map<RollId, List<RollRecord>> rolls = rolls(move + 1, new RollId("R", 9));
        Roll first = Roll.of(rolls.get(R1)).orElseThrow();
        Roll second = Roll.of(rolls.get(R2)).orElseThrow();
        for (int i = 0; i < 3; i++) {
            var back = second.frames().get(2 + i);
            rolls.get(R1)
                    .add(new RollRecord(
                            99,
                            first.loadedAt(),
                            new RollEvent.Added(
                                    new Frame(
                                            first.next() + i,
                                            OptionalInt.of(back.loggedAs()),
                                            back.kind(),
                                            back.exposure(),
                                            back.further(),
                                            back.note()),
                                    RollEvent.Origin.MOVED,
                                    OptionalInt.empty())));
        }
        rolls.get(R2).add(new RollRecord(99, first.loadedAt(), new RollEvent.Dropped(3, 5, Optional.of(R1))));
        assertEquals(List.of(6, 2), counts(rolls));
        assertEquals(List.of(), InterruptedMove.among(rolls));
    }

    /** Two frames are one only where all that was logged of them is the same. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"the same", "number", "kind", "exposure", "further", "note"})
    void aFrameThatDiffersInAnythingIsAnotherOne(String other) {
        Map<RollId, List<RollRecord>> rolls = rolls(move, new RollId("R", 9));
        Frame frame = Roll.of(rolls.get(R1)).orElseThrow().frames().get(1);
        Frame moved = new Frame(
                7,
                OptionalInt.of(other.equals("number") ? frame.loggedAs() + 1 : frame.loggedAs()),
                other.equals("kind") ? Frame.Kind.BLANK : frame.kind(),
                other.equals("exposure")
                        ? Roll.of(rolls.get(R1)).orElseThrow().frames().get(0).exposure()
                        : frame.exposure(),
                other.equals("further") ? List.of(frame.exposure()) : frame.further(),
                other.equals("note") ? Optional.of("bow seat") : frame.note());
        rolls.get(R2)
                .add(new RollRecord(
                        99,
                        Roll.of(rolls.get(R1)).orElseThrow().loadedAt(),
                        new RollEvent.Added(moved, RollEvent.Origin.MOVED, OptionalInt.empty())));
        assertEquals(
                other.equals("the same") ? List.of("frame 2 of R0001 is on R0002 too") : List.of(),
                InterruptedMove.among(rolls).stream()
                        .map(InterruptedMove::words)
                        .toList());
    }
}
