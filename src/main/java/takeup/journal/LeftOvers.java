package takeup.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What lies in a data folder beside what takeup reads: files put aside, halves of files, names that are none of its own. */
final class LeftOvers {
    private final Drive drive;
    private final Path root;
    private final List<String> found = new ArrayList<>();

    LeftOvers(Drive drive, Path root) {
        this.drive = drive;
        this.root = root;
    }

    /** Each by its name below the data folder, with what it is and what to do with it. */
    List<String> find() throws IOException {
        for (Path folder : Archive.folders(root)) {
            look(folder);
        }
        look(Archive.reviews(root));
        return found;
    }

    private void look(Path folder) throws IOException {
        for (String name : drive.names(folder)) {
            look(folder, name);
        }
    }

    private void look(Path folder, String name) throws IOException {
        String where = root.relativize(folder.resolve(name)).toString().replace('\\', '/');
        int kind = kind(name);
        if (kind >= 0) {
            String journal = name.substring(0, name.indexOf("." + Aside.KINDS.get(kind) + "-"));
            found.add(where + ": " + switch (kind) {
                case 0 -> drive.size(folder.resolve(name)) + " bytes that were cut off the end of " + journal + "; they were never confirmed on screen";
                case 1 -> "another file that lay in the place of " + journal + "; compare the two";
                default -> "a copy of the damaged lines of " + journal;
            } + ". Delete it once nothing in it is needed");
        } else if (Folders.isPart(name)) {
            found.add(where + ": half a file, left by a program that was stopped; the next start removes it");
        } else if (Archive.holdsJournals(root, folder) && !name.startsWith(".") && !Archive.isJournal(root, folder, name)) {
            found.add(where + ": by its name no journal, so that it is not read");
        }
    }

    /** Which kind of file aside it is by its name; -1 if it is none. */
    private static int kind(String name) {
        for (int kind = 0; kind < Aside.KINDS.size(); kind++) {
            String mark = ".journal." + Aside.KINDS.get(kind) + "-";
            int at = name.indexOf(mark);
            if (at > 0 && isCount(name.substring(at + mark.length()))) {
                return kind;
            }
        }
        return -1;
    }

    private static boolean isCount(String text) {
        int at = 0;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at > 0 && at == text.length();
    }
}
