package takeup.order;

/** Why a file cannot be taken, and where: {@code R0007.json:12: framesExposed is missing}. */
public final class Unreadable extends Exception {
    private static final long serialVersionUID = 1;

    Unreadable(String file, int line, String why) {
        super(file + ":" + line + ": " + why, null, false, false);
    }
}
