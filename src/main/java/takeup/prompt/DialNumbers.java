package takeup.prompt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.Scale;
import takeup.kit.Camera;
import takeup.kit.Lens;
import takeup.kit.Ring;
import takeup.kit.Shutter;
import takeup.roll.SettingPatch;
import takeup.text.Plain;

/**
 * Reads numbers as they stand on the rings in hand: the lens's apertures and the shutter's times.
 *
 * @param ring the aperture ring; empty on a camera that sets itself
 * @param shutter the dial; empty on a camera without one
 */
public record DialNumbers(Optional<Ring> ring, Optional<Shutter> shutter) {
    /** A thousand days: pinholes are left to the sun for months, and a suggestion can be as long. */
    private static final double LONGEST_SECONDS = 86_400_000;

    public static DialNumbers of(Camera camera, Optional<Lens> lens) {
        return new DialNumbers(
                lens.isPresent() ? Optional.of(lens.get().ring()) : Optional.empty(),
                camera.withLens(lens).shutter());
    }

    /** Tenths stand behind a mark, of this ring or of any scale; 11.5.2 is a slip. */
    Aperture aperture(Token token) {
        boolean isMark =
                mark(token.value()).isPresent() || Scale.anyMark(token.value()).isPresent();
        if (!(token.value() > 0 && token.value() <= 1000) || token.tenths() >= 0 && !isMark) {
            throw new CommandRejected(token.text() + " is not an f-number: type a number such as 5.6");
        }
        Aperture mark = ring.isPresent()
                ? ring.get().read(token.value())
                : Scale.THIRD.aperture(token.value()).orElse(Aperture.literal(token.value()));
        return token.tenths() > 0 ? mark.plusTenths(token.tenths()) : mark;
    }

    private Optional<Aperture> mark(double print) {
        return ring.isPresent() ? ring.get().mark(print) : Optional.empty();
    }

    ExposureTime time(Token token) {
        if (!(token.value() >= 1e-6 && token.value() <= LONGEST_SECONDS)) {
            throw new CommandRejected(
                    token.text() + " is no exposure time: from 1/1000000 to a thousand days, such as 1/125 or 2s");
        }
        if (token.is(Token.Kind.BULB)) {
            return ExposureTime.literal(token.value());
        }
        return shutter.isPresent()
                ? shutter.get().read(token.value())
                : Scale.THIRD.time(token.value()).orElse(ExposureTime.literal(token.value()));
    }

    /** What a bare number is as an aperture: a mark of the lens. */
    private Optional<Aperture> asAperture(Token token) {
        Optional<Aperture> mark = mark(token.value());
        return mark.isPresent() && token.tenths() > 0 ? Optional.of(mark.get().plusTenths(token.tenths())) : mark;
    }

    /** What a bare number is as a time: the dial's print for one second or shorter. */
    private Optional<ExposureTime> asTime(Token token) {
        return token.tenths() >= 0 || shutter.isEmpty()
                ? Optional.empty()
                : shutter.get().printed(token.value());
    }

    /** Aperture and time from tokens with their signs and bare numbers. */
    public SettingPatch pair(List<Token> tokens) {
        Optional<Aperture> aperture = Optional.empty();
        Optional<ExposureTime> time = Optional.empty();
        List<Token> bare = new ArrayList<>();
        for (Token token : tokens) {
            if (token.is(Token.Kind.APERTURE)) {
                if (aperture.isPresent()) {
                    throw new CommandRejected("two apertures: " + aperture.get() + " and " + token.text());
                }
                aperture = Optional.of(aperture(token));
            } else if (token.is(Token.Kind.TIME) || token.is(Token.Kind.BULB)) {
                if (time.isPresent()) {
                    throw new CommandRejected("two times: " + time.get() + " and " + token.text());
                }
                time = Optional.of(time(token));
            } else {
                bare.add(token);
            }
        }
        if (bare.size() > 2 || bare.size() + (aperture.isPresent() ? 1 : 0) + (time.isPresent() ? 1 : 0) > 2) {
            Token last = bare.get(bare.size() - 1);
            throw new CommandRejected(
                    "one aperture and one time at most; " + last.text() + " is one too many (nearest marks: "
                            + String.join(", ", marksNear(last.value())) + "; millimetres and metres need their unit)");
        }
        if (bare.size() == 2) {
            return two(bare.get(0), bare.get(1));
        }
        if (bare.size() == 1) {
            Token number = bare.get(0);
            Optional<Aperture> one = aperture.isPresent() ? Optional.empty() : asAperture(number);
            Optional<ExposureTime> other = one.isPresent() || time.isPresent() ? Optional.empty() : asTime(number);
            if (one.isEmpty() && other.isEmpty()) {
                throw noMark(number, aperture.isPresent(), time.isPresent());
            }
            aperture = aperture.isPresent() ? aperture : one;
            time = time.isPresent() ? time : other;
        }
        SettingPatch change = aperture.isPresent() ? SettingPatch.aperture(aperture.get()) : SettingPatch.NOTHING;
        return time.isPresent() ? change.and(SettingPatch.time(time.get())) : change;
    }

    private SettingPatch two(Token first, Token second) {
        Optional<Aperture> aperture = asAperture(first);
        if (aperture.isPresent()) {
            Optional<ExposureTime> time = asTime(second);
            if (time.isPresent()) {
                return SettingPatch.aperture(aperture.get()).and(SettingPatch.time(time.get()));
            }
            throw asAperture(second).isPresent()
                    ? new CommandRejected(first.text() + " and " + second.text()
                            + " are both apertures here; the dial has no " + second.text() + " (nearest "
                            + nearTimes(second.value()) + "), and 1/" + Plain.number(second.value())
                            + " s is typed 1/" + Plain.number(second.value()))
                    : noMark(second, true, false);
        }
        ExposureTime time = asTime(first).orElseThrow(() -> noMark(first, false, false));
        Aperture other = asAperture(second)
                .orElseThrow(() -> asTime(second).isPresent()
                        ? new CommandRejected(first.text() + " and " + second.text()
                                + " are both times here; the nearest aperture is " + nearApertures(second.value()))
                        : noMark(second, false, true));
        return SettingPatch.aperture(other).and(SettingPatch.time(time));
    }

    private CommandRejected noMark(Token number, boolean apertureKnown, boolean timeKnown) {
        if (ring.isEmpty() && shutter.isEmpty()) {
            return new CommandRejected("this is an automatic camera: a bare " + number.text()
                    + " means nothing here; type . or x5, or numbers with their signs (f8 1/125)");
        }
        StringBuilder why = new StringBuilder(number.text()).append(" is ");
        boolean both = !apertureKnown && !timeKnown && ring.isPresent() && shutter.isPresent();
        if (!apertureKnown && ring.isPresent()) {
            why.append("no mark of this lens (nearest ")
                    .append(nearApertures(number.value()))
                    .append(")");
        }
        if (!timeKnown && shutter.isPresent()) {
            why.append(both ? " and " : "")
                    .append("no print of this dial (nearest ")
                    .append(nearTimes(number.value()))
                    .append(")");
        }
        if (apertureKnown && shutter.isEmpty() || timeKnown && ring.isEmpty()) {
            why.append("one number too many for this camera");
        }
        if (number.value() > 0 && number.tenths() < 0) {
            List<String> signed = new ArrayList<>();
            String plain = Plain.number(number.value());
            if (!apertureKnown && ring.isPresent()) {
                signed.add("f" + plain);
            }
            if (!timeKnown && shutter.isPresent()) {
                signed.add(number.value() > 1 ? "1/" + plain : plain + "s");
            }
            why.append("; what is on no ring is typed with its sign: ").append(String.join(" or ", signed));
        }
        return new CommandRejected(why.toString());
    }

    private List<String> marksNear(double value) {
        List<String> marks = new ArrayList<>();
        if (ring.isPresent()) {
            marks.add("f/" + nearApertures(value));
        }
        if (shutter.isPresent()) {
            marks.add(nearTime(value).toString());
        }
        return marks;
    }

    private String nearApertures(double value) {
        Aperture near =
                ring.orElseThrow().nearest(value > 0 ? Aperture.literal(value).stops() : 0);
        return near.print();
    }

    private String nearTimes(double value) {
        return nearTime(value).dial();
    }

    private ExposureTime nearTime(double number) {
        double value = number > 0 ? number : 1;
        double seconds = value < 1 ? value : 1 / value;
        ExposureTime best = shutter.orElseThrow().fastest();
        for (ExposureTime mark : shutter.orElseThrow().marks()) {
            if (mark.seconds() <= 1
                    && Math.abs(mark.stops() - ExposureTime.literal(seconds).stops())
                            < Math.abs(
                                    best.stops() - ExposureTime.literal(seconds).stops())) {
                best = mark;
            }
        }
        return best;
    }
}
