package takeup.session;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.action.Menu;
import takeup.command.ScreenAction.Sheet;
import takeup.report.RollSummary;
import takeup.roll.RollId;
import takeup.session.Session.Page;

/**
 * What is shown.
 *
 * @param page which view
 * @param previous the view that help is about, and that Esc goes back to from there
 * @param subject what of it is shown
 * @param scroll how far it is scrolled, in lines
 * @param chosen the highlighted suggestion; -1 if none is
 * @param theme the name of the theme
 * @param big whether the counter fills the screen
 * @param allRolls all rolls, once they were listed
 */
public record View(
        Page page,
        Page previous,
        Subject subject,
        int scroll,
        int chosen,
        String theme,
        boolean big,
        List<RollSummary> allRolls) {
    /**
     * What of a view is shown.
     *
     * @param word the word that help explains; empty for all of them
     * @param heldRolls the rolls that are in the photographer's hand at the end of the day, where they were named
     * @param sheet what lies over the shoot screen to be photographed
     * @param menu the actions to pick from
     */
    record Subject(Optional<String> word, Optional<Set<RollId>> heldRolls, Optional<Sheet> sheet, Optional<Menu> menu) {
        static final Subject ALL = new Subject(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    public View {
        allRolls = List.copyOf(allRolls);
    }

    static View first(String theme) {
        return new View(Page.SHOOT, Page.SHOOT, Subject.ALL, 0, -1, theme, false, List.of());
    }

    /** Another page, from its start. */
    View page(Page other) {
        boolean isOver = page == Page.HELP || page == Page.ACTIONS;
        Page under = isOver ? previous : page;
        Page from = other == Page.HELP || other == Page.ACTIONS ? under : Page.SHOOT;
        return new View(other, from, Subject.ALL, 0, -1, theme, big && other == Page.SHOOT, allRolls);
    }

    private View showing(Subject what) {
        return new View(page, previous, what, scroll, chosen, theme, big, allRolls);
    }

    /** Help on one word. */
    View explaining(String word) {
        return page(Page.HELP)
                .showing(new Subject(Optional.of(word), Optional.empty(), Optional.empty(), Optional.empty()));
    }

    /** The end of the day, with the rolls in the photographer's hand, where they were named. */
    View endingDay(Optional<Set<RollId>> heldRolls) {
        return page(Page.DAY_END).showing(new Subject(Optional.empty(), heldRolls, Optional.empty(), Optional.empty()));
    }

    /** Actions to pick from, over the view that they are of. */
    View offering(Menu menu) {
        Page under = page == Page.ACTIONS || page == Page.HELP ? previous : page;
        Subject subject = new Subject(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(menu));
        return new View(Page.ACTIONS, under, subject, 0, -1, theme, false, allRolls);
    }

    /** The actions to pick from, where they are shown. */
    public Optional<Menu> menu() {
        return subject.menu();
    }

    /** The shoot screen with a sheet over it. */
    View withSheet(Sheet sheet) {
        return page(Page.SHOOT)
                .big(false)
                .showing(new Subject(Optional.empty(), Optional.empty(), Optional.of(sheet), Optional.empty()));
    }

    /** The word that help explains; empty for all of them. */
    public Optional<String> helpWord() {
        return subject.word();
    }

    /** What lies over the shoot screen to be photographed. */
    public Optional<Sheet> sheet() {
        return subject.sheet();
    }

    View scrolledTo(int line) {
        return new View(page, previous, subject, line, chosen, theme, big, allRolls);
    }

    View chosen(int index) {
        return new View(page, previous, subject, scroll, index, theme, big, allRolls);
    }

    View theme(String name) {
        return new View(page, previous, subject, scroll, chosen, name, big, allRolls);
    }

    /** The shoot screen with the counter across the whole of it, or as always. */
    View big(boolean on) {
        return new View(Page.SHOOT, Page.SHOOT, Subject.ALL, 0, -1, theme, on, allRolls);
    }

    View listing(List<RollSummary> rolls) {
        return new View(page, previous, subject, scroll, chosen, theme, big, rolls);
    }
}
