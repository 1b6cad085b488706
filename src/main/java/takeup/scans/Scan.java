package takeup.scans;

import java.util.Optional;

/**
 * One picture file that came back: {@code 000123_07.jpg}, 3000 by 2000, not very bright.
 *
 * @param name the file's name within its folder, after the name of a part folder and a slash
 * @param width in dots
 * @param height in dots
 * @param tone what its tones say
 * @param slate the slate that it shows, where one was read off it
 */
public record Scan(String name, int width, int height, Tone tone, Optional<Slate> slate) {
    public Scan {
        if (name.isBlank() || width < 1 || height < 1) {
            throw new IllegalArgumentException("a scan has a name and at least one dot");
        }
    }

    /** A scan that shows no slate. */
    public Scan(String name, int width, int height, Tone tone) {
        this(name, width, height, tone, Optional.empty());
    }

    /** The same with what was read off it. */
    public Scan showing(Optional<Slate> read) {
        return new Scan(name, width, height, tone, read);
    }

    /** Whether two aspects are those of one shape of picture, as far as a lab cuts them alike. */
    static boolean haveLikeSides(double aspect, double other) {
        return Math.abs(Math.log(aspect / other)) < 0.045;
    }

    /** The long side against the short one: 1.5 for 3000 by 2000, whichever way it is turned. */
    public double aspect() {
        return (double) Math.max(width, height) / Math.min(width, height);
    }
}
