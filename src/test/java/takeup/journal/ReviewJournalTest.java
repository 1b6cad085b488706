package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.disk.FileSystem;
import takeup.disk.MemoryFileSystem;
import takeup.review.Density;
import takeup.review.FrameKey;
import takeup.review.Review;
import takeup.review.ReviewEvent;
import takeup.roll.RollId;

class ReviewJournalTest {
    private static final RollId ROLL = new RollId("R", 7);
    private static final OffsetDateTime NOON = OffsetDateTime.parse("2026-10-01T12:00:00+02:00");
    private static final FrameKey BOW =
            new FrameKey(3, Optional.of(OffsetDateTime.parse("2026-09-12T15:12:40.25+02:00")));
    private static final FrameKey COX = new FrameKey(0, Optional.empty());

    @TempDir
    Path folder;

    @Test
    void whatWasDecidedIsReadBackAsItWas() throws IOException {
        List<ReviewEvent> events = List.of(
                new ReviewEvent.Accepted(
                        "/scans/0001 \"Boathouse\"",
                        true,
                        0.75,
                        List.of(
                                new ReviewEvent.PlacedScan("crew_01.jpg", List.of(BOW, COX)),
                                new ReviewEvent.PlacedScan("é.tif", List.of()))),
                new ReviewEvent.Judged(BOW, Optional.of(Density.THIN)),
                new ReviewEvent.Judged(COX, Optional.empty()),
                new ReviewEvent.Unknown("framed", "{\"event\":\"framed\",\"x\":1}"));
        keep(events);
        JournalRecords<ReviewEvent> opened = new Archive(folder).reviewOf(ROLL);
        assertEquals(List.of(), opened.problems());
        assertEquals(events, opened.records());
        assertEquals(List.of(ROLL), List.copyOf(new Archive(folder).reviewedRolls()));
    }

    @Test
    void theLaterVerdictCountsAndAVerdictCanBeTakenBack() throws IOException {
        keep(List.of(
                new ReviewEvent.Judged(BOW, Optional.of(Density.THIN)),
                new ReviewEvent.Judged(COX, Optional.of(Density.GOOD))));
        keep(List.of(
                new ReviewEvent.Judged(BOW, Optional.of(Density.DENSE)),
                new ReviewEvent.Judged(COX, Optional.empty())));
        assertEquals(
                Map.of(BOW, Optional.of(Density.DENSE), COX, Optional.empty()),
                Review.of(new Archive(folder).reviewOf(ROLL).records()).verdicts());
    }

    @Test
    void theSameDecisionTwiceIsWrittenTwiceAndATornTailIsLeftOut() throws IOException {
        keep(List.of(new ReviewEvent.Judged(BOW, Optional.of(Density.THIN))));
        keep(List.of(new ReviewEvent.Judged(BOW, Optional.of(Density.THIN))));
        Path file = folder.resolve("reviews/R0007.journal");
        Files.writeString(file, "{\"n\":3,\"step\":3,\"at", StandardOpenOption.APPEND);
        JournalRecords<ReviewEvent> opened = new Archive(folder).reviewOf(ROLL);
        assertEquals(2, opened.records().size());
        assertTrue(
                opened.problems().get(0).contains("R0007.journal:4:"),
                opened.problems().toString());
        keep(List.of(new ReviewEvent.Judged(BOW, Optional.of(Density.GOOD))));
        assertEquals(3, new Archive(folder).reviewOf(ROLL).records().size());
    }

    @Test
    void anInterruptThatCameInBeforeDoesNotCloseTheFileAndIsHandedOn() throws IOException {
        List<ReviewEvent> thin = List.of(new ReviewEvent.Judged(BOW, Optional.of(Density.THIN)));
        try (Writer writer = Writer.take(folder)) {
            writer.append(ROLL, NOON, thin);
            Thread.currentThread().interrupt();
            writer.append(ROLL, NOON, thin);
            assertTrue(Thread.interrupted(), "it is handed on");
            writer.append(ROLL, NOON, thin);
            assertEquals(List.of(), writer.remarks(), "no file had to be written anew");
        }
        assertEquals(3, new Archive(folder).reviewOf(ROLL).records().size());
    }

    /** The reserve is for the frames of a running shoot; scans are looked at when there is time to free some space. */
    @Test
    void onAFullDiskADecisionIsRefusedAndLeavesTheReserveToTheFrames() throws IOException {
        MemoryFileSystem drive = new MemoryFileSystem();
        Path home = Path.of("/home/takeup");
        drive.put(Path.of("/home"));
        try (Writer writer = Writer.take(drive, home)) {
            drive.fault((call, path) -> {
                if (call.equals("write")) {
                    throw new IOException("No space left on device");
                }
            });
            assertThrows(
                    IOException.class,
                    () -> writer.append(ROLL, NOON, List.of(new ReviewEvent.Judged(BOW, Optional.of(Density.THIN)))));
            drive.fault((call, path) -> {});
            assertEquals(FileSystem.Kind.FILE, drive.kind(home.resolve("reserve")));
        }
    }

    @Test
    void aDecisionThatCouldNotBeReadBackIsRefusedBeforeAnythingIsWritten() throws IOException {
        try (Writer writer = Writer.take(folder)) {
            assertThrows(
                    IllegalArgumentException.class,
                    () -> writer.append(
                            ROLL,
                            NOON,
                            List.of(new ReviewEvent.Unknown("framed", "{\"event\":\"framed\",\"x\":1e999}"))));
        }
        assertFalse(Files.exists(folder.resolve("reviews")));
    }

    @Test
    void handsLaidOnALockOrAReviewMeanwhileAreSaidAndNothingIsLost() throws IOException {
        List<ReviewEvent> thin = List.of(new ReviewEvent.Judged(BOW, Optional.of(Density.THIN)));
        try (Writer writer = Writer.take(folder)) {
            writer.append(ROLL, NOON, thin);
            assertEquals(List.of(), writer.remarks());
            Files.delete(folder.resolve("lock"));
            writer.append(ROLL, NOON, thin);
            assertEquals(
                    List.of("the lock file was deleted or replaced by another program; it is back"), writer.remarks());
            Files.delete(folder.resolve("reviews/R0007.journal"));
            writer.append(ROLL, NOON, thin);
            assertEquals(
                    List.of("R0007.journal was moved, deleted or changed by another program; all of it was "
                            + "written anew"),
                    writer.remarks());
        }
        assertEquals(3, new Archive(folder).reviewOf(ROLL).records().size());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"event\":\"judged\",\"frame\":{\"number\":3},\"verdict\":\"grey\"}",
                "{\"event\":\"judged\",\"frame\":{\"number\":1.5},\"verdict\":\"thin\"}"
            })
    void aVerdictThatIsNotKnownIsLeftOutAndTold(String event) throws IOException {
        keep(List.of(new ReviewEvent.Judged(BOW, Optional.of(Density.THIN))));
        Files.write(
                folder.resolve("reviews/R0007.journal"), JournalLines.of(2, 2, NOON, event), StandardOpenOption.APPEND);
        JournalRecords<ReviewEvent> opened = new Archive(folder).reviewOf(ROLL);
        assertEquals(1, opened.records().size());
        assertTrue(
                opened.problems().toString().contains("R0007.journal:3:"),
                opened.problems().toString());
    }

    @Test
    void aRollThatNobodyReviewedHasNothingAndNoProblem() {
        assertEquals(new JournalRecords<>(List.of(), List.of()), new Archive(folder).reviewOf(ROLL));
    }

    private void keep(List<ReviewEvent> events) throws IOException {
        try (Writer writer = Writer.take(folder)) {
            writer.append(ROLL, NOON, events);
        }
    }
}
