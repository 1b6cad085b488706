package takeup.files;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.disk.IoErrorText;
import takeup.handoff.RollJson;
import takeup.history.JournalEntry;
import takeup.history.JournalStep;
import takeup.journal.Archive;
import takeup.journal.Batch;
import takeup.journal.LaterVersion;
import takeup.journal.Writer;
import takeup.review.ReviewEvent;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.RollNumbers;

/** Steps and rolls to the disk, in the settled order: records forced, then the export, then the move. */
public final class JournalStore implements AutoCloseable {
    private final Archive archive;
    private final Writer writer;

    private JournalStore(Archive archive, Writer writer) {
        this.archive = archive;
        this.writer = writer;
    }

    /** Takes the data folder to write in. */
    public static JournalStore take(Archive archive) throws IOException {
        return new JournalStore(archive, Writer.take(archive));
    }

    public Archive archive() {
        return archive;
    }

    /** The numbers of the rolls that were there when the folder was taken. */
    RollNumbers rolls() {
        return writer.rolls();
    }

    /**
     * Reads the names of all finished rolls, if nobody did: right behind the first picture, so that nobody waits for it
     * later. Why they cannot be read, in words.
     */
    public Optional<String> know() {
        try {
            writer.know();
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of("no roll can be loaded: " + IoErrorText.words(e));
        }
    }

    /**
     * Removes what a program that died left half written, as far as the start did not, and writes exports that are
     * behind their roll: for a quiet moment. Answers with what could not be done, in sentences.
     */
    public List<String> sweep() {
        List<String> problems = new ArrayList<>();
        try {
            writer.sweep();
            for (RollId id : RollExports.suspects(archive)) {
                Optional<Roll> roll = Roll.of(archive.roll(id).records());
                if (roll.isPresent()
                        && roll.get().state() == Roll.State.FINISHED
                        && RollExports.whyBehind(archive, roll.get()).isPresent()) {
                    export(roll.get()).ifPresent(problems::add);
                }
            }
        } catch (IOException e) {
            // what lies there bears a name that nobody reads, and the next start looks again
        }
        return problems;
    }

    private Optional<String> export(Roll roll) {
        try {
            writer.export(roll.id(), RollJson.text(roll, Version.madeBy(archive)));
            return Optional.empty();
        } catch (LaterVersion e) {
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of("the export of " + roll.id() + " is behind its roll and could not be written: "
                    + IoErrorText.words(e));
        }
    }

    /** Writes a step down; once this returns it is on the disk. */
    public void keep(JournalStep step) throws IOException {
        Batch batch = new Batch(step.step(), step.at());
        for (JournalEntry entry : step.entries()) {
            if (entry instanceof JournalEntry.OnRoll onRoll) {
                batch.add(onRoll.roll(), onRoll.event());
            } else if (entry instanceof JournalEntry.OnDay onDay) {
                batch.add(onDay.event());
            }
        }
        writer.append(batch);
    }

    /** Writes down what was decided about the scans of a roll; once this returns it is on the disk. */
    public void keep(RollId roll, OffsetDateTime at, List<ReviewEvent> events) throws IOException {
        writer.append(roll, at, events);
    }

    /** Keeps what is being typed. */
    public void draft(String text) throws IOException {
        writer.draft(text);
    }

    /** What was put right on the disk, or is about to go wrong: sentences for the photographer, often none. */
    public List<String> remarks() {
        return writer.remarks();
    }

    /** Sees to the export and the place of rolls that were finished, reopened or changed since. */
    public void settle(List<Roll> rolls) throws IOException {
        for (Roll roll : rolls) {
            writer.export(roll.id(), RollJson.text(roll, Version.madeBy(archive)));
            if (roll.state() == Roll.State.FINISHED) {
                writer.settleFinished(roll.id());
            } else {
                writer.settleOpen(roll.id());
            }
        }
    }

    /**
     * Brings each roll's export and the place of its journal to its last record, as far as a crash or a disk that
     * failed came in between.
     */
    public void settleLeftOvers(Iterable<Roll> rolls) throws IOException {
        IOException first = null;
        for (Roll roll : rolls) {
            if (roll.id().letters().equals(archive.writer())) {
                try {
                    settleLeftOver(roll);
                } catch (LaterVersion e) {
                    // said when it was read
                } catch (IOException e) {
                    first = first == null ? e : first;
                }
            }
        }
        if (first != null) {
            throw first;
        }
    }

    private void settleLeftOver(Roll roll) throws IOException {
        if (roll.state() == Roll.State.FINISHED || writer.isExported(roll.id())) {
            settle(List.of(roll));
        } else {
            writer.reopen(roll.id());
        }
    }

    @Override
    public void close() throws IOException {
        writer.close();
    }
}
