package takeup.message;

/**
 * A key that logs frames and came in without having been acted on yet, since it may be held down: then it comes again
 * at once.
 *
 * @param kind which key
 * @param count how often it came in; 0 if none waits
 * @param lastTicks when it did last, on the clock that only runs forward
 * @param isRepeat whether the first of them followed another press so closely that no hand made it
 */
public record HeldKey(Kind kind, int count, long lastTicks, boolean isRepeat) {
    /** The keys that log frames. */
    public enum Kind {
        /** Space logs a frame. */
        FRAME(Key.typed(" ")),
        /** Ctrl-T counts a frame that is written down later. */
        TALLY(Key.ctrl('t'));

        private final Key key;

        Kind(Key key) {
            this.key = key;
        }
    }

    public static final HeldKey NONE = new HeldKey(Kind.FRAME, 0, Long.MIN_VALUE / 2, false);

    /** A second Space within so many milliseconds may be the first repeat of a held one. */
    static final long BEFORE_REPEAT_MILLIS = 700;

    /** Key presses nearer to each other than this, in milliseconds, are a held key, a paste or a slow line. */
    public static final long REPEAT_MILLIS = 60;

    /** Whether the key is held down, or came in a burst: then none of it is a frame by itself. */
    public boolean isHeld() {
        return count > 1 || isWaiting() && isRepeat;
    }

    public boolean isWaiting() {
        return count > 0;
    }

    /** Whether so long has passed that the next press is one of its own. */
    public boolean isOver(long ticks) {
        return ticks - lastTicks >= REPEAT_MILLIS;
    }

    /** Whether a key press now is the held key once more. */
    public boolean isRepeatedBy(Key key, long ticks) {
        return isWaiting() && key.equals(kind.key) && !isOver(ticks);
    }

    /** Whether a press now comes so long after the one before that it cannot be a held key. */
    public boolean isFirst(long ticks) {
        return count == 0 && ticks - lastTicks >= BEFORE_REPEAT_MILLIS;
    }

    /** As if a press had come right before. */
    public HeldKey inABurst(long ticks) {
        return isWaiting() ? this : new HeldKey(kind, 0, ticks, false);
    }

    /** With nothing waiting; when the last press was is kept. */
    public HeldKey settled() {
        return new HeldKey(kind, 0, lastTicks, false);
    }

    /** A press that was acted on at once. */
    public static HeldKey actedOn(long ticks) {
        return new HeldKey(Kind.FRAME, 0, ticks, false);
    }

    public HeldKey pressed(Kind pressed, long ticks) {
        boolean follows = pressed == kind && !isOver(ticks);
        return new HeldKey(pressed, count + 1, ticks, isWaiting() ? isRepeat : follows);
    }
}
