package takeup.session;

/**
 * A key that logs frames and came in without having been acted on yet, since it may be held down: then it comes again
 * at once.
 *
 * @param kind which key
 * @param count how often it came in; 0 if none waits
 * @param lastTicks when it did last, on the clock that only runs forward
 */
record HeldKey(Kind kind, int count, long lastTicks) {
    /** The keys that log frames. */
    enum Kind {
        /** Space logs a frame. */
        FRAME(Key.typed(" ")),
        /** Ctrl-T counts a frame that is written down later. */
        TALLY(Key.ctrl('t'));

        private final Key key;

        Kind(Key key) {
            this.key = key;
        }
    }

    static final HeldKey NONE = new HeldKey(Kind.FRAME, 0, 0);

    /** Key presses nearer to each other than this, in milliseconds, are a held key, a paste or a slow line. */
    static final long REPEAT_MILLIS = 60;

    boolean isWaiting() {
        return count > 0;
    }

    /** Whether so long has passed that the next press is one of its own. */
    boolean isOver(long ticks) {
        return ticks - lastTicks >= REPEAT_MILLIS;
    }

    /** Whether a key press now is the held key once more. */
    boolean isRepeatedBy(Key key, long ticks) {
        return isWaiting() && key.equals(kind.key) && !isOver(ticks);
    }

    HeldKey pressed(Kind pressed, long ticks) {
        return new HeldKey(pressed, count + 1, ticks);
    }
}
