package takeup.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
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

/** Folders and files on the disk: made for the photographer alone, moved whole, forced. */
public final class Folders {
    /** No journal grows larger, in bytes: more than 10,000 frames. */
    static final int LARGEST = 16 << 20;
    private static final boolean POSIX = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    private static final String PART = ".part";

    private Folders() {
    }

    static FileAttribute<?>[] privateFile() {
        return POSIX ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))} : new FileAttribute<?>[0];
    }

    /** Makes a folder and those above it, for nobody else to read. */
    public static void make(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        FileAttribute<?>[] mode = POSIX
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------"))} : new FileAttribute<?>[0];
        Path parent = folder.toAbsolutePath().getParent();
        if (parent != null) {
            make(parent);
        }
        try {
            Files.createDirectory(folder, mode);
        } catch (FileAlreadyExistsException e) {
            if (!Files.isDirectory(folder)) {
                throw new IOException(folder + " is no folder", e);
            }
        }
        if (parent != null) {
            force(parent);
        }
    }

    /** Forces a folder's own entries to the disk, where the system can (Windows cannot, and need not). */
    static void force(Path folder) throws IOException {
        if (!POSIX) {
            return;
        }
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }

    static byte[] read(Path path) throws IOException {
        if (!Files.exists(path)) {
            throw new NoSuchFileException(path.toString());
        }
        if (!Files.isRegularFile(path)) {
            throw new IOException(path.getFileName() + " is no plain file");
        }
        if (Files.size(path) > LARGEST) {
            throw new IOException(path.getFileName() + " is larger than any journal can be");
        }
        return Files.readAllBytes(path);
    }

    /** What tells one file from another that took its name. */
    static Object key(Path path) throws IOException {
        BasicFileAttributes attributes = Files.readAttributes(path, BasicFileAttributes.class);
        return attributes.fileKey() == null ? attributes.creationTime() : attributes.fileKey();
    }

    static void write(FileChannel channel, byte[] bytes) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        while (buffer.hasRemaining()) {
            channel.write(buffer);
        }
    }

    /** Writes a file that is not there yet, and forces it. */
    static void write(Path path, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(path, Set.of(StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW), privateFile())) {
            write(channel, bytes);
            channel.force(true);
        }
    }

    /** Writes a whole file so that either the old or the new one is there, never half of one. A symbolic link stays one. */
    public static void replace(Path path, byte[] bytes) throws IOException {
        Path target = Files.isSymbolicLink(path) && Files.exists(path) ? path.toRealPath() : path;
        Path folder = target.toAbsolutePath().getParent();
        make(folder);
        Path temporary = folder.resolve("." + target.getFileName() + PART);
        Files.deleteIfExists(temporary);
        try {
            write(temporary, bytes);
            move(temporary, target);
        } catch (IOException | RuntimeException e) {
            forget(temporary);
            throw e;
        }
        force(folder);
    }

    static void forget(Path path) {
        try {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            // it stays, under a name that nobody reads
        }
    }

    /** Removes what a program that died left half written. */
    static void sweep(Path folder) throws IOException {
        for (String name : list(folder)) {
            if (name.startsWith(".") && name.endsWith(PART)) {
                forget(folder.resolve(name));
            }
        }
    }

    /** Moves a file under another name, in one piece. */
    static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            throw new IOException("the folders of one data folder must lie on one disk: " + from.getFileName(), e);
        }
    }

    /** The names in a folder that end so, in order; none if there is no such folder. */
    static List<String> names(Path folder, String ending) throws IOException {
        List<String> names = new ArrayList<>();
        for (String name : list(folder)) {
            if (name.endsWith(ending) && !name.startsWith(".")) {
                names.add(name.substring(0, name.length() - ending.length()));
            }
        }
        return names;
    }

    private static List<String> list(Path folder) throws IOException {
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
        names.sort(null);
        return names;
    }
}
