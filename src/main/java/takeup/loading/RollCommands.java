package takeup.loading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import takeup.advice.LoadChecks;
import takeup.command.Arguments;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.day.CameraPlace;
import takeup.day.DayEvent;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Camera;
import takeup.kit.FilmSize;
import takeup.kit.Kit;
import takeup.kit.Stock;
import takeup.kit.Warning;
import takeup.planning.BagCommand;
import takeup.planning.ShootCommand;
import takeup.prompt.CommandRejected;
import takeup.prompt.LoadArguments;
import takeup.report.LoadCheckText;
import takeup.report.RollText;
import takeup.report.WarningText;
import takeup.roll.Condition;
import takeup.roll.Development;
import takeup.roll.Film;
import takeup.roll.Roll;
import takeup.roll.RollChange;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.text.English;

/** Lines about a roll as a whole: load, unload, development, notes, condition, fix roll. */
public final class RollCommands {
    static Outcome load(CommandContext context, Arguments arguments) {
        List<String> words = arguments.rest();
        Optional<RollId> again = RewindCommand.named(context, words);
        if (again.isPresent()) {
            return RewindCommand.again(context, again.get(), words.subList(1, words.size()));
        }
        Camera camera = context.camera();
        CameraPlace place = context.state().placeInHand().orElseThrow();
        context.state().rollIn(place).ifPresent(it -> {
            throw new CommandRejected(it.id() + " (" + it.film().stock().name() + ", " + RollText.left(it) + ") is in "
                    + place + ": unload it first");
        });
        RollChange said = LoadArguments.read(
                words, arguments.textAfter("process"), context.state().kit());
        Optional<Film> before = said.stock().isPresent()
                ? Optional.empty()
                : Optional.ofNullable(context.state().day().films().get(place));
        Stock stock = said.stock()
                .or(() -> before.map(Film::stock))
                .orElseThrow(() -> new CommandRejected(
                        "load which stock? no roll was in " + place + " before; such as load cn400"));
        FilmSize size = said.filmSize().orElseGet(() -> size(camera, stock));
        fits(camera, stock, size);
        int nominal = said.framesNominal().orElse(camera.frames().getOrDefault(size, 36));
        Development development = new Development(
                said.process()
                        .or(() -> before.map(it -> it.development().process()))
                        .orElse(stock.process()),
                said.pushStops()
                        .orElse(before.map(it -> it.development().pushStops()).orElse(0.0)));
        Film film = new Film(
                stock,
                size,
                said.index().or(() -> before.map(Film::index)).orElse(stock.usualIndex()),
                development,
                nominal);
        RollId id = context.state().nextRoll(context.letters());
        List<JournalEntry> entries = new ArrayList<>();
        if (!context.state().day().used().contains(place)) {
            entries.add(new JournalEntry.OnDay(new DayEvent.CameraSelected(place)));
        }
        entries.add(new JournalEntry.OnRoll(id, new RollEvent.Loaded(id, camera, place.back(), film)));
        context.state()
                .day()
                .job()
                .occasion()
                .ifPresent(it -> entries.add(
                        new JournalEntry.OnRoll(id, new RollEvent.ShootAssigned(ShootCommand.assignment(it)))));
        List<Warning> ofBag = new ArrayList<>();
        BagCommand.given(context, id, film, ofBag).ifPresent(entries::add);
        ShootState after = context.after(entries);
        Roll roll = after.rolls().get(id);
        List<Warning> warnings = new ArrayList<>(WarningText.begunBetween(context.state(), after, context.now()));
        warnings.addAll(ofBag);
        roll.film().pushMismatch().ifPresent(warnings::add);
        String text = id + " in " + place + ": " + stock.name() + ", " + size + ", " + nominal + " frames, "
                + film.developmentWords()
                + ". The meter must be set to " + film.index() + ". Write " + id + " on the film."
                + context.state().kit().remark(Kit.Sort.STOCKS, stock.key());
        return context.does(
                entries,
                after,
                new Outcome.Answer(
                        "load",
                        text,
                        fields(roll).and("routine", LoadChecks.of(after).map(LoadCheckText::question)),
                        context.unsilenced(warnings)),
                List.of());
    }

    private static FilmSize size(Camera camera, Stock stock) {
        for (FilmSize size : camera.frames().keySet()) {
            if (stock.filmSizes().contains(size)) {
                return size;
            }
        }
        throw new CommandRejected(stock.name() + " comes in " + words(stock.filmSizes()) + ", " + camera.name()
                + " takes " + words(List.copyOf(camera.frames().keySet())));
    }

    private static void fits(Camera camera, Stock stock, FilmSize size) {
        if (!camera.frames().containsKey(size)) {
            throw new CommandRejected(camera.name() + " takes "
                    + words(List.copyOf(camera.frames().keySet())) + ", not " + size);
        }
        if (!stock.filmSizes().contains(size)) {
            throw new CommandRejected(stock.name() + " comes in " + words(stock.filmSizes()) + ", not " + size
                    + "; if yours does, say so in its profile");
        }
    }

    private static String words(List<FilmSize> sizes) {
        return String.join(" and ", sizes.stream().map(Object::toString).toList());
    }

    static Json.Obj fields(Roll roll) {
        return Json.object()
                .and("roll", roll.id())
                .and("camera", roll.camera().key())
                .and("back", roll.back())
                .and("stock", roll.film().stock().key())
                .and("filmSize", roll.film().size())
                .and("exposureIndex", roll.film().index().arithmetic())
                .and("pushStops", roll.film().development().pushStops())
                .and("process", roll.film().development().process())
                .and("development", roll.film().developmentWords())
                .and("framesNominal", roll.film().framesNominal())
                .and("framesUsed", roll.framesUsed())
                .and("framesLeft", roll.framesLeft())
                .and("state", roll.state());
    }

    static Outcome unload(CommandContext context, List<String> words) {
        Optional<RollId> id = rollNamed(context, words);
        List<String> rest = words.subList(id.isPresent() ? 1 : 0, words.size());
        boolean sure = rest.equals(List.of("yes"));
        if (!sure) {
            Arguments.alone("unload", rest);
        }
        Roll roll = id.map(context::roll).orElseGet(context::roll);
        boolean isHere = context.state()
                .rollInHand()
                .map(it -> it.id().equals(roll.id()))
                .orElse(false);
        if (!isHere && roll.state() != Roll.State.REWOUND) {
            throw new CommandRejected(roll.id()
                    + (roll.state() == Roll.State.OPEN
                            ? " is in " + roll.place() + ": cam " + roll.place().replace(" back", "") + ", then unload"
                            : " is " + roll.state() + " already"));
        }
        List<JournalEntry> entries = new ArrayList<>();
        entries.add(new JournalEntry.OnRoll(roll.id(), new RollEvent.Unloaded()));
        entries.add(new JournalEntry.OnDay(new DayEvent.CameraSetupChanged(
                roll.camera().key(), context.state().inHand(roll.camera()))));
        entries.add(new JournalEntry.OnDay(
                new DayEvent.RollClosed(roll.id(), CameraPlace.of(roll), Optional.of(roll.film()))));
        ShootState after = context.after(entries);
        Roll now = after.rolls().get(roll.id());
        String text = roll.id() + " finished: " + now.framesUsed() + " of "
                + now.film().framesNominal() + " frames, " + now.film().developmentWords() + ". Its JSON is exports/"
                + roll.id() + ".json.";
        Outcome.Accepted does = context.does(
                entries,
                after,
                new Outcome.Answer(
                        "unload",
                        text,
                        fields(now),
                        context.unsilenced(WarningText.begunBetween(context.state(), after, context.now()))),
                List.of(roll.id()));
        if (roll.framesLeft() > 0 && !sure) {
            return new Outcome.NeedsConfirmation(
                    roll.id() + " has " + English.count(roll.framesLeft(), "frame")
                            + " left; yes unloads it all the same",
                    does);
        }
        return does;
    }

    static Outcome push(CommandContext context, String word, List<String> rest) {
        if (word.equals("normal")) {
            Arguments.alone(word, rest);
        }
        double stops = word.equals("normal")
                ? LoadArguments.push(word, "")
                : LoadArguments.push(word, Arguments.one(word, rest, word + " 1"));
        Roll roll = context.roll();
        return corrected(
                context,
                roll,
                RollChange.push(stops),
                it -> it.id() + ", the whole roll: " + it.film().developmentWords() + ".");
    }

    public static Outcome fix(CommandContext context, Arguments arguments, List<String> words) {
        // Many stocks are called as a roll could be: bw400.
        Optional<RollId> id = rollNamed(context, words)
                .filter(it -> context.state().known().contains(it)
                        || context.state().kit().stock(words.get(0)).isEmpty());
        Roll roll = context.roll(id, "fix roll r7 @400");
        RollChange change = LoadArguments.read(
                words.subList(id.isPresent() ? 1 : 0, words.size()),
                arguments.textAfter("process"),
                context.state().kit());
        if (change.equals(RollChange.NOTHING)) {
            throw new CommandRejected("what is right for the roll? fix roll @400, fix roll bw400 push 1");
        }
        Film film = roll.film().with(change);
        fits(roll.camera(), film.stock(), film.size());
        if (change.stock().isPresent()
                && change.process().isEmpty()
                && roll.film()
                        .development()
                        .process()
                        .equals(roll.film().stock().process())) {
            change = new RollChange(
                    change.stock(),
                    change.filmSize(),
                    change.index(),
                    change.pushStops(),
                    Optional.of(film.stock().process()),
                    change.framesNominal());
        }
        if (change.filmSize().isPresent() && change.framesNominal().isEmpty()) {
            change = new RollChange(
                    change.stock(),
                    change.filmSize(),
                    change.index(),
                    change.pushStops(),
                    change.process(),
                    OptionalInt.of(roll.camera().frames().get(film.size())));
        }
        return corrected(
                context,
                roll,
                change,
                it -> it.id() + ": " + it.film().stock().name() + ", "
                        + it.film().size() + ", " + it.film().framesNominal() + " frames, "
                        + it.film().developmentWords() + ", " + RollText.left(it) + ".");
    }

    private static Outcome corrected(
            CommandContext context, Roll roll, RollChange change, Function<Roll, String> words) {
        List<JournalEntry> entries = context.on(roll, new RollEvent.RollCorrected(change));
        ShootState after = context.after(entries);
        Roll now = after.rolls().get(roll.id());
        List<Warning> warnings =
                now
                        .film()
                        .pushMismatch()
                        .filter(it -> !roll.film().pushMismatch().equals(Optional.of(it)))
                        .stream()
                        .toList();
        return context.does(
                entries,
                after,
                new Outcome.Answer("fix", words.apply(now), fields(now), context.unsilenced(warnings)),
                context.rollsToExport(roll));
    }

    static Outcome note(CommandContext context, Arguments arguments) {
        List<String> words = arguments.rest();
        Optional<RollId> id = rollNamed(context, words);
        Roll roll = context.roll(id, "note r7 words");
        String note = arguments.textAfterWords(id.isPresent() ? 2 : 1);
        if (note.isEmpty()) {
            throw new CommandRejected("the note is empty: note and the words");
        }
        List<JournalEntry> entries = context.on(roll, new RollEvent.Noted(note));
        ShootState after = context.after(entries);
        Roll now = after.rolls().get(roll.id());
        return context.does(
                entries,
                after,
                new Outcome.Answer(
                        "note",
                        "Note on " + roll.id() + ": " + now.note().orElse("") + ".",
                        CommandContext.fields(now).and("note", now.note()),
                        List.of()),
                context.rollsToExport(roll));
    }

    /** A roll number in front of free words: {@code r7} is one, {@code f8} is a word. */
    private static Optional<RollId> rollNamed(CommandContext context, List<String> words) {
        return context.rollNumber(words)
                .filter(it -> it.letters().equals(context.letters())
                        || context.state().known().contains(it));
    }

    static Outcome condition(CommandContext context, Arguments arguments) {
        List<String> words = arguments.rest();
        Optional<RollId> id = rollNamed(context, words);
        Roll roll = context.roll(id, "condition r7 torn");
        List<String> rest = words.subList(id.isPresent() ? 1 : 0, words.size());
        Optional<Condition.Kind> kind = rest.isEmpty()
                ? Optional.empty()
                : Condition.Kind.named(rest.get(0)).filter(it -> it != Condition.Kind.OTHER);
        String said = arguments.textAfterWords(1 + (id.isPresent() ? 1 : 0) + (kind.isPresent() ? 1 : 0));
        if (kind.isEmpty() && said.isEmpty()) {
            throw new CommandRejected("what must the lab know? condition torn, opened, stuck, partial, and words");
        }
        Condition condition = new Condition(
                kind.orElse(Condition.Kind.OTHER), Optional.of(said).filter(it -> !it.isEmpty()));
        List<JournalEntry> entries = context.on(roll, new RollEvent.ConditionNoted(condition));
        ShootState after = context.after(entries);
        return context.does(
                entries,
                after,
                new Outcome.Answer(
                        "fix",
                        "Condition of " + roll.id() + ": " + condition.kind()
                                + condition.words().map(it -> ", " + it).orElse("") + ". It goes to the lab.",
                        CommandContext.fields(after.rolls().get(roll.id()))
                                .and("condition", condition.kind())
                                .and("words", condition.words()),
                        List.of()),
                context.rollsToExport(roll));
    }
}
