package takeup.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import takeup.disk.FileSystem;
import takeup.disk.FolderInUse;

/** The lock of a data folder as its writer holds it, looked after for as long as the folder is written to. */
final class FolderLock implements AutoCloseable {
    private final FileSystem drive;
    private final Path file;
    /** Gets a sentence for what was put right. */
    private final List<String> remarks;

    private FileSystem.Hold hold;
    private boolean isLossReported;

    FolderLock(FileSystem drive, Path file, List<String> remarks) throws IOException {
        this.drive = drive;
        this.file = file;
        this.remarks = remarks;
        this.hold = drive.hold(file);
    }

    /**
     * Without its file the lock is there and nobody sees it. A frame is refused only where another program has come in.
     */
    void renew() throws IOException {
        if (hold.isSeen()) {
            return;
        }
        hold.close();
        try {
            hold = drive.hold(file);
            remarks.add("the lock file was deleted or replaced by another program; it is back");
            isLossReported = false;
        } catch (FolderInUse e) {
            throw e;
        } catch (IOException e) {
            if (!isLossReported) {
                remarks.add(
                        "the lock file was deleted and cannot be made again: start no second takeup in this folder");
            }
            isLossReported = true;
        }
    }

    @Override
    public void close() throws IOException {
        hold.close();
    }
}
