package takeup.panel;

import java.util.function.Predicate;
import takeup.drafting.OrderDraft;
import takeup.session.KeyHelp;
import takeup.session.Session;

/** Which keys the footer names now, and in which words: only those that do something here. */
public final class FooterKeys implements Predicate<String> {
    /** How much of a view's list is seen: keys that scroll do nothing where all of it is. */
    public enum List {
        WHOLE,
        SCROLLS
    }

    private final Session session;
    private final Session.Page page;
    private final boolean isShoot;
    private final boolean isTyped;
    private final boolean isLoadCheck;
    private final boolean scrolls;

    private FooterKeys(Session session, List list) {
        this.session = session;
        this.page = session.view().page();
        this.isShoot = page == Session.Page.SHOOT;
        this.isTyped = !session.prompt().isEmpty();
        this.isLoadCheck = PromptBar.loadCheck(session).isPresent();
        this.scrolls = list == List.SCROLLS;
    }

    static Footer of(Session session, List list) {
        return new FooterKeys(session, list).footer();
    }

    private Footer footer() {
        Footer footer = new Footer();
        boolean isAsked = session.question().isPresent() && !isTyped;
        // Where no does something of its own, the usual answer is one key away.
        boolean isEnterYes = isAsked
                && session.question().isPresent()
                && session.question().get().ifNo().isPresent();
        if (isEnterYes) {
            footer.answer("Enter", "yes");
        }
        for (String key : KeyHelp.now(session, this)) {
            String action = action(key);
            boolean isEscape = key.equals("Esc");
            if (isAsked && isEscape || isEnterYes && (key.equals("Enter") || key.equals("y"))) {
                continue;
            }
            if (key.equals("y")
                    || key.equals("n")
                    || isLoadCheck && session.view().chosen() < 0 && (isEscape || key.equals("Enter"))) {
                footer.answer(key, action);
            } else if (key.equals("F7")) {
                footer.second(key, action);
            } else if (isEscape && !isTyped && !isPlainShoot()) {
                footer.first(key, action);
            } else {
                footer.then(key, action);
            }
        }
        return footer;
    }

    /** Asks for a key that does something worth a place. */
    @Override
    public boolean test(String key) {
        return !action(key).isEmpty();
    }

    /** Whether this is the shoot screen with nothing over it. */
    private boolean isPlainShoot() {
        return isShoot && session.view().sheet().isEmpty();
    }

    /** What a key does here, in a word or two; "" where it does nothing that is worth a place. */
    private String action(String key) {
        return switch (key) {
            case "Space" -> isShoot ? space() : scrolls("page");
            case "Enter" -> isTyped ? "do it" : enter();
            case "y" -> "yes";
            case "n" -> "no";
            case "Tab" -> isTyped ? "complete" : "camera";
            case "Down" -> isShoot || isChosenFrom() ? "choose" : scrolls("scroll");
            case "Ctrl-Z" -> "undo";
            case "Esc" -> isTyped ? "clear" : escape();
            case "F1" -> isTyped ? elsewhere(Session.Page.HELP, "help") : "";
            case "?" -> elsewhere(Session.Page.HELP, "help");
            case "F2" -> elsewhere(Session.Page.FRAMES, "frames");
            case "F3" -> elsewhere(Session.Page.ROLLS, "rolls");
            case "F4" -> elsewhere(Session.Page.PLAN, "plan");
            case "F5" -> elsewhere(Session.Page.BAG, "bag");
            case "F7" -> isRolls() && !isTyped ? "hand over" : "";
            case "F8" -> isTyped ? "" : elsewhere(Session.Page.FIND, "find");
            case "Left" -> "fold";
            case "Right" -> "unfold";
            case "F9" -> "theme";
            case "F10" -> "big";
            case "PgUp" -> isShoot ? "earlier" : "";
            default -> "";
        };
    }

    /** While a shutter is open Space closes it. */
    private String space() {
        return session.shown().timerInHand().isPresent() ? "closes" : "same again";
    }

    /** Where Down goes to the next row, and does not scroll. */
    private boolean isChosenFrom() {
        boolean isOrder = page == Session.Page.ORDER
                && session.view().draft().isPresent()
                && session.view().draft().get().step() == OrderDraft.Step.CHOOSING;
        return isOrder || isList() || page == Session.Page.HELP || page == Session.Page.ACTIONS;
    }

    private boolean isList() {
        return switch (page) {
            case FRAMES, ROLLS, PLAN, BAG, DAY_END -> true;
            default -> false;
        };
    }

    /** Where film is on its way to the lab. */
    private boolean isRolls() {
        return page == Session.Page.ROLLS || page == Session.Page.DAY_END;
    }

    private String scrolls(String action) {
        return scrolls ? action : "";
    }

    private String elsewhere(Session.Page own, String action) {
        return page == own ? "" : action;
    }

    private String enter() {
        if (page == Session.Page.ORDER) {
            return order();
        }
        if (page == Session.Page.ACTIONS) {
            return "take";
        }
        if (session.view().chosen() >= 0) {
            if (isList()) {
                return "actions";
            }
            return isShoot && session.picks().rows().isEmpty() ? "set" : "do it";
        }
        return isLoadCheck ? "yes" : "actions";
    }

    private String order() {
        return switch (session.view().draft().map(OrderDraft::step).orElse(OrderDraft.Step.CHOOSING)) {
            case CHOOSING -> "change";
            case SHEET -> "write";
            case WRITTEN -> "rolls";
        };
    }

    private String escape() {
        if (!isPlainShoot()) {
            return session.view().previous() == Session.Page.SHOOT ? "shoot" : "back";
        }
        if (isLoadCheck) {
            return "skip";
        }
        return GuidePanel.isShown(session) ? "end guide" : "";
    }
}
