package takeup.session;

import takeup.command.Outcome;
import takeup.json.Json;
import takeup.session.Session.LastAnswer;
import takeup.session.Session.Page;
import takeup.session.Session.Tone;

/** What a line that logs nothing does to the screen. */
final class ScreenActions {
    private ScreenActions() {}

    static LineResult run(Session session, Outcome.Accepted accepted) {
        return switch (accepted.screenAction()) {
            case NOTHING -> LineResult.done(answering(session, accepted));
            case SHOW_SHOOT -> show(session, Page.SHOOT);
            case SHOW_FRAMES -> show(session, Page.FRAMES);
            case SHOW_ROLLS -> show(session, Page.ROLLS);
            case SHOW_PLAN -> show(session, Page.PLAN);
            case SHOW_BAG -> show(session, Page.BAG);
            case SHOW_HELP -> show(session, Page.HELP);
            case SHOW_DAY_END ->
                LineResult.done(ViewFlow.listIfShown(session.with(session.view().ending(text(accepted, "held")))));
            case SHOW_SLATE ->
                LineResult.done(answering(session, accepted).with(session.view().withSheet("slate")));
            case SHOW_CLOCK ->
                LineResult.done(answering(session, accepted).with(session.view().withSheet("clock")));
            case EXPLAIN -> LineResult.done(session.with(session.view().explaining(text(accepted, "word"))));
            case NEXT_THEME -> LineResult.done(ViewFlow.theme(session, text(accepted, "theme")));
            case BIG -> LineResult.done(ViewFlow.big(session));
            case QUIT -> QuitFlow.leaveWhenSaved(session);
            case QUIT_ANYWAY -> LineResult.waits(QuitFlow.leaveAnyway(session));
        };
    }

    /** Whether a line leaves the program. */
    static boolean isQuit(Outcome outcome) {
        return outcome instanceof Outcome.Accepted accepted
                && (accepted.screenAction() == Outcome.ScreenAction.QUIT
                        || accepted.screenAction() == Outcome.ScreenAction.QUIT_ANYWAY);
    }

    private static LineResult show(Session session, Page page) {
        return LineResult.done(ViewFlow.show(session, page));
    }

    private static Session answering(Session session, Outcome.Accepted accepted) {
        return session.with(new LastAnswer(
                Tone.ANSWER, accepted.answer().text(), accepted.answer().warnings()));
    }

    private static String text(Outcome.Accepted accepted, String field) {
        return accepted.answer()
                .fields()
                .field(field)
                .map(it -> it instanceof Json.Text text ? text.value() : "")
                .orElse("");
    }
}
