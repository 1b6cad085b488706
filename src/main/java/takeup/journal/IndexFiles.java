package takeup.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import takeup.disk.FileSystem;
import takeup.disk.Folders;

/**
 * The files of the index, {@code index/}: made of the journals and thrown away without loss. Nothing waits for them, so
 * what cannot be read or written there is passed over; no link is followed.
 */
public final class IndexFiles {
    private final FileSystem drive;
    private final Path folder;

    IndexFiles(FileSystem drive, Path folder) {
        this.drive = drive;
        this.folder = folder;
    }

    /** A file of the index; empty where there is none that can be read. */
    public Optional<byte[]> read(String name) {
        try {
            Folders.refuseLink(drive, folder);
            return drive.kind(folder.resolve(name)) == FileSystem.Kind.NOTHING
                    ? Optional.empty()
                    : Optional.of(Folders.read(drive, folder.resolve(name)));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Puts a file in its place, whole; where that fails the next one who asks makes it. */
    public void write(String name, byte[] bytes) {
        try {
            Folders.refuseLink(drive, folder);
            if (bytes.length <= Folders.LARGEST) {
                Folders.replace(drive, folder.resolve(name), bytes);
            }
        } catch (IOException e) {
            // a folder that can only be read, or a full disk: the journals say the same
        }
    }
}
