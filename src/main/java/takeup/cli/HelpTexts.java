package takeup.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import picocli.CommandLine;
import takeup.console.Console;

/**
 * Writes what {@code --help} answers for each command into a file, at the build: the start script prints those without
 * a JVM.
 */
final class HelpTexts {
    private HelpTexts() {}

    /** The folder is the one argument. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        Files.createDirectories(folder);
        Console nobody = new Console(OutputStream.nullOutputStream(), OutputStream.nullOutputStream(), Map.of());
        write("takeup", Subcommands.all(nobody), folder);
    }

    /** That of a command and of those below it: {@code takeup_order_new.txt}. */
    private static void write(String name, CommandLine command, Path folder) throws IOException {
        try (OutputStream file = Files.newOutputStream(folder.resolve(name + ".txt"))) {
            Console text = new Console(file, OutputStream.nullOutputStream(), Map.of("LC_ALL", "C.UTF-8"));
            text.lines(command.getUsageMessage());
        }
        for (Map.Entry<String, CommandLine> below : command.getSubcommands().entrySet()) {
            write(name + "_" + below.getKey(), below.getValue(), folder);
        }
    }
}
