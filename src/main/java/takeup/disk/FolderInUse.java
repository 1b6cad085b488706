package takeup.disk;

import java.io.IOException;

/** Another program holds the folder. */
public final class FolderInUse extends IOException {
    private static final long serialVersionUID = 1;

    public FolderInUse(String who) {
        super(who);
    }
}
