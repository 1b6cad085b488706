package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.handoff.Schemas;
import takeup.json.Json;
import takeup.json.JsonText;

/**
 * A query engine takes the frames as they are. It is large, so that only the full run ({@code -Doutside=required})
 * brings it in.
 */
class FramesQueryIT {
    private static final String CLOCK = "2026-09-12T15:00+02:00";

    @TempDir
    Path scratch;

    @Test
    void aTableOfAllFramesAnswersQuestions() throws IOException {
        // EV 11 at EI 400: f/5.6 at 1/250 is right, 1/125 a stop over, 1/500 a stop under.
        takeup(
                "cam 645 1\nload bw400 120 @400\nm ev 11\n5.6 250\n5.6 125\n5.6 500 ; it's \"dark\", "
                        + "eight\nblank\nunload yes\ncam 35\nload cn400 135\nm ev 11\n8 125\n",
                "line",
                "--data",
                "day",
                "--clock",
                "2026-09-12T15:00+02:00");
        takeup("", "scans", "1", "--data", "day", "--thin", "3");
        Path lines = scratch.resolve("frames.jsonl");
        Files.writeString(lines, takeup("", "frames", "--json", "--data", "day").out());
        try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = connection.createStatement()) {
            statement.execute(
                    "create table frames as select * from read_json('" + lines + "', format = 'newline_delimited')");
            assertEquals("5", one(statement, "select count(*) from frames"));
            assertEquals(
                    "-1.0", one(statement, "select cast(errorStops as double) from frames where verdict = 'thin'"));
            assertEquals("it's \"dark\", eight", one(statement, "select note from frames where frame = 3"));
            assertEquals(
                    "0.0",
                    one(statement, "select avg(errorStops) from frames where stock = 'bw400' and kind = 'exposed'"));
            assertEquals(
                    "R0001", one(statement, "select roll from frames group by roll order by count(*) desc limit 1"));
            assertTrue(
                    one(statement, "select typeof(fNumber) from frames limit 1").equals("DOUBLE"));
            assertEquals("1", one(statement, "select count(*) from frames where kind = 'blank' and fNumber is null"));
        } catch (SQLException e) {
            missing(e);
        }
    }

    /**
     * 700 rolls at f/8 without a reading stand in front of one at f/5.6: more lines than an engine looks at before it
     * settles the types. Its own guess and the view of the manual both give every number as it is.
     */
    @Test
    void manyWholeNumbersInFrontMakeNoColumnOneOfWholeNumbers() throws IOException {
        String shot = "cam 35\nload cn400 135 @400\n";
        takeup(shot + "8 125\n" + ".\n".repeat(35), "line", "--data", "first", "--clock", CLOCK);
        takeup(
                shot + "m ev11.3\nbias +1/3\nlens 28\n5.6 250\nunload yes\nload bw400 135 @12.5\n2.8 30\nyes\n",
                "line",
                "--data",
                "second",
                "--clock",
                CLOCK);
        String whole = takeup("", "frames", "--json", "--data", "first").out();
        Path lines = scratch.resolve("frames.jsonl");
        Files.writeString(
                lines,
                whole.repeat(700)
                        + takeup("", "frames", "--json", "--data", "second").out());
        String view = Files.readString(Path.of("src/docs/frames.sql")).replace("frames.jsonl", lines.toString());
        String guessed = "create or replace view frames as select * from read_json_auto('" + lines + "')";
        for (String how : List.of(guessed, view)) {
            try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
                    Statement statement = connection.createStatement()) {
                statement.execute(how);
                assertEquals("25202", one(statement, "select count(*) from frames"));
                String last = " from frames where fNumber <> 8";
                assertEquals("5.6", one(statement, "select max(fNumber)" + last));
                assertEquals("0.333333333", one(statement, "select max(biasStops)" + last));
                assertEquals("12.5", one(statement, "select min(exposureIndex) from frames"));
                assertEquals("0.004", one(statement, "select min(seconds)" + last));
            } catch (SQLException e) {
                missing(e);
            }
        }
        try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = connection.createStatement()) {
            statement.execute(view);
            assertEquals("DOUBLE", one(statement, "select typeof(distanceM) from frames limit 1"));
            assertEquals("INTEGER", one(statement, "select typeof(was) from frames limit 1"));
            assertEquals("11.3", one(statement, "select max(lightEv100) from frames"));
            assertEquals(
                    "2",
                    one(
                            statement,
                            "select count(*) from frames where \"at\" > '2026-09-12 12:59:00+00' and fNumber < 8"));
        } catch (SQLException e) {
            missing(e);
        }
    }

    /** The view names each column of the schema, in its order. */
    @Test
    void theViewHasTheColumnsOfTheSchema() throws IOException, JsonText.NotJson {
        List<String> columns = new ArrayList<>();
        Matcher named = Pattern.compile("(?m)^    \"?(\\w+)\"?: '(\\w+)'")
                .matcher(Files.readString(Path.of("src/docs/frames.sql")));
        while (named.find()) {
            columns.add(named.group(1));
        }
        Json.Obj schema = (Json.Obj) JsonText.read(Schemas.named("frames").orElseThrow());
        Json.Obj properties = (Json.Obj) schema.fields().get("properties");
        assertEquals(List.copyOf(properties.fields().keySet()), columns);
    }

    /** The view and the queries that the manual prints, over the folder that two writers added to. */
    @Test
    void threeYearsOfTwoWritersAreOneTableEqualToWhatEachPrints() throws IOException {
        StringBuilder whole = new StringBuilder();
        for (String writer : List.of("R", "AB")) {
            Path data = Files.createDirectories(scratch.resolve(writer));
            Files.writeString(data.resolve("settings.json"), "{\"writer\": \"" + writer + "\"}");
            for (int year = 2024; year <= 2026; year++) {
                takeup(
                        "cam 645 1\nload bw400 120\nm ev 11\n5.6 250 ; " + writer + " " + year
                                + "\n5.6 125\nunload yes\n",
                        "line",
                        "--data",
                        writer,
                        "--clock",
                        year + "-09-12T15:00+02:00");
                takeup("", "frames", "--partition", "studio", "--data", writer);
            }
            takeup("", "scans", "1", "--data", writer, "--thin", "2");
            takeup("fix " + writer.toLowerCase(Locale.ROOT) + "2 1 8 250\n", "line", "--data", writer);
            String said = takeup("", "frames", "--partition", "studio", "--data", writer)
                    .out();
            assertEquals("2 rolls added to studio, 1 unchanged\n", said);
            whole.append(takeup("", "frames", "--json", "--data", writer).out());
        }
        Path all = Files.writeString(scratch.resolve("all.jsonl"), whole);
        String[] documented = documented();
        try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = connection.createStatement()) {
            statement.execute(documented[0]);
            statement.execute(
                    "create table printed as select * from read_json('" + all + "', format = 'newline_delimited')");
            assertEquals("12", one(statement, "select count(*) from frames"));
            assertEquals("12", one(statement, "select count(*) from printed"));
            String columns = "select * exclude (year, writer) from frames";
            assertEquals(
                    "0", one(statement, "select count(*) from (" + columns + " except all select * from printed)"));
            assertEquals(
                    "0", one(statement, "select count(*) from (select * from printed except all " + columns + ")"));
            assertEquals("AB", one(statement, "select writer from frames order by writer limit 1"));
            assertEquals("2024", one(statement, documented[1]));
            assertTrue(one(statement, documented[2]) != null);
            statement.execute("create table typed ("
                    + takeup("", "schema", "frames", "--ddl").out().replaceAll("(?m)^(\\w+) ", "\"$1\" ") + ")");
            statement.execute("insert into typed by name select * from frames");
            assertEquals("12", one(statement, "select count(*) from typed"));
        } catch (SQLException e) {
            missing(e);
        }
    }

    /** A fix, a dropped frame, a roll without frames, one that was withdrawn and one that was loaded after all. */
    @Test
    void whatWasChangedSincePartitionsWereWrittenIsSoInThem() throws IOException {
        String data = "changed";
        String three = "cam 645 1\nload bw400 120\nm ev 11\n5.6 250\n5.6 125\n5.6 500\nunload yes\n";
        line(data, three + "cam 35\nload cn400 135\n8 125\n");
        assertEquals("2 rolls added to studio, 0 unchanged\n", partition(data));
        line(data, "fix r1 1 8 250\ndrop r1 2\nfix 1 ; veil\n");
        assertEquals("2 rolls added to studio, 0 unchanged\n", partition(data));
        assertEqualToWhatIsPrinted(data, "3");
        line(data, "unload yes\nload bw400 135\n8 250\n");
        partition(data);
        line(data, "undo\nundo\n");
        assertEquals("1 roll added to studio, 2 unchanged\n", partition(data));
        assertEqualToWhatIsPrinted(data, "3");
        line(data, "redo\nredo\n");
        partition(data);
        assertEqualToWhatIsPrinted(data, "4");
        line(data, "drop 1\n");
        partition(data);
        assertEquals("0 rolls added to studio, 3 unchanged\n", partition(data), "said once");
        assertEqualToWhatIsPrinted(data, "3");
    }

    private void line(String data, String typed) {
        takeup(typed, "line", "--data", data, "--clock", CLOCK);
    }

    private String partition(String data) {
        return takeup("", "frames", "--partition", "studio", "--data", data).out();
    }

    private void assertEqualToWhatIsPrinted(String data, String count) throws IOException {
        Path lines = Files.writeString(
                scratch.resolve("printed.jsonl"),
                takeup("", "frames", "--json", "--data", data).out());
        try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = connection.createStatement()) {
            statement.execute(documented()[0]);
            statement.execute(Files.readString(Path.of("src/docs/frames.sql"))
                    .replace("view frames", "view printed")
                    .replace("frames.jsonl", lines.toString()));
            String columns = "select * exclude (year, writer) from frames";
            assertEquals(count, one(statement, "select count(*) from frames"));
            assertEquals(count, one(statement, "select count(*) from printed"));
            statement.execute("create table typed as from printed limit 0");
            statement.execute("insert into typed by name " + columns);
            assertEquals("0", one(statement, "select count(*) from (from typed except all from printed)"));
            assertEquals("0", one(statement, "select count(*) from (from printed except all from typed)"));
        } catch (SQLException e) {
            missing(e);
        }
    }

    /** The view and the queries of the manual, over the folder of this test. */
    private String[] documented() throws IOException {
        String page = Files.readString(Path.of("src/docs/learn.md"));
        int from = page.indexOf("```sql\n") + 7;
        return page.substring(from, page.indexOf("```", from))
                .replace("'studio/", "'" + scratch.resolve("studio") + "/")
                .split(";");
    }

    private static void missing(SQLException e) {
        if (!String.valueOf(e.getMessage()).contains("No suitable driver")) {
            fail(e.getMessage(), e);
        }
        if ("required".equals(System.getProperty("outside"))) {
            fail("duckdb is not on the class path, and -Doutside=required asks for it");
        }
        System.out.println("skipped: duckdb is not installed");
        abort("duckdb is not installed");
    }

    private static String one(Statement statement, String query) throws SQLException {
        try (ResultSet result = statement.executeQuery(query)) {
            assertTrue(result.next(), query);
            return result.getString(1);
        }
    }

    private Installed.Ended takeup(String input, String... arguments) {
        return Installed.run(scratch, input, List.of(arguments));
    }
}
