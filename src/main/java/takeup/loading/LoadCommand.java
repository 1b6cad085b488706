package takeup.loading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.advice.LoadChecks;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.day.CameraPlace;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.FilmSize;
import takeup.kit.Kit;
import takeup.kit.Stock;
import takeup.kit.Warning;
import takeup.planning.BagUse;
import takeup.prompt.CommandRejected;
import takeup.prompt.LabelWords;
import takeup.prompt.LoadArguments;
import takeup.report.FilmChangeText;
import takeup.report.LoadCheckText;
import takeup.report.StaysOn;
import takeup.report.WarningText;
import takeup.roll.Development;
import takeup.roll.Film;
import takeup.roll.NoteEvent;
import takeup.roll.RollChange;
import takeup.roll.RollEvent;
import takeup.roll.RollId;

/** {@code load cn400 @200}: puts a film in, or a rewound roll again. */
public final class LoadCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("load", "puts a film in; without a stock the same as before")
            .usage("load cn400 @200", "load bw400 120 @800 push 1 frames 24")
            .form("load cn400", "at its usual index")
            .form("load cn400 @200", "at another index")
            .form("load bw400 @800 push 1", "to be pushed one stop")
            .form("load cn400 120 frames 15", "film size and frames, where they are not the usual ones")
            .form("load cn400 as B-12", "under a name of your own")
            .form("load cn400 batch 4711", "with the number of its emulsion; the bag knows it by itself")
            .form("load", "the same film again as in the roll before")
            .needs(Need.EMPTY_BACK)
            .with(CommandInfo.Trait.TAKES_PROCESS);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments typed, CommandContext context) {
        LabelWords said = LabelWords.of(typed.line());
        Arguments arguments = said.label().isNone() ? typed : Arguments.of(said.rest());
        List<String> words = arguments.rest();
        Optional<RollId> again = RollWords.namedNotStock(words, context);
        if (again.isPresent()) {
            return Reloading.run(again.get(), words.subList(1, words.size()), context);
        }
        Camera camera = context.camera();
        CameraPlace place = context.state().placeInHand().orElseThrow();
        RollWords.refuseTakenPlace(place, context);
        RollNames.refuseTaken(said.label(), context);
        Film plain = film(
                LoadArguments.read(
                        words, arguments.textAfter("process"), context.state().kit()),
                camera,
                place,
                context);
        RollId id = context.state().nextRoll(context.letters());
        BagUse ofBag = BagUse.of(id, plain, said.label().batch(), context);
        Film film = plain.labelled(said.label().or(ofBag.label()));
        List<JournalEntry> entries = RollWords.putIn(id, new RollEvent.Loaded(id, camera, place.back(), film), context);
        context.state()
                .day()
                .shoot()
                .ifPresent(
                        it -> entries.add(new JournalEntry.OnRoll(id, new NoteEvent.ShootAssigned(it.assignment()))));
        entries.addAll(ofBag.entries());
        Reply reply = context.reply(entries);
        List<Warning> warnings =
                new ArrayList<>(WarningText.begunBetween(context.state(), reply.after(), context.now()));
        warnings.addAll(ofBag.warnings());
        warnings.addAll(film.warnings());
        Stock stock = film.stock();
        Outcome.Accepted loaded = reply.event("load")
                .says(
                        id + RollNames.beside(film.label()) + " in " + place,
                        ": " + stock.name() + ", " + film.size()
                                + film.label()
                                        .batch()
                                        .map(it -> ", batch " + it)
                                        .orElse("") + ", " + film.framesNominal() + " frames, "
                                + film.developmentWords() + ". " + speed(film, camera) + " Write "
                                + film.label().name().orElse(id.toString()) + " on the film."
                                + FilmChangeText.of(reply.after())
                                + StaysOn.sentence(StaysOn.of(context.state().inHand()))
                                + context.state().kit().remark(Kit.Sort.STOCKS, stock.key()))
                .fields(RollWords.fields(reply.roll(id))
                        .and("routine", LoadChecks.of(reply.after()).map(LoadCheckText::question)))
                .warnings(warnings)
                .accepted();
        return RollWords.asking(loaded, place, context);
    }

    /** What is to be set to the film's speed; a camera that sets itself reads the box speed off the cassette. */
    private static String speed(Film film, Camera camera) {
        if (!camera.isAutomatic()) {
            return "The meter must be set to " + film.index()
                    + (film.stock().countsFilter(film.index())
                            ? ", which counts its "
                                    + film.stock()
                                            .response()
                                            .filter()
                                            .orElseThrow()
                                            .name() + " filter in: log no filter for that."
                            : ".");
        }
        return film.index().equals(film.stock().boxSpeed())
                ? "The automatic camera uses box speed."
                : "The automatic camera uses box speed, " + film.stock().boxSpeed() + ", unless you set it to "
                        + film.index() + ".";
    }

    /** The film as it was typed; without a stock it is the one before, as far as nothing else is said. */
    private static Film film(RollChange said, Camera camera, CameraPlace place, CommandContext context) {
        Optional<Film> before = said.stock().isPresent()
                ? Optional.empty()
                : Optional.ofNullable(context.state().day().films().get(place));
        Stock stock = said.stock()
                .or(() -> before.map(Film::stock))
                .orElseThrow(() -> new CommandRejected(
                        "load which stock? no roll was in " + place + " before; such as load cn400"));
        FilmSize size = said.filmSize().orElseGet(() -> FilmFit.size(camera, stock));
        FilmFit.check(camera, stock, size);
        Development development = new Development(
                said.process()
                        .or(() -> before.map(it -> it.development().process()))
                        .orElse(stock.process()),
                said.pushStops()
                        .orElse(before.map(it -> it.development().pushStops()).orElse(0.0)));
        return new Film(
                stock,
                size,
                said.index()
                        .or(() -> before.map(Film::index))
                        .orElse(camera.isAutomatic() ? stock.boxSpeed() : stock.usualIndex()),
                development,
                said.framesNominal().orElse(camera.frames().getOrDefault(size, 36)));
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return Completions.with(state.kit().keys(Kit.Sort.STOCKS), "push", "pull", "process", "frames", "as", "batch");
    }
}
