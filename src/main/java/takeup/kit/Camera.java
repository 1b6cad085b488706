package takeup.kit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.ExposureTime;

/**
 * A camera body as its profile describes it: "645 reflex", 6x4.5, 16 frames on 120, two backs.
 *
 * <p>A camera without a shutter dial or without lenses sets itself; its frames are logged with nulls.
 *
 * @param key what is typed after {@code cam}
 * @param name as people call it
 * @param picture the size of one picture, and what is sharp on it
 * @param frames how many frames a roll of each film size holds, by this camera's own counter; in the profile's order
 * @param backs the interchangeable backs; empty for a fixed one
 * @param shutter the dial, if there is one to set
 * @param syncTime the fastest time for electronic flash, if there is a limit
 * @param lenses the lenses, the one that is on first
 */
public record Camera(
        String key,
        String name,
        Picture picture,
        Map<FilmSize, Integer> frames,
        List<Back> backs,
        Optional<Shutter> shutter,
        Optional<ExposureTime> syncTime,
        List<Lens> lenses) {
    public Camera {
        // Not Map.copyOf: the first film size of the profile is the usual one.
        frames = Collections.unmodifiableMap(new LinkedHashMap<>(frames));
        backs = List.copyOf(backs);
        lenses = List.copyOf(lenses);
    }

    /** A camera with the circle of confusion of its frame size. */
    public Camera(
            String key,
            String name,
            FrameSize frameSize,
            Map<FilmSize, Integer> frames,
            List<String> backs,
            Optional<Shutter> shutter,
            Optional<ExposureTime> syncTime,
            List<Lens> lenses) {
        this(
                key,
                name,
                new Picture(frameSize, OptionalDouble.empty(), HandHeldRule.SCALED),
                frames,
                backs.stream().map(Back::plain).toList(),
                shutter,
                syncTime,
                lenses);
    }

    /**
     * An interchangeable back.
     *
     * @param name what is typed after {@code back}
     * @param size the size of its pictures, where that is not the body's
     * @param frames how many frames it gives; empty where as many as the body says
     */
    public record Back(String name, Optional<FrameSize> size, Map<FilmSize, Integer> frames) {
        public Back {
            frames = Collections.unmodifiableMap(new LinkedHashMap<>(frames));
        }

        /** Whether its pictures are of another size than the body's, or it gives another number of them. */
        private boolean isOfItsOwn() {
            return size.isPresent() || !frames.isEmpty();
        }

        /** A back whose pictures are those of the body. */
        static Back plain(String name) {
            return new Back(name, Optional.empty(), Map.of());
        }
    }

    /**
     * One picture.
     *
     * @param size the size of one picture
     * @param ownCircleMm the circle of confusion that the photographer wants for it, in mm; empty for that of the size
     * @param handHeld how the longest time for the hand is reckoned
     */
    public record Picture(FrameSize size, OptionalDouble ownCircleMm, HandHeldRule handHeld) {}

    /** The two habits on roll film (photrio, thread 153382). On 35 mm film they are one. */
    public enum HandHeldRule {
        /** 1 / focal length as on 35 mm film. */
        SCALED,
        /** 1 / focal length, whatever the frame. */
        UNSCALED
    }

    /** The camera with another circle of confusion, in mm, if one is given. */
    public Camera withCircle(OptionalDouble circleMm) {
        return circleMm.isEmpty()
                ? this
                : new Camera(
                        key,
                        name,
                        new Picture(picture.size, circleMm, picture.handHeld),
                        frames,
                        backs,
                        shutter,
                        syncTime,
                        lenses);
    }

    /** The names of the backs, in the profile's order. */
    public List<String> backNames() {
        return backs.stream().map(Back::name).toList();
    }

    /** The camera with a back on, whose pictures may be of another size. */
    public Camera withBack(Optional<String> name) {
        for (Back back : backs) {
            if (name.equals(Optional.of(back.name)) && back.isOfItsOwn()) {
                return new Camera(
                        key,
                        this.name,
                        new Picture(back.size.orElse(picture.size), picture.ownCircleMm, picture.handHeld),
                        back.frames.isEmpty() ? frames : back.frames,
                        backs,
                        shutter,
                        syncTime,
                        lenses);
            }
        }
        return this;
    }

    /** The camera with a lens on, which may have a shutter and a sync of its own. */
    public Camera withLens(Optional<Lens> lens) {
        if (lens.isEmpty()) {
            return this;
        }
        Optional<Shutter> leaf = lens.get().shutter();
        Optional<ExposureTime> leafSync = lens.get().syncTime();
        return leaf.isEmpty() && leafSync.isEmpty()
                ? this
                : new Camera(
                        key,
                        name,
                        picture,
                        frames,
                        backs,
                        leaf.isPresent() ? leaf : shutter,
                        leafSync.isPresent() ? leafSync : syncTime,
                        lenses);
    }

    /** The longest time that can be held by hand, in seconds, by the rule that the profile chose. */
    public double handHeldLimit(double focalMm) {
        return picture.handHeld == HandHeldRule.UNSCALED ? 1 / focalMm : picture.size.handHeldLimit(focalMm);
    }

    public FrameSize frameSize() {
        return picture.size;
    }

    /** The largest blur, in mm, that still counts as sharp: the profile's own, else diagonal / 1500. */
    public double circleOfConfusionMm() {
        return picture.ownCircleMm.orElse(picture.size.circleOfConfusionMm());
    }

    /** The times that a frame can have: with flash none that is faster than the sync. */
    public Optional<Shutter> shutter(boolean flash) {
        return flash && syncTime.isPresent() ? shutter.map(it -> it.notFasterThan(syncTime.get())) : shutter;
    }

    /** The lens of that key. */
    public Optional<Lens> lens(String lensKey) {
        for (Lens lens : lenses) {
            if (lens.key().equalsIgnoreCase(lensKey)) {
                return Optional.of(lens);
            }
        }
        return Optional.empty();
    }

    /** Whether the camera chooses aperture and time by itself. */
    public boolean isAutomatic() {
        return lenses.isEmpty() || shutter.isEmpty();
    }
}
