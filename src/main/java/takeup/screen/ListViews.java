package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import takeup.kit.Warning;
import takeup.roll.FrameWarnings;
import takeup.roll.Roll;
import takeup.shoot.KeyHelp;
import takeup.shoot.Lexicon;
import takeup.shoot.RollLine;
import takeup.shoot.Shoot;
import takeup.shoot.State;

/** The views that are lists: frames of the roll, all rolls, help. */
final class ListViews {
    private ListViews() {
    }

    /** A line of a list and how it looks. */
    private record Line(String text, Look look) {
    }

    static void frames(Shoot shoot, Grid grid) {
        List<Line> lines = new ArrayList<>();
        Optional<Roll> found = shoot.shown().roll();
        String title = found.map(it -> "Frames of " + it.id() + " · " + it.film().stock().name() + " · " + it.place()).orElse("Frames: no film");
        found.ifPresent(roll -> {
            lines.add(new Line(roll.film().developmentWords() + " · " + roll.framesUsed() + " of " + roll.film().framesNominal() + " used"
                    + roll.note().map(it -> " · " + it).orElse("") + (roll.conditions().isEmpty() ? "" : " · CONDITION "
                    + String.join(", ", roll.conditions().stream().map(it -> it.kind() + it.words().map(words -> " " + words).orElse("")).toList())), Look.STRONG));
            roll.counterChecks().forEach(it -> lines.add(new Line("counter showed " + it.shown() + " at " + Pieces.clock(it.at()) + ", the log came to " + it.expected(), Look.CAUTION)));
            List<List<Warning>> warnings = FrameWarnings.of(roll);
            for (int i = roll.frames().size() - 1; i >= 0; i--) {
                List<Warning> warned = warnings.get(i);
                boolean wide = grid.columns() >= 60;
                lines.add(new Line(Pieces.frame(roll, roll.frames().get(i), wide, wide ? Optional.of(warned) : Optional.empty()), warned.isEmpty() ? Look.NORMAL : Look.CAUTION));
            }
            if (roll.frames().isEmpty()) {
                lines.add(new Line("no frame yet: Space on the shoot screen logs one", Look.QUIET));
            }
        });
        list(shoot, grid, title, lines);
    }

    static void rolls(Shoot shoot, Grid grid) {
        List<Line> lines = new ArrayList<>();
        for (int i = shoot.rolls().size() - 1; i >= 0; i--) {
            RollLine roll = shoot.rolls().get(i);
            String place = roll.camera() + roll.back().map(it -> " back " + it).orElse("");
            lines.add(new Line(Width.pad(roll.id().toString(), 8) + Width.pad(roll.state().toString(), 10) + Width.pad(place, 12) + Width.pad(roll.stock(), 11)
                    + Width.pad("EI " + takeup.exposure.Plain.number(roll.exposureIndex()), 9) + Width.pad(roll.framesUsed() + "/" + roll.framesNominal(), 7)
                    + roll.loadedAt().toLocalDate() + "  " + roll.development(), roll.state() == Roll.State.OPEN ? Look.STRONG : Look.NORMAL));
        }
        if (lines.isEmpty()) {
            lines.add(new Line("no roll yet: cam and a camera, then load and a stock", Look.QUIET));
        }
        list(shoot, grid, "Rolls, newest first", lines);
    }

    static void help(Shoot shoot, Grid grid) {
        String wanted = shoot.prompt().text().strip().toLowerCase(Locale.ROOT);
        List<Line> lines = new ArrayList<>();
        int first = 0;
        for (KeyHelp key : KeyHelp.all()) {
            first = Math.max(first, Width.of(key.key()) + 2);
        }
        List<Line> words = new ArrayList<>();
        for (Lexicon.Word word : Lexicon.WORDS) {
            if (fits(wanted, word.usage(), word.does())) {
                int room = Math.max(24, Math.min(46, grid.columns() / 2));
                if (Width.of(word.usage()) < room) {
                    words.add(new Line(Width.pad(word.usage(), room) + word.does(), Look.NORMAL));
                } else {
                    words.add(new Line(word.usage(), Look.NORMAL));
                    words.add(new Line(" ".repeat(room) + word.does(), Look.NORMAL));
                }
            }
        }
        List<Line> keys = new ArrayList<>();
        for (KeyHelp key : KeyHelp.all()) {
            if (fits(wanted, key.key(), key.does())) {
                String where = key.pages().size() == Shoot.Page.values().length ? "" : key.pages().contains("shoot") ? " (shoot)" : " (other views)";
                keys.add(new Line(Width.pad(key.key(), first) + key.does() + where, Look.NORMAL));
            }
        }
        section(lines, "Words", words);
        section(lines, "Keys", keys);
        section(lines, "Cautions", wanted.isEmpty() ? List.of(
                new Line("Never look at the sun through a finder or a spot meter.", Look.NORMAL),
                new Line("Old flash units can carry a high trigger voltage, old cells can leak: keep to the makers' instructions and local rules.", Look.NORMAL)) : List.of());
        if (lines.isEmpty()) {
            lines.add(new Line("nothing here has that in it", Look.QUIET));
        }
        list(shoot, grid, "Help" + (wanted.isEmpty() ? ": type to search, Esc goes back" : ": what has “" + wanted + "” in it"), lines);
    }

    private static void section(List<Line> lines, String title, List<Line> more) {
        if (!more.isEmpty()) {
            lines.add(new Line(title, Look.LABEL));
            lines.addAll(more);
        }
    }

    private static boolean fits(String wanted, String a, String b) {
        return wanted.isEmpty() || a.toLowerCase(Locale.ROOT).contains(wanted) || b.toLowerCase(Locale.ROOT).contains(wanted);
    }

    private static void list(Shoot shoot, Grid grid, String title, List<Line> lines) {
        int rows = grid.rows();
        grid.fill(0, Look.BAR);
        String right = shoot.shown().roll().map(it -> State.leftWords(it) + "  ").orElse("") + Pieces.clock(shoot.now());
        grid.put(0, 0, Width.cut(title, grid.columns() - Width.of(right) - 2), Look.BAR);
        grid.put(grid.columns() - Width.of(right), 0, right, Look.BAR);
        int room = Math.max(0, rows - 5);
        int scroll = Math.max(0, Math.min(shoot.view().scroll(), lines.size() - room));
        for (int i = 0; i < Math.min(room, lines.size() - scroll); i++) {
            Line line = lines.get(scroll + i);
            grid.put(0, 1 + i, Width.cut(line.text(), grid.columns()), line.look());
        }
        if (lines.size() > room && rows > 5) {
            grid.put(0, rows - 4, (scroll + 1) + " to " + Math.min(lines.size(), scroll + room) + " of " + lines.size() + " lines", Look.QUIET);
        }
        if (rows > 3) {
            Pieces.disk(grid, shoot, rows - 4);
            Pieces.prompt(grid, shoot, rows - 2, 1);
            Pieces.footer(grid, shoot, rows - 1);
        }
    }
}
