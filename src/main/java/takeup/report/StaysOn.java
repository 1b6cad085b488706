package takeup.report;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import takeup.day.CameraSetup;
import takeup.day.DayEvent;
import takeup.exposure.Extension;
import takeup.exposure.Stops;
import takeup.history.ShootState;
import takeup.kit.Filter;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.Setting;

/**
 * What stays on a camera until it is taken off, and changes each frame: filters, extension, bias, hold, flash. It is
 * said when a film is loaded, a lens changed or a day begun, since nobody sees it in the finder.
 */
public final class StaysOn {
    private StaysOn() {}

    /** What is on in words: {@code filter red (3 stops)}, {@code bias +1 stop}, {@code hold f/8}. */
    public static List<String> of(CameraSetup setup) {
        List<String> all = new ArrayList<>(filters(setup));
        all.addAll(besideFilters(setup));
        return all;
    }

    /** The filters alone, each with what it takes. */
    public static List<String> filters(CameraSetup setup) {
        return setup.setting().filters().stream().map(StaysOn::words).toList();
    }

    /** All but the filters. */
    public static List<String> besideFilters(CameraSetup setup) {
        Setting setting = setup.setting();
        List<String> all = new ArrayList<>();
        if (setting.extension().kind() != Extension.Kind.NONE) {
            all.add(setting.extension().toString().toLowerCase(Locale.ROOT));
        }
        if (setting.biasStops() != 0) {
            all.add("bias " + SetupText.bias(setting.biasStops()));
        }
        if (setup.hold().isPresent()) {
            all.add("hold " + setup.hold().get());
        }
        if (setting.flash()) {
            all.add("flash");
        }
        return all;
    }

    /** A sentence with a blank in front; nothing where nothing is on. */
    public static String sentence(List<String> words) {
        return words.isEmpty() ? "" : " Still on: " + String.join(", ", words) + "; clear (Ctrl-O) takes it off.";
    }

    /**
     * What the camera in hand brings along from an earlier day, for the first frame that it takes on this one.
     *
     * @param before the state after the last line
     * @param state the same as of today
     */
    public static List<String> overnight(ShootState before, ShootState state, OffsetDateTime now) {
        String camera = state.placeInHand().orElseThrow().camera();
        if (hasFrameToday(state, camera, now)) {
            return List.of();
        }
        boolean isNew = !before.carryOverEntries(now).isEmpty();
        Stream<CameraSetup> carried = isNew
                ? Stream.of(before.day().setup(camera))
                : state.history()
                        .on(now.toLocalDate())
                        .events(DayEvent.Carried.class)
                        .map(it -> it.day().setup(camera));
        List<String> then = carried.findFirst().map(StaysOn::of).orElse(List.of());
        return of(state.inHand()).stream().filter(then::contains).toList();
    }

    private static boolean hasFrameToday(ShootState state, String camera, OffsetDateTime now) {
        for (Roll roll : state.rolls().values()) {
            for (Frame frame : roll.camera().key().equals(camera) ? roll.frames() : List.<Frame>of()) {
                Optional<OffsetDateTime> at = frame.exposure().at();
                if (at.isPresent() && at.get().toLocalDate().equals(now.toLocalDate())) {
                    return true;
                }
            }
        }
        return false;
    }

    private static String words(Filter filter) {
        String name = "filter " + filter.name();
        return filter.name().startsWith("+") ? name : name + " (" + Stops.words(filter.stops()) + ")";
    }
}
