package takeup.day;

import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shredzone.commons.suncalc.SunTimes;
import takeup.exposure.Light;
import takeup.roll.Coordinates;

/**
 * The sun's times of a day at a place: rise and set at -50' (the upper edge at a flat horizon, with 34' of refraction),
 * civil twilight at -6 degrees, the golden hour between +6 and -4 degrees; the centre of the sun each time
 * (commons-suncalc, SunTimes and its Twilight). Hills and houses are not known; weather neither.
 */
public final class Sun {
    private static final int FRESH_AT_SUNSET = 10;

    private Sun() {}

    /** What happens, and at which altitude of the sun's centre it does. */
    public enum Event {
        CIVIL_DAWN("civil twilight begins", -6, true),
        GOLDEN_MORNING("golden hour begins", -4, true),
        SUNRISE("sunrise", -50 / 60.0, true),
        GOLDEN_MORNING_ENDS("golden hour ends", 6, true),
        GOLDEN_EVENING("golden hour begins", 6, false),
        SUNSET("sunset", -50 / 60.0, false),
        GOLDEN_EVENING_ENDS("golden hour ends", -4, false),
        CIVIL_DUSK("civil twilight ends", -6, false);

        private final String words;
        private final double degrees;
        private final boolean rising;

        Event(String words, double degrees, boolean rising) {
            this.words = words;
            this.degrees = degrees;
            this.rising = rising;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /** An event and when it happens, to the minute. */
    public record At(Event event, OffsetDateTime time) {}

    /** The events of a local day, in order of time. Near the poles there may be fewer, or none. */
    public static List<At> of(Coordinates position, LocalDate date, ZoneOffset offset) {
        List<At> all = new ArrayList<>();
        for (Event event : Event.values()) {
            exact(position, date, offset, event)
                    .ifPresent(it -> all.add(new At(event, it.plusSeconds(30).truncatedTo(ChronoUnit.MINUTES))));
        }
        all.sort(Comparator.comparing(At::time));
        return all;
    }

    /** The time of sunset on a local day, to the second; empty where the sun does not set then. */
    public static Optional<OffsetDateTime> set(Coordinates position, LocalDate date, ZoneOffset offset) {
        return exact(position, date, offset, Event.SUNSET);
    }

    /** Whether the sun stays below the horizon for all of a local day. */
    public static boolean isDownAllDay(Coordinates position, LocalDate date, ZoneOffset offset) {
        return SunTimes.compute()
                .on(date.atStartOfDay().atZone(offset))
                .oneDay()
                .at(position.latitude(), position.longitude())
                .twilight(Event.SUNSET.degrees)
                .execute()
                .isAlwaysDown();
    }

    /**
     * For how many minutes a reading taken then is called fresh: 30, but 10 within an hour of sunset on either side,
     * and what is left until that hour begins where that is between the two.
     */
    public static int freshMinutes(Coordinates position, OffsetDateTime taken) {
        Optional<OffsetDateTime> set = set(position, taken.toLocalDate(), taken.getOffset());
        if (set.isEmpty()) {
            return Light.FRESH;
        }
        long begins = Duration.between(taken, set.get().minusHours(1)).toMinutes();
        long fresh = Math.min(Light.FRESH, Math.max(FRESH_AT_SUNSET, begins));
        return taken.plusMinutes(fresh).isAfter(set.get().plusHours(1)) ? Light.FRESH : (int) fresh;
    }

    private static Optional<OffsetDateTime> exact(
            Coordinates position, LocalDate date, ZoneOffset offset, Event event) {
        return crossing(position, date, offset, event.degrees, event.rising);
    }

    /** When the sun's centre crosses an altitude on a local day. */
    static Optional<OffsetDateTime> crossing(
            Coordinates position, LocalDate date, ZoneOffset offset, double degrees, boolean rising) {
        SunTimes times = SunTimes.compute()
                .on(date.atStartOfDay().atZone(offset))
                .oneDay()
                .at(position.latitude(), position.longitude())
                .twilight(degrees)
                .execute();
        ZonedDateTime found = rising ? times.getRise() : times.getSet();
        return Optional.ofNullable(found)
                .map(ZonedDateTime::toOffsetDateTime)
                .map(it -> it.truncatedTo(ChronoUnit.SECONDS));
    }
}
