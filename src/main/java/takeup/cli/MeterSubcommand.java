package takeup.cli;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.advice.AdviceRequest;
import takeup.console.Clock;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.exposure.ExposureTime;
import takeup.exposure.LongExposure;
import takeup.exposure.Stops;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Kit;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;
import takeup.kit.Warning;
import takeup.metering.MeterQuery;
import takeup.options.GlobalOptions;
import takeup.options.JsonOption;
import takeup.report.AdviceJson;
import takeup.report.LightText;
import takeup.report.SharpText;
import takeup.text.Padding;
import takeup.text.Plain;

/** {@code takeup meter}: a reading, a camera and a film in, settings out. */
@Command(
        name = "meter",
        description = "Turns a light reading into settings, as m does on the prompt.",
        footer = {
            "",
            "For example:",
            "  takeup meter 5.6 125 --camera 645 --stock cn400",
            "  takeup meter ev11.3 --filter yellow --tripod"
        })
final class MeterSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Parameters(
            paramLabel = "READING",
            arity = "1..*",
            description = "As behind m: 5.6 125, ev11.3, low 5.6 125 and 11 125, 2500lx, sky shade.")
    List<String> reading;

    @Option(names = "--camera", paramLabel = "KEY", description = "The camera's key.")
    String camera;

    @Option(names = "--lens", paramLabel = "KEY", description = "The lens's key.")
    String lens;

    @Option(names = "--stock", paramLabel = "KEY", description = "The stock's key.")
    String stock;

    @Option(names = "--ei", paramLabel = "EI", description = "The exposure index; else the stock's usual one.")
    String index;

    @Option(names = "--meter", paramLabel = "KEY", description = "The meter's key.")
    String meter;

    @Option(names = "--hold", paramLabel = "VALUE", description = "Keeps an aperture or a time: f2.8, 1/250.")
    String hold;

    @Option(names = "--bias", paramLabel = "STOPS", description = "Deliberate deviation in stops, with its sign: +1/3.")
    String bias;

    @Option(
            names = "--filter",
            paramLabel = "FILTER",
            description = "A filter: yellow, 3x, +1.5, nd0.9; several stack.")
    List<String> filters = List.of();

    @Option(names = "--extension", paramLabel = "MM", description = "From lens to film, the whole draw, in mm.")
    String extension;

    @Option(names = "--magnification", paramLabel = "M", description = "Size on film against size in life.")
    String magnification;

    @Option(
            names = "--distance",
            paramLabel = "DISTANCE",
            description = "The subject's distance: 3m, 10ft; 2m-inf gives the aperture.")
    String distance;

    @Option(names = "--coc", paramLabel = "MM", description = "What counts as sharp: 0.05mm; else the diagonal / 1500.")
    String circle;

    @Option(names = "--flash", description = "Flash is on.")
    boolean flash;

    @Option(names = "--tripod", description = "The camera stands on a tripod.")
    boolean tripod;

    @Mixin
    JsonOption json;

    @Override
    public Integer call() throws IOException {
        OffsetDateTime now = Clock.wall().withNano(0);
        ShootState state = global.open().state().asOf(now);
        MeterQuery.Answer answer;
        try {
            answer = MeterQuery.answer(state, options(), now);
        } catch (MeterQuery.Unclear e) {
            throw new CommandFailed(2, e.getMessage());
        }
        remarks(state.kit(), answer.asking());
        if (json.isAsked()) {
            Json.Obj said = AdviceJson.of(answer.asking(), answer.light(), answer.advice(), answer.warnings());
            answer.sharp().ifPresent(it -> said.and("sharp", SharpText.json(it)));
            global.console().json("meter", answer.zones().isEmpty() ? said : said.and("zones", answer.zones()));
        } else {
            words(answer);
        }
        return 0;
    }

    /** Remarks on the profiles that the answer rests on, such as an unknown field. */
    private void remarks(Kit kit, AdviceRequest asking) {
        asking.camera().ifPresent(it -> kit.problems(Kit.Sort.CAMERAS, it.key()).forEach(global.console()::error));
        asking.stock().ifPresent(it -> kit.problems(Kit.Sort.STOCKS, it.key()).forEach(global.console()::error));
        kit.problems(Kit.Sort.METERS, asking.meter().key()).forEach(global.console()::error);
    }

    private MeterQuery.Options options() {
        return new MeterQuery.Options(
                reading,
                new MeterQuery.Keys(typed(camera), typed(lens), typed(stock), typed(meter)),
                new MeterQuery.Wanted(typed(index), typed(hold), typed(bias)),
                filters,
                new MeterQuery.Optics(typed(extension), typed(magnification), typed(distance), typed(circle)),
                flash,
                tripod);
    }

    private static Optional<String> typed(String option) {
        return Optional.ofNullable(option);
    }

    private void words(MeterQuery.Answer answer) {
        Console out = global.console();
        out.line(LightText.of(answer.light(), answer.light().at()) + "; at EI "
                + answer.asking().index()
                + answer.asking().stock().map(it -> ", " + it.name()).orElse(", no stock named"));
        if (!answer.remarks().isEmpty()) {
            out.line(answer.remarks());
        }
        double loss = answer.asking().setting().filterStops()
                + answer.asking().setting().extensionStops();
        if (loss > 0) {
            out.line("filters and extension take " + Stops.words(loss));
        }
        answer.asking().stock().ifPresent(it -> {
            double rating = it.stopsOverBox(answer.asking().index());
            double bias = answer.asking().setting().biasStops();
            out.line("over box: rating " + side(rating) + ", bias " + side(bias) + ", and the error of each pair"
                    + LightText.habit(answer.light()).map(how -> "; " + how).orElse(""));
        });
        Suggestions advice = answer.advice();
        for (int i = 0; i < advice.suggestions().size(); i++) {
            Suggestion row = advice.suggestions().get(i);
            out.line((i == advice.best() ? "best  " : "      ")
                    + Padding.cell(row.aperture().toString(), 8)
                    + Padding.cell(row.time().map(Object::toString).orElse("no time"), 9)
                    + String.join(", ", remarks(row, answer.asking())));
        }
        if (answer.sharp().isEmpty()
                && advice.suggestions().stream().anyMatch(it -> it.depth().isPresent())) {
            answer.asking().camera().ifPresent(it -> out.line("sharp: " + SharpText.circle(it)));
        }
        if (advice.suggestions().isEmpty()) {
            out.line(
                    answer.asking().camera().isPresent()
                            ? "this is an automatic camera"
                            : "no camera named: --camera K gives settings");
        }
        advice.bestOne().ifPresent(it -> it.warnings().forEach(warning -> warn(out, warning)));
        answer.warnings().forEach(it -> warn(out, it));
    }

    /** What there is to say of a pair of settings. */
    private static List<String> remarks(Suggestion row, AdviceRequest asking) {
        List<String> parts = new ArrayList<>();
        row.errorStops().ifPresent(it -> parts.add(Stops.error(it)));
        row.overBoxStops().ifPresent(it -> parts.add(Stops.isRight(it) ? "at box speed" : Stops.error(it) + " box"));
        LongExposure exposure =
                new LongExposure(row.meteredSeconds(), asking.path().reciprocity());
        if (exposure.isNeeded() && row.correctedSeconds().isPresent()) {
            parts.add("metered " + ExposureTime.words(row.meteredSeconds()) + ", needs " + exposure.needs()
                    + (exposure.orOpen().isEmpty() ? "" : ", or " + exposure.orOpen()));
        }
        if (exposure.isGeneric()) {
            parts.add("generic");
        }
        row.depth()
                .ifPresent(it -> parts.add("sharp from " + Plain.decimals(it.nearM(), 2) + " m to "
                        + (it.farM().isPresent() ? Plain.decimals(it.farM().getAsDouble(), 2) + " m" : "infinity")));
        row.time()
                .filter(time ->
                        asking.shutter().filter(it -> it.isByTheWatch(time)).isPresent())
                .ifPresent(it -> parts.add("by the watch"));
        row.warnings().forEach(it -> parts.add(it.code().toString()));
        return parts;
    }

    private static String side(double stops) {
        if (Stops.isRight(stops)) {
            return "0";
        }
        return Stops.tenths(stops) + (stops > 0 ? " more" : " less");
    }

    private static void warn(Console out, Warning warning) {
        out.line(warning.code() + ": " + warning.text());
    }
}
