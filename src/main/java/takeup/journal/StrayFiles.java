package takeup.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.disk.FileSystem;
import takeup.disk.Folders;
import takeup.disk.Quarantine;

/**
 * What lies in a data folder beside what takeup reads: files set aside, halves of files, names that are none of its
 * own.
 */
final class StrayFiles {
    private final FileSystem drive;
    private final DataLayout layout;
    private final List<String> found = new ArrayList<>();

    StrayFiles(FileSystem drive, DataLayout layout) {
        this.drive = drive;
        this.layout = layout;
    }

    /** Each by its name below the data folder, with what it is and what to do with it. */
    List<String> find() throws IOException {
        for (Path folder : layout.folders()) {
            look(folder);
        }
        look(layout.reviews());
        look(layout.index());
        for (Path file : List.of(
                layout.lock(),
                layout.draft(),
                layout.wentBackTo(),
                layout.lastRoll(),
                layout.root().resolve("reserve"))) {
            leftAlone(file);
        }
        if (drive.kind(layout.lock()) == FileSystem.Kind.FILE && drive.hasSecondName(layout.lock())) {
            found.add("lock: it has a second name elsewhere, so that nothing is written to it. Delete it; the next "
                    + "start makes its own");
        }
        for (Path folder : List.of(
                layout.root().resolve("rolls"),
                layout.openRolls(),
                layout.finishedRolls(),
                layout.days(),
                layout.exports(),
                layout.reviews(),
                layout.index())) {
            if (drive.kind(folder) == FileSystem.Kind.LINK) {
                leftAlone(folder);
            }
        }
        for (String name : Folders.names(drive, layout.exports(), ".json")) {
            leftAlone(layout.exports().resolve(name + ".json"));
        }
        return found;
    }

    private void leftAlone(Path path) throws IOException {
        Folders.whyLeftAlone(drive, path).ifPresent(why -> found.add(below(path) + ": it " + why));
    }

    private String below(Path path) {
        return layout.root().relativize(path).toString().replace('\\', '/');
    }

    private void look(Path folder) throws IOException {
        List<String> names = new ArrayList<>(drive.names(folder));
        names.sort(null);
        for (String name : names) {
            look(folder, name);
        }
    }

    private void look(Path folder, String name) throws IOException {
        String where = below(folder.resolve(name));
        int kind = kind(name);
        if (kind >= 0) {
            String journal = name.substring(0, name.indexOf("." + Quarantine.KINDS.get(kind) + "-"));
            found.add(where + ": "
                    + switch (kind) {
                        case 0 ->
                            drive.size(folder.resolve(name)) + " bytes that were cut off the end of " + journal
                                    + "; they were never confirmed on screen";
                        case 1 -> "another file that lay in the place of " + journal + "; compare the two";
                        default -> "a copy of the damaged lines of " + journal;
                    }
                    + ". Delete it once nothing in it is needed");
        } else if (Folders.isPart(name)) {
            found.add(where + ": half a file, left by a program that was stopped; the next start removes it");
        } else if (layout.holdsJournals(folder) && !name.startsWith(".") && !layout.isJournal(folder, name)) {
            found.add(where + ": " + copyOf(folder, name).orElse("by its name no journal, so that it is not read"));
        }
    }

    /**
     * What a tool that carries folders from laptop to laptop kept beside a journal: {@code R0007 (conflicted
     * copy).journal}.
     */
    private Optional<String> copyOf(Path folder, String name) throws IOException {
        if (!name.endsWith(DataLayout.ENDING)) {
            return Optional.empty();
        }
        boolean isDay = folder.equals(layout.days());
        int end = isDay ? Math.min(10, name.length()) : 0;
        while (!isDay
                && (name.charAt(end) >= 'A' && name.charAt(end) <= 'Z'
                        || name.charAt(end) >= '0' && name.charAt(end) <= '9')) {
            end++;
        }
        String journal = name.substring(0, end) + DataLayout.ENDING;
        List<Path> places = isDay ? List.of(folder) : List.of(layout.openRolls(), layout.finishedRolls());
        for (Path place : places) {
            if (layout.isJournal(folder, journal) && drive.kind(place.resolve(journal)) == FileSystem.Kind.FILE) {
                boolean isIn = Quarantine.isBeginning(
                        drive, folder.resolve(name), Folders.read(drive, place.resolve(journal)));
                return Optional.of(
                        isIn
                                ? "a copy of " + journal + ", which holds all that is in it. Delete it"
                                : "a conflicting copy of " + journal
                                        + ", which differs. Compare the two; where two laptops log, each needs "
                                        + "letters of its own (writer in settings.json)");
            }
        }
        return Optional.empty();
    }

    /** Which kind of file aside it is by its name; -1 if it is none. */
    private static int kind(String name) {
        for (int kind = 0; kind < Quarantine.KINDS.size(); kind++) {
            String mark = DataLayout.ENDING + "." + Quarantine.KINDS.get(kind) + "-";
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
