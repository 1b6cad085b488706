package takeup.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.day.CameraPlace;
import takeup.report.RollSummary;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.text.TabFields;

/** What is typed finds the frames that are meant, and no others. */
class FindQueryTest {
    private static final RollHead REGATTA = head(7, "bw400", "A fine grain film 400", "35", "Regatta day");
    private static final RollHead PORTRAITS = head(8, "cn400", "A colour film 400", "645", "Crew portraits");

    private static final List<FrameRow> ROWS = List.of(
            row(
                    REGATTA,
                    "1 4 exposed 2026-05-03T14:05:00+02:00 2.8 2.8 1/125 0.008 28mm#f/2.8 28 red -1.3 _ _ Ann,#Ben boathouse Regatta#day cox#in#the#rain R0007-04.tif thin"),
            row(
                    REGATTA,
                    "2 5 exposed 2026-05-03T14:06:00+02:00 8 8 1/60 0.0166666667 50mm#f/1.4 50 _ 0.2 flash tripod Ann _ Regatta#day boathouse _ good"),
            row(
                    PORTRAITS,
                    "1 1 exposed 2025-12-31T23:59:00+01:00 2.8 2.8 2s 2 80mm#f/2.8 80 yellow,#red 1.5 _ tripod _ _ Crew#portraits _ a0042.tif dense"),
            row(PORTRAITS, "2 2 blank _ _ _ _ _ _ _ _ _ _ _ _ _ Crew#portraits _ _ _"));

    private static RollHead head(int number, String stock, String name, String camera, String shoot) {
        return new RollHead(
                new RollSummary(
                        new RollId("R", number),
                        Roll.State.FINISHED,
                        new CameraPlace(camera, Optional.empty()),
                        new RollSummary.FilmSummary(stock, name, 400, "NORMAL", 36),
                        2,
                        OffsetDateTime.parse("2026-05-03T09:00+02:00"),
                        Optional.empty(),
                        Optional.empty()),
                Optional.of(shoot),
                Optional.of("fine-grain 1+1, 9m45s at 20C"));
    }

    private static FrameRow row(RollHead roll, String values) {
        return new FrameRow(roll, values.replace(' ', '\t').replace("_", "").replace('#', ' '));
    }

    private static String found(String typed) {
        FindQuery query = FindQuery.of(typed);
        return String.join(
                " ",
                ROWS.stream()
                        .filter(query::matches)
                        .map(it -> it.roll().summary().id().typed() + "/" + it.text(FrameColumn.FRAME))
                        .toList());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "bw400, r7/4 r7/5",
        "BW400 f2.8 lens 28, r7/4",
        "bw400 f/2.8 lens 28mm, r7/4",
        "f2.8, r7/4 r8/1",
        "lens 2.8, ''",
        "lens f/2.8, r7/4 r8/1",
        "1/60, r7/5",
        "2s, r8/1",
        "645, r8/1 r8/2",
        "since 2026-05, r7/4 r7/5",
        "until 2025, r8/1",
        "on 2026-05-03, r7/4 r7/5",
        "in 2025-12, r8/1",
        "error over 1, r7/4 r8/1",
        "error under 1, r7/5",
        "over 1, r8/1",
        "under 1, r7/4",
        "judged thin, r7/4",
        "filter red, r7/4 r8/1",
        "roll r8 frame 2, r8/2",
        "shoot regatta flash, r7/5",
        "rain cox, r7/4",
        "'\"the rain\"', r7/4",
        "'\"rain the\"', ''",
        "scan 0042, r8/1",
        "blank, r8/2",
        "with ann, r7/4 r7/5",
        "'with ann, ben since 2026', r7/4",
        "at boathouse, r7/4",
        "boathouse, r7/4 r7/5",
        "fine-grain tripod, r7/5 r8/1",
        "portraits tripod, r8/1",
        "nothing-like-it, ''"
    })
    void aFrameIsFoundByWhatIsKnownOfIt(String typed, String frames) {
        assertEquals(frames, found(typed));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "  ", "since may", "since 2026-13", "judged bad", "error 1", "over much", "lens", "roll"})
    void whatCannotBeReadIsRefusedWithAnExample(String typed) {
        String why = assertThrows(IllegalArgumentException.class, () -> FindQuery.of(typed))
                .getMessage();
        assertEquals(true, why.contains("such as") || why.contains("thin, good or dense"), why);
    }

    @Test
    void aNoteWithATabAndALineFeedStaysOneValue() {
        String note = "one\ttwo\nthree \\ four\r";
        FrameRow row = new FrameRow(REGATTA, TabFields.escaped(note) + "\tnext");
        assertEquals(note, row.text(FrameColumn.SEQUENCE));
        assertEquals("next", row.text(FrameColumn.FRAME));
    }
}
