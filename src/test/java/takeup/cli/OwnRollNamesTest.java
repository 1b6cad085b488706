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
        if (!List.of("roll", "frames", "rolls", "find").contains(words[0]) && !all.contains("--clock")) {
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

    /** R0001 is finished two days ago: no line of today has read it yet. */
    @Test
    void aFinishedRollOfAnotherDayIsNamedInAnyLine() {
        run(
                "cam 35\nload cn400 as B-12\n8 125\nunload yes\nload bw400 as Jollyboat\n8 60\n",
                "line",
                "--clock",
                "2026-09-12T15:00+02:00");
        for (String line : List.of(
                "note b-12 wet | Note on R0001: wet.",
                "note jollyboat sank | Note on R0002: sank.",
                "cost B-12 film 9 | Costs of R0001: film 9.00.",
                "fix B-12 1 5.6 | Frame 1 of R0001: f/5.6 1/125.",
                "fix roll B-12 as B-13 | named B-13",
                "note B-12 free | Note on R0002: sank; B-12 free.",
                "note b-13 dry | Note on R0001: wet; dry.",
                "insert B-13 1 4 60 | Frame 1 put into R0001",
                "developed B-13 in fine 1+1 9m | R0001 developed in fine 1+1, 9m.",
                "cam 645\nload cn400 as jollyboat | jollyboat is the name of R0002 already",
                "day-end B-13 | R0001 is in your hand",
                "scans B-13 /tmp | with takeup scans r1",
                "find roll b-13 | 2 frames on 1 roll")) {
            String[] both = line.split(" \\| ");
            Installed.Ended said = run(both[0] + "\n", "line");
            assertTrue((said.out() + said.err()).contains(both[1]), both[0] + ": " + said);
        }
        assertTrue(run("", "rolls").out().contains("named Jollyboat"));
        assertTrue(run("", "find", "b-13").out().contains("R0001"));
        assertTrue(run("", "day-end", "B-13", "r2").out().contains("R0001"));
        assertTrue(run("", "paper", "Jollyboat").out().startsWith("Roll R0002"));
    }
}
