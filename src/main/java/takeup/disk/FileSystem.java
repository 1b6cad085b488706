package takeup.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.List;

/**
 * The calls that this room makes on a disk, one by one: all of them are here, so that a test can let any of them fail,
 * or be forgotten when the power goes. The program has {@link RealFileSystem}.
 */
public interface FileSystem {
    /** The disk of this machine. */
    FileSystem REAL = new RealFileSystem();

    /** What lies under a name; a link is a kind of its own, whatever it leads to. */
    enum Kind {
        NOTHING,
        FILE,
        FOLDER,
        LINK,
        OTHER
    }

    /** A file that is open to be written to, at its end. */
    interface Open extends AutoCloseable {
        /** Writes some of the bytes or all of them. */
        int write(ByteBuffer bytes) throws IOException;

        /**
         * Returns once what was written is on the disk; {@code attributes}: with what is not needed to read it back,
         * too.
         */
        void force(boolean attributes) throws IOException;

        /** Cuts the file to that length, and goes on there. */
        void truncate(long length) throws IOException;

        long size() throws IOException;

        @Override
        void close() throws IOException;
    }

    /** A folder held for one program. */
    interface Hold extends AutoCloseable {
        /** Whether the file that tells other programs so still lies where they look for it. */
        boolean isSeen();

        @Override
        void close() throws IOException;
    }

    /** Takes hold of a folder by its lock file; {@code FolderInUse} if another program has. */
    Hold hold(Path lock) throws IOException;

    /** Makes a file that is not there yet, for the owner alone. */
    Open create(Path path) throws IOException;

    /** Opens a file that is there, and follows no link to it. */
    Open open(Path path) throws IOException;

    /** All bytes of a file that is no link, up to a bound that no file of a data folder reaches. */
    byte[] read(Path path) throws IOException;

    /** What lies there; an exception where that cannot be told, since "nothing" would be begun anew. */
    Kind kind(Path path) throws IOException;

    /** The length of a file in bytes. */
    long size(Path path) throws IOException;

    /** Size and time of change of a plain file as one word; empty where something else or nothing lies there. */
    String stamp(Path path) throws IOException;

    /** What tells one file from another that took its name; of a link to a folder, that folder. */
    Object key(Path path) throws IOException;

    /** Whether a file bears another name too, here or elsewhere: what is written to it stands under both. */
    boolean hasSecondName(Path path) throws IOException;

    /** Where a link leads; of anything else the same path. */
    Path target(Path path) throws IOException;

    /** The names in a folder, in any order; none if there is no such folder. */
    List<String> names(Path folder) throws IOException;

    /** Makes one folder, for the owner alone. */
    void makeFolder(Path folder) throws IOException;

    /** Gives a file another name in one piece; what had that name is replaced. */
    void move(Path from, Path to) throws IOException;

    /** Gives a file a second name. */
    void link(Path link, Path path) throws IOException;

    /** Takes a name away; false if there was none. */
    boolean delete(Path path) throws IOException;

    /** Returns once the names in a folder are on the disk. */
    void forceNames(Path folder) throws IOException;

    /** How many bytes there is room for; 0 where that is not known too. */
    long room(Path folder);
}
