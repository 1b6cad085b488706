package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import takeup.ShippedShelf;
import takeup.dispatch.Dispatcher;
import takeup.history.ShootState;
import takeup.kit.Kit;

/** What people type who do not know the words: three quarters of it is taken, the rest answered with a line. */
class NaturalLinesTest {
    private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-09-12T15:00+02:00");

    /** A line, and the line that does the same; behind {@code ?} the line that is offered. */
    private static final List<String> LINES = List.of(
            "m8 250 = m 8 250",
            "m11.3 = m 11.3",
            "meter 8 250 = m 8 250",
            "8/250 = 8 250",
            "f8/250 = 8 250",
            "f8 at 1/250 = 8 250",
            "1/250 at f8 = 8 250",
            "8, 250 = 8 250",
            ". 3 = x3",
            "3 more = x3",
            "same 3 = x3",
            "again = .",
            "next = .",
            "spot 9 z3 = m spot 9 z3",
            "incident 8 250 = m incident 8 250",
            "ev 12 = m ev12",
            "12 ev = m ev12",
            "ev12.3 = m ev12.3",
            "2500 lux = m 2500lx",
            "sky sun = m sky sun",
            "sunny = m sky sun",
            "cloudy = m sky cloudy",
            "open shade = m sky shade",
            "camera 4 500 = m camera 4 500",
            "flash f8 = m flash 8",
            "nd8 = filter nd8",
            "yellow = filter yellow",
            "red filter = filter red",
            "polarizer = filter polariser",
            "no filter = filter off",
            "bulb = time",
            "timer = time",
            "bulb 16 = set b16s",
            "aperture 8 = set f8",
            "shutter 1/250 = set 1/250",
            "time 16 s = set 16s",
            "finish = unload",
            "finish the roll = unload",
            "q = quit",
            "exit = quit",
            "tripod ? tripod on",
            "handheld = tripod off",
            "no flash = flash off",
            "push +1 = push 1",
            "status = say",
            "how many left = say",
            "list = frames",
            "end of day = day-end",
            "counter shows 5 = counter 5",
            "double exposure = double",
            "frame 2 was f8 = fix 2 f8",
            "frame 2 lost = lost 2",
            "camera 35 = cam 35",
            "switch to 35 = cam 35",
            "iso 400 ? fix roll @400",
            "@400 ? fix roll @400",
            "delete 2 ? drop 2",
            "wrong ? undo",
            "missed 2 ? unlogged x2",
            "+1/3 ? bias +1/3",
            "1 over ? bias +1",
            "ceremony at 15:30 ? plan 15:30 ceremony",
            "unlaod ? unload",
            "35 ? cam 35",
            "comment bow seat ? ; bow seat");

    private final ShootState state = state("cam 645", "load cn400", "m 5.6 125", "4 125 x3");

    @Test
    void threeQuartersAreTakenAndTheRestIsAnsweredWithTheLineToType() {
        List<String> wrong = new ArrayList<>();
        int taken = 0;
        for (String line : LINES) {
            boolean isTaken = line.contains(" = ");
            String[] sides = line.split(isTaken ? " = " : " \\? ");
            Outcome natural = read(sides[0]);
            if (isTaken) {
                taken++;
                if (!said(natural).equals(said(read(sides[1])))) {
                    wrong.add(line + ": " + said(natural) + " | " + said(read(sides[1])));
                }
            } else if (!(natural instanceof Outcome.Rejected rejected)
                    || !rejected.instead().equals(Optional.of(sides[1]))
                    || !rejected.why().contains(sides[1])) {
                wrong.add(line + ": " + natural);
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(LINES.size() >= 60 && 4 * taken >= 3 * LINES.size(), taken + " of " + LINES.size());
    }

    /** A pair with a meter's tenth is a frame with an odd aperture, but right behind a reading the next one. */
    @Test
    void withinAMinuteOfAReadingAPairWithATenthIsTheNextOne() {
        assertTrue(said(read("5.6.3 125")).startsWith("light EV 11.3"), said(read("5.6.3 125")));
        Outcome later = Dispatcher.read(state, "5.6.3 125", NOW.plusSeconds(61), "R");
        assertTrue(said(later).startsWith("frame"), said(later));
    }

    private Outcome read(String line) {
        return Dispatcher.read(state, line, NOW, "R");
    }

    /** What a line comes to, in words: so equal words are an equal meaning, but for how a reading was typed. */
    private static String said(Outcome outcome) {
        if (outcome instanceof Outcome.Accepted accepted) {
            return accepted.answer().event() + " " + accepted.answer().text();
        }
        return outcome instanceof Outcome.NeedsConfirmation asked ? asked.question() : outcome.toString();
    }

    private static ShootState state(String... lines) {
        ShootState state = ShootState.of(new Kit(new ShippedShelf()), List.of(), Optional.empty(), Set.of());
        for (String line : lines) {
            state = ((Outcome.Accepted) Dispatcher.read(state, line, NOW, "R")).after();
        }
        return state;
    }
}
