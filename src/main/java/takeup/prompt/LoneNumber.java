package takeup.prompt;

/** A reading of one number where a meter shows two: what could be missing. */
final class LoneNumber {
    private LoneNumber() {}

    static CommandRejected rejected(Token token, boolean isCamera) {
        String number = token.text();
        if (token.is(Token.Kind.TIME)) {
            return new CommandRejected("m " + number + ": the aperture is missing, m f5.6 " + number);
        }
        if (isCamera) {
            return new CommandRejected("the time of " + number + " is missing: m camera 4 500");
        }
        if (token.is(Token.Kind.APERTURE)) {
            return new CommandRejected("m " + number + ": the time is missing, m " + number + " 125");
        }
        if (token.value() < 0) {
            return new CommandRejected("m " + number + ": no aperture is below 0; as an EV it is m ev" + number);
        }
        return new CommandRejected("m " + number + " could be an aperture (its time is missing: m " + number
                + " 125) or an EV (m ev" + number + ")");
    }
}
