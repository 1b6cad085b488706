package takeup.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;

class ProcessEnvironmentTest {
    @Test
    void theLocaleThatTheStartScriptToldOfIsTheUsers() {
        Map<String, String> given = Map.of("LC_ALL", "C.UTF-8", "TERM", "xterm");
        assertEquals(given, ProcessEnvironment.variables(given, ""));
        assertEquals(Map.of("LC_ALL", "C", "TERM", "xterm"), ProcessEnvironment.variables(given, "C"));
    }
}
