package takeup.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import takeup.disk.IoErrorText;
import takeup.kit.Kit;

/** A file of text that somebody else may have written: checked before it is read, and UTF-8 or nothing. */
public final class InputFile {
    private InputFile() {}

    /** What is wrong with a file that can be read, but not taken. */
    public enum Fault {
        LINK("is a link, which is not followed: put the file itself in its place"),
        NOT_A_FILE("is no plain file"),
        TOO_LARGE("is larger than any such file can be"),
        NOT_UTF8("is not UTF-8: save it as UTF-8");

        private final String words;

        Fault(String words) {
            this.words = words;
        }

        /** To be said behind the name of the file. */
        public String words() {
            return words;
        }
    }

    /** Why a file that can be read is not taken. */
    public static final class Unusable extends IOException {
        private static final long serialVersionUID = 1;
        private final Fault fault;

        Unusable(Path path, Fault fault) {
            super(path.getFileName() + " " + fault.words());
            this.fault = fault;
        }

        public Fault fault() {
            return fault;
        }
    }

    /** The text of a plain file of at most so many bytes, without the mark that some editors put in front. */
    public static String text(Path path, long largest) throws IOException {
        return decoded(path, bytes(path, largest), StandardCharsets.UTF_8);
    }

    /**
     * The same of a table that some spreadsheet wrote: UTF-8, UTF-16 where its mark or its noughts say so, and else
     * Windows-1252, which holds all of Latin-1.
     */
    public static String textOfSpreadsheet(Path path, long largest) throws IOException {
        byte[] bytes = bytes(path, largest);
        Optional<Charset> wide = wide(bytes);
        if (wide.isPresent()) {
            return decoded(path, bytes, wide.get());
        }
        try {
            return decoded(path, bytes, StandardCharsets.UTF_8);
        } catch (Unusable e) {
            return new String(bytes, Charset.forName("windows-1252"));
        }
    }

    private static Optional<Charset> wide(byte[] bytes) {
        if (bytes.length < 2 || bytes.length % 2 != 0) {
            return Optional.empty();
        }
        int first = bytes[0] & 0xff;
        int second = bytes[1] & 0xff;
        if (first == 0xff && second == 0xfe || first != 0 && second == 0) {
            return Optional.of(StandardCharsets.UTF_16LE);
        }
        return first == 0xfe && second == 0xff || first == 0 && second != 0
                ? Optional.of(StandardCharsets.UTF_16BE)
                : Optional.empty();
    }

    private static byte[] bytes(Path path, long largest) throws IOException {
        if (!Files.isRegularFile(path)) {
            throw new Unusable(path, Fault.NOT_A_FILE);
        }
        byte[] bytes;
        try (InputStream in = Files.newInputStream(path)) {
            // Some files, as those of /proc, hold more than their size says.
            bytes = in.readNBytes((int) largest + 1);
        }
        if (bytes.length > largest) {
            throw new Unusable(path, Fault.TOO_LARGE);
        }
        return bytes;
    }

    private static String decoded(Path path, byte[] bytes, Charset charset) throws Unusable {
        try {
            String text = charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return text.startsWith("\ufeff") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new Unusable(path, Fault.NOT_UTF8);
        }
    }

    /** The same of a file in the data folder, where no link is followed. */
    public static String own(Path path, long largest) throws IOException {
        if (Files.isSymbolicLink(path)) {
            throw new Unusable(path, Fault.LINK);
        }
        return text(path, largest);
    }

    /** The same under the name that messages have for it, or why it cannot be read, with file and line. */
    static Kit.File read(Path path, String name, long largest) {
        try {
            return new Kit.File(name, text(path, largest), Optional.empty());
        } catch (IOException e) {
            return unreadable(name, e);
        }
    }

    /** The same of a file in the data folder, where no link is followed. */
    static Kit.File readOwn(Path path, String name, long largest) {
        try {
            return new Kit.File(name, own(path, largest), Optional.empty());
        } catch (IOException e) {
            return unreadable(name, e);
        }
    }

    private static Kit.File unreadable(String name, IOException e) {
        String why =
                e instanceof Unusable unusable ? unusable.fault().words() : "cannot be read: " + IoErrorText.words(e);
        return new Kit.File(name, "", Optional.of(name + ":1: " + why));
    }
}
