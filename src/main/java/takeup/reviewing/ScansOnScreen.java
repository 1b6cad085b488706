package takeup.reviewing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import takeup.disk.IoErrorText;
import takeup.grid.Grid;
import takeup.grid.Size;
import takeup.journal.Archive;
import takeup.message.Key;
import takeup.review.Review;
import takeup.review.ReviewEvent;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.scans.Proposal;
import takeup.scanview.ScansState;

/**
 * The Scans view over the shoot screen, opened from a roll. The folder is read on a thread of its own, since that takes
 * seconds and a frame waits for nothing.
 */
public final class ScansOnScreen {
    /** How what was decided gets on the disk; once it returns it is there. */
    public interface Keeper {
        void keep(RollId roll, List<ReviewEvent> events) throws IOException;
    }

    /** A folder beside a roll, once it was read. */
    private record Open(ScansScreen view, ScansState state) {}

    private final Archive archive;
    private final Keeper keeper;
    private final Consumer<String> says;
    private volatile Optional<Open> open = Optional.empty();

    /**
     * Nothing opened yet.
     *
     * @param keeper how what is decided gets on the disk
     * @param says takes a sentence, from that other thread too; an empty one when there is something to draw
     */
    public ScansOnScreen(Archive archive, Keeper keeper, Consumer<String> says) {
        this.archive = archive;
        this.keeper = keeper;
        this.says = says;
    }

    /** Reads a folder and shows it beside the roll. */
    public void open(RollId roll, String folder) {
        Thread reading = new Thread(() -> read(roll, folder), "scans");
        reading.setDaemon(true);
        reading.start();
    }

    private void read(RollId id, String folder) {
        String home = System.getProperty("user.home", "");
        Path path = Path.of(folder.startsWith("~/") ? home + folder.substring(1) : folder);
        try {
            if (!Files.isDirectory(path)) {
                says.accept(folder + " is not a folder here");
                return;
            }
            Optional<Roll> roll = Roll.of(archive.roll(id).records());
            if (roll.isEmpty()) {
                says.accept(id + " cannot be read: takeup check says why");
                return;
            }
            show(roll.get(), path.toAbsolutePath().normalize());
        } catch (IOException e) {
            says.accept(folder + " cannot be read: " + IoErrorText.words(e));
        } catch (RuntimeException e) {
            says.accept(folder + " cannot be read: " + e.getMessage());
        }
    }

    private void show(Roll roll, Path path) throws IOException {
        OpenedScans opened = OpenedScans.of(archive, roll, path);
        opened.folder().problems().forEach(says);
        Proposal proposal = opened.sorted().asked();
        if (proposal.scans().isEmpty()) {
            says.accept(path + " holds no scan that can be read: JPEG, PNG or TIFF");
            return;
        }
        Review review = Review.of(archive.reviewOf(roll.id()).records());
        open = Optional.of(new Open(
                new ScansScreen(archive, new LargerScans(path, opened.folder().pictures()), keeper),
                ScansState.of(roll, opened.folder().folder().toString(), proposal, review)));
        says.accept("");
    }

    /** Whether scans are shown: until a key leaves them. */
    public boolean isOpen() {
        return open.isPresent();
    }

    public Grid render(Size size) {
        Open shown = open.orElseThrow();
        shown.view.shown(shown.state, () -> says.accept(""));
        return shown.view.render(shown.state, size);
    }

    public void press(Key key) {
        open = open.flatMap(it -> it.view.after(it.state, key).map(state -> new Open(it.view, state)));
    }
}
