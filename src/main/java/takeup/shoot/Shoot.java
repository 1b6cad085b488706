package takeup.shoot;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import takeup.day.Place;
import takeup.kit.Advice;
import takeup.kit.Suggestion;
import takeup.kit.Warning;
import takeup.roll.Roll;

/**
 * The whole model of the screen: what the disk holds, what is on its way there, what is being typed, what is shown.
 *
 * @param kept the situation as the disk holds it; this is what the counter shows
 * @param waiting steps that the disk has not acknowledged yet, oldest first
 * @param trouble why the first of them could not be written; empty while all is well
 * @param prompt the line being typed
 * @param said what was said last
 * @param question what a yes would do
 * @param todo lines still to be read: several were entered at once, or the first waits for a roll to be read in
 * @param spaces Spaces on an empty prompt that may be a held key
 * @param view what is shown
 * @param seen the camera and back that the last Space logged on, so that a change is said large
 * @param rolls all rolls, once they were listed
 * @param settings what stays for the whole run
 * @param leaving whether Ctrl-C was pressed once
 * @param now the time of day
 * @param ticks milliseconds on a clock that only runs forward
 */
public record Shoot(Situation kept, List<Waiting> waiting, Optional<String> trouble, Prompt prompt, Said said, Optional<Outcome.Asked> question,
        List<String> todo, Spaces spaces, View view, Optional<Place> seen, List<RollLine> rolls, Settings settings, boolean leaving, OffsetDateTime now,
        long ticks) {
    /** A step on its way to the disk, what is said once it is there, and the rolls whose files follow. */
    public record Waiting(Happened step, Situation after, Outcome.Answer answer, boolean large, List<Roll> settle) {
    }

    /** How something is said. */
    public enum Tone { QUIET, ANSWER, LARGE, QUESTION, REFUSAL }

    /** What was said last, and the warnings with it. */
    public record Said(Tone tone, String words, List<Warning> warnings) {
        public Said {
            warnings = List.copyOf(warnings);
        }
    }

    /** Spaces that came in: how many, and when the last one did. */
    public record Spaces(int count, long lastTicks) {
        static final Spaces NONE = new Spaces(0, 0);
    }

    /** Which view. */
    public enum Page { SHOOT, FRAMES, ROLLS, HELP }

    /**
     * What is shown.
     *
     * @param page which view
     * @param scroll how far it is scrolled, in lines
     * @param chosen the highlighted suggestion; -1 if none is
     * @param theme the name of the theme
     * @param big whether the counter fills the screen
     */
    public record View(Page page, int scroll, int chosen, String theme, boolean big) {
        View page(Page other) {
            return new View(other, 0, -1, theme, big && other == Page.SHOOT);
        }

        View scrolled(int lines) {
            return new View(page, Math.max(0, scroll + lines), chosen, theme, big);
        }

        View chosen(int index) {
            return new View(page, scroll, index, theme, big);
        }

        View theme(String name) {
            return new View(page, scroll, chosen, name, big);
        }

        View big(boolean on) {
            return new View(Page.SHOOT, 0, chosen, theme, on);
        }
    }

    /**
     * What stays for the whole run.
     *
     * @param letters the writer's letters for new roll numbers
     * @param folder the data folder, as it is named to the photographer
     * @param readOnly why nothing can be written; empty if it can
     */
    public record Settings(String letters, String folder, Optional<String> readOnly) {
    }

    public Shoot {
        waiting = List.copyOf(waiting);
        todo = List.copyOf(todo);
        rolls = List.copyOf(rolls);
    }

    /** The model at the start. */
    public static Shoot begin(Situation situation, Settings settings, String theme, List<String> problems, OffsetDateTime now, long ticks) {
        Said said = problems.isEmpty() ? new Said(Tone.QUIET, "", List.of())
                : new Said(Tone.REFUSAL, problems.get(0) + (problems.size() > 1 ? " (and " + (problems.size() - 1) + " more: takeup check)" : ""), List.of());
        return new Shoot(situation, List.of(), Optional.empty(), Prompt.EMPTY, said, Optional.empty(), List.of(), Spaces.NONE,
                new View(Page.SHOOT, 0, -1, theme, false), Optional.empty(), List.of(), settings, false, now, ticks);
    }

    /** The model after a message, and what it asks of the outside. */
    public static Step update(Shoot shoot, Message message) {
        return message.appliedTo(shoot);
    }

    /** The situation once all that waits is on the disk: what a line is read in. */
    public Situation ahead() {
        return waiting.isEmpty() ? kept : waiting.get(waiting.size() - 1).after();
    }

    /** The kept situation, as it is on this day. */
    public Situation shown() {
        return kept.turned(now);
    }

    /** The suggestions that stand on the screen; none without film or light. */
    public List<Suggestion> choices() {
        return advice().map(Advice::suggestions).orElse(List.of());
    }

    /** Which of them is the best; -1 where there is none. */
    public int bestChoice() {
        return advice().map(Advice::best).orElse(-1);
    }

    private Optional<Advice> advice() {
        Situation situation = shown();
        return situation.day().light().flatMap(light -> State.asking(situation).map(it -> it.advice(light)));
    }

    /** What the line on the prompt would do; empty while nothing is typed. */
    public Optional<Outcome> echo() {
        List<String> lines = prompt.lines();
        return lines.size() == 1 && view.page() != Page.HELP ? Optional.of(Interpreter.read(ahead(), lines.get(0), now, settings.letters())) : Optional.empty();
    }
}
