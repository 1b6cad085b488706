package takeup.metering;

import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.day.CameraSetup;
import takeup.exposure.Stops;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Filter;
import takeup.prompt.FilterParser;
import takeup.prompt.Tokens;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/** {@code filter yellow}: what is on the lens. */
public final class FilterCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("filter", "what is on the lens, and the light it takes")
            .usage("filter yellow and nd0.9", "filter off")
            .form("filter yellow", "by its name, with its usual factor")
            .form("filter yellow 3x", "with this filter's own factor")
            .form("filter +1.5", "by the stops that it takes")
            .form("filter nd0.9", "grey, by its density; nd8 by its number")
            .form("filter yellow and nd0.9", "two on each other")
            .form("filter off", "none")
            .needs(Need.CAMERA);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        Camera camera = context.camera();
        CameraSetup setup =
                context.state().inHand(camera).with(SettingPatch.filters(FilterParser.read(arguments.rest())));
        Setting setting = setup.setting();
        SetupChange change = SetupChange.of(setup, context);
        if (setting.filters().isEmpty()) {
            return change.says("No filter on " + camera.key(), ".").accepted();
        }
        String each = String.join(
                ", ", setting.filters().stream().map(FilterCommand::loss).toList());
        String sum = setting.filters().size() > 1 ? ", together " + Stops.words(setting.filterStops()) : "";
        return change.says("On " + camera.key() + ": " + each + sum, "." + countedIn(context))
                .titled(String.join(" ", arguments.tokens().words()) + " on " + camera.key())
                .accepted();
    }

    /** That the index of the film in hand counts its own filter in; "" where it does not. */
    private static String countedIn(CommandContext context) {
        return context.state()
                .rollInHand()
                .map(Roll::film)
                .filter(it -> it.stock().countsFilter(it.index()))
                .map(it -> " EI " + it.index() + " counts the "
                        + it.stock().response().filter().orElseThrow().name()
                        + " filter of this film in already: only others go here.")
                .orElse("");
    }

    /** A factor and its stops as one thing: {@code 3x = 1.6 stops}; other filters as they say themselves. */
    private static String loss(Filter filter) {
        boolean factor =
                filter.name().endsWith("x") && Tokens.isDigit(filter.name().charAt(0));
        return factor ? filter.name() + " = " + Stops.words(filter.stops()) : filter.words();
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return Completions.with(Filter.names(), "off", "and");
    }
}
