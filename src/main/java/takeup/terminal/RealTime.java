package takeup.terminal;

import java.util.concurrent.TimeUnit;

/** Lets time pass in truth. */
final class RealTime implements TimedByteReader.Sleeper {
    @Override
    public int millis(int millis) throws InterruptedException {
        long begun = System.nanoTime();
        Thread.sleep(millis);
        return (int) TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun);
    }
}
