package takeup.roll;

import static java.util.Optional.empty;

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
 * @param optics the lens and what is on it
 * @param frame of the frame alone, not of the camera
 */
public record SettingPatch(
        Optional<Aperture> aperture,
        Optional<ExposureTime> time,
        LensPatch optics,
        OptionalDouble biasStops,
        Optional<Boolean> flash,
        Optional<Boolean> tripod,
        FramePatch frame) {
    /**
     * What a line says of the frame and not of the camera; what it does not mention is empty and stays as it was.
     *
     * @param kind for a correction: what became of it
     * @param note words for it
     * @param people who is on it; an empty list takes them off
     * @param place where it was; an unknown one takes the place off
     */
    public record FramePatch(
            Optional<Frame.Kind> kind, Optional<String> note, Optional<List<String>> people, Optional<Place> place) {
        /** No change. */
        static final FramePatch NOTHING = new FramePatch(empty(), empty(), empty(), empty());

        boolean isNothing() {
            return kind.isEmpty() && note.isEmpty() && people.isEmpty() && place.isEmpty();
        }

        FramePatch and(FramePatch more) {
            return new FramePatch(
                    either(more.kind, kind),
                    either(more.note, note),
                    either(more.people, people),
                    either(more.place, place));
        }
    }

    /** What a line says of the lens and what is on it; what it does not mention is empty and stays as it was. */
    public record LensPatch(
            Optional<Lens> lens,
            OptionalDouble zoomMm,
            OptionalDouble distanceM,
            Optional<List<Filter>> filters,
            Optional<Extension> extension) {
        /** No change. */
        static final LensPatch NOTHING = new LensPatch(
                Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), Optional.empty());

        boolean isNothing() {
            return lens.isEmpty()
                    && zoomMm.isEmpty()
                    && distanceM.isEmpty()
                    && filters.isEmpty()
                    && extension.isEmpty();
        }

        LensPatch and(LensPatch more) {
            return new LensPatch(
                    either(more.lens, lens),
                    either(more.zoomMm, zoomMm),
                    either(more.distanceM, distanceM),
                    either(more.filters, filters),
                    either(more.extension, extension));
        }
    }

    private static final OptionalDouble NO_NUMBER = OptionalDouble.empty();

    /** No change. */
    public static final SettingPatch NOTHING = of(LensPatch.NOTHING);

    /** Whether it changes nothing at all. */
    public boolean isNothing() {
        return aperture.isEmpty()
                && time.isEmpty()
                && optics.isNothing()
                && biasStops.isEmpty()
                && flash.isEmpty()
                && tripod.isEmpty()
                && frame.isNothing();
    }

    /** This change and another on top of it. */
    public SettingPatch and(SettingPatch more) {
        return new SettingPatch(
                either(more.aperture, aperture),
                either(more.time, time),
                optics.and(more.optics),
                either(more.biasStops, biasStops),
                either(more.flash, flash),
                either(more.tripod, tripod),
                frame.and(more.frame));
    }

    static <T> Optional<T> either(Optional<T> first, Optional<T> second) {
        return first.isPresent() ? first : second;
    }

    static OptionalDouble either(OptionalDouble first, OptionalDouble second) {
        return first.isPresent() ? first : second;
    }

    /** Says the aperture. */
    public static SettingPatch aperture(Aperture aperture) {
        return of(Optional.of(aperture), empty(), NO_NUMBER);
    }

    /** Says the time. */
    public static SettingPatch time(ExposureTime time) {
        return of(empty(), Optional.of(time), NO_NUMBER);
    }

    /** Says the lens. */
    public static SettingPatch lens(Lens lens) {
        return of(new LensPatch(Optional.of(lens), NO_NUMBER, NO_NUMBER, empty(), empty()));
    }

    /** Says the focal length in mm. */
    public static SettingPatch zoom(double mm) {
        return of(new LensPatch(empty(), OptionalDouble.of(mm), NO_NUMBER, empty(), empty()));
    }

    /** Says the distance in metres. */
    public static SettingPatch distance(double metres) {
        return of(new LensPatch(empty(), NO_NUMBER, OptionalDouble.of(metres), empty(), empty()));
    }

    /** Says the filters; an empty list takes them off. */
    public static SettingPatch filters(List<Filter> filters) {
        return of(new LensPatch(empty(), NO_NUMBER, NO_NUMBER, Optional.of(List.copyOf(filters)), empty()));
    }

    /** Says the extension. */
    public static SettingPatch extension(Extension extension) {
        return of(new LensPatch(empty(), NO_NUMBER, NO_NUMBER, empty(), Optional.of(extension)));
    }

    /** Says the bias in stops. */
    public static SettingPatch bias(double stops) {
        return of(empty(), empty(), OptionalDouble.of(stops));
    }

    /** Says whether flash is on. */
    public static SettingPatch flash(boolean on) {
        return of(Optional.of(on), empty(), FramePatch.NOTHING);
    }

    /** Says whether the camera stands on a tripod. */
    public static SettingPatch tripod(boolean on) {
        return of(empty(), Optional.of(on), FramePatch.NOTHING);
    }

    /** Says what became of the frame. */
    public static SettingPatch kind(Frame.Kind kind) {
        return of(empty(), empty(), new FramePatch(Optional.of(kind), empty(), empty(), empty()));
    }

    /** Says words for the frame. */
    public static SettingPatch note(String words) {
        return of(empty(), empty(), new FramePatch(empty(), Optional.of(words), empty(), empty()));
    }

    /** Says who is on the frame. */
    public static SettingPatch people(List<String> names) {
        return of(empty(), empty(), new FramePatch(empty(), empty(), Optional.of(List.copyOf(names)), empty()));
    }

    /** Says where the frame was. */
    public static SettingPatch place(Place place) {
        return of(empty(), empty(), new FramePatch(empty(), empty(), empty(), Optional.of(place)));
    }

    private static SettingPatch of(LensPatch optics) {
        return new SettingPatch(empty(), empty(), optics, NO_NUMBER, empty(), empty(), FramePatch.NOTHING);
    }

    private static SettingPatch of(Optional<Aperture> aperture, Optional<ExposureTime> time, OptionalDouble bias) {
        return new SettingPatch(aperture, time, LensPatch.NOTHING, bias, empty(), empty(), FramePatch.NOTHING);
    }

    private static SettingPatch of(Optional<Boolean> flash, Optional<Boolean> tripod, FramePatch frame) {
        return new SettingPatch(empty(), empty(), LensPatch.NOTHING, NO_NUMBER, flash, tripod, frame);
    }

    public Optional<Frame.Kind> kind() {
        return frame.kind();
    }

    public Optional<String> note() {
        return frame.note();
    }

    public Optional<List<String>> people() {
        return frame.people();
    }

    public Optional<Place> place() {
        return frame.place();
    }

    public Optional<Lens> lens() {
        return optics.lens();
    }

    public OptionalDouble zoomMm() {
        return optics.zoomMm();
    }

    public OptionalDouble distanceM() {
        return optics.distanceM();
    }

    public Optional<List<Filter>> filters() {
        return optics.filters();
    }

    public Optional<Extension> extension() {
        return optics.extension();
    }
}
