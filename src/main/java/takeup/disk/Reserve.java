package takeup.disk;

import java.io.IOException;
import java.nio.file.Path;

/**
 * A file of 256 KiB that does nothing but take up room, so that a disk that fills up in mid-roll still has some for the
 * frames that follow: it is given up when the first record does not fit. The next start puts it back.
 *
 * @param drive the disk
 * @param path where it lies
 */
public record Reserve(FileSystem drive, Path path) {
    private static final int SIZE = 256 << 10;
    /** Below this much room, in bytes, the photographer is told. */
    private static final long LOW = 50L << 20;

    /** The reserve of a data folder, made if there is room for it; a disk that has none is no reason not to start. */
    public static Reserve of(FileSystem drive, Path folder) {
        Reserve reserve = new Reserve(drive, folder.resolve("reserve"));
        try {
            if (drive.kind(reserve.path) == FileSystem.Kind.NOTHING && drive.room(folder) > 4L * SIZE) {
                Folders.replace(drive, reserve.path, new byte[SIZE]);
            }
        } catch (IOException e) {
            // without it a full disk is told of a little earlier, and nothing else
        }
        return reserve;
    }

    /** Gives the room up; false if it was given up before. */
    public boolean release() throws IOException {
        boolean was = drive.kind(path) == FileSystem.Kind.FILE && drive.delete(path);
        if (was) {
            drive.forceNames(path.toAbsolutePath().getParent());
        }
        return was;
    }

    /** Whether little room is left on the disk. */
    public boolean isLow() {
        long usable = drive.room(path.toAbsolutePath().getParent());
        return usable > 0 && usable < LOW;
    }
}
