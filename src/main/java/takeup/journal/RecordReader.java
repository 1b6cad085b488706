package takeup.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import takeup.disk.FileSystem;
import takeup.disk.Folders;
import takeup.disk.IoErrorText;
import takeup.records.Fields;

/**
 * Reads the records of one journal. What cannot be read is left out and told with its place, and the others are read.
 *
 * @param decoder makes a record of a line
 * @param gap says what is missing where numbers of records are left out
 */
record RecordReader<T>(Decoder<T> decoder, Gap<T> gap) {
    /** Makes a record of a line, or refuses it with {@link Fields.Unreadable} or an IllegalArgumentException. */
    interface Decoder<T> {
        T decode(JournalLines.Line line);
    }

    /** What the records before and after a gap, at that place in the list, say of what is missing. */
    interface Gap<T> {
        String words(List<T> records, int at);
    }

    JournalRecords<T> read(FileSystem drive, Path path) {
        String name = path.getFileName().toString();
        byte[] bytes;
        try {
            bytes = Folders.read(drive, path);
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
                records.add(decoder.decode(line));
            } catch (Fields.Unreadable | IllegalArgumentException e) {
                problems.add(name + ":" + line.number() + ": record " + line.n()
                        + " cannot be understood and is left out: " + e.getMessage());
            }
        }
        for (int i = 0; i < gaps.size(); i++) {
            problems.add(heads.get(i) + gap.words(records, gaps.get(i)) + "; the others are whole");
        }
        return new JournalRecords<>(records, problems);
    }
}
