package takeup.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32C;

/**
 * Files that a data folder may hold by mistake or by malice, each with the place that must be named. Which ones: what
 * parsers of JSON are known to let through, what file systems let lie where a file is expected, and names of either
 * kind.
 */
final class HostileFiles {
    /** Puts something at a path. */
    interface Maker {
        void make(Path path) throws IOException, InterruptedException;
    }

    /**
     * One of them.
     *
     * @param name what it is
     * @param path where it is put, in the data folder
     * @param place how the line that tells of it begins
     * @param maker puts it there
     * @param lines how many lines tell of it
     */
    record Hostile(String name, String path, String place, Maker maker, int lines) {
        @Override
        public String toString() {
            return name + " (" + path + ")";
        }
    }

    private static final String CAMERA = """
        {"name": "Folding camera", "frameSize": "6x9", "frames": {"120": 8},
         "times": {"step": "full", "longest": "1s", "fastest": "1/500", "bulb": true},
         "lenses": [{"key": "105", "name": "105mm f/3.5", "focalMm": 105, "widest": 3.5, "narrowest": 22, "step": "full"}]}
        """;
    private static final String STOCK = """
        {"name": "Left over 50", "kind": "bw-negative", "process": "black-and-white", "boxSpeed": 50, "usualEI": 50,
         "filmSizes": ["120"], "latitude": {"underStops": 1, "overStops": 2},
         "reciprocity": {"model": "table", "points": [[1, 1], [10, 20]]}}
        """;
    private static final String METER = """
        {"name": "Old meter", "shows": "pair", "tenths": false, "step": "full",
         "evShown": "iso100", "incidentConstant": 250, "reflectedConstant": 12.5}
        """;

    private final List<Hostile> all = new ArrayList<>();
    private final List<String> roll;
    private final List<String> day;

    /** With the lines of an honest roll's journal, whose number is R0003, and of an honest day's. */
    HostileFiles(List<String> roll, List<String> day) {
        this.roll = roll;
        this.day = day;
        texts();
        values();
        things();
        names();
        journals();
        days();
        settings();
        others();
    }

    List<Hostile> all() {
        return all;
    }

    /** A profile that is no acceptable JSON: camera, stock and meter in turn. */
    private void profile(String name, int line, byte[] bytes) {
        String sort = List.of("cameras", "stocks", "meters").get(all.size() % 3);
        all.add(new Hostile(
                name,
                "profiles/" + sort + "/bad.json",
                sort + "/bad.json:" + line + ": ",
                it -> Files.write(it, bytes),
                1));
    }

    private void profile(String name, int line, String text) {
        profile(name, line, text.getBytes(StandardCharsets.UTF_8));
    }

    private void texts() {
        profile("nothing", 1, "");
        profile("blanks", 1, "  \n\n ");
        profile("a name twice", 2, "{\"name\": \"A\",\n \"name\": \"B\"}");
        profile("a second document", 2, CAMERA.strip().replace("\n", " ") + "\n{}");
        profile("words behind the end", 4, METER + "\nand so on");
        profile("a comma too many", 1, "{\"name\": \"A\",}");
        profile("a comment", 1, "{/* a camera */\"name\": \"A\"}");
        profile("single quotes", 1, "{'name': 'A'}");
        profile("cut in the middle", 3, CAMERA.substring(0, 190));
        profile("100,000 lists in one another", 1, "[".repeat(100_000) + "]".repeat(100_000));
        profile("100,000 objects in one another", 1, "{\"a\":".repeat(100_000) + "1" + "}".repeat(100_000));
        profile("40 objects in one another", 2, "{\"name\":\n" + "{\"a\":".repeat(40) + "1" + "}".repeat(41));
        profile("a number of 5,000 digits", 1, "{\"boxSpeed\": " + "9".repeat(5000) + "}");
        profile("a string of 25 MB", 1, "{\"name\": \"" + "x".repeat(25_000_000) + "\"}");
        profile("a string of 900 KB", 1, "{\"name\": \"" + "x".repeat(900_000) + "\"}");
        profile("a name of 100 KB", 1, "{\"" + "x".repeat(100_000) + "\": 1}");
        profile("a line of 900 KB", 1, "{" + " ".repeat(900_000) + "\"name\": }");
        profile("900,000 commas", 1, "[" + "1,".repeat(400_000) + "1]");
        profile("a number past all numbers", 1, "{\"boxSpeed\": 1e999}");
        profile("no number", 1, "{\"boxSpeed\": NaN}");
        profile("no end", 1, "{\"boxSpeed\": -Infinity}");
        profile("a hexadecimal number", 1, "{\"boxSpeed\": 0x10}");
        profile("a number with a leading zero", 1, "{\"boxSpeed\": 0100}");
        profile("an overlong slash", 1, bytes("{\"name\": \"a", 0xc0, 0xaf, "b\"}"));
        profile("half a letter", 1, bytes("{\"name\": \"a", 0xe2, 0x82, "\"}"));
        profile("a surrogate in UTF-8", 1, bytes("{\"name\": \"a", 0xed, 0xa0, 0x80, "\"}"));
        profile("Latin-1", 1, bytes("{\"name\": \"Sp", 0xe4, "t\"}"));
        profile("UTF-16", 1, CAMERA.getBytes(StandardCharsets.UTF_16));
        profile("UTF-16 without a mark", 1, CAMERA.getBytes(StandardCharsets.UTF_16LE));
        profile("UTF-32", 1, bytes(0, 0, 0xfe, 0xff, 0, 0, 0, '{', 0, 0, 0, '}'));
        profile("two marks in front", 1, "\ufeff\ufeff" + CAMERA);
        profile("a bare NUL", 1, "{\"name\": \"a\0b\"}");
        profile("a bare ESC", 1, "{\"name\": \"a\u001b[2Jb\"}");
        profile("a picture", 1, bytes(0x89, "PNG\r\n", 0x1a, '\n', 0, 0, 0, 13));
        profile("zeros", 1, new byte[4096]);
        profile("a list", 1, "[1, 2]");
        profile("a word", 1, "\"camera\"");
        profile("null", 1, "null");
    }

    /** Profiles that are JSON with a value that cannot be. */
    private void values() {
        camera("a frame number of 10^9", 1, "\"120\": 8", "\"120\": 1000000000");
        camera("half a frame", 1, "\"120\": 8", "\"120\": 8.5");
        camera("a film size that is none", 1, "\"120\": 8", "\"../120\": 8");
        camera("a name with nothing in it", 1, "Folding camera", " ");
        camera("a lens of -1 mm", 3, "\"focalMm\": 105", "\"focalMm\": -1");
        camera("a lens with its openings the wrong way round", 3, "\"widest\": 3.5", "\"widest\": 64");
        camera("a key with a way out", 3, "\"key\": \"105\"", "\"key\": \"../../105\"");
        camera("a time of 0", 2, "\"1/500\"", "\"1/0\"");
        camera("a time of 10^300", 2, "\"1s\"", "\"" + "9".repeat(60) + "s\"");
        camera("a word where a flag is", 2, "true", "\"true\"");
        stock("a speed below nothing", 1, "\"boxSpeed\": 50", "\"boxSpeed\": -50");
        stock("a speed as text", 1, "\"boxSpeed\": 50", "\"boxSpeed\": \"NaN\"");
        stock("a table that runs backwards", 3, "[10, 20]", "[0.5, 20]");
        stock("a table with a hole", 3, "[10, 20]", "[10, null]");
        stock("latitude without an end", 2, "\"overStops\": 2", "\"overStops\": 1e300");
        meter("a constant of 0", 2, "\"incidentConstant\": 250", "\"incidentConstant\": 0");
        meter("a word that no meter shows", 1, "\"pair\"", "\"pear\\u001b]0;x\\u0007\"");
        meter("a field that nobody knows, with an escape in its name", 2, "\"evShown\"", "\"ev\\u001b[2JShown\"");
    }

    private void camera(String name, int line, String from, String to) {
        value(name, "cameras", line, CAMERA, from, to);
    }

    private void stock(String name, int line, String from, String to) {
        value(name, "stocks", line, STOCK, from, to);
    }

    private void meter(String name, int line, String from, String to) {
        value(name, "meters", line, METER, from, to);
    }

    private void value(String name, String sort, int line, String text, String from, String to) {
        String changed = changed(text, from, to);
        all.add(new Hostile(
                name,
                "profiles/" + sort + "/bad.json",
                sort + "/bad.json:" + line + ": ",
                it -> Files.writeString(it, changed),
                1));
    }

    /** What is no plain file, or a very large one. */
    private void things() {
        for (String sort : List.of("profiles/cameras", "profiles/stocks", "rolls/open", "days")) {
            boolean isProfile = sort.startsWith("profiles");
            String file = isProfile ? "bad.json" : sort.equals("days") ? "2026-09-11.journal" : "R0003.journal";
            String place = (isProfile ? sort.substring(9) + "/" : "") + file + ":1: ";
            String path = sort + "/" + file;
            all.add(new Hostile(
                    "1 GB of nothing",
                    path,
                    place,
                    it -> {
                        try (RandomAccessFile sparse = new RandomAccessFile(it.toFile(), "rw")) {
                            sparse.setLength(1L << 30);
                        }
                    },
                    1));
            all.add(new Hostile("a folder", path, place, Files::createDirectory, 1));
            all.add(new Hostile("a pipe", path, place, it -> run("mkfifo", it.toString()), 1));
            all.add(new Hostile(
                    "a link to itself", path, place, it -> Files.createSymbolicLink(it, it.getFileName()), 1));
            all.add(new Hostile(
                    "a link to nothing", path, place, it -> Files.createSymbolicLink(it, Path.of("nowhere")), 1));
            all.add(new Hostile(
                    "a link to a device", path, place, it -> Files.createSymbolicLink(it, Path.of("/dev/zero")), 1));
        }
    }

    /** Names that no program gave. */
    private void names() {
        List<String> keys = List.of(
                "..",
                ".. ..",
                "CN900",
                "con.txt",
                "a\nb",
                "a\u202eb",
                "a\u001b]0;x\u0007",
                "a\u200bb",
                "\u00e9t\u00e9",
                "a b",
                "x".repeat(200),
                "-;rm",
                "a/..".replace('/', '\\'));
        for (String key : keys) {
            all.add(new Hostile(
                    "a camera with a name that cannot be typed",
                    "profiles/cameras/" + key + ".json",
                    "cameras/",
                    it -> Files.writeString(it, CAMERA),
                    1));
        }
        all.add(new Hostile(
                "a twin in capitals",
                "profiles/stocks/CN400.json",
                "stocks/CN400.json:1: ",
                it -> Files.writeString(it, STOCK),
                1));
        for (String id : List.of(
                "r0009",
                "R9",
                "R0003 (copy)",
                "R0003..",
                "CON",
                "R0003\n",
                "R0003\u202e",
                "\u001b[2J",
                "R" + "9".repeat(60))) {
            all.add(new Hostile(
                    "a roll with a name that is none",
                    "rolls/open/" + id + ".journal",
                    "rolls/open/",
                    it -> Files.writeString(it, text(roll)),
                    1));
        }
        all.add(new Hostile(
                "a day that is none",
                "days/2026-02-30.journal",
                "days/2026-02-30.journal: ",
                it -> Files.writeString(it, text(day)),
                1));
        all.add(new Hostile(
                "a roll under another's number",
                "rolls/finished/R0008.journal",
                "R0008.journal:2: ",
                it -> Files.writeString(it, text(roll)),
                1));
    }

    private void journal(String name, int line, int lines, String text) {
        all.add(new Hostile(
                name,
                "rolls/open/R0003.journal",
                "R0003.journal:" + line + ": ",
                it -> Files.writeString(it, text),
                lines));
    }

    /** A journal whose second record, the first frame, says something else, under a right CRC. */
    private void frame(String name, String from, String to) {
        frame(name, from, to, 1);
    }

    private void frame(String name, String from, String to, int told) {
        List<String> lines = new ArrayList<>(roll);
        lines.set(2, sealed(changed(body(lines.get(2)), from, to)));
        all.add(new Hostile(
                name, "rolls/open/R0003.journal", "R0003.journal:3: ", it -> Files.writeString(it, text(lines)), told));
    }

    private void journals() {
        String whole = text(roll);
        journal("nothing", 1, 1, "");
        journal("a header and no more", 1, 1, roll.get(0) + "\n");
        journal("zeros behind the last line", roll.size() + 1, 1, whole + "\0".repeat(4096));
        journal("half a line at the end", roll.size(), 1, whole.substring(0, whole.length() - 40));
        journal("a mark in front", 1, 1, "\ufeff" + whole);
        journal("a line of 12 MB", roll.size() + 1, 1, whole + "x".repeat(12_000_000) + "\n");
        journal("a record twice", 4, 1, text(List.of(roll.get(0), roll.get(1), roll.get(2), roll.get(2), roll.get(3))));
        journal(
                "two records in the wrong order",
                4,
                1,
                text(List.of(roll.get(0), roll.get(1), roll.get(3), roll.get(2))));
        journal("a changed letter", 3, 2, whole.replaceFirst("\"kind\":\"exposed\"", "\"kind\":\"exposes\""));
        journal(
                "a record without end",
                3,
                1,
                text(List.of(
                        roll.get(0),
                        roll.get(1),
                        sealed("{\"n\":2,\"step\":11,\"at\":\"2026-09-12T15:00+02:00\",\"event\":\"note\",\"words\":"
                                + "[".repeat(100_000) + "]".repeat(100_000) + "}"))));
        journal(
                "another format",
                1,
                1,
                text(List.of(sealed("{\"n\":0,\"format\":\"shopping\",\"version\":1}"), roll.get(1), roll.get(2))));
        journal(
                "a format of the year 3000",
                1,
                1,
                text(List.of(
                        sealed("{\"n\":0,\"format\":\"takeup-journal\",\"version\":900}"), roll.get(1), roll.get(2))));
        frame("frame 10^9", "\"number\":1", "\"number\":1000000000");
        frame("f/-1", "\"f\":8", "\"f\":-1");
        frame("f/1e300", "\"f\":8,\"av\":6", "\"f\":1e300,\"av\":1e300");
        frame("a time of 0 s", "\"s\":0.008", "\"s\":0");
        frame("a time of 1e300 s", "\"s\":0.008,\"exact\":0.0078125", "\"s\":1e300,\"exact\":1e300");
        frame("EV 1e300", "\"ev100\":11", "\"ev100\":1e300");
        frame("a film rated -200", "\"index\":200", "\"index\":-200");
        frame("the 31st of February", "\"exposure\":{\"at\":\"2026-09-12", "\"exposure\":{\"at\":\"2026-02-31");
        frame(
                "an offset of 99 hours",
                "\"exposure\":{\"at\":\"2026-09-12T15:00+02:00",
                "\"exposure\":{\"at\":\"2026-09-12T15:00+99:00");
        frame("a kind that is none, with an escape", "\"kind\":\"exposed\"", "\"kind\":\"\\u001b]52;c;eA==\\u0007\"");
        frame("no exposure", "\"exposure\":", "\"exposed\":");
        frame("a lens that is a list", "\"lens\":{\"key\":\"50\"", "\"lens\":[],\"lans\":{\"key\":\"50\"");
        frame("step 10^16", "\"step\":", "\"step\":10000000000000000", 2);
        frame("a time in the year 10^9", "\"exposure\":{\"at\":\"2026", "\"exposure\":{\"at\":\"+1000000000");
        frame(
                "a filter that takes 10^300 stops",
                "\"lens\":",
                "\"filters\":[{\"name\":\"x\",\"stops\":1e300}],\"lens\":");
        frame("a reading of 20,000 words", "\"method\":\"incident", "\"method\":\"" + "incident ".repeat(2000));
    }

    private void days() {
        String file = "2026-09-11.journal";
        // A file that was just made when the current failed: nothing was confirmed, and there is nothing to tell.
        all.add(new Hostile("nothing", "days/" + file, "", it -> Files.write(it, new byte[0]), 0));
        all.add(new Hostile(
                "a picture",
                "days/" + file,
                file + ":1: ",
                it -> Files.write(it, bytes(0x89, "PNG", 0x1a, '\n', 0, 1, 2, 3)),
                2));
        List<String> lines = new ArrayList<>(day);
        lines.set(2, sealed(changed(body(lines.get(2)), "\"ev100\":11", "\"ev100\":\"NaN\"")));
        all.add(new Hostile(
                "light that is no number", "days/" + file, file + ":3: ", it -> Files.writeString(it, text(lines)), 1));
    }

    private void settings(String name, int line, int lines, Maker maker) {
        all.add(new Hostile(name, "settings.json", "settings.json:" + line + ": ", maker, lines));
    }

    private void settings(String name, int line, String text) {
        settings(name, line, 1, it -> Files.writeString(it, text));
    }

    private void settings() {
        settings("no settings", 1, "");
        settings("settings cut in the middle", 2, "{\"ascii\": true,\n \"theme\": \"ni");
        settings("a setting twice", 1, "{\"theme\": \"sun\", \"theme\": \"night\"}");
        settings("settings and more", 2, "{\"theme\": \"sun\"}\n{}");
        settings("a list of settings", 1, "[\"theme\"]");
        settings("a theme with an escape", 2, "{\n\"theme\": \"sun\\u001b]52;c;eA==\\u0007\"}");
        settings("a setting with an escape in its name", 1, "{\"th\\u009b2Jeme\": \"sun\"}");
        settings("a setting with a line feed in its name, twice", 1, "{\"a\\nb\": 1, \"a\\nb\": 1}");
        settings("a name of 20,000 letters where a theme is", 1, "{\"theme\": \"" + "sun ".repeat(5000) + "\"}");
        settings("10^300 frames left", 1, "{\"framesLeft\": 1e300}");
        settings("frames left without an end", 1, "{\"framesLeft\": 1e999}");
        settings("1,000 lists in one another", 1, "[".repeat(1000) + "]".repeat(1000));
        settings("settings of 70,000 blanks", 1, " ".repeat(70_000) + "{}");
        settings("settings in Latin-1", 1, 1, it -> Files.write(it, bytes("{\"theme\": \"n", 0xe4, "cht\"}")));
        settings(
                "settings in UTF-16",
                1,
                1,
                it -> Files.write(it, "{\"theme\": \"sun\"}".getBytes(StandardCharsets.UTF_16)));
        settings("settings of zeros", 1, 1, it -> Files.write(it, new byte[4096]));
        settings("settings of 1 GB", 1, 1, it -> {
            try (RandomAccessFile sparse = new RandomAccessFile(it.toFile(), "rw")) {
                sparse.setLength(1L << 30);
            }
        });
        settings("settings that are a folder", 1, 1, Files::createDirectory);
        settings("settings that are a pipe", 1, 1, it -> run("mkfifo", it.toString()));
        settings("settings that are a link to themselves", 1, 1, it -> Files.createSymbolicLink(it, it.getFileName()));
        settings("settings that are a link to nothing", 1, 1, it -> Files.createSymbolicLink(it, Path.of("nowhere")));
        settings(
                "settings that are a link to a device", 1, 1, it -> Files.createSymbolicLink(it, Path.of("/dev/zero")));
    }

    /** What has no sums to do, and is passed over without a word: nothing that was logged hangs on it. */
    private void others() {
        all.add(new Hostile("a draft that is a pipe", "draft", "draft", it -> run("mkfifo", it.toString()), 1));
        all.add(new Hostile(
                "a draft of 1 GB",
                "draft",
                "",
                it -> {
                    try (RandomAccessFile sparse = new RandomAccessFile(it.toFile(), "rw")) {
                        sparse.setLength(1L << 30);
                    }
                },
                0));
        all.add(new Hostile("a draft that is no text", "draft", "", it -> Files.write(it, bytes(0xff, 0xfe, 0x1b)), 0));
        all.add(new Hostile(
                "a mark of a day that is a pipe",
                "went-back-to",
                "went-back-to",
                it -> run("mkfifo", it.toString()),
                1));
        all.add(new Hostile(
                "a mark of no day", "went-back-to", "", it -> Files.writeString(it, "../../../etc/passwd"), 0));
    }

    private static String changed(String text, String from, String to) {
        if (!text.contains(from)) {
            throw new IllegalArgumentException(from + " does not stand in " + text);
        }
        int at = text.indexOf(from);
        return text.substring(0, at) + to + text.substring(at + from.length());
    }

    private static String text(List<String> lines) {
        return String.join("\n", lines) + "\n";
    }

    private static String body(String line) {
        return line.substring(0, line.lastIndexOf(",\"crc\"")) + "}";
    }

    /** The line of a journal, with a CRC-32C of all in front of it. */
    static String sealed(String object) {
        String front = object.substring(0, object.length() - 1);
        CRC32C crc = new CRC32C();
        crc.update(front.getBytes(StandardCharsets.UTF_8));
        return front + ",\"crc\":\""
                + Long.toHexString(crc.getValue() | 1L << 32).substring(1) + "\"}";
    }

    private static byte[] bytes(Object... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (Object part : parts) {
            if (part instanceof String text) {
                all.writeBytes(text.getBytes(StandardCharsets.UTF_8));
            } else {
                all.write(part instanceof Character letter ? letter : (Integer) part);
            }
        }
        return all.toByteArray();
    }

    private static void run(String... command) throws IOException, InterruptedException {
        if (new ProcessBuilder(command).start().waitFor() != 0) {
            throw new IOException(String.join(" ", command));
        }
    }
}
