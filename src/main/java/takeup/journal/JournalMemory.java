package takeup.journal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import takeup.disk.Folders;
import takeup.records.Fields;

/**
 * What of one journal was acknowledged, whole, and the step that is being added to it: so that it can be written anew,
 * and a refused step be taken back. It knows nothing of the file.
 */
final class JournalMemory {
    private final String name;
    private final ByteArrayOutputStream acknowledged = new ByteArrayOutputStream();
    private int lastN;
    private long lastStep = -1;
    private List<String> lastEvents = List.of();
    /** What the step that is being written adds, and where it begins. */
    private byte[] tried = new byte[0];

    private int lengthBefore;
    private int lastBefore;

    /**
     * What a journal holds.
     *
     * @param name the file's, for what is said of it
     * @param lastN the number of its last record; 0 where there is none
     */
    JournalMemory(String name, byte[] bytes, int lastN) {
        this.name = name;
        this.lastN = lastN;
        acknowledged.writeBytes(bytes);
    }

    /** Whether it has a record. */
    boolean isBegun() {
        return lastN > 0;
    }

    int lastN() {
        return lastN;
    }

    /** How long all of it is. */
    int length() {
        return acknowledged.size();
    }

    /** Whether this is the step that was appended last. */
    boolean isLast(long step, List<String> events) {
        return step == lastStep && events.equals(lastEvents);
    }

    /** Is to hold this alone. */
    void hold(byte[] bytes) {
        acknowledged.reset();
        acknowledged.writeBytes(bytes);
    }

    /** The lines that a step adds, or would add. */
    byte[] lines(long step, OffsetDateTime at, List<String> events) throws IOException {
        ByteArrayOutputStream lines = new ByteArrayOutputStream();
        for (int it = 0; it < events.size(); it++) {
            lines.writeBytes(JournalLines.ofChecked(lastN + it + 1, step, at, events.get(it)));
        }
        if (acknowledged.size() + lines.size() > Folders.LARGEST || lastN + events.size() > Fields.MOST) {
            throw new IOException(name + " is as large as a journal can be; unload the roll, or go on tomorrow");
        }
        return lines.toByteArray();
    }

    /** A step is about to be written: its lines. */
    byte[] begin(long step, OffsetDateTime at, List<String> events) throws IOException {
        tried = lines(step, at, events);
        lengthBefore = acknowledged.size();
        lastBefore = lastN;
        return tried;
    }

    /** The step that was begun is on the disk. */
    void acknowledge(long step, List<String> events) {
        acknowledged.writeBytes(tried);
        lastN += events.size();
        lastStep = step;
        lastEvents = List.copyOf(events);
    }

    /** The step is whole: nothing of it is taken back any more. */
    void keep() {
        tried = new byte[0];
    }

    /** Whether a step was begun that is not kept yet. */
    boolean holdsTried() {
        return tried.length > 0;
    }

    /** Holds what it held before the step that was begun; answers with what the file may hold the beginning of. */
    byte[] forget() {
        hold(Arrays.copyOf(acknowledged.toByteArray(), lengthBefore));
        lastN = lastBefore;
        lastStep = -1;
        return with(tried);
    }

    /** All of it, and something more behind it. */
    byte[] with(byte[] more) {
        return ByteBuffer.allocate(length() + more.length)
                .put(acknowledged.toByteArray())
                .put(more)
                .array();
    }
}
