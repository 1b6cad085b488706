package takeup.session;

import java.util.List;
import java.util.Optional;
import takeup.command.Outcome;
import takeup.command.ScreenAction;
import takeup.day.CameraPlace;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.kit.Suggestion;
import takeup.message.Effect;
import takeup.message.Message;
import takeup.message.PendingLines.From;
import takeup.roll.Roll;

/**
 * What a line or a key did on its way to the disk: it waits in the {@link SaveQueue}, goes out as {@link Effect.Save},
 * and counts once the disk has answered.
 */
final class SaveFlow {
    private SaveFlow() {}

    /** Takes what a line does into the queue, and hands it to the disk if that is idle. */
    static Transition accept(Session session, Outcome.Accepted accepted, From from) {
        Session queued = queued(session, accepted, from);
        if (queued.lastAnswer().tone() == LastAnswer.Tone.REFUSAL) {
            queued = queued.saysNothing();
        }
        queued = queued.with(viewAfter(queued.view(), accepted));
        return queued.saveError().isEmpty() ? write(queued) : Transition.to(queued);
    }

    private static Session queued(Session session, Outcome.Accepted accepted, From from) {
        ShootState before = session.afterPending();
        Optional<CameraPlace> place = before.placeInHand();
        boolean isChanged = session.dialogue().cameraChanged()
                || place.isPresent() && !place.equals(accepted.after().placeInHand());
        boolean isSpace = from == From.SPACE || from == From.SUGGESTION;
        // Worked out with the time of the yes, not of the question: what is shown is what the disk gets.
        JournalStep step = new JournalStep(before.nextStep(), session.now().withNano(0), accepted.entries());
        ShootState after = before.and(step);
        List<Roll> rollsToExport =
                accepted.export().stream().map(it -> after.rolls().get(it)).toList();
        SaveQueue.Waiting waiting =
                new SaveQueue.Waiting(step, after, answer(accepted, from), isSpace && isChanged, rollsToExport);
        Session queued = session.with(session.saveQueue().and(waiting))
                .with(session.dialogue().cameraChanged(isChanged && !isSpace));
        return JournalStep.isFrameOrReading(accepted.entries())
                ? queued.with(session.clock().withoutDrift())
                : queued;
    }

    private static Outcome.Answer answer(Outcome.Accepted accepted, From from) {
        Outcome.Answer answer = accepted.answer();
        return from == From.SUGGESTION ? answer.saying("The highlighted setting was taken. " + answer.text()) : answer;
    }

    /** Back to the shoot screen, but from views that show what was done. */
    private static View viewAfter(View view, Outcome.Accepted accepted) {
        if (accepted.screenAction().isPresent()
                && accepted.screenAction().get() instanceof ScreenAction.ShowSheet show) {
            return view.withSheet(show.sheet());
        }
        boolean stays = switch (view.page()) {
            case SHOOT -> view.sheet().isEmpty();
            case FRAMES -> true;
            case PLAN -> accepted.answer().event().equals("plan");
            case BAG -> List.of("bag", "fridge").contains(accepted.answer().event());
            case ROLLS, DAY_END, ORDER, FIND, HELP, ACTIONS -> false;
        };
        return stays ? view.unchosen() : view.page(Session.Page.SHOOT);
    }

    /** Hands the first step to the disk, if there is one and the disk is idle. */
    static Transition write(Session session) {
        SaveQueue queue = session.saveQueue();
        return queue.canWrite()
                ? Transition.to(
                        session.with(queue.writing()),
                        new Effect.Save(queue.first().step(), queue.first().rollsToExport()))
                : Transition.to(session);
    }

    /** Tries once more what could not be written. */
    static Transition retry(Session session) {
        return session.saveError().isPresent() ? write(session) : Transition.to(session);
    }

    /** The first step is on the disk: now its answer is said. */
    static Session saved(Session session, Message.Export export) {
        SaveQueue.Waiting first = session.saveQueue().first();
        Outcome.Answer answer =
                export == Message.Export.WRITTEN ? first.answer().exported() : first.answer();
        // A question, or why the line on the prompt was refused, came later than this step and is not talked over.
        boolean isOpen = session.question().isPresent()
                || session.lastAnswer().tone() == LastAnswer.Tone.REFUSAL
                        && !session.prompt().isEmpty()
                        && session.saveError().isEmpty();
        LastAnswer said = isOpen
                ? new LastAnswer(
                        session.lastAnswer().tone(), session.lastAnswer().text(), answer.warnings())
                : new LastAnswer(
                                first.isLarge() ? LastAnswer.Tone.LARGE : LastAnswer.Tone.ANSWER,
                                answer.text(),
                                answer.warnings())
                        .savedAt(first.step().at());
        Session saved = session.with(said).with(session.saveQueue().written());
        return session.view().chosen() >= 0 && !offersTheSame(session, saved) ? saved.withoutChoice() : saved;
    }

    private static boolean offersTheSame(Session before, Session after) {
        List<Suggestion> choices = before.choices();
        return after.choices().equals(choices) && after.picks().equals(before.picks());
    }
}
