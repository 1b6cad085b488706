package takeup.cli;

/**
 * When what stands on the prompt is kept for the next start: the first letter after a pause at once, then each half
 * second, and what was typed last in the same time, whether more follows or not.
 */
final class DraftPace {
    /** As much typing as a program that dies may lose. */
    static final long MILLIS = 500;

    private String kept = "";
    private long keptAt;

    DraftPace(long now) {
        keptAt = now;
    }

    /** The longest time to wait before the next look, so many milliseconds at most. */
    long wait(String typed, long now, long most) {
        return typed.equals(kept) ? most : Math.max(0, Math.min(most, keptAt + MILLIS - now));
    }

    /** Whether it is kept now. A prompt that was emptied holds nothing to wait for. */
    boolean takes(String typed, long now) {
        if (typed.equals(kept) || !typed.isEmpty() && now - keptAt < MILLIS) {
            return false;
        }
        kept = typed;
        keptAt = now;
        return true;
    }

    /** Whether it is kept now that the program ends: no later look comes. */
    boolean takesLast(String typed) {
        return !typed.equals(kept);
    }
}
