package takeup.roll;

import java.util.Locale;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Stops;

/**
 * What the lab is asked to do with the whole roll.
 *
 * @param process such as C-41
 * @param pushStops longer development in stops; pull is negative
 */
public record Development(String process, double pushStops) {
    public Development {
        if (!(pushStops >= -5 && pushStops <= 5)) {
            throw new IllegalArgumentException("push and pull go up to 5 stops");
        }
    }

    /** {@code NORMAL}, {@code PUSH 1 STOP} or {@code PULL 0.5 STOPS}. */
    public String order() {
        if (pushStops == 0) {
            return "NORMAL";
        }
        return (pushStops > 0 ? "PUSH " : "PULL ") + Stops.words(pushStops).toUpperCase(Locale.ROOT);
    }

    /** All in words, so that nothing can be misread: {@code C-41, NORMAL (rated 200, box 400)}. */
    public String words(FilmSpeed index, FilmSpeed boxSpeed) {
        return process + ", " + order() + " (rated " + index + ", box " + boxSpeed + ")";
    }
}
