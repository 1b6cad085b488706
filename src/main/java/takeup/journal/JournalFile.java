package takeup.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import takeup.disk.FileSystem;
import takeup.disk.Folders;
import takeup.disk.Quarantine;

/**
 * One journal that is being written: appended to, forced before anything is acknowledged.
 *
 * <p>What was acknowledged is held in memory too ({@link JournalMemory}). After a failed force the system may have
 * dropped what it was to write and call the next force a success, so that channel is never used again; and a file that
 * was deleted or replaced takes records without a word. In both cases the journal is written anew at once, whole,
 * beside the old one, and put in its place. A new journal comes into being the same way, with its first record in it.
 */
final class JournalFile implements AutoCloseable {
    /**
     * Why a journal was rewritten, if it was: it could not be forced, somebody had given it a second name elsewhere, or
     * had moved, deleted or changed it.
     */
    enum Rewritten {
        NOT,
        BROKEN,
        SHARED,
        DISPLACED
    }

    private static final byte[] LINE_FEED = {'\n'};

    private final FileSystem drive;
    private final Path path;
    private final JournalMemory memory;
    private Optional<FileSystem.Open> channel = Optional.empty();
    private Object key = "";
    private boolean displaced;
    private boolean shared;
    private boolean broken;

    private JournalFile(FileSystem drive, Path path, byte[] bytes, int lastN) {
        this.drive = drive;
        this.path = path;
        this.memory = new JournalMemory(path.getFileName().toString(), bytes, lastN);
    }

    /**
     * Opens a journal to go on with it, or begins it. Damaged lines, and a torn tail before it is cut off, are copied
     * aside.
     */
    static JournalFile open(FileSystem drive, Path path) throws IOException {
        if (drive.kind(path) == FileSystem.Kind.NOTHING) {
            return new JournalFile(drive, path, JournalLines.header(), 0);
        }
        byte[] bytes = Folders.read(drive, path);
        JournalLines.Content content = JournalReader.read(path.getFileName().toString(), bytes);
        if (content.newer()) {
            throw new LaterVersion(path.getFileName().toString());
        }
        int good = (int) content.goodBytes();
        if (good == 0) {
            return new JournalFile(drive, path, JournalLines.header(), 0);
        }
        if (content.damaged().length > 0) {
            Quarantine.damaged(drive, path, content.damaged());
        }
        JournalFile file = new JournalFile(drive, path, Arrays.copyOf(bytes, good), content.lastN());
        if (drive.hasSecondName(path)) {
            file.shared = true;
            file.endLine(content);
            return file;
        }
        FileSystem.Open channel = drive.open(path);
        try {
            if (content.torn() || content.lacksLineFeed()) {
                Quarantine.tail(drive, path, Arrays.copyOfRange(bytes, good, bytes.length));
                channel.truncate(good);
                if (content.lacksLineFeed()) {
                    Folders.write(channel, LINE_FEED);
                    file.endLine(content);
                }
                channel.force(true);
            }
            // The one who made the file may have died before its name was on the disk.
            drive.forceNames(path.toAbsolutePath().getParent());
            file.key = drive.key(path);
            file.channel = Optional.of(channel);
            return file;
        } catch (IOException | RuntimeException e) {
            channel.close();
            throw e;
        }
    }

    private void endLine(JournalLines.Content content) {
        if (content.lacksLineFeed()) {
            memory.hold(memory.with(LINE_FEED));
        }
    }

    /**
     * Appends the events of one step and forces them. Once this returns they are on the disk. The step that was
     * appended last is not appended a second time: a step over several files is tried again as a whole.
     *
     * @return why the journal was written anew
     */
    Rewritten append(long step, OffsetDateTime at, List<String> events) throws IOException {
        if (memory.isLast(step, events)) {
            return mend();
        }
        if (!memory.isBegun() && channel.isEmpty()) {
            memory.hold(JournalLines.header(step, at, events.get(0)));
        }
        byte[] more = memory.begin(step, at, events);
        boolean isSound = isSound(0);
        if (isSound) {
            write(channel.orElseThrow(), more);
        }
        if (!isSound || !isSound(more.length)) {
            rewrite(more);
        }
        memory.acknowledge(step, events);
        return takeReason();
    }

    /** The lines that a step adds, or would add. */
    byte[] lines(long step, OffsetDateTime at, List<String> events) throws IOException {
        return memory.lines(step, at, events);
    }

    /** Its length on the disk; 0 where it is not begun yet. */
    int size() {
        return memory.isBegun() ? memory.length() : 0;
    }

    /** The step is whole: nothing of it is taken back any more. */
    void keep() {
        memory.keep();
    }

    /**
     * Takes off what the step that is refused added, as far as it came to the disk; a journal that it began goes.
     * Cutting needs no space. Where that fails it is to be tried again before anything else is written.
     */
    void takeBack() throws IOException {
        if (!memory.holdsTried()) {
            return;
        }
        byte[] whole = memory.forget();
        displaced = false;
        if (drive.kind(path) == FileSystem.Kind.FILE && Quarantine.isBeginning(drive, path, whole)) {
            cutOff();
        }
        keep();
    }

    private void cutOff() throws IOException {
        if (!memory.isBegun()) {
            closeQuietly();
            drive.delete(path);
            drive.forceNames(path.toAbsolutePath().getParent());
            return;
        }
        FileSystem.Open open = channel.isEmpty() ? drive.open(path) : channel.get();
        boolean isCut = false;
        try {
            open.truncate(memory.length());
            open.force(true);
            isCut = channel.isPresent();
        } finally {
            if (!isCut) {
                channel = Optional.of(open);
                closeQuietly();
            }
        }
    }

    /** A step for a journal that counts its own: the same again until something was appended. */
    long nextStep() {
        return memory.lastN() + 1L;
    }

    /** Writes the journal anew if it cannot be trusted or found any more; answers as {@link #append} does. */
    Rewritten mend() throws IOException {
        if (memory.isBegun() && !isSound(0)) {
            rewrite(new byte[0]);
        }
        return takeReason();
    }

    private Rewritten takeReason() {
        Rewritten was = broken ? Rewritten.BROKEN : Rewritten.NOT;
        was = shared ? Rewritten.SHARED : was;
        was = displaced ? Rewritten.DISPLACED : was;
        displaced = false;
        shared = false;
        broken = false;
        return was;
    }

    /**
     * Whether the file under that name is the one that is open, bears that name alone, and holds so many bytes more
     * than was acknowledged.
     */
    private boolean isSound(int more) {
        if (channel.isEmpty()) {
            return false;
        }
        try {
            displaced = channel.get().size() != memory.length() + more || !key.equals(drive.key(path));
            shared = !displaced && drive.hasSecondName(path);
        } catch (IOException e) {
            displaced = true;
        }
        return !displaced && !shared;
    }

    /**
     * What cannot be written is refused. Where it cannot be forced the file is let go, and nothing is acknowledged in
     * it again.
     */
    private void write(FileSystem.Open open, byte[] more) throws IOException {
        try {
            Folders.write(open, more);
        } catch (IOException | RuntimeException e) {
            if (!cutBack(open)) {
                closeQuietly();
            }
            throw e;
        }
        try {
            open.force(false);
        } catch (IOException e) {
            broken = true;
            cutBack(open);
            closeQuietly();
        }
    }

    /** Cuts off what was never acknowledged: a full disk leaves half a record, and cutting needs no space. */
    private boolean cutBack(FileSystem.Open open) {
        try {
            open.truncate(memory.length());
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    private void rewrite(byte[] more) throws IOException {
        closeQuietly();
        byte[] whole = memory.with(more);
        Quarantine.other(drive, path, whole);
        Folders.put(drive, path, whole);
        boolean isWhole = true;
        try {
            key = drive.key(path);
            FileSystem.Open open = drive.open(path);
            channel = Optional.of(open);
            isWhole = open.size() == whole.length;
        } catch (IOException e) {
            // All of it is on the disk; only the next record has to begin here again.
            closeQuietly();
        }
        if (!isWhole) {
            throw new IOException(
                    path.getFileName() + " is changed by another program as soon as it is written; stop that program");
        }
    }

    private void closeQuietly() {
        try {
            close();
        } catch (IOException e) {
            // nothing that was acknowledged hangs on it
        }
    }

    @Override
    public void close() throws IOException {
        Optional<FileSystem.Open> open = channel;
        channel = Optional.empty();
        if (open.isPresent()) {
            open.get().close();
        }
    }
}
