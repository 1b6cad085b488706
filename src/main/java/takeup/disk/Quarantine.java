package takeup.disk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What must make room in a journal's place, or can be read no longer, is kept beside it: {@code R0007.journal.torn-1},
 * {@code R0007.journal.other-1}, {@code R0007.journal.damaged-1}.
 */
public final class Quarantine {
    /** What a file aside holds, by its name: an end that was cut off, another file of that name, damaged lines. */
    public static final List<String> KINDS = List.of("torn", "other", "damaged");

    private Quarantine() {}

    /** The first name of {@code R0007.journal.torn-1}, {@code .torn-2} ... that is free. */
    private static Path free(FileSystem drive, Path path, String why) throws IOException {
        Set<String> taken = new HashSet<>(drive.names(path.toAbsolutePath().getParent()));
        int number = 1;
        while (taken.contains(name(path, why, number))) {
            number++;
        }
        return path.resolveSibling(name(path, why, number));
    }

    private static String name(Path path, String why, int number) {
        return path.getFileName() + "." + why + "-" + number;
    }

    /**
     * Copies a torn tail aside before it is cut off, if there is anything in it and room for it. Nobody was told that
     * it is safe, so a full disk is no reason to leave it in the way.
     */
    public static void tail(FileSystem drive, Path path, byte[] tail) {
        int at = 0;
        while (at < tail.length && tail[at] == 0) {
            at++;
        }
        if (at < tail.length) {
            copy(drive, path, "torn", tail);
        }
    }

    /**
     * Copies damaged lines aside, once; they stay in the journal too, so that a full disk is no reason not to go on.
     */
    public static void damaged(FileSystem drive, Path path, byte[] lines) {
        try {
            for (int number = 1;
                    drive.kind(path.resolveSibling(name(path, "damaged", number))) == FileSystem.Kind.FILE;
                    number++) {
                if (Arrays.equals(Folders.read(drive, path.resolveSibling(name(path, "damaged", number))), lines)) {
                    return;
                }
            }
        } catch (IOException e) {
            // then once more
        }
        copy(drive, path, "damaged", lines);
    }

    private static void copy(FileSystem drive, Path path, String why, byte[] bytes) {
        try {
            Path aside = free(drive, path, why);
            try {
                Folders.write(drive, aside, bytes);
                drive.forceNames(path.toAbsolutePath().getParent());
            } catch (IOException e) {
                Folders.forget(drive, aside);
            }
        } catch (IOException e) {
            // what cannot be listed cannot be written to either
        }
    }

    /**
     * Keeps what lies under a name under another one as well, unless it is no more than the beginning of what follows
     * it.
     */
    public static void other(FileSystem drive, Path path, byte[] following) throws IOException {
        Path folder = path.toAbsolutePath().getParent();
        if (!drive.names(folder).contains(path.getFileName().toString()) || isBeginning(drive, path, following)) {
            return;
        }
        Path aside = free(drive, path, "other");
        try {
            drive.link(aside, path);
        } catch (IOException e) {
            // a folder, or a disk without links
            Folders.move(drive, path, aside);
        }
        drive.forceNames(folder);
    }

    public static boolean isBeginning(FileSystem drive, Path path, byte[] of) {
        try {
            byte[] bytes = Folders.read(drive, path);
            return bytes.length <= of.length && Arrays.equals(bytes, 0, bytes.length, of, 0, bytes.length);
        } catch (IOException e) {
            return false;
        }
    }

    /**
     * Takes the shorter of two journals of one roll out of the way. What the longer one holds too needs not be kept.
     */
    public static void shorter(FileSystem drive, Path path, Path longer) throws IOException {
        if (isBeginning(drive, path, Folders.read(drive, longer))) {
            drive.delete(path);
        } else {
            Folders.move(drive, path, free(drive, path, "other"));
        }
    }
}
