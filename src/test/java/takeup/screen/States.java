package takeup.screen;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import takeup.message.Key;
import takeup.session.Playing;
import takeup.session.Playing.Disk;
import takeup.session.Session;

/** Moments of a regatta day, on each page, for tests that ask what must hold in all of them. */
final class States {
    /**
     * A note with all that could break a row: an escape, a turned direction, pictures, marks that pile up, a wide
     * script.
     */
    static final String HOSTILE = "bow \u001b[2J\u001b]0;x\u0007 \u202e\u0645\u0631\u062d\u0628\u0627\u202c "
            + "\uD83D\uDEA3\uD83C\uDFFD\u200D\u2640\uFE0F a"
            + "\u0301".repeat(30) + " \u6f15\u8247 \u200b\u00ad\u0085 \uD83D lone";

    private States() {}

    /**
     * Everything in use at once: three places, light, filters, bias, a held aperture, an extension, a tripod, another
     * lens.
     */
    static Playing busy() {
        return Playing.of(
                "cam 35",
                "load bw400 @800 push 1",
                "cam 645 2",
                "load bw100 @80",
                "cam 645 1",
                "load cn400",
                "m 5.6.3 125",
                "lens 150",
                "5.6 60 ; bow seat",
                "x5",
                "filter yellow",
                "bias +1/3",
                "hold f5.6",
                "tube 30mm",
                "tripod on");
    }

    static Map<String, Supplier<Playing>> all() {
        Map<String, Supplier<Playing>> all = new LinkedHashMap<>();
        all.put("a first start", Playing::of);
        all.put("a camera without a film", () -> Playing.of("cam 645"));
        all.put("a fresh roll", () -> Playing.medium());
        all.put("everything in use", States::busy);
        all.put("the second day", () -> busy().later(26 * 60));
        all.put("a roll past its end", () -> Playing.medium("m 5.6 125", "4 125 x20", "yes"));
        all.put("a half-frame roll of 72", () -> Playing.of("cam half", "load cn400", "8 250 x70"));
        all.put("a camera that sets itself", () -> Playing.of("cam compact", "load cn400", ". x3"));
        all.put("a second exposure awaited", () -> Playing.medium("m 5.6 125", "4 125", "double"));
        all.put(
                "blank, lost, unlogged",
                () -> Playing.medium(
                        "4 125 x5", "blank x2", "unlogged x2", "lost 2", "drop 1", "insert 3 8 250", "counter 20"));
        all.put(
                "light with a wide span and a meter at another speed",
                () -> Playing.medium("m 2.8 60 and 16 500 @400"));
        all.put("not saved", () -> busy().disk(Disk.FULL).space().lines("8 250 ; cox"));
        all.put("being saved", () -> busy().disk(Disk.SLOW).space());
        all.put("a question", () -> busy().lines("unload"));
        all.put("a refused line", () -> busy().lines("8 11"));
        all.put("a line being typed", () -> busy().type("4 125 ; half a"));
        all.put("a very long line", () -> busy().paste("4 125 ; " + "oars in the water ".repeat(40)));
        all.put("several pasted lines", () -> busy().paste("4 125\n8 250\n; cox"));
        all.put("a highlighted suggestion", () -> busy().press(Key.of(Key.Name.DOWN), Key.of(Key.Name.DOWN)));
        all.put("another camera just taken up", () -> busy().press(Key.Name.TAB).space());
        all.put("the counter across the room", () -> busy().press(Key.Name.F10));
        all.put(
                "the counter across the room, not saved",
                () -> busy().press(Key.Name.F10).disk(Disk.FULL).space());
        all.put("read only", () -> busy().restartReadOnly());
        all.put(
                "a moment near and film short",
                () -> busy().lines(
                                "bag add 1 cn400 120 expires 2021-03 price 6.20",
                                "shoot Regatta day at 50.93806,6.956944",
                                "plan 15:06 Start wants 90 must"));
        all.put(
                "a shoot and a plan with hostile names",
                () -> Playing.medium()
                        .paste("shoot " + HOSTILE)
                        .press(Key.Name.ENTER)
                        .paste("plan 15:06 " + HOSTILE + " wants 90")
                        .press(Key.Name.ENTER));
        all.put(
                "hostile notes",
                () -> Playing.medium("4 125")
                        .paste("; " + HOSTILE)
                        .press(Key.Name.ENTER)
                        .paste("note " + HOSTILE)
                        .press(Key.Name.ENTER)
                        .paste("condition torn " + HOSTILE)
                        .press(Key.Name.ENTER)
                        .paste("4 125 ; " + HOSTILE));
        all.put(
                "something could not be read",
                () -> Playing.troubled("R0002.journal:41: \u001b[31mthe last line stops in the middle", "more"));
        return all;
    }

    static List<String> names() {
        return List.copyOf(all().keySet());
    }

    static Session of(String name) {
        return all().get(name).get().shoot();
    }

    /** The same moment seen on another page, if there is a way there; the prompt is left as it is. */
    static Session on(Session.Page page, String name) {
        Playing day = all().get(name).get();
        if (page != Session.Page.SHOOT) {
            day.press(Playing.keyTo(page));
        }
        return day.shoot();
    }
}
