package takeup.journal;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;

/** What must make room in a journal's place is kept beside it: {@code R0007.journal.torn-1}, {@code R0007.journal.other-1}. */
final class Aside {
    private Aside() {
    }

    /** The first name of {@code R0007.journal.torn-1}, {@code .torn-2} ... that is free. */
    private static Path free(Path path, String why) {
        int number = 1;
        while (Files.exists(path.resolveSibling(path.getFileName() + "." + why + "-" + number), LinkOption.NOFOLLOW_LINKS)) {
            number++;
        }
        return path.resolveSibling(path.getFileName() + "." + why + "-" + number);
    }

    /**
     * Copies a torn tail aside before it is cut off, if there is anything in it and room for it. Nobody was told that it
     * is safe, so a full disk is no reason to leave it in the way.
     */
    static void tail(Path path, byte[] tail) {
        int at = 0;
        while (at < tail.length && tail[at] == 0) {
            at++;
        }
        if (at == tail.length) {
            return;
        }
        Path aside = free(path, "torn");
        try {
            Folders.write(aside, tail);
            Folders.force(path.toAbsolutePath().getParent());
        } catch (IOException e) {
            Folders.forget(aside);
        }
    }

    /** Keeps what lies under a name under another one as well, unless it is no more than the beginning of what follows it. */
    static void other(Path path, byte[] following) throws IOException {
        if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS) || isBeginning(path, following)) {
            return;
        }
        Path aside = free(path, "other");
        try {
            Files.createLink(aside, path);
        } catch (UnsupportedOperationException | FileSystemException e) {
            // a folder, or a disk without links
            Folders.move(path, aside);
        }
        Folders.force(path.toAbsolutePath().getParent());
    }

    static boolean isBeginning(Path path, byte[] of) {
        try {
            byte[] bytes = Folders.read(path);
            return bytes.length <= of.length && Arrays.equals(bytes, 0, bytes.length, of, 0, bytes.length);
        } catch (IOException e) {
            return false;
        }
    }

    /** Takes the shorter of two journals of one roll out of the way. What the longer one holds too needs not be kept. */
    static void shorter(Path path, Path longer) throws IOException {
        if (isBeginning(path, Folders.read(longer))) {
            Files.delete(path);
        } else {
            Folders.move(path, free(path, "other"));
        }
    }
}
