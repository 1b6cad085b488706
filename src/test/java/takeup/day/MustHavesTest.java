package takeup.day;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Reciprocity;
import takeup.kit.Camera;
import takeup.kit.FilmSize;
import takeup.kit.FrameSize;
import takeup.kit.Stock;
import takeup.roll.Development;
import takeup.roll.Exposure;
import takeup.roll.Film;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.RollRecord;
import takeup.roll.Setting;

/**
 * Must-have moments that lie on one roll only. The start is at 15:00, the prize-giving at 16:30, the party at 18:30.
 */
class MustHavesTest {
    private static final Camera CAMERA = new Camera(
            "pocket",
            "Pocket compact",
            FrameSize.named("24x36").orElseThrow(),
            Map.of(FilmSize.F135, 36),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            List.of());
    private static final Film FILM = new Film(
            new Stock(
                    "bw400",
                    "Black-and-white 400",
                    Stock.Kind.BW_NEGATIVE,
                    "black-and-white",
                    new FilmSpeed(400),
                    new FilmSpeed(400),
                    List.of(FilmSize.F135),
                    new Stock.Response(1, 3, new Reciprocity.None(OptionalDouble.empty()))),
            FilmSize.F135,
            new FilmSpeed(400),
            new Development("black-and-white", 0),
            36);

    private static Roll roll(int number, String times) {
        List<RollRecord> records = new ArrayList<>();
        OffsetDateTime loaded = OffsetDateTime.parse("2026-09-12T14:00+02:00");
        records.add(new RollRecord(
                1, loaded, new RollEvent.Loaded(new RollId("R", number), CAMERA, Optional.empty(), FILM)));
        int frame = 0;
        for (String time : times.split(" ")) {
            boolean blank = time.endsWith("b");
            OffsetDateTime at = OffsetDateTime.parse("2026-09-12T" + time.replace("b", "") + "+02:00");
            Exposure exposure = new Exposure(Optional.of(at), Setting.NONE, Optional.empty(), Optional.empty());
            records.add(new RollRecord(
                    2,
                    at,
                    new RollEvent.Added(
                            Frame.of(
                                    ++frame, blank ? Frame.Kind.BLANK : Frame.Kind.EXPOSED, exposure, Optional.empty()),
                            RollEvent.Origin.LOGGED,
                            OptionalInt.empty())));
        }
        return Roll.of(records).orElseThrow();
    }

    private static KeyMoment moment(int number, String time, boolean must) {
        return new KeyMoment(
                number,
                LocalDateTime.parse("2026-09-12T" + time),
                "Moment " + number,
                0,
                must,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty());
    }

    /**
     * A frame counts from the moment's beginning up to the next moment, an hour at most; a blank one shows nothing. The
     * start is no must.
     */
    @ParameterizedTest(name = "{0} and {1} by {2}: {3}")
    @CsvSource({
        "15:05 16:35,        16:40,          20:00, '2 R0001 R0002, 3'",
        "16:30 18:31,        15:10,          20:00, '2 R0001, 3 R0001'",
        "16:29 17:29,        17:30,          20:00, '2 R0001, 3'",
        "16:35b,             16:36b,         20:00, '2, 3'",
        "16:35,              18:30 19:29,    20:00, '2 R0001, 3 R0002'",
        "16:35,              16:36,          16:29, ''",
        "16:35,              16:36,          16:45, '2 R0001 R0002'"
    })
    void eachNamesTheRollsThatHoldIt(String first, String second, String now, String held) {
        Plan plan = Plan.NONE
                .with(moment(1, "15:00", false))
                .with(moment(2, "16:30", true))
                .with(moment(3, "18:30", true));
        List<String> found =
                MustHaves.of(plan, List.of(roll(1, first), roll(2, second)), LocalDateTime.parse("2026-09-12T" + now))
                        .stream()
                        .map(it -> (it.moment().number() + " "
                                        + String.join(
                                                " ",
                                                it.rolls().stream()
                                                        .map(Object::toString)
                                                        .toList()))
                                .strip())
                        .toList();
        assertEquals(held, String.join(", ", found));
    }
}
