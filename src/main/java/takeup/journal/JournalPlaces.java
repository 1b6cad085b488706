package takeup.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.disk.FileSystem;
import takeup.disk.Folders;
import takeup.roll.RollId;
import takeup.roll.RollNumbers;

/**
 * The folders of the journals as they were when the data folder was taken, to notice one that is moved away under the
 * program. For what is removed between two starts the newest roll's number lies in a file of its own, so that the
 * removal is told of, and the number is given to no second film.
 */
final class JournalPlaces {
    private final FileSystem drive;
    private final DataLayout layout;
    private final RollNumbers open;
    private final FinishedNumbers finished;
    private final Map<Path, Object> keys;
    /** The number of the newest roll in its file; below 0 as long as nobody looked. */
    private int newest = -1;

    private JournalPlaces(FileSystem drive, DataLayout layout, RollNumbers open, Map<Path, Object> keys) {
        this.drive = drive;
        this.layout = layout;
        this.open = open;
        this.keys = keys;
        Path folder = layout.finishedRolls();
        this.finished = new FinishedNumbers(drive, folder, keys.get(folder));
    }

    /** Makes the folders that a data folder always has; one of them that is a link is refused. */
    static void make(FileSystem drive, DataLayout layout) throws IOException {
        for (Path folder : layout.journalFolders()) {
            Folders.make(drive, folder);
            if (!folder.equals(layout.root())) {
                Folders.refuseLink(drive, folder);
            }
        }
        // Without a place for exports a day goes on all the same.
        if (drive.kind(layout.exports()) != FileSystem.Kind.LINK) {
            Folders.make(drive, layout.exports());
        }
    }

    static JournalPlaces of(FileSystem drive, DataLayout layout, RollNumbers open) throws IOException {
        Map<Path, Object> keys = new LinkedHashMap<>();
        for (Path folder : layout.folders()) {
            keys.put(folder, drive.key(folder));
        }
        return new JournalPlaces(drive, layout, open, keys);
    }

    /** The rolls that were there then, open and finished; the latter are read when they are asked for. */
    RollNumbers rolls() {
        return open.andLater(finished);
    }

    /** Sees to it that the rolls are known; at the first time this reads the names of all that are finished. */
    void know() throws IOException {
        finished.read();
    }

    /**
     * The same before these are written to. While the finished ones cannot be read, one that was not open then is
     * refused: it may bear the number of one of them.
     */
    void know(Collection<RollId> written) throws IOException {
        try {
            know();
        } catch (IOException e) {
            if (!open.containsAll(written)) {
                throw e;
            }
        }
    }

    /** Whether no roll was ever begun here. */
    boolean isEmpty() throws IOException {
        return open.isEmpty()
                && newest(drive, layout).isEmpty()
                && finished.read().isEmpty();
    }

    /** The newest roll that this writer ever had; empty where there is no such file, or something else in it. */
    static Optional<RollId> newest(FileSystem drive, DataLayout layout) {
        Path file = layout.lastRoll();
        try {
            if (drive.kind(file) != FileSystem.Kind.FILE || drive.size(file) > 16) {
                return Optional.empty();
            }
            Optional<RollId> roll = DataLayout.roll(new String(drive.read(file), StandardCharsets.US_ASCII).strip());
            boolean isOwn = roll.isPresent() && roll.get().letters().equals(layout.writer());
            return isOwn ? roll : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Notes the newest of these rolls, if it is newer than the one that is noted. */
    void noteNewest(Collection<RollId> written) {
        for (RollId roll : written) {
            if (newest < 0) {
                newest = newest(drive, layout).map(RollId::number).orElse(0);
            }
            if (roll.letters().equals(layout.writer()) && roll.number() > newest) {
                try {
                    Folders.replace(drive, layout.lastRoll(), (roll + "\n").getBytes(StandardCharsets.US_ASCII));
                    newest = roll.number();
                } catch (IOException e) {
                    // again with its next record
                }
            }
        }
    }

    /** Looked at with each frame: where all is well this is one call on the disk. */
    static Object key(FileSystem drive, Path folder) throws IOException {
        try {
            return drive.key(folder);
        } catch (IOException e) {
            if (drive.kind(folder) == FileSystem.Kind.NOTHING) {
                return "";
            }
            throw e;
        }
    }

    /**
     * The journals that went away with a folder, as a sentence; said once. What was written to since the start is back
     * by now. Where the disk cannot tell, the next step asks again.
     */
    Optional<String> gone() {
        try {
            return findGone();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private Optional<String> findGone() throws IOException {
        List<Path> others = new ArrayList<>();
        for (Map.Entry<Path, Object> place : keys.entrySet()) {
            Object now = key(drive, place.getKey());
            if (!now.equals(place.setValue(now))) {
                others.add(place.getKey());
            }
        }
        if (others.isEmpty()) {
            return Optional.empty();
        }
        know();
        List<String> gone = new ArrayList<>();
        if (others.contains(layout.finishedRolls()) && finished.areElsewhere()) {
            gone.add("all that were finished");
        }
        for (RollId roll : rolls()) {
            if (!new RollJournals(drive, layout).holds(roll)) {
                gone.add(roll.toString());
            }
        }
        return gone.isEmpty()
                ? Optional.empty()
                : Optional.of("a folder of the journals was moved or deleted by another program, and with it "
                        + String.join(", ", gone) + ": leave, and put that folder's files back where they were");
    }
}
