package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import takeup.roll.RollId;
import takeup.scans.ScreenClock;
import takeup.scans.Slate;

/** A regatta day, typed, in which every command that knows {@code --json} answers with each of its documents. */
final class DayOfDocuments {
    private static final String DAY = """
            shoot Regatta at 59.33,18.07 client Boathouse crew
            plan 16:30 Prize-giving wants 12 must
            plan 17:45 Evening light
            bag add 5 cn400 120 expires 2024-06 price 6.20
            bag add 2 bw400 135
            cam 645 1
            load cn400 120
            m ev 11
            5.6 250 ; stern
            filter yellow
            5.6 125
            filter none
            blank
            4
            flash on
            m flash 8
            8 60
            flash off
            insert 2 8 60 ; forgotten
            lost 3
            fix 1 5.6+3/10 250
            counter 7
            slate
            double
            condition torn at the end
            note 3-4
            unload yes
            cam 645 2
            load bw400 120
            m spot 5.6 60 zone 3
            rating
            rating
            rating
            unload yes
            cam 35
            load cn400 135
            8 125
            move 1 cam 645 1
            routine
            undo
            redo
            day-end
            help frame
            nonsense
            """;

    private static final String MONDAY = "2026-09-14T09:30+02:00";

    private final Path scratch;
    private final Map<String, List<String>> documents = new LinkedHashMap<>();
    private final Map<String, List<String>> tables = new LinkedHashMap<>();

    private DayOfDocuments(Path scratch) {
        this.scratch = scratch;
    }

    /** All documents, by the names of their schemas. */
    static Map<String, List<String>> in(Path scratch) throws IOException {
        return of(scratch).documents;
    }

    /** All documents and tables of the day. */
    static DayOfDocuments of(Path scratch) throws IOException {
        DayOfDocuments day = new DayOfDocuments(scratch);
        day.onSet();
        day.withTheLab();
        day.withScans();
        day.withALesson();
        day.asTables();
        return day;
    }

    /** All documents by the names of their schemas, and all tables by names that end in {@code .csv}. */
    Map<String, List<String>> all() {
        Map<String, List<String>> all = new LinkedHashMap<>(documents);
        all.putAll(tables);
        return all;
    }

    private void onSet() {
        lines("line", run(DAY, "line", "--json", "--clock", "2026-09-12T15:00+02:00"));
        lines("frames", run("", "frames", "--json"));
        whole("rolls", "rolls", "--json");
        whole("waiting", "developed", "--json");
        run(
                "cost r1 film 9.80 development 12 scans 8.50\ncost r2 film 6\ndeveloped r1 in fine-grain 1+1 9m45s at 20C\n",
                "line",
                "--clock",
                "2026-09-12T15:05+02:00");
        whole("costs", "costs", "--json");
        whole("roll", "roll", "1", "--json");
        whole("roll", "roll", "1", "--json");
        whole("roll", "roll", "2", "--json", "--with-client");
        whole("roll", "roll", "3", "--json");
        whole("meter", "meter", "ev11", "--camera", "645", "--stock", "cn400", "--distance", "3m", "--json");
        whole("meter", "meter", "ev2", "--camera", "35", "--stock", "bw400", "--tripod", "--json");
        whole("meter", "meter", "ev2", "--camera", "35", "--stock", "cr100", "--tripod", "--json");
        whole("stocks", "stock", "--json");
        whole("stock", "stock", "cn400", "--json");
        whole("stock", "stock", "bw400", "--json");
        whole("cameras", "camera", "--json");
        whole("camera", "camera", "645", "--json");
        whole("camera", "camera", "compact", "--json");
        whole("plan", "plan", "--json", "--clock", "2026-09-12T15:10+02:00");
        whole("prepare", "prepare", "--json", "--with-client", "--clock", "2026-09-12T08:10+02:00");
        whole("day-end", "day-end", "--json", "--clock", "2026-09-12T21:10+02:00");
        whole("keys", "keys", "--json");
        whole("themes", "themes", "--json");
    }

    private void withTheLab() {
        whole("sender", "order", "sender", "--json");
        whole("sender", "order", "sender", "--name", "Mara Lindqvist", "--telephone", "+46 8 555 010", "--json");
        String[] sender = {"--account", "4412", "--email", "mara@example.org", "--address", "Boathouse Lane 4"};
        whole("sender", "order", "sender", sender[0], sender[1], sender[2], sender[3], sender[4], sender[5], "--json");
        whole("orders", "order", "list", "--json", "--clock", MONDAY);
        put(
                "order",
                run(
                        "yes\nyes\nyes\n",
                        "order",
                        "new",
                        "--with-notes",
                        "--reference",
                        "Crew",
                        "--json",
                        "--clock",
                        MONDAY));
        String[] moments = {"--moment", "15:00-15:10 start", "--moment", "16:30-16:45 prize-giving"};
        whole(
                "parcels",
                "order",
                "split",
                "1",
                moments[0],
                moments[1],
                moments[2],
                moments[3],
                "--json",
                "--clock",
                MONDAY);
        run("", "order", "number", "1", "R0001", "4412");
        run("", "order", "mark", "1", "sent", "--clock", MONDAY);
        whole("order", "order", "show", "1", "--json", "--clock", MONDAY);
        whole("orders", "order", "list", "--json", "--clock", MONDAY);
        whole("orders", "order", "list", "--json", "--clock", "2026-12-14T09:30+02:00");
    }

    /** Two rolls of two bodies, all thin on the one, and what that teaches. */
    private void withALesson() throws IOException {
        String frames = "8 125\n8 60\n".repeat(9);
        String rolls = "cam 35\nload bw400 135\nm spot ev 11\n" + frames
                + "unload yes\ncam 35b\nload bw400 135\nm ev 11\n" + frames + "unload yes\n";
        run(rolls, "line", "--data", "lesson", "--clock", "2026-09-19T10:00+02:00");
        FakeLab lab = new FakeLab(scratch.resolve("lesson-scans"));
        for (int i = 10; i < 28; i++) {
            lab.scan("crew_" + i + ".jpg", 0.45);
        }
        for (String roll : List.of("1", "2")) {
            run("yes\n", "scans", roll, lab.folder().toString(), "--accept", "--data", "lesson");
        }
        run("", "scans", "1", "--thin", "1-18", "--data", "lesson");
        run("", "scans", "2", "--good", "1-10,12-16", "--dense", "11", "--data", "lesson");
        whole("review", "review", "--json", "--data", "lesson");
    }

    private void withScans() throws IOException {
        FakeLab lab = new FakeLab(scratch.resolve("scans"));
        for (int i = 1; i <= 4; i++) {
            lab.scan("crew_0" + i + ".jpg", 0.45);
        }
        lab.slate("crew_05.jpg", new Slate(new RollId("R", 1), 7), 7);
        String folder = scratch.resolve("scans").toString();
        whole("scans-proposed", "scans", "1", folder, "--json");
        run("yes\n", "scans", "1", folder, "--accept");
        run("", "scans", "1", "--thin", "1", "--good", "2,5", "--dense", "6", "--sidecars", "full");
        run("fix r1 1 5.6 60\n", "line", "--clock", "2026-09-16T10:00+02:00");
        whole("scans-accepted", "scans", "1", "--json");
        whole("slates", "slate", "--read", folder, "--json");
        whole("review", "review", "--json");
        whole("rating", "rating", "2", "--json");
        run("", "rating", "2", "--best", "2");
        whole("rating", "rating", "2", "--json");
        Path files = Files.createDirectories(scratch.resolve("files"));
        DigitalFile.write(
                files.resolve("D_0001.jpg"),
                FakeLab.code(new ScreenClock(OffsetDateTime.parse("2026-09-12T15:00:00+02:00")).text(), 9),
                "Digital reflex",
                "2026:09:12 15:00:02",
                "");
        whole("digital", "digital", "1", files.toString(), "--json");
        lines("frames", run("", "frames", "--json"));
    }

    private void asTables() {
        for (String roll : List.of("1", "2")) {
            table("roll.csv", "roll", roll, "--csv");
            table("roll.csv", "roll", roll, "--csv", "--european");
        }
        table("order.csv", "order", "show", "1", "--csv", "--clock", MONDAY);
        table("order.csv", "order", "show", "1", "--csv", "--european", "--clock", MONDAY);
        for (String by : List.of("roll", "shoot", "month")) {
            table("costs.csv", "costs", "--by", by, "--csv");
        }
    }

    private void table(String name, String... arguments) {
        String table = run("", arguments);
        assertFalse(table.isBlank(), name);
        tables.computeIfAbsent(name, it -> new ArrayList<>()).add(table);
    }

    private void whole(String name, String... arguments) {
        put(name, run("", arguments));
    }

    private void put(String name, String document) {
        assertFalse(document.isBlank(), name);
        documents.computeIfAbsent(name, it -> new ArrayList<>()).add(document);
    }

    private void lines(String name, String lines) {
        lines.lines().forEach(it -> put(name, it));
    }

    private String run(String input, String... arguments) {
        List<String> all = new ArrayList<>(List.of(arguments));
        int data = all.indexOf("--data");
        if (data < 0) {
            all.addAll(0, List.of("--data", scratch.resolve("day").toString()));
        } else {
            all.set(data + 1, scratch.resolve(all.get(data + 1)).toString());
        }
        Installed.Ended ended = InProcess.run(input, all);
        return ended.out();
    }
}
