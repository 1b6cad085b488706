package takeup.session;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.action.Menu;
import takeup.action.Window;
import takeup.command.ScreenAction.Sheet;
import takeup.drafting.OrderDraft;
import takeup.message.Message;
import takeup.report.RollSummary;
import takeup.roll.RollId;
import takeup.search.FoundFrames;
import takeup.session.Session.Page;

/**
 * What is shown.
 *
 * @param page which view
 * @param previous the view that help is about, and that Esc goes back to from there
 * @param subject what of it is shown
 * @param place where in it one is
 * @param theme the name of the theme
 * @param big whether the counter fills the screen
 * @param window how large the window is
 * @param fromDisk what the disk was asked for, to be shown
 */
public record View(
        Page page,
        Page previous,
        Subject subject,
        Place place,
        String theme,
        boolean big,
        Window window,
        FromDisk fromDisk) {
    /**
     * Where in a view one is.
     *
     * @param scroll how far it is scrolled, in lines
     * @param chosen the highlighted suggestion; -1 if none is
     */
    record Place(int scroll, int chosen) {
        static final Place START = new Place(0, -1);
    }

    /**
     * What of a view is shown.
     *
     * @param word the word that help explains; empty for all of them
     * @param heldRolls the rolls that are in the photographer's hand at the end of the day, where they were named
     * @param sheet what lies over the shoot screen to be photographed
     * @param menu the actions to pick from
     * @param folded the sections of help of which the title alone is shown
     */
    record Subject(
            Optional<String> word,
            Optional<Set<RollId>> heldRolls,
            Optional<Sheet> sheet,
            Optional<Menu> menu,
            Set<String> folded) {
        static final Subject ALL =
                new Subject(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Set.of());
    }

    /**
     * What the disk was asked for.
     *
     * @param listed all rolls; empty until they were listed
     * @param draft the lab order that is made; empty until what it is made from was read
     * @param found the frames that were looked for last
     */
    record FromDisk(Optional<Message.Listed> listed, Optional<OrderDraft> draft, Optional<FoundFrames> found) {
        static final FromDisk NOTHING = new FromDisk(Optional.empty(), Optional.empty(), Optional.empty());
    }

    static View first(String theme) {
        return new View(Page.SHOOT, Page.SHOOT, Subject.ALL, Place.START, theme, false, Window.USUAL, FromDisk.NOTHING);
    }

    /** Another page, from its start. */
    View page(Page other) {
        boolean isOver = page == Page.HELP || page == Page.ACTIONS;
        Page under = isOver ? previous : page;
        Page from = other == Page.HELP || other == Page.ACTIONS ? under : Page.SHOOT;
        // An order is gone through row by row: the highlight waits under what a row asks.
        int kept = other == Page.ORDER && page == Page.ACTIONS ? chosen() : first(other);
        return new View(
                other, from, Subject.ALL, new Place(0, kept), theme, big && other == Page.SHOOT, window, fromDisk);
    }

    /** The row of a page that is highlighted before any arrow: where Enter acts on a row, the first; else none. */
    private static int first(Page page) {
        return switch (page) {
            case FRAMES, ROLLS, PLAN, BAG, DAY_END, ORDER -> 0;
            case SHOOT, FIND, HELP, ACTIONS -> -1;
        };
    }

    private View showing(Subject what) {
        return new View(page, previous, what, place, theme, big, window, fromDisk);
    }

    /** Help on one word. */
    View explaining(String word) {
        return page(Page.HELP)
                .showing(
                        new Subject(Optional.of(word), Optional.empty(), Optional.empty(), Optional.empty(), Set.of()));
    }

    /** The end of the day, with the rolls in the photographer's hand, where they were named. */
    View endingDay(Optional<Set<RollId>> heldRolls) {
        return page(Page.DAY_END)
                .showing(new Subject(Optional.empty(), heldRolls, Optional.empty(), Optional.empty(), Set.of()));
    }

    /** Actions to pick from, over the view that they are of. */
    View offering(Menu menu) {
        Page under = page == Page.ACTIONS || page == Page.HELP ? previous : page;
        Subject subject =
                new Subject(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(menu), Set.of());
        return new View(Page.ACTIONS, under, subject, new Place(0, chosen()), theme, false, window, fromDisk);
    }

    /** The actions to pick from, where they are shown. */
    public Optional<Menu> menu() {
        return subject.menu();
    }

    /** The shoot screen with a sheet over it. */
    View withSheet(Sheet sheet) {
        return page(Page.SHOOT)
                .big(false)
                .showing(new Subject(
                        Optional.empty(), Optional.empty(), Optional.of(sheet), Optional.empty(), Set.of()));
    }

    /** The word that help explains; empty for all of them. */
    public Optional<String> helpWord() {
        return subject.word();
    }

    /** What lies over the shoot screen to be photographed. */
    public Optional<Sheet> sheet() {
        return subject.sheet();
    }

    public int scroll() {
        return place.scroll();
    }

    public int chosen() {
        return place.chosen();
    }

    View in(Window other) {
        return new View(page, previous, subject, place, theme, big, other, fromDisk);
    }

    /** The sections of help of which the title alone is shown. */
    Set<String> folded() {
        return subject.folded();
    }

    View folding(Set<String> sections) {
        return showing(new Subject(
                subject.word(), subject.heldRolls(), subject.sheet(), subject.menu(), Set.copyOf(sections)));
    }

    View scrolledTo(int line) {
        return new View(page, previous, subject, new Place(line, chosen()), theme, big, window, fromDisk);
    }

    View chosen(int index) {
        return new View(page, previous, subject, new Place(scroll(), index), theme, big, window, fromDisk);
    }

    /** Whether an arrow chose a row: the first one of a list is highlighted without. */
    public boolean isChosen() {
        return chosen() > first(page);
    }

    /** Whether it is a list, of which a row is highlighted always. */
    boolean isList() {
        return first(page) >= 0;
    }

    /** The same with no row chosen by an arrow. */
    View unchosen() {
        return chosen(first(page));
    }

    View theme(String name) {
        return new View(page, previous, subject, place, name, big, window, fromDisk);
    }

    /** The shoot screen with the counter across the whole of it, or as always. */
    View big(boolean on) {
        return new View(Page.SHOOT, Page.SHOOT, Subject.ALL, Place.START, theme, on, window, fromDisk);
    }

    View listing(Message.Listed listed) {
        return with(new FromDisk(Optional.of(listed), fromDisk.draft, fromDisk.found));
    }

    View drafting(OrderDraft draft) {
        return with(new FromDisk(fromDisk.listed, Optional.of(draft), fromDisk.found));
    }

    private View with(FromDisk other) {
        return new View(page, previous, subject, place, theme, big, window, other);
    }

    /** All rolls; empty until they were listed. */
    public Optional<List<RollSummary>> rolls() {
        return fromDisk.listed.map(Message.Listed::rolls);
    }

    /** Where a roll is by the orders that were read with the list: {@code at the lab}. */
    public Optional<String> ordered(RollId roll) {
        return fromDisk.listed.flatMap(it -> Optional.ofNullable(it.ordered().get(roll.toString())));
    }

    /** The lab order that is made; empty until what it is made from was read. */
    public Optional<OrderDraft> draft() {
        return fromDisk.draft;
    }

    View finding(FoundFrames found) {
        return with(new FromDisk(fromDisk.listed, fromDisk.draft, Optional.of(found)))
                .scrolledTo(0);
    }

    /** The frames that were looked for last. */
    public Optional<FoundFrames> found() {
        return fromDisk.found;
    }
}
