package takeup.command;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.history.ShootState;

/**
 * What is known of a word of the prompt, for dispatch, help, completion, {@code takeup keys} and the manual page.
 *
 * @param word the first word of a line
 * @param otherSpellings what is taken for the same word, such as {@code u}
 * @param usage how a line is typed, as one text
 * @param example one line, whole
 * @param summary what it does, in a few words
 * @param listedForms lines with what each means; empty where the example says it all
 * @param needs what must be there first, in the order in which it is asked for
 * @param traits how its lines are treated
 */
public record CommandInfo(
        String word,
        List<String> otherSpellings,
        String usage,
        String example,
        String summary,
        List<Form> listedForms,
        List<Need> needs,
        Set<Trait> traits) {
    /** A line as it is typed, {@code fix 3-5 filter yellow}, and what it means. */
    public record Form(String typed, String meaning) {}

    /** How the lines of a word are treated. */
    public enum Trait {
        /** A note may stand behind a semicolon. */
        TAKES_NOTE,
        /** Free text stands behind {@code process}, and may hold a semicolon. */
        TAKES_PROCESS,
        /** Alone it shows or says something and changes nothing, so help runs it at once. */
        SHOWS_ONLY,
        /** It does what it always does while a paper form is read. */
        WORKS_DURING_PAPER,
        /** While a paper form is read, its lines are lines of the form. */
        IS_PAPER_LINE
    }

    /** A word with nothing else to it; the word alone is its example. */
    public static CommandInfo of(String word, String summary) {
        return new CommandInfo(word, List.of(), word, word, summary, List.of(), List.of(), EnumSet.noneOf(Trait.class));
    }

    /** With lines that show how it is typed; the first one is the example. */
    public CommandInfo usage(String first, String... more) {
        List<String> all = new ArrayList<>(List.of(first));
        all.addAll(List.of(more));
        return usageText(String.join(" · ", all), first);
    }

    /** With a usage in other words than a list of lines. */
    public CommandInfo usageText(String text, String oneLine) {
        return new CommandInfo(word, otherSpellings, text, oneLine, summary, listedForms, needs, traits);
    }

    public CommandInfo spelled(String... others) {
        return new CommandInfo(word, List.of(others), usage, example, summary, listedForms, needs, traits);
    }

    public CommandInfo form(String typed, String meaning) {
        List<Form> all = new ArrayList<>(listedForms);
        all.add(new Form(typed, meaning));
        return new CommandInfo(word, otherSpellings, usage, example, summary, List.copyOf(all), needs, traits);
    }

    public CommandInfo needs(Need... all) {
        return new CommandInfo(word, otherSpellings, usage, example, summary, listedForms, List.of(all), traits);
    }

    public CommandInfo with(Trait first, Trait... more) {
        return new CommandInfo(
                word, otherSpellings, usage, example, summary, listedForms, needs, EnumSet.of(first, more));
    }

    /** Its lines with their meaning, the usual one first; never empty. */
    public List<Form> forms() {
        return listedForms.isEmpty() ? List.of(new Form(example, summary)) : listedForms;
    }

    public boolean has(Trait trait) {
        return traits.contains(trait);
    }

    /** Whether it is the word, in one of its spellings. */
    public boolean isNamed(String typed) {
        return word.equals(typed) || otherSpellings.contains(typed);
    }

    /** Whether the word is made of letters: {@code load}, and not {@code 4 125}. */
    public boolean isSpelledOut() {
        return word.charAt(0) >= 'a';
    }

    /** What is missing for it now, and how to come by it; empty if it can be done. */
    public Optional<String> whyNot(ShootState state, Optional<Outcome.NeedsConfirmation> question) {
        for (Need need : needs) {
            Optional<String> missing = need.missing(state, question);
            if (missing.isPresent()) {
                return missing;
            }
        }
        return Optional.empty();
    }
}
