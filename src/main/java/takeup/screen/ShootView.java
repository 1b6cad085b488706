package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import takeup.advice.NextMoment;
import takeup.command.RatingCommand;
import takeup.day.BulbTimer;
import takeup.exposure.ExposureTime;
import takeup.exposure.Stops;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Suggestion;
import takeup.kit.Warning;
import takeup.report.StatusText;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.session.PickList;
import takeup.session.Session;
import takeup.text.ClockText;
import takeup.text.Width;

/** The shoot screen: one roll's state at a glance, what to set, and the prompt. */
final class ShootView {
    private static final String APART = "     ";

    private final Session shoot;
    private final ShootState s;
    private final Grid grid;
    private final int columns;
    private final int rows;
    /** Columns left free at both sides. */
    private final int margin;

    private ShootView(Session shoot, Grid grid) {
        this.shoot = shoot;
        this.s = shoot.shown();
        this.grid = grid;
        this.columns = grid.columns();
        this.rows = grid.rows();
        this.margin = PromptBar.margin(grid);
    }

    static void draw(Session shoot, Grid grid) {
        ShootView view = new ShootView(shoot, grid);
        if (grid.columns() < 40 || grid.rows() < 12) {
            view.tiny();
        } else if (shoot.view().big()) {
            view.big();
        } else if (grid.columns() < 72 || grid.rows() < 22) {
            view.small();
        } else {
            view.full();
        }
    }

    /** What must be known in one line, or in two if there is room; a prompt if there is a second line. */
    private void tiny() {
        String left = (shoot.saveError().isPresent() ? "NOT SAVED " : "")
                + s.rollInHand().map(StatusText::leftWords).orElse("no film");
        String frame = s.rollInHand().map(it -> ", frame " + it.next()).orElse("");
        String pair = pair().map(it -> "  " + it).orElse("");
        boolean below = rows >= 4 && Width.of(left + frame + pair) > columns;
        boolean frameBelow = below && Width.of(left + frame) > columns;
        grid.put(
                0,
                0,
                Width.cut(left + (frameBelow ? "" : frame) + (below ? "" : pair), columns),
                shoot.saveError().isPresent() ? TextRole.ALARM : TextRole.READOUT);
        if (below) {
            grid.put(
                    0,
                    1,
                    Width.cut(((frameBelow ? frame.replace(", ", "") : "") + pair).strip(), columns),
                    TextRole.READOUT);
        }
        if (rows >= 5) {
            grid.put(0, below ? 2 : 1, Width.cut(PromptBar.standing(shoot), columns), TextRole.CAUTION);
        }
        if (rows >= 3) {
            PromptBar.prompt(grid, shoot, rows - 1, 1);
        } else if (rows == 2) {
            PromptBar.prompt(grid, shoot, 1, 0);
        }
    }

    private void big() {
        bar(0);
        Optional<Roll> roll = s.rollInHand();
        String number = roll.map(it -> Integer.toString(it.next())).orElse("-");
        int scale = Math.max(1, Math.min((rows - 8) / 5, (columns - 2) / Math.max(1, BigText.width(number, 1))));
        int top = rows < 14 ? 1 : 2;
        BigText.draw(
                grid, Math.max(0, (columns - BigText.width(number, scale)) / 2), top, number, scale, TextRole.READOUT);
        int row = Math.min(top + 1 + 5 * scale, rows - 6);
        String counted = roll.map(StatusText::leftWords).orElse("no film")
                + pair().map(it -> " · " + it).orElse("");
        // A pair that is cut, as 1/12 of 1/125, is another pair.
        String whole = roll.isPresent() ? "next frame · " + counted : counted;
        String left = Width.cut(Width.of(whole) <= columns ? whole : counted, columns);
        grid.put(Math.max(0, (columns - Width.of(left)) / 2), row, left, TextRole.STRONG);
        foot(2);
    }

    private void small() {
        String head =
                s.cameraInHand().map(it -> s.placeInHand().orElseThrow() + "").orElse("no camera");
        String tail = s.rollInHand()
                .map(it -> " EI " + it.film().index() + " · " + it.id())
                .orElse("");
        int room = columns - 6 - Width.of(head + " · " + tail);
        String film = s.rollInHand()
                .map(it -> " · "
                        + (room < 4 ? it.id() : Width.cut(it.film().stock().key(), room) + tail))
                .orElse("");
        grid.fill(0, TextRole.BAR);
        grid.put(0, 0, Width.cut(head + film, columns - 6), TextRole.BAR);
        grid.put(columns - 5, 0, ClockText.clock(shoot.now()), TextRole.BAR);
        boolean isNotSaved = PromptBar.isNotSaved(shoot);
        int bottom = rows - 5 - (isNotSaved ? 2 : PromptBar.warnings(grid, shoot, rows - 5) ? 1 : 0);
        if (isNotSaved) {
            PromptBar.diskInTwo(grid, shoot, rows - 6);
        }
        Optional<NextMoment> moment = NextMoment.of(s, shoot.now()).filter(it -> it.minutes() <= NextMoment.LEAD);
        if (moment.isPresent()) {
            moment(moment.get(), bottom--, columns);
        }
        if (s.rollInHand().isPresent()) {
            below(s.rollInHand().get(), smallCounter(s.rollInHand().get(), bottom), bottom);
        } else {
            // What the warning that just came says stands there already, and the guide needs the row.
            List<Warning.Code> said =
                    shoot.lastAnswer().warnings().stream().map(Warning::code).toList();
            String standing = said.equals(StatusText.standing(s, shoot.now())) ? "" : PromptBar.standing(shoot);
            grid.put(0, bottom, Width.cut(standing, columns), TextRole.CAUTION);
            GuidePanel.offer(grid, shoot, 1, bottom - (standing.isEmpty() ? 0 : 1));
        }
        PromptBar.prompt(grid, shoot, rows - 2, 2);
        PromptBar.footer(grid, shoot, rows - 1, false);
    }

    /** The counter with the pair beside it, and the words for all that is not neutral; answers the row after them. */
    private int smallCounter(Roll roll, int bottom) {
        String number = Integer.toString(roll.next());
        BigText.draw(grid, 0, 1, number, 1, TextRole.READOUT);
        int column = BigText.width(number, 1) + 2;
        grid.put(column, 1, "next frame", TextRole.LABEL);
        grid.put(column, 2, StatusText.leftWords(roll), TextRole.READOUT);
        Optional<BulbTimer> timer = StatusText.timer(s);
        boolean setsItself = s.cameraInHand().map(Camera::isAutomatic).orElse(false);
        String pair = timer.filter(it -> it.targetSeconds().isEmpty())
                .map(it -> StatusText.seconds(it.elapsed(shoot.now())))
                .orElseGet(() -> setsItself ? "sets itself" : pair().orElse("nothing set"));
        grid.put(column, 3, pair, TextRole.READOUT);
        // The error is that of the setting in hand: while the timer runs, or where the camera sets itself, it would be
        // no word on this frame.
        String below = timer.map(it -> timerWords(it).replaceFirst("^of [^;]*; ", ""))
                .orElseGet(() -> setsItself ? "" : errorWords());
        grid.put(column, 4, Width.cut(below, columns - column), timer.isPresent() ? TextRole.STRONG : TextRole.NORMAL);
        int row = 5;
        int at = column;
        for (Word word : words()) {
            if (at == column && row == 5 && column + Width.of(word.text) > columns && bottom > 5) {
                row++;
                at = 0;
            }
            boolean isFirst = at == column && row == 5;
            int from = isFirst || at == 0 ? at : at + 3;
            if (from + Width.of(word.text) > columns && !isFirst && row == bottom) {
                grid.put(Math.min(columns - 1, at + 1), row, "…", TextRole.STRONG);
                return row + 1;
            }
            if (from + Width.of(word.text) > columns && !isFirst) {
                row++;
                from = 0;
            } else if (from > at) {
                grid.put(at, row, " · ", TextRole.QUIET);
            }
            at = grid.put(from, row, Width.cut(word.text, columns - from), word.look);
        }
        return row + 1;
    }

    /** The strip where two rows are free for it, then the guide and the other cameras. */
    private void below(Roll roll, int first, int bottom) {
        List<String> others = PromptBar.others(shoot);
        List<String> briefly = PromptBar.others(shoot, false);
        List<String> briefest = PromptBar.left(shoot);
        int wanted = (others.isEmpty() ? 0 : 1) + (GuidePanel.isShown(shoot) ? 1 : 0);
        int row = first;
        if (bottom - row + 1 - wanted >= 2) {
            new FilmStrip(grid, roll, 0, row, 1, columns).draw();
            row += 2;
        }
        row += row <= bottom ? GuidePanel.line(grid, shoot, row) : 0;
        for (int i = 0; i < others.size() && row <= bottom; i++, row++) {
            String more = row == bottom && i < others.size() - 1 ? " · " + (others.size() - 1 - i) + " more" : "";
            String fits = Stream.of(others.get(i), briefly.get(i))
                    .filter(it -> Width.of(it + more) <= columns)
                    .findFirst()
                    .orElse(briefest.get(i));
            grid.put(0, row, Width.cut(fits, columns - Width.of(more)) + more, TextRole.QUIET);
        }
    }

    private void full() {
        bar(0);
        boolean airy = columns >= 96 && rows >= 28;
        boolean grand = columns >= 112 && rows >= 36;
        int top = head(grand ? 2 : 1) + (airy ? 1 : 0);
        Optional<Roll> roll = s.rollInHand();
        if (roll.isEmpty()) {
            Optional<NextMoment> moment = NextMoment.of(s, shoot.now());
            GuidePanel.offer(grid, shoot, top, rows - top - (moment.isPresent() ? 7 : 6));
            moment.ifPresent(it -> moment(it, rows - 6, columns));
            foot(2);
            return;
        }
        int scale = !grand ? 1 : rows >= 52 && columns >= 160 ? 3 : 2;
        int row = counter(roll.get(), top, scale, airy) + (airy ? 1 : 0);
        if (grand && rows >= 38) {
            row++;
        }
        FilmStrip strip = new FilmStrip(grid, roll.get(), margin, row, grand ? 3 : 2, columns - 2 * margin);
        if (grand && rows >= 38) {
            strip.upperRebate();
        }
        strip.draw();
        row += (grand ? 3 : 2) + (airy ? 2 : 1);
        List<String> others = others(grand ? 4 : 2);
        int end = rows - 5 - others.size() - (grand ? 1 : 0);
        Optional<NextMoment> moment = NextMoment.of(s, shoot.now());
        moment.ifPresent(it -> moment(it, end - 1, columns));
        int lists = end - (grand ? 1 : 0) - (moment.isPresent() ? 1 : 0);
        if (PickList.of(shoot).rows().isEmpty()) {
            lists(roll.get(), row, lists);
        } else {
            GuidePanel.offer(grid, shoot, row, lists - row);
        }
        for (int i = 0; i < others.size(); i++) {
            grid.put(margin, end + i, Width.cut(others.get(i), columns - margin), TextRole.LABEL);
        }
        foot(2);
    }

    /** The next key moment: the one thing to do about it, else its countdown. */
    private void moment(NextMoment moment, int row, int room) {
        String line = "► " + moment.line();
        String must = moment.moment().must() && !moment.recommendation().isEmpty() ? " · MUST" : "";
        grid.put(
                margin,
                row,
                Width.cut(Width.of(line + must) <= room - margin ? line + must : line, room - margin),
                moment.isUrgent() ? TextRole.CAUTION : TextRole.STRONG);
    }

    /** The other cameras and backs, as many side by side as fit; what finds no room on so many lines is counted. */
    private List<String> others(int most) {
        List<String> rest = new ArrayList<>(PromptBar.others(shoot));
        List<String> lines = new ArrayList<>();
        while (!rest.isEmpty() && lines.size() < most) {
            boolean isLast = lines.size() == most - 1;
            String line = rest.remove(0);
            while (!rest.isEmpty()
                    && Width.of(line + APART + rest.get(0) + (isLast ? more(rest.size() - 1) : ""))
                            < columns - 2 * margin) {
                line += APART + rest.remove(0);
            }
            lines.add(line + (isLast ? more(rest.size()) : ""));
        }
        return lines;
    }

    private static String more(int count) {
        return count > 0 ? "   and " + count + " more" : "";
    }

    private void foot(int saidRows) {
        PromptBar.warnings(grid, shoot, rows - 3 - saidRows);
        PromptBar.prompt(grid, shoot, rows - 2, saidRows);
        PromptBar.footer(grid, shoot, rows - 1, false);
    }

    private void bar(int row) {
        grid.fill(row, TextRole.BAR);
        String camera = s.cameraInHand().map(it -> PromptBar.cameraWords(it, s)).orElse("no camera in hand");
        String right = s.rollInHand()
                        .map(it -> it.id()
                                + PromptBar.age(it, shoot).map(age -> " " + age).orElse("") + "  ")
                        .orElse("")
                + ClockText.clock(shoot.now());
        int room = columns - Width.of(right) - 2 - 2 * margin;
        grid.put(
                margin,
                row,
                Width.cut(
                        Width.of(camera) <= room
                                ? camera
                                : s.cameraInHand()
                                        .map(it -> PromptBar.briefly(it, s))
                                        .orElse(camera),
                        room),
                TextRole.BAR);
        grid.put(columns - margin - Width.of(right), row, right, TextRole.BAR);
    }

    /** Film, light, and the words for all that is not neutral or stands; answers the row after it. */
    private int head(int row) {
        Optional<Roll> roll = s.rollInHand();
        if (roll.isPresent()) {
            Roll it = roll.get();
            // A long name gives way to how the film is rated and developed: that costs money.
            int name =
                    Math.max(16, columns - 2 * margin - 2 - Width.of(it.film().developmentWords()));
            int column = grid.put(margin, row, Width.cut(it.film().stock().name(), name), TextRole.STRONG) + 2;
            grid.put(column, row, Width.cut(it.film().developmentWords(), columns - column), TextRole.NORMAL);
            String meter = "meter at " + it.film().index();
            column = grid.put(margin, row + 1, meter, TextRole.READOUT) + 2;
            String light = s.day()
                    .light()
                    .map(reading -> "light " + StatusText.light(reading, shoot.now()))
                    .orElse("no light reading today");
            grid.put(column, row + 1, Width.cut(light, columns - column), TextRole.NORMAL);
        } else if (s.day().light().isPresent()) {
            grid.put(
                    margin,
                    row + 1,
                    Width.cut("light " + StatusText.light(s.day().light().get(), shoot.now()), columns - margin),
                    TextRole.NORMAL);
        }
        return flow(words(), row + 2);
    }

    /** The words for all that stands or is not neutral. */
    private List<Word> words() {
        List<Word> words = new ArrayList<>();
        StatusText.standing(s, shoot.now()).forEach(it -> words.add(new Word(it.standing(), TextRole.CAUTION)));
        s.day()
                .paper()
                .ifPresent(it -> words.add(new Word("PAPER OF " + it.roll() + ", done ends it", TextRole.CAUTION)));
        RatingCommand.card(s).ifPresent(it -> words.add(new Word(it, TextRole.CAUTION)));
        StatusText.words(s.inHand()).forEach(it -> words.add(new Word(it, TextRole.STRONG)));
        StatusText.reciprocity(s).ifPresent(it -> words.add(new Word(it, TextRole.CAUTION)));
        return words;
    }

    /** A word and how it looks. */
    private record Word(String text, TextRole look) {}

    /** Puts words one after the other, on a further row where one is full; answers the row after them. */
    private int flow(List<Word> words, int first) {
        int row = first;
        int column = margin;
        for (Word word : words) {
            if (column > margin && column + 3 + Width.of(word.text) > columns - margin) {
                row++;
                column = margin;
            } else if (column > margin) {
                column = grid.put(column, row, " · ", TextRole.QUIET);
            }
            column = grid.put(column, row, Width.cut(word.text, columns - margin), word.look);
        }
        return row + 1;
    }

    /** The next frame, what is left, the pair to set and what it comes to; answers the row after it. */
    private int counter(Roll roll, int row, int scale, boolean airy) {
        String number = Integer.toString(roll.next());
        int left = margin == 0 ? 1 : margin;
        BigText.draw(grid, left, row, number, scale, TextRole.READOUT);
        int column = left + Math.max(BigText.width("00", scale), BigText.width(number, scale)) + 3;
        grid.put(column, row, "next frame", TextRole.LABEL);
        grid.put(column, row + 1, StatusText.leftWords(roll), TextRole.READOUT);
        grid.put(column, row + 2, "of " + roll.film().framesNominal(), TextRole.QUIET);
        if (roll.doubleAwaited()) {
            grid.put(column, row + 3, "DOUBLE", TextRole.CAUTION);
        }
        int right = column + Math.max(13, Width.of(StatusText.leftWords(roll)) + 3);
        int end = row + 5 * scale;
        int below = airy ? row + 6 : row + 3;
        Setting setting = s.inHand().setting();
        if (StatusText.timer(s).isPresent()) {
            large(StatusText.seconds(StatusText.timer(s).get().elapsed(shoot.now())), right, row, airy);
            grid.put(right, below, Width.cut(timerWords(StatusText.timer(s).get()), columns - right), TextRole.STRONG);
        } else if (s.cameraInHand().map(Camera::isAutomatic).orElse(false)) {
            grid.put(right, row, "sets itself", TextRole.LABEL);
            return end;
        } else if (setting.aperture().isEmpty() && setting.time().isEmpty()) {
            grid.put(right, row, "nothing set", TextRole.LABEL);
            String hint = shoot.choices().isEmpty()
                    ? "type " + StatusText.example(s) + ", or a reading: m 5.6 125"
                    : "Down and Enter take one below; or type " + StatusText.example(s);
            grid.put(right, row + 1, Width.cut(hint, columns - margin - right), TextRole.QUIET);
            return end;
        } else {
            large(
                    setting.aperture().map(Object::toString).orElse("-") + " "
                            + setting.time().map(Object::toString).orElse("-"),
                    right,
                    row,
                    airy);
            sum(roll, right, below, scale > 1);
        }
        return Math.max(end, below + 2);
    }

    /** What the setting comes to in this light: in words, as a bar, and what the sum is made of. */
    private void sum(Roll roll, int column, int row, boolean ruled) {
        int room = columns - margin - column;
        int end = grid.put(column, row, Width.cut(errorWords(), room), TextRole.STRONG);
        OptionalDouble sum = ExposureBar.sum(s);
        if (sum.isPresent() && ruled) {
            ExposureBar.of(roll, sum.getAsDouble()).ruler(grid, column, row + 1, room);
        } else if (sum.isPresent()) {
            ExposureBar.of(roll, sum.getAsDouble()).inline(grid, end + 2, row, columns - margin - end - 2);
        }
        PromptBar.sum(s, room)
                .ifPresent(it -> grid.put(column, row + (ruled ? 3 : 1), Width.cut(it, room), TextRole.NORMAL));
    }

    /** As large as fits: five rows, three, or plain letters in the middle of the three. */
    private void large(String text, int column, int row, boolean airy) {
        int room = columns - margin - column;
        boolean isDrawable = text.indexOf('+') < 0;
        if (airy && isDrawable && BigText.width(text, 1) <= room) {
            BigText.draw(grid, column, row, text, 1, TextRole.READOUT);
        } else if (isDrawable && BigText.smallWidth(text) <= room) {
            BigText.drawSmall(grid, column, row, text, TextRole.READOUT);
        } else {
            grid.put(column, row + 1, Width.cut(text.replace(" ", "  "), room), TextRole.READOUT);
        }
    }

    private String timerWords(BulbTimer timer) {
        if (timer.targetSeconds().isEmpty()) {
            return "timer runs; time stops it";
        }
        double target = timer.targetSeconds().getAsDouble();
        return (timer.elapsed(shoot.now()) >= target ? "CLOSE: " : "of ") + ExposureTime.words(target)
                + (timer.elapsed(shoot.now()) >= target ? " are over" : "") + "; time stops it";
    }

    private Optional<String> pair() {
        Optional<BulbTimer> timer = StatusText.timer(s);
        if (timer.isPresent()) {
            return Optional.of(StatusText.seconds(timer.get().elapsed(shoot.now()))
                    + timer.get().targetSeconds().stream()
                            .mapToObj(it -> " of " + ExposureTime.words(it))
                            .findFirst()
                            .orElse(", timer runs"));
        }
        Setting setting = s.inHand().setting();
        String pair = setting.aperture().map(Object::toString).orElse("") + " "
                + setting.time().map(Object::toString).orElse("");
        return pair.isBlank() ? Optional.empty() : Optional.of(pair.strip());
    }

    private String errorWords() {
        OptionalDouble error = StatusText.errorInHand(s);
        return error.isEmpty()
                ? s.day().light().isEmpty() ? "no reading to judge it by" : ""
                : Stops.error(error.getAsDouble()) + " for this light";
    }

    private void lists(Roll roll, int row, int end) {
        List<Suggestion> choices = shoot.choices();
        boolean both = columns >= 78;
        boolean depth =
                columns >= 100 && choices.stream().anyMatch(it -> it.depth().isPresent());
        int half = margin + (!choices.isEmpty() && both ? depth ? 65 : 44 : 0);
        int count = end - row - 1;
        if (!choices.isEmpty()) {
            grid.put(
                    margin,
                    row,
                    depth ? Width.pad(PromptBar.SUGGESTION_HEAD, 46) + "sharp" : PromptBar.SUGGESTION_HEAD,
                    TextRole.LABEL);
            int best = shoot.bestChoice();
            int middle = shoot.view().chosen() >= 0 ? shoot.view().chosen() : best;
            int first = Math.max(0, Math.min(choices.size() - count, middle - count / 2));
            for (int i = first; i < Math.min(choices.size(), first + count); i++) {
                boolean isChosen = i == shoot.view().chosen();
                String text = depth
                        ? PromptBar.suggestionWithDepth(choices.get(i), i == best, isChosen)
                        : PromptBar.suggestion(choices.get(i), i == best, isChosen);
                int width = both ? half - margin - 2 : columns;
                if (isChosen) {
                    grid.fill(margin, row + 1 + i - first, width, TextRole.CHOSEN);
                }
                grid.put(
                        margin,
                        row + 1 + i - first,
                        Width.cut(text, width),
                        isChosen ? TextRole.CHOSEN : i == best ? TextRole.STRONG : TextRole.NORMAL);
            }
        }
        if (both || choices.isEmpty()) {
            List<Frame> frames = roll.frames();
            grid.put(half, row, "newest frames", TextRole.LABEL);
            for (int i = 0; i < Math.min(count, frames.size()); i++) {
                Frame frame = frames.get(frames.size() - 1 - i);
                boolean withTime = half == margin || columns >= (depth ? 106 : 100);
                grid.put(
                        half,
                        row + 1 + i,
                        Width.cut(PromptBar.frame(roll, frame, withTime, Optional.empty()), columns - half - margin),
                        i == 0 ? TextRole.STRONG : TextRole.NORMAL);
            }
            if (frames.isEmpty() && GuidePanel.isShown(shoot)) {
                GuidePanel.frame(grid, shoot, half, row);
            } else if (frames.isEmpty()) {
                grid.put(half + 2, row + 1, "none yet", TextRole.QUIET);
            }
        }
    }
}
