package takeup.session;

import java.util.List;
import java.util.Optional;
import takeup.session.Session.Page;

/** Keys of the help view: the highlight, and Enter on what is highlighted. */
final class HelpKeys {
    private HelpKeys() {}

    /** Moves the highlight, and the list follows it. */
    static Session highlight(Session session, int by) {
        List<HelpList.Entry> entries = HelpList.of(session).entries();
        if (entries.isEmpty()) {
            return session.say(LastAnswer.Tone.QUIET, "nothing here to go to");
        }
        int from = session.view().chosen() < 0 && by > 0
                ? -1
                : Math.max(0, session.view().chosen());
        int to = Math.max(0, Math.min(entries.size() - 1, from + by));
        return session.with(session.view().chosen(to))
                .say(
                        LastAnswer.Tone.QUIET,
                        HelpList.words(entries.get(to), session.view().helpWord()));
    }

    /** What is highlighted, or was looked for, is done where help was asked for; empty if that is nothing. */
    static Optional<Transition> enter(Session session) {
        return HelpList.onEnter(session).map(it -> run(session, it));
    }

    private static Transition run(Session session, HelpList.Entry entry) {
        Optional<String> helpWord = session.view().helpWord();
        if (entry.whyNot().isPresent()) {
            return Transition.to(session.say(LastAnswer.Tone.REFUSAL, HelpList.words(entry, helpWord)));
        }
        Page previous = session.view().previous();
        return ViewFlow.show(session.with(session.prompt().with("")), previous)
                .then(it -> act(it.saysNothing(), entry, HelpList.line(entry, helpWord)));
    }

    private static Transition act(Session session, HelpList.Entry entry, String line) {
        if (!HelpList.isRun(entry)) {
            return Transition.to(session.with(session.prompt().with(line)));
        }
        Optional<KeyBinding> binding = entry.key().flatMap(it -> KeyBindings.of(it, session));
        return binding.isPresent()
                ? KeyActions.act(binding.get().action(), session)
                : LineFlow.take(session, entry.word());
    }
}
