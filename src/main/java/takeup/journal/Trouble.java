package takeup.journal;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Locale;

/** What went wrong with the disk, in words, with what to do. */
public final class Trouble {
    private Trouble() {
    }

    /** Whether the disk has no room for what was to be written. */
    static boolean isFull(IOException e) {
        String message = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
        return message.contains("no space left") || message.contains("disk quota");
    }

    /** The words for an exception from the disk. */
    public static String words(IOException e) {
        String message = String.valueOf(e.getMessage());
        String lower = message.toLowerCase(Locale.ROOT);
        if (isFull(e)) {
            return "the disk is full; free some space";
        }
        if (lower.contains("read-only")) {
            return "the disk can only be read; choose another data folder (--data DIR) or make it writable";
        }
        if (lower.contains("input/output error")) {
            return "the disk reports an error (Input/output error); copy the data folder to another disk";
        }
        if (e instanceof AccessDeniedException denied) {
            return "no permission for " + denied.getFile() + "; make it yours, or choose another data folder (--data DIR)";
        }
        if (e instanceof NoSuchFileException gone) {
            return gone.getFile() + " is not there";
        }
        if (e instanceof FileSystemException file && file.getReason() == null && file.getFile() != null) {
            return file.getFile() + " cannot be used (" + e.getClass().getSimpleName() + ")";
        }
        return e.getMessage() == null ? "the file was closed (" + e.getClass().getSimpleName() + ")" : message;
    }
}
