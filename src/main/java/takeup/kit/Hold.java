package takeup.kit;

import java.util.Optional;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;

/** The aperture or the time that suggestions keep: one of the two. */
public record Hold(Optional<Aperture> aperture, Optional<ExposureTime> time) {
    public Hold {
        if (aperture.isPresent() == time.isPresent()) {
            throw new IllegalArgumentException("an aperture or a time is held, one of the two");
        }
    }

    /** Keeps an aperture. */
    public static Hold of(Aperture aperture) {
        return new Hold(Optional.of(aperture), Optional.empty());
    }

    /** Keeps a time. */
    public static Hold of(ExposureTime time) {
        return new Hold(Optional.empty(), Optional.of(time));
    }

    /** Whether a suggestion keeps it. */
    public boolean isKeptBy(Suggestion row) {
        return isAt(row.aperture()) || time.isPresent() && time.equals(row.time());
    }

    /** Whether it is an aperture, and that one. */
    boolean isAt(Aperture mark) {
        return aperture.isPresent() && aperture.get().isSameMark(mark);
    }

    @Override
    public String toString() {
        return aperture.isPresent()
                ? aperture.get().toString()
                : time.orElseThrow().toString();
    }
}
