package takeup.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.Set;

/**
 * The lock of a data folder: the system frees it when its holder ends, however it ends. The file holds the number of
 * the process.
 *
 * <p>The file is opened once in a program: closing any other channel on it, also one that was only read, would free the
 * lock without a word.
 */
final class Lock implements FileSystem.Hold {
    private static final Set<Object> HELD = new HashSet<>();
    private final Path path;
    private final FileChannel channel;
    private final Object key;

    private Lock(Path path, FileChannel channel, Object key) {
        this.path = path;
        this.channel = channel;
        this.key = key;
    }

    static Lock take(Path path) throws IOException {
        synchronized (HELD) {
            if (Folders.isFile(FileSystem.REAL, path)) {
                if (HELD.contains(FileSystem.REAL.key(path))) {
                    throw taken(ownNumber());
                }
                RealFileSystem.refuseForeign(path);
            }
            FileChannel channel = FileChannel.open(
                    path,
                    Set.of(
                            StandardOpenOption.READ,
                            StandardOpenOption.WRITE,
                            StandardOpenOption.CREATE,
                            LinkOption.NOFOLLOW_LINKS),
                    RealFileSystem.mode("rw-------"));
            try {
                if (!isLocked(channel)) {
                    throw taken(holder(channel));
                }
                sign(path, channel);
                Lock lock = new Lock(path, channel, FileSystem.REAL.key(path));
                HELD.add(lock.key);
                return lock;
            } catch (IOException | RuntimeException e) {
                channel.close();
                throw e;
            }
        }
    }

    private static boolean isLocked(FileChannel channel) throws IOException {
        try {
            return channel.tryLock() != null;
        } catch (OverlappingFileLockException e) {
            return false;
        }
    }

    /** What somebody else wrote there, or what bears a second name elsewhere, is not overwritten. */
    private static void sign(Path path, FileChannel channel) {
        try {
            if (FileSystem.REAL.hasSecondName(path)
                    || channel.size() > 0 && holder(channel).isEmpty()) {
                return;
            }
            ByteBuffer pid = ByteBuffer.wrap((ownNumber() + "\n").getBytes(StandardCharsets.US_ASCII));
            int length = channel.write(pid, 0);
            channel.truncate(length);
        } catch (IOException e) {
            // The number is a courtesy: on a full disk the folder must still open.
        }
    }

    /** The number of this program; Linux has it for a look, elsewhere Java makes a pool of threads ready for it. */
    private static String ownNumber() {
        try {
            return Files.readSymbolicLink(Path.of("/proc/self")).toString();
        } catch (IOException | RuntimeException elsewhere) {
            return Long.toString(ProcessHandle.current().pid());
        }
    }

    private static String holder(FileChannel channel) {
        try {
            ByteBuffer buffer = ByteBuffer.allocate(32);
            channel.read(buffer, 0);
            String pid = new String(buffer.array(), 0, buffer.position(), StandardCharsets.US_ASCII).strip();
            for (int i = 0; i < pid.length(); i++) {
                if (pid.charAt(i) < '0' || pid.charAt(i) > '9') {
                    return "";
                }
            }
            return pid;
        } catch (IOException e) {
            return "";
        }
    }

    private static FolderInUse taken(String pid) {
        return new FolderInUse(
                "another takeup" + (pid.isEmpty() ? "" : " (process " + pid + ")") + " is writing in this folder");
    }

    @Override
    public boolean isSeen() {
        try {
            return key.equals(FileSystem.REAL.key(path));
        } catch (IOException e) {
            return false;
        }
    }

    @Override
    public void close() throws IOException {
        synchronized (HELD) {
            HELD.remove(key);
            channel.close();
        }
    }
}
