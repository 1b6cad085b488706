package takeup.session;

import takeup.command.Outcome;
import takeup.command.ScreenAction;
import takeup.message.Effect;
import takeup.session.Session.Page;

/**
 * What a line that logs nothing does to the screen.
 *
 * @param answer what is said with it, where it does not show all that there is
 */
record ScreenActions(Session session, Outcome.Answer answer) implements ScreenAction.Cases<LineResult> {
    static LineResult run(Session session, Outcome.Accepted accepted) {
        ScreenActions actions = new ScreenActions(session, accepted.answer());
        return accepted.screenAction()
                .map(it -> it.match(actions))
                .orElseGet(() -> LineResult.done(actions.answering()));
    }

    /** Whether a line leaves the program. */
    static boolean isQuit(Outcome outcome) {
        return outcome instanceof Outcome.Accepted accepted && accepted.isQuit();
    }

    private Session answering() {
        return session.with(new LastAnswer(LastAnswer.Tone.ANSWER, answer.text(), answer.warnings()));
    }

    @Override
    public LineResult show(ScreenAction.Show action) {
        return LineResult.done(ViewFlow.show(session, Page.valueOf(action.view().name())));
    }

    @Override
    public LineResult showHelp(ScreenAction.ShowHelp action) {
        return LineResult.done(action.word()
                .map(it -> Transition.to(session.with(session.view().explaining(it))))
                .orElseGet(() -> ViewFlow.show(session, Page.HELP)));
    }

    @Override
    public LineResult showDayEnd(ScreenAction.ShowDayEnd action) {
        return LineResult.done(ViewFlow.listIfShown(session.with(session.view().endingDay(action.heldRolls()))));
    }

    @Override
    public LineResult showSheet(ScreenAction.ShowSheet action) {
        return LineResult.done(answering().with(session.view().withSheet(action.sheet())));
    }

    @Override
    public LineResult showAgain(ScreenAction.ShowAgain action) {
        return LineResult.done(session.with(session.lastAnswer().more()));
    }

    @Override
    public LineResult changeTheme(ScreenAction.ChangeTheme action) {
        return LineResult.done(ViewFlow.theme(session, action.name().orElse("")));
    }

    @Override
    public LineResult toggleBigCounter(ScreenAction.ToggleBigCounter action) {
        return LineResult.done(ViewFlow.big(session));
    }

    @Override
    public LineResult makeOrder(ScreenAction.MakeOrder action) {
        return OrderFlow.line(session, action.words());
    }

    @Override
    public LineResult find(ScreenAction.Find action) {
        Session looking = session.with(session.view().page(Page.FIND));
        return LineResult.done(
                looking.say(
                        LastAnswer.Tone.QUIET, "looking for " + action.query().typed() + " …"),
                new Effect.Find(action.query()));
    }

    @Override
    public LineResult openScans(ScreenAction.OpenScans action) {
        return LineResult.done(
                session.say(LastAnswer.Tone.QUIET, "reading the scans of " + action.roll() + " …"),
                new Effect.OpenScans(action.roll(), action.folder()));
    }

    @Override
    public LineResult quit(ScreenAction.Quit action) {
        return action.leaving() == ScreenAction.Leaving.WHEN_SAVED
                ? QuitFlow.leaveWhenSaved(session)
                : LineResult.waits(QuitFlow.leaveAnyway(session));
    }
}
