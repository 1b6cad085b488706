package takeup.report;

import java.util.Locale;

/** Where a roll is at the end of the day. */
public enum Whereabouts {
    CLOSED("closed"),
    IN_CAMERA("in a camera"),
    REWOUND("rewound, to be loaded again"),
    WITHDRAWN("withdrawn: the loading was taken back"),
    MISSING("MISSING");

    private final String words;

    Whereabouts(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** As other programs read it: {@code in-camera}. */
    String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
