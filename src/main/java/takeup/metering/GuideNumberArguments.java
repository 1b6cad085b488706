package takeup.metering;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.GuideNumber;
import takeup.prompt.CommandRejected;
import takeup.prompt.Fractions;
import takeup.prompt.FrameArguments;
import takeup.prompt.Token;
import takeup.prompt.Tokens;
import takeup.text.Plain;

/**
 * Guide numbers as they are typed, {@code flash gn36m 3m 1/4}.
 *
 * @param heads the words of the heads, one or more
 * @param distance from the flash to the subject; empty where it is the one in hand
 * @param aperture the aperture that it shall be right for
 * @param power the part of full power, 1 where none is typed
 * @param fillStops how far the flash shall lie over or under the pair in hand; then the power is asked for
 */
record GuideNumberArguments(
        List<String> heads,
        Optional<Token> distance,
        Optional<Token> aperture,
        double power,
        OptionalDouble fillStops) {
    private static final int MOST_HEADS = 9;
    private static final double HIGHEST = 500;

    static GuideNumberArguments of(List<String> typed) {
        List<String> words = joined(typed);
        List<String> heads = new ArrayList<>();
        Optional<Token> distance = Optional.empty();
        Optional<Token> aperture = Optional.empty();
        OptionalDouble power = OptionalDouble.empty();
        OptionalDouble fill = OptionalDouble.empty();
        for (int at = 0; at < words.size(); at++) {
            String word = words.get(at);
            if (word.startsWith("gn")) {
                heads.add(word);
                continue;
            }
            if (word.equals("fill")) {
                if (at + 1 == words.size()) {
                    throw new CommandRejected("how far under the pair in hand? such as fill -1");
                }
                fill = OptionalDouble.of(fill(words.get(++at)));
                continue;
            }
            boolean isNamed = word.equals("power");
            if (isNamed && at + 1 == words.size()) {
                throw new CommandRejected("which power? such as power 1/4");
            }
            String value = isNamed ? words.get(++at) : word;
            Token token = Tokens.token(value);
            if (token.is(Token.Kind.METRES) && !isNamed) {
                if (distance.isPresent()) {
                    throw new CommandRejected("two distances: " + distance.get().text() + " and " + value);
                }
                FrameArguments.distance(token);
                distance = Optional.of(token);
            } else if (token.is(Token.Kind.APERTURE) && !isNamed) {
                if (aperture.isPresent()) {
                    throw new CommandRejected("two apertures: " + aperture.get().text() + " and " + value);
                }
                aperture = Optional.of(token);
            } else if (isNamed || value.indexOf('/') >= 0) {
                if (power.isPresent()) {
                    throw new CommandRejected("two powers in one line; " + value + " is one too many");
                }
                power = OptionalDouble.of(power(value));
            } else {
                throw new CommandRejected(value + " is no part of a flash line: flash gn36 3m 1/4");
            }
        }
        boolean isPowerAsked = fill.isPresent() || distance.isPresent() && aperture.isPresent();
        if (isPowerAsked && power.isPresent()) {
            throw new CommandRejected("the power is what follows from the rest of the line: leave power out");
        }
        return new GuideNumberArguments(heads, distance, aperture, power.orElse(1), fill);
    }

    /** Stops with their sign, behind {@code fill}. */
    private static double fill(String word) {
        try {
            return Fractions.signed(word);
        } catch (CommandRejected e) {
            throw new CommandRejected(word + " is no number of stops with its sign: fill -1, fill -2/3, fill 0");
        }
    }

    /** {@code gn 36 m} becomes {@code gn36m}. */
    private static List<String> joined(List<String> words) {
        List<String> out = new ArrayList<>();
        for (String word : words) {
            String before = out.isEmpty() ? "" : out.get(out.size() - 1);
            boolean isNumber = before.equals("gn");
            boolean isUnit = before.startsWith("gn")
                    && before.length() > 2
                    && Tokens.isDigit(before.charAt(before.length() - 1))
                    && (word.equals("m") || word.equals("ft"));
            if (isNumber || isUnit) {
                out.set(out.size() - 1, before + word);
            } else {
                out.add(word);
            }
        }
        return out;
    }

    /** The distance in metres, where none is typed the one in hand. */
    double metres(OptionalDouble inHand) {
        return distance.map(Token::value)
                .orElseGet(() -> inHand.orElseThrow(() -> new CommandRejected(
                        "how far is it from the flash to the subject? flash " + heads.get(0) + " 3m")));
    }

    /** The distance in the unit that it is typed in. */
    String distanceWords(double metres) {
        return isInFeet() ? Plain.digits(metres / GuideNumber.FOOT, 3) + " ft" : Plain.digits(metres, 3) + " m";
    }

    private boolean isInFeet() {
        return distance.map(it -> it.text().endsWith("ft"))
                .orElseGet(() -> heads.stream().allMatch(it -> it.endsWith("ft")));
    }

    /** The guide number of all heads together. */
    GuideNumber guide() {
        if (heads.size() > MOST_HEADS) {
            throw noGuideNumber("more than nine heads");
        }
        List<GuideNumber> all = heads.stream().map(this::head).toList();
        double sum = all.stream().mapToDouble(it -> it.metres() * it.metres()).sum();
        if (Math.sqrt(sum) > HIGHEST) {
            throw noGuideNumber("all heads together");
        }
        return GuideNumber.together(all);
    }

    /** One head; its unit is said outright, or is that of the distance on the line. */
    private GuideNumber head(String word) {
        boolean isFeet = word.endsWith("ft");
        boolean isMetres = !isFeet && word.endsWith("m");
        String unit = isFeet ? "ft" : "m";
        String number = word.substring(2, word.length() - (isFeet || isMetres ? unit.length() : 0));
        double value = Tokens.number(number)
                .orElseThrow(
                        () -> new CommandRejected(word + " is no guide number: gn36m for metres, gn118ft for feet"));
        if (!isFeet && !isMetres && distance.isEmpty()) {
            throw new CommandRejected(word + " could be for metres or for feet: " + word + "m or " + word + "ft");
        }
        boolean inFeet = isFeet || !isMetres && isInFeet();
        if (!(value > 0 && value * (inFeet ? GuideNumber.FOOT : 1) <= HIGHEST)) {
            throw noGuideNumber(word);
        }
        return inFeet ? GuideNumber.inFeet(value) : new GuideNumber(value);
    }

    private static CommandRejected noGuideNumber(String what) {
        return new CommandRejected(what + " is no guide number that there is: above 0 and up to 500 in metres");
    }

    /** A part of full power: {@code 1/4}, or {@code 0.25} behind the word. */
    private static double power(String word) {
        int slash = word.indexOf('/');
        Optional<Double> above = Tokens.number(slash < 0 ? word : word.substring(0, slash));
        Optional<Double> below = slash < 0 ? Optional.of(1.0) : Tokens.number(word.substring(slash + 1));
        double power = above.isPresent() && below.isPresent() && below.get() > 0 ? above.get() / below.get() : 0;
        if (!(power >= 1 / 4096.0 && power <= 1)) {
            throw new CommandRejected(word + " is no power: a part of full power, above 0 and up to 1, such as 1/4");
        }
        return power;
    }
}
