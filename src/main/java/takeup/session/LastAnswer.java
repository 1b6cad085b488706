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
 * @param turned how often {@code more} asked for the rest, or for all of it again
 */
public record LastAnswer(
        Tone tone, String text, List<Warning> warnings, Optional<OffsetDateTime> savedAt, boolean isRead, int turned) {
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
        this(tone, text, warnings, Optional.empty(), false, 0);
    }

    LastAnswer savedAt(OffsetDateTime at) {
        return new LastAnswer(tone, text, warnings, Optional.of(at), false, 0);
    }

    LastAnswer read() {
        return new LastAnswer(tone, text, warnings, savedAt, true, turned);
    }

    /** As it was when it came: whole, or its next part where the window is too small for all of it. */
    LastAnswer more() {
        return new LastAnswer(tone, text, warnings, savedAt, false, turned + 1);
    }

    static LastAnswer quiet(Optional<String> text) {
        return text.isPresent() ? quiet(text.get()) : NOTHING;
    }

    static LastAnswer quiet(String text) {
        return new LastAnswer(Tone.QUIET, text, List.of());
    }
}
