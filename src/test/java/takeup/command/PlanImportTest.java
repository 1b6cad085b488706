package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.day.KeyMoment;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.planning.PlanImport;
import takeup.report.MomentText;

/** A plan from a spreadsheet. */
class PlanImportTest {
    private static PlanImport.Read read(Shooting shooting, String text) {
        return PlanImport.read(text, "day.csv", shooting.situation(), shooting.now(), "R");
    }

    private static List<String> planned(String text) {
        PlanImport.Read read = read(Shooting.of(), text);
        assertEquals(List.of(), read.problems());
        return read.does().orElseThrow().after().day().plan().moments().stream()
                .map(it -> MomentText.planned(it, it.at()))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "time,moment,wants,must,camera,back,light\n16:30,Prize-giving,12,yes,645,2,ev12\n17:00,\"Portraits, \"\"crew\"\" of eight\",,,,,shade\n",
                "# the day\r\nlight;time;moment;must;wants;back;camera\r\nev "
                        + "12;16:30;Prize-giving;x;12;2;645\r\n\r\nshade;1700;Portraits, \"crew\" of eight\r\n",
                "\uFEFFTime\tMoment\tWants\tMust\tCamera\tBack\tLight\n17:00\tPortraits, \"crew\" of "
                        + "eight\t\tno\t\t\t12\n16.30\tPrize-giving\t12\t1\t645\t2\t12"
            })
    void commasSemicolonsAndTabsPartTheCells(String text) {
        assertEquals(
                List.of(
                        "16:30 Prize-giving, wants 12, must, 645 back 2, EV 12",
                        "17:00 Portraits, \"crew\" of eight, EV 12"),
                planned(text).stream()
                        .map(it -> it.substring(it.indexOf(' ') + 1))
                        .toList());
    }

    @Test
    void otherProgramsReadEachMomentThatCameIn() {
        Json.Arr moments = (Json.Arr) read(Shooting.of(), "time,moment\n16:30,Prize-giving\n17:00,Portraits\n")
                .does()
                .orElseThrow()
                .answer()
                .fields()
                .json()
                .field("moments")
                .orElseThrow();
        assertEquals(
                List.of("\"Prize-giving\"", "\"Portraits\""),
                moments.items().stream()
                        .map(it -> JsonText.line(((Json.Obj) it).field("name").orElseThrow()))
                        .toList());
    }

    @Test
    void aLineThatDoesNotFitIsNamedAndThenNothingIsPlanned() {
        PlanImport.Read read = read(
                Shooting.of(),
                "time,moment,wants,camera\n16:30,Prize-giving,12,645\n17:00,Crew,twelve,\n18:00,,3,\n19:00,Party,3,654\n20:00,Club, rowing,8,35\nnoon,Lunch,,\n");
        assertEquals(Optional.empty(), read.does());
        assertEquals(
                List.of("day.csv:3", "day.csv:4", "day.csv:5", "day.csv:6", "day.csv:7"),
                read.problems().stream().map(it -> it.substring(0, 9)).toList());
        assertTrue(
                read.problems().get(2).contains("did you mean 645"),
                read.problems().toString());
        assertTrue(
                read.problems().get(3).contains("more cells than there are columns")
                        || read.problems().get(3).contains("no count"),
                read.problems().toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "time,moment\n16:00,Launch\n16:30,\"Prize-giving\n17:00,Crew\n",
                "time,moment\n16:00,\"Launch\nof the \"\"Heron\"\"\"\n17:00,\"Crew",
                "time,moment\n\n16:30,\"\"\"Prize-giving\"\"\n"
            })
    void aQuoteThatIsNeverClosedIsNamedByItsLineAndSwallowsNoMoment(String text) {
        PlanImport.Read read = read(Shooting.of(), text);
        assertEquals(Optional.empty(), read.does());
        assertEquals(
                List.of("day.csv:" + (text.contains("Heron") ? 4 : 3) + ": a quote is opened here and never closed: "
                        + "close it, or double it (\"\") where it is part of the words"),
                read.problems());
    }

    @Test
    void theFirstLineMustNameTheColumns() {
        assertTrue(read(Shooting.of(), "16:30,Prize-giving\n")
                .problems()
                .get(0)
                .startsWith("day.csv:1: the first line must name the columns time and moment"));
        assertTrue(read(Shooting.of(), "time,momnet\n").problems().get(0).contains("did you mean moment?"));
        assertTrue(read(Shooting.of(), "time,wants\n")
                .problems()
                .get(0)
                .contains("must name the columns time and moment"));
        assertTrue(read(Shooting.of(), "time,moment,time\n").problems().get(0).contains("time is there twice"));
        assertTrue(read(Shooting.of(), "\n# nothing\n").problems().get(0).contains("empty"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        4:30 PM      | 12.09.2026 | 2026-09-12T16:30
        4.30 pm      | 12/09/2026 | refused
        12:05 AM     | 13/09/2026 | 2026-09-13T00:05
        12:05 p.m.   | 9/13/2026  | 2026-09-13T12:05
        16:30:00     | 2026-09-12 | 2026-09-12T16:30
        1630         | 13.9.2026  | 2026-09-13T16:30
        4 pm         | 09/09/2027 | 2027-09-09T16:00
        13:30 PM     | 2026-09-12 | refused
        16:60        | 2026-09-12 | refused
        25           | 2026-09-12 | refused
        16:30        | 31.02.2027 | refused
        """)
    void timesAndDatesAreReadAsSpreadsheetsWriteThem(String time, String date, String at) {
        PlanImport.Read read = read(Shooting.of(), "time;date;moment\n" + time + ";" + date + ";Prize-giving\n");
        assertEquals(
                at,
                read.does()
                        .map(it -> it.after().day().plan().moments().get(0).at().toString())
                        .orElse("refused"));
    }

    @Test
    void otherColumnsAreNamedAndLeftOutAndASeparatorMayBeSaid() {
        PlanImport.Read read = read(
                Shooting.of(), "sep=;\nTelephone;time;Colour of the boat;moment;\n555;16:30;red;Prize-giving, all;x\n");
        assertEquals(List.of(), read.problems());
        assertEquals(List.of("Telephone", "Colour of the boat", "column 5, which has no name"), read.leftOut());
        assertEquals(
                "Prize-giving, all",
                read.does().orElseThrow().after().day().plan().moments().get(0).name());
    }

    @Test
    void whatAFileHasNoColumnForStaysAsItIs() {
        Shooting shooting = Shooting.of("plan 16:30 Prize-giving wants 12 must cam 645 2 light ev12");
        assertEquals(
                Optional.empty(),
                read(shooting, "time,moment\n16:30,Prize-giving\n").does());
        KeyMoment wanted = read(shooting, "time,moment,wants,light\n16:30,Prize-giving,20,\n")
                .does()
                .orElseThrow()
                .after()
                .day()
                .plan()
                .moments()
                .get(0);
        assertEquals(
                "16:30 Prize-giving, wants 20, must, 645 back 2",
                MomentText.planned(wanted, wanted.at()).replaceFirst("^\\S+ ", ""));
    }

    @Test
    void readASecondTimeItChangesWhatIsDifferentAndDoublesNothing() {
        Shooting shooting = Shooting.of("plan 16:30 Prize-giving wants 12", "plan 17:00 Crew wants 8");
        assertEquals(
                Optional.empty(),
                read(shooting, "time,moment,wants\n16:30,prize-giving,12\n17:00,Crew,8\n")
                        .does()
                        .filter(it -> it.entries().size() != 1));
        PlanImport.Read read =
                read(shooting, "time,moment,wants\n16:30,Prize-giving,20\n17:00,Crew,8\n18:00,Party,5\n");
        assertEquals(
                List.of(20, 8, 5),
                read.does().orElseThrow().after().day().plan().moments().stream()
                        .map(it -> it.wants())
                        .toList());
        assertEquals(
                Optional.empty(),
                read(shooting, "time,moment,wants\n17:00,Crew,8\n").does());
    }
}
