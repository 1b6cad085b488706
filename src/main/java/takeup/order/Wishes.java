package takeup.order;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** What was wished of a lab; what is not in it was left to the lab. */
public record Wishes(Map<Wish, String> byWish) {
    private static final int LONGEST = 500;

    public Wishes {
        EnumMap<Wish, String> copy = new EnumMap<>(Wish.class);
        copy.putAll(byWish);
        byWish = Collections.unmodifiableMap(copy);
    }

    /** Nothing wished. */
    public static final Wishes NONE = new Wishes(Map.of());

    /** With one more; no words take it away, as where a lab's usual wish is not wanted this time. */
    public Wishes with(Wish wish, String words) {
        if (words.length() > LONGEST) {
            throw new IllegalArgumentException(wish.option() + " takes up to " + LONGEST + " characters");
        }
        EnumMap<Wish, String> more = new EnumMap<>(Wish.class);
        more.putAll(byWish);
        if (words.isBlank()) {
            more.remove(wish);
        } else {
            more.put(wish, words.strip());
        }
        return new Wishes(more);
    }

    /** The words for one. */
    public Optional<String> of(Wish wish) {
        return Optional.ofNullable(byWish.get(wish));
    }
}
