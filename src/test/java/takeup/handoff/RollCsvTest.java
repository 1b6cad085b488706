package takeup.handoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.text.CsvFormat;

/** A roll as a spreadsheet opens it. */
class RollCsvTest {
    private static final List<String> NASTY =
            List.of("=1+1", "a\nb", "x\r\n=2", "\"quoted\", with a comma", "", " ", "\t-", "; words", "@cox");

    @Test
    void eachFrameIsARowUnderTheNamesOfTheJson() {
        List<Map<String, String>> rows = table(RollCsv.of(Rolls.regatta(), MadeBy.version("1.0.0"), CsvFormat.PLAIN));
        assertEquals(
                List.of("1", "2", "3", "5"),
                rows.stream().map(it -> it.get("frame")).toList());
        check(rows.get(0), "roll", "R0007");
        check(rows.get(0), "camera", "645 reflex");
        check(rows.get(0), "stock", "Colour negative 400");
        check(rows.get(0), "exposureIndex", "200");
        check(rows.get(0), "development", "C-41, NORMAL (rated 200, box 400)");
        check(rows.get(0), "aperture", "f/2.8");
        check(rows.get(0), "time", "1/250");
        check(rows.get(0), "lightEv100", "10.1");
        check(rows.get(0), "filters", "yellow");
        check(rows.get(0), "errorStops", "-0.9");
        check(rows.get(0), "note", "");
        check(rows.get(1), "kind", "blank");
        check(rows.get(1), "fNumber", "");
        check(rows.get(1), "biasStops", "0.0");
        check(rows.get(2), "at", "");
        check(rows.get(2), "atKnown", "false");
        check(rows.get(2), "lightZone", "3");
        check(rows.get(2), "note", "bow seat; with the cox");
        check(rows.get(2), "furtherExposures", "1");
    }

    @Test
    void aRollWithoutFramesIsItsHeaderRow() {
        String csv = RollCsv.of(Rolls.loaded().roll(), MadeBy.version("1.0.0"), CsvFormat.PLAIN);
        assertEquals(csv.length() - 2, csv.indexOf("\r\n"));
        assertTrue(csv.startsWith("\"roll\",\"camera\",\"back\",\"stock\",\"exposureIndex\","), csv);
    }

    @Test
    void aWholeStopUnderIsANumberWithItsDecimal() {
        Roll roll = Rolls.loaded()
                .frame(
                        1,
                        Frame.Kind.EXPOSED,
                        Rolls.exposure("15:12:40", Rolls.set(2.8, 1 / 250.0), Rolls.incident(9, "15:12:00")))
                .roll();
        check(table(RollCsv.of(roll, MadeBy.version("1.0.0"), CsvFormat.PLAIN)).get(0), "errorStops", "-1.0");
    }

    @Test
    void whateverHappenedThereAreAsManyRowsAsFramesAndNoneIsShort() {
        for (long seed = 1; seed <= 500; seed++) {
            Roll roll = RandomRolls.of(seed, NASTY);
            List<List<String>> rows = read(RollCsv.of(roll, MadeBy.version("1.0.0"), CsvFormat.PLAIN));
            assertEquals(roll.frames().size() + 1, rows.size(), "seed " + seed);
            int columns = rows.get(0).size();
            assertEquals(
                    List.of(), rows.stream().filter(it -> it.size() != columns).toList(), "seed " + seed);
        }
    }

    @Test
    void noCellHoldsABareOneWithASign() {
        Pattern bare = Pattern.compile("(?<![0-9.])[+-]1(?![0-9/.])");
        for (long seed = 1; seed <= 500; seed++) {
            Roll roll = RandomRolls.of(seed, List.of("bow seat", "stroke seat"));
            if (RandomRolls.countsFromNought(roll)) {
                assertFalse(
                        bare.matcher(RollCsv.of(roll, MadeBy.version("1.0.0"), CsvFormat.PLAIN))
                                .find(),
                        "seed " + seed);
            }
        }
    }

    private static void check(Map<String, String> row, String column, String expected) {
        assertEquals(expected, row.get(column), column);
    }

    private static List<Map<String, String>> table(String csv) {
        List<List<String>> rows = read(csv);
        List<Map<String, String>> table = new ArrayList<>();
        for (List<String> row : rows.subList(1, rows.size())) {
            Map<String, String> cells = new HashMap<>();
            for (int i = 0; i < row.size(); i++) {
                cells.put(rows.get(0).get(i), row.get(i));
            }
            table.add(cells);
        }
        return table;
    }

    /** A reader after RFC 4180, section 2. */
    private static List<List<String>> read(String csv) {
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int at = 0; at < csv.length(); at++) {
            char c = csv.charAt(at);
            if (quoted && c == '"' && at + 1 < csv.length() && csv.charAt(at + 1) == '"') {
                cell.append(csv.charAt(++at));
            } else if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && (c == ',' || c == '\r')) {
                row.add(cell.toString());
                cell.setLength(0);
                if (c == '\r') {
                    assertEquals('\n', csv.charAt(++at));
                    rows.add(row);
                    row = new ArrayList<>();
                }
            } else {
                cell.append(c);
            }
        }
        assertEquals(0, cell.length() + row.size(), "the last line has its end");
        return rows;
    }
}
