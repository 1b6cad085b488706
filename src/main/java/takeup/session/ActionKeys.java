package takeup.session;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.action.ActionTable;
import takeup.action.Field;
import takeup.action.Menu;
import takeup.action.RowActions;
import takeup.day.FilmLot;
import takeup.day.KeyMoment;
import takeup.history.ShootState;
import takeup.message.Key;
import takeup.message.PendingLines.From;
import takeup.report.DayEnd;
import takeup.report.PlanTable;
import takeup.report.RollSummary;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.session.Session.Page;

/** Keys of the actions: what can be done now, or with a row of a list, picked instead of typed. */
final class ActionKeys {
    private ActionKeys() {}

    /** Shows what can be done: on the shoot screen at all, in a list with the highlighted row. */
    static Transition open(Session session) {
        ShootState s = session.afterPending().asOf(session.now());
        if (session.question().isPresent()) {
            Menu answers = ActionTable.answers(session.question().get().question());
            return Transition.to(session.with(session.view().offering(answers)));
        }
        if (session.view().page() == Page.ORDER) {
            return OrderFlow.enter(session);
        }
        LocalTime clock = session.now().toLocalTime();
        Optional<Menu> menu = switch (session.view().page()) {
            case FRAMES -> frame(s, row(session)).map(it -> RowActions.frame(s, it.number()));
            case ROLLS -> roll(session).map(it -> RowActions.roll(s, it.id(), it.state()));
            case PLAN ->
                Optional.of(moment(session)
                        .map(it -> RowActions.moment(it, clock))
                        .orElseGet(() -> RowActions.plan(clock)));
            case BAG ->
                Optional.of(lot(session)
                        .map(it -> RowActions.lot(s, it))
                        .or(() -> inFridge(session).map(it -> RowActions.inFridge(s, it)))
                        .orElseGet(() -> RowActions.bag(s)));
            case DAY_END ->
                entry(session).flatMap(DayEnd.RollEntry::roll).map(it -> RowActions.roll(s, it.id(), it.state()));
            case SHOOT, ORDER, FIND, HELP, ACTIONS -> Optional.empty();
        };
        Menu shown = menu.orElseGet(() -> ActionTable.menu(s, clock));
        return Transition.to(session.with(session.view().offering(shown)).saysNothing());
    }

    private static int row(Session session) {
        return Math.max(0, session.view().chosen());
    }

    private static Optional<Frame> frame(ShootState s, int row) {
        List<Frame> frames = s.rollInHand().map(Roll::frames).orElse(List.of());
        return row < frames.size() ? Optional.of(frames.get(frames.size() - 1 - row)) : Optional.empty();
    }

    private static Optional<RollSummary> roll(Session session) {
        List<RollSummary> rolls = session.allRolls();
        int row = row(session);
        return row < rolls.size() ? Optional.of(rolls.get(rolls.size() - 1 - row)) : Optional.empty();
    }

    private static Optional<FilmLot> lot(Session session) {
        List<Map.Entry<FilmLot, Integer>> lots = session.shown().day().bag().filled();
        return row(session) < lots.size() ? Optional.of(lots.get(row(session)).getKey()) : Optional.empty();
    }

    /** The fridge is listed below the bag. */
    private static Optional<FilmLot> inFridge(Session session) {
        int row = row(session) - session.shown().day().bag().filled().size();
        return session.shown().day().fridge().filled().stream()
                .skip(Math.max(0, row))
                .findFirst()
                .map(Map.Entry::getKey);
    }

    private static Optional<DayEnd.RollEntry> entry(Session session) {
        return session.dayEnd().inOrder().stream().skip(row(session)).findFirst();
    }

    private static Optional<KeyMoment> moment(Session session) {
        List<String> numbers = PlanTable.of(session.shown(), session.now()).stream()
                .map(PlanTable.Row::number)
                .filter(it -> !it.isEmpty())
                .toList();
        int row = row(session);
        return session.shown().day().plan().moments().stream()
                .filter(it -> row < numbers.size() && numbers.get(row).equals(Integer.toString(it.number())))
                .findFirst();
    }

    /** How many rows of a view can be highlighted; 0 for one that is only scrolled. */
    static int rows(Session session) {
        return switch (session.view().page()) {
            case FRAMES ->
                session.shown().rollInHand().map(it -> it.frames().size()).orElse(0);
            case ROLLS -> session.allRolls().size();
            case PLAN ->
                (int) PlanTable.of(session.shown(), session.now()).stream()
                        .filter(it -> !it.number().isEmpty())
                        .count();
            case ORDER -> OrderFlow.rows(session);
            case BAG ->
                session.shown().day().bag().filled().size()
                        + session.shown().day().fridge().filled().size();
            case DAY_END -> session.dayEnd().rolls().size();
            case SHOOT, FIND, HELP, ACTIONS -> 0;
        };
    }

    /** Moves the highlight of a list, to its ends at most. */
    static Session highlight(Session session, int by) {
        int from = session.view().chosen() < 0 && by > 0 ? -1 : row(session);
        View view = session.view().chosen(Math.max(0, Math.min(rows(session) - 1, from + by)));
        return session.with(view.scrolledTo(0));
    }

    private static Menu menu(Session session) {
        return session.view().menu().orElseThrow();
    }

    private static Session with(Session session, Menu menu) {
        return session.with(session.view().offering(menu));
    }

    static Session move(Session session, int by) {
        return with(session, menu(session).moved(by));
    }

    /** Takes the row, or does the line that has become whole. */
    static Transition enter(Session session) {
        Menu menu = menu(session);
        if (!menu.canEnter()) {
            return Transition.to(session.say(LastAnswer.Tone.REFUSAL, "type the words first; Esc goes back"));
        }
        Menu.Taken taken = menu.taken();
        return taken.next().isPresent()
                ? Transition.to(with(session, taken.next().get()))
                : run(session, taken.line());
    }

    private static Transition run(Session session, String line) {
        Session under = session.with(session.view().page(session.view().previous()));
        Session chosen = under.view().page() == Page.ORDER ? under : under.withoutChoice();
        return LineFlow.take(chosen.with(chosen.prompt().remembering(line)), From.PROMPT, List.of(line));
    }

    /** One step back; empty where there is none. */
    static Optional<Session> back(Session session) {
        return session.view().menu().flatMap(Menu::before).map(it -> with(session, it));
    }

    static Optional<String> whyNoStepBack(Session session) {
        boolean isFirst = session.view().menu().isEmpty()
                || menu(session).entered().isEmpty() && menu(session).before().isEmpty();
        return isFirst ? Optional.of("this is the first step: Esc goes back") : Optional.empty();
    }

    /** Takes back a character, or a step. */
    static Session erase(Session session) {
        return menu(session).entered().isEmpty()
                ? back(session).orElse(session)
                : with(session, menu(session).erased());
    }

    /** Whether a key is written into the actions, or from them on the prompt. */
    static boolean wants(Session session, Key key) {
        boolean isWritten = key.name() == Key.Name.CHARACTER || key.name() == Key.Name.PASTE;
        return isWritten
                && session.view().menu().isPresent()
                && session.prompt().isEmpty()
                && !key.text().isEmpty()
                && (menu(session).takes(key.text())
                        || !key.text().isBlank() && !key.text().equals("?"));
    }

    /** A character: a row by its number, part of what is asked, or the start of a line on the prompt. */
    static Transition typed(Session session, String text) {
        Menu menu = menu(session);
        if (menu.takes(text)) {
            Optional<Menu> row = menu.numbered(text);
            boolean isNumbered = menu.field().entry() == Field.Entry.NUMBERED;
            return row.isPresent()
                    ? enter(with(session, row.get()))
                    : Transition.to(isNumbered ? session : with(session, menu.typed(text)));
        }
        Session under = session.with(session.view().page(session.view().previous()));
        return Transition.to(PromptKeys.typed(under, text));
    }
}
