package takeup.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Many readings at once come out as if there had been one after the other. */
class ReadAheadTest {
    private static final List<Integer> KEYS = IntStream.range(0, 500).boxed().toList();

    private final List<String> taken = new ArrayList<>();

    /** Each odd one is held up until the even one behind it was read: with one thread this would stand still. */
    @Test
    void oneThatTakesLongHoldsUpTheOthersTurnAndNotTheirReading() {
        List<CountDownLatch> read =
                KEYS.stream().map(it -> new CountDownLatch(1)).toList();
        ReadAhead.inOrder(
                KEYS,
                2,
                key -> {
                    boolean waited = key % 2 == 0 || key == 499 || waits(read.get(key + 1));
                    read.get(key).countDown();
                    return key + (waited ? "" : " waited in vain");
                },
                taken::add);
        assertEquals(KEYS.stream().map(String::valueOf).toList(), taken);
    }

    private static boolean waits(CountDownLatch latch) {
        try {
            return latch.await(20, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            return false;
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 8})
    void noMoreAreReadAheadThanTwoForEachThread(int threads) {
        AtomicInteger begun = new AtomicInteger();
        AtomicInteger most = new AtomicInteger();
        ReadAhead.inOrder(
                KEYS,
                threads,
                key -> {
                    most.accumulateAndGet(begun.incrementAndGet(), Math::max);
                    return String.valueOf(key);
                },
                it -> {
                    begun.decrementAndGet();
                    return taken.add(it);
                });
        assertEquals(KEYS.stream().map(String::valueOf).toList(), taken);
        assertTrue(most.get() <= Math.max(1, 2 * threads), "read and not taken: " + most);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 8})
    void whoHasHadEnoughGetsNoMore(int threads) {
        ReadAhead.inOrder(KEYS, threads, String::valueOf, it -> taken.add(it) && !it.equals("3"));
        assertEquals(List.of("0", "1", "2", "3"), taken);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 8})
    void aMistakeComesOutInItsPlaceAsItWas(int threads) {
        IllegalStateException mistake = new IllegalStateException("frame 5");
        assertEquals(
                mistake,
                assertThrows(
                        IllegalStateException.class,
                        () -> ReadAhead.inOrder(
                                KEYS,
                                threads,
                                key -> {
                                    if (key == 5) {
                                        throw mistake;
                                    }
                                    return String.valueOf(key);
                                },
                                taken::add)));
        assertEquals(List.of("0", "1", "2", "3", "4"), taken);
        assertThrows(
                OutOfMemoryError.class,
                () -> ReadAhead.inOrder(
                        KEYS,
                        threads,
                        key -> {
                            throw new OutOfMemoryError("no room");
                        },
                        it -> true));
    }

    @Test
    void nothingToReadIsSoonDone() {
        ReadAhead.inOrder(List.of(), 4, String::valueOf, it -> taken.add("one"));
        ReadAhead.inOrder(List.of(), String::valueOf, it -> taken.add("one"));
        assertEquals(List.of(), taken);
    }
}
