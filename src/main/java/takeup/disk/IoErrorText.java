package takeup.disk;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Locale;

/** What went wrong with the disk, in words, with what to do. */
public final class IoErrorText {
    private static final String NO_SPACE = "no space left";

    private IoErrorText() {}

    /** Below so many bytes a disk that refuses is full, whatever language it says so in. */
    private static final long NO_ROOM = 64 << 10;

    /**
     * The same exception, or one that says in words known here that the disk is full: where there is no room, and no
     * other reason is given.
     */
    public static IOException named(IOException e, long room) {
        boolean open = e.getClass() == IOException.class
                || e.getClass() == FileSystemException.class && ((FileSystemException) e).getReason() != null;
        return open && room < NO_ROOM && !isFull(e) && !isReadOnly(e) && !isBroken(e)
                ? new IOException(NO_SPACE, e)
                : e;
    }

    private static boolean says(IOException e, String words) {
        return String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT).contains(words);
    }

    private static boolean isReadOnly(IOException e) {
        return says(e, "read-only");
    }

    private static boolean isBroken(IOException e) {
        return says(e, "input/output error");
    }

    private static boolean isWithoutLocks(IOException e) {
        return says(e, "no locks available");
    }

    /** Whether the disk has no room for what was to be written. */
    public static boolean isFull(IOException e) {
        return says(e, NO_SPACE) || says(e, "disk quota");
    }

    /** What went wrong, with what to do: {@code the disk is full; free some space}. */
    public static String words(IOException e) {
        return reason(e) + remedy(e);
    }

    /** What went wrong alone: {@code the disk is full}. */
    public static String reason(IOException e) {
        if (isFull(e)) {
            return "the disk is full";
        }
        if (isReadOnly(e)) {
            return "the disk can only be read";
        }
        if (isBroken(e)) {
            return "the disk reports an error";
        }
        if (isWithoutLocks(e)) {
            return "this folder's disk cannot lock files";
        }
        if (e instanceof AccessDeniedException denied) {
            return "no permission for " + denied.getFile();
        }
        if (e instanceof NoSuchFileException gone) {
            return gone.getFile() + " is not there";
        }
        if (isNamedOnly(e)) {
            return ((FileSystemException) e).getFile() + " cannot be used";
        }
        return e.getMessage() == null ? "the file was closed" : e.getMessage();
    }

    private static String remedy(IOException e) {
        if (isFull(e)) {
            return "; free some space";
        }
        if (isReadOnly(e)) {
            return "; choose another data folder (--data DIR) or make it writable";
        }
        if (isBroken(e)) {
            return " (Input/output error); copy the data folder to another disk";
        }
        if (isWithoutLocks(e)) {
            return ", as some network folders; choose a folder on this machine (--data DIR)";
        }
        if (e instanceof AccessDeniedException) {
            return "; make it yours, or choose another data folder (--data DIR)";
        }
        boolean isUnexplained = !(e instanceof NoSuchFileException) && (isNamedOnly(e) || e.getMessage() == null);
        return isUnexplained ? " (" + e.getClass().getSimpleName() + ")" : "";
    }

    /** Whether it names a file and no reason. */
    private static boolean isNamedOnly(IOException e) {
        return e instanceof FileSystemException file && file.getReason() == null && file.getFile() != null;
    }
}
