package takeup.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import takeup.history.ShootState;
import takeup.kit.Warning;
import takeup.message.Key;
import takeup.prompt.PromptLine;
import takeup.roll.FrameWarnings;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * Random keys by the thousand; {@code -Dkeys=1000000} makes them a million. What went wrong can be played again by its
 * seed.
 */
@Tag("slow")
class MonkeyTest {
    private static final int KEYS = Integer.getInteger("keys", 20_000);
    /** A day is ended after so many keys, and another one begun. */
    private static final int DAY = 2_000;

    private static final long SEED = 20_260_912;

    private static final List<String> LINES = List.of(
            "4 125",
            "8 250 ; bow seat",
            ". x3",
            "x5",
            "5.6",
            "blank x2",
            "unlogged",
            "double",
            "lost 1",
            "fix 1-2 8",
            "fix 2 ; cox",
            "insert 1 4 125",
            "drop 1",
            "drop 2",
            "move 1 cam 35",
            "counter 5",
            "m 5.6 125",
            "m ev3",
            "m sky shade",
            "hold f8",
            "hold off",
            "bias +1/3",
            "filter yellow",
            "tripod on",
            "load cn400",
            "load bw400 @200",
            "unload",
            "yes",
            "unload yes",
            "cam 645",
            "cam 645 2",
            "cam 35",
            "back 1",
            "push 1",
            "normal",
            "fix roll @100",
            "note first eight",
            "undo",
            "redo",
            "undo",
            "u",
            "fix r1 1 4 60",
            "note r1 words",
            "rolls",
            "frames",
            "help",
            "shoot",
            "big",
            "theme",
            "say",
            "quiet thin",
            "zz",
            "8 11",
            "+1",
            "quit");

    @Test
    void withoutEnterCtrlAndTheSemicolonNoFrameIsEverRemoved() {
        Random random = new Random(SEED);
        Playing day = Playing.two("m 5.6 125", "4 125 x3");
        int frames = day.allFrames();
        long logged = 0;
        for (int i = 0; i < KEYS; i++) {
            if (i % DAY == DAY - 1) {
                logged += frames;
                day = Playing.two("m 5.6 125", "4 125 x3");
                frames = day.allFrames();
            }
            Key key = RandomKeys.unmodified(random);
            day.after(random.nextInt(200), key);
            assertTrue(
                    day.allFrames() >= frames,
                    "key " + i + ", " + key + ": " + frames + " frames, then " + day.allFrames());
            frames = day.allFrames();
        }
        assertTrue(KEYS < DAY || logged > 0);
        same(day, KEYS);
    }

    @Test
    void whatTheScreenCountsIsWhatTheFilesAddUpTo() {
        Random random = new Random(SEED + 1);
        Playing day = Playing.two("m 5.6 125", "4 125 x3");
        for (int i = 0; i < KEYS; i++) {
            if (i % DAY == DAY - 1) {
                same(day, i);
                day = Playing.two("m 5.6 125", "4 125 x3");
            }
            Key key = RandomKeys.any(random);
            if (random.nextInt(12) == 0) {
                day.press(Key.ctrl('u')).type(LINES.get(random.nextInt(LINES.size())));
                key = Key.of(Key.Name.ENTER);
            }
            if (random.nextInt(60) == 0) {
                day.disk(Playing.Disk.values()[random.nextInt(3)]);
            }
            if (random.nextInt(200) == 0) {
                // The clock is set: minutes, hours or days, forward or back.
                day.clockMoved(
                        Duration.ofSeconds((long) (random.nextGaussian() * Math.pow(10, 1 + random.nextInt(5)))));
            }
            day.after(random.nextInt(200), key);
            Session shoot = day.shoot();
            assertTrue(shoot.prompt().cursor() <= shoot.prompt().text().length()
                    && !(shoot.prompt().text().isBlank() && !shoot.prompt().isEmpty()));
            assertEquals(
                    shoot.saveError().isPresent(),
                    shoot.saveError().isPresent() && !shoot.waiting().isEmpty(),
                    "trouble is about something");
            if (day.isOver()) {
                day = Playing.two("m 5.6 125", "4 125 x3");
            } else if (random.nextInt(400) == 0) {
                same(day, i);
                day.disk(Playing.Disk.WELL).press(Key.Name.F9);
                same(day, i);
                Map<RollId, Roll> open = open(day);
                day.restart();
                same("key " + i + ", after a restart", open, open(day));
            }
        }
    }

    @Test
    void aDayOfKeysWithoutAFilmLeavesNothingBehindInTheModel() {
        Random random = new Random(SEED + 2);
        Playing day = Playing.of();
        long first = 0;
        for (int i = 0; i < KEYS; i++) {
            Key key = RandomKeys.any(random);
            day.after(random.nextInt(200), key.name() == Key.Name.ENTER ? Key.of(Key.Name.ESCAPE) : key);
            if (i % DAY == 0 || day.isOver()) {
                day.forget();
                day = day.isOver() ? Playing.of() : day;
            }
            first = i == KEYS / 10 ? heap() : first;
        }
        assertEquals(List.of(), day.shoot().pendingLines().batches());
        assertEquals(List.of(), day.shoot().waiting());
        assertTrue(day.shoot().prompt().past().size() <= 200);
        assertTrue(day.shoot().prompt().text().length() <= PromptLine.LONGEST);
        long last = heap();
        assertTrue(
                last <= first * 1.2,
                last + " bytes in use at the end, " + first + " after the first tenth of the keys");
    }

    /**
     * Every roll that the model has, and all that is in hand, worked out anew. Finished rolls are read when they are
     * asked for.
     */
    private static void same(Playing day, int key) {
        ShootState files = day.fromTheFiles();
        ShootState shown = day.shoot().saved();
        files.rolls().forEach((id, roll) -> {
            if (roll.state() == Roll.State.OPEN || shown.rolls().containsKey(id)) {
                same("key " + key + ", " + id, roll, shown.rolls().get(id));
                List<List<Warning>> all = FrameWarnings.of(roll, 3);
                same(
                        "key " + key + ", the newest warnings of " + id,
                        all.subList(Math.max(0, all.size() - 4), all.size()),
                        FrameWarnings.newest(roll, 3, 4));
            }
        });
        same("key " + key + ", the place in hand", files.placeInHand(), shown.placeInHand());
        same("key " + key + ", light", files.day().light(), shown.day().light());
        same(
                "key " + key + ", what belongs to the cameras",
                files.day().cameras().setups(),
                shown.day().cameras().setups());
    }

    /** Equal, or a message that can be read. */
    private static void same(String where, Object expected, Object found) {
        if (!expected.equals(found)) {
            String a = expected.toString();
            String b = String.valueOf(found);
            int at = 0;
            while (at < Math.min(a.length(), b.length()) && a.charAt(at) == b.charAt(at)) {
                at++;
            }
            fail(where + " differs at " + around(a, at) + " / " + around(b, at));
        }
    }

    private static String around(String text, int at) {
        return text.substring(Math.max(0, at - 60), Math.min(text.length(), at + 120));
    }

    private static Map<RollId, Roll> open(Playing day) {
        Map<RollId, Roll> open = new TreeMap<>();
        day.shoot().saved().rolls().values().stream()
                .filter(it -> it.state() == Roll.State.OPEN)
                .forEach(it -> open.put(it.id(), it));
        return open;
    }

    private static long heap() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }
}
