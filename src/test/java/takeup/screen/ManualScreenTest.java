package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import takeup.ShippedShelf;
import takeup.command.Outcome;
import takeup.dispatch.Dispatcher;
import takeup.history.ShootState;
import takeup.kit.Kit;
import takeup.session.Session;

/** The screen that the manual shows as text is the one that the program draws. */
class ManualScreenTest {
    private static final List<String> DAY = List.of(
            "cam 35",
            "load bw400",
            "8 250 x4",
            "cam 645",
            "load cn400",
            "meter hand",
            "m 4.1 125",
            "2.8 250 ; Ines, bow seat",
            "x2",
            "m 4.6 125",
            "filter yellow",
            "2.8 125 ; Tarek, cox",
            "x3",
            "filter off",
            "m 5.6.3 125",
            "4 250 x2",
            "; the eight at the doors",
            "5.6 125");

    @Test
    void theScreenInTheManualIsTheRealOne() throws IOException {
        String page = Files.readString(Path.of("src/docs/shoot.md"));
        String screen = drawn();
        assertTrue(
                page.contains("```\n" + screen + "\n```"),
                () -> "shoot.md shows another screen than this one:\n" + screen);
        assertEquals(24, screen.lines().count());
    }

    private static String drawn() {
        OffsetDateTime now = OffsetDateTime.parse("2026-09-12T15:12:00+02:00");
        ShootState situation = ShootState.of(new Kit(new ShippedShelf()), List.of(), Optional.empty(), Set.of());
        for (String line : DAY) {
            Outcome outcome = Dispatcher.read(situation, line, now, "R");
            if (!(outcome instanceof Outcome.Accepted does)) {
                throw new AssertionError(line + " came to " + outcome);
            }
            situation = does.after();
        }
        Session shoot = Session.begin(
                situation,
                new Session.Settings("R", "here", Optional.empty()),
                "dark",
                List.of(),
                now.plusMinutes(4),
                0);
        return Screen.render(shoot, 80, 24).text();
    }
}
