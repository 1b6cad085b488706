package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import takeup.disk.MemoryFileSystem;
import takeup.disk.Reserve;
import takeup.roll.NoteEvent;
import takeup.roll.RollId;

/** What is only to be told is looked for once a second, and never before a frame is acknowledged. */
class FolderWatchTest {
    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-09-12T15:10:03+02:00");
    private static final Path DAYS = RegattaDay.FOLDER.resolve("days");

    private final MemoryFileSystem drive = new MemoryFileSystem();
    private final List<String> looks = new ArrayList<>();

    @BeforeEach
    void looksAreCounted() {
        drive.fault((call, path) -> {
            if (call.equals("key") && path.equals(DAYS)) {
                looks.add(call);
            }
        });
    }

    private static void note(Writer writer, int number, OffsetDateTime at) throws IOException {
        Batch batch = new Batch(number, at);
        batch.add(new RollId("R", 1), new NoteEvent.Noted("record " + number));
        writer.append(batch);
    }

    @Test
    void aFrameIsWrittenWithoutALookAndTheLookComesOnceASecond() throws IOException {
        try (Writer writer = Writer.take(drive, RegattaDay.FOLDER)) {
            looks.clear();
            note(writer, 1, AT);
            note(writer, 2, AT);
            assertEquals(0, looks.size());
            assertEquals(List.of(), writer.remarks());
            assertEquals(1, looks.size());
            note(writer, 3, AT);
            writer.remarks();
            assertEquals(1, looks.size());
            note(writer, 4, AT.plusSeconds(1));
            writer.remarks();
            writer.remarks();
            assertEquals(2, looks.size());
        }
    }

    @Test
    void whatWasFoundAmissIsFollowedUpInTheSameSecond() throws IOException {
        JournalPlaces.make(drive, DataLayout.of(RegattaDay.FOLDER));
        DataLayout layout = DataLayout.of(RegattaDay.FOLDER);
        FolderWatch watch = new FolderWatch(
                JournalPlaces.of(drive, layout, DataLayout.rolls(List.of())), Reserve.of(drive, RegattaDay.FOLDER));
        List<String> remarks = new ArrayList<>();
        looks.clear();
        watch.written(AT);
        watch.look(remarks);
        watch.written(AT);
        watch.look(remarks);
        assertEquals(1, looks.size());
        watch.alarmed();
        watch.look(remarks);
        assertEquals(2, looks.size());
        assertEquals(List.of(), remarks);
    }
}
