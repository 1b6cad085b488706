package takeup.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.cli.TypedRolls;
import takeup.drafting.OrderSource;
import takeup.index.ArchiveIndex;
import takeup.index.CopiedJournal;
import takeup.journal.Archive;
import takeup.message.Message;
import takeup.order.ExposedRoll;

/** What an order on the screen is made from is the same whether the index tells it or the journals do. */
class OrderSourcesTest {
    /** More than are read as quickly as an index of them. */
    private static final int MANY = 210;

    @TempDir
    Path folder;

    private OrderSource source() {
        List<String> told = new ArrayList<>();
        ArchiveIndex index = new ArchiveIndex(new Archive(folder), Version.number(), told::add);
        Message read = new OrderSources(folder, index).read();
        assertEquals(List.of(), told);
        return ((Message.OrderRead) read).source();
    }

    private void manyRolls() throws IOException {
        TypedRolls.type(
                folder,
                "shoot Regatta day for Boathouse Club",
                "cam 35",
                "load bw400",
                "m 5.6 125",
                "5.6 125 ; the cox, a\u00e9\u8239",
                "note roll a leak; at the back",
                "condition torn at frame 5",
                "condition opened in daylight",
                "unload yes");
        TypedRolls.type(folder, "cam 645 1", "load cn400 @200", "4 30");
        Path finished = folder.resolve("rolls/finished");
        String journal = Files.readString(finished.resolve("R0001.journal"));
        for (int roll = 3; roll <= MANY; roll++) {
            String name = String.format(Locale.ROOT, "R%04d", roll);
            Files.writeString(finished.resolve(name + ".journal"), CopiedJournal.of(journal, name, 100 + roll));
        }
    }

    @Test
    void theIndexTellsWhatTheJournalsDo() throws IOException {
        manyRolls();
        List<ExposedRoll> read =
                new OrderFolder(folder, false).rolls(it -> true).all();
        for (int turn = 0; turn < 2; turn++) {
            OrderSource source = source();
            assertEquals(read.stream().filter(ExposedRoll::isFinished).toList(), source.rolls());
            assertEquals(
                    List.of(read.get(1)),
                    source.loaded().stream().map(it -> it.roll()).toList());
            assertEquals(Optional.empty(), source.loaded().get(0).since());
            assertEquals(List.of(), source.problems());
        }
        assertTrue(Files.exists(folder.resolve("index/R-1.orders")));
    }

    @Test
    void noRollThatIsOrderedIsRead() throws IOException {
        manyRolls();
        TypedRolls.run(folder, "order", "new", "--yes");
        OrderSource source = source();
        assertEquals(List.of(), source.rolls());
        assertEquals(1, source.loaded().size());
        assertTrue(!Files.exists(folder.resolve("index/R-1.orders")), "all of those are ordered");
    }
}
