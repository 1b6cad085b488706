package takeup.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.ClosedChannelException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A disk in memory: what was done to it is written down, and any call can be made to fail. */
public final class MemoryFileSystem implements FileSystem {
    /** What was done to the disk, in order; files go by a number, since a name may change. */
    public sealed interface Deed {}

    /** Bytes were written. */
    public record Wrote(int file, int at, byte[] bytes) implements Deed {}

    /** A file was cut. */
    public record Cut(int file, int length) implements Deed {}

    /** A file was forced, or should have been. */
    public record Forced(int file, boolean failed) implements Deed {}

    /** A name was given. */
    public record Named(Path folder, String name, int file) implements Deed {}

    /** A name was changed within a folder, in one piece. */
    public record Renamed(Path folder, String from, String to, int file) implements Deed {}

    /** A name was taken away. */
    public record Unnamed(Path folder, String name) implements Deed {}

    /** A folder was made. */
    public record Made(Path folder) implements Deed {}

    /** The names of a folder were forced. */
    public record NamesForced(Path folder) implements Deed {}

    /** The photographer was told that so many things are safe. */
    public record Said(int things) implements Deed {}

    /** Stands before each call; throws what the call is to fail with. */
    public interface Fault {
        void before(String call, Path path) throws IOException;

        /** How many bytes the next write takes at most. */
        default int takes(int bytes) {
            return bytes;
        }
    }

    private static final class Content {
        private final int number;
        private byte[] bytes = new byte[0];

        Content(int number) {
            this.number = number;
        }
    }

    private final Map<Path, TreeMap<String, Content>> folders = new TreeMap<>();
    private final List<Deed> deeds = new ArrayList<>();
    private final List<Path> held = new ArrayList<>();
    private Fault fault = (call, path) -> {};
    private int files;
    private long room = 1L << 30;

    public MemoryFileSystem() {
        folders.put(Path.of("/"), new TreeMap<>());
    }

    public void fault(Fault next) {
        fault = next;
    }

    /** As if so many bytes were free. */
    public void room(long bytes) {
        room = bytes;
    }

    public List<Deed> deeds() {
        return deeds;
    }

    public void said(int things) {
        deeds.add(new Said(things));
    }

    /** Puts a folder there that was on the disk before. */
    public void put(Path folder) {
        folders.computeIfAbsent(folder, it -> new TreeMap<>());
    }

    /** Puts a file there that was on the disk before. */
    public void put(Path path, byte[] bytes) {
        Content content = new Content(++files);
        content.bytes = bytes;
        folders.get(path.getParent()).put(path.getFileName().toString(), content);
    }

    /** As if the disk had lost the end of a file. */
    public void cut(Path path, int length) {
        Content content = find(path);
        content.bytes = Arrays.copyOf(content.bytes, length);
    }

    /** Gives a file that was on the disk before a second name. */
    public void put(Path path, Path same) {
        folders.get(path.getParent())
                .put(
                        path.getFileName().toString(),
                        folders.get(same.getParent()).get(same.getFileName().toString()));
    }

    private Content find(Path path) {
        TreeMap<String, Content> folder = folders.get(path.getParent());
        return folder == null ? null : folder.get(path.getFileName().toString());
    }

    private Content need(Path path) throws IOException {
        Content content = find(path);
        if (content == null) {
            throw new NoSuchFileException(path.toString());
        }
        return content;
    }

    private TreeMap<String, Content> folder(Path path) throws IOException {
        TreeMap<String, Content> folder = folders.get(path);
        if (folder == null) {
            throw new NoSuchFileException(path.toString());
        }
        return folder;
    }

    private final class Channel implements Open {
        private final Path path;
        private final Content content;
        private int at;
        private boolean closed;

        Channel(Path path, Content content) {
            this.path = path;
            this.content = content;
            this.at = content.bytes.length;
        }

        private void use(String call) throws IOException {
            if (closed) {
                throw new ClosedChannelException();
            }
            fault.before(call, path);
        }

        @Override
        public int write(ByteBuffer buffer) throws IOException {
            use("write");
            byte[] bytes = new byte[fault.takes(buffer.remaining())];
            buffer.get(bytes);
            if (content.bytes.length < at + bytes.length) {
                content.bytes = Arrays.copyOf(content.bytes, at + bytes.length);
            }
            System.arraycopy(bytes, 0, content.bytes, at, bytes.length);
            deeds.add(new Wrote(content.number, at, bytes));
            at += bytes.length;
            return bytes.length;
        }

        @Override
        public void force(boolean attributes) throws IOException {
            try {
                use("force");
            } catch (IOException e) {
                deeds.add(new Forced(content.number, true));
                throw e;
            }
            deeds.add(new Forced(content.number, false));
        }

        @Override
        public void truncate(long length) throws IOException {
            use("truncate");
            if (length < content.bytes.length) {
                content.bytes = Arrays.copyOf(content.bytes, (int) length);
                deeds.add(new Cut(content.number, (int) length));
            }
            at = (int) length;
        }

        @Override
        public long size() throws IOException {
            use("channel size");
            return content.bytes.length;
        }

        @Override
        public void close() throws IOException {
            closed = true;
            fault.before("close", path);
        }
    }

    @Override
    public Hold hold(Path lock) throws IOException {
        fault.before("hold", lock);
        if (held.contains(lock)) {
            throw new FolderInUse("another takeup is writing in this folder");
        }
        held.add(lock);
        return new Hold() {
            @Override
            public boolean isSeen() {
                return held.contains(lock);
            }

            @Override
            public void close() {
                held.remove(lock);
            }
        };
    }

    /** As if somebody deleted the lock file. */
    public void forgetHolds() {
        held.clear();
    }

    @Override
    public Open create(Path path) throws IOException {
        fault.before("create", path);
        if (find(path) != null || folders.containsKey(path)) {
            throw new FileAlreadyExistsException(path.toString());
        }
        Content content = new Content(++files);
        folder(path.getParent()).put(path.getFileName().toString(), content);
        deeds.add(new Named(path.getParent(), path.getFileName().toString(), content.number));
        return new Channel(path, content);
    }

    @Override
    public Open open(Path path) throws IOException {
        fault.before("open", path);
        return new Channel(path, need(path));
    }

    @Override
    public byte[] read(Path path) throws IOException {
        fault.before("read", path);
        return need(path).bytes.clone();
    }

    @Override
    public Kind kind(Path path) throws IOException {
        fault.before("kind", path);
        return folders.containsKey(path) ? Kind.FOLDER : find(path) == null ? Kind.NOTHING : Kind.FILE;
    }

    @Override
    public long size(Path path) throws IOException {
        fault.before("size", path);
        return need(path).bytes.length;
    }

    @Override
    public String stamp(Path path) throws IOException {
        fault.before("stamp", path);
        Content content = find(path);
        return content == null ? "" : content.bytes.length + "@" + content.number;
    }

    @Override
    public Object key(Path path) throws IOException {
        fault.before("key", path);
        return folders.containsKey(path) ? "folder " + path : need(path);
    }

    @Override
    public boolean hasSecondName(Path path) throws IOException {
        fault.before("hasSecondName", path);
        Content content = need(path);
        return folders.values().stream()
                        .flatMap(it -> it.values().stream())
                        .filter(it -> it == content)
                        .count()
                > 1;
    }

    @Override
    public Path target(Path path) throws IOException {
        fault.before("target", path);
        return path;
    }

    @Override
    public List<String> names(Path folder) throws IOException {
        fault.before("names", folder);
        if (find(folder) != null) {
            throw new NotDirectoryException(folder.toString());
        }
        if (!folders.containsKey(folder)) {
            return List.of();
        }
        List<String> names = new ArrayList<>(folder(folder).keySet());
        folders.keySet().stream()
                .filter(it -> folder.equals(it.getParent()))
                .forEach(it -> names.add(it.getFileName().toString()));
        // A disk has its own order; nobody may count on another.
        names.sort(Comparator.reverseOrder());
        return names;
    }

    @Override
    public void makeFolder(Path folder) throws IOException {
        fault.before("makeFolder", folder);
        if (find(folder) != null || folders.containsKey(folder)) {
            throw new FileAlreadyExistsException(folder.toString());
        }
        folder(folder.getParent());
        folders.put(folder, new TreeMap<>());
        deeds.add(new Made(folder));
    }

    @Override
    public void move(Path from, Path to) throws IOException {
        fault.before("move", from);
        Content content = need(from);
        folder(to.getParent()).put(to.getFileName().toString(), content);
        folder(from.getParent()).remove(from.getFileName().toString());
        if (from.getParent().equals(to.getParent())) {
            deeds.add(new Renamed(
                    from.getParent(),
                    from.getFileName().toString(),
                    to.getFileName().toString(),
                    content.number));
        } else {
            deeds.add(new Named(to.getParent(), to.getFileName().toString(), content.number));
            deeds.add(new Unnamed(from.getParent(), from.getFileName().toString()));
        }
    }

    @Override
    public void link(Path link, Path path) throws IOException {
        fault.before("link", link);
        if (find(link) != null) {
            throw new FileAlreadyExistsException(link.toString());
        }
        folder(link.getParent()).put(link.getFileName().toString(), need(path));
        deeds.add(new Named(link.getParent(), link.getFileName().toString(), need(path).number));
    }

    @Override
    public boolean delete(Path path) throws IOException {
        fault.before("delete", path);
        if (find(path) == null) {
            return false;
        }
        folder(path.getParent()).remove(path.getFileName().toString());
        deeds.add(new Unnamed(path.getParent(), path.getFileName().toString()));
        return true;
    }

    @Override
    public void forceNames(Path folder) throws IOException {
        fault.before("forceNames", folder);
        folder(folder);
        deeds.add(new NamesForced(folder));
    }

    @Override
    public long room(Path folder) {
        return room;
    }
}
