package takeup.order;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A roll as it stands in an order.
 *
 * @param roll its number, R0007
 * @param revision that of its file when it was ordered; a higher one later means that it was corrected since
 * @param labNumber the lab's own twin number, once it is known
 * @param filmSize 135, 120 or 220
 * @param frameSize 24x36, 6x4.5
 * @param special half-frame or panoramic
 * @param stock the stock's name
 * @param kind colour-negative and so on
 * @param development what is to be done with it
 * @param labProcess the process in the lab's own word
 * @param framesExpected how many frames may come back as scans
 * @param body camera and back
 * @param date when it was loaded
 * @param condition what the lab must know
 * @param note words on the roll, where they were asked for
 */
public record OrderedRoll(
        String roll,
        int revision,
        Optional<String> labNumber,
        String filmSize,
        String frameSize,
        Optional<String> special,
        String stock,
        String kind,
        LabDevelopment development,
        String labProcess,
        int framesExpected,
        String body,
        String date,
        List<String> condition,
        Optional<String> note) {
    public OrderedRoll {
        condition = List.copyOf(condition);
    }

    static OrderedRoll of(ExposedRoll roll, Lab lab, boolean withNotes) {
        return new OrderedRoll(
                roll.roll(),
                roll.revision(),
                Optional.empty(),
                roll.filmSize(),
                roll.frameSize(),
                roll.special(),
                roll.stock(),
                roll.kind(),
                roll.development(),
                lab.wordFor(roll.development().process())
                        .orElse(roll.development().process()),
                roll.framesExposed(),
                roll.body(),
                roll.date(),
                roll.condition(),
                withNotes ? roll.note() : Optional.empty());
    }

    OrderedRoll withLabNumber(String number) {
        return new OrderedRoll(
                roll,
                revision,
                Optional.of(number).filter(it -> !it.isBlank()),
                filmSize,
                frameSize,
                special,
                stock,
                kind,
                development,
                labProcess,
                framesExpected,
                body,
                date,
                condition,
                note);
    }

    /** Process and development in the lab's word: {@code C-41, PUSH 1 STOP (rated 800, box 400)}. */
    public String words() {
        return PrintedText.of(labProcess) + ", " + development.words();
    }

    /** What else is to be known of the film: size, and what is unusual about it. */
    String format() {
        return filmSize + " " + frameSize
                + special.map(it -> ", " + it.toUpperCase(Locale.ROOT)).orElse("");
    }

    /** Condition, and the note where it was asked for. */
    String remarks() {
        String conditions =
                String.join("; ", condition.stream().map(PrintedText::of).toList());
        String words = note.map(PrintedText::of).orElse("");
        return conditions + (conditions.isEmpty() || words.isEmpty() ? "" : "; ") + words;
    }
}
