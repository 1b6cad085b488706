package takeup.options;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import picocli.CommandLine.Option;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.disk.Folders;
import takeup.text.Hidden;

/** {@code -o FILE}: the answer goes to a file instead of standard output. */
public final class OutputOption {
    @Option(names = "-o", paramLabel = "FILE", description = "Writes it to a file.")
    String file;

    /** Whether the file's name has one of these endings. */
    public boolean endsWith(String... endings) {
        for (String ending : endings) {
            if (file != null && file.endsWith(ending)) {
                return true;
            }
        }
        return false;
    }

    /** The file that was named, or the usual one. */
    public Path fileOr(String usual) {
        return Path.of(file == null ? usual : file);
    }

    /** Text for people. In a file it is shown by some other program, which may obey what is hidden in it. */
    public void text(Console console, String text) throws IOException {
        if (file == null) {
            console.lines(text);
            return;
        }
        StringBuilder lines = new StringBuilder();
        text.lines().forEach(it -> lines.append(Hidden.printed(it)).append('\n'));
        write(Path.of(file), lines.toString());
    }

    /** Text for other programs, as it is. */
    public void exact(Console console, String text) throws IOException {
        if (file == null) {
            console.raw(text);
        } else {
            write(Path.of(file), text);
        }
    }

    /** What is no text, and goes to a file only. */
    public void bytes(byte[] bytes) throws IOException {
        write(Path.of(file), bytes);
    }

    /** Whether a file was named. */
    public boolean isFile() {
        return file != null;
    }

    /**
     * A file is replaced whole or not at all; what is no file, such as /dev/stdout, is written into and stays what it
     * is.
     */
    public static void write(Path path, String text) throws IOException {
        write(path, text.getBytes(StandardCharsets.UTF_8));
    }

    private static void write(Path path, byte[] bytes) throws IOException {
        Path folder = path.toAbsolutePath().getParent();
        if (Files.isDirectory(path)) {
            throw new CommandFailed(1, path + " is a folder: name a file");
        }
        if (folder == null || !Files.isDirectory(folder)) {
            throw new CommandFailed(1, folder + " is no folder: make it first");
        }
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            Files.write(path, bytes, StandardOpenOption.WRITE);
        } else {
            Folders.replace(Files.exists(path) ? path.toRealPath() : path, bytes);
        }
    }
}
