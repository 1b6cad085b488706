package takeup.journal;

import java.util.List;

/**
 * What a journal held, or what of it could be read.
 *
 * @param records the records, in order
 * @param problems each with file, line and what it means
 */
public record JournalRecords<T>(List<T> records, List<String> problems) {
    /** Nothing, for that one reason. */
    static <T> JournalRecords<T> unreadable(String problem) {
        return new JournalRecords<>(List.of(), List.of(problem));
    }
}
