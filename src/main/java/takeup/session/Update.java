package takeup.session;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import takeup.advice.LoadChecks;
import takeup.command.Outcome;
import takeup.command.RatingCommand;
import takeup.day.CameraPlace;
import takeup.day.DayEvent;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.kit.Suggestion;
import takeup.report.DayEnd;
import takeup.report.NightBefore;
import takeup.report.PlanTable;
import takeup.report.StatusText;
import takeup.session.Session.HeldKey;
import takeup.session.Session.LastAnswer;
import takeup.session.Session.Leaving;
import takeup.session.Session.Tone;

/** One turn of the loop: what each key does, and what the space bar comes to. */
final class Update extends SaveFlow {
    /** Spaces nearer to each other than this, in milliseconds, are a held key, a paste or a slow line. */
    static final long HELD = 60;

    private static final int MOST = 99;
    /** Fewer than the smallest window shows of them, so that a page skips nothing. */
    private static final int PAGE = 6;

    Update(Session shoot, OffsetDateTime now, long ticks) {
        super(shoot, now, ticks);
    }

    Transition pressed(Key key) {
        if (ledger.saveError().isPresent() && ledger.canWrite()) {
            hand();
        }
        boolean isSame = key.equals(spaces.tally() ? Key.ctrl('t') : Key.typed(" "));
        if (spaces.count() > 0 && !(isSame && ticks - spaces.lastTicks() < HELD)) {
            settleSpaces();
        }
        if (leaving == Leaving.ONCE && !key.equals(Key.ctrl('c'))) {
            leaving = Leaving.NO;
        }
        Optional<KeyBinding> binding = KeyBinding.of(key, shoot());
        if (binding.isPresent()) {
            Optional<String> whyNot = binding.get().whyNot().apply(shoot());
            if (whyNot.isPresent()) {
                say(Tone.REFUSAL, whyNot.get());
            } else {
                binding.get().action().accept(this);
            }
        } else if (key.name() == Key.Name.PASTE) {
            typed(clean(key.text()));
        } else if (key.name() == Key.Name.CHARACTER) {
            typed(key.text());
        }
        ring();
        return step();
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

    Transition ticked() {
        if (spaces.count() > 0 && ticks - spaces.lastTicks() >= HELD) {
            settleSpaces();
        }
        ring();
        return step();
    }

    /** No key will come any more: what was pressed is still written. */
    Transition ended() {
        if (spaces.count() == 1) {
            settleSpaces();
        }
        leaveAnyway();
        return step();
    }

    // Space and Enter.

    void space() {
        spaces = new HeldKey(spaces.count() + 1, ticks, false);
        effects.add(new Effect.Wake(HELD));
    }

    /** A frame that is counted; a held key counts none, as a held Space logs none. */
    void tally() {
        spaces = new HeldKey(spaces.count() + 1, ticks, true);
        effects.add(new Effect.Wake(HELD));
    }

    private void settleTally(int count) {
        spaces = HeldKey.NONE;
        if (count > 1) {
            prompt = prompt.with("tally x" + Math.min(MOST, count));
            say(
                    Tone.REFUSAL,
                    "a held key counts nothing: Enter counts " + Math.min(MOST, count) + " frames, Esc drops them");
        } else {
            runApart("tally");
        }
    }

    /** What the Spaces come to: one is a frame; more are a held key, and log nothing. */
    private void settleSpaces() {
        int count = spaces.count();
        if (spaces.tally()) {
            settleTally(count);
            return;
        }
        Optional<Suggestion> chosen = shoot().highlighted();
        spaces = HeldKey.NONE;
        view = view.chosen(-1);
        if (count > 1) {
            prompt = prompt.with(chosen.map(it -> pair(it) + " ").orElse("") + "x" + Math.min(MOST, count));
            say(
                    Tone.REFUSAL,
                    "a held key logs nothing: Enter logs " + Math.min(MOST, count) + " frames, Esc drops them"
                            + (count > MOST ? " (" + count + " came in; one line logs up to " + MOST + ")" : ""));
        } else if (chosen.isPresent()) {
            take(PendingLines.From.SUGGESTION, List.of(pair(chosen.get())));
        } else {
            take(
                    PendingLines.From.SPACE,
                    List.of(RatingCommand.space(ledger.afterPending().asOf(now))));
        }
    }

    /** A suggestion as it is typed; a time past the dial is one by the watch. */
    private String pair(Suggestion row) {
        boolean isMark = ledger.afterPending()
                .cameraInHand()
                .flatMap(it -> it.shutter())
                .filter(it -> row.time().map(it.marks()::contains).orElse(false))
                .isPresent();
        return row.aperture()
                + row.time()
                        .map(it -> " " + (!isMark && it.seconds() >= 1 ? "b" : "") + it)
                        .orElse("");
    }

    void enter() {
        Optional<HelpList.Entry> entry = HelpList.onEnter(shoot());
        if (entry.isPresent()) {
            run(entry.get());
            return;
        }
        if (!prompt.isEmpty()) {
            List<String> lines = prompt.lines();
            Outcome first = shoot().outcome(lines.get(0));
            prompt = prompt.cleared();
            view = view.chosen(-1);
            if (isBlocked()
                    && first instanceof Outcome.Accepted does
                    && (does.screenAction() == Outcome.ScreenAction.QUIT
                            || does.screenAction() == Outcome.ScreenAction.QUIT_ANYWAY)) {
                act(does); // a disk that does not answer must not keep anybody here
            } else {
                take(PendingLines.From.PROMPT, lines);
            }
            return;
        }
        Optional<Suggestion> chosen = shoot().highlighted();
        if (chosen.isPresent()) {
            view = view.chosen(-1);
            take(PendingLines.From.KEY, List.of("set " + pair(chosen.get())));
        } else if (shoot().picked().isPresent()) {
            String line = shoot().picked().get().line();
            view = view.chosen(-1);
            take(PendingLines.From.KEY, List.of(line));
        } else if (asks()) {
            take(PendingLines.From.KEY, List.of("yes"));
        } else if (view.page() == Session.Page.SHOOT) {
            sayWhatSpaceDoes();
        } else {
            say(
                    Tone.QUIET,
                    view.page() == Session.Page.HELP
                            ? "Down highlights an entry and Enter does it; typing looks for one; Esc goes back"
                            : "Space turns the page here; Esc goes back to the shoot screen, where Space logs a frame");
        }
    }

    /** What is highlighted in help, done where help was asked for. */
    private void run(HelpList.Entry entry) {
        if (entry.whyNot().isPresent()) {
            say(Tone.REFUSAL, HelpList.words(entry, view.topic()));
            return;
        }
        String line = HelpList.line(entry, view.topic());
        Session.Page about = view.previous();
        prompt = prompt.with("");
        show(about);
        said = LastAnswer.NOTHING;
        Optional<KeyBinding> binding = entry.key().flatMap(it -> KeyBinding.of(it, shoot()));
        if (!HelpList.isRun(entry)) {
            prompt = prompt.with(line);
        } else if (binding.isPresent()) {
            binding.get().action().accept(this);
        } else {
            take(PendingLines.From.KEY, List.of(entry.word()));
        }
    }

    /**
     * Whether the load routine waits for a key: where it is to be seen, nothing else was asked, and the guide is over.
     */
    private boolean asks() {
        return view.page() == Session.Page.SHOOT
                && view.sheet().isEmpty()
                && question.isEmpty()
                && settings.readOnly().isEmpty()
                && Guide.of(shoot()).isEmpty()
                && LoadChecks.of(ledger.afterPending()).isPresent();
    }

    private void sayWhatSpaceDoes() {
        Outcome same = shoot().outcome(RatingCommand.space(ledger.afterPending().asOf(now)));
        say(
                Tone.QUIET,
                (same instanceof Outcome.Accepted does
                                ? "Space logs: " + does.answer().text()
                                : same instanceof Outcome.Rejected refused
                                        ? "Space logs nothing: " + refused.why()
                                        : "Space logs the same again")
                        + (PickList.of(shoot()).rows().isEmpty()
                                ? ""
                                : "; Down and Enter take a choice from the list"));
    }

    /** A line that a key stands for; it leaves the prompt alone. */
    void runApart(String line) {
        take(PendingLines.From.KEY, List.of(line));
    }

    // Ctrl-C and Esc.

    void leave() {
        boolean wasOnce = leaving == Leaving.ONCE;
        if (leaving == Leaving.ANYWAY) {
            quit();
            return;
        }
        if (leaving == Leaving.WHEN_SAVED) {
            say(Tone.QUIET, "leaving as soon as the disk answers; quit yes leaves whatever it says, Esc stays");
            return;
        }
        leaving = Leaving.ONCE;
        String how = ledger.saveError().isPresent() ? notSavedWords() : "Ctrl-C again, or quit, leaves";
        withdraw();
        if (!prompt.isEmpty()) {
            prompt = prompt.cleared();
            view = view.chosen(-1);
            say(ledger.saveError().isPresent() ? Tone.REFUSAL : Tone.QUIET, "cleared (" + recallWords() + "); " + how);
        } else if (wasOnce) {
            leaveWhenSaved();
        } else {
            say(
                    ledger.saveError().isPresent() ? Tone.REFUSAL : Tone.QUIET,
                    how + (ledger.isWritten() ? "; all that was logged is on disk" : ""));
        }
    }

    private String recallWords() {
        return view.page() == Session.Page.SHOOT ? "PgUp brings it back" : "PgUp on the shoot screen brings it back";
    }

    void escape() {
        boolean wasAsked = withdraw();
        if (fetching.isPresent() || leaving == Leaving.WHEN_SAVED) {
            say(Tone.QUIET, "given up");
            giveUp();
        } else if (!prompt.isEmpty()) {
            prompt = prompt.cleared();
            say(Tone.QUIET, (wasAsked ? "withdrawn and cleared; " : "cleared; ") + recallWords());
        } else if (wasAsked) {
            say(Tone.QUIET, "withdrawn");
        } else if (view.chosen() >= 0) {
            view = view.chosen(-1);
            said = LastAnswer.NOTHING;
        } else if (asks()) {
            take(PendingLines.From.KEY, List.of("routine skip"));
        } else if (view.page() == Session.Page.SHOOT
                && !view.big()
                && view.sheet().isEmpty()
                && Guide.of(shoot()).isPresent()) {
            leaveGuide();
        } else {
            show(view.previous());
            view = view.page() == Session.Page.SHOOT ? view.big(false) : view;
            said = LastAnswer.NOTHING;
        }
    }

    private void leaveGuide() {
        ShootState ahead = ledger.afterPending();
        List<JournalEntry> entries = new ArrayList<>(ahead.carryOverEntries(now));
        entries.add(new JournalEntry.OnDay(new DayEvent.GuideDismissed()));
        Outcome.Answer answer = new Outcome.Answer(
                "state", "The guide is gone for good; ? shows all keys and words.", StatusText.json(ahead), List.of());
        accept(
                new Outcome.Accepted(entries, ahead, answer, Outcome.ScreenAction.NOTHING, List.of()),
                PendingLines.From.KEY);
    }

    // The prompt and the views.

    private void typed(String more) {
        if (prompt.takes(more)) {
            edit(it -> it.typed(more));
        } else {
            say(
                    Tone.REFUSAL,
                    "the prompt holds up to " + PromptLine.LONGEST + " characters, so this was not taken: "
                            + more.length() + " more");
        }
    }

    void edit(UnaryOperator<PromptLine> change) {
        PromptLine before = prompt;
        prompt = change.apply(prompt);
        if (!before.text().equals(prompt.text())) {
            view = view.chosen(-1);
            view = view.page() == Session.Page.HELP ? view.scrolledTo(0) : view;
            if (said.tone() == Tone.REFUSAL || said.tone() == Tone.CHOICES) {
                said = LastAnswer.NOTHING;
            }
        }
    }

    void recall(int further) {
        edit(it -> it.recalled(further));
    }

    /** A key shows its page, and pressed again goes back. */
    void turnTo(Session.Page page) {
        show(view.page() == page ? view.previous() : page);
    }

    /** Where every roll of the day is; those that are not in memory are read first. */
    void endDay() {
        if (view.page() == Session.Page.DAY_END) {
            show(view.previous());
        } else {
            runApart("day-end");
        }
    }

    void page(int by) {
        scroll(by * PAGE);
    }

    /** Down to the last line of the list at most, so that the way back up begins at once. */
    void scroll(int lines) {
        if (view.page() == Session.Page.HELP) {
            highlight(lines);
            return;
        }
        int all = switch (view.page()) {
            case SHOOT -> 0;
            case FRAMES ->
                ledger.saved()
                        .rollInHand()
                        .map(it -> 1 + it.counterChecks().size() + it.frames().size())
                        .orElse(0);
            case ROLLS -> rolls.size();
            case PLAN -> PlanTable.of(ledger.saved().asOf(now), now).size() + 4;
            case BAG ->
                NightBefore.of(ledger.saved().asOf(now), now).stream()
                        .mapToInt(it -> it.items().size() + 1)
                        .sum();
            case DAY_END ->
                DayEnd.of(shoot()).sections().stream()
                        .mapToInt(it -> it.items().size() + 1)
                        .sum();
            case HELP -> 0;
        };
        view = view.scrolledTo(Math.max(0, Math.min(all - 1, view.scroll() + lines)));
    }

    /** In help the highlight moves, and the list follows it. */
    private void highlight(int by) {
        List<HelpList.Entry> entries = HelpList.of(shoot()).entries();
        if (entries.isEmpty()) {
            say(Tone.QUIET, "nothing here to go to");
            return;
        }
        int to = view.chosen() < 0 ? by < 0 ? 0 : by - 1 : view.chosen() + by;
        view = view.chosen(Math.max(0, Math.min(entries.size() - 1, to)));
        say(Tone.QUIET, HelpList.words(entries.get(view.chosen()), view.topic()));
    }

    void repaint() {
        effects.add(new Effect.Repaint());
    }

    void nextTheme() {
        theme(Optional.empty());
    }

    void choose(int by) {
        Session shoot = shoot();
        List<PickList.Row> rows = PickList.of(shoot).rows();
        int last = Math.max(shoot.choices().size(), rows.size()) - 1;
        int from = Math.min(last, view.chosen());
        view = view.chosen(from < 0 ? Math.max(0, shoot.bestChoice()) : Math.max(0, Math.min(last, from + by)));
        shoot().picked().ifPresent(it -> say(Tone.QUIET, "Enter does what " + it.line() + " does: " + it.words()));
        shoot().highlighted()
                .ifPresent(it -> say(
                        Tone.QUIET,
                        "Enter sets " + it.aperture()
                                + it.time().map(time -> " " + time).orElse("") + ", Space sets it and logs a frame"));
    }

    void round(int by) {
        ShootState today = ledger.afterPending().asOf(now);
        List<CameraPlace> places = today.placesInUse();
        int at = today.placeInHand().map(places::indexOf).orElse(-1);
        CameraPlace next = places.get(at < 0 ? 0 : Math.floorMod(at + by, places.size()));
        runApart("cam " + next.camera() + next.back().map(it -> " " + it).orElse(""));
    }

    void complete() {
        String before = prompt.text().substring(0, prompt.cursor());
        int note = Completion.noteStart(before);
        if (before.indexOf('\n') >= 0) {
            say(Tone.CHOICES, "only the first line is completed");
        } else if (note >= 0) {
            completeFrom(
                    note,
                    before,
                    Completion.notes(ledger.afterPending(), now.toLocalDate(), before.substring(note)),
                    "");
        } else {
            completeFrom(before.lastIndexOf(' ') + 1, before, Completion.of(ledger.afterPending(), before), " ");
        }
    }

    private void completeFrom(int start, String before, List<String> fitting, String behind) {
        boolean isNote = behind.isEmpty();
        if (fitting.isEmpty()) {
            say(
                    Tone.CHOICES,
                    isNote ? "no other note of today or of this roll begins so" : "no word known here begins so");
            return;
        }
        String more =
                Completion.shared(fitting).substring(before.length() - start) + (fitting.size() == 1 ? behind : "");
        edit(it -> it.typed(more));
        int shown = isNote ? 6 : 24;
        if (fitting.size() > 1) {
            say(
                    Tone.CHOICES,
                    String.join(isNote ? " · " : "  ", fitting.size() > shown ? fitting.subList(0, shown) : fitting)
                            + (fitting.size() > shown ? " …" : ""));
        }
    }
}
