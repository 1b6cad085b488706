package takeup.session;

import java.util.List;
import java.util.Optional;
import takeup.command.Outcome;
import takeup.dispatch.Completion;
import takeup.dispatch.NameCompletion;
import takeup.message.Key;
import takeup.prompt.PromptLine;
import takeup.session.Session.Page;

/** Keys that write on the prompt: letters, a paste, the editing keys, Tab. */
final class PromptKeys {
    private static final int MOST_WORDS = 24;
    private static final int MOST_NOTES = 6;

    private PromptKeys() {}

    static Session typed(Session session, String more) {
        return session.prompt().takes(more)
                ? edited(session, session.prompt().typed(more))
                : session.say(
                        LastAnswer.Tone.REFUSAL,
                        "the prompt holds up to " + PromptLine.LONGEST + " characters, so this was not taken: "
                                + more.length() + " more");
    }

    /**
     * A refused line stands there selected: what is written takes its place, Space drops it and does what it always
     * does, and a key that edits goes on with it. PgUp brings it back.
     */
    static Session onSelected(Session session, Key key) {
        if (!session.prompt().selected()) {
            return session;
        }
        return switch (key.name()) {
            case CHARACTER, PASTE -> edited(session, session.prompt().cleared());
            case BACKSPACE, DELETE, LEFT, RIGHT, HOME, END, UP, DOWN, TAB, CTRL ->
                session.with(session.prompt().unselected());
            default -> session;
        };
    }

    static Session pasted(Session session, String text) {
        return typed(session, clean(text));
    }

    /** Pasted text: line ends of every kind become line feeds, none stays at the end, tabs become blanks. */
    private static String clean(String text) {
        String plain = text.replace("\r\n", "\n").replace('\r', '\n').replace('\t', ' ');
        int end = plain.length();
        while (end > 0 && plain.charAt(end - 1) == '\n') {
            end--;
        }
        return plain.substring(0, end);
    }

    static Session edited(Session session, PromptLine line) {
        Session edited = session.with(line);
        if (line.text().equals(session.prompt().text())) {
            return edited;
        }
        View view = session.view().unchosen();
        edited = edited.with(view.page() == Page.HELP ? view.scrolledTo(0) : view);
        LastAnswer.Tone tone = session.lastAnswer().tone();
        return tone == LastAnswer.Tone.REFUSAL || tone == LastAnswer.Tone.CHOICES ? edited.saysNothing() : edited;
    }

    /** How what was cleared comes back. */
    static String recallHint(Session session) {
        return session.view().page() == Page.SHOOT ? "PgUp brings it back" : "PgUp on the shoot screen brings it back";
    }

    /** Completes the word, or the note, in front of the cursor; where none fits, takes over the line that was meant. */
    static Session complete(Session session) {
        String before = session.prompt().text().substring(0, session.prompt().cursor());
        int note = Completion.noteStart(before);
        if (before.indexOf('\n') >= 0) {
            return session.say(LastAnswer.Tone.CHOICES, "only the first line is completed");
        }
        if (note >= 0) {
            return completeNote(session, before.substring(note));
        }
        return NameCompletion.of(session.afterPending(), session.now().toLocalDate(), before)
                .map(it -> completeName(session, it))
                .orElseGet(() -> completeWord(session, before));
    }

    private static Session completeName(Session session, NameCompletion name) {
        if (name.fitting().isEmpty()) {
            return session.say(LastAnswer.Tone.CHOICES, "no other name of today begins so");
        }
        Session completed = edited(session, session.prompt().typed(rest(name.fitting(), name.begun())));
        return name.fitting().size() == 1 ? completed : choices(completed, name.fitting(), MOST_NOTES, " · ");
    }

    private static Session completeWord(Session session, String before) {
        List<String> fitting = Completion.of(session.afterPending(), before);
        if (fitting.isEmpty()) {
            Optional<String> instead = meant(session);
            return instead.isPresent()
                    ? edited(session, session.prompt().with(instead.get()))
                    : session.say(LastAnswer.Tone.CHOICES, "no word known here begins so");
        }
        String begun = before.substring(before.lastIndexOf(' ') + 1);
        if (fitting.size() == 1) {
            return edited(session, session.prompt().typed(rest(fitting, begun) + " "));
        }
        return choices(edited(session, session.prompt().typed(rest(fitting, begun))), fitting, MOST_WORDS, "  ");
    }

    /** The line that was probably meant by one that is refused. */
    private static Optional<String> meant(Session session) {
        return session.prompt().lines().size() == 1
                        && session.outcome(session.prompt().text()) instanceof Outcome.Rejected rejected
                ? rejected.instead()
                : Optional.empty();
    }

    private static Session completeNote(Session session, String begun) {
        List<String> fitting =
                Completion.notes(session.afterPending(), session.now().toLocalDate(), begun);
        if (fitting.isEmpty()) {
            return session.say(LastAnswer.Tone.CHOICES, "no other note of today or of this roll begins so");
        }
        Session completed = edited(session, session.prompt().typed(rest(fitting, begun)));
        return fitting.size() == 1 ? completed : choices(completed, fitting, MOST_NOTES, " · ");
    }

    private static String rest(List<String> fitting, String begun) {
        return Completion.shared(fitting).substring(begun.length());
    }

    private static Session choices(Session session, List<String> fitting, int most, String between) {
        boolean isCut = fitting.size() > most;
        return session.say(
                LastAnswer.Tone.CHOICES,
                String.join(between, isCut ? fitting.subList(0, most) : fitting) + (isCut ? " …" : ""));
    }
}
