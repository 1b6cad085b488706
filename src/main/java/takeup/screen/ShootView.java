package takeup.screen;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.day.Timer;
import takeup.exposure.ExposureTime;
import takeup.exposure.Stops;
import takeup.kit.Camera;
import takeup.kit.Suggestion;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.shoot.Offer;
import takeup.shoot.Shoot;
import takeup.shoot.Situation;
import takeup.shoot.State;

/** The shoot screen: one roll's state at a glance, what to set, and the prompt. */
final class ShootView {
    private final Shoot shoot;
    private final Situation s;
    private final Grid grid;
    private final int columns;
    private final int rows;

    private ShootView(Shoot shoot, Grid grid) {
        this.shoot = shoot;
        this.s = shoot.shown();
        this.grid = grid;
        this.columns = grid.columns();
        this.rows = grid.rows();
    }

    static void draw(Shoot shoot, Grid grid) {
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

    /** One line, and a prompt if there is a second one. */
    private void tiny() {
        String line = (shoot.trouble().isPresent() ? "NOT SAVED " : "")
                + s.roll().map(it -> State.leftWords(it) + ", frame " + it.next()).orElse("no film") + pair().map(it -> "  " + it).orElse("");
        grid.put(0, 0, Width.cut(line, columns), shoot.trouble().isPresent() ? Look.ALARM : Look.READOUT);
        if (rows >= 3) {
            Pieces.prompt(grid, shoot, rows - 1, 1);
        } else if (rows == 2) {
            Pieces.prompt(grid, shoot, 1, 0);
        }
    }

    private void big() {
        bar(0);
        Optional<Roll> roll = s.roll();
        String number = roll.map(it -> Integer.toString(it.next())).orElse("-");
        int high = Math.max(1, (rows - 8) / 5);
        int wide = Math.max(1, Math.min(high * 2, (columns - 2) / Math.max(1, BigText.width(number, 1))));
        high = Math.max(1, Math.min(high, (wide + 1) / 2));
        BigText.draw(grid, Math.max(0, (columns - BigText.width(number, wide)) / 2), 2, number, wide, high, Look.READOUT);
        int row = Math.min(3 + 5 * high, rows - 5);
        String left = roll.map(it -> "next frame · " + State.leftWords(it)).orElse("no film") + pair().map(it -> " · " + it).orElse("");
        grid.put(Math.max(0, (columns - Width.of(left)) / 2), row, left, Look.STRONG);
        foot(1);
    }

    private void small() {
        String head = s.camera().map(it -> s.place().orElseThrow() + "").orElse("no camera")
                + s.roll().map(it -> " · " + it.film().stock().key() + " EI " + it.film().index() + " · " + it.id()).orElse("");
        grid.fill(0, Look.BAR);
        grid.put(0, 0, Width.cut(head, columns - 6), Look.BAR);
        grid.put(columns - 5, 0, Pieces.clock(shoot.now()), Look.BAR);
        Optional<Roll> roll = s.roll();
        int row = 1;
        if (roll.isPresent()) {
            String number = Integer.toString(roll.get().next());
            BigText.draw(grid, 0, row, number, 2, 1, Look.READOUT);
            int column = BigText.width(number, 2) + 2;
            grid.put(column, row, "next frame", Look.LABEL);
            grid.put(column, row + 1, State.leftWords(roll.get()), Look.READOUT);
            grid.put(column, row + 2, pair().orElse("nothing set"), Look.READOUT);
            grid.put(column, row + 3, Width.cut(errorWords(), columns - column), Look.NORMAL);
            grid.put(column, row + 4, Width.cut(String.join(" ", State.words(s.inHand())), columns - column), Look.STRONG);
        } else {
            GuidePiece.offer(grid, shoot, row, 5);
        }
        row += 5;
        if (rows >= 14) {
            roll.ifPresent(it -> Pieces.strip(grid, it, 6, 1, columns));
            row += 2;
        }
        row += roll.isPresent() ? GuidePiece.line(grid, shoot, row) : 0;
        List<String> others = Pieces.others(shoot);
        for (int i = 0; i < others.size() && row < rows - 5; i++, row++) {
            grid.put(0, row, Width.cut(others.get(i), columns), Look.QUIET);
        }
        String standing = Pieces.standing(shoot);
        grid.put(0, rows - 5, Width.cut(standing, columns), Look.CAUTION);
        Pieces.warnings(grid, shoot, rows - 4);
        Pieces.prompt(grid, shoot, rows - 2, 1);
        Pieces.footer(grid, shoot, rows - 1);
    }

    private void full() {
        bar(0);
        int words = head(1);
        boolean tall = rows >= 34 && columns >= 100;
        int high = tall ? 2 : 1;
        int top = words + (tall ? 2 : 0);
        Optional<Roll> roll = s.roll();
        if (roll.isEmpty()) {
            GuidePiece.offer(grid, shoot, top, rows - top - 6);
            foot(2);
            return;
        }
        counter(roll.get(), top, high);
        int row = top + 5 * high + (tall ? 2 : 0);
        int stripHigh = tall ? 3 : 2;
        Pieces.strip(grid, roll.get(), row, stripHigh, columns);
        row += stripHigh + (tall ? 2 : 1);
        List<String> others = others(tall ? 4 : 2);
        int end = rows - 5 - others.size() - (tall ? 1 : 0);
        if (Offer.of(shoot).rows().isEmpty()) {
            lists(roll.get(), row, end);
        } else {
            GuidePiece.offer(grid, shoot, row, end - row);
        }
        for (int i = 0; i < others.size(); i++) {
            grid.put(0, end + i, Width.cut(others.get(i), columns), Look.LABEL);
        }
        foot(2);
    }

    /** The other cameras and backs: side by side on one line where they fit, else a line each. */
    private List<String> others(int most) {
        List<String> all = Pieces.others(shoot);
        String together = String.join("     ", all);
        if (all.size() > 1 && Width.of(together) < columns) {
            return List.of(together);
        }
        if (all.size() <= most) {
            return all;
        }
        List<String> some = new java.util.ArrayList<>(all.subList(0, most));
        some.set(most - 1, some.get(most - 1) + "   and " + (all.size() - most) + " more");
        return some;
    }

    private void foot(int saidRows) {
        Pieces.warnings(grid, shoot, rows - 3 - saidRows);
        Pieces.prompt(grid, shoot, rows - 2, saidRows);
        Pieces.footer(grid, shoot, rows - 1);
    }

    private void bar(int row) {
        grid.fill(row, Look.BAR);
        String camera = s.camera().map(it -> Pieces.cameraWords(it, s)).orElse("no camera in hand");
        String right = s.roll().map(it -> it.id() + Pieces.age(it, shoot).map(age -> " " + age).orElse("") + "  ").orElse("") + Pieces.clock(shoot.now());
        grid.put(0, row, Width.cut(camera, columns - Width.of(right) - 2), Look.BAR);
        grid.put(columns - Width.of(right), row, right, Look.BAR);
    }

    /** Film, light, and the words for all that is not neutral or stands; answers the row after it. */
    private int head(int row) {
        Optional<Roll> roll = s.roll();
        if (roll.isPresent()) {
            Roll it = roll.get();
            int column = grid.put(0, row, it.film().stock().name(), Look.STRONG) + 2;
            grid.put(column, row, Width.cut(it.film().developmentWords(), columns - column), Look.NORMAL);
            String meter = "meter at " + it.film().index();
            column = grid.put(0, row + 1, meter, Look.READOUT) + 2;
            String light = s.day().light().map(reading -> "light " + State.light(reading, shoot.now())).orElse("no light reading today");
            grid.put(column, row + 1, Width.cut(light, columns - column), Look.NORMAL);
        } else if (s.day().light().isPresent()) {
            grid.put(0, row + 1, Width.cut("light " + State.light(s.day().light().get(), shoot.now()), columns), Look.NORMAL);
        }
        List<Word> words = new java.util.ArrayList<>();
        State.standing(s, shoot.now()).forEach(it -> words.add(new Word(it.standing(), Look.CAUTION)));
        State.words(s.inHand()).forEach(it -> words.add(new Word(it, Look.STRONG)));
        State.reciprocity(s).ifPresent(it -> words.add(new Word(it, Look.CAUTION)));
        return flow(words, row + 2);
    }

    /** A word and how it looks. */
    private record Word(String text, Look look) {
    }

    /** Puts words one after the other, on a further row where one is full; answers the row after them. */
    private int flow(List<Word> words, int first) {
        int row = first;
        int column = 0;
        for (Word word : words) {
            if (column > 0 && column + 3 + Width.of(word.text) > columns) {
                row++;
                column = 0;
            } else if (column > 0) {
                column = grid.put(column, row, " · ", Look.QUIET);
            }
            column = grid.put(column, row, Width.cut(word.text, columns), word.look);
        }
        return row + 1;
    }

    private void counter(Roll roll, int row, int high) {
        String number = Integer.toString(roll.next());
        int wide = 2 * high;
        BigText.draw(grid, 1, row, number, wide, high, Look.READOUT);
        int column = Math.max(BigText.width("00", wide), BigText.width(number, wide)) + 4;
        grid.put(column, row, "next frame", Look.LABEL);
        grid.put(column, row + 1, State.leftWords(roll), Look.READOUT);
        grid.put(column, row + 2, "of " + roll.film().framesNominal(), Look.QUIET);
        if (roll.doubleAwaited()) {
            grid.put(column, row + 3, "DOUBLE", Look.CAUTION);
        }
        int right = column + Math.max(14, Width.of(State.leftWords(roll)) + 2);
        Setting setting = s.inHand().setting();
        if (State.timer(s).isPresent()) {
            timer(State.timer(s).get(), right, row, high);
        } else if (s.camera().map(Camera::isAutomatic).orElse(false)) {
            grid.put(right, row, "sets itself", Look.LABEL);
        } else if (setting.aperture().isEmpty() && setting.time().isEmpty()) {
            grid.put(right, row, "nothing set", Look.LABEL);
            grid.put(right, row + 1, "type 4 125, or a reading: m 5.6 125", Look.QUIET);
        } else {
            String aperture = setting.aperture().map(Object::toString).orElse("-");
            String time = setting.time().map(Object::toString).orElse("-");
            String pair = aperture + " " + time;
            boolean fits = right + BigText.width(pair, high) <= columns && pair.indexOf('+') < 0;
            if (fits && high == 1) {
                BigText.drawSmall(grid, right, row, pair, Look.READOUT);
            } else if (fits) {
                BigText.draw(grid, right, row, pair, high, 1, Look.READOUT);
            } else {
                grid.put(right, row + 1, aperture + "  " + time, Look.READOUT);
            }
            int below = row + (fits && high > 1 ? 6 : 3);
            grid.put(right, below, Width.cut(errorWords(), columns - right), Look.STRONG);
            Pieces.sum(s, columns - right).ifPresent(it -> grid.put(right, below + 1, Width.cut(it, columns - right), Look.NORMAL));
        }
    }

    /** What the bulb timer shows, large, and when the bell rings. */
    private void timer(Timer timer, int column, int row, int high) {
        String elapsed = State.seconds(timer.elapsed(shoot.now()));
        if (column + BigText.width(elapsed, high) > columns) {
            grid.put(column, row + 1, elapsed, Look.READOUT);
        } else if (high == 1) {
            BigText.drawSmall(grid, column, row, elapsed, Look.READOUT);
        } else {
            BigText.draw(grid, column, row, elapsed, high, 1, Look.READOUT);
        }
        grid.put(column, row + (high > 1 ? 6 : 3), Width.cut(timerWords(timer), columns - column), Look.STRONG);
    }

    private String timerWords(Timer timer) {
        if (timer.targetSeconds().isEmpty()) {
            return "timer runs; time stops it";
        }
        double target = timer.targetSeconds().getAsDouble();
        return (timer.elapsed(shoot.now()) >= target ? "CLOSE: " : "of ") + ExposureTime.words(target) + (timer.elapsed(shoot.now()) >= target ? " are over" : "") + "; time stops it";
    }

    private Optional<String> pair() {
        Optional<Timer> timer = State.timer(s);
        if (timer.isPresent()) {
            return Optional.of(State.seconds(timer.get().elapsed(shoot.now())) + timer.get().targetSeconds().stream().mapToObj(it -> " of " + ExposureTime.words(it))
                    .findFirst().orElse(", timer runs"));
        }
        Setting setting = s.inHand().setting();
        String pair = setting.aperture().map(Object::toString).orElse("") + " " + setting.time().map(Object::toString).orElse("");
        return pair.isBlank() ? Optional.empty() : Optional.of(pair.strip());
    }

    private String errorWords() {
        OptionalDouble error = State.errorInHand(s);
        return error.isEmpty() ? s.day().light().isEmpty() ? "no reading to judge it by" : ""
                : Stops.error(error.getAsDouble()) + " for this light";
    }

    private void lists(Roll roll, int row, int end) {
        List<Suggestion> choices = shoot.choices();
        boolean both = columns >= 78;
        boolean depth = columns >= 100 && choices.stream().anyMatch(it -> it.depth().isPresent());
        int half = !choices.isEmpty() && both ? depth ? 64 : 44 : 0;
        int count = end - row - 1;
        if (!choices.isEmpty()) {
            grid.put(0, row, depth ? Width.pad(Pieces.SUGGESTION_HEAD, 45) + "sharp" : Pieces.SUGGESTION_HEAD, Look.LABEL);
            int best = shoot.bestChoice();
            int middle = shoot.view().chosen() >= 0 ? shoot.view().chosen() : best;
            int first = Math.max(0, Math.min(choices.size() - count, middle - count / 2));
            for (int i = first; i < Math.min(choices.size(), first + count); i++) {
                boolean isChosen = i == shoot.view().chosen();
                String text = depth ? Pieces.suggestionWithDepth(choices.get(i), i == best) : Pieces.suggestion(choices.get(i), i == best);
                int width = both ? half - 2 : columns;
                if (isChosen) {
                    grid.fill(0, row + 1 + i - first, width, Look.CHOSEN);
                }
                grid.put(0, row + 1 + i - first, Width.cut(text, width), isChosen ? Look.CHOSEN : i == best ? Look.STRONG : Look.NORMAL);
            }
        }
        if (both || choices.isEmpty()) {
            List<Frame> frames = roll.frames();
            grid.put(half, row, "newest frames", Look.LABEL);
            for (int i = 0; i < Math.min(count, frames.size()); i++) {
                Frame frame = frames.get(frames.size() - 1 - i);
                grid.put(half, row + 1 + i, Width.cut(Pieces.frame(roll, frame, columns >= 100 || half == 0, Optional.empty()), columns - half), i == 0 ? Look.STRONG : Look.NORMAL);
            }
            if (frames.isEmpty() && GuidePiece.isShown(shoot)) {
                GuidePiece.frame(grid, shoot, half, row);
            } else if (frames.isEmpty()) {
                grid.put(half + 2, row + 1, "none yet", Look.QUIET);
            }
        }
    }
}
