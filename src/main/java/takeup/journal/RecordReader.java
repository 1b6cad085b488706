package takeup.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import takeup.day.DayRecord;
import takeup.disk.IoErrorText;
import takeup.records.DayEventJson;
import takeup.records.Fields;
import takeup.records.ReviewEventJson;
import takeup.records.RollEventJson;
import takeup.review.ReviewEvent;
import takeup.roll.RollRecord;

/**
 * Reads the records of one journal. What cannot be read is left out and told with its place, and the others are read.
 */
abstract class RecordReader<T> {
    /** A day's. */
    static final class OfDay extends RecordReader<DayRecord> {
        @Override
        DayRecord record(JournalLines.Line line) {
            return new DayRecord(line.step(), line.at(), DayEventJson.event(new Fields(line.whole()), line));
        }
    }

    /** A roll's. */
    static final class OfRoll extends RecordReader<RollRecord> {
        @Override
        RollRecord record(JournalLines.Line line) {
            return new RollRecord(line.step(), line.at(), RollEventJson.event(new Fields(line.whole()), line));
        }

        @Override
        String missing(List<RollRecord> records, int at) {
            return MissingFrames.words(records, at);
        }
    }

    /** What was decided about the scans of a roll. */
    static final class OfReview extends RecordReader<ReviewEvent> {
        @Override
        ReviewEvent record(JournalLines.Line line) {
            return ReviewEventJson.event(new Fields(line.whole()), line);
        }
    }

    /** Makes a record of a line, or refuses it with {@link Fields.Unreadable} or an IllegalArgumentException. */
    abstract T record(JournalLines.Line line);

    /** What is missing in a gap, as the records before and after that place in the list tell. */
    String missing(List<T> records, int at) {
        return "";
    }

    JournalRecords<T> read(UnfinishedStep step, Path path) {
        String name = path.getFileName().toString();
        byte[] bytes;
        try {
            bytes = step.readConfirmed(path);
        } catch (IOException e) {
            return JournalRecords.unreadable(name + ":1: cannot be read: " + IoErrorText.words(e));
        }
        JournalLines.Content content = JournalReader.read(name, bytes);
        List<String> problems = new ArrayList<>(content.problems());
        if (content.newer()) {
            problems.add(name
                    + ":1: a later version of takeup wrote this file; what this one does not know is "
                    + "passed over, and nothing is written to it");
        }
        List<T> records = new ArrayList<>();
        List<Integer> gaps = new ArrayList<>();
        List<String> heads = new ArrayList<>();
        int before = 0;
        for (JournalLines.Line line : content.lines()) {
            if (line.n() > before + 1) {
                gaps.add(records.size());
                heads.add(name + ":" + line.number() + ": in front of this line "
                        + (line.n() - before == 2
                                ? "record " + (before + 1) + " is"
                                : "records " + (before + 1) + " to " + (line.n() - 1) + " are")
                        + " missing");
            }
            before = line.n();
            try {
                records.add(record(line));
            } catch (Fields.Unreadable | IllegalArgumentException e) {
                problems.add(name + ":" + line.number() + ": record " + line.n()
                        + " cannot be understood and is left out: " + e.getMessage());
            }
        }
        for (int i = 0; i < gaps.size(); i++) {
            problems.add(heads.get(i) + missing(records, gaps.get(i)) + "; the others are whole");
        }
        return new JournalRecords<>(records, problems);
    }
}
