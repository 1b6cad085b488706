package takeup.shoot;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import takeup.day.Place;
import takeup.kit.Json;
import takeup.kit.Suggestion;
import takeup.kit.Warning;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.shoot.Shoot.Said;
import takeup.shoot.Shoot.Spaces;
import takeup.shoot.Shoot.Tone;
import takeup.shoot.Shoot.View;
import takeup.shoot.Shoot.Waiting;

/** One turn of the loop: begins with the model, gathers what changes and what is asked of the outside, ends in a {@link Step}. */
final class Turn {
    /** Spaces nearer to each other than this, in milliseconds, are a held key, a paste or a slow line. */
    static final long HELD = 60;

    private final Shoot.Settings settings;
    private final List<Effect> effects = new ArrayList<>();
    private final OffsetDateTime now;
    private final long ticks;
    private Situation kept;
    private List<Waiting> waiting;
    private Optional<String> trouble;
    private Prompt prompt;
    private Said said;
    private Optional<Outcome.Asked> question;
    private List<String> todo;
    private Spaces spaces;
    private View view;
    private Optional<Place> seen;
    private List<RollLine> rolls;
    private boolean leaving;

    Turn(Shoot shoot, OffsetDateTime now, long ticks) {
        this.settings = shoot.settings();
        this.now = now;
        this.ticks = ticks;
        this.kept = shoot.kept();
        this.waiting = new ArrayList<>(shoot.waiting());
        this.trouble = shoot.trouble();
        this.prompt = shoot.prompt();
        this.said = shoot.said();
        this.question = shoot.question();
        this.todo = new ArrayList<>(shoot.todo());
        this.spaces = shoot.spaces();
        this.view = shoot.view();
        this.seen = shoot.seen();
        this.rolls = shoot.rolls();
        this.leaving = shoot.leaving();
    }

    Step step() {
        return new Step(shoot(), effects);
    }

    private Shoot shoot() {
        return new Shoot(kept, waiting, trouble, prompt, said, question, todo, spaces, view, seen, rolls, settings, leaving, now, ticks);
    }

    private Situation ahead() {
        return waiting.isEmpty() ? kept : waiting.get(waiting.size() - 1).after();
    }

    Turn pressed(Key key) {
        tryAgain();
        boolean isSpace = key.equals(Key.typed(" "));
        if (spaces.count() > 0 && !(isSpace && ticks - spaces.lastTicks() < HELD)) {
            settleSpaces();
        }
        boolean wasLeaving = leaving;
        leaving = false;
        if (key.name() == Key.Name.PASTE) {
            edit(it -> it.typed(clean(key.text())));
            return this;
        }
        Optional<Binding> binding = Binding.of(key, shoot());
        if (binding.isPresent()) {
            leaving = wasLeaving && key.equals(Key.ctrl('c'));
            Optional<String> whyNot = binding.get().whyNot().apply(shoot());
            if (whyNot.isPresent()) {
                say(Tone.REFUSAL, whyNot.get());
            } else {
                binding.get().action().accept(this);
            }
        } else if (key.name() == Key.Name.CHARACTER) {
            edit(it -> it.typed(key.text()));
        }
        return this;
    }

    /** Pasted text: line ends of every kind become line feeds, tabs become blanks. */
    private static String clean(String text) {
        return text.replace("\r\n", "\n").replace('\r', '\n').replace('\t', ' ');
    }

    Turn ticked() {
        if (spaces.count() > 0 && ticks - spaces.lastTicks() >= HELD) {
            settleSpaces();
        }
        return this;
    }

    void edit(UnaryOperator<Prompt> change) {
        Prompt before = prompt;
        prompt = change.apply(prompt);
        if (!before.text().equals(prompt.text())) {
            view = view.chosen(-1);
            if (said.tone() == Tone.REFUSAL) {
                said = new Said(Tone.QUIET, "", List.of());
            }
        }
    }

    void space() {
        if (spaces.count() > 0) {
            spaces = new Spaces(spaces.count() + 1, ticks);
        } else {
            spaces = new Spaces(1, ticks);
        }
        effects.add(new Effect.Wake(HELD));
    }

    /** What the Spaces come to: one is a frame; more are a held key, and log nothing. */
    private void settleSpaces() {
        int count = spaces.count();
        spaces = Spaces.NONE;
        if (count > 1) {
            prompt = prompt.with("x" + Math.min(99, count));
            say(Tone.REFUSAL, "a held key logs nothing: Enter logs " + Math.min(99, count) + " frames, Esc drops them");
            return;
        }
        Optional<Place> place = ahead().place();
        boolean other = seen.isPresent() && !seen.equals(place);
        Optional<Suggestion> chosen = chosen();
        read(chosen.map(Turn::line).orElse("."), other);
        view = view.chosen(-1);
    }

    private Optional<Suggestion> chosen() {
        List<Suggestion> choices = shoot().choices();
        return view.chosen() >= 0 && view.chosen() < choices.size() ? Optional.of(choices.get(view.chosen())) : Optional.empty();
    }

    /** A suggestion as a frame line; a time past the dial is one by the watch. */
    private static String line(Suggestion row) {
        return row.aperture() + row.time().map(it -> " " + (it.seconds() == it.exactSeconds() && it.seconds() > 1 ? "b" : "") + it).orElse("");
    }

    void enter() {
        if (prompt.isEmpty()) {
            Optional<Suggestion> chosen = chosen();
            if (chosen.isPresent()) {
                read("set " + line(chosen.get()), false);
                view = view.chosen(-1);
            } else if (view.page() == Shoot.Page.SHOOT) {
                sayWhatSpaceDoes();
            } else {
                page(Shoot.Page.SHOOT);
            }
            return;
        }
        List<String> lines = prompt.lines();
        prompt = prompt.cleared();
        todo.addAll(lines);
        if (lines.isEmpty()) {
            return;
        }
        run();
    }

    private void sayWhatSpaceDoes() {
        Outcome same = Interpreter.read(ahead(), ".", now, settings.letters());
        say(Tone.QUIET, same instanceof Outcome.Does does ? "Space logs: " + does.answer().text()
                : same instanceof Outcome.Refused refused ? "Space: " + refused.why() : "Space logs the same again");
    }

    /** Reads the lines that are to be read, until one is refused, asks, or waits for a roll. */
    private void run() {
        while (!todo.isEmpty()) {
            String line = todo.get(0);
            if (!read(line, false)) {
                if (said.tone() == Tone.REFUSAL && !todo.isEmpty()) {
                    prompt = new Prompt("", 0, prompt.past(), 0).with(String.join("\n", todo));
                    todo.clear();
                }
                return;
            }
            if (!todo.isEmpty()) {
                todo.remove(0);
            }
        }
    }

    /** A line that does not come from the prompt, and leaves what stands there alone. */
    void runApart(String line) {
        read(line, false);
    }

    /** Reads one line; false if it was refused, or waits. */
    private boolean read(String line, boolean large) {
        if (question.isPresent()) {
            Outcome.Does ifYes = question.get().ifYes();
            question = Optional.empty();
            if (line.strip().equalsIgnoreCase("yes")) {
                return accept(ifYes, line, large);
            }
        }
        Outcome outcome = Interpreter.read(ahead(), line, now, settings.letters());
        if (outcome instanceof Outcome.Refused refused) {
            say(Tone.REFUSAL, refused.why());
            return false;
        }
        if (outcome instanceof Outcome.Asked asked) {
            question = Optional.of(asked);
            say(Tone.QUESTION, asked.question());
            return true;
        }
        if (outcome instanceof Outcome.Needs needs) {
            if (todo.isEmpty()) {
                todo.add(line);
            }
            effects.add(new Effect.Fetch(needs.roll()));
            say(Tone.QUIET, "reading " + needs.roll() + " …");
            return false;
        }
        return accept((Outcome.Does) outcome, line, large);
    }

    private boolean accept(Outcome.Does does, String line, boolean large) {
        if (does.entries().isEmpty()) {
            return act(does, line);
        }
        if (settings.readOnly().isPresent()) {
            say(Tone.REFUSAL, "read only: " + settings.readOnly().get());
            return false;
        }
        Happened step = new Happened(ahead().nextStep(), now, does.entries());
        List<Roll> settle = does.settle().stream().map(it -> does.after().rolls().get(it)).toList();
        waiting.add(new Waiting(step, does.after(), does.answer(), large, settle));
        if (does.answer().event().equals("frame")) {
            seen = does.after().place();
        } else if (seen.isEmpty()) {
            seen = ahead().place();
        }
        if (waiting.size() == 1) {
            hand();
        }
        if (view.page() != Shoot.Page.SHOOT && view.page() != Shoot.Page.FRAMES) {
            view = view.page(Shoot.Page.SHOOT);
        }
        return true;
    }

    private void hand() {
        effects.add(new Effect.Keep(waiting.get(0).step(), waiting.get(0).settle()));
    }

    private void tryAgain() {
        if (trouble.isPresent() && !waiting.isEmpty()) {
            trouble = Optional.empty();
            hand();
        }
    }

    Turn kept(long step) {
        if (waiting.isEmpty() || waiting.get(0).step().step() != step) {
            return this;
        }
        Waiting first = waiting.remove(0);
        kept = first.after();
        trouble = Optional.empty();
        said = new Said(first.large() ? Tone.LARGE : Tone.ANSWER, first.answer().text(), first.answer().warnings());
        if (!waiting.isEmpty()) {
            hand();
        } else if (!todo.isEmpty()) {
            run();
        }
        if (view.page() == Shoot.Page.ROLLS) {
            effects.add(new Effect.ListRolls());
        }
        return this;
    }

    Turn notKept(String why) {
        trouble = Optional.of(why);
        return this;
    }

    Turn told(String words) {
        say(Tone.REFUSAL, words);
        return this;
    }

    Turn fetched(RollId roll, List<Happened> steps, List<String> problems) {
        kept = kept.with(steps);
        Situation before = kept;
        List<Waiting> again = new ArrayList<>();
        for (Waiting one : waiting) {
            before = before.and(one.step());
            again.add(new Waiting(one.step(), before, one.answer(), one.large(), one.settle()));
        }
        waiting = again;
        if (!kept.rolls().containsKey(roll)) {
            todo.clear();
            say(Tone.REFUSAL, problems.isEmpty() ? roll + " cannot be read" : problems.get(0));
            return this;
        }
        run();
        return this;
    }

    Turn listed(List<RollLine> lines) {
        rolls = lines;
        return this;
    }

    Turn ended(String why) {
        quit();
        return this;
    }

    private boolean act(Outcome.Does does, String line) {
        switch (does.act()) {
            case SHOW_SHOOT -> page(Shoot.Page.SHOOT);
            case SHOW_FRAMES -> page(Shoot.Page.FRAMES);
            case SHOW_ROLLS -> page(Shoot.Page.ROLLS);
            case SHOW_HELP -> page(Shoot.Page.HELP);
            case NEXT_THEME -> theme(does.answer().fields().field("theme").map(it -> it instanceof Json.Text text ? text.value() : ""));
            case BIG -> big();
            case QUIT -> {
                return quitWhenSaved(line);
            }
            case QUIT_ANYWAY -> quit();
            case NOTHING -> said = new Said(Tone.ANSWER, does.answer().text(), does.answer().warnings());
        }
        return true;
    }

    private boolean quitWhenSaved(String line) {
        if (trouble.isPresent()) {
            say(Tone.REFUSAL, "something is NOT SAVED yet; quit yes leaves all the same and prints it on the terminal");
            return false;
        }
        if (!waiting.isEmpty()) {
            if (todo.isEmpty()) {
                todo.add(line);
            }
            return false;
        }
        quit();
        return true;
    }

    private void quit() {
        List<String> lines = new ArrayList<>();
        for (Waiting one : waiting) {
            lines.add("NOT SAVED: " + one.answer().text());
        }
        lines.add(0, "takeup: " + savedWords());
        effects.add(new Effect.Quit(lines));
    }

    private String savedWords() {
        List<String> all = new ArrayList<>();
        kept.rolls().values().stream().filter(it -> it.state() == Roll.State.OPEN)
                .forEach(it -> all.add(it.id() + " in " + it.place() + ": " + it.frames().size() + " logged, " + State.leftWords(it)));
        return "saved in " + settings.folder() + (all.isEmpty() ? ", no roll is open" : ". " + String.join("; ", all)) + ".";
    }

    void leave() {
        if (!prompt.isEmpty()) {
            prompt = prompt.cleared();
            say(Tone.QUIET, "cleared (PgUp brings it back); Ctrl-C again, or quit, leaves");
            leaving = true;
        } else if (!leaving) {
            leaving = true;
            question = Optional.empty();
            say(Tone.QUIET, "Ctrl-C again, or quit, leaves; all that was logged is on disk");
        } else {
            quitWhenSaved("quit");
        }
    }

    void escape() {
        question = Optional.empty();
        if (!prompt.isEmpty()) {
            prompt = prompt.cleared();
            say(Tone.QUIET, "cleared; PgUp brings it back");
        } else if (view.chosen() >= 0) {
            view = view.chosen(-1);
        } else {
            page(Shoot.Page.SHOOT);
            view = view.big(false);
            said = new Said(Tone.QUIET, "", List.of());
        }
    }

    void page(Shoot.Page page) {
        view = view.page(view.page() == page && page != Shoot.Page.HELP ? Shoot.Page.SHOOT : page);
        if (view.page() == Shoot.Page.ROLLS) {
            effects.add(new Effect.ListRolls());
        }
    }

    void scroll(int lines) {
        view = view.scrolled(lines);
    }

    void recall(int further) {
        prompt = prompt.recalled(further);
    }

    void repaint() {
        effects.add(new Effect.Repaint());
    }

    void big() {
        view = view.big(!view.big());
    }

    void theme(Optional<String> name) {
        List<String> known = Lexicon.THEMES;
        String next = name.orElseGet(() -> known.get((known.indexOf(view.theme()) + 1) % known.size()));
        if (!known.contains(next)) {
            say(Tone.REFUSAL, next + " is no theme known here: " + String.join(", ", known));
            return;
        }
        view = view.theme(next);
        say(Tone.QUIET, "theme " + next);
    }

    void choose(int by) {
        int count = shoot().choices().size();
        int from = view.chosen() >= 0 ? view.chosen() : Math.max(0, shoot().bestChoice());
        view = view.chosen(view.chosen() < 0 ? from : Math.max(0, Math.min(count - 1, from + by)));
        chosen().ifPresent(it -> say(Tone.QUIET, "Enter sets " + it.aperture() + it.time().map(time -> " " + time).orElse("") + ", Space sets it and logs a frame"));
    }

    void round(int by) {
        List<Place> places = ahead().placesInUse();
        int at = ahead().place().map(places::indexOf).orElse(0);
        Place next = places.get(Math.floorMod(at + by, places.size()));
        read("cam " + next.camera() + next.back().map(it -> " " + it).orElse(""), false);
    }

    void complete() {
        String before = prompt.text().substring(0, prompt.cursor());
        if (before.indexOf(';') >= 0 || before.indexOf('\n') >= 0) {
            return;
        }
        List<String> words = Completion.of(ahead(), before);
        if (words.isEmpty()) {
            say(Tone.QUIET, "no word known here begins so");
            return;
        }
        int start = before.lastIndexOf(' ') + 1;
        String more = Completion.shared(words).substring(before.length() - start) + (words.size() == 1 ? " " : "");
        prompt = prompt.typed(more);
        if (words.size() > 1) {
            say(Tone.QUIET, String.join("  ", words.size() > 24 ? words.subList(0, 24) : words) + (words.size() > 24 ? " …" : ""));
        }
    }

    private void say(Tone tone, String words) {
        said = new Said(tone, words, tone == Tone.REFUSAL || tone == Tone.QUESTION ? List.<Warning>of() : said.warnings());
    }
}
