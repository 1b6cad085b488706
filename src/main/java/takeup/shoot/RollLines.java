package takeup.shoot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import takeup.day.DayEvent;
import takeup.day.Place;
import takeup.kit.Camera;
import takeup.kit.FilmSize;
import takeup.kit.Json;
import takeup.kit.Kit;
import takeup.kit.Stock;
import takeup.kit.Warning;
import takeup.roll.Condition;
import takeup.roll.Development;
import takeup.roll.Film;
import takeup.roll.Roll;
import takeup.roll.RollChange;
import takeup.roll.RollEvent;
import takeup.roll.RollId;

/** Lines about a roll as a whole: load, unload, development, notes, condition, fix roll. */
final class RollLines {
    private final Interpreter in;

    RollLines(Interpreter in) {
        this.in = in;
    }

    Outcome load(List<String> words) {
        RewindLines rewound = new RewindLines(in);
        Optional<RollId> again = rewound.named(words);
        if (again.isPresent()) {
            return rewound.again(again.get(), words.subList(1, words.size()));
        }
        Camera camera = in.camera();
        Place place = in.s.place().orElseThrow();
        in.s.rollIn(place).ifPresent(it -> {
            throw new Refusal(it.id() + " (" + it.film().stock().name() + ", " + State.leftWords(it) + ") is in "
                    + place + ": unload it first");
        });
        RollChange said = LoadWords.read(words, in.rawAfter("process"), in.s.kit());
        Optional<Film> before = said.stock().isPresent()
                ? Optional.empty()
                : Optional.ofNullable(in.s.day().films().get(place));
        Stock stock = said.stock()
                .or(() -> before.map(Film::stock))
                .orElseThrow(
                        () -> new Refusal("load which stock? no roll was in " + place + " before; such as load cn400"));
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
        RollId id = in.s.nextRoll(in.letters());
        List<Entry> entries = new ArrayList<>();
        if (!in.s.day().used().contains(place)) {
            entries.add(new Entry.OnDay(new DayEvent.Took(place)));
        }
        entries.add(new Entry.OnRoll(id, new RollEvent.Loaded(id, camera, place.back(), film)));
        in.s.day()
                .job()
                .occasion()
                .ifPresent(
                        it -> entries.add(new Entry.OnRoll(id, new RollEvent.Assigned(OccasionLines.assignment(it)))));
        List<Warning> ofBag = new ArrayList<>();
        new BagLines(in).given(id, film, ofBag).ifPresent(entries::add);
        Situation after = in.after(entries);
        Roll roll = after.rolls().get(id);
        List<Warning> warnings = new ArrayList<>(Begun.between(in.s, after, in.now));
        warnings.addAll(ofBag);
        State.pushMismatch(roll).ifPresent(warnings::add);
        String text = id + " in " + place + ": " + stock.name() + ", " + size + ", " + nominal + " frames, "
                + film.developmentWords()
                + ". The meter must be set to " + film.index() + ". Write " + id + " on the film."
                + in.s.kit().remark(Kit.Sort.STOCKS, stock.key());
        return in.does(
                entries,
                after,
                new Outcome.Answer(
                        "load",
                        text,
                        fields(roll).and("routine", Routine.of(after).map(Routine::question)),
                        in.loud(warnings)),
                List.of());
    }

    private static FilmSize size(Camera camera, Stock stock) {
        for (FilmSize size : camera.frames().keySet()) {
            if (stock.filmSizes().contains(size)) {
                return size;
            }
        }
        throw new Refusal(stock.name() + " comes in " + words(stock.filmSizes()) + ", " + camera.name() + " takes "
                + words(List.copyOf(camera.frames().keySet())));
    }

    private static void fits(Camera camera, Stock stock, FilmSize size) {
        if (!camera.frames().containsKey(size)) {
            throw new Refusal(camera.name() + " takes "
                    + words(List.copyOf(camera.frames().keySet())) + ", not " + size);
        }
        if (!stock.filmSizes().contains(size)) {
            throw new Refusal(stock.name() + " comes in " + words(stock.filmSizes()) + ", not " + size
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

    Outcome unload(List<String> words) {
        Optional<RollId> id = rollNamed(words);
        List<String> rest = words.subList(id.isPresent() ? 1 : 0, words.size());
        boolean sure = rest.equals(List.of("yes"));
        if (!sure) {
            Interpreter.alone("unload", rest);
        }
        Roll roll = id.map(in::roll).orElseGet(in::roll);
        boolean isHere = in.s.roll().map(it -> it.id().equals(roll.id())).orElse(false);
        if (!isHere && roll.state() != Roll.State.REWOUND) {
            throw new Refusal(roll.id()
                    + (roll.state() == Roll.State.OPEN
                            ? " is in " + roll.place() + ": cam " + roll.place().replace(" back", "") + ", then unload"
                            : " is " + roll.state() + " already"));
        }
        List<Entry> entries = new ArrayList<>();
        entries.add(new Entry.OnRoll(roll.id(), new RollEvent.Unloaded()));
        entries.add(new Entry.OnDay(new DayEvent.Changed(roll.camera().key(), in.s.inHand(roll.camera()))));
        entries.add(new Entry.OnDay(new DayEvent.Touched(roll.id(), Situation.place(roll), Optional.of(roll.film()))));
        Situation after = in.after(entries);
        Roll now = after.rolls().get(roll.id());
        String text = roll.id() + " finished: " + now.framesUsed() + " of "
                + now.film().framesNominal() + " frames, " + now.film().developmentWords() + ". Its JSON is exports/"
                + roll.id() + ".json.";
        Outcome.Does does = in.does(
                entries,
                after,
                new Outcome.Answer("unload", text, fields(now), in.loud(Begun.between(in.s, after, in.now))),
                List.of(roll.id()));
        if (roll.framesLeft() > 0 && !sure) {
            return new Outcome.Asked(
                    roll.id() + " has " + roll.framesLeft() + (roll.framesLeft() == 1 ? " frame" : " frames")
                            + " left; yes unloads it all the same",
                    does);
        }
        return does;
    }

    Outcome push(String word, List<String> rest) {
        double stops = word.equals("normal")
                ? LoadWords.push(Interpreter.alone(word, rest), "")
                : LoadWords.push(word, Interpreter.one(word, rest, word + " 1"));
        Roll roll = in.roll();
        return corrected(
                roll,
                RollChange.push(stops),
                it -> it.id() + ", the whole roll: " + it.film().developmentWords() + ".");
    }

    Outcome fix(List<String> words) {
        // Many stocks are called as a roll could be: bw400.
        Optional<RollId> id = rollNamed(words)
                .filter(it -> in.s.known().contains(it)
                        || in.s.kit().stock(words.get(0)).isEmpty());
        Roll roll = in.roll(id, "fix roll r7 @400");
        RollChange change =
                LoadWords.read(words.subList(id.isPresent() ? 1 : 0, words.size()), in.rawAfter("process"), in.s.kit());
        if (change.equals(RollChange.NOTHING)) {
            throw new Refusal("what is right for the roll? fix roll @400, fix roll bw400 push 1");
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
                roll,
                change,
                it -> it.id() + ": " + it.film().stock().name() + ", "
                        + it.film().size() + ", " + it.film().framesNominal() + " frames, "
                        + it.film().developmentWords() + ", " + State.leftWords(it) + ".");
    }

    private Outcome corrected(Roll roll, RollChange change, Function<Roll, String> words) {
        List<Entry> entries = in.on(roll, new RollEvent.RollCorrected(change));
        Situation after = in.after(entries);
        Roll now = after.rolls().get(roll.id());
        List<Warning> warnings =
                State.pushMismatch(now).filter(it -> !State.pushMismatch(roll).equals(Optional.of(it))).stream()
                        .toList();
        return in.does(
                entries,
                after,
                new Outcome.Answer("fix", words.apply(now), fields(now), in.loud(warnings)),
                in.settling(roll));
    }

    Outcome note(List<String> words) {
        Optional<RollId> id = rollNamed(words);
        Roll roll = in.roll(id, "note r7 words");
        String note = in.raw(id.isPresent() ? 2 : 1);
        if (note.isEmpty()) {
            throw new Refusal("the note is empty: note and the words");
        }
        List<Entry> entries = in.on(roll, new RollEvent.Noted(note));
        Situation after = in.after(entries);
        Roll now = after.rolls().get(roll.id());
        return in.does(
                entries,
                after,
                new Outcome.Answer(
                        "note",
                        "Note on " + roll.id() + ": " + now.note().orElse("") + ".",
                        Interpreter.fields(now).and("note", now.note()),
                        List.of()),
                in.settling(roll));
    }

    /** A roll number in front of free words: {@code r7} is one, {@code f8} is a word. */
    private Optional<RollId> rollNamed(List<String> words) {
        return in.rollNumber(words)
                .filter(it -> it.letters().equals(in.letters()) || in.s.known().contains(it));
    }

    Outcome condition(List<String> words) {
        Optional<RollId> id = rollNamed(words);
        Roll roll = in.roll(id, "condition r7 torn");
        List<String> rest = words.subList(id.isPresent() ? 1 : 0, words.size());
        Optional<Condition.Kind> kind = rest.isEmpty()
                ? Optional.empty()
                : Condition.Kind.named(rest.get(0)).filter(it -> it != Condition.Kind.OTHER);
        String said = in.raw(1 + (id.isPresent() ? 1 : 0) + (kind.isPresent() ? 1 : 0));
        if (kind.isEmpty() && said.isEmpty()) {
            throw new Refusal("what must the lab know? condition torn, opened, stuck, partial, and words");
        }
        Condition condition = new Condition(
                kind.orElse(Condition.Kind.OTHER), Optional.of(said).filter(it -> !it.isEmpty()));
        List<Entry> entries = in.on(roll, new RollEvent.Conditioned(condition));
        Situation after = in.after(entries);
        return in.does(
                entries,
                after,
                new Outcome.Answer(
                        "fix",
                        "Condition of " + roll.id() + ": " + condition.kind()
                                + condition.words().map(it -> ", " + it).orElse("") + ". It goes to the lab.",
                        Interpreter.fields(after.rolls().get(roll.id()))
                                .and("condition", condition.kind())
                                .and("words", condition.words()),
                        List.of()),
                in.settling(roll));
    }
}
