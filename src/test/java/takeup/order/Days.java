package takeup.order;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import takeup.json.JsonProblem;

/** Files of rolls, written by hand after the published schema, and days of them that are the same for the same seed. */
final class Days {
    /** Words that somebody may type, and that must not do harm anywhere. */
    static final List<String> NASTY = List.of(
            "+1",
            "-1",
            "push +1 please",
            "\uff0b1 \u22122",
            "= 1+1",
            "@SUM(1)",
            "a\nb\r\n=2",
            "\u0007 bell \u001b[2J",
            "\"quoted\", 'and' more",
            "<script>document.title='PWNED'</script>",
            "<img src=x onerror=\"document.title='PWNED'\">",
            "</style><script>document.title='PWNED'</script>",
            "\" onmouseover=\"document.title='PWNED'",
            "javascript:document.title='PWNED'",
            "<svg onload=document.title='PWNED'>",
            "&lt;b&gt; &amp; &#60;",
            "\u202etxt.exe",
            "<!-- --><base href=\"//x\">",
            "]]><script>document.title='PWNED'</script>",
            "",
            " ",
            "\ud800 alone",
            "\ud83d\ude9c",
            "船の上",
            "bow seat",
            "x".repeat(300));

    static final OffsetDateTime MONDAY = OffsetDateTime.parse("2026-09-14T09:30:00+02:00");

    /** What may be different from one roll to the next; the rest is a plain roll of regatta day. */
    static final class Roll {
        String number = "R0001";
        String state = "finished";
        String kind = "colour-negative";
        String process = "C-41";
        String camera = "645 reflex";
        String frameSize = "6x4.5";
        String filmSize = "120";
        String stock = "Colour negative 400";
        String client = "null";
        String note = "null";
        String condition = "";
        int revision = 21;
        double box = 400;
        double index = 200;
        double push;
        int exposed = 16;
        List<String> frames = new ArrayList<>();

        Roll numbered(String id) {
            number = id;
            return this;
        }

        Roll rated(double ei, double pushStops) {
            index = ei;
            push = pushStops;
            return this;
        }

        Roll film(String is, String in) {
            kind = is;
            process = in;
            return this;
        }

        Roll from(String body) {
            camera = body;
            return this;
        }

        /** Frames at these times of regatta day, by the clock of the place. */
        Roll at(String... times) {
            for (String time : times) {
                frames.add(frame(frames.size() + 1, "exposed", time, "null", "0.3"));
            }
            return this;
        }

        String json() {
            return "{\"format\": \"takeup-roll\", \"version\": 1, \"revision\": " + revision
                    + ", \"madeBy\": {\"program\": \"takeup\", \"version\": \"1.0.0\"}, \"roll\": \"" + number
                    + "\", \"state\": \"" + state
                    + "\",\n \"shoot\": {\"name\": null, \"date\": \"2026-09-12\", \"client\": " + client
                    + "},\n \"camera\": {\"key\": \"645\", \"name\": "
                    + quoted(camera) + ", \"frameSize\": \"" + frameSize + "\", \"back\": null}, \"filmSize\": \""
                    + filmSize + "\",\n \"stock\": {\"key\": \"cn400\", \"name\": "
                    + quoted(stock) + ", \"kind\": \"" + kind + "\", \"boxSpeed\": " + box + "},\n \"exposureIndex\": "
                    + index + ", \"development\": {\"process\": " + quoted(process)
                    + ", \"pushStops\": " + push
                    + ", \"words\": \"as ordered\"},\n \"framesNominal\": 16, \"framesUsed\": 16, \"framesExposed\": "
                    + exposed
                    + ", \"counterChecks\": [],\n \"loadedAt\": \"2026-09-12T15:10:03+02:00\", \"finishedAt\": "
                    + (state.equals("finished") ? "\"2026-09-12T17:10:03+02:00\"" : "null")
                    + ", \"condition\": [" + condition + "], \"note\": " + note + ",\n \"frames\": ["
                    + String.join(",\n  ", frames) + "]}\n";
        }

        ExposedRoll read() {
            try {
                return ExposedRoll.of(number + ".json", json());
            } catch (JsonProblem e) {
                throw new AssertionError(e.getMessage(), e);
            }
        }
    }

    private Days() {}

    static Roll roll(String number) {
        return new Roll().numbered(number);
    }

    static String frame(int number, String kind, String time, String note, String error) {
        return "{\"frame\": " + number + ", \"sequence\": " + Math.max(1, number) + ", \"was\": null, \"kind\": \""
                + kind + "\", \"at\": "
                + (time == null ? "null" : "\"2026-09-12T" + time + ":20+02:00\"") + ", \"atKnown\": " + (time != null)
                + ", \"aperture\": \"f/5.6+1/10\", \"fNumber\": 5.6, \"exactFNumber\": 5.86, \"time\": "
                + "\"1/250\", \"seconds\": 0.004, \"exactSeconds\": 0.00390625, \"lens\": \"80mm f/2.8\","
                + " \"focalLengthMm\": 80, \"distanceM\": null, \"light\": null, \"flashLight\": null, "
                + "\"filters\": [], \"filterStops\": 0, \"extensionStops\": 0, \"biasStops\": 0,"
                + " \"meteredSeconds\": null, \"correctedSeconds\": null, \"errorStops\": " + error
                + ", \"overBoxStops\": null, \"flash\": false, \"tripod\": false, \"warnings\": [],"
                + " \"note\": " + note + ", \"furtherExposures\": []}";
    }

    static String quoted(String text) {
        StringBuilder json = new StringBuilder("\"");
        text.chars()
                .forEach(c -> json.append(
                        c < ' ' || c == '"' || c == '\\'
                                ? "\\u" + String.format(Locale.ROOT, "%04x", c)
                                : Character.toString(c)));
        return json.append('"').toString();
    }

    /** One to five rolls to which anything may have happened. */
    static List<Roll> random(long seed) {
        Random random = new Random(seed);
        List<Roll> rolls = new ArrayList<>();
        for (int many = 1 + random.nextInt(5); many > 0; many--) {
            Roll roll = roll("R" + (1000 + rolls.size()));
            roll.revision = 1 + random.nextInt(99);
            roll.kind = any(random, JsonRoll.KINDS);
            roll.process = any(random, List.of("C-41", "black-and-white", "E-6", "bw reversal", any(random, NASTY)));
            roll.camera = any(random, List.of("645 reflex", "35mm reflex", any(random, NASTY)));
            roll.frameSize = any(random, List.of("24x36", "18x24", "24x65", "6x4.5", "6x6", "6x7", "6x9", "100x125"));
            roll.filmSize = any(random, JsonRoll.FILM_SIZES);
            roll.stock = any(random, List.of("Colour negative 400", any(random, NASTY)));
            roll.client = any(random, List.of("null", quoted(any(random, NASTY))));
            roll.note = any(random, List.of("null", quoted(any(random, NASTY))));
            roll.condition = random.nextBoolean()
                    ? ""
                    : "{\"kind\": \"torn\", \"words\": null}, {\"kind\": \"other\", \"words\": "
                            + quoted(any(random, NASTY)) + "}";
            roll.rated(
                    any(random, List.of(25.0, 80.0, 200.0, 400.0, 1600.0)),
                    any(random, List.of(-1.0, 0.0, 0.5, 1.0, 2.0)));
            roll.exposed = random.nextInt(40);
            for (int frame = random.nextInt(4); frame > 0; frame--) {
                roll.frames.add(frame(
                        random.nextInt(40) - 1,
                        any(random, List.of("exposed", "blank", "unlogged", "lost", "slate")),
                        any(random, Arrays.asList("15:12", "16:40", null)),
                        quoted(any(random, NASTY)),
                        any(random, List.of("null", "-1", "1", "0.04", "-7.5"))));
            }
            rolls.add(roll);
        }
        return rolls;
    }

    /** An order of these rolls with everything that can be asked for, its words from the list above. */
    static Order order(long seed, List<ExposedRoll> rolls, Lab lab) {
        Random random = new Random(seed);
        Wishes wishes = Wishes.NONE;
        for (Wish wish : Wish.values()) {
            wishes = random.nextBoolean() ? wishes : wishes.with(wish, any(random, NASTY));
        }
        Optional<String> reference = Optional.of(any(random, NASTY));
        boolean flies = random.nextBoolean();
        Order order = Order.of(
                "ORD-001",
                MONDAY,
                lab,
                OrderInstructions.of(reference, flies, wishes),
                rolls,
                OrderChecks.of(rolls, List.of(), lab, List.of(), OrderInstructions.of(reference, flies, wishes)),
                Set.of(OrderedRoll.Extra.NOTES, OrderedRoll.Extra.CLIENT));
        for (ExposedRoll roll : rolls) {
            order = random.nextBoolean() ? order : order.withLabNumber(roll.roll(), any(random, NASTY));
        }
        return order.with(new Order.Progress(any(random, List.of(Stage.values())), MONDAY.toLocalDate(), List.of()));
    }

    private static <T> T any(Random random, List<T> list) {
        return list.get(random.nextInt(list.size()));
    }
}
