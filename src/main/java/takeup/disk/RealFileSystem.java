package takeup.disk;

import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/** The disk of this machine. It decides nothing: each call is one of the system's. */
final class RealFileSystem implements FileSystem {
    private static final boolean POSIX =
            FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    private static final boolean UNIX =
            FileSystems.getDefault().supportedFileAttributeViews().contains("unix");

    /** Null as long as nobody asked. */
    private static List<String> mountPlaces;

    private record Channel(FileChannel file) implements Open {
        @Override
        public int write(ByteBuffer bytes) throws IOException {
            return file.write(bytes);
        }

        @Override
        public void force(boolean attributes) throws IOException {
            file.force(attributes);
        }

        @Override
        public void truncate(long length) throws IOException {
            file.truncate(length).position(length);
        }

        @Override
        public long size() throws IOException {
            return file.size();
        }

        @Override
        public void close() throws IOException {
            file.close();
        }
    }

    static FileAttribute<?>[] mode(String permissions) {
        return POSIX
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
                }
                : new FileAttribute<?>[0];
    }

    @Override
    public Hold hold(Path lock) throws IOException {
        return Lock.take(lock);
    }

    @Override
    public Open create(Path path) throws IOException {
        return new Channel(FileChannel.open(
                path, Set.of(StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW), mode("rw-------")));
    }

    @Override
    public Open open(Path path) throws IOException {
        refuseForeign(path);
        FileChannel file = FileChannel.open(path, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        try {
            return new Channel(file.position(file.size()));
        } catch (IOException | RuntimeException e) {
            file.close();
            throw e;
        }
    }

    /** Refuses a file that somebody mounted there: its folder does not hold it. */
    static void refuseForeign(Path path) throws IOException {
        Path folder = path.toAbsolutePath().getParent();
        if (UNIX
                && folder != null
                && !Files.getAttribute(path, "unix:dev", LinkOption.NOFOLLOW_LINKS)
                        .equals(Files.getAttribute(folder, "unix:dev"))) {
            throw new IOException(path.getFileName() + " lies on another disk than its folder");
        }
        String name = "/" + path.getFileName();
        for (String place : mountPlaces()) {
            if (folder != null
                    && place.endsWith(name)
                    && place.equals(
                            folder.toRealPath().resolve(path.getFileName()).toString())) {
                throw new IOException(path.getFileName() + " is mounted there, and lies elsewhere");
            }
        }
    }

    /** Where something is mounted, as Linux tells; asked once, and nothing of it touched: a network may not answer. */
    private static synchronized List<String> mountPlaces() {
        if (mountPlaces == null) {
            try (InputStream in = new FileInputStream("/proc/self/mountinfo")) {
                mountPlaces = mountPlaces(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            } catch (IOException e) {
                mountPlaces = List.of(); // another system, or no /proc: then the disks alone tell
            }
        }
        return mountPlaces;
    }

    /** The fifth word of each line (proc(5), mountinfo). Cut by hand: the start waits for it. */
    static List<String> mountPlaces(String lines) {
        List<String> places = new ArrayList<>();
        int end;
        for (int line = 0; (end = lines.indexOf('\n', line)) >= 0; line = end + 1) {
            int from = line;
            for (int word = 1; word < 5; word++) {
                from = lines.indexOf(' ', from) + 1;
            }
            int to = lines.indexOf(' ', from);
            if (from > line && to > from && to < end) {
                String place = lines.substring(from, to);
                places.add(place.indexOf('\\') < 0 ? place : place.replace("\\040", " "));
            }
        }
        return places;
    }

    @Override
    public byte[] read(Path path) throws IOException {
        refuseForeign(path);
        try (InputStream in = Files.newInputStream(path, LinkOption.NOFOLLOW_LINKS)) {
            return in.readNBytes(Folders.LARGEST + 1);
        }
    }

    @Override
    public Kind kind(Path path) throws IOException {
        try {
            BasicFileAttributes attributes =
                    Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            if (attributes.isRegularFile()) {
                return Kind.FILE;
            }
            if (attributes.isSymbolicLink()) {
                return Kind.LINK;
            }
            return attributes.isDirectory() ? Kind.FOLDER : Kind.OTHER;
        } catch (NoSuchFileException e) {
            return Kind.NOTHING;
        } catch (FileSystemException e) {
            if (isBelowAFile(path)) {
                return Kind.NOTHING;
            }
            throw e;
        }
    }

    /** Whether a path goes on where a plain file or a device stands, as {@code /dev/null/folder} does. */
    private static boolean isBelowAFile(Path path) {
        Path above = path.toAbsolutePath().getParent();
        while (above != null && !Files.exists(above)) {
            above = above.getParent();
        }
        return above != null && !Files.isDirectory(above);
    }

    @Override
    public long size(Path path) throws IOException {
        return Files.size(path);
    }

    @Override
    public String stamp(Path path) throws IOException {
        try {
            BasicFileAttributes attributes =
                    Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            return attributes.isRegularFile()
                    ? attributes.size() + "@" + attributes.lastModifiedTime().to(TimeUnit.NANOSECONDS)
                    : "";
        } catch (NoSuchFileException e) {
            return "";
        }
    }

    @Override
    public Object key(Path path) throws IOException {
        BasicFileAttributes attributes =
                Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        if (attributes.isSymbolicLink() && Files.isDirectory(path)) {
            attributes = Files.readAttributes(path, BasicFileAttributes.class);
        }
        return attributes.fileKey() == null ? attributes.creationTime() : attributes.fileKey();
    }

    @Override
    public boolean hasSecondName(Path path) throws IOException {
        return UNIX && (int) Files.getAttribute(path, "unix:nlink", LinkOption.NOFOLLOW_LINKS) > 1;
    }

    @Override
    public Path target(Path path) throws IOException {
        return Files.isSymbolicLink(path) && Files.exists(path) ? path.toRealPath() : path;
    }

    @Override
    public List<String> names(Path folder) throws IOException {
        // The names alone, as all rolls ever shot are listed before the first picture: no Path is made of each.
        String[] all = folder.toFile().list();
        return all == null ? namesOrWhyNot(folder) : List.of(all);
    }

    /** None where there is no such folder; else it says why it cannot be read. */
    private static List<String> namesOrWhyNot(Path folder) throws IOException {
        List<String> names = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            for (Path path : all) {
                names.add(path.getFileName().toString());
            }
        } catch (NoSuchFileException e) {
            return names;
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
        return names;
    }

    @Override
    public void makeFolder(Path folder) throws IOException {
        Files.createDirectory(folder, mode("rwx------"));
    }

    @Override
    public void move(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public void link(Path link, Path path) throws IOException {
        try {
            Files.createLink(link, path);
        } catch (UnsupportedOperationException e) {
            throw new IOException("this disk knows no links", e);
        }
    }

    @Override
    public boolean delete(Path path) throws IOException {
        return Files.deleteIfExists(path);
    }

    /** Windows cannot, and need not. */
    @Override
    public void forceNames(Path folder) throws IOException {
        if (!POSIX) {
            return;
        }
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }

    @Override
    public long room(Path folder) {
        return folder.toFile().getUsableSpace();
    }
}
