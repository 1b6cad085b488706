package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.handoff.SidecarDigest;

/** A sidecar that version 1.0.0 wrote has no mark; takeup knows it by what it says: what the log once said. */
class FirstSidecarsTest {
    @TempDir
    Path scratch;

    @Test
    void aSidecarOfTheFirstVersionIsRenewedAndAChangedOneIsNotTouched() throws IOException {
        check("");
    }

    @Test
    void soItIsWhereFramesWerePutRightSince() throws IOException {
        check("fix r1 1 8 60 ; bow seat\nfix r1 2 11 30\nfix r1 1 8 125\nfix roll r1 @200\n");
    }

    /** @param since lines typed since both sidecars were written */
    private void check(String since) throws IOException {
        takeup(
                "cam 645 1\nload bw400 120 @400\nm ev 11\n5.6 250 ; bow\n5.6 250 ; bow\nunload yes\n",
                "line",
                "--clock",
                "2026-09-12T15:00+02:00");
        FakeLab lab = new FakeLab(scratch.resolve("scans"));
        lab.scan("crew_01.jpg", 0.45).scan("crew_02.jpg", 0.45);
        takeup("yes\n", "scans", "1", lab.folder().toString(), "--accept");
        String written = Files.readString(Path.of("src/test/resources/handoff/sidecar-of-1.0.0.xmp"));
        Path first = Files.writeString(lab.folder().resolve("crew_01.jpg.xmp"), written);
        String changed = written.replace("frame 1: bow", "frame 1: the bow seat");
        Path second = Files.writeString(lab.folder().resolve("crew_02.jpg.xmp"), changed);

        takeup(since, "line", "--clock", "2026-09-20T15:00+02:00");
        Installed.Ended listed = takeup("", "scans", "1");
        Installed.Ended ended = takeup("", "scans", "1", "--sidecars", "full");

        assertTrue(
                listed.out().contains("sidecars that are behind the log: crew_01.jpg.xmp; --sidecars"),
                listed.toString());
        assertTrue(
                ended.out()
                        .contains("crew_02.jpg.xmp was written by takeup 1.0.0 but says what this roll's log never "
                                + "said, so somebody changed it: it is not touched, and takeup's facts are in "
                                + "crew_02.jpg.takeup.xmp"),
                ended.toString());
        assertTrue(ended.out().contains("1 sidecar written, 1 renewed"), ended.toString());
        assertTrue(SidecarDigest.isOwn(Files.readString(first)));
        assertEquals(changed, Files.readString(second));
        assertTrue(Files.exists(lab.folder().resolve("crew_02.jpg.takeup.xmp")), ended.toString());
    }

    private Installed.Ended takeup(String input, String... arguments) {
        List<String> all = new ArrayList<>(List.of(arguments));
        all.addAll(List.of("--data", scratch.resolve("day").toString()));
        return InProcess.run(input, all);
    }
}
