package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Development that is changed after the order was made: the lab does not know it, and that is said at once. */
class OrderedDevelopmentTest {
    @TempDir
    Path folder;

    private Installed.Ended run(String input, String... words) {
        List<String> all = new ArrayList<>(Arrays.asList(words));
        all.addAll(List.of("--data", folder.toString(), "--clock", "2026-09-14T09:30+02:00"));
        return InProcess.run(input, all);
    }

    @Test
    void whatTheOrderSaysOtherwiseIsSaidWithTheLine() {
        run("cam 35\nload bw400\n8 125\nunload yes\n", "line");
        assertEquals("", run("push 1\nyes\n", "line").err(), "in no order yet");
        run("", "order", "new", "1", "--yes");
        assertEquals(
                "takeup: R0001 is in ORD-001, which was not sent yet and says otherwise: withdraw it, and order anew\n",
                run("push 2\nyes\n", "line").err());
        run("", "order", "mark", "1", "sent");
        Installed.Ended sent = run("fix roll r1 push 1\nnote roll r1\n", "line");
        assertTrue(
                sent.err()
                        .contains("R0001 is at the lab since 2026-09-14 (ORD-001), and the order says otherwise: tell"
                                + " them black-and-white, PUSH 1 STOP (rated 400, box 400)"),
                sent.err());
        assertEquals("", run("fix r1 1 8 60\n", "line").err(), "a frame is none of the lab's business");
        run("", "order", "mark", "1", "scans");
        assertTrue(
                run("fix roll r1 normal\n", "line").err().contains("R0001 is developed already (ORD-001, back since"));
    }
}
