package takeup.journal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One journal that is being written: appended to, forced before anything is acknowledged.
 *
 * <p>What was acknowledged is held in memory too. After a failed force the system may have dropped what it was to write
 * and call the next force a success, so that channel is never used again; and a file that was deleted or replaced takes
 * records without a word. In both cases the journal is written anew, whole, beside the old one, and put in its place. A
 * new journal comes into being the same way, with its first record in it.
 */
final class JournalFile implements AutoCloseable {
    private final Path path;
    private final ByteArrayOutputStream acknowledged = new ByteArrayOutputStream();
    private Optional<FileChannel> channel = Optional.empty();
    private Object key = "";
    private int lastN;
    private long lastStep = -1;
    private List<String> lastEvents = List.of();
    private boolean displaced;

    private JournalFile(Path path, byte[] bytes, int lastN) {
        this.path = path;
        this.lastN = lastN;
        acknowledged.writeBytes(bytes);
    }

    /** Opens a journal to go on with it, or begins it. A torn tail is copied aside before it is cut off. */
    static JournalFile open(Path path) throws IOException {
        if (!Files.exists(path)) {
            return new JournalFile(path, Lines.header(), 0);
        }
        byte[] bytes = Folders.read(path);
        Lines.Content content = Lines.read(path.getFileName().toString(), bytes);
        if (content.newer()) {
            throw new IOException(path.getFileName() + " was written by a later version; it is not touched");
        }
        int good = (int) content.goodBytes();
        if (good == 0) {
            return new JournalFile(path, Lines.header(), 0);
        }
        JournalFile file = new JournalFile(path, Arrays.copyOf(bytes, good), content.lastN());
        FileChannel channel = FileChannel.open(path, StandardOpenOption.WRITE);
        try {
            if (content.torn() || content.unended()) {
                Aside.tail(path, Arrays.copyOfRange(bytes, good, bytes.length));
                channel.truncate(good).position(good);
                if (content.unended()) {
                    Folders.write(channel, new byte[] {'\n'});
                    file.acknowledged.write('\n');
                }
                channel.force(true);
            }
            // The one who made the file may have died before its name was on the disk.
            Folders.force(path.toAbsolutePath().getParent());
            channel.position(channel.size());
            file.key = Folders.key(path);
            file.channel = Optional.of(channel);
            return file;
        } catch (IOException | RuntimeException e) {
            channel.close();
            throw e;
        }
    }

    /**
     * Appends the events of one step and forces them. Once this returns they are on the disk. The step that was appended
     * last is not appended a second time: a step over several files is tried again as a whole.
     *
     * @return whether the journal was written anew because somebody had moved, deleted or changed it
     */
    boolean append(long step, OffsetDateTime at, List<String> events) throws IOException {
        if (step == lastStep && events.equals(lastEvents)) {
            return mend();
        }
        ByteArrayOutputStream lines = new ByteArrayOutputStream();
        int n = lastN;
        for (String event : events) {
            lines.writeBytes(Lines.of(++n, step, at, event));
        }
        if (acknowledged.size() + lines.size() > Folders.LARGEST || n > Fields.MOST) {
            throw new IOException(path.getFileName() + " is as large as a journal can be; unload the roll, or go on tomorrow");
        }
        byte[] more = lines.toByteArray();
        if (isSound(0)) {
            write(channel.orElseThrow(), more);
        }
        if (!isSound(more.length)) {
            anew(more);
        }
        acknowledged.writeBytes(more);
        lastN = n;
        lastStep = step;
        lastEvents = List.copyOf(events);
        return told();
    }

    /** Writes the journal anew if it cannot be trusted or found any more; answers as {@link #append} does. */
    boolean mend() throws IOException {
        if (lastN > 0 && !isSound(0)) {
            anew(new byte[0]);
        }
        return told();
    }

    private boolean told() {
        boolean was = displaced;
        displaced = false;
        return was;
    }

    /** Whether the file under that name is the one that is open, and holds so many bytes more than was acknowledged. */
    private boolean isSound(int more) {
        if (channel.isEmpty()) {
            return false;
        }
        try {
            displaced = channel.get().size() != acknowledged.size() + more || !key.equals(Folders.key(path));
        } catch (IOException e) {
            displaced = true;
        }
        return !displaced;
    }

    private void write(FileChannel open, byte[] more) throws IOException {
        boolean forcing = false;
        try {
            Folders.write(open, more);
            forcing = true;
            open.force(false);
        } catch (IOException | RuntimeException e) {
            if (!isCutBack(open) || forcing) {
                letGo();
            }
            throw e;
        }
    }

    /** Cuts off what was never acknowledged: a full disk leaves half a record, and cutting needs no space. */
    private boolean isCutBack(FileChannel open) {
        try {
            open.truncate(acknowledged.size()).position(acknowledged.size());
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    private void anew(byte[] more) throws IOException {
        letGo();
        byte[] whole = Arrays.copyOf(acknowledged.toByteArray(), acknowledged.size() + more.length);
        System.arraycopy(more, 0, whole, acknowledged.size(), more.length);
        Aside.other(path, whole);
        Folders.replace(path, whole);
        try {
            key = Folders.key(path);
            FileChannel open = FileChannel.open(path, StandardOpenOption.WRITE);
            channel = Optional.of(open);
            open.position(whole.length);
        } catch (IOException e) {
            // All of it is on the disk; only the next record has to begin here again.
            letGo();
        }
    }

    private void letGo() {
        try {
            close();
        } catch (IOException e) {
            // nothing that was acknowledged hangs on it
        }
    }

    @Override public void close() throws IOException {
        Optional<FileChannel> open = channel;
        channel = Optional.empty();
        if (open.isPresent()) {
            open.get().close();
        }
    }
}
