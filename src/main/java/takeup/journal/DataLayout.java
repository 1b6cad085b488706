package takeup.journal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import takeup.disk.Folders;
import takeup.records.FastIsoParser;
import takeup.roll.RollId;
import takeup.roll.RollNumbers;

/**
 * Where each file of a data folder lies, and what the name of a file says. It looks at no disk.
 *
 * @param root the data folder
 * @param writer the letters that this writer's roll numbers begin with, and that its days bear unless they are those of
 *     the first
 */
record DataLayout(Path root, String writer) {
    /** The letters of the writer whose days have no letters in their names. */
    static final String FIRST_WRITER = "R";

    static final String ENDING = ".journal";

    static DataLayout of(Path root) {
        return new DataLayout(root, FIRST_WRITER);
    }

    /** The folders that a data folder always has, itself first; {@link #reviews} comes with the first scans. */
    List<Path> folders() {
        return List.of(root, openRolls(), finishedRolls(), days(), exports());
    }

    /** Those of them without which nothing can be logged. */
    List<Path> journalFolders() {
        return List.of(root, root.resolve("rolls"), openRolls(), finishedRolls(), days());
    }

    Path openRolls() {
        return root.resolve("rolls").resolve("open");
    }

    Path finishedRolls() {
        return root.resolve("rolls").resolve("finished");
    }

    Path days() {
        return root.resolve("days");
    }

    /** Where the finished rolls lie as JSON. */
    Path exports() {
        return root.resolve("exports");
    }

    /** Where it lies what was decided about scans. */
    Path reviews() {
        return root.resolve("reviews");
    }

    /** Holds what is made of the journals so that large archives are listed quickly. */
    Path index() {
        return root.resolve("index");
    }

    Path lock() {
        return root.resolve("lock");
    }

    /** Holds what was being typed when the program ended last. */
    Path draft() {
        return root.resolve("draft");
    }

    /** Holds the day that was written on when the clock had gone back, so that it was not the newest. */
    Path wentBackTo() {
        return root.resolve("went-back-to");
    }

    /** Holds the highest number that a roll of this writer ever had. */
    Path lastRoll() {
        return root.resolve("last-roll" + (writer.equals(FIRST_WRITER) ? "" : "-" + writer));
    }

    /** Holds a step of this writer that is being written to several journals. */
    Path unfinished() {
        return root.resolve("unfinished" + (writer.equals(FIRST_WRITER) ? "" : "-" + writer));
    }

    Path open(RollId roll) {
        return openRolls().resolve(roll + ENDING);
    }

    Path finished(RollId roll) {
        return finishedRolls().resolve(roll + ENDING);
    }

    Path day(LocalDate date) {
        return days().resolve(date + (writer.equals(FIRST_WRITER) ? "" : "-" + writer) + ENDING);
    }

    Path review(RollId roll) {
        return reviews().resolve(roll + ENDING);
    }

    Path export(RollId roll) {
        return exports().resolve(roll + ".json");
    }

    /** The roll whose journal has that name, given without its end. */
    static Optional<RollId> roll(String name) {
        Optional<RollId> roll = RollId.parse(name);
        return roll.isPresent() && roll.get().toString().equals(name) ? roll : Optional.empty();
    }

    /** The rolls whose journals are among files of these names. */
    static RollNumbers rolls(List<String> names) {
        return RollNumbers.named(Folders.names(names, ENDING));
    }

    /**
     * Whose day a file is by its name, given without its end: 2026-09-12 the first writer's, 2026-09-12-AB the one of
     * AB.
     */
    static Optional<String> dayWriter(String name) {
        if (FastIsoParser.date(name).isPresent()) {
            return Optional.of(FIRST_WRITER);
        }
        String letters = name.length() > 11
                        && name.charAt(10) == '-'
                        && FastIsoParser.date(name.substring(0, 10)).isPresent()
                ? name.substring(11)
                : "";
        Optional<RollId> roll = RollId.parse(letters + "1");
        boolean isOther = roll.isPresent() && roll.get().letters().equals(letters) && !letters.equals(FIRST_WRITER);
        return isOther ? Optional.of(letters) : Optional.empty();
    }

    /** Whether a folder of a data folder holds journals and nothing else. */
    boolean holdsJournals(Path folder) {
        return folder.equals(days()) || folder.equals(reviews()) || folder.startsWith(root.resolve("rolls"));
    }

    /** Whether a file there has a name that makes it a journal. */
    boolean isJournal(Path folder, String name) {
        String front = name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : "";
        return folder.equals(days())
                ? dayWriter(front).isPresent()
                : roll(front).isPresent();
    }
}
