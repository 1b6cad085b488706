package takeup.message;

/** How far leaving the program has come. */
public enum Leaving {
    NO,
    /** Ctrl-C was pressed once; a second one leaves. */
    CTRL_C_ONCE,
    /** As soon as the disk has everything. */
    WHEN_SAVED,
    /** As soon as the disk answers, whatever it says. */
    ANYWAY;

    public boolean isUnderWay() {
        return this == WHEN_SAVED || this == ANYWAY;
    }
}
