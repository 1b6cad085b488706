package takeup.session;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.action.HelpLines;
import takeup.action.Window;
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

    /** By what is seen at once; the highlight is in the middle of it. */
    static Session page(Session session, int way) {
        HelpList help = HelpList.of(session);
        if (help.entries().isEmpty()) {
            return highlight(session, way);
        }
        Window window = session.view().window();
        HelpLines lines = HelpLines.of(help.parts(), window.room());
        int seen = Math.max(1, window.listRows());
        int chosen = session.view().chosen();
        int middle = Math.max(seen / 2, chosen < 0 ? 0 : lines.start(chosen));
        int there = lines.entry(middle + way * seen);
        int to = there == chosen ? chosen + way : there;
        return highlight(session, to - Math.max(chosen, 0) + (chosen < 0 ? 1 : 0));
    }

    /**
     * Shows the title alone of the part that the highlight is in; of all parts where it is in none, or in a folded one.
     */
    static Session fold(Session session) {
        HelpList help = HelpList.of(session);
        int chosen = session.view().chosen();
        HelpList.Section section = help.section(Math.max(0, chosen));
        Set<String> folded = new HashSet<>(session.view().folded());
        if (chosen < 0 || section.isFolded()) {
            help.sections().forEach(it -> folded.add(it.title()));
        } else {
            folded.add(section.title());
        }
        return folding(session, folded, section.title());
    }

    /** Shows the part whole again that the highlight is in; all parts where it is in none. */
    static Session unfold(Session session) {
        HelpList help = HelpList.of(session);
        int chosen = session.view().chosen();
        HelpList.Section section = help.section(Math.max(0, chosen));
        Set<String> folded = new HashSet<>(session.view().folded());
        if (chosen < 0) {
            folded.clear();
        } else {
            folded.remove(section.title());
        }
        return folding(session, folded, section.title());
    }

    /** The highlight goes to the first entry of a section. */
    private static Session folding(Session session, Set<String> folded, String title) {
        Session after = session.with(session.view().folding(folded));
        int at = HelpList.of(after).start(title);
        return highlight(after.with(after.view().unchosen()), at + 1);
    }

    /** What is highlighted, or was looked for, is done where help was asked for; empty if that is nothing. */
    static Optional<Transition> enter(Session session) {
        return HelpList.onEnter(session).map(it -> run(session, it));
    }

    private static Transition run(Session session, HelpList.Entry entry) {
        if (entry.isSection()) {
            return Transition.to(unfold(session));
        }
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
