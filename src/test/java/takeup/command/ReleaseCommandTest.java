package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.handoff.MadeBy;
import takeup.handoff.RollJson;
import takeup.handoff.RollPlainText;
import takeup.review.Review;
import takeup.search.FindQuery;
import takeup.search.FrameRow;
import takeup.search.RollHead;

/** Who signed a model release, on the roll in hand and on others. It is 12 September 2026. */
class ReleaseCommandTest {
    private static Shooting shot() {
        return Shooting.of(
                "cam 35", "load bw400", "8 125 with Anna Marsh, Ben", "8 125 with Ben", "8 125 with Cleo", "8 60");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            release                        | R0001: nobody signed a release; not by Anna Marsh, Ben, Cleo.
            release anna marsh, Ben        | Releases of R0001: signed by Anna Marsh, 2026-09-12; Ben, 2026-09-12; not by Cleo.
            release Cleo ; on paper        | Releases of R0001: signed by Cleo, 2026-09-12, on paper; not by Anna Marsh, Ben.
            release 1                      | Releases of R0001: signed by Anna Marsh, 2026-09-12; Ben, 2026-09-12; not by Cleo.
            release r1 2-3 ; box 12        | Releases of R0001: signed by Ben, 2026-09-12, box 12; Cleo, 2026-09-12, box 12; not by Anna Marsh.
            release Dora                   | Releases of R0001: signed by Dora, 2026-09-12; not by Anna Marsh, Ben, Cleo.
            """)
    void whoSignedIsSaidAndWhoDidNot(String line, String said) {
        assertEquals(said, shot().type(line));
    }

    @Test
    void oneThatIsSignedAgainTakesThePlaceOfTheFirstAndNobodyTakesAllOff() {
        Shooting day = shot();
        day.type("release Ben");
        day.type("release Ben ; box 12");
        assertEquals(1, day.roll("R0001").notes().releases().size());
        assertTrue(day.type("undo").startsWith("Undone: the release of R0001"));
        assertTrue(day.type("release nobody").contains("nobody signed a release"));
    }

    @Test
    void aFrameWhereNobodyIsNamedIsSaid() {
        String said = shot().refused("release 4");
        assertTrue(said.startsWith("nobody is named on frame 4 of R0001: fix r1 4 with Anna"), said);
    }

    @Test
    void framesAreFoundByWhetherAllOnThemSigned() {
        Shooting day = shot();
        day.type("release Ben, Cleo");
        assertEquals("2 3 ", found(day, "released"));
        assertEquals("1 ", found(day, "unreleased"));
        assertEquals("3 ", found(day, "with cleo released"));
    }

    private static String found(Shooting day, String query) {
        FindQuery wanted = FindQuery.of(query);
        RollHead head = RollHead.of(day.roll("R0001"));
        StringBuilder numbers = new StringBuilder();
        FrameRow.lines(day.roll("R0001"), Review.NONE).lines().forEach(line -> {
            FrameRow row = new FrameRow(head, line);
            numbers.append(wanted.matches(row) ? line.split("\t")[1] + " " : "");
        });
        return numbers.toString();
    }

    @Test
    void itIsInNoExportUnlessItIsAskedFor() {
        Shooting day = shot();
        day.type("release Dora ; box 12");
        MadeBy madeBy = MadeBy.version("1");
        assertFalse(RollJson.text(day.roll("R0001"), madeBy).contains("Dora"));
        assertFalse(RollPlainText.of(day.roll("R0001")).contains("Dora"));
        assertTrue(RollJson.text(day.roll("R0001"), madeBy, Set.of(RollJson.Private.RELEASES))
                .contains("\"words\" : \"box 12\""));
        assertTrue(RollPlainText.withReleases(day.roll("R0001")).contains("Dora, 2026-09-12, box 12"));
    }
}
