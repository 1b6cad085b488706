package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.roll.Exposure;
import takeup.roll.Frame;
import takeup.roll.NoteEvent;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/** What is said of the frames where records are missing: only what the numbers left and right of the gap prove. */
class MissingFramesTest {
    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-09-12T15:10+02:00");

    /**
     * A number is a frame, n a note, c a camera's counter that shows 9, u an undo, d a frame dropped, i one inserted, |
     * the gap.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = ';', nullValues = "-", textBlock = """
            1 2 | 4 5     ; : frame 3 is not in the log
            1 2 | 6       ; : frames 3 to 5 are not in the log
            | 2           ; : frame 1 is not in the log
            1 2 | n 4     ; : frame 3 is not in the log
            1 2 n | n n 5 ; : frames 3 to 4 are not in the log
            1 2 | 3       ; -
            1 2 |         ; -
            1 2 | n       ; -
            1 2 | c 9     ; -
            1 2 | u 4     ; -
            1 2 | d 4     ; -
            1 2 | i 4     ; -
            1 2 c | 9     ; -
            1 2 c | 10    ; : frame 9 is not in the log
            """)
    void isWhatTheNumbersLeaveOut(String roll, String words) {
        List<RollRecord> records = new ArrayList<>(List.of(loaded()));
        int gap = 0;
        for (String word : roll.strip().split(" +")) {
            switch (word) {
                case "|" -> gap = records.size();
                case "n" -> add(records, new NoteEvent.Noted("words"));
                case "c" -> add(records, new RollEvent.CounterShown(9));
                case "u" -> add(records, new RollEvent.Undone(2));
                case "d" -> add(records, new RollEvent.Dropped(1, 1, Optional.empty()));
                case "i" ->
                    add(
                            records,
                            new RollEvent.Added(
                                    Frame.of(1, Frame.Kind.EXPOSED, Exposure.UNKNOWN, Optional.empty()),
                                    RollEvent.Origin.INSERTED,
                                    OptionalInt.of(1)));
                default ->
                    add(
                            records,
                            new RollEvent.Added(
                                    Frame.of(
                                            Integer.parseInt(word),
                                            Frame.Kind.EXPOSED,
                                            Exposure.UNKNOWN,
                                            Optional.empty()),
                                    RollEvent.Origin.LOGGED,
                                    OptionalInt.empty()));
            }
        }
        assertEquals(words == null ? "" : words, MissingFrames.words(records, gap));
    }

    @Test
    void nothingIsKnownWhereTheLoadingItselfIsMissing() {
        List<RollRecord> records = new ArrayList<>();
        add(
                records,
                new RollEvent.Added(
                        Frame.of(4, Frame.Kind.EXPOSED, Exposure.UNKNOWN, Optional.empty()),
                        RollEvent.Origin.LOGGED,
                        OptionalInt.empty()));
        assertEquals("", MissingFrames.words(records, 0));
    }

    private static void add(List<RollRecord> records, RollEvent event) {
        records.add(new RollRecord(records.size() + 1, AT, event));
    }

    private static RollRecord loaded() {
        return (RollRecord)
                RegattaDay.brief().records(2).get(new RollId("R", 1).toString()).get(0);
    }
}
