package takeup.message;

/**
 * Why a step could not be written.
 *
 * @param reason what is the case, for a row that has no room for more: {@code the disk is full}
 * @param text the same with what to do: {@code the disk is full; free some space}
 */
public record SaveError(String reason, String text) {
    @Override
    public String toString() {
        return text;
    }
}
