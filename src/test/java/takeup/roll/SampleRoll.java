package takeup.roll;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import takeup.exposure.Aperture;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Reciprocity;
import takeup.kit.Camera;
import takeup.kit.FilmSize;
import takeup.kit.FrameSize;
import takeup.kit.Stock;

/** A roll of regatta day to try events on: 16 frames of colour negative 400, rated 200, in a camera with two backs. */
final class SampleRoll {
    static final OffsetDateTime LOADED_AT = OffsetDateTime.parse("2026-09-12T15:00:00+02:00");
    static final Camera CAMERA = camera("645", List.of("1", "2"));
    static final Camera OTHER_CAMERA = camera("66", List.of());
    static final Stock STOCK = stock("cn400", 400, 200);
    static final Film FILM = new Film(STOCK, FilmSize.F120, new FilmSpeed(200), new Development("C-41", 0), 16);
    static final RollEvent LOADING = new RollEvent.Loaded(new RollId("R", 7), CAMERA, Optional.of("1"), FILM);

    private SampleRoll() {}

    static Camera camera(String key, List<String> backs) {
        return new Camera(
                key,
                "Camera " + key,
                FrameSize.named("6x4.5").orElseThrow(),
                new LinkedHashMap<>(Map.of(FilmSize.F120, 16)),
                backs,
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    static Stock stock(String key, int boxSpeed, int index) {
        return new Stock(
                key,
                "Stock " + key,
                Stock.Kind.COLOUR_NEGATIVE,
                "C-41",
                new FilmSpeed(boxSpeed),
                new FilmSpeed(index),
                List.of(FilmSize.F120),
                new Stock.Response(1, 3, new Reciprocity.None(OptionalDouble.empty())));
    }

    /**
     * The records of a roll that was loaded as step 1; each event is a step of its own, a minute after the one before.
     */
    static List<RollRecord> records(RollEvent... events) {
        List<RollRecord> records = new ArrayList<>(List.of(new RollRecord(1, LOADED_AT, LOADING)));
        for (RollEvent event : events) {
            records.add(new RollRecord(records.size() + 1, LOADED_AT.plusMinutes(records.size()), event));
        }
        return records;
    }

    /** What they add up to. */
    static Roll roll(RollEvent... events) {
        return Roll.of(records(events)).orElseThrow();
    }

    /** Frames logged one after the other. */
    static RollEvent[] logged(int from, int to) {
        RollEvent[] events = new RollEvent[to - from + 1];
        for (int number = from; number <= to; number++) {
            events[number - from] = logged(number);
        }
        return events;
    }

    static RollEvent logged(int number) {
        return new RollEvent.Added(frame(number), RollEvent.Origin.LOGGED, OptionalInt.empty());
    }

    static RollEvent inserted(int before) {
        Frame blank = Frame.of(before, Frame.Kind.BLANK, Exposure.UNKNOWN, Optional.empty());
        return new RollEvent.Added(blank, RollEvent.Origin.INSERTED, OptionalInt.of(before));
    }

    static RollEvent filledIn(int number) {
        return new RollEvent.Added(frame(number), RollEvent.Origin.INSERTED, OptionalInt.empty());
    }

    static RollEvent movedHere(int number) {
        return new RollEvent.Added(frame(number), RollEvent.Origin.MOVED, OptionalInt.empty());
    }

    static RollEvent dropped(int from, int to) {
        return new RollEvent.Dropped(from, to, Optional.empty());
    }

    static RollEvent corrected(int from, int to, SettingPatch change) {
        return new RollEvent.Corrected(from, to, change);
    }

    static RollEvent exposedAgain(String note) {
        return new RollEvent.ExposedAgain(Exposure.UNKNOWN, Optional.of(note).filter(it -> !it.isEmpty()));
    }

    static RollEvent[] and(RollEvent[] before, RollEvent... more) {
        List<RollEvent> all = new ArrayList<>(List.of(before));
        all.addAll(List.of(more));
        return all.toArray(RollEvent[]::new);
    }

    /** A frame at f/8, so that one that loses its setting is seen to. */
    static Frame frame(int number) {
        Setting setting = Setting.NONE.with(SettingPatch.aperture(Aperture.literal(8)));
        Exposure exposure =
                new Exposure(Optional.of(LOADED_AT.plusMinutes(number)), setting, Optional.empty(), Optional.empty());
        return Frame.of(number, Frame.Kind.EXPOSED, exposure, Optional.empty());
    }

    /**
     * The frames as they would be pencilled on the envelope: {@code 1 2 3<2 4-blank 5*2}: frame 3 was logged as 2, 4 is
     * blank, 5 was exposed twice.
     */
    static String frames(Roll roll) {
        List<String> words = new ArrayList<>();
        for (Frame frame : roll.frames()) {
            words.add(frame.number()
                    + (frame.was().isPresent() ? "<" + frame.was().getAsInt() : "")
                    + (frame.kind() == Frame.Kind.EXPOSED ? "" : "-" + frame.kind())
                    + (frame.further().isEmpty()
                            ? ""
                            : "*" + (1 + frame.further().size())));
        }
        return String.join(" ", words);
    }
}
