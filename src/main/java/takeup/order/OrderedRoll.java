package takeup.order;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import takeup.text.English;

/**
 * A roll as the order has it, whatever its file says later.
 *
 * @param roll its number, R0007
 * @param revision that of its file when it was ordered; a higher one later means that it was corrected since
 * @param atLab the lab's own names for it and its process
 * @param film the film and its development
 * @param framesExpected how many frames may come back as scans
 * @param body camera and back
 * @param date when it was loaded
 * @param notes what the lab should know of it
 */
public record OrderedRoll(
        String roll,
        int revision,
        AtLab atLab,
        RollFilm film,
        int framesExpected,
        String body,
        String date,
        LabNotes notes) {
    /** Those of one tank together: by process, then by number. */
    static final Comparator<OrderedRoll> BY_PROCESS = Comparator.comparing(
                    (OrderedRoll it) -> it.atLab.process.toLowerCase(Locale.ROOT))
            .thenComparing(it -> it.atLab.process)
            .thenComparing(it -> it.roll.replaceFirst("[0-9]+$", ""))
            .thenComparingInt(it -> Integer.parseInt(it.roll.replaceFirst("^[A-Z]+", "")));

    /** The lab's own number of the roll, once it is known, and the lab's own word for the process. */
    record AtLab(Optional<String> number, String process) {}

    /** What of a roll's file goes to the lab only where it is asked for. */
    public enum Extra {
        NOTES,
        CLIENT
    }

    static OrderedRoll of(ExposedRoll roll, Lab lab, Set<Extra> extras) {
        String process = roll.development().process();
        return new OrderedRoll(
                roll.roll(),
                roll.revision(),
                new AtLab(Optional.empty(), lab.wordFor(process).orElse(process)),
                roll.film(),
                roll.exposures().expected(),
                roll.camera().printed(),
                roll.shoot().date(),
                extras.contains(Extra.NOTES) ? roll.notes() : roll.notes().withoutNote());
    }

    OrderedRoll withLabNumber(String number) {
        AtLab numbered = new AtLab(Optional.of(number).filter(it -> !it.isBlank()), atLab.process);
        return new OrderedRoll(roll, revision, numbered, film, framesExpected, body, date, notes);
    }

    /** The lab's own number of the roll, once it is known. */
    public Optional<String> labNumber() {
        return atLab.number;
    }

    /** What the lab must see before it opens it. */
    List<RollFlag> flags() {
        return RollFlag.of(film, notes);
    }

    LabDevelopment development() {
        return film.development();
    }

    /** All of it on one line: {@code C-41, NORMAL (rated 200, box 400) Colour negative 400, 120 6x4.5, 16 frames}. */
    public String description() {
        return words() + "  " + PrintedText.of(film.stock()) + ", " + film.sizes() + ", "
                + English.count(framesExpected, "frame");
    }

    /** Process and development in the lab's word: {@code C-41, PUSH 1 STOP (rated 800, box 400)}. */
    public String words() {
        return PrintedText.of(atLab.process) + ", " + development().words();
    }
}
