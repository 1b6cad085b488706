package takeup.metering;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.Outcome;
import takeup.day.CameraEvent;
import takeup.exposure.ExposureTime;
import takeup.history.ShootState;
import takeup.kit.Kit;
import takeup.kit.Meter;
import takeup.prompt.CommandRejected;
import takeup.prompt.MeterMarks;

/** {@code meter hand}: which meter is in hand. */
public final class MeterCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("meter", "the meter in hand, and the time it is preset to")
            .usage("meter hand", "meter preset 1/125")
            .form("meter hand", "the meter in hand")
            .form("meter preset 1/125", "a meter that shows apertures, and the time it is preset to");

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        List<String> words = arguments.rest();
        Kit kit = context.state().kit();
        if (words.isEmpty() || words.size() > 2) {
            throw new CommandRejected("which meter? one of " + String.join(", ", kit.keys(Kit.Sort.METERS))
                    + ", and the time it is preset to: meter preset 1/125");
        }
        String key = words.get(0).toLowerCase(Locale.ROOT);
        Meter meter = kit.meter(key).orElseThrow(() -> new CommandRejected(kit.whyNot(Kit.Sort.METERS, key)));
        Optional<ExposureTime> preset =
                words.size() > 1 ? Optional.of(MeterMarks.of(meter).preset(words.get(1), key)) : Optional.empty();
        return context.reply(new CameraEvent.MeterSelected(key, preset))
                .says(
                        "Meter: " + meter.name(),
                        preset.map(it -> ", preset to " + it).orElse("") + ".")
                .accepted();
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return Completions.once(before, state.kit().keys(Kit.Sort.METERS));
    }
}
