package takeup.planning;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.day.CameraPlace;
import takeup.day.KeyMoment;
import takeup.day.Plan;
import takeup.day.ShootInfo;
import takeup.history.ShootState;
import takeup.prompt.CommandRejected;
import takeup.prompt.DateTimeParser;
import takeup.prompt.MomentParser;
import takeup.text.English;
import takeup.text.Nearest;

/**
 * Key moments from a small CSV file. Its first line names the columns: {@code time} and {@code moment}, and any of
 * {@code date}, {@code wants}, {@code must}, {@code camera}, {@code back}, {@code light}. Commas, semicolons or tabs
 * part them; any other column is left out, and named. A moment of the same name, day and time as one in the plan takes
 * its place, so that a file can be read twice; what a file has no column for stays as it is.
 */
public final class PlanImport {
    private static final List<String> COLUMNS =
            List.of("time", "moment", "date", "wants", "must", "camera", "back", "light");
    private static final int LARGEST = 200_000;

    private final CommandContext context;
    private final String file;
    private final List<String> problems = new ArrayList<>();
    private final Map<String, Integer> columns = new LinkedHashMap<>();
    private final List<String> leftOut = new ArrayList<>();
    private int width;
    private List<String> row = List.of();

    private PlanImport(CommandContext context, String file) {
        this.context = context;
        this.file = file;
    }

    /** A row and the line that it begins on. */
    private record Cells(int line, List<String> cells) {}

    /**
     * What the file comes to: one step with all of its moments, or every line that does not fit, and then nothing is
     * planned.
     *
     * @param problems each with file, line and what to do; empty where all is well
     * @param does what is to be written; empty where nothing is
     * @param leftOut the columns that a plan does not have
     */
    public record Read(List<String> problems, Optional<Outcome.Accepted> does, List<String> leftOut) {}

    /** Reads the text of a file. */
    public static Read read(String text, String file, ShootState situation, OffsetDateTime now, String letters) {
        PlanImport sheet = new PlanImport(CommandContext.of(situation, now, 0, letters), file);
        if (text.length() > LARGEST) {
            return new Read(
                    List.of(file + ":1: this is no plan for a day: it has more than " + LARGEST + " characters"),
                    Optional.empty(),
                    List.of());
        }
        return sheet.read(text);
    }

    private Read read(String text) {
        List<Cells> rows = rows(text.startsWith("\uFEFF") ? text.substring(1) : text);
        if (!problems.isEmpty()) {
            return new Read(problems, Optional.empty(), leftOut);
        }
        if (rows.isEmpty()) {
            return new Read(
                    List.of(file + ":1: it is empty: the first line names the columns, such as time,moment,wants,must"),
                    Optional.empty(),
                    leftOut);
        }
        heads(rows.get(0));
        List<KeyMoment> moments = new ArrayList<>();
        Plan plan = context.state().day().plan();
        int last = plan.last();
        for (Cells cells : problems.isEmpty() ? rows.subList(1, rows.size()) : List.<Cells>of()) {
            try {
                row = cells.cells;
                KeyMoment moment = moment(last + 1);
                Optional<KeyMoment> same = plan.moments().stream()
                        .filter(it -> it.at().equals(moment.at()) && it.name().equalsIgnoreCase(moment.name()))
                        .findFirst();
                if (same.isEmpty()) {
                    last++;
                    moments.add(moment);
                } else if (!same.get().equals(over(same.get(), moment))) {
                    moments.add(over(same.get(), moment));
                }
            } catch (CommandRejected e) {
                problems.add(file + ":" + cells.line + ": " + e.getMessage());
            }
        }
        if (!problems.isEmpty() || moments.isEmpty()) {
            return new Read(problems, Optional.empty(), leftOut);
        }
        try {
            return new Read(
                    problems,
                    Optional.of(PlanCommand.planned(
                            context, moments, English.count(moments.size(), "moment") + " into the plan", "")),
                    leftOut);
        } catch (CommandRejected e) {
            return new Read(List.of(file + ":1: " + e.getMessage()), Optional.empty(), leftOut);
        }
    }

    /** A moment of the plan as the file has it now; of what the file has no column for nothing changes. */
    private KeyMoment over(KeyMoment known, KeyMoment read) {
        boolean hasPlace = columns.containsKey("camera") || columns.containsKey("back");
        return new KeyMoment(
                known.number(),
                read.at(),
                read.name(),
                columns.containsKey("wants") ? read.wants() : known.wants(),
                columns.containsKey("must") ? read.must() : known.must(),
                hasPlace ? read.camera() : known.camera(),
                hasPlace ? read.back() : known.back(),
                columns.containsKey("light") ? read.ev100() : known.ev100());
    }

    private void heads(Cells first) {
        width = first.cells.size();
        for (int at = 0; at < width; at++) {
            String head = first.cells.get(at).strip();
            String name = DateTimeParser.small(head);
            String question = Nearest.question(name, COLUMNS);
            if (COLUMNS.contains(name)) {
                if (columns.put(name, at) != null) {
                    problems.add(file + ":" + first.line + ": " + name + " is there twice");
                }
            } else if (name.isEmpty() || question.isEmpty()) {
                leftOut.add(name.isEmpty() ? "column " + (at + 1) + ", which has no name" : head);
            } else {
                problems.add(file + ":" + first.line + ": " + name + " is no column of a plan" + question
                        + "; they are " + String.join(", ", COLUMNS));
            }
        }
        if (problems.isEmpty() && !(columns.containsKey("time") && columns.containsKey("moment"))) {
            problems.add(file + ":" + first.line + ": the first line must name the columns time and moment");
        }
    }

    private String cell(String column) {
        Integer at = columns.get(column);
        return at == null || at >= row.size() ? "" : row.get(at).strip();
    }

    private KeyMoment moment(int number) {
        for (int at = width; at < row.size(); at++) {
            if (!row.get(at).isBlank()) {
                throw new CommandRejected(
                        "this line has more cells than there are columns; a cell with a comma in it is put in quotes");
            }
        }
        LocalTime time = SheetValues.time(cell("time"));
        if (cell("moment").isEmpty()) {
            throw new CommandRejected("the moment has no name");
        }
        LocalDate today = context.now().toLocalDate();
        LocalDate usual = context.state()
                .day()
                .shoot()
                .map(ShootInfo::date)
                .filter(it -> it.isAfter(today))
                .orElse(today);
        LocalDate date = cell("date").isEmpty() ? usual : SheetValues.date(cell("date"), today);
        int wants = cell("wants").isEmpty() ? 0 : MomentParser.frames(cell("wants"));
        boolean must = switch (DateTimeParser.small(cell("must"))) {
            case "must", "yes", "y", "x", "true", "1" -> true;
            case "", "no", "n", "false", "0" -> false;
            default -> throw new CommandRejected("must is yes or no, not " + cell("must"));
        };
        if (cell("camera").isEmpty() && !cell("back").isEmpty()) {
            throw new CommandRejected("back " + cell("back") + " of which camera?");
        }
        List<String> camera = cell("back").isEmpty() ? List.of(cell("camera")) : List.of(cell("camera"), cell("back"));
        Optional<CameraPlace> place = cell("camera").isEmpty() ? Optional.empty() : Optional.of(context.place(camera));
        OptionalDouble light = cell("light").isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        MomentParser.light(DateTimeParser.small(cell("light")).replace(" ", "")));
        return new KeyMoment(
                number,
                date.atTime(time),
                cell("moment"),
                wants,
                must,
                place.map(CameraPlace::camera),
                cell("back").isEmpty() ? Optional.empty() : place.flatMap(CameraPlace::back),
                light);
    }

    /** The rows, without empty ones and those that begin with #. A cell may stand in quotes, a quote in it doubled. */
    private List<Cells> rows(String text) {
        char part = parted(text);
        boolean saysSeparator = text.startsWith("sep=");
        List<Cells> rows = new ArrayList<>();
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        int line = 1;
        int begun = 1;
        int opened = 1;
        for (int at = 0; at <= text.length(); at++) {
            char c = at == text.length() ? '\n' : text.charAt(at);
            if (quoted && at < text.length()) {
                if (c == '"' && at + 1 < text.length() && text.charAt(at + 1) == '"') {
                    cell.append('"');
                    at++;
                } else if (c == '"') {
                    quoted = false;
                } else {
                    cell.append(c == '\n' || c == '\r' ? ' ' : c);
                }
            } else if (c == '"' && cell.toString().isBlank()) {
                cell.setLength(0);
                quoted = true;
                opened = line;
            } else if (c == part) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else if (c == '\n') {
                cells.add(cell.toString());
                cell.setLength(0);
                boolean isEmpty = cells.stream().allMatch(String::isBlank);
                if (!isEmpty && !cells.get(0).startsWith("#") && !(saysSeparator && begun == 1)) {
                    rows.add(new Cells(begun, List.copyOf(cells)));
                }
                cells.clear();
                begun = line + 1;
            } else if (c != '\r') {
                cell.append(c);
            }
            line += c == '\n' ? 1 : 0;
        }
        if (quoted) {
            problems.add(file + ":" + opened
                    + ": a quote is opened here and never closed: close it, or double it (\"\") where it is part of "
                    + "the words");
        }
        return rows;
    }

    /** What parts the cells: as a first line {@code sep=;} says, else as the line that names the columns has it. */
    private static char parted(String text) {
        if (text.length() > 4 && text.startsWith("sep=") && text.charAt(4) != '\r' && text.charAt(4) != '\n') {
            return text.charAt(4);
        }
        for (String line : text.split("\n")) {
            if (!line.isBlank() && !line.startsWith("#")) {
                char other = line.indexOf('\t') >= 0 ? '\t' : ',';
                return line.indexOf(';') >= 0 ? ';' : other;
            }
        }
        return ',';
    }
}
