package takeup.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.disk.MemoryFileSystem;
import takeup.roll.RollId;

/** A data folder on a disk in memory, for the whole way from a typed line to the disk. */
public final class MemoryArchive {
    private MemoryArchive() {}

    /** The folder as the first writer sees it. */
    public static Archive on(MemoryFileSystem drive) {
        return new Archive(drive, RegattaDay.FOLDER);
    }

    /** The bytes of a file below the folder; empty where there is none. */
    public static Optional<String> text(MemoryFileSystem drive, String name) throws IOException {
        Path file = RegattaDay.FOLDER.resolve(name);
        return drive.names(file.getParent()).contains(file.getFileName().toString())
                ? Optional.of(new String(drive.read(file), java.nio.charset.StandardCharsets.UTF_8))
                : Optional.empty();
    }

    /** Everything that is wrong with the journals, in words; those of rolls, days, and what lies beside them. */
    public static List<String> problems(MemoryFileSystem drive) throws IOException {
        Archive archive = on(drive);
        List<String> problems = new ArrayList<>(archive.leftOvers());
        RegattaDay.read(drive, problems);
        for (RollId id : archive.openRolls()) {
            if (archive.finishedRolls().contains(id)) {
                problems.add(id + " lies in two places");
            }
        }
        if (archive.holdsUnfinishedStep()) {
            problems.add("a step is not whole");
        }
        return problems;
    }
}
