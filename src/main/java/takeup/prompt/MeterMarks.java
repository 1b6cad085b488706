package takeup.prompt;

import java.util.List;
import java.util.Optional;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.Scale;
import takeup.kit.Meter;
import takeup.text.Plain;

/**
 * Reads numbers as a meter shows them: {@code 8.5} is f/8 and 5/10 on one that shows tenths, {@code 125} is 1/125.
 *
 * @param step the marks of the meter
 * @param tenths whether it shows tenths of a stop past a mark
 */
public record MeterMarks(Scale step, boolean tenths) {
    /** A digital camera's own meter: third stops. */
    static final MeterMarks CAMERA = new MeterMarks(Scale.THIRD, false);

    public static MeterMarks of(Meter meter) {
        return new MeterMarks(meter.step(), meter.tenths());
    }

    /** An f-number as the meter shows it: on its own scale first, then on the others, with tenths if it shows them. */
    Optional<Aperture> fNumber(Token token) {
        if (token.value() > 1000 || !token.is(Token.Kind.APERTURE) && !token.is(Token.Kind.BARE)) {
            return Optional.empty();
        }
        if (token.tenths() >= 0) {
            return past(mark(token.value()), token.tenths());
        }
        double whole = Math.floor(token.value());
        if (tenths
                && whole != token.value()
                && Scale.FULL.aperture(token.value()).isEmpty()) {
            double past = (token.value() - whole) * 10;
            boolean mark = whole == 1
                    || whole == 2
                    || whole == 4
                    || whole == 8
                    || whole == 11
                    || whole == 16
                    || whole == 22
                    || whole == 32;
            if (mark && Math.abs(past - Math.rint(past)) < 1e-6) {
                return past(Scale.FULL.aperture(whole), (int) Math.rint(past));
            }
        }
        Optional<Aperture> mark = mark(token.value());
        return token.is(Token.Kind.APERTURE) && mark.isEmpty() ? Optional.of(Aperture.literal(token.value())) : mark;
    }

    private Optional<Aperture> mark(double print) {
        Optional<Aperture> own = step.aperture(print);
        return own.isPresent() ? own : Scale.anyMark(print);
    }

    private static Optional<Aperture> past(Optional<Aperture> mark, int tenths) {
        return mark.isPresent() ? Optional.of(mark.get().plusTenths(tenths)) : mark;
    }

    /** What a flash meter shows. */
    Aperture flash(Token token) {
        return fNumber(token).orElseThrow(() -> new CommandRejected(token.text() + " is no aperture: m flash 8"));
    }

    /** A time with its sign, or as a dial prints it for one second or shorter. */
    Optional<ExposureTime> time(Token token) {
        if (token.is(Token.Kind.TIME)) {
            return Optional.of(step.timeOrAny(token.value()));
        }
        if (!token.is(Token.Kind.BARE) || token.tenths() >= 0 || !(token.value() > 0)) {
            return Optional.empty();
        }
        return printed(token, step, Scale.FULL, Scale.THIRD, Scale.HALF);
    }

    /** The time that the first of some scales prints so. */
    private static Optional<ExposureTime> printed(Token token, Scale... scales) {
        String print = Plain.number(token.value());
        for (Scale scale : scales) {
            for (ExposureTime mark : scale.times()) {
                if (mark.seconds() <= 1 && mark.dial().equals(print)) {
                    return Optional.of(mark);
                }
            }
        }
        return Optional.empty();
    }

    /** What a bare time behind {@code meter KEY} means. */
    public ExposureTime preset(String word, String meter) {
        Token token = Tokens.token(word);
        if (token.is(Token.Kind.BARE)) {
            return printed(token, step, Scale.THIRD, Scale.HALF)
                    .orElseThrow(() -> new CommandRejected(word + " is no print of a dial: 125, or 1/125"));
        }
        if (!token.is(Token.Kind.TIME)) {
            throw new CommandRejected(word + " is no time: meter " + meter + " 1/125");
        }
        return step.timeOrAny(token.value());
    }

    /** Whether two numbers are an aperture and a time also where EVs are read: 5.6 and 125, which is no EV. */
    boolean isPair(List<Token> part) {
        return part.size() == 2
                && fNumber(part.get(0)).isPresent()
                && time(part.get(1)).isPresent()
                && (part.get(1).is(Token.Kind.TIME) || part.get(1).value() > 40);
    }
}
