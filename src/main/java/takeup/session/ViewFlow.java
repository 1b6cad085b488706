package takeup.session;

import java.util.List;
import takeup.dispatch.ThemeCommand;
import takeup.message.Effect;
import takeup.report.DayEndText;
import takeup.report.NightBefore;
import takeup.report.NightBeforeText;
import takeup.report.PlanTable;
import takeup.session.Session.Page;

/** Which view is shown, and what part of it. */
final class ViewFlow {
    /** Fewer lines than the smallest window shows, so that a page skips nothing. */
    static final int PAGE_LINES = 6;

    private ViewFlow() {}

    static Transition show(Session session, Page page) {
        return listIfShown(session.with(session.view().page(page)));
    }

    /** A key shows its page, and pressed again goes back. */
    static Transition turnTo(Session session, Page page) {
        return show(session, session.view().page() == page ? session.view().previous() : page);
    }

    /** Asks for all rolls, or what an order is made from, where they are shown. */
    static Transition listIfShown(Session session) {
        Page page = session.view().page();
        if (page == Page.ORDER) {
            return Transition.to(session, new Effect.ReadOrders());
        }
        return page == Page.ROLLS || page == Page.DAY_END
                ? Transition.to(session, new Effect.ListRolls())
                : Transition.to(session);
    }

    /** The counter across the whole screen, or the shoot screen again. */
    static Session big(Session session) {
        return session.with(session.view().big(!session.view().big()));
    }

    /** A theme by its name, or the next one where it has none. */
    static Session theme(Session session, String name) {
        List<String> known = ThemeCommand.THEMES;
        String theme = name.isEmpty() ? known.get((known.indexOf(session.view().theme()) + 1) % known.size()) : name;
        return session.with(session.view().theme(theme)).say(LastAnswer.Tone.QUIET, "theme " + theme);
    }

    /** Down to the last line of the list at most, so that the way back up begins at once. */
    static Session scroll(Session session, int lines) {
        int to = Math.min(length(session) - 1, session.view().scroll() + lines);
        return session.with(session.view().scrolledTo(Math.max(0, to)));
    }

    private static int length(Session session) {
        return switch (session.view().page()) {
            case SHOOT, HELP, ACTIONS -> 0;
            case FRAMES ->
                session.saved()
                        .rollInHand()
                        .map(it -> 1 + it.counterChecks().size() + it.frames().size())
                        .orElse(0);
            case ROLLS -> session.allRolls().size();
            case FIND ->
                1 + session.view().found().map(it -> it.newest().size()).orElse(0);
            case ORDER -> OrderFlow.lines(session);
            case PLAN -> PlanTable.of(session.shown(), session.now()).size() + 4;
            case BAG ->
                NightBeforeText.sections(
                                NightBefore.of(session.shown(), session.now()), NightBeforeText.ClientName.HIDDEN)
                        .stream()
                        .mapToInt(it -> it.items().size() + 1)
                        .sum();
            case DAY_END ->
                DayEndText.sections(session.dayEnd()).stream()
                        .mapToInt(it -> it.items().size() + 1)
                        .sum();
        };
    }
}
