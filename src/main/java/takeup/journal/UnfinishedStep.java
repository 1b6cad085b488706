package takeup.journal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import takeup.disk.FileSystem;
import takeup.disk.Folders;

/**
 * A step that goes to several journals, noted in a file of its own before it is written to the first of them: how long
 * each was, and what it gets. The note goes once all of it is on the disk, and only then is the step acknowledged. So
 * where a start finds a note, what of the step was written is taken off again, and none of it is left half done.
 * Whoever only reads leaves it out.
 */
final class UnfinishedStep {
    private static final String FIRST_LINE = "takeup-unfinished 1";

    private final FileSystem drive;
    private final DataLayout layout;
    /** Whether there is a note, or may be one. */
    private boolean isBegun;

    private boolean isNoted;

    UnfinishedStep(FileSystem drive, DataLayout layout) {
        this.drive = drive;
        this.layout = layout;
    }

    /**
     * What goes to one journal.
     *
     * @param journal which
     * @param length how long it was before, in bytes; 0 where the step begins it
     * @param lines what it gets
     */
    record Part(Path journal, int length, byte[] lines) {}

    /** Whether there is a note, or may be one. */
    boolean isBegun() {
        return isBegun;
    }

    /** Whether a step is noted. */
    boolean isNoted() {
        return isNoted;
    }

    /** Notes a step; once this returns the note is on the disk. */
    void note(List<Part> parts) throws IOException {
        ByteArrayOutputStream note = new ByteArrayOutputStream();
        note.writeBytes((FIRST_LINE + "\n").getBytes(StandardCharsets.UTF_8));
        for (Part part : parts) {
            String name = layout.root().relativize(part.journal()).toString().replace('\\', '/');
            note.writeBytes((name + " " + part.length() + "\n").getBytes(StandardCharsets.UTF_8));
            note.writeBytes(part.lines());
        }
        isBegun = true;
        Folders.replace(drive, layout.unfinished(), note.toByteArray());
        isNoted = true;
    }

    /** Takes the note away, if there is one; once this returns no start finds it any more. */
    void forget() throws IOException {
        if (isBegun) {
            drive.delete(layout.unfinished());
            drive.forceNames(layout.root());
            isBegun = false;
            isNoted = false;
        }
    }

    /** Takes off what is there of a step that an earlier program left noted. What was done, in words; often nothing. */
    List<String> takeBack() throws IOException {
        if (drive.kind(layout.unfinished()) != FileSystem.Kind.FILE) {
            return List.of();
        }
        isBegun = true;
        boolean isCut = false;
        boolean isOther = false;
        List<Part> lastFirst = noted();
        Collections.reverse(lastFirst);
        for (Part part : lastFirst) {
            byte[] bytes = drive.kind(part.journal()) == FileSystem.Kind.FILE
                    ? Folders.read(drive, part.journal())
                    : new byte[0];
            if (bytes.length > part.length()) {
                boolean isOwn = isOfStep(part, bytes);
                isOther |= !isOwn;
                isCut |= isOwn;
                if (isOwn) {
                    cutOff(part, bytes);
                }
            }
        }
        forget();
        if (isOther) {
            return List.of("the last line before the program ended was not written whole, and the journals were "
                    + "changed since: look at the newest frames");
        }
        return isCut
                ? List.of("the last line before the program ended was not written whole, and was never "
                        + "confirmed: it is taken back; type it again")
                : List.of();
    }

    /**
     * What a journal holds without what the next start takes off it. It is read before the note is: a step that was
     * noted in between wrote nothing of what was read.
     */
    byte[] readConfirmed(Path journal) throws IOException {
        byte[] bytes = Folders.read(drive, journal);
        for (Part part : notedIn(journal.getParent())) {
            if (part.journal().equals(journal) && bytes.length > part.length() && isOfStep(part, bytes)) {
                if (part.length() == 0) {
                    throw new NoSuchFileException(journal.toString());
                }
                return Arrays.copyOf(bytes, part.length());
            }
        }
        return bytes;
    }

    /** The names in a folder, without those of journals that the next start takes away. */
    List<String> confirmedNames(Path folder) throws IOException {
        List<String> names = drive.names(folder);
        for (Part part : notedIn(folder)) {
            String name = part.journal().getFileName().toString();
            if (part.length() == 0 && names.contains(name) && isBegun(part)) {
                names = new ArrayList<>(names);
                names.remove(name);
            }
        }
        return names;
    }

    private boolean isBegun(Part part) throws IOException {
        try {
            byte[] bytes = Folders.read(drive, part.journal());
            return bytes.length > 0 && isOfStep(part, bytes);
        } catch (NoSuchFileException e) {
            return true; // taken away just now
        }
    }

    /** Whether a step that is not whole goes to a journal. */
    boolean goesTo(Path journal) throws IOException {
        for (Part part : notedIn(journal.getParent())) {
            if (part.journal().equals(journal)) {
                return true;
            }
        }
        return false;
    }

    /** What a step is to write in a folder; it goes to no others than these two. */
    private List<Part> notedIn(Path folder) throws IOException {
        return folder.equals(layout.openRolls()) || folder.equals(layout.days()) ? noted() : List.of();
    }

    /** What the note says; nothing where there is none, as most often. */
    private List<Part> noted() throws IOException {
        if (drive.kind(layout.unfinished()) != FileSystem.Kind.FILE) {
            return List.of();
        }
        try {
            return parts(new String(Folders.read(drive, layout.unfinished()), StandardCharsets.UTF_8));
        } catch (NoSuchFileException e) {
            return List.of(); // the step is whole by now
        }
    }

    /** Whether behind its former end a journal holds nothing whole that is not of the step. */
    private static boolean isOfStep(Part part, byte[] bytes) {
        Set<String> own = JournalReader.read("", part.lines()).lines().stream()
                .map(JournalLines.Line::text)
                .collect(Collectors.toSet());
        byte[] tail = Arrays.copyOfRange(bytes, part.length(), bytes.length);
        return JournalReader.read("", tail).lines().stream().allMatch(it -> own.contains(it.text()));
    }

    private void cutOff(Part part, byte[] bytes) throws IOException {
        if (part.length() == 0) {
            drive.delete(part.journal());
            drive.forceNames(part.journal().toAbsolutePath().getParent());
            return;
        }
        if (drive.hasSecondName(part.journal())) {
            Folders.put(drive, part.journal(), Arrays.copyOf(bytes, part.length()));
            return;
        }
        try (FileSystem.Open open = drive.open(part.journal())) {
            open.truncate(part.length());
            open.force(true);
        }
    }

    /** What a note says; nothing of one that is none. */
    private List<Part> parts(String note) {
        List<String> lines = note.lines().toList();
        List<Part> parts = new ArrayList<>();
        int at = 1;
        while (lines.size() > at && lines.get(0).equals(FIRST_LINE)) {
            String[] head = lines.get(at++).split(" ");
            StringBuilder own = new StringBuilder();
            while (at < lines.size() && lines.get(at).startsWith("{")) {
                own.append(lines.get(at++)).append('\n');
            }
            Optional<Path> journal =
                    head.length == 2 && head[1].matches("[0-9]{1,9}") ? journal(head[0]) : Optional.empty();
            if (journal.isEmpty()) {
                return new ArrayList<>();
            }
            parts.add(new Part(
                    journal.get(), Integer.parseInt(head[1]), own.toString().getBytes(StandardCharsets.UTF_8)));
        }
        return parts;
    }

    /** A journal below the data folder of which a note may speak. */
    private Optional<Path> journal(String name) {
        return List.of(layout.openRolls(), layout.days()).stream()
                .filter(it ->
                        name.startsWith(layout.root().relativize(it).toString().replace('\\', '/') + "/"))
                .map(it -> it.resolve(name.substring(name.lastIndexOf('/') + 1)))
                .filter(it -> layout.isJournal(it.getParent(), it.getFileName().toString()))
                .findFirst();
    }
}
