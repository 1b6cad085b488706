package takeup.order;

import java.util.Optional;

/**
 * The film of a roll and what is to be done with it.
 *
 * @param filmSize 135, 120 or 220
 * @param frameSize 24x36, 6x4.5
 * @param stock the stock's name
 * @param kind colour-negative, bw-negative, colour-reversal or bw-reversal
 * @param development what the lab is asked to do
 * @param label what stands on the roll beside its number
 */
public record RollFilm(
        String filmSize, String frameSize, String stock, String kind, LabDevelopment development, Label label) {
    /** The photographer's own name of the roll, and the number of its emulsion. */
    record Label(Optional<String> name, Optional<String> batch) {}

    /** A frame size that needs another mask at the lab: half-frame, panoramic; empty for the usual ones. */
    Optional<String> special() {
        return switch (frameSize) {
            case "18x24" -> Optional.of("half-frame");
            case "24x65", "6x12", "6x17" -> Optional.of("panoramic");
            default -> Optional.empty();
        };
    }

    /** Film and frame: {@code 135 18x24}. */
    String sizes() {
        return filmSize + " " + frameSize;
    }
}
