package takeup.roll;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Somebody on a roll signed a model release. It is private: it leaves only where it is asked for.
 *
 * @param name who, as they are named on the frames
 * @param on the day on which it was noted
 * @param words where it is kept, or for what it is
 */
public record Release(String name, LocalDate on, Optional<String> words) {
    /** In words: {@code Anna, 2026-09-12, on paper}. */
    @Override
    public String toString() {
        return name + ", " + on + words.map(it -> ", " + it).orElse("");
    }
}
