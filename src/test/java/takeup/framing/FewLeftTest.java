package takeup.framing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.ShippedShelf;
import takeup.advice.StandingWarnings;
import takeup.command.Outcome;
import takeup.dispatch.Dispatcher;
import takeup.history.ShootState;
import takeup.kit.Kit;
import takeup.kit.Warning;
import takeup.roll.FrameWarnings;

/**
 * When the last frames are warned of: a quarter of the roll but at most 5, or as the photographer wants it. A roll of
 * 16.
 */
class FewLeftTest {
    private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-09-12T15:00:00+02:00");

    @ParameterizedTest(name = "set to {0}: said at {1} left, stands from {2} left on")
    @CsvSource({"-, 4 2 1 0, 4", "8, 8 2 1 0, 8", "3, 3 2 1 0, 3", "0, 2 1 0, 2", "36, 15 2 1 0, 15"})
    void theLastFramesAreWarnedOfWhenThePhotographerWantsIt(String few, String said, int stands) {
        OptionalInt setting = few.equals("-") ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(few));
        ShootState s = ShootState.of(new Kit(new ShippedShelf(), setting), List.of(), Optional.empty(), Set.of());
        List<String> warned = new ArrayList<>();
        int first = -1;
        for (String line : List.of("cam 645", "load cn400", "4 125")) {
            Outcome.Accepted does = (Outcome.Accepted) Dispatcher.read(s, line, NOW, "R");
            s = does.after();
        }
        for (int left = 15; left >= 0; left--) {
            if (first < 0 && StandingWarnings.of(s, NOW).contains(Warning.Code.FRAMES_LEFT)) {
                first = left;
            }
            if (left == 15
                    && NewFrames.newest(s.rollInHand().orElseThrow(), 1, s.kit().fewLeft(16)).stream()
                            .anyMatch(it -> it.code() == Warning.Code.FRAMES_LEFT)) {
                warned.add("15");
            }
            if (left > 0) {
                Outcome.Accepted does = (Outcome.Accepted) Dispatcher.read(s, ".", NOW, "R");
                if (does.answer().warnings().stream().anyMatch(it -> it.code() == Warning.Code.FRAMES_LEFT)) {
                    warned.add(Integer.toString(left - 1));
                }
                s = does.after();
            }
        }
        assertEquals(said, String.join(" ", warned));
        assertEquals(stands, first);
    }

    /** The record of a roll of 16 bears it where it began, at 4 left, and at the last frame; not at each. */
    @Test
    void theRecordBearsItOnceWhereItBeganAndAtTheEnd() {
        ShootState s = ShootState.of(new Kit(new ShippedShelf()), List.of(), Optional.empty(), Set.of());
        for (String line : List.of("cam 645", "load cn400", "4 125", "x17")) {
            Outcome outcome = Dispatcher.read(s, line, NOW, "R");
            s = outcome instanceof Outcome.NeedsConfirmation asked
                    ? asked.ifYes().after()
                    : ((Outcome.Accepted) outcome).after();
        }
        List<List<Warning>> record = FrameWarnings.of(s.rollInHand().orElseThrow());
        List<Integer> bearing = new ArrayList<>();
        for (int at = 0; at < record.size(); at++) {
            if (record.get(at).stream().anyMatch(it -> it.code() == Warning.Code.FRAMES_LEFT)) {
                bearing.add(at + 1);
            }
        }
        assertEquals(List.of(12, 16), bearing);
        assertEquals(Warning.Code.PAST_END, record.get(16).get(0).code());
    }
}
