package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import takeup.action.Choice;
import takeup.action.Field;
import takeup.action.Menu;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.panel.Layout;
import takeup.session.Session;
import takeup.text.Width;

/** What can be done, to be picked: each row with the words that it types. */
final class ActionsView {
    private ActionsView() {}

    static void draw(Session session, Grid grid, Menu menu) {
        List<ListLine> lines = new ArrayList<>();
        List<Choice> choices = menu.field().choices();
        int name = widest(choices);
        int typed = choices.stream().mapToInt(it -> Width.of(it.typed())).max().orElse(0);
        // Where both have no room the prompt alone shows what the highlighted row types.
        boolean hasTyped = 5 + name + 3 + Math.min(typed, 12) <= Layout.of(grid).room();
        boolean isOwn =
                menu.field().entry() == Field.Entry.WORDS && !menu.entered().isEmpty();
        for (int i = 0; i < choices.size(); i++) {
            boolean isChosen = i == menu.chosen() && !isOwn;
            TextRole role = isChosen ? TextRole.CHOSEN : TextRole.NORMAL;
            lines.add(new ListLine(
                    (isChosen ? "► " : "  ") + number(menu, i) + row(choices.get(i), hasTyped ? name : -1), role));
        }
        String what = "Enter takes it";
        if (menu.field().entry() == Field.Entry.WORDS) {
            what = choices.isEmpty() ? "type it, then Enter" : "type it, or pick one, then Enter";
            lines.add(new ListLine("", TextRole.NORMAL));
            lines.add(new ListLine("  Type the words.", TextRole.QUIET));
        }
        int room = Layout.of(grid).listRows();
        ListView.draw(session, grid, menu.field().title() + " · " + what, lines, Math.max(0, menu.chosen() - room / 2));
    }

    private static int widest(List<Choice> choices) {
        return choices.stream().mapToInt(it -> Width.of(it.name())).max().orElse(0);
    }

    private static String number(Menu menu, int row) {
        boolean isNumbered = menu.field().entry() == Field.Entry.NUMBERED;
        return isNumbered && row < 9 ? (row + 1) + "  " : isNumbered ? "   " : "";
    }

    /** What it is, and what it types; one of the two where there is no other, or no room. */
    private static String row(Choice choice, int name) {
        if (name < 0 && !choice.name().isEmpty()) {
            return choice.name();
        }
        if (choice.name().isEmpty() || choice.typed().isEmpty()) {
            return choice.typed() + choice.name();
        }
        return Width.pad(choice.name(), name + 3) + choice.typed();
    }
}
