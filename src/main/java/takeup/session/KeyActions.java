package takeup.session;

import takeup.message.Effect;
import takeup.prompt.PromptLine;
import takeup.session.Session.Page;

/** What each action of a key makes of the model. */
final class KeyActions {
    /** More rows than any list has. */
    private static final int FAR = 1_000_000;

    private KeyActions() {}

    static Transition act(KeyAction action, Session session) {
        return switch (action) {
            case SAME_AGAIN -> HeldKeyFlow.frame(session);
            case TALLY -> HeldKeyFlow.tally(session);
            case CLEAR_WHAT_STAYS_ON -> LineFlow.take(session, "clear");
            case UNDO -> LineFlow.take(session, "undo");
            case REDO -> LineFlow.take(session, "redo");
            case ENTER -> enter(session);
            case ANSWER_YES -> AnswerKeys.answer(session, "yes");
            case ANSWER_NO -> AnswerKeys.answer(session, "no");
            case DENY -> LineFlow.take(session, "no");
            case ESCAPE -> EscapeKey.escape(session);
            case LEAVE -> QuitFlow.ctrlC(session);
            case NEXT_CAMERA -> ShootKeys.nextCamera(session, 1);
            case CAMERA_BEFORE -> ShootKeys.nextCamera(session, -1);
            case CHOICE_ABOVE -> Transition.to(ShootKeys.choose(session, -1));
            case CHOICE_BELOW -> Transition.to(ShootKeys.choose(session, 1));
            case FOLD -> Transition.to(HelpKeys.fold(session));
            case UNFOLD -> Transition.to(HelpKeys.unfold(session));
            case LINE_UP -> Transition.to(scrolled(session, -1));
            case LINE_DOWN -> Transition.to(scrolled(session, 1));
            case PAGE_UP -> Transition.to(turned(session, -1));
            case PAGE_DOWN -> Transition.to(turned(session, 1));
            case FIRST_ROW -> Transition.to(scrolled(session, -FAR));
            case LAST_ROW -> Transition.to(scrolled(session, FAR));
            case STEP_BACK -> Transition.to(ActionKeys.erase(session));
            case SHOW_HELP -> ViewFlow.turnTo(session, Page.HELP);
            case SHOW_FRAMES -> ViewFlow.turnTo(session, Page.FRAMES);
            case SHOW_ROLLS -> ViewFlow.turnTo(session, Page.ROLLS);
            case SHOW_PLAN -> ViewFlow.turnTo(session, Page.PLAN);
            case SHOW_BAG -> ViewFlow.turnTo(session, Page.BAG);
            case SHOW_DAY_END -> ShootKeys.endDay(session);
            case SHOW_ORDER -> ViewFlow.turnTo(session, Page.ORDER);
            case SHOW_FOUND -> ShootKeys.find(session);
            case NEXT_THEME -> Transition.to(ViewFlow.theme(session, ""));
            case BIG_COUNTER -> Transition.to(ViewFlow.big(session));
            case REPAINT -> Transition.to(session, new Effect.Repaint());
            case COMPLETE_WORD -> Transition.to(PromptKeys.complete(session));
            case OLDER_LINE -> edited(session, session.prompt().recalled(1));
            case NEWER_LINE -> edited(session, session.prompt().recalled(-1));
            case ERASE_BEFORE -> edited(session, session.prompt().backspace());
            case ERASE_UNDER -> edited(session, session.prompt().delete());
            case CURSOR_LEFT -> edited(session, session.prompt().left());
            case CURSOR_RIGHT -> edited(session, session.prompt().right());
            case CURSOR_HOME -> edited(session, session.prompt().home());
            case CURSOR_END -> edited(session, session.prompt().end());
            case CLEAR_PROMPT -> edited(session, session.prompt().cleared());
            case ERASE_WORD -> edited(session, session.prompt().wordErased());
        };
    }

    private static Transition edited(Session session, PromptLine line) {
        return Transition.to(PromptKeys.edited(session, line));
    }

    private static Session turned(Session session, int way) {
        int lines = way * ViewFlow.PAGE_LINES;
        return switch (session.view().page()) {
            case HELP -> HelpKeys.page(session, way);
            case BAG, DAY_END, ORDER -> ViewFlow.scroll(session, lines);
            default -> scrolled(session, lines);
        };
    }

    /** In help, in the actions and where rows can be picked the highlight moves, and the list follows it. */
    private static Session scrolled(Session session, int lines) {
        if (session.view().menu().isPresent()) {
            return ActionKeys.move(session, lines);
        }
        if (session.view().page() == Page.HELP) {
            return HelpKeys.highlight(session, lines);
        }
        return ActionKeys.rows(session) > 0 ? ActionKeys.highlight(session, lines) : ViewFlow.scroll(session, lines);
    }

    private static Transition enter(Session session) {
        return session.view().menu().isPresent() && session.prompt().isEmpty()
                ? ActionKeys.enter(session)
                : HelpKeys.enter(session).orElseGet(() -> EnterKey.enter(session));
    }
}
