package takeup.roll;

import java.util.Optional;

/** What the lab must know of a roll: torn perforations, a back that was opened. */
public record Condition(Kind kind, Optional<String> words) {
    /** What happened to the film. */
    public enum Kind {
        TORN("torn"),
        OPENED("opened"),
        STUCK("stuck"),
        PARTIAL("partial"),
        OTHER("other");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The kind of that name. */
        public static Optional<Kind> named(String word) {
            for (Kind kind : values()) {
                if (kind.word.equals(word)) {
                    return Optional.of(kind);
                }
            }
            return Optional.empty();
        }

        @Override
        public String toString() {
            return word;
        }
    }
}
