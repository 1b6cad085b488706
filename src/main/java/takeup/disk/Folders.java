package takeup.disk;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Folders and files on a drive: made for the photographer alone, moved whole, forced. */
public final class Folders {
    /** No journal grows larger, in bytes: more than 10,000 frames. */
    public static final int LARGEST = 16 << 20;

    private static final String PART = ".part";
    private static final String LINK = " is a link, which is not followed: put the file or folder itself in its place";
    private static final String NO_FILE = " is no plain file";

    private Folders() {}

    /** Makes a folder and those above it, for nobody else to read. */
    public static void make(Path folder) throws IOException {
        make(FileSystem.REAL, folder);
    }

    public static void make(FileSystem drive, Path folder) throws IOException {
        if (isFolder(drive, folder)) {
            return;
        }
        Path parent = folder.toAbsolutePath().getParent();
        if (parent != null) {
            make(drive, parent);
        }
        try {
            drive.makeFolder(folder);
        } catch (FileAlreadyExistsException e) {
            if (!isFolder(drive, folder)) {
                throw new IOException(folder + " is no folder", e);
            }
        }
        if (parent != null) {
            drive.forceNames(parent);
        }
    }

    /**
     * Takes the lock file of a folder that is no data folder; it is free again once this is closed, or the program
     * ends.
     */
    public static Closeable lock(Path file) throws IOException {
        make(file.toAbsolutePath().getParent());
        FileSystem.Hold hold = FileSystem.REAL.hold(file);
        return hold::close;
    }

    /** Whether a folder lies there, or a link to one: the data folder itself may be reached by a link. */
    public static boolean isFolder(FileSystem drive, Path path) throws IOException {
        FileSystem.Kind kind = drive.kind(path);
        return kind == FileSystem.Kind.FOLDER
                || kind == FileSystem.Kind.LINK && drive.kind(drive.target(path)) == FileSystem.Kind.FOLDER;
    }

    /** Refuses a folder inside the data folder that is a link: what it leads to is not this program's to change. */
    public static void refuseLink(FileSystem drive, Path folder) throws IOException {
        if (drive.kind(folder) == FileSystem.Kind.LINK) {
            throw new IOException(folder.getFileName() + LINK);
        }
    }

    /** Whether a plain file lies there; anything but that or nothing is refused, and left as it is. */
    static boolean isFile(FileSystem drive, Path path) throws IOException {
        return switch (drive.kind(path)) {
            case NOTHING -> false;
            case FILE -> true;
            case LINK -> throw new IOException(path.getFileName() + LINK);
            case FOLDER, OTHER -> throw new IOException(path.getFileName() + NO_FILE);
        };
    }

    /** Why a file in the data folder is left alone, in words; empty where it is a plain file, or nothing. */
    public static Optional<String> whyLeftAlone(FileSystem drive, Path path) throws IOException {
        return switch (drive.kind(path)) {
            case NOTHING, FILE -> Optional.empty();
            case LINK -> Optional.of(LINK.strip());
            case FOLDER, OTHER -> Optional.of(NO_FILE.strip());
        };
    }

    public static byte[] read(FileSystem drive, Path path) throws IOException {
        if (!isFile(drive, path)) {
            throw new NoSuchFileException(path.toString());
        }
        if (drive.size(path) > LARGEST) {
            throw new IOException(path.getFileName() + " is larger than any journal can be");
        }
        return drive.read(path);
    }

    public static void write(FileSystem.Open file, byte[] bytes) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        while (buffer.hasRemaining()) {
            file.write(buffer);
        }
    }

    /** Writes a file that is not there yet, and forces it; one that is not as long as it should be is refused. */
    static void write(FileSystem drive, Path path, byte[] bytes) throws IOException {
        try (FileSystem.Open file = drive.create(path)) {
            write(file, bytes);
            file.force(true);
            if (file.size() != bytes.length) {
                throw new IOException("of the " + bytes.length + " bytes of " + path.getFileName() + " the disk holds "
                        + file.size() + "; copy the data folder to another disk");
            }
        }
    }

    /**
     * Writes a whole file so that either the old or the new one is there, never half of one. A link, a device or a pipe
     * of that name is refused and stays what it is.
     */
    public static void replace(Path path, byte[] bytes) throws IOException {
        replace(FileSystem.REAL, path, bytes);
    }

    public static void replace(FileSystem drive, Path path, byte[] bytes) throws IOException {
        isFile(drive, path);
        put(drive, path, bytes);
    }

    /** The same in the place of whatever lies there, once that is kept aside. */
    public static void put(FileSystem drive, Path path, byte[] bytes) throws IOException {
        Path folder = path.toAbsolutePath().getParent();
        make(drive, folder);
        Path temporary = folder.resolve("." + path.getFileName() + PART);
        drive.delete(temporary);
        try {
            write(drive, temporary, bytes);
            move(drive, temporary, path);
        } catch (IOException | RuntimeException e) {
            forget(drive, temporary);
            throw e;
        }
        drive.forceNames(folder);
    }

    static void forget(FileSystem drive, Path path) {
        try {
            drive.delete(path);
        } catch (IOException e) {
            // it stays, under a name that nobody reads
        }
    }

    public static boolean isPart(String name) {
        return name.startsWith(".") && name.endsWith(PART);
    }

    /** Removes what a program that died left half written; answers with the names in the folder, in any order. */
    public static List<String> sweep(FileSystem drive, Path folder) throws IOException {
        List<String> names = drive.names(folder);
        for (String name : names) {
            if (isPart(name)) {
                forget(drive, folder.resolve(name));
            }
        }
        return names;
    }

    /** Moves a file under another name, in one piece. */
    static void move(FileSystem drive, Path from, Path to) throws IOException {
        try {
            drive.move(from, to);
        } catch (AtomicMoveNotSupportedException e) {
            throw new IOException("the folders of one data folder must lie on one disk: " + from.getFileName(), e);
        }
    }

    /**
     * Moves a file to another folder, whose entries are forced before the old name goes: a disk that writes the two
     * folders in its own order has the file under one name or under both at any moment, and never under none.
     */
    public static void handOver(FileSystem drive, Path from, Path to) throws IOException {
        try {
            drive.link(to, from);
        } catch (IOException e) {
            // a disk without links
            move(drive, from, to);
        }
        drive.forceNames(to.getParent());
        drive.delete(from);
        drive.forceNames(from.getParent());
    }

    /** The names in a folder that end so, in order and without that end; none if there is no such folder. */
    public static List<String> names(FileSystem drive, Path folder, String ending) throws IOException {
        List<String> names = names(drive.names(folder), ending);
        names.sort(null);
        return names;
    }

    /** Those names that end so, without that end. */
    public static List<String> names(List<String> all, String ending) {
        List<String> names = new ArrayList<>(all.size());
        for (String name : all) {
            if (name.endsWith(ending) && !name.startsWith(".")) {
                names.add(name.substring(0, name.length() - ending.length()));
            }
        }
        return names;
    }
}
