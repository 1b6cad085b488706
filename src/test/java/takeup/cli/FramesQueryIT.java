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
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A query engine takes the frames as they are. It is large, so that only the full run ({@code -Doutside=required})
 * brings it in.
 */
class FramesQueryIT {
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
