package takeup.roll;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.DevelopmentChange;
import takeup.exposure.ExposureTime;
import takeup.exposure.Light;
import takeup.kit.Camera;
import takeup.kit.ExposureWarnings;
import takeup.kit.Warning;

/** The warnings that belong to each frame of a roll, worked out from the roll, in the order of its frames. */
public final class FrameWarnings {
    private FrameWarnings() {}

    /** A list for each frame. */
    public static List<List<Warning>> of(Roll roll) {
        return inRecord(roll, of(roll, ExposureWarnings.fewLeft(roll.film().framesNominal())));
    }

    /** The same for a photographer who calls so many frames few. */
    public static List<List<Warning>> of(Roll roll, int few) {
        return of(roll, few, 0);
    }

    /** The same for the newest frames alone, so many of them. */
    public static List<List<Warning>> newest(Roll roll, int few, int count) {
        int from = Math.max(0, roll.frames().size() - count);
        return of(roll, few, from).subList(from, roll.frames().size());
    }

    /**
     * A warning that stands at an earlier frame is not repeated, so the frames before are read too, without judging
     * them.
     */
    private static List<List<Warning>> of(Roll roll, int few, int from) {
        List<List<Warning>> all = new ArrayList<>();
        boolean saidNoLight = false;
        boolean saidDevelopment = false;
        int before = Integer.MAX_VALUE;
        Optional<OffsetDateTime> saidStale = Optional.empty();
        Optional<Frame> last = Optional.empty();
        for (Frame frame : roll.frames()) {
            List<Warning> warnings = new ArrayList<>();
            int left = roll.film().framesNominal() - frame.number();
            counted(roll, left, before, few, warnings);
            before = left;
            if (frame.kind() == Frame.Kind.EXPOSED) {
                ExposureResult verdict = ExposureResult.of(roll, frame);
                if (all.size() >= from) {
                    set(roll, frame, verdict, warnings);
                }
                if (!saidDevelopment) {
                    saidDevelopment = development(roll, frame, verdict, warnings);
                }
                Exposure exposure = frame.exposure();
                if (exposure.light().isEmpty()
                        && !roll.camera().isAutomatic()
                        && exposure.at().isPresent()
                        && !exposure.setting().flash()
                        && !saidNoLight) {
                    saidNoLight = true;
                    warnings.add(new Warning(
                            Warning.Code.NO_LIGHT,
                            "no light reading today: the exposure of this roll cannot be judged (m READING)"));
                }
                Optional<OffsetDateTime> taken = exposure.light().isPresent()
                        ? Optional.of(exposure.light().get().at())
                        : Optional.empty();
                if (exposure.at().isPresent()
                        && isStale(exposure.light(), exposure.at().get())
                        && !taken.equals(saidStale)) {
                    saidStale = taken;
                    warnings.add(
                            stale(exposure.light().orElseThrow(), exposure.at().get()));
                }
            }
            Warning.add(clock(frame, last), warnings);
            last = Optional.of(frame);
            all.add(List.copyOf(warnings));
        }
        return all;
    }

    /** Whether a reading is old by then. */
    public static boolean isStale(Optional<Light> light, OffsetDateTime now) {
        return light.isPresent()
                && Duration.between(light.get().at(), now)
                                .compareTo(Duration.ofMinutes(light.get().freshMinutes()))
                        > 0;
    }

    private static Warning stale(Light light, OffsetDateTime now) {
        return new Warning(
                Warning.Code.STALE_LIGHT,
                "the light reading is " + Duration.between(light.at(), now).toMinutes() + " minutes old"
                        + (light.freshMinutes() < Light.FRESH ? ", and the light goes fast near sunset" : "")
                        + ": meter again");
    }

    /** The clock was moved before one of the frame's exposures; a reading from the future may be of any age. */
    private static Optional<Warning> clock(Frame frame, Optional<Frame> before) {
        if (frame.exposure().clock().isPresent()) {
            return Optional.of(clock(frame.exposure(), before));
        }
        for (Exposure further : frame.further()) {
            if (further.clock().isPresent()) {
                return Optional.of(clock(further, before));
            }
        }
        return Optional.empty();
    }

    private static Warning clock(Exposure met, Optional<Frame> before) {
        String since = before.isPresent() ? "frame " + before.get().number() : "the line before";
        boolean isAgeUnknown = met.at().isPresent()
                && met.light().isPresent()
                && isAhead(met.light().get().at(), met.at().get());
        return new Warning(
                Warning.Code.CLOCK,
                met.clock().orElseThrow().words(since)
                        + (isAgeUnknown ? "; how old the light reading is cannot be known now: meter again" : ""));
    }

    /** Whether something lies in the future, so that its age cannot be known; a second is nothing. */
    public static boolean isAhead(OffsetDateTime then, OffsetDateTime now) {
        return then.isAfter(now.plusSeconds(1));
    }

    /**
     * What the record of a roll bears: that few are left stands where it began, and at the last frame. At the prompt
     * the frames in between are counted down too.
     */
    private static List<List<Warning>> inRecord(Roll roll, List<List<Warning>> all) {
        List<List<Warning>> record = new ArrayList<>();
        boolean hasBegun = false;
        for (int at = 0; at < all.size(); at++) {
            boolean isLast = roll.frames().get(at).number() == roll.film().framesNominal();
            boolean isCountedDown = hasBegun && !isLast;
            record.add(all.get(at).stream()
                    .filter(it -> it.code() != Warning.Code.FRAMES_LEFT || !isCountedDown)
                    .toList());
            hasBegun |= all.get(at).stream().anyMatch(it -> it.code() == Warning.Code.FRAMES_LEFT);
        }
        return record;
    }

    /** Few left: when so many are left, also where the counter jumped over it, then at 2, 1 and 0. */
    private static void counted(Roll roll, int left, int before, int few, List<Warning> into) {
        int nominal = roll.film().framesNominal();
        if (left < 0 && before >= 0) {
            into.add(new Warning(
                    Warning.Code.PAST_END,
                    "frame " + (nominal - left) + " of " + nominal
                            + ": past the end by the counter; the film may stop any time"));
        } else if (left >= 0 && (left <= 2 || left <= few && before > few)) {
            into.add(new Warning(
                    Warning.Code.FRAMES_LEFT, left == 0 ? "that was the last frame by the counter" : left + " left"));
        }
    }

    /**
     * What a long exposure changes in the development is the whole roll's, and said with the first of them. True once
     * it was said.
     */
    private static boolean development(Roll roll, Frame frame, ExposureResult verdict, List<Warning> into) {
        Setting setting = frame.exposure().setting();
        OptionalDouble metered = setting.flash() ? OptionalDouble.empty() : metered(roll, frame, verdict);
        OptionalDouble percent = metered.isEmpty()
                ? OptionalDouble.empty()
                : roll.film().stock().reciprocity().developmentPercent(metered.getAsDouble());
        if (percent.isEmpty()) {
            return false;
        }
        String wholeRoll = "; " + DevelopmentChange.wholeRoll(percent.getAsDouble());
        into.replaceAll(
                it -> it.code() == Warning.Code.RECIPROCITY ? new Warning(it.code(), it.text() + wholeRoll) : it);
        return true;
    }

    private static void set(Roll roll, Frame frame, ExposureResult verdict, List<Warning> into) {
        Setting setting = frame.exposure().setting();
        Camera camera = roll.camera().withLens(setting.lens());
        Warning.add(ExposureWarnings.beyondRings(setting.aperture(), setting.time(), camera, setting.lens()), into);
        if (setting.time().isPresent()) {
            ExposureWarnings.ofTime(
                    setting.time().get(), camera, setting.focalMm(), setting.flash(), setting.tripod(), into);
        }
        OptionalDouble metered = metered(roll, frame, verdict);
        if (metered.isPresent() && !setting.flash()) {
            ExposureWarnings.reciprocity(
                    metered.getAsDouble(), roll.film().stock().reciprocity(), into);
        }
        if (verdict.overBoxStops().isPresent()) {
            Warning.add(
                    ExposureWarnings.latitude(
                            verdict.overBoxStops().getAsDouble()
                                    + roll.film().development().pushStops(),
                            roll.film().stock()),
                    into);
        }
    }

    /** What the light asked for before reciprocity; without a reading, what the set time is worth. */
    private static OptionalDouble metered(Roll roll, Frame frame, ExposureResult verdict) {
        OptionalDouble metered = verdict.meteredSeconds();
        Optional<ExposureTime> time = frame.exposure().setting().time();
        return metered.isPresent() || time.isEmpty()
                ? metered
                : OptionalDouble.of(
                        roll.film().stock().reciprocity().worth(time.get().exactSeconds()));
    }
}
