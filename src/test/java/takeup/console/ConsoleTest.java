package takeup.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Answers and errors on their way out. */
class ConsoleTest {
    private final ByteArrayOutputStream answers = new ByteArrayOutputStream();
    private final ByteArrayOutputStream errors = new ByteArrayOutputStream();

    @Test
    void aLineOfAnAnswerNeverCarriesAnEscapeByte() {
        out("C.UTF-8").line("bow \u001b[2J seat \u009b1m \u202e\u0007");
        assertTrue(
                text(answers)
                        .chars()
                        .allMatch(it -> it == '\n' || it >= ' ' && (it < 0x7f || it > 0x9f) && it != 0x202e),
                text(answers));
        assertTrue(text(answers).startsWith("bow "));
    }

    @Test
    void linesThatGoOutTogetherStayAsManyWhateverIsInThem() {
        out("C.UTF-8").lines(List.of("R0001 at the\nboathouse", "R0002 \u001b[2J"));
        out("C.UTF-8").lines(List.of());
        assertEquals("R0001 at the\\u{a}boathouse\nR0002 \\u{1b}[2J\n", text(answers));
    }

    @Test
    void anErrorSaysWhoseItIsAndAFileNameCannotForgeASecondOne() {
        out("C.UTF-8").error("cameras/a\ntakeup: all is well.json:1: this name cannot be typed");
        assertEquals("takeup: cameras/a\\u{a}takeup: all is well.json:1: this name cannot be typed\n", text(errors));
        assertEquals("", text(answers));
    }

    @Test
    void whatIsForOtherProgramsGoesOutAsItIs() {
        out("C").raw("{\"note\":\"船 \\u001b\"}\n");
        assertEquals("{\"note\":\"船 \\u001b\"}\n", text(answers));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        No space left on device | takeup: the answer could not be written: the disk is full; free some space
        Broken pipe             | ''
        """)
    void aFailedWriteIsAFailureAndIsSaidOnceUnlessTheReaderHadEnough(String why, String said) {
        Console out = new Console(
                new OutputStream() {
                    @Override
                    public void write(int b) throws IOException {
                        throw new IOException(why);
                    }
                },
                errors,
                Map.of("LC_ALL", "C.UTF-8"));
        out.line("one");
        out.line("two");
        assertTrue(out.failed());
        assertEquals(said, text(errors).strip());
    }

    private Console out(String locale) {
        return new Console(answers, errors, Map.of("LC_ALL", locale));
    }

    private static String text(ByteArrayOutputStream bytes) {
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
