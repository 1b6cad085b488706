package takeup.grid;

/**
 * The few signs beyond ASCII that the program itself draws, with the ASCII form of each for a terminal that cannot show
 * it: {@code ─} is {@code -}, {@code ½} is {@code 1/2}.
 */
final class Glyphs {
    // One sign above, what stands for it below.
    private static final String SIGNS = "─│┌┐└┘├┤┬┴┼▁▂▃▄▅▆▇█▪▫·…–→►✓▌▐▀×µ◇•";
    private static final String ASCII = "-|+++++++++__.ooOO##..~->>*##\"xu^o";

    private Glyphs() {}

    /**
     * The ASCII form of this sign, "" if it is not one of them. After a digit a fraction says that it is added:
     * {@code 5+1/2}.
     */
    static String ascii(int point, boolean afterDigit) {
        int at = SIGNS.indexOf(point);
        if (at >= 0) {
            return ASCII.substring(at, at + 1);
        }
        return switch (point) {
            case '±' -> "+/-";
            case '½' -> afterDigit ? "+1/2" : "1/2";
            case '⅓' -> afterDigit ? "+1/3" : "1/3";
            case '⅔' -> afterDigit ? "+2/3" : "2/3";
            default -> "";
        };
    }
}
