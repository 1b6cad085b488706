package takeup.reviewing;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import takeup.files.ScanFolder;
import takeup.scans.Picture;

/**
 * The small copies of a folder's scans, the one under the cursor larger: read on a thread of its own, so that no key
 * waits for it. Only a few larger ones are kept.
 */
final class LargerScans {
    private static final int KEPT = 24;

    private final Path folder;
    private final Map<String, Picture> small;
    private final Map<String, Picture> shown;
    private final Deque<String> larger = new ArrayDeque<>();
    private volatile String wanted = "";
    private boolean isReading;

    LargerScans(Path folder, Map<String, Picture> small) {
        this.folder = folder;
        this.small = small;
        this.shown = new ConcurrentHashMap<>(small);
    }

    /** The scans as they can be shown now, by the names of their files. */
    Map<String, Picture> shown() {
        return shown;
    }

    /** Reads a scan larger, and says when it is there; of several that are asked for meanwhile the last one counts. */
    synchronized void want(String file, Runnable ready) {
        wanted = file;
        if (!isReading && !larger.contains(file) && small.containsKey(file)) {
            isReading = true;
            Thread reader = new Thread(() -> read(ready), "a larger scan");
            reader.setDaemon(true);
            reader.start();
        }
    }

    private void read(Runnable ready) {
        Optional<String> next = Optional.of(wanted);
        while (next.isPresent()) {
            Optional<Picture> picture = ScanFolder.larger(folder, next.get());
            next = keep(next.get(), picture);
            ready.run();
        }
    }

    /** Keeps it, and answers which one is wanted by now; empty if none is. */
    private synchronized Optional<String> keep(String file, Optional<Picture> picture) {
        picture.ifPresent(it -> shown.put(file, it));
        larger.addLast(file);
        if (larger.size() > KEPT) {
            String oldest = larger.removeFirst();
            shown.put(oldest, small.get(oldest));
        }
        isReading = !larger.contains(wanted) && small.containsKey(wanted);
        return isReading ? Optional.of(wanted) : Optional.empty();
    }
}
