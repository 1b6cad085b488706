package takeup.roll;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.Extension;
import takeup.kit.Filter;
import takeup.kit.Lens;

/**
 * What a line says of a frame or of the setting in hand; what it does not mention is empty and stays as it was.
 *
 * @param kind for a correction: what became of the frame
 * @param note words for the frame
 */
public record SettingPatch(
        Optional<Aperture> aperture,
        Optional<ExposureTime> time,
        Optional<Lens> lens,
        OptionalDouble zoomMm,
        OptionalDouble distanceM,
        Optional<List<Filter>> filters,
        Optional<Extension> extension,
        OptionalDouble biasStops,
        Optional<Boolean> flash,
        Optional<Boolean> tripod,
        Optional<Frame.Kind> kind,
        Optional<String> note) {
    /** Nothing said. */
    public static final SettingPatch NOTHING = new SettingPatch(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    /** Whether nothing at all is said. */
    public boolean isNothing() {
        return aperture.isEmpty()
                && time.isEmpty()
                && lens.isEmpty()
                && zoomMm.isEmpty()
                && distanceM.isEmpty()
                && filters.isEmpty()
                && extension.isEmpty()
                && biasStops.isEmpty()
                && flash.isEmpty()
                && tripod.isEmpty()
                && kind.isEmpty()
                && note.isEmpty();
    }

    /** This change and another on top of it. */
    public SettingPatch and(SettingPatch more) {
        return new SettingPatch(
                more.aperture.or(() -> aperture),
                more.time.or(() -> time),
                more.lens.or(() -> lens),
                more.zoomMm.isPresent() ? more.zoomMm : zoomMm,
                more.distanceM.isPresent() ? more.distanceM : distanceM,
                more.filters.or(() -> filters),
                more.extension.or(() -> extension),
                more.biasStops.isPresent() ? more.biasStops : biasStops,
                more.flash.or(() -> flash),
                more.tripod.or(() -> tripod),
                more.kind.or(() -> kind),
                more.note.or(() -> note));
    }

    /** Says the aperture. */
    public static SettingPatch aperture(Aperture aperture) {
        return new SettingPatch(
                Optional.of(aperture),
                NOTHING.time,
                NOTHING.lens,
                NOTHING.zoomMm,
                NOTHING.distanceM,
                NOTHING.filters,
                NOTHING.extension,
                NOTHING.biasStops,
                NOTHING.flash,
                NOTHING.tripod,
                NOTHING.kind,
                NOTHING.note);
    }

    /** Says the time. */
    public static SettingPatch time(ExposureTime time) {
        return new SettingPatch(
                NOTHING.aperture,
                Optional.of(time),
                NOTHING.lens,
                NOTHING.zoomMm,
                NOTHING.distanceM,
                NOTHING.filters,
                NOTHING.extension,
                NOTHING.biasStops,
                NOTHING.flash,
                NOTHING.tripod,
                NOTHING.kind,
                NOTHING.note);
    }

    /** Says the lens. */
    public static SettingPatch lens(Lens lens) {
        return new SettingPatch(
                NOTHING.aperture,
                NOTHING.time,
                Optional.of(lens),
                NOTHING.zoomMm,
                NOTHING.distanceM,
                NOTHING.filters,
                NOTHING.extension,
                NOTHING.biasStops,
                NOTHING.flash,
                NOTHING.tripod,
                NOTHING.kind,
                NOTHING.note);
    }

    /** Says the focal length in mm. */
    public static SettingPatch zoom(double mm) {
        return new SettingPatch(
                NOTHING.aperture,
                NOTHING.time,
                NOTHING.lens,
                OptionalDouble.of(mm),
                NOTHING.distanceM,
                NOTHING.filters,
                NOTHING.extension,
                NOTHING.biasStops,
                NOTHING.flash,
                NOTHING.tripod,
                NOTHING.kind,
                NOTHING.note);
    }

    /** Says the distance in metres. */
    public static SettingPatch distance(double metres) {
        return new SettingPatch(
                NOTHING.aperture,
                NOTHING.time,
                NOTHING.lens,
                NOTHING.zoomMm,
                OptionalDouble.of(metres),
                NOTHING.filters,
                NOTHING.extension,
                NOTHING.biasStops,
                NOTHING.flash,
                NOTHING.tripod,
                NOTHING.kind,
                NOTHING.note);
    }

    /** Says the filters; an empty list takes them off. */
    public static SettingPatch filters(List<Filter> filters) {
        return new SettingPatch(
                NOTHING.aperture,
                NOTHING.time,
                NOTHING.lens,
                NOTHING.zoomMm,
                NOTHING.distanceM,
                Optional.of(List.copyOf(filters)),
                NOTHING.extension,
                NOTHING.biasStops,
                NOTHING.flash,
                NOTHING.tripod,
                NOTHING.kind,
                NOTHING.note);
    }

    /** Says the extension. */
    public static SettingPatch extension(Extension extension) {
        return new SettingPatch(
                NOTHING.aperture,
                NOTHING.time,
                NOTHING.lens,
                NOTHING.zoomMm,
                NOTHING.distanceM,
                NOTHING.filters,
                Optional.of(extension),
                NOTHING.biasStops,
                NOTHING.flash,
                NOTHING.tripod,
                NOTHING.kind,
                NOTHING.note);
    }

    /** Says the bias in stops. */
    public static SettingPatch bias(double stops) {
        return new SettingPatch(
                NOTHING.aperture,
                NOTHING.time,
                NOTHING.lens,
                NOTHING.zoomMm,
                NOTHING.distanceM,
                NOTHING.filters,
                NOTHING.extension,
                OptionalDouble.of(stops),
                NOTHING.flash,
                NOTHING.tripod,
                NOTHING.kind,
                NOTHING.note);
    }

    /** Says whether flash is on. */
    public static SettingPatch flash(boolean on) {
        return new SettingPatch(
                NOTHING.aperture,
                NOTHING.time,
                NOTHING.lens,
                NOTHING.zoomMm,
                NOTHING.distanceM,
                NOTHING.filters,
                NOTHING.extension,
                NOTHING.biasStops,
                Optional.of(on),
                NOTHING.tripod,
                NOTHING.kind,
                NOTHING.note);
    }

    /** Says whether the camera stands on a tripod. */
    public static SettingPatch tripod(boolean on) {
        return new SettingPatch(
                NOTHING.aperture,
                NOTHING.time,
                NOTHING.lens,
                NOTHING.zoomMm,
                NOTHING.distanceM,
                NOTHING.filters,
                NOTHING.extension,
                NOTHING.biasStops,
                NOTHING.flash,
                Optional.of(on),
                NOTHING.kind,
                NOTHING.note);
    }

    /** Says what became of the frame. */
    public static SettingPatch kind(Frame.Kind kind) {
        return new SettingPatch(
                NOTHING.aperture,
                NOTHING.time,
                NOTHING.lens,
                NOTHING.zoomMm,
                NOTHING.distanceM,
                NOTHING.filters,
                NOTHING.extension,
                NOTHING.biasStops,
                NOTHING.flash,
                NOTHING.tripod,
                Optional.of(kind),
                NOTHING.note);
    }

    /** Says words for the frame. */
    public static SettingPatch note(String words) {
        return new SettingPatch(
                NOTHING.aperture,
                NOTHING.time,
                NOTHING.lens,
                NOTHING.zoomMm,
                NOTHING.distanceM,
                NOTHING.filters,
                NOTHING.extension,
                NOTHING.biasStops,
                NOTHING.flash,
                NOTHING.tripod,
                NOTHING.kind,
                Optional.of(words));
    }
}
