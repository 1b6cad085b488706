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

/** A sidecar that version 1.0.0 wrote has no mark; takeup knows it by what it says, to the last byte. */
class FirstSidecarsTest {
    @TempDir
    Path scratch;

    @Test
    void aSidecarOfTheFirstVersionIsRenewedAndAChangedOneIsNotTouched() throws IOException {
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

        Installed.Ended ended = takeup("", "scans", "1", "--sidecars", "full");

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
