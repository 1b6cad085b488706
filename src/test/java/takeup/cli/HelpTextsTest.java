package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The help that the start script prints is what the program answers, in letters that every terminal has. */
class HelpTextsTest {
    @TempDir
    Path folder;

    @Test
    void eachCommandHasItsText() throws IOException {
        HelpTexts.main(new String[] {folder.toString()});
        for (String words : List.of("", "rolls", "stock new", "order new", "help")) {
            Path text = folder.resolve(("takeup " + words).strip().replace(' ', '_') + ".txt");
            List<String> asked = Stream.concat(Stream.of(words.split(" ")), Stream.of("--help"))
                    .filter(it -> !it.isEmpty())
                    .toList();
            assertEquals(InProcess.run("", asked).out(), Files.readString(text), words);
        }
        try (Stream<Path> texts = Files.list(folder)) {
            for (Path text : texts.toList()) {
                assertTrue(
                        Files.readString(text).chars().allMatch(it -> it == '\n' || it >= ' ' && it < 0x7f),
                        text::toString);
            }
        }
    }

    /** On a terminal picocli would colour it, and the colours would be shown as escapes. */
    @Test
    void helpIsPlainOnATerminalToo() {
        String plain = InProcess.run("", List.of("rolls", "--help")).out();
        System.setProperty("picocli.ansi", "true");
        try {
            assertEquals(plain, InProcess.run("", List.of("rolls", "--help")).out());
            assertTrue(InProcess.run("", List.of("help", "rolls")).out().startsWith("Usage: takeup rolls "));
        } finally {
            System.clearProperty("picocli.ansi");
        }
    }
}
