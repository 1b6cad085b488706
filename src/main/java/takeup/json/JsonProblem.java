package takeup.json;

/** Why a file cannot be taken, and where: {@code R0007.json:12: framesExposed is missing}. */
public final class JsonProblem extends RuntimeException {
    private static final long serialVersionUID = 1;

    JsonProblem(String file, int line, String why) {
        super(file + ":" + line + ": " + why, null, false, false);
    }
}
