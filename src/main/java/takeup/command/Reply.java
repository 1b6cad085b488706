package takeup.command;

import java.util.List;
import java.util.Optional;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Warning;
import takeup.report.WarningText;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * Makes what a line comes to: the entries that it writes, the state after them, and what is said then. Whatever it is
 * not given is left out; warnings that were silenced for the day are.
 */
public final class Reply {
    private final CommandContext context;
    private final List<JournalEntry> entries;
    private final ShootState after;
    private AnswerFields fields;
    private String event = "state";
    private String title = "";
    private String text = "";
    private String onceExported = "";
    private List<Warning> warnings = List.of();
    private List<RollId> exports = List.of();

    Reply(CommandContext context, List<JournalEntry> entries) {
        this.context = context;
        this.after = context.after(entries);
        this.entries = entries.isEmpty()
                ? entries
                : after.history().newest().orElseThrow().entries();
        this.fields = new AnswerFields.WholeState(after);
    }

    /** The state once the entries are written. */
    public ShootState after() {
        return after;
    }

    /** A roll as it is then. */
    public Roll roll(RollId id) {
        return after.rolls().get(id);
    }

    /** The kind of the answer, for other programs; {@code state} where nothing else is named. */
    public Reply event(String name) {
        event = name;
        return this;
    }

    /**
     * What is said.
     *
     * @param what what was done, in few words: {@code Frame 7 on R0003}; it stands alone where it could not be saved
     * @param more the rest of the text, which follows it at once
     */
    public Reply says(String what, String more) {
        title = what;
        text = what + more;
        return this;
    }

    /** A sentence behind what is said. */
    public Reply saysMore(String more) {
        text += more;
        return this;
    }

    /** A sentence that is true only once the files of the rolls are written. */
    public Reply saysOnceExported(String sentence) {
        onceExported = " " + sentence;
        return this;
    }

    /** What was done, in few words, where the text does not begin with it. */
    public Reply titled(String what) {
        title = what;
        return this;
    }

    /** What other programs read; the whole state where nothing else is given. */
    public Reply fields(Json.Obj all) {
        return fields(new AnswerFields.Given(all));
    }

    /** The same, worked out where a program asks for it. */
    public Reply fields(AnswerFields all) {
        fields = all;
        return this;
    }

    public Reply warnings(List<Warning> all) {
        warnings = all;
        return this;
    }

    /** Warnings that are true after the entries and were not before. */
    public Reply warningsBegun() {
        return warnings(WarningText.begunBetween(context.state(), after, context.now()));
    }

    /** Rolls whose file and export must follow. */
    public Reply exports(List<RollId> rolls) {
        exports = rolls;
        return this;
    }

    public Outcome.Accepted accepted() {
        Outcome.Answer answer =
                new Outcome.Answer(event, title, text, onceExported, fields, context.unsilenced(warnings));
        return new Outcome.Accepted(entries, after, answer, Optional.empty(), exports);
    }
}
