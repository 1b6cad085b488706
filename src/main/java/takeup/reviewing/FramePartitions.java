package takeup.reviewing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import takeup.disk.FileSystem;
import takeup.disk.Folders;
import takeup.roll.RollId;
import takeup.text.English;

/**
 * Frames as JSON lines in a folder that query engines read: {@code year=2026/writer=R/frames-ID-000001.jsonl}. Each run
 * adds files with the rolls that are new or changed and rewrites none, so that a roll may stand in several: the newest
 * counts. One of which no frame is left has a line that says so. Beside each lies a list of its rolls,
 * {@code _frames-ID-000001.rolls}, which engines pass over by its name.
 */
final class FramePartitions {
    /** So many characters fill a file; those that follow go into the next. */
    private static final int FULL = 16 << 20;

    private static final String LIST = ".rolls";
    private static final String LINES = ".jsonl";

    private final Path root;
    private final String folder;
    private final Map<String, Partition> partitions = new TreeMap<>();
    private int added;
    private int unchanged;

    /**
     * Partitions below a folder, which need not be there.
     *
     * @param folder the id of the data folder, by which its files are told from those of another one
     */
    FramePartitions(Path root, String folder) {
        this.root = root;
        this.folder = folder;
    }

    /**
     * A roll with the lines of its frames.
     *
     * @param gone the line that is written where there are none, and the partition has some
     */
    record RollLines(RollId roll, int year, String lines, String gone) {
        RollLines {
            lines = lines.isEmpty() ? gone : lines;
        }

        boolean isGone() {
            return lines.equals(gone);
        }
    }

    /** Adds a roll, unless the newest lines of it there are the same. */
    void add(RollLines roll) throws IOException {
        String name = "year=" + roll.year + "/writer=" + roll.roll.letters();
        Partition partition = partitions.get(name);
        if (partition == null) {
            partition = new Partition(root.resolve(name));
            partitions.put(name, partition);
        }
        if (!partition.isNew(roll)) {
            unchanged++;
        } else {
            added++;
            partition.add(roll);
        }
    }

    /** Writes what is left, and says what was done. */
    String end() throws IOException {
        for (Partition partition : partitions.values()) {
            partition.flush();
        }
        return English.count(added, "roll") + " added to " + root + ", " + unchanged + " unchanged";
    }

    private final class Partition {
        private final Path place;
        private final Map<String, String> digests = new HashMap<>();
        private final StringBuilder lines = new StringBuilder();
        private final StringBuilder list = new StringBuilder();
        private int last;

        Partition(Path place) throws IOException {
            this.place = place;
            String front = "frames-" + folder + "-";
            for (String name : Folders.names(FileSystem.REAL, place, LINES)) {
                last = name.startsWith(front) ? Math.max(last, number(name.substring(front.length()))) : last;
            }
            for (String name : Folders.names(FileSystem.REAL, place, LIST)) {
                if (name.startsWith("_" + front)) {
                    String text = new String(
                            Folders.read(FileSystem.REAL, place.resolve(name + LIST)), StandardCharsets.UTF_8);
                    text.lines().forEach(it -> digests.put(it.split(" ")[0], it));
                }
            }
        }

        private int number(String digits) {
            return digits.matches("\\d{1,9}") ? Integer.parseInt(digits) : 0;
        }

        boolean isNew(RollLines roll) {
            String known = digests.get(roll.roll.toString());
            return known == null ? !roll.isGone() : !known.equals(entry(roll));
        }

        private String entry(RollLines roll) {
            return roll.roll + " " + digest(roll.lines);
        }

        void add(RollLines roll) throws IOException {
            lines.append(roll.lines);
            list.append(entry(roll)).append('\n');
            if (lines.length() > FULL) {
                flush();
            }
        }

        /** The lines first: without its list a file is passed over when it is asked what is there, and not lost. */
        void flush() throws IOException {
            if (lines.length() == 0) {
                return;
            }
            String name = String.format(Locale.ROOT, "frames-%s-%06d", folder, ++last);
            Folders.replace(place.resolve(name + LINES), lines.toString().getBytes(StandardCharsets.UTF_8));
            Folders.replace(place.resolve("_" + name + LIST), list.toString().getBytes(StandardCharsets.UTF_8));
            lines.setLength(0);
            list.setLength(0);
        }
    }

    private static String digest(String lines) {
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256").digest(lines.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(sum, 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
