package takeup.disk;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.Iterator;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Reads many things on all cores and hands them over one by one in their order. A core has one in work and one that
 * waits to be taken, so that an archive of any size takes no more memory than a few rolls.
 */
public final class ReadAhead {
    /** Fewer are read before a second thread has its first. */
    private static final int WORTH = 50;
    /**
     * The largest journal, as frames and as text, needs no more bytes than this; with less to go round one thread
     * reads.
     */
    private static final long ROOM = 256L << 20;

    private ReadAhead() {}

    /**
     * Reads what the keys stand for.
     *
     * @param read called on several threads at once; what it throws comes out here, once all before it were taken
     * @param isGoingOn takes one after the other, on this thread, and tells whether the next is wanted
     */
    public static <K, V> void inOrder(Collection<K> keys, Function<K, V> read, Predicate<V> isGoingOn) {
        Runtime machine = Runtime.getRuntime();
        inOrder(
                keys,
                keys.size() < WORTH ? 1 : (int) Math.min(machine.availableProcessors(), machine.maxMemory() / ROOM),
                read,
                isGoingOn);
    }

    static <K, V> void inOrder(Collection<K> keys, int threads, Function<K, V> read, Predicate<V> isGoingOn) {
        Iterator<K> rest = keys.iterator();
        if (threads < 2) {
            while (rest.hasNext() && isGoingOn.test(read.apply(rest.next()))) {
                // the next
            }
            return;
        }
        ExecutorService readers = Executors.newFixedThreadPool(threads, ReadAhead::reader);
        try {
            Deque<CompletableFuture<V>> ahead = new ArrayDeque<>();
            do {
                while (ahead.size() < 2 * threads && rest.hasNext()) {
                    K key = rest.next();
                    ahead.add(CompletableFuture.supplyAsync(() -> read.apply(key), readers));
                }
            } while (!ahead.isEmpty() && isGoingOn.test(taken(ahead.remove())));
        } finally {
            readers.shutdown();
        }
    }

    /** One that is still reading keeps no program from its end. */
    private static Thread reader(Runnable reading) {
        Thread thread = new Thread(reading, "reader");
        thread.setDaemon(true);
        return thread;
    }

    private static <V> V taken(CompletableFuture<V> one) {
        try {
            return one.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException mistake) {
                throw mistake;
            }
            if (e.getCause() instanceof Error mistake) {
                throw mistake;
            }
            throw e;
        }
    }
}
