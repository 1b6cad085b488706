package takeup.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class TerminalOutputTest {
    private final ByteArrayOutputStream terminal = new ByteArrayOutputStream();
    private final TerminalOutput outlet = new TerminalOutput(terminal);

    @Test
    void aPictureAfterTheLastWordIsDropped() throws IOException {
        outlet.write(bytes("picture "));
        outlet.close(bytes("leave "));
        outlet.write(bytes("late picture "));
        outlet.close(bytes("leave again "));
        outlet.writeAfterClose(bytes("goodbye"));
        assertEquals("picture leave goodbye", terminal.toString(StandardCharsets.UTF_8));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
