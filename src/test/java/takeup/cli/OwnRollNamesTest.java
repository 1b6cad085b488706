package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A roll's own name and its batch on the command line, and on the way to the lab. */
class OwnRollNamesTest {
    @TempDir
    Path folder;

    private Installed.Ended run(String input, String... words) {
        List<String> all = new ArrayList<>(Arrays.asList(words));
        all.addAll(List.of("--data", folder.toString()));
        if (!words[0].equals("roll") && !words[0].equals("frames")) {
            all.addAll(List.of("--clock", "2026-09-14T09:30+02:00"));
        }
        return InProcess.run(input, all);
    }

    @Test
    void theyGoFromTheBagToTheLabel() throws Exception {
        run("cam 645\nbag add 1 cn400 120 batch 4711\nload cn400 as B-12\n4 125\nunload yes\n", "line");
        assertTrue(run("", "roll", "b-12", "--text").out().contains("B-12"));
        assertEquals(2, run("", "roll", "b-13", "--text").status());
        String frames = run("", "frames", "--json").out();
        assertTrue(frames.contains("\"name\":\"B-12\",\"batch\":\"4711\""), frames);
        assertTrue(run("", "roll", "1", "--csv").out().contains("\"B-12\",\"4711\""));
        assertEquals(0, run("", "order", "new", "1", "--yes").status());
        String page = Files.readString(folder.resolve("orders/ORD-001.html"));
        assertTrue(page.contains("R0001 B-12") && page.contains("batch 4711"), page);
        String order = Files.readString(folder.resolve("orders/ORD-001.json"));
        assertTrue(order.contains("\"name\" : \"B-12\"") && order.contains("\"batch\" : \"4711\""), order);
        assertEquals(0, run("", "order", "show", "1").status(), "and is read again");
    }
}
