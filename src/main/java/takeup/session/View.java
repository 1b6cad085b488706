package takeup.session;

import java.util.List;
import takeup.report.RollSummary;
import takeup.session.Session.Page;

/**
 * What is shown.
 *
 * @param page which view
 * @param previous the view that help is about, and that Esc goes back to from there
 * @param topic the word that help explains, the rolls that the end of the day is told are held, or the sheet that lies
 *     over the shoot screen; "" for all, or none
 * @param scroll how far it is scrolled, in lines
 * @param chosen the highlighted suggestion; -1 if none is
 * @param theme the name of the theme
 * @param big whether the counter fills the screen
 * @param allRolls all rolls, once they were listed
 */
public record View(
        Page page,
        Page previous,
        String topic,
        int scroll,
        int chosen,
        String theme,
        boolean big,
        List<RollSummary> allRolls) {
    public View {
        allRolls = List.copyOf(allRolls);
    }

    static View first(String theme) {
        return new View(Page.SHOOT, Page.SHOOT, "", 0, -1, theme, false, List.of());
    }

    /** Another page, from its start. */
    View page(Page other) {
        Page from = other != Page.HELP ? Page.SHOOT : page == Page.HELP ? previous : page;
        return new View(other, from, "", 0, -1, theme, big && other == Page.SHOOT, allRolls);
    }

    private View topic(String what) {
        return new View(page, previous, what, scroll, chosen, theme, big, allRolls);
    }

    /** Help on one word. */
    View explaining(String word) {
        return page(Page.HELP).topic(word);
    }

    /** The end of the day; the rolls that were named as held are its topic. */
    View ending(String held) {
        return page(Page.DAY_END).topic(held);
    }

    /** The shoot screen with a sheet over it. */
    View withSheet(String sheet) {
        return page(Page.SHOOT).big(false).topic(sheet);
    }

    /** What lies over the shoot screen to be photographed: {@code slate}, {@code clock}, or nothing. */
    public String sheet() {
        return page == Page.SHOOT ? topic : "";
    }

    View scrolledTo(int line) {
        return new View(page, previous, topic, line, chosen, theme, big, allRolls);
    }

    View chosen(int index) {
        return new View(page, previous, topic, scroll, index, theme, big, allRolls);
    }

    View theme(String name) {
        return new View(page, previous, topic, scroll, chosen, name, big, allRolls);
    }

    /** The shoot screen with the counter across the whole of it, or as always. */
    View big(boolean on) {
        return new View(Page.SHOOT, Page.SHOOT, "", 0, -1, theme, on, allRolls);
    }

    View listing(List<RollSummary> rolls) {
        return new View(page, previous, topic, scroll, chosen, theme, big, rolls);
    }
}
