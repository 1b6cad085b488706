package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.json.Json;
import takeup.json.JsonText;

/**
 * Spark in local mode reads the partitions with the columns of {@code takeup schema frames --ddl}. It is of 300 MB, so
 * that only the profile {@code spark} brings it in; it is called by its names, so that this compiles without it.
 */
class FramesSparkIT {
    private static final String CLOCK = "2026-09-12T15:00+02:00";

    @TempDir
    Path scratch;

    @Test
    void thePartitionsAreReadWithTheirDdlAndEqualWhatIsPrinted()
            throws IOException, ReflectiveOperationException, JsonText.NotJson {
        assumeTrue("required".equals(System.getProperty("spark")), "skipped: Spark comes with -Pspark");
        StringBuilder whole = new StringBuilder();
        for (String writer : List.of("R", "AB")) {
            Path data = Files.createDirectories(scratch.resolve(writer));
            Files.writeString(data.resolve("settings.json"), "{\"writer\": \"" + writer + "\"}");
            for (int year = 2024; year <= 2026; year++) {
                String day = "cam 645 1\nload bw400 120 as B-" + year + "\nm ev 11\n5.6 250 with Anna ; " + writer
                        + "\n5.6 125\nunload yes\n";
                takeup(day, "line", "--data", writer, "--clock", year + "-09-12T15:00+02:00");
                takeup("", "frames", "--partition", "studio", "--data", writer);
            }
            String first = writer.toLowerCase(Locale.ROOT) + "1";
            takeup("fix " + first + " 1 8 250\ndrop " + first + " 2\n", "line", "--data", writer, "--clock", CLOCK);
            takeup("cam 35\nload cn400 135\n8 125\n", "line", "--data", writer, "--clock", CLOCK);
            takeup("", "frames", "--partition", "studio", "--data", writer);
            takeup("undo\nundo\n", "line", "--data", writer, "--clock", CLOCK);
            takeup("", "frames", "--partition", "studio", "--data", writer);
            whole.append(takeup("", "frames", "--json", "--data", writer).out());
        }
        Path all = Files.writeString(scratch.resolve("all.jsonl"), whole);
        String ddl = takeup("", "schema", "frames", "--ddl").out();
        Object spark = session();
        try {
            read(spark, ddl, scratch.resolve("studio"), "lines");
            read(spark, ddl, all, "printed");
            sql(spark, documented());
            String columns = "select " + String.join(", ", columns(ddl)) + " from ";
            assertEquals("[10]", one(spark, "select count(*) from frames"));
            assertEquals("[10]", one(spark, "select count(*) from printed"));
            assertEquals(
                    "[0]",
                    one(spark, "select count(*) from (" + columns + "frames except all " + columns + "printed)"));
            assertEquals(
                    "[0]",
                    one(spark, "select count(*) from (" + columns + "printed except all " + columns + "frames)"));
            said(whole.toString())
                    .forEach((column, count) -> assertEquals(
                            "[" + count + "]", one(spark, "select count(`" + column + "`) from frames"), column));
            assertEquals(
                    "[2024,AB,1]", one(spark, "select year, writer, count(*) from frames group by all order by all"));
            assertEquals("[8.0]", one(spark, "select max(fNumber) from frames"));
            assertEquals("[0.004]", one(spark, "select min(seconds) from frames"));
            assertEquals(
                    "[2]",
                    one(
                            spark,
                            "select count(*) from frames where loadedAt = timestamp '2025-09-12 13:00:00Z'"
                                    + " and writer = 'R'"));
        } finally {
            call(spark, "stop");
        }
    }

    /** How many lines say something in each column, counted without an engine. */
    private static Map<String, Integer> said(String lines) throws JsonText.NotJson {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (String line : lines.lines().toList()) {
            ((Json.Obj) JsonText.read(line))
                    .fields()
                    .forEach((column, value) ->
                            counts.merge(column, JsonText.line(value).equals("null") ? 0 : 1, Integer::sum));
        }
        return counts;
    }

    private static List<String> columns(String ddl) {
        return ddl.lines()
                .map(it -> it.split(" ")[0])
                .filter(it -> !it.equals("year") && !it.equals("writer"))
                .map(it -> "`" + it + "`")
                .toList();
    }

    /** The view of the manual. */
    private static String documented() throws IOException {
        String page = Files.readString(Path.of("src/docs/learn.md"));
        int from = page.indexOf("create temporary view frames");
        return page.substring(from, page.indexOf("```", from));
    }

    private static Object session() throws ReflectiveOperationException {
        Object builder = Class.forName("org.apache.spark.sql.SparkSession")
                .getMethod("builder")
                .invoke(null);
        call(builder, "master", "local[2]");
        for (List<String> setting : List.of(
                List.of("spark.ui.enabled", "false"),
                List.of("spark.driver.host", "127.0.0.1"),
                List.of("spark.driver.bindAddress", "127.0.0.1"),
                List.of("spark.sql.shuffle.partitions", "2"),
                List.of("spark.sql.session.timeZone", "UTC"))) {
            builder.getClass()
                    .getMethod("config", String.class, String.class)
                    .invoke(builder, setting.get(0), setting.get(1));
        }
        return call(builder, "getOrCreate");
    }

    private static void read(Object spark, String ddl, Path from, String view) throws ReflectiveOperationException {
        Object reader = call(call(spark, "read"), "schema", ddl);
        call(call(reader, "json", from.toString()), "createOrReplaceTempView", view);
    }

    private static Object sql(Object spark, String query) throws ReflectiveOperationException {
        return call(spark, "sql", query);
    }

    private static String one(Object spark, String query) {
        try {
            return ((List<?>) call(sql(spark, query), "collectAsList")).get(0).toString();
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(query + ": " + e.getCause(), e);
        }
    }

    private static Object call(Object on, String method, String... arguments) throws ReflectiveOperationException {
        Class<?>[] types = new Class<?>[arguments.length];
        Arrays.fill(types, String.class);
        return on.getClass().getMethod(method, types).invoke(on, (Object[]) arguments);
    }

    private Installed.Ended takeup(String input, String... arguments) {
        return Installed.run(scratch, input, List.of(arguments));
    }
}
