package takeup.reviewing;

import java.io.IOException;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.Consumer;
import takeup.console.Clock;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.disk.IoErrorText;
import takeup.files.JournalStore;
import takeup.journal.Archive;
import takeup.review.Review;
import takeup.review.ReviewEvent;
import takeup.roll.RollId;

/** What was decided about the scans of a roll, on its way to the disk. */
record Decisions(Archive archive, RollId roll, List<ReviewEvent> events) {
    /** Forces them to the disk; the review with them. What the disk has to remark is handed on. */
    Review save(Consumer<String> remarks) throws IOException {
        try (JournalStore disk = JournalStore.take(archive)) {
            disk.keep(roll, Clock.wall().truncatedTo(ChronoUnit.MILLIS), events);
            disk.remarks().forEach(remarks);
        }
        return Review.of(archive.reviewOf(roll).records());
    }

    /** The same for a command, which ends if it cannot be done. */
    Review saveOrFail(Console console) {
        try {
            return save(console::error);
        } catch (IOException e) {
            throw new CommandFailed(1, "NOT SAVED: " + IoErrorText.words(e));
        }
    }
}
