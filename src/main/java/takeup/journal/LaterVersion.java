package takeup.journal;

import java.io.IOException;

/** A later version of the program wrote a file: it is not touched. */
public final class LaterVersion extends IOException {
    private static final long serialVersionUID = 1;

    LaterVersion(String name) {
        super(name + " was written by a later version of takeup; it is not touched");
    }
}
