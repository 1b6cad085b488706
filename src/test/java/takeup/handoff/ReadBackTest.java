package takeup.handoff;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import takeup.json.DecimalFields;
import takeup.json.JsonText;
import takeup.records.Fields;
import takeup.records.RollEventJson;
import takeup.roll.Roll;
import takeup.roll.RollRecord;
import takeup.text.CsvFormat;

/** What was handed over, read back and handed over again, is the same to the byte: 500 rolls of any kind. */
class ReadBackTest {
    private static final List<String> NASTY =
            List.of("=1+1", "a\nb", "\u0007 bell \u001b[2J", "+1", "\"quoted\", with a comma", "", " ", "船の上");
    private static final MadeBy MADE_BY = MadeBy.version("1.0.0");

    @Test
    void aRollsFileIsWrittenAgainAsItStood() throws JsonText.NotJson {
        for (long seed = 1; seed <= 500; seed++) {
            String text = RollJson.text(RandomRolls.of(seed, NASTY), MADE_BY);
            assertEquals(text, JsonText.pretty(DecimalFields.in(JsonText.readExported(text))), "seed " + seed);
        }
    }

    @Test
    void aRollReadFromItsJournalIsHandedOverAsBefore() throws JsonText.NotJson {
        for (long seed = 1; seed <= 500; seed++) {
            List<RollRecord> read = new ArrayList<>();
            for (RollRecord it : RandomRolls.records(seed, NASTY)) {
                String line = RollEventJson.text(it.event());
                read.add(new RollRecord(
                        it.step(), it.at(), RollEventJson.event(Fields.of(JsonText.readLine(line)), () -> line)));
            }
            Roll before = RandomRolls.of(seed, NASTY);
            Roll after = Roll.of(read).orElseThrow();
            assertEquals(RollJson.text(before, MADE_BY), RollJson.text(after, MADE_BY), "seed " + seed);
            assertEquals(
                    RollCsv.of(before, MADE_BY, CsvFormat.PLAIN),
                    RollCsv.of(after, MADE_BY, CsvFormat.PLAIN),
                    "seed " + seed);
        }
    }
}
