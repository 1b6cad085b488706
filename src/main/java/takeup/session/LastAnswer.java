package takeup.session;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import takeup.kit.Warning;

/**
 * What was said last, and the warnings with it.
 *
 * @param savedAt when what it tells of was saved; empty where nothing was
 * @param isRead whether a key was pressed since
 */
public record LastAnswer(
        Tone tone, String text, List<Warning> warnings, Optional<OffsetDateTime> savedAt, boolean isRead) {
    /** How something is said; {@code CHOICES} are what Tab could complete, until the line is typed on. */
    public enum Tone {
        QUIET,
        ANSWER,
        LARGE,
        QUESTION,
        REFUSAL,
        CHOICES
    }

    static final LastAnswer NOTHING = new LastAnswer(Tone.QUIET, "", List.of());

    public LastAnswer {
        warnings = List.copyOf(warnings);
    }

    LastAnswer(Tone tone, String text, List<Warning> warnings) {
        this(tone, text, warnings, Optional.empty(), false);
    }

    LastAnswer savedAt(OffsetDateTime at) {
        return new LastAnswer(tone, text, warnings, Optional.of(at), false);
    }

    LastAnswer read() {
        return new LastAnswer(tone, text, warnings, savedAt, true);
    }

    static LastAnswer quiet(String text) {
        return new LastAnswer(Tone.QUIET, text, List.of());
    }
}
