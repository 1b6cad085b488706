package takeup.grid;

/** What a piece of text is on the screen, such as {@link #READOUT}; a {@link Theme} says how that looks. */
public enum TextRole {
    /** Plain text. */
    NORMAL,
    /** Text that may be overlooked. */
    QUIET,
    /** Text that matters. */
    STRONG,
    /** What is read from two metres away: the pair to set, the counters. */
    READOUT,
    /** The name of what stands beside it. */
    LABEL,
    /** All is well: it is on the disk. */
    GOOD,
    /** A warning. */
    CAUTION,
    /** Something could not be saved. */
    ALARM,
    /** The prompt and what is typed on it. */
    PROMPT,
    /** The cursor, in a theme that draws it itself. */
    CURSOR,
    /** The highlighted row of a list. */
    CHOSEN,
    /** The body of the film strip. */
    FILM,
    /** A frame of the strip that has been exposed. */
    FRAME,
    /** A frame of the strip that has not. */
    EMPTY,
    /** The name of a key in the footer. */
    KEY,
    /** The bar along the top or the foot. */
    BAR,
    /** Camera or film on a plate, where large letters have no room. */
    NAME
}
