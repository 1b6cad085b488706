package takeup.roll;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** What a roll cost, in the photographer's own money; a kind that is named again replaces what was said before. */
public record Costs(Map<Kind, BigDecimal> amounts) {
    /** What is paid for. */
    public enum Kind {
        FILM("film"),
        DEVELOPMENT("development"),
        SCANS("scans");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The kind of that name. */
        public static Optional<Kind> named(String word) {
            return Arrays.stream(values()).filter(it -> it.word.equals(word)).findFirst();
        }

        @Override
        public String toString() {
            return word;
        }
    }

    /** Nothing known. */
    public static final Costs NONE = new Costs(Map.of());

    public Costs {
        amounts = Map.copyOf(amounts);
    }

    Costs with(Kind kind, BigDecimal amount) {
        Map<Kind, BigDecimal> all = new EnumMap<>(Kind.class);
        all.putAll(amounts);
        all.put(kind, amount);
        return new Costs(all);
    }

    /** What is known of a kind. */
    public Optional<BigDecimal> of(Kind kind) {
        return Optional.ofNullable(amounts.get(kind));
    }
}
