package takeup.screen;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.advice.LoadChecks;
import takeup.command.Outcome;
import takeup.command.RatingCommand;
import takeup.day.CameraPlace;
import takeup.exposure.Stops;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Suggestion;
import takeup.kit.Warning;
import takeup.report.StatusText;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.session.Guide;
import takeup.session.HelpList;
import takeup.session.KeyHelp;
import takeup.session.PickList;
import takeup.session.Session;
import takeup.text.ClockText;
import takeup.text.Plain;
import takeup.text.Width;

/** The pieces that the views share: prompt, echo, footer, strip, and the words for frames and suggestions. */
final class PromptBar {
    private PromptBar() {}

    /** Columns left free at the sides of a wide screen; what is typed begins there too. */
    static int margin(Grid grid) {
        return grid.columns() >= 96 ? 2 : 0;
    }

    /** The prompt with its cursor in a row, the echo or what was said last in the rows above it. */
    static void prompt(Grid grid, Session shoot, int row, int saidRows) {
        grid.fill(row, TextRole.PROMPT);
        String text = shoot.prompt().text().replace("\n", " │ ");
        int cursor = Width.of(
                shoot.prompt().text().substring(0, shoot.prompt().cursor()).replace("\n", " │ "));
        int room = grid.columns() - 3;
        int skip = Math.max(0, cursor - room + 1);
        String shown = skip == 0 ? text : dropped(text, skip);
        grid.put(0, row, "> ", TextRole.PROMPT);
        grid.put(2, row, shown, TextRole.PROMPT, room + 1);
        routine(grid, shoot, row);
        grid.cursor(2 + cursor - skip, row);
        said(grid, shoot, row - saidRows, saidRows);
    }

    /** What the load routine asks stands on the empty prompt, where Enter answers it. */
    private static void routine(Grid grid, Session shoot, int row) {
        routine(shoot).ifPresent(it -> {
            int room = grid.columns() - 4;
            // Where to look goes before what is asked, and the count of the looks before that; the footer has the keys
            // in any case.
            String asked = it.question().substring(0, it.question().indexOf('?') + 1);
            String bare = asked.substring(asked.indexOf(": ") + 2);
            // The rating is what is to be confirmed; where the film is stands on the first line too.
            String shortest = bare.replaceFirst(" in [^,]*,", ",");
            for (String words :
                    List.of(it.question() + " Enter: yes, Esc: skip", it.question(), asked, bare, shortest)) {
                if (Width.of(words) <= room || words.equals(shortest)) {
                    grid.put(3, row, Width.cut(words, room), TextRole.PROMPT);
                    return;
                }
            }
        });
    }

    private static Optional<LoadChecks> routine(Session shoot) {
        boolean isFree = shoot.prompt().isEmpty()
                && shoot.question().isEmpty()
                && shoot.view().page() == Session.Page.SHOOT
                && shoot.view().sheet().isEmpty()
                && Guide.of(shoot).isEmpty();
        return isFree ? LoadChecks.of(shoot.shown()) : Optional.empty();
    }

    private static String dropped(String text, int columns) {
        int at = 0;
        int passed = 0;
        while (at < text.length() && passed < columns) {
            int end = at + Character.charCount(text.codePointAt(at));
            passed += Width.of(text.substring(at, end));
            at = end;
        }
        return text.substring(at);
    }

    private static void said(Grid grid, Session shoot, int row, int rows) {
        List<String> lines = shoot.prompt().lines();
        Optional<HelpList.Entry> entry = lines.isEmpty() ? Optional.empty() : HelpList.onEnter(shoot);
        Optional<Outcome> echo = entry.isPresent() ? Optional.empty() : shoot.echo();
        boolean fresh = shoot.lastAnswer().tone() == Session.Tone.REFUSAL
                || shoot.lastAnswer().tone() == Session.Tone.CHOICES;
        if (lines.isEmpty() && shoot.question().isPresent()) {
            // Another theme or view leaves the question open: so it stays on the screen, too.
            wrap(grid, row, rows, shoot.question().get().question(), TextRole.STRONG);
        } else if (entry.isPresent() && !fresh) {
            wrap(grid, row, rows, HelpList.words(entry.get(), shoot.view().topic()), TextRole.NORMAL);
        } else if (lines.size() > 1 && !fresh) {
            wrap(
                    grid,
                    row,
                    rows,
                    lines.size() + " lines: Enter runs them one after another, Esc drops them",
                    TextRole.STRONG);
        } else if (echo.isPresent() && !fresh) {
            if (echo.get() instanceof Outcome.Rejected refused) {
                wrap(grid, row, rows, "· " + refused.why(), TextRole.QUIET);
            } else if (echo.get() instanceof Outcome.NeedsConfirmation asked) {
                wrap(grid, row, rows, "Enter asks: " + asked.question(), TextRole.STRONG);
            } else if (echo.get() instanceof Outcome.NeedsRoll needs) {
                wrap(grid, row, rows, "Enter reads " + needs.roll() + " first", TextRole.QUIET);
            } else {
                Outcome.Accepted does = (Outcome.Accepted) echo.get();
                wrap(
                        grid,
                        row,
                        rows,
                        "Enter: " + does.answer().text() + remarks(does.answer().warnings()),
                        TextRole.NORMAL);
            }
        } else {
            TextRole look = switch (shoot.lastAnswer().tone()) {
                case QUIET -> TextRole.QUIET;
                case ANSWER -> TextRole.GOOD;
                case LARGE -> TextRole.READOUT;
                case QUESTION, CHOICES -> TextRole.STRONG;
                case REFUSAL -> TextRole.CAUTION;
            };
            String large = shoot.lastAnswer().tone() == Session.Tone.LARGE
                    ? shoot.shown()
                                    .cameraInHand()
                                    .map(it -> it.name().toUpperCase(Locale.ROOT))
                                    .orElse("")
                            + shoot.shown()
                                    .placeInHand()
                                    .flatMap(CameraPlace::back)
                                    .map(it -> " BACK " + it)
                                    .orElse("") + " ► "
                    : "";
            String mark = shoot.lastAnswer().tone() == Session.Tone.REFUSAL ? "! " : "";
            wrap(grid, row, rows, mark + large + shoot.lastAnswer().text(), look);
        }
    }

    private static String remarks(List<Warning> warnings) {
        return warnings.isEmpty()
                ? ""
                : " ("
                        + String.join(
                                ", ",
                                warnings.stream()
                                        .map(it -> it.code().toString())
                                        .toList()) + ")";
    }

    /** Writes words over so many rows, cut at blanks; the last row ends in … where something is left. */
    static void wrap(Grid grid, int row, int rows, String words, TextRole look) {
        String rest = words;
        int margin = margin(grid);
        for (int i = 0; i < rows && !rest.isEmpty(); i++) {
            int room = grid.columns() - 1 - margin;
            if (Width.of(rest) <= room || i == rows - 1) {
                grid.put(margin, row + i, Width.cut(rest, room), look);
                return;
            }
            int end = end(rest, room);
            grid.put(margin, row + i, rest.substring(0, end), look);
            rest = rest.substring(end).strip();
        }
    }

    /** Words cut at blanks into rows of so many columns. */
    static List<String> wrapped(String words, int room) {
        List<String> rows = new ArrayList<>();
        String rest = words;
        while (Width.of(rest) > Math.max(1, room)) {
            int end = Math.max(1, end(rest, Math.max(1, room)));
            rows.add(rest.substring(0, end));
            rest = rest.substring(end).strip();
        }
        rows.add(rest);
        return rows;
    }

    /** Where the first row of words ends: at the last blank that fits. */
    private static int end(String rest, int room) {
        int end = 0;
        int at = 0;
        while (at < rest.length() && Width.of(rest.substring(0, at + 1)) <= room) {
            if (rest.charAt(at) == ' ') {
                end = at;
            }
            at++;
        }
        return end == 0 ? at : end;
    }

    /**
     * The keys that work now, and do something where everything of a list is seen ({@code scrolls} is false) or is not.
     */
    static void footer(Grid grid, Session shoot, int row, boolean scrolls) {
        Footer footer = new Footer();
        boolean isAsked = shoot.question().isPresent() && shoot.prompt().isEmpty();
        if (isAsked) {
            footer.answer("yes", "does it");
            footer.answer("Esc", "no");
        }
        boolean isLook = routine(shoot).isPresent();
        for (KeyHelp key : KeyHelp.now(shoot)) {
            String does = shortly(key, shoot, scrolls, isLook);
            boolean isWayBack = key.key().equals("Esc")
                    && shoot.prompt().isEmpty()
                    && (shoot.view().page() != Session.Page.SHOOT
                            || !shoot.view().sheet().isEmpty());
            boolean isAnswer = (key.key().equals("Esc") || key.key().equals("Enter"))
                    && shoot.view().chosen() < 0
                    && isLook;
            if (isAsked && key.key().equals("Esc")) {
                continue;
            }
            if (!does.isEmpty() && isAnswer) {
                footer.answer(key.key(), does);
            } else if (!does.isEmpty() && isWayBack) {
                footer.first(key.key(), does);
            } else if (!does.isEmpty()) {
                footer.then(key.key(), does);
            }
        }
        footer.draw(grid, row, margin(grid));
    }

    private static String shortly(KeyHelp key, Session shoot, boolean scrolls, boolean isLook) {
        Session.Page page = shoot.view().page();
        boolean shooting = page == Session.Page.SHOOT;
        return switch (key.key()) {
            case "Space" -> shooting ? "same again" : scrolls ? "page" : "";
            case "Enter" ->
                shoot.prompt().isEmpty()
                        ? shoot.view().chosen() >= 0
                                ? shooting && PickList.of(shoot).rows().isEmpty() ? "set" : "do it"
                                : isLook ? "yes" : ""
                        : "do it";
            case "Tab" -> shoot.prompt().isEmpty() ? "camera" : "complete";
            case "Down" -> shooting || page == Session.Page.HELP ? "choose" : scrolls ? "scroll" : "";
            case "Ctrl-Z" -> "undo";
            case "Esc" ->
                !shoot.prompt().isEmpty()
                        ? "clear"
                        : !shooting || !shoot.view().sheet().isEmpty()
                                ? shoot.view().previous() == Session.Page.SHOOT ? "shoot" : "back"
                                : GuidePanel.isShown(shoot) ? "end guide" : isLook ? "skip" : "";
            case "F1" -> shoot.prompt().isEmpty() || page == Session.Page.HELP ? "" : "help";
            case "?" -> page == Session.Page.HELP ? "" : "help";
            case "F2" -> page == Session.Page.FRAMES ? "" : "frames";
            case "F3" -> page == Session.Page.ROLLS ? "" : "rolls";
            case "F4" -> page == Session.Page.PLAN ? "" : "plan";
            case "F5" -> page == Session.Page.BAG ? "" : "bag";
            case "F9" -> "theme";
            case "F10" -> "big";
            case "PgUp" -> shooting ? "earlier" : "";
            default -> "";
        };
    }

    /** The state of the disk, where it is not simply well: NOT SAVED in words, what it is, why, and what to do. */
    static boolean disk(Grid grid, Session shoot, int row) {
        if (!isNotSaved(shoot)) {
            return false;
        }
        String why = shoot.saveError().orElseThrow();
        String briefly = why.split("[;,.(] | \\(", 2)[0];
        String all = notSaved(shoot, true);
        String first = notSaved(shoot, false);
        grid.fill(row, TextRole.ALARM);
        alarm(
                grid,
                row,
                List.of(
                        all + ": " + why + ". Held, and tried again at each key",
                        all + ": " + why + "; held",
                        all + ": " + why,
                        first + ": " + why,
                        all + ": " + briefly,
                        first + ": " + briefly));
        return true;
    }

    /** The same over two rows, where one is too narrow for the reason. */
    static void diskInTwo(Grid grid, Session shoot, int row) {
        grid.fill(row, TextRole.ALARM);
        grid.fill(row + 1, TextRole.ALARM);
        alarm(grid, row, List.of(notSaved(shoot, true), notSaved(shoot, false)));
        alarm(
                grid,
                row + 1,
                List.of(
                        shoot.saveError().orElseThrow() + "; held",
                        shoot.saveError().orElseThrow()));
    }

    /** The first of these that fits, else the last. */
    private static void alarm(Grid grid, int row, List<String> words) {
        int room = grid.columns() - margin(grid);
        String fits =
                words.stream().filter(it -> Width.of(it) < room).findFirst().orElse(words.get(words.size() - 1));
        grid.put(margin(grid), row, Width.cut(fits, room), TextRole.ALARM);
    }

    static boolean isNotSaved(Session shoot) {
        return shoot.saveError().isPresent() && !shoot.waiting().isEmpty();
    }

    /** What waits for the disk: the first by name, the others as a number. */
    private static String notSaved(Session shoot, boolean withMore) {
        int more = shoot.waiting().size() - 1;
        return "NOT SAVED: " + shoot.waiting().get(0).name() + (withMore && more > 0 ? ", and " + more + " more" : "");
    }

    /**
     * The state of the disk, else the warnings that came with the last answer; answers whether there was anything to
     * say.
     */
    static boolean warnings(Grid grid, Session shoot, int row) {
        if (disk(grid, shoot, row)) {
            return true;
        }
        int room = grid.columns() - 1 - margin(grid);
        if (shoot.settings().readOnly().isPresent()) {
            grid.put(
                    margin(grid),
                    row,
                    Width.cut("READ ONLY: " + shoot.settings().readOnly().get(), room),
                    TextRole.CAUTION);
        } else if (!shoot.lastAnswer().warnings().isEmpty()) {
            Warning first = shoot.lastAnswer().warnings().get(0);
            List<String> rest = shoot.lastAnswer().warnings().stream()
                    .skip(1)
                    .map(it -> it.code().standing())
                    .toList();
            String also = rest.isEmpty() ? "" : ", also " + String.join(", ", rest);
            String more = Width.of(also) <= room / 2 ? also : ", and " + rest.size() + " more";
            grid.put(
                    margin(grid),
                    row,
                    Width.cut(first.code().standing() + ": " + first.text(), room - Width.of(more)) + more,
                    TextRole.CAUTION);
        } else if (!shoot.waiting().isEmpty()) {
            grid.put(margin(grid), row, "saving …", TextRole.QUIET);
        } else {
            return false;
        }
        return true;
    }

    /** The standing warnings as words. */
    static String standing(Session shoot) {
        List<String> words =
                new ArrayList<>(RatingCommand.card(shoot.shown()).stream().toList());
        StatusText.standing(shoot.shown(), shoot.now()).forEach(it -> words.add(it.standing()));
        return String.join(" · ", words);
    }

    /**
     * A frame's number, setting and what there is to say of it; with details also its warnings, and its light beside
     * the time.
     */
    static String frame(Roll roll, Frame frame, boolean withTime, Optional<List<Warning>> details) {
        Setting setting = frame.exposure().setting();
        StringBuilder words = new StringBuilder();
        // Beside the suggestions of a narrow screen each column that is saved is one of the note.
        int tight = withTime || details.isPresent() ? 0 : 1;
        words.append(Width.padLeft(Integer.toString(frame.number()), 3)).append(" ".repeat(2 - tight));
        if (withTime) {
            words.append(frame.exposure().at().map(ClockText::clock).orElse("  –  "))
                    .append("  ");
        }
        String pair = Width.pad(setting.aperture().map(Object::toString).orElse("–"), 7 - tight)
                + Width.pad(setting.time().map(Object::toString).orElse("–"), 7 - tight);
        OptionalDouble error = ExposureResult.of(roll, frame).errorStops();
        String judged = error.isPresent()
                ? Stops.error(error.getAsDouble())
                : frame.kind() == Frame.Kind.EXPOSED ? "" : frame.kind().toString();
        boolean isSet = setting.aperture().isPresent() || frame.kind() == Frame.Kind.EXPOSED;
        // With flash nothing is judged: there the note begins where the judgement would.
        int wide = tight > 0 && isSet && judged.isEmpty() ? 13 : 26 - 3 * tight;
        words.append(Width.pad((isSet ? pair : " ".repeat(14 - 2 * tight)) + " " + judged, wide));
        if (details.isPresent()) {
            words.append(
                    withTime
                            ? Width.pad(
                                    frame.exposure()
                                            .light()
                                            .map(it -> ev(it.ev100().stops()))
                                            .orElse(""),
                                    9)
                            : "");
            words.append(
                    details.get().isEmpty()
                            ? ""
                            : String.join(
                                            " ",
                                            details.get().stream()
                                                    .map(it -> it.code().toString())
                                                    .toList()) + "  ");
        }
        words.append(error.isPresent() && frame.kind() == Frame.Kind.LOST ? "lost " : "");
        words.append(frame.further().isEmpty() ? "" : "×" + (frame.further().size() + 1) + " ");
        // Eleven stops under fill their column.
        frame.was()
                .ifPresent(it -> words.append(words.charAt(words.length() - 1) == ' ' ? "" : " ")
                        .append("(was ")
                        .append(it)
                        .append(") "));
        frame.note().ifPresent(words::append);
        return words.toString();
    }

    /** The names of the columns of the suggestions. */
    static final String SUGGESTION_HEAD = "  to set        error     over box";

    /**
     * A suggestion as a row of the list: pair, error, stops above box speed, what speaks against it. Brackets hold the
     * highlighted pair.
     */
    static String suggestion(Suggestion row, boolean best, boolean chosen) {
        String time = row.time().map(Object::toString).orElse("–") + (chosen ? "]" : "");
        String error =
                row.errorStops().isPresent() ? Stops.error(row.errorStops().getAsDouble()) : "";
        String sum = row.overBoxStops().isPresent() ? boxes(row.overBoxStops().getAsDouble()) : "";
        String why =
                row.warnings().isEmpty() ? "" : shortly(row.warnings().get(0).code());
        return (best ? "►" : " ")
                + (chosen ? "[" : " ")
                + Width.pad(row.aperture().toString(), 6)
                + Width.pad(Width.pad(time, 7) + " " + error, 18)
                + Width.pad(sum, sum.length() > 4 ? 10 : 5)
                + why;
    }

    /** The same with what is sharp, where a distance is known. */
    static String suggestionWithDepth(Suggestion row, boolean best, boolean chosen) {
        return Width.pad(suggestion(row, best, chosen), 46)
                + row.depth().map(StatusText::depth).orElse("");
    }

    private static String boxes(double overBox) {
        return overBox > -0.05 ? Stops.tenths(overBox) : Stops.tenths(overBox) + " under";
    }

    private static String shortly(Warning.Code code) {
        return switch (code) {
            case OUT_OF_RANGE -> "beyond dial";
            case SYNC_SPEED -> "sync";
            case RECIPROCITY_BEYOND -> "past table";
            default -> code.toString();
        };
    }

    /** Stops above or below box speed without a sign: {@code 1.1 box} reads one way only. */
    static String signless(double stops) {
        String tenths = Stops.tenths(stops);
        return tenths.equals("0.0") ? "at box" : tenths + (stops > 0 ? " over" : " under");
    }

    /**
     * The sum in words: stops above box speed, and the habits that it is made of. What adds nothing is left out; where
     * room is short the way of reading goes first.
     */
    static Optional<String> sum(ShootState s, int room) {
        OptionalDouble error = StatusText.errorInHand(s);
        if (error.isEmpty() || s.rollInHand().isEmpty()) {
            return Optional.empty();
        }
        Roll roll = s.rollInHand().get();
        double rating = roll.film().stock().boxSpeed().stopsOver(roll.film().index());
        double bias = s.inHand().setting().biasStops();
        double sum = ExposureBar.sum(s).orElseThrow();
        List<String> parts = new ArrayList<>();
        part("rating", rating, parts);
        part("bias", bias, parts);
        part("error", error.getAsDouble(), parts);
        String text = signless(sum)
                + (Stops.tenths(sum).equals("0.0") ? "" : " box")
                + (parts.isEmpty() ? "" : ": " + String.join(", ", parts));
        String habit = s.inHand().setting().flash()
                ? ""
                : s.day()
                        .light()
                        .flatMap(StatusText::habit)
                        .map(it -> (parts.isEmpty() ? ": " : ", ") + it)
                        .orElse("");
        String fits = Width.of(text + habit) <= room ? text + habit : text;
        return Optional.of(Width.of(fits) <= room ? fits : fits.replace(",", ""));
    }

    private static void part(String name, double stops, List<String> into) {
        String tenths = Stops.tenths(stops);
        if (!tenths.equals("0.0")) {
            into.add(name + " " + tenths + (stops > 0 ? "" : " less"));
        }
    }

    /** A short line for a camera or back that is not in hand: {@code 35 · bw400 EI 400 · 5 left}. */
    static List<String> others(Session shoot) {
        return others(shoot, true);
    }

    /** The same, or without the index and the age of the roll, for a narrow screen. */
    static List<String> others(Session shoot, boolean whole) {
        ShootState s = shoot.shown();
        List<String> lines = new ArrayList<>();
        for (CameraPlace place : s.placesInUse()) {
            if (!s.placeInHand().equals(Optional.of(place))) {
                lines.add(place + " · "
                        + s.rollIn(place)
                                .map(it -> it.film().stock().key()
                                        + (whole ? " EI " + it.film().index() : "") + " · " + StatusText.leftWords(it)
                                        + age(it, shoot)
                                                .filter(age -> whole)
                                                .map(age -> " · " + age)
                                                .orElse(""))
                                .orElse("no film"));
            }
        }
        return lines;
    }

    /** The same with the place and what is left there alone. */
    static List<String> left(Session shoot) {
        ShootState s = shoot.shown();
        return s.placesInUse().stream()
                .filter(it -> !s.placeInHand().equals(Optional.of(it)))
                .map(it -> it + " · " + s.rollIn(it).map(StatusText::leftWords).orElse("no film"))
                .toList();
    }

    /** Since when a roll is in, from the second day on. */
    static Optional<String> age(Roll roll, Session shoot) {
        LocalDate loaded = roll.loadedAt().toLocalDate();
        long days = Duration.between(
                        loaded.atStartOfDay(), shoot.now().toLocalDate().atStartOfDay())
                .toDays();
        return days < 1
                ? Optional.empty()
                : Optional.of("in since " + loaded + (days == 1 ? ", yesterday" : ", " + days + " days"));
    }

    static String cameraWords(Camera camera, ShootState s) {
        return words(camera.name(), camera, s);
    }

    /** The same with the key that is typed for it, where the name is too long to leave room for back and lens. */
    static String briefly(Camera camera, ShootState s) {
        return words(camera.key(), camera, s);
    }

    private static String words(String name, Camera camera, ShootState s) {
        return name
                + s.placeInHand()
                        .flatMap(CameraPlace::back)
                        .map(it -> ", back " + it)
                        .orElse("")
                + s.inHand(camera).setting().lens().map(it -> " · " + it.name()).orElse("");
    }

    static String ev(double stops) {
        return "EV " + Plain.decimals(stops, 1);
    }
}
