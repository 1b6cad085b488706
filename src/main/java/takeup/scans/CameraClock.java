package takeup.scans;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import takeup.text.ClockText;

/**
 * How far a digital camera's clock is off: 73 s slow, set against +02:00. Found once, by a photograph of the screen's
 * clock.
 *
 * @param camera the camera, as its files name it
 * @param behindSeconds what is added to its time to get the true one; + for a clock that is slow
 * @param offset the zone that its time is taken to be in, where its files name none
 * @param foundAt when it was found, by the screen's clock
 */
public record CameraClock(String camera, long behindSeconds, ZoneOffset offset, OffsetDateTime foundAt) {
    /** What a picture of the clock teaches. A file that names its zone is taken at its word. */
    public static CameraClock of(DigitalShot picture, OffsetDateTime shown) {
        OffsetDateTime named = picture.at().atOffset(picture.offset().orElse(shown.getOffset()));
        return new CameraClock(picture.camera(), Duration.between(named, shown).toSeconds(), shown.getOffset(), shown);
    }

    /** The true time of a file. */
    public OffsetDateTime trueTime(LocalDateTime at, Optional<ZoneOffset> zone) {
        return at.atOffset(zone.orElse(offset)).plusSeconds(behindSeconds).withOffsetSameInstant(offset);
    }

    /** How far it is off, in words: {@code 1 min 13 s slow}. */
    public String words() {
        if (behindSeconds == 0) {
            return "right";
        }
        return ClockText.seconds(Math.abs(behindSeconds)) + (behindSeconds > 0 ? " slow" : " fast");
    }
}
