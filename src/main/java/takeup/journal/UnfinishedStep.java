package takeup.journal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
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
        List<Part> lastFirst = parts(new String(Folders.read(drive, layout.unfinished()), StandardCharsets.UTF_8));
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
