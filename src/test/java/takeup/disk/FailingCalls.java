package takeup.disk;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.List;

/** A disk of which the calls from one on fail, so many of them. */
public final class FailingCalls implements MemoryFileSystem.Fault {
    /** What a disk says, as Java hands it on. */
    public enum Kind {
        BROKEN,
        FULL,
        READ_ONLY,
        DENIED,
        HALF_WRITTEN;

        IOException of(String call, Path path) {
            boolean byName = !List.of("write", "force", "truncate", "channel size", "close")
                    .contains(call);
            return switch (this) {
                case BROKEN -> said(byName, path, "Input/output error");
                case FULL, HALF_WRITTEN -> said(byName, path, "No space left on device");
                case READ_ONLY -> said(byName, path, "Read-only file system");
                case DENIED ->
                    byName ? new AccessDeniedException(path.toString()) : new IOException("Permission denied");
            };
        }

        private static IOException said(boolean byName, Path path, String words) {
            return byName ? new FileSystemException(path.toString(), null, words) : new IOException(words);
        }
    }

    private final int first;
    private final int count;
    private final Kind kind;
    private int calls;
    private int failed;
    private boolean half;

    public FailingCalls(int first, int count, Kind kind) {
        this.first = first;
        this.count = count;
        this.kind = kind;
    }

    @Override
    public void before(String call, Path path) throws IOException {
        calls++;
        if (half) {
            half = false;
            failed++;
            throw kind.of(call, path);
        }
        if (calls >= first && calls < first + count) {
            if (kind == Kind.HALF_WRITTEN && call.equals("write")) {
                half = true;
                return;
            }
            failed++;
            throw kind.of(call, path);
        }
    }

    @Override
    public int takes(int bytes) {
        return half ? bytes / 2 : bytes;
    }

    /** How many calls there were. */
    public int calls() {
        return calls;
    }

    /** How many of them failed. */
    public int failed() {
        return failed;
    }
}
