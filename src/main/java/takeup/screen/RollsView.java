package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.panel.Layout;
import takeup.report.RollSummary;
import takeup.roll.Roll;
import takeup.session.Session;
import takeup.session.View;
import takeup.text.Plain;
import takeup.text.Width;

/**
 * All rolls, newest first: one line each where the words for the lab fit beside the rest, else with those words on the
 * line below.
 */
final class RollsView {
    private static final int INDENT = 7;
    /** Of what is told of a roll: {@code finished}. */
    private static final int USUAL_STATE = 10;

    private final List<RollSummary> rolls;
    private final View view;
    private final int room;
    private int state = USUAL_STATE;
    private int place;
    private int stock;
    private int development;

    private RollsView(List<RollSummary> rolls, View view, int room) {
        this.rolls = rolls;
        this.view = view;
        this.room = room;
        for (RollSummary roll : rolls) {
            state = Math.max(state, Width.of(state(roll)) + 2);
            place = Math.max(place, Width.of(roll.place().toString()) + 2);
            stock = Math.max(stock, Width.of(stock(roll)) + 2);
            development = Math.max(development, Width.of(roll.film().development()));
        }
    }

    static void draw(Session session, Grid grid) {
        RollsView view = new RollsView(
                session.allRolls(), session.view(), Layout.of(grid).room());
        List<ListLine> lines = view.lines();
        if (session.view().rolls().isEmpty()) {
            lines.add(new ListLine("reading the earlier rolls …", TextRole.QUIET));
        } else if (lines.isEmpty()) {
            lines.add(new ListLine("No roll yet. Try: cam 645, then load cn400", TextRole.QUIET));
        }
        ListView.drawPicked(session, grid, "Rolls, newest first", lines);
    }

    private List<ListLine> lines() {
        List<ListLine> lines = new ArrayList<>();
        if (!rolls.isEmpty()) {
            String start = Width.pad("roll", INDENT) + Width.pad("is", state) + Width.pad("in", place);
            String full = start + Width.pad("film", stock) + Width.pad("used", 7) + "loaded";
            lines.add(new ListLine(isWide() ? full : start + "used", TextRole.LABEL).continued());
        }
        for (int i = rolls.size() - 1; i >= 0; i--) {
            RollSummary roll = rolls.get(i);
            TextRole plain = roll.state() == Roll.State.OPEN ? TextRole.STRONG : TextRole.NORMAL;
            TextRole role = rolls.size() - 1 - i == view.chosen() ? TextRole.CHOSEN : plain;
            String start = Width.pad(roll.id().toString(), INDENT)
                    + Width.pad(state(roll), state)
                    + Width.pad(roll.place().toString(), place);
            String used = roll.framesUsed() + "/" + roll.film().framesNominal();
            String full = start
                    + Width.pad(stock(roll), stock)
                    + Width.pad(used, 7)
                    + roll.loadedAt().toLocalDate();
            boolean fits = isWide();
            if (Width.of(full) + 2 + development <= room) {
                lines.add(new ListLine(full + "  " + roll.film().development(), role));
            } else {
                lines.add(new ListLine(fits ? full : start + used, role));
                String rest = fits
                        ? roll.film().development()
                        : stock(roll) + ", " + roll.film().development() + ", "
                                + roll.loadedAt().toLocalDate();
                ListLine.wrapped(rest, INDENT, room, role == TextRole.STRONG ? TextRole.NORMAL : TextRole.LABEL)
                        .forEach(it -> lines.add(it.continued()));
            }
        }
        return lines;
    }

    /** A finished roll is where its order says. */
    private String state(RollSummary roll) {
        return view.ordered(roll.id())
                .filter(it -> roll.state() == Roll.State.FINISHED)
                .orElse(roll.state().toString());
    }

    /** Whether all columns have room, with a date at the end. */
    private boolean isWide() {
        return INDENT + state + place + stock + 7 + 10 <= room;
    }

    private static String stock(RollSummary roll) {
        return roll.film().stock() + " EI " + Plain.number(roll.film().exposureIndex());
    }
}
